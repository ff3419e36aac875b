// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;

/**
 * Something wrong with how and where the work is done. Each one is always a wrong: a plan states
 * it, denies it, or says nothing of it, and the review says what nobody mentioned.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingPlan plan =
 *     HeatingPlan.builder(Composition.of(wax)).circumstance(Circumstance.UNATTENDED).build();
 * HeatingReview review = HeatingRules.standard().review(plan);
 * review.finding("unattended").get().severity(); // WARNING
 * review.plan().denies(Circumstance.WET_TOOLS); // false
 * Circumstance.WET_TOOLS.id(); // wet-tools
 * }</pre>
 */
public enum Circumstance {
  /** Nobody stays with the hot wax. */
  UNATTENDED,
  /** The resin is melted first and the wax added to it. */
  RESIN_FIRST,
  /** Brushes, sieves, scraps or pigments that touch the melt are not dry. */
  WET_TOOLS,
  /** Water has been added to what goes into the pot. */
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
  /** No fitting lid is within reach of each pot. */
  NO_LID,
  /** A water extinguisher hangs where one for class B should. */
  WATER_EXTINGUISHER,
  /** A pot or solvent stands within 1 m of a flame or of hot air that works on something. */
  POT_NEAR_FLAME,
  /** Somebody works with a flame and nobody else is within call. */
  ALONE_WITH_FLAME,
  /** A spray can stands or is used near the heat, or was within the hour. */
  AEROSOL_NEAR,
  /** A gas cylinder or cartridge that is not in use stands near the heat. */
  GAS_CYLINDER_NEAR,
  /** Something that burns lies within 0.5 m of a heat lamp. */
  LAMP_NEAR_WHAT_BURNS,
  /** Cloth that has taken up wax or oil is worn or hangs near a flame. */
  WAXY_CLOTHING_NEAR_FLAME,
  /** An oxidiser, such as a nitrate, chlorate or permanganate, is kept near wax. */
  OXIDISER_NEAR,
  /** A plate or gun hangs on a lead that is coiled up. */
  COILED_REEL,
  /** No residual-current device protects the sockets of the hot tools. */
  NO_RESIDUAL_CURRENT_DEVICE,
  /** No smoke or heat alarm works in the room. */
  NO_SMOKE_ALARM,
  /** Hot wax is carried about, in a pot more than half full or above 60 °C. */
  CARRIED_HOT_AND_FULL,
  /** There is no place where a hot pot can stand and cool, level and out of the way. */
  NO_COOLING_PLACE,
  /** Hot wax is poured into cold glass. */
  HOT_POUR_INTO_COLD_GLASS,
  /** Nobody looks after the water of a water bath: its level, its simmer, its drips. */
  BATH_NOT_WATCHED,
  /** Dust of pigment, metal or carbon is in the air. */
  DUST_IN_THE_AIR,
  /** Nobody asked the group about pregnancy, asthma or allergy. */
  PREGNANCY_OR_ASTHMA_NOT_ASKED,
  /** The parents of somebody under 18 have not agreed in writing. */
  NO_WRITTEN_CONSENT;

  private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');

  /**
   * Returns the stable id.
   *
   * @return lower case and hyphens, for example {@code wet-tools}
   */
  public String id() {
    return id;
  }
}
