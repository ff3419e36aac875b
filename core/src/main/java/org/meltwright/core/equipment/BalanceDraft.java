// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * A {@link Balance} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * BalanceDraft draft = new BalanceDraft("kitchen balance", "5 kg", "1 g");
 * Balance kitchen = draft.toBalance(QuantityParser.localeFree());
 * kitchen.capacityKilograms(); // 5 kg
 * kitchen.toDraft().capacity(); // 5000 g
 * new BalanceDraft("kitchen balance", "5 l", null)
 *     .toBalance(QuantityParser.localeFree()); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id what the studio calls it
 * @param capacity the most it carries, above zero, such as "5 kg"
 * @param interval its scale interval, above zero and no more than it carries, such as "0.1 g"
 */
public record BalanceDraft(
    @Nullable String id, @Nullable String capacity, @Nullable String interval) {

  static BalanceDraft of(Balance balance) {
    QuantityFormatter exact = QuantityFormatter.exact();
    return new BalanceDraft(
        balance.name(),
        exact.format(QuantityKind.MASS, balance.capacityKilograms(), MetricUnits.GRAM),
        exact.format(QuantityKind.MASS, balance.intervalKilograms(), MetricUnits.GRAM));
  }

  /**
   * Returns the balance.
   *
   * @param parser reads the quantities
   * @return the balance
   * @throws ProblemException if a field is missing or wrong, or the interval is more than it
   *     carries; it carries all problems found, each at its field
   */
  public Balance toBalance(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    Optional<String> name = at.value("id", id);
    Optional<Double> most =
        at.parse("capacity", capacity, (p, t) -> Balance.checkedCapacity(p.parseMass(t)));
    Optional<Double> step =
        at.parse(
            "interval", interval, (p, t) -> Balance.checkedInterval(p.parseMass(t), Balance.MOST));
    return at.make(() -> new Balance(name.get(), most.get(), step.get()));
  }
}
