// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A limit of its own stands in place of the general one for the category that it names, and for no
 * other (Regulation (EC) No 1272/2008, Article 10; invented substances, derived).
 */
class OwnLimitTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 6, 1));

  private static HazardReview review(String known, String limits, double percent) {
    SubstanceHazards s = SubstanceHazards.builder("x").classified(known).limits(limits).build();
    return HazardReview.of(
        HazardMixture.builder(RULES).substance(s, percent).restNotClassified().build(), RULES);
  }

  @ParameterizedTest
  @CsvSource({
    "STOT RE 2 H373, STOT RE 1 H372 50, 10, stot-repeated 2 H373",
    "STOT RE 2 H373, STOT RE 1 H372 50, 50, stot-repeated 1 H372",
    "STOT SE 2 H371, STOT SE 1 H370 50, 10, stot-single 2 H371",
    "Skin Corr. 1B H314, Skin Corr. 1A H314 50, 5, skin 1B H314",
    "Skin Corr. 1C H314, Skin Corr. 1A H314 50, 5, skin 1C H314",
    "Skin Sens. 1 H317, Skin Sens. 1A H317 20, 1, skin-sensitisation 1 H317",
    "Resp. Sens. 1B H334, Resp. Sens. 1A H334 20, 1, respiratory-sensitisation 1B H334",
    "Carc. 2 H351, Carc. 1B H350 20, 1, carcinogenicity 2 H351",
    "Muta. 2 H341, Muta. 1B H340 20, 1, mutagenicity 2 H341",
    "Repr. 2 H361d, Repr. 1B H360D 20, 3, reproduction 2 H361d",
    "ED HH 2 EUH381, ED HH 1 EUH380 20, 1, endocrine-human 2 EUH381"
  })
  void limitOfAGraverCategory_doesNotSilenceTheGeneralOne(
      String known, String limits, double percent, String expected) {
    assertThat(review(known, limits, percent).categories())
        .extracting(HazardCategory::toString)
        .contains(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "STOT RE 2 H373, STOT RE 2 H373 50, 10",
    "Skin Corr. 1B H314, Skin Corr. 1B H314 50, 5",
    "Carc. 2 H351, Carc. 2 H351 20, 1"
  })
  void limitOfItsCategory_standsInPlaceOfTheGeneralOne(
      String known, String limits, double percent) {
    assertThat(review(known, limits, percent).categories())
        .filteredOn(c -> c.hazardClass() != HazardClass.EYE)
        .noneMatch(c -> known.endsWith(c.statement()));
  }

  @ParameterizedTest
  @CsvSource({"0.09, 0", "0.1, 1"})
  void limitOfAGraverCategory_leavesTheShareThatSetsOffAnAllergy(double percent, int names) {
    assertThat(review("Skin Sens. 1 H317", "Skin Sens. 1A H317 20", percent).elicitors())
        .hasSize(names);
  }
}
