// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.safety.heating.HeatingReview;

/** One job, worked out: the review first, then its batch as far as its amount is known. */
final class JobSheet {

  private final PotSheet pot;
  private final List<String> blockedRecipes;
  private final @Nullable WorkingWindow window;
  private final @Nullable BatchSheet batch;
  private final @Nullable Chosen chosen;

  JobSheet(PotSheet pot, Studio studio, Costing costing) {
    Job job = pot.job();
    this.pot = pot;
    this.blockedRecipes = costing.blockedWithin(job);
    this.window = pot.review().workingWindow().orElse(null);
    this.batch = job.batch().map(b -> new BatchSheet(job, b, studio, costing)).orElse(null);
    this.chosen = studio.chosen(job.recipeId()).orElse(null);
  }

  Job job() {
    return pot.job();
  }

  String name() {
    return pot.job().name();
  }

  PotSheet pot() {
    return pot;
  }

  HeatingReview review() {
    return pot.review();
  }

  /** Where the mix can be worked; empty if nothing in it melts or nobody knows where. */
  Optional<WorkingWindow> window() {
    return Optional.ofNullable(window);
  }

  /** The recipes within this one that are blocked today and made in no other way, by name. */
  List<String> blockedRecipes() {
    return blockedRecipes;
  }

  /** How its recipe was found for wishes; empty if it was written down or is blocked. */
  Optional<Chosen> chosen() {
    return isBlocked() ? Optional.empty() : Optional.ofNullable(chosen);
  }

  /** What is made; empty if it is not known how much. */
  Optional<BatchSheet> batch() {
    return Optional.ofNullable(batch);
  }

  /** What is made; empty too if it must not be made as planned. */
  Optional<BatchSheet> allowed() {
    return isBlocked() ? Optional.empty() : batch();
  }

  boolean isBlocked() {
    return pot.isBlocked();
  }
}
