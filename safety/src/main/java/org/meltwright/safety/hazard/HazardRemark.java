// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;

/**
 * Why a class was answered as it was, beside its arithmetic.
 *
 * <p>A cake that is solid at 40 °C cannot be aspirated as a liquid:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture cake =
 *     HazardMixture.builder(rules)
 *         .cas("8006-64-2", 25)
 *         .cas("8012-89-3", 75)
 *         .state(PhysicalState.SOLID_AT_40)
 *         .build();
 * HazardFinding lungs = HazardReview.of(cake, rules).finding(HazardClass.ASPIRATION);
 * lungs.remarks(); // [SOLID_AT_40]
 * lungs.remarks().get(0).text(Locale.ENGLISH); // solid at 40 °C: cannot be aspirated as a liquid
 * }</pre>
 */
public enum HazardRemark {
  /** An ingredient is in a class that only a test of the mixture can tell. */
  TEST_MISSING("test-missing"),
  /** An ingredient is in a category that these rules do not have. */
  CATEGORY_NOT_KNOWN("un-category"),
  /** The pH lies at either end. */
  EXTREME_PH("extreme-ph"),
  /** The shares alone would have led to a milder answer than the pH. */
  PH_AGAINST_SHARES("ph-against-shares"),
  /** An acid or alkaline reserve is stated without a test that confirms it: it lifts nothing. */
  RESERVE_ALONE("reserve-alone"),
  /** What corrodes the skin damages the eye. */
  CORROSIVE_TO_SKIN("corrosive-to-skin"),
  /** Solid at 40 °C. */
  SOLID_AT_40("solid-at-40"),
  /** The viscosity lies above the limit. */
  VISCOUS("viscous"),
  /** The viscosity is needed. */
  VISCOSITY_MISSING("viscosity-missing"),
  /** Whether it is solid or liquid is needed. */
  STATE_MISSING("state-missing"),
  /** It is not a liquid. */
  NOT_A_LIQUID("not-a-liquid"),
  /** No liquid, but an ingredient or a flash point says that it may burn. */
  MAY_BURN_AS_A_SOLID("may-burn-as-a-solid"),
  /** Gases are not assessed. */
  GAS_NOT_ASSESSED("gas-not-assessed"),
  /** The flash point is needed. */
  FLASH_POINT_MISSING("flash-point-missing"),
  /** The flash point lies above the limit. */
  FLASH_POINT_HIGH("flash-point-high"),
  /** By the measured flash point. */
  FLASH_POINT("flash-point"),
  /** The boiling point is not known: the worst category is taken. */
  BOILING_POINT_MISSING("boiling-point-missing");

  private final String id;

  HazardRemark(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return for example {@code solid-at-40}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the remark for the reader.
   *
   * @param locale the reader's language; German for {@code de}, else English
   * @return part of a sentence
   */
  public String text(Locale locale) {
    return HazardTexts.text("remark." + id, locale);
  }
}
