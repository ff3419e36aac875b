// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;

/**
 * What a label lacks, and by whom it is to be completed.
 *
 * <p>What a cake of plain beeswax lacks before its label is finished:
 *
 * <pre>{@code
 * Composition cake = Composition.of(MaterialCatalogue.standard().require("beeswax"));
 * HazardReview review = HazardReview.ofCake(cake, RuleSet.clpOn(LocalDate.of(2026, 6, 1)));
 * HazardLabel label =
 *     HazardLabel.of(review, LabelDetails.builder().productName("Cake", "Block").build());
 * LabelGap first = label.gaps().get(0); // NOMINAL_MASS
 * first.text(Locale.ENGLISH); // The nominal mass: by the maker.
 * }</pre>
 */
public enum LabelGap {
  /** A cosmetic: it is labelled by another law, and this label is not for it. */
  OTHER_LAW("other-law"),
  /** The product's name. */
  PRODUCT_NAME("product-name"),
  /** The nominal mass. */
  NOMINAL_MASS("nominal-mass"),
  /** The supplier's name. */
  SUPPLIER_NAME("supplier-name"),
  /** The supplier's postal address. */
  SUPPLIER_ADDRESS("supplier-address"),
  /** The supplier's telephone number. */
  SUPPLIER_TELEPHONE("supplier-telephone"),
  /** The batch. */
  BATCH("batch"),
  /** The highest temperature that the mixture is to be heated to. */
  MAXIMUM_TEMPERATURE("maximum-temperature"),
  /** The highest temperature that is stated is not to be advised. */
  TEMPERATURE_TOO_HIGH("temperature-too-high"),
  /** The unique formula identifier of a mixture that is notified to the poison centres. */
  UFI("ufi"),
  /** An ingredient of a class whose ingredients are named, of which none is known. */
  INGREDIENT_OF_CLASS("ingredient-of-class"),
  /** Supplemental statements of ingredients that may hold for the mixture as well. */
  SUPPLEMENTS("supplements"),
  /** Where contents and container are to be taken. */
  DISPOSAL("disposal"),
  /** Whether the mixture is solid or liquid, which decides what must not be breathed. */
  STATE("state"),
  /** What puts its fire out. */
  EXTINGUISHER("extinguisher"),
  /** An organ or route that has no name in the label's other language. */
  ORGAN_NAME("organ-name"),
  /** A named ingredient has no German name. */
  INGREDIENT_NAME("ingredient-name"),
  /** Classes that lack data of ingredients. */
  CLASSIFICATION("classification");

  private final String id;

  LabelGap(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case and hyphens, for example {@code supplier-name}
   */
  public String id() {
    return id;
  }

  /**
   * Says what is to be completed and by whom.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return a sentence
   */
  public String text(Locale locale) {
    return HazardTexts.text("gap." + id, locale);
  }
}
