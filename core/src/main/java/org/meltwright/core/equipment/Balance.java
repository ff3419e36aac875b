// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import static org.meltwright.core.equipment.EquipmentProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.meltwright.units.ScaleInterval;

/**
 * A balance: how much it carries and in what steps it shows.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Balance pocket = Balance.of("pocket balance", grams(200), grams(0.01));
 * pocket.interval().round(grams(91.256)); // 0.09126 kg
 * pocket.capacityKilograms(); // 0.2 kg
 * Balance.of("letter balance", grams(50), grams(100)); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name what the studio calls it
 * @param capacityKilograms the most it carries, in kg, above zero
 * @param intervalKilograms its scale interval, in kg, above zero
 */
public record Balance(String name, double capacityKilograms, double intervalKilograms) {

  static final double MOST = 1e6;

  private static final double LEAST = 1e-9;

  /** Draws a problem if a figure cannot be, or the name is blank. */
  public Balance {
    CHECK.named(name, "balance");
    CHECK.between(capacityKilograms, LEAST, MOST, "capacity of the balance in kg");
    CHECK.between(intervalKilograms, LEAST, capacityKilograms, "scale interval in kg");
  }

  /**
   * Returns a balance.
   *
   * @param name what the studio calls it
   * @param capacity the most it carries
   * @param interval its scale interval
   * @return the balance
   * @throws org.meltwright.units.ProblemException if a figure cannot be, or the name is blank
   */
  public static Balance of(String name, Quantity<Mass> capacity, Quantity<Mass> interval) {
    double most = checkedCapacity(capacity);
    return new Balance(name, most, checkedInterval(interval, most));
  }

  /**
   * Returns its scale interval for rounding.
   *
   * @return the interval
   */
  public ScaleInterval interval() {
    return ScaleInterval.ofKilograms(intervalKilograms);
  }

  /**
   * Returns this balance as it is written down.
   *
   * @return the draft, which reads back as an equal balance
   */
  public BalanceDraft toDraft() {
    return BalanceDraft.of(this);
  }

  static double checkedCapacity(Quantity<Mass> capacity) {
    return CHECK.between(capacity, LEAST, MOST, "capacity of the balance");
  }

  static double checkedInterval(Quantity<Mass> interval, double capacityKilograms) {
    return CHECK.between(interval, LEAST, capacityKilograms, "scale interval");
  }
}
