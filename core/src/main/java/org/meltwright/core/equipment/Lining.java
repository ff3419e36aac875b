// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

/**
 * What the inside of a vessel is coated with.
 *
 * <p>For example, a food can that is to become a pot; its film is what a review of the heating asks
 * about:
 *
 * <pre>{@code
 * Vessel can =
 *     Vessel.of(
 *         "food can", VesselMaterial.STEEL, Lining.PLASTIC, Vessel.Bottom.FLAT,
 *         millilitres(850), grams(90));
 * can.lining(); // PLASTIC
 * }</pre>
 */
public enum Lining {
  /** Bare: no coating. */
  NONE,
  /** Glass enamel. */
  ENAMEL,
  /** A plastic or lacquer film, as in food cans. */
  PLASTIC,
  /** A fluoropolymer non-stick coating. */
  NON_STICK,
  /** Not stated, or a coating of unknown kind. */
  UNKNOWN
}
