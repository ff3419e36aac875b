// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;

/**
 * An amount that is said a second time in parentheses: "9 oz (255 g)", "1 cup (240 ml)".
 *
 * <p>Both have to agree within a twentieth, for either may be rounded. The first is the amount;
 * where several units share its name, the one in parentheses is.
 */
final class Gloss {

  private static final double ROUNDED = 0.05;
  private static final Pattern SAID_TWICE = Pattern.compile("([^()]+?)\\s*\\(([^()]+)\\)\\s*");

  private Gloss() {}

  /** The amount; empty if it is not said twice, or not the same. */
  static <Q extends Quantity<Q>> Optional<Quantity<Q>> find(
      QuantityParser parser, CharSequence text, QuantityKind<Q> kind) {
    Matcher twice = SAID_TWICE.matcher(text);
    if (text.length() > QuantityText.LONGEST || !twice.matches()) {
      return Optional.empty();
    }
    return quantity(parser, twice.group(2), kind)
        .flatMap(
            other ->
                quantity(parser, twice.group(1), kind)
                    .filter(first -> agree(kind.toSi(first), kind.toSi(other)))
                    .or(() -> chosen(parser.read(twice.group(1)), other, kind)));
  }

  private static <Q extends Quantity<Q>> Optional<Quantity<Q>> quantity(
      QuantityParser parser, String text, QuantityKind<Q> kind) {
    try {
      return Optional.of(QuantityReader.quantity(parser.read(text), kind));
    } catch (ProblemException unread) {
      return Optional.empty();
    }
  }

  /** What stands in parentheses, if it is one of the units that share the name before them. */
  private static <Q extends Quantity<Q>> Optional<Quantity<Q>> chosen(
      QuantityText shared, Quantity<Q> other, QuantityKind<Q> kind) {
    shared.readNumber();
    double number = shared.value();
    return UnitSpelling.choices(UnitTable.key(shared.rest().strip())).stream()
            .anyMatch(unit -> unit.kind() == kind && agree(unit.toSi(number), kind.toSi(other)))
        ? Optional.of(other)
        : Optional.empty();
  }

  private static boolean agree(double one, double other) {
    return Math.abs(one - other) <= ROUNDED * Math.abs(other);
  }
}
