// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.joda.money.BigMoneyProvider;
import org.meltwright.units.ProblemException;

/**
 * An offer of the finished product, landed: freight, duty and tax borne are in its price.
 *
 * <p>For example:
 *
 * <pre>{@code
 * // three packages of 200 g for 24.00 EUR, and 6.00 EUR carriage
 * ReadyMade cakes = ReadyMade.of("ready-made cakes", Money.parse("EUR 30"), grams(600));
 * cakes.landed().perKilogram(); // 50 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param label who offers what, not blank
 * @param landed what it costs per mass of net product, at the door
 */
public record ReadyMade(String label, UnitPrice landed) {

  /** Draws a problem if the label is blank. */
  public ReadyMade {
    CHECK.named(label, "offer");
  }

  /**
   * Returns an offer of packages.
   *
   * @param label who offers what
   * @param landedPackage what one package costs, at the door
   * @param netMass the net product in it
   * @return the offer
   * @throws ProblemException if the amount is below zero, the mass is not above zero, or the label
   *     is blank
   */
  public static ReadyMade of(String label, BigMoneyProvider landedPackage, Quantity<Mass> netMass) {
    return new ReadyMade(label, UnitPrice.of(landedPackage, netMass));
  }

  /**
   * Returns this offer as it is written down.
   *
   * @return the draft, which reads back as an equal offer if the amount has at most twelve digits
   *     before and behind the point
   */
  public ReadyMadeDraft toDraft() {
    return ReadyMadeDraft.of(this);
  }
}
