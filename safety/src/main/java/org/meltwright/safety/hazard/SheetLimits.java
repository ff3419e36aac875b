// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.hazard.SheetToken.Kind;

/** Where limits of its own may stand beside a substance, and the one that waits for its class. */
final class SheetLimits {

  /** A limit in front of its class. */
  private record Waiting(SheetRange range, SheetToken first, SheetToken last) {}

  private @Nullable Waiting waiting;
  private boolean follow;

  /** The place behind the last word that says "limit". */
  private int behindWord = -1;

  /** Notes the word "limit": the heading of a column or table, or in front of the number. */
  void follow(boolean ofSubstance, int place) {
    follow = ofSubstance;
    behindWord = place;
  }

  /** Whether a heading said that limits follow. */
  boolean follow() {
    return follow;
  }

  /**
   * Behind the colon of a statement, in brackets behind it or behind the word "limit"; below a
   * heading of limits also in the cell behind the statement, or in front of a class.
   */
  boolean areExpected(
      @Nullable SheetClaim claim,
      List<SheetToken> tokens,
      int at,
      boolean inBrackets,
      boolean ofNext) {
    if (claim == null || claim.codes.isEmpty()) {
      return follow && ofNext;
    }
    int i = at - 1;
    boolean colon = false;
    while (i >= 0 && i >= behindWord && isBetweenCodeAndLimit(tokens.get(i))) {
      colon |= tokens.get(i).is(Kind.COLON);
      i--;
    }
    boolean behindCode = i >= 0 && tokens.get(i).equals(claim.last());
    return i + 1 == behindWord || (behindCode ? follow || colon || inBrackets : follow && ofNext);
  }

  private static boolean isBetweenCodeAndLimit(SheetToken token) {
    return switch (token.kind()) {
      case STARS, OPEN, CLOSE, COLON, SEPARATOR, COMMA, EQUALS -> true;
      default -> false;
    };
  }

  void waits(SheetRange range, SheetToken first, SheetToken last) {
    waiting = new Waiting(range, first, last);
  }

  void giveTo(SheetClaim claim) {
    if (waiting != null) {
      claim.limit = waiting.range();
      waiting = null;
    }
  }

  /** Shows back a limit that found no class; tells whether there was one. */
  boolean reportWaiting(SheetFindings findings) {
    Waiting left = waiting;
    waiting = null;
    if (left != null) {
      findings.problem(SheetProblem.LIMIT_WITHOUT_CLASS, left.first(), left.last());
    }
    return left != null;
  }

  /** "Carc. 1B H350 0.1 to 1", as the tables here write it: the place behind it. */
  static OptionalInt bare(@Nullable SheetClaim claim, List<SheetToken> tokens, int at) {
    boolean behindCode =
        claim != null && !claim.codes.isEmpty() && tokens.get(at - 1).equals(claim.last());
    if (claim == null || !behindCode) {
      return OptionalInt.empty();
    }
    Optional<SheetRange> bare = SheetRange.bare(tokens, at);
    claim.limit = bare.orElse(claim.limit);
    return bare.map(r -> OptionalInt.of(r.end())).orElse(OptionalInt.empty());
  }
}
