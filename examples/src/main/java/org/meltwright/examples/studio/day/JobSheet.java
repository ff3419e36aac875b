// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.safety.heating.HeatingReview;

/** One job, worked out: the review first, then its batch as far as its amount is known. */
public final class JobSheet {

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

  /**
   * Returns what is to be made.
   *
   * @return the job
   */
  public Job job() {
    return pot.job();
  }

  /**
   * Returns the name of its recipe.
   *
   * @return the name
   */
  public String name() {
    return pot.job().name();
  }

  /**
   * Returns the answers for its pot.
   *
   * @return the pot
   */
  public PotSheet pot() {
    return pot;
  }

  /**
   * Returns whether it may be heated so.
   *
   * @return the review
   */
  public HeatingReview review() {
    return pot.review();
  }

  /**
   * Returns where the mix can be worked.
   *
   * @return the window; empty if nothing in it melts or nobody knows where
   */
  public Optional<WorkingWindow> window() {
    return Optional.ofNullable(window);
  }

  /**
   * Returns the recipes within this one that are blocked today and made in no other way.
   *
   * @return their names
   */
  public List<String> blockedRecipes() {
    return blockedRecipes;
  }

  /**
   * Returns how its recipe was found for wishes.
   *
   * @return how; empty if it was written down or is blocked
   */
  public Optional<Chosen> chosen() {
    return isBlocked() ? Optional.empty() : Optional.ofNullable(chosen);
  }

  /**
   * Returns what is made.
   *
   * @return the batch; empty if it is not known how much
   */
  public Optional<BatchSheet> batch() {
    return Optional.ofNullable(batch);
  }

  /**
   * Returns what may be made.
   *
   * @return the batch; empty too if it must not be made as planned
   */
  public Optional<BatchSheet> allowed() {
    return isBlocked() ? Optional.empty() : batch();
  }

  /**
   * Returns whether it must not be made as planned.
   *
   * @return whether it must not
   */
  public boolean isBlocked() {
    return pot.isBlocked();
  }
}
