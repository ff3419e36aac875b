// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

/**
 * A plain fact of how and where the work is done, as far as it is stated.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingPlan plan =
 *     HeatingPlan.builder(Composition.of(wax)).circumstance(Circumstance.UNATTENDED).build();
 * HeatingReview review = HeatingRules.standard().review(plan);
 * review.finding("unattended").get().severity(); // WARNING
 * }</pre>
 */
public enum Circumstance {
  /** Nobody stays with the hot wax. */
  UNATTENDED,
  /** The resin is melted first and the wax added to it. */
  RESIN_FIRST,
  /** Brushes, sieves, scraps or pigments that touch the melt are not dry. */
  WET_TOOLS,
  /** Water has been added to a water-mixable oil paint, or its data sheet states water in it. */
  WATER_ADDED,
  /** Varnish is to go into the pot, beside what is weighed. */
  VARNISH_ADDED,
  /** Alkyd paint or medium is to go into the pot, beside what is weighed. */
  ALKYD_ADDED,
  /** Crayons of unknown make are to go into the pot. */
  UNKNOWN_CRAYONS_ADDED,
  /** Dry pigment is weighed or stirred in as powder. */
  DRY_POWDER,
  /** An open vessel of solvent, or solvent-wet work, stands near. */
  OPEN_SOLVENT_NEAR,
  /** Paper, card or collage of paper lies within 1 m of the heat or is worked on. */
  PAPER_NEAR,
  /** Plastic, or collage of plastic, lies within 1 m of the heat or is worked on. */
  PLASTIC_NEAR,
  /** A paper liner or cup holds the wax while it is heated. */
  PAPER_LINER,
  /** An open vessel of water stands beside the pot. */
  WATER_NEAR,
  /** Rags or paper with drying oil on them lie about, heaped or in a closed bag. */
  OILY_RAGS,
  /** Neither a fitting lid nor a fire blanket is within reach. */
  NO_LID_OR_BLANKET,
  /** A water extinguisher hangs where one for class B should. */
  WATER_EXTINGUISHER
}
