// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Bilingual;
import org.meltwright.units.FieldReader;
import org.meltwright.units.Problem;
import org.meltwright.units.QuantityParser;

/** Shares of a whole, in the order of their parts; one of them may be the rest. */
final class Portions {

  private static final double SLACK = 1e-9;
  private static final MathContext DIGITS = new MathContext(9);

  private final List<OptionalDouble> shares = new ArrayList<>();
  private boolean areAllRead = true;

  /** Adds a part that states its share or is the rest; a problem if it does both or neither. */
  void add(FieldReader part, @Nullable String share, @Nullable Boolean rest) {
    boolean isRest = Boolean.TRUE.equals(rest);
    if (isRest == (share != null)) {
      part.problems()
          .add(
              Problem.of(StudioProblem.ONE_OF, StudioProblem.CHECK.name(isRest ? "both" : "none"))
                  .with("fields", "share, rest")
                  .under(part.path()));
      spoil();
    } else if (isRest) {
      shares.add(OptionalDouble.empty());
    } else {
      part.parse("share", share, QuantityParser::parseMassFraction)
          .ifPresentOrElse(s -> shares.add(OptionalDouble.of(s.value())), this::spoil);
    }
  }

  /** Notes a part that could not be read: there is no whole then. */
  void spoil() {
    areAllRead = false;
  }

  /** The shares, the rest worked out; empty, with a problem told, if they make no whole. */
  Optional<List<Double>> whole(FieldReader list) {
    if (!areAllRead) {
      return Optional.empty();
    }
    double sum = shares.stream().flatMapToDouble(OptionalDouble::stream).sum();
    long rests = shares.stream().filter(OptionalDouble::isEmpty).count();
    boolean isFull = rests == 1 ? sum < 1 : rests == 0 && Math.abs(sum - 1) <= SLACK;
    if (!isFull) {
      list.problems().add(Problem.of(StudioProblem.SHARES, found(sum, rests)).under(list.path()));
      return Optional.empty();
    }
    return Optional.of(shares.stream().map(s -> s.orElse(1 - sum)).toList());
  }

  private static Bilingual found(double sum, long rests) {
    double percent = BigDecimal.valueOf(sum * 100).round(DIGITS).doubleValue();
    return Bilingual.list(
        Bilingual.of(percent).plus(" %"),
        StudioProblem.CHECK.name(
            rests == 0 ? "no rest" : rests == 1 ? "one rest" : "several rests"));
  }
}
