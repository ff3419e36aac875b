// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The acute toxicity estimates of an entry, each with the words around it. */
final class SheetEstimates {

  /**
   * An estimate with the routes that stand beside it and the class behind which it stands.
   *
   * @param estimate the number with its unit
   * @param routes the words for routes and forms; those in brackets behind it come later
   * @param claim the class; null if it stands by itself
   */
  record Placed(SheetEstimate estimate, Set<String> routes, @Nullable SheetClaim claim) {}

  private final SheetFindings findings;
  private final List<Placed> all = new ArrayList<>();
  private final Set<String> routes = new LinkedHashSet<>();
  private boolean expected;
  private boolean routesAreUsed;

  /** The estimate just read; null if it was no point. */
  private @Nullable Placed last;

  SheetEstimates(SheetFindings findings) {
    this.findings = findings;
  }

  List<Placed> all() {
    return all;
  }

  /** Says that the word for an estimate was found; what follows is about it. */
  boolean follow() {
    expected = true;
    return true;
  }

  /** Says that a class begins. */
  void areOver() {
    expected = false;
  }

  boolean isExpected() {
    return expected;
  }

  /** Takes a word for a route: in front of the number, as is usual, or in brackets behind it. */
  void route(String word, boolean beforeBracket) {
    if (last != null && beforeBracket && routes.isEmpty()) {
      last.routes().add(word);
      return;
    }
    if (routesAreUsed) {
      routes.clear();
      routesAreUsed = false;
    }
    routes.add(word);
  }

  void add(SheetEstimate estimate, @Nullable SheetClaim claim) {
    last = estimate.point() ? new Placed(estimate, new LinkedHashSet<>(routes), claim) : null;
    if (last != null) {
      all.add(last);
    } else {
      findings.remark(CopiedSheet.Remark.Kind.NO_POINT, estimate.first(), estimate.last());
    }
    routesAreUsed = true;
    expected = true;
  }
}
