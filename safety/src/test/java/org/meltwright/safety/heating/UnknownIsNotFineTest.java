// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperaturePoint;

/** What no table lists or nobody stated is not assessed, or counts as the worse: policy. */
class UnknownIsNotFineTest {

  private static final MassFractionRange HALF = MassFractionRange.of(MassFraction.of(0.5));

  @ParameterizedTest
  @ValueSource(strings = {"PB74", "50-78-2"})
  void pigment_that_the_table_does_not_list_is_not_assessed(String pigment) {
    HeatingReview review =
        Plans.review("mix beeswax-yellow 9, pigment:" + pigment + " 1; liquid 80");
    assertThat(review.isNotAssessed("lead")).isTrue();
    assertThat(review.isNotAssessed("arsenic")).isTrue();
    assertThat(review.isNotAssessed("mercury")).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"PW6", "PB29", "PY35", "PR101"})
  void pigment_that_the_table_lists_is_assessed(String pigment) {
    HeatingReview review =
        Plans.review("mix beeswax-yellow 9, pigment:" + pigment + " 1; liquid 80");
    assertThat(review.isNotAssessed("lead")).isFalse();
  }

  @Test
  void heat_gun_below_the_flash_point_without_overshoot_is_not_assessed() {
    String plan = "mix beeswax-yellow 8, damar 1; liquid 80; gun 120";
    assertThat(Plans.review(plan).finding("heat-gun-outlet")).isEmpty();
    assertThat(missing(plan)).contains("gun-outlet");
    assertThat(missing(plan + " +10")).doesNotContain("gun-outlet");
  }

  @Test
  void review_tells_the_lowest_flash_point_and_what_burns_without_one() {
    HeatingReview review =
        Plans.review(
            "mix beeswax-yellow 8, colophony 1, own:house-fat 1, titanium-white-rutile 1; liquid 80");
    assertThat(review.lowestFlashPoint()).contains(TemperaturePoint.ofCelsius(187));
    assertThat(review.workingCeiling()).isEqualTo(review.target());
    assertThat(review.withoutFlashPoint()).extracting(Material::id).containsExactly("house-fat");
    assertThat(Plans.review("mix titanium-white-rutile; liquid 80").lowestFlashPoint()).isEmpty();
  }

  @Test
  void liquid_hotter_than_the_palette_binds() {
    String palette = "mix beeswax-yellow; palette 80 +5; ";
    assertThat(Plans.review(palette + "surface 84 probe; liquid 97").finding("hard-ceiling"))
        .isPresent();
    assertThat(Plans.review(palette + "liquid 97").finding("hard-ceiling")).isPresent();
    assertThat(Plans.review(palette + "surface 95 probe; liquid 80").finding("hard-ceiling"))
        .isPresent();
  }

  @Test
  void liquid_on_a_palette_of_unknown_surface_is_a_lower_bound() {
    String palette = "mix beeswax-yellow; palette 80; ";
    assertThat(Plans.review(palette + "liquid 82").finding("estimated-temperature")).isPresent();
    assertThat(Plans.review(palette + "liquid 82").isNotAssessed("hard-ceiling")).isTrue();
    assertThat(Plans.review(palette + "surface 84 probe; liquid 82").isNotAssessed("hard-ceiling"))
        .isFalse();
  }

  @Test
  void water_as_a_constituent_of_a_water_mixable_paint_blocks() {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    Material paint =
        Material.builder("my-water-mixable-blue")
            .names("my water-mixable blue", "mein wassermischbares Blau")
            .family(MaterialFamily.OIL_PAINT, MaterialRole.COLOURANT)
            .constituent(catalogue.require("linseed-oil"), HALF)
            .constituent(catalogue.require("water"), HALF)
            .build();
    Composition mix =
        Composition.ofParts(
            List.of(catalogue.require("beeswax-yellow"), paint), new double[] {95, 5});
    HeatingReview review = HeatingRules.standard().review(HeatingPlan.of(mix));
    assertThat(review.finding("water-mixable-oil-with-water"))
        .hasValueSatisfying(f -> assertThat(f.isBlocking()).isTrue());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "own:\"cinnabar green hue\"/pigment",
        "own:\"Leuchtpigment\"/pigment",
        "own:\"blue 7\"/pigment"
      })
  void pigment_whose_name_leaves_open_what_it_is_is_not_assessed(String pigment) {
    assertThat(missing("mix beeswax-yellow 9, " + pigment + " 1; liquid 80")).contains("pigment");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Krapplack dunkel", "laque de garance", "Bleistiftgraphit"})
  void name_that_only_sounds_like_a_hazard_is_asked_what_heat_it_stands_and_no_more(String name) {
    String plan = "mix beeswax-yellow 8, own:\"" + name + "\"/pigment 1; plate 80 +5; liquid 82";
    assertThat(missing(plan)).doesNotContain("pigment");
    HeatingReview torch = Plans.review(plan + "; torch");
    assertThat(torch.isNotAssessed("pigment-melt-only")).isTrue();
    assertThat(torch.isNotAssessed("lead")).isFalse();
  }

  @Test
  void pigment_by_its_catalogue_name_is_kept_from_flame_as_the_catalogue_s_own() {
    String own = "mix beeswax-yellow 9, own:\"Phthaloblau\"/pigment 1; torch";
    assertThat(Plans.review(own).finding("pigment-no-flame")).isPresent();
  }

  @ParameterizedTest
  @CsvSource({
    "10, DANGER",
    "9.9, WARNING",
  })
  void fragrance_without_a_flash_point_ranks_by_its_share(double percent, Severity severity) {
    String mix = "mix own:\"scent\"/fragrance " + percent + ", soy-wax " + (100 - percent);
    assertThat(Plans.review(mix + "; plate 70 +5; liquid 70").notAssessed())
        .filteredOn(n -> n.property().equals("flash-point"))
        .extracting(NotAssessed::severity)
        .containsExactly(severity);
  }

  @ParameterizedTest
  @CsvSource({
    "89, WARNING",
    "90, CAUTION",
  })
  void air_of_a_crowded_room_that_nobody_knows_ranks_as_a_warning(int volume, Severity severity) {
    assertThat(Plans.review("mix beeswax-yellow; people 1 8 0; room " + volume).notAssessed())
        .filteredOn(n -> n.property().equals("extraction"))
        .extracting(NotAssessed::severity)
        .containsExactly(severity);
  }

  private static List<String> missing(String plan) {
    return Plans.review(plan).notAssessed().stream().map(NotAssessed::property).toList();
  }
}
