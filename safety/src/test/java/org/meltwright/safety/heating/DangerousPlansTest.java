// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.heating.HeatingReading.Place;
import org.meltwright.units.TemperaturePoint;

/**
 * Plans that someone would act on with a hot pot in front of them, and what must be said of them.
 */
class DangerousPlansTest {

  private static final String MEDIUM = "mix beeswax-yellow 8, damar 1; ";

  private static void blocks(String plan, String rule) {
    assertThat(Plans.review(plan).finding(rule))
        .as("%s of %s", rule, plan)
        .hasValueSatisfying(f -> assertThat(f.isBlocking()).isTrue());
  }

  // A flame that is the heat is a flame

  @Test
  void torch_under_a_pot_blocks_whatever_the_wax_reads() {
    blocks(MEDIUM + "heat-torch; liquid 82", "flame-under-pot");
  }

  @ParameterizedTest
  @ValueSource(strings = {"heat-torch", "torch", "ring", "ring-beside"})
  void flame_is_seen_as_heat_and_as_tool_alike(String flame) {
    String hot = MEDIUM + flame + "; liquid 82; ";
    blocks(hot + "people 1 0 4 14", "minors-with-flame");
    blocks(hot + "open-solvent-near", "flame-near-solvent");
    blocks(hot + "pot paper none flat", "paper-liner-flame");
    blocks(hot + "pot aluminium non-stick flat", "non-stick-open-heat");
    assertThat(Plans.review(hot + "paper-near").finding("flame-near-paper")).isPresent();
  }

  @Test
  void torch_as_heat_over_a_pigment_that_takes_none_is_found() {
    assertThat(
            Plans.review("mix beeswax-yellow 9, cadmium-red 1; heat-torch; liquid 82")
                .finding("pigment-melt-only"))
        .isPresent();
  }

  @Test
  void heat_gun_as_heat_blocks_and_without_set_point_its_outlet_is_not_assessed() {
    blocks(MEDIUM + "heat-gun; liquid 82", "hot-air-at-pot");
    assertThat(Plans.review(MEDIUM + "heat-gun; liquid 82").isNotAssessed("heat-gun-outlet"))
        .isTrue();
  }

  // What is said of a palette is not talked down by a reading

  @ParameterizedTest
  @ValueSource(strings = {"60", "85", "60 probe", "85 probe", "60 metal", "85 matt"})
  void reading_below_set_point_and_overshoot_does_not_bind(String reading) {
    blocks(MEDIUM + "palette 150 +20; surface " + reading, "hard-ceiling");
  }

  @Test
  void reading_of_bare_metal_by_infrared_counts_upwards_only() {
    HeatingReview low = Plans.review(MEDIUM + "palette; surface 34 metal");
    assertThat(low.isNotAssessed("hard-ceiling")).isTrue();
    blocks(MEDIUM + "palette; surface 95 metal", "hard-ceiling");
  }

  @Test
  void ring_with_numbers_is_not_assessed_without_a_probe_in_the_wax() {
    HeatingReview review = Plans.review(MEDIUM + "numbers");
    assertThat(review.isNotAssessed("hard-ceiling")).isTrue();
    assertThat(review.isNotAssessed("pot-floor-hot")).isTrue();
    assertThat(Plans.review(MEDIUM + "numbers; liquid 84").isNotAssessed("hard-ceiling")).isFalse();
  }

  // A reading that cannot be is no ground for more heat

  @ParameterizedTest
  @ValueSource(strings = {"97F", "36.1", "20", "-10"})
  void reading_too_cold_to_be_molten_counts_as_not_measured(String reading) {
    HeatingReview review = Plans.review(MEDIUM + "plate 95 +5; liquid " + reading);
    assertThat(review.finding("reading-not-molten")).isPresent();
    assertThat(review.finding("colder-than-window")).isEmpty();
    assertThat(review.isBlocked()).isTrue(); // as hot as the floor, 100 °C
    for (Locale reader : List.of(Locale.ENGLISH, Locale.GERMAN)) {
      assertThat(texts(review, reader))
          .noneMatch(t -> t.contains("Warm the panel") || t.contains("anwärmen"));
    }
  }

  @Test
  void reading_whose_number_fits_on_the_other_scale_says_so() {
    assertThat(
            Plans.review("mix beeswax-yellow; liquid 97F")
                .finding("reading-not-molten")
                .get()
                .reason(Locale.ENGLISH))
        .endsWith("If you read 97 off a thermometer in °C, that is 97.0 °C (206.6 °F).");
    assertThat(
            Plans.review("mix beeswax-yellow; liquid 187")
                .finding("reading-other-scale")
                .get()
                .summary(Locale.GERMAN))
        .endsWith(
            "Wurde 187 auf einem Thermometer in °F abgelesen, so sind das 86,1 °C (187,0 °F).");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-10, 20, 36.1})
  void cold_reading_is_answered_with_a_look_at_the_probe(double celsius) {
    HeatingAction action =
        HeatingReading.of(Place.LIQUID, TemperaturePoint.ofCelsius(celsius)).action();
    assertThat(action.level()).isEqualTo(HeatingAction.Level.CHECK_THE_PROBE);
    assertThat(action.atOnce(Locale.ENGLISH)).contains("Check unit and probe");
  }

  // Hotter is worse

  @Test
  void action_changes_at_the_flash_margin_the_flash_point_and_autoignition() {
    Composition turpentine = Composition.of(MaterialCatalogue.standard().require("gum-turpentine"));
    HeatingLimits limits = HeatingLimits.standard();
    assertThat(level(160)).isEqualTo(HeatingAction.Level.OUT_AND_WATCH);
    assertThat(level(210)).isEqualTo(HeatingAction.Level.OUT_AND_CALL);
    assertThat(
            HeatingReading.of(Place.LIQUID, TemperaturePoint.ofCelsius(253))
                .action(limits, turpentine)
                .level())
        .isEqualTo(HeatingAction.Level.OUT_AND_STAY_OUT);
  }

  private static HeatingAction.Level level(double celsius) {
    return HeatingReading.of(Place.LIQUID, TemperaturePoint.ofCelsius(celsius)).action().level();
  }

  @ParameterizedTest
  @ValueSource(doubles = {93.3, 97, 110, 154, 204, 245, 500})
  void nobody_is_told_to_stir_above_the_hard_ceiling(double celsius) {
    for (Place place : new Place[] {Place.LIQUID, Place.PALETTE_SURFACE, Place.POT_FLOOR}) {
      HeatingAction action = HeatingReading.of(place, TemperaturePoint.ofCelsius(celsius)).action();
      if (place != Place.POT_FLOOR || celsius >= 110) {
        assertThat(action.atOnce(Locale.ENGLISH))
            .doesNotContainPattern("(?<!not )\\bstir\\b|(?<!not )\\bStir\\b");
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plate 90 +10; liquid 95",
        "plate 90 +5; liquid 97F",
        "liquid 187",
        "palette 95 +5; surface 96 probe",
        "plate 180 +20",
        "bath; liquid 97"
      })
  void no_finding_tells_to_stir_or_to_come_back_in_at_the_hard_ceiling(String hot) {
    HeatingReview review = Plans.review(MEDIUM + hot);
    assertThat(review.isBlocked()).isTrue();
    assertThat(texts(review, Locale.ENGLISH))
        .noneMatch(t -> t.matches("(?is).*(?<!not )\\bstir\\b.*") || t.contains("ome back"));
    assertThat(texts(review, Locale.GERMAN))
        .noneMatch(t -> t.matches("(?s).*(?<!icht )\\b(rühren|umrühren)\\b.*"));
  }

  @ParameterizedTest
  @ValueSource(doubles = {160, 210, 300})
  void finding_at_the_flash_margin_says_what_the_action_says(double celsius) {
    HeatingReview review = Plans.review("mix beeswax-yellow; plate 80 +5; liquid " + celsius);
    String action = review.plan().action().orElseThrow().toDo(Locale.ENGLISH);
    for (String rule : List.of("flash-margin", "fume", "hard-ceiling")) {
      assertThat(review.finding(rule).get().remedy(Locale.ENGLISH)).contains(action);
    }
    Finding margin = review.finding("flash-margin").get();
    assertThat(margin.remedy(Locale.ENGLISH)).contains("keep it below 90.0 °C");
    assertThat(margin.summary(Locale.ENGLISH)).doesNotContain("less than 50 K");
  }

  @Test
  void at_the_flash_point_the_lid_comes_before_the_way_out_and_nobody_goes_back() {
    String action =
        HeatingReading.of(Place.LIQUID, TemperaturePoint.ofCelsius(210))
            .action()
            .atOnce(Locale.ENGLISH);
    assertThat(action).containsSubsequence("off", "lid", "straight out", "nobody goes back", "112");
  }

  @ParameterizedTest
  @ValueSource(strings = {"cooker 150 +20; liquid 84", "cooker; surface 220 probe; liquid 88"})
  void slow_cooker_of_which_the_floor_is_stated_is_held_to_it(String cooker) {
    blocks(MEDIUM + cooker, "pot-floor-hot");
  }

  @Test
  void slow_cooker_without_degrees_is_not_told_to_state_a_set_point() {
    HeatingReview review = Plans.review(MEDIUM + "cooker; liquid 84");
    assertThat(review.isNotAssessed("pot-floor-hot")).isFalse();
    assertThat(review.notAsked()).anyMatch(n -> n.ruleIds().contains("pot-floor-hot"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"mix linseed-oil; liquid 20", "mix titanium-white-rutile; liquid 22"})
  void cold_reading_of_a_mix_without_wax_is_not_called_hot(String cold) {
    assertThat(Plans.review(cold).finding("reading-other-scale")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"plate 150 +10; liquid 70", "plate 90 +10; liquid 70"})
  void nobody_is_told_to_warm_wax_on_a_floor_that_is_too_hot(String hot) {
    assertThat(Plans.review(MEDIUM + hot).finding("colder-than-window")).isEmpty();
    assertThat(Plans.review(MEDIUM + "plate 70 +5; liquid 70").finding("colder-than-window"))
        .isPresent();
  }

  @Test
  void infrared_reading_of_bare_metal_is_not_assessed_whatever_else_is_said() {
    HeatingReview unheated = Plans.review(MEDIUM + "surface 84 metal; liquid 84");
    assertThat(unheated.isNotAssessed("pot-floor-hot")).isTrue();
    assertThat(texts(Plans.review(MEDIUM + "palette 80 +5; surface 60 metal"), Locale.ENGLISH))
        .noneMatch(t -> t.contains("The surface of the palette was not measured"));
  }

  @Test
  void explanation_tells_a_floor_that_is_a_lower_bound_and_what_was_read() {
    String text = Plans.review(MEDIUM + "plate 90; liquid 84").explanation().text(Locale.ENGLISH);
    assertThat(text).contains("Pot floor: at least 90.0 °C", "read in the liquid: 84 °C");
  }

  // A number that says something milder does not silence a name

  @ParameterizedTest
  @ValueSource(
      strings = {
        "own:\"Bleiweiß\"/pigment/ci=PW6",
        "own:\"Mennige\"/pigment/ci=PR101",
        "own:\"Zinnober\"/pigment/ci=PR254",
        "own:\"realgar\"/pigment/ci=PR101",
        "own:\"lead white\"/pigment/cas=13463-67-7",
        "own:\"potassium nitrate\"/pigment/ci=PW6",
        "own:\"Terpentin\"/pigment/ci=PW6"
      })
  void name_that_says_worse_than_its_number_blocks(String material) {
    HeatingReview review = Plans.review("mix beeswax-yellow 9, " + material + " 1; liquid 80");
    assertThat(review.isBlocked()).as(review.toString()).isTrue();
  }

  @Test
  void number_that_agrees_with_a_harmless_name_draws_nothing_by_name() {
    HeatingReview review =
        Plans.review("mix beeswax-yellow 9, own:\"Titanweiß\"/pigment/ci=PW6 1; liquid 80");
    assertThat(review.finding("named-never-heated")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"waxy-clothing-near-flame", "dust-in-the-air", "pot paper none flat"})
  void lamp_lights_cloth_dust_and_paper_too(String what) {
    assertThat(Plans.review(MEDIUM + "lamp; plate 80 +5; liquid 82; " + what).isBlocked()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(ints = {11, 14, 17})
  void toxic_pigment_blocks_for_everybody_under_18(int youngest) {
    blocks(
        "mix beeswax-yellow 9, cadmium-red 1; liquid 70; people 1 1 8 " + youngest,
        "minors-toxic-pigment");
  }

  // A water bath is its own case

  @Test
  void water_bath_is_not_recommended_where_it_is_warned_of() {
    for (String bath : List.of("bath", "bath; liquid 84", "bath; liquid 97", "bath; liquid 20")) {
      HeatingReview review = Plans.review(MEDIUM + bath);
      assertThat(review.isBlocked()).isEqualTo(bath.endsWith("97"));
      assertThat(review.finding("pot-floor")).isEmpty();
      assertThat(texts(review, Locale.ENGLISH))
          .noneMatch(t -> t.contains("use a water bath") || t.contains("or a water bath"));
    }
  }

  // A flame over the work: what is said, what is not, what is wrong

  private static final String TORCH =
      MEDIUM + "palette 80 +4; surface 83 matt; torch; people 0 2 0; room 60 600; hours 2; ";

  private static final List<String> KEPT_CLEAR =
      List.of("pot-near-flame", "open-solvent-near", "no-lid", "alone-with-flame", "paper-near");

  @Test
  void torch_that_keeps_clear_draws_nothing_but_its_standing_advice() {
    HeatingReview review =
        Plans.review(TORCH + "no " + String.join("; no ", KEPT_CLEAR) + "; no-others");
    assertThat(review.findings()).isEmpty();
    assertThat(review.notAssessed()).isEmpty();
    assertThat(review.standingAdvice()).contains(StandingAdvice.FLAME);
  }

  @Test
  void torch_of_which_nothing_is_said_is_asked_by_name_what_it_must_keep_clear_of() {
    assertThat(Plans.review(TORCH).notAsked()).extracting(NotAsked::id).containsAll(KEPT_CLEAR);
  }

  @ParameterizedTest
  @CsvSource({
    "pot-near-flame, flame-near-pot",
    "open-solvent-near, flame-near-solvent",
    "no-lid, flame-without-lid",
    "alone-with-flame, alone-with-flame",
    "paper-near, flame-near-paper",
    "waxy-clothing-near-flame, waxy-clothing",
    "gas-cylinder-near, flame-near-gas-cylinder",
    "dust-in-the-air, dust-fire",
  })
  void torch_that_does_not_keep_clear_is_found_by_a_rule_of_its_own(String wrong, String rule) {
    assertThat(Plans.review(TORCH + wrong).finding(rule)).isPresent();
  }

  // Names say what numbers do not

  @ParameterizedTest
  @CsvSource({
    "Red lead, lead",
    "Mennige, lead",
    "Neapelgelb, lead",
    "'Naples yellow, genuine', lead",
    "Bleizinngelb, lead",
    "Flake white / Kremserweiß, lead",
    "Orpiment, arsenic",
    "Auripigment, arsenic",
    "emerald green, arsenic",
    "Zinnober, mercury",
    "Zinkgelb, named-never-heated",
    "celluloid, named-never-heated",
    "Zapon, named-never-heated",
    "French polish, named-never-heated",
    "Brennspiritus, named-never-heated",
    "PVC granules, named-never-heated",
    "egg tempera, named-never-heated",
    "furniture polish, named-never-heated",
    "Salpeter, named-never-heated",
  })
  void own_material_is_what_its_name_says(String name, String rule) {
    for (String family : List.of("", "/pigment", "/paint")) {
      blocks("mix beeswax-yellow 9, own:\"" + name + "\"" + family + " 1; liquid 80", rule);
    }
  }

  @Test
  void lead_tin_yellow_is_known_by_its_number() {
    blocks("mix beeswax-yellow 9, pigment:12036-31-6 1; liquid 80", "lead");
  }

  // Vessels, oil, irons, hours, lamps

  @ParameterizedTest
  @CsvSource({
    "plate 82 +6; pot glass none flat, glass-on-plate",
    "plate 82 +6; pot silicone none flat, silicone-pot",
    "plate 82 +6; pot paper plastic flat, paper-cup-on-heat",
    "plate 82 +6; gun 400; pot paper none flat, paper-liner-flame",
    "plate 82 +6; gun 500; pot aluminium non-stick flat, non-stick-open-heat",
    "plate 82 +6; iron 250 +5, iron-at-flash-point",
    "plate 82 +6; full 98, vessel-overflows",
    "plate 82 +6; people 1 1 8 6, children-at-heat",
    "plate 82 +6; people 1 1 8 2, children-nothing-hot",
    "microwave, microwave",
  })
  void plan_that_was_clean_once_blocks(String plan, String rule) {
    blocks(MEDIUM + "liquid 80; " + plan, rule);
  }

  @Test
  void drying_oil_by_itself_is_found_and_its_rags_are_named() {
    Finding oil = Plans.review("mix beeswax-yellow 1, linseed-oil 1").finding("drying-oil").get();
    assertThat(oil.remedy(Locale.ENGLISH)).contains("rags", "outdoors", "under water");
    assertThat(oil.remedy(Locale.GERMAN)).contains("Lappen");
  }

  @ParameterizedTest
  @ValueSource(strings = {"24", "1000"})
  void wax_kept_hot_for_days_is_found(String hours) {
    assertThat(Plans.review(MEDIUM + "liquid 80; hours " + hours).finding("long-heat")).isPresent();
  }

  @Test
  void lamp_is_no_remedy_for_what_a_lamp_overheats() {
    Finding cadmium =
        Plans.review("mix beeswax-yellow 9, cadmium-red 1; liquid 80; lamp")
            .finding("pigment-melt-only")
            .get();
    assertThat(cadmium.isBlocking()).isTrue();
    assertThat(cadmium.remedy(Locale.ENGLISH)).doesNotContain("lamp").contains("iron");
    assertThat(StandingAdvice.LAMP.text(Locale.ENGLISH)).contains("above the film", "0.5 m to");
  }

  // What to do stands in one order, and in the same words everywhere

  @Test
  void fire_is_covered_before_it_is_sprayed_and_never_with_foam() {
    String fire = StandingAdvice.WAX_FIRE.text(Locale.ENGLISH);
    assertThat(fire)
        .containsSubsequence(
            "heat off", "a lid", "from the side", "carbon dioxide or powder", "No lid", "EN 1869")
        .contains("no foam", "3 l", "accident insurers advise against");
    assertThat(remedy("water-extinguisher", "water-extinguisher")).contains("no foam", "no water");
    assertThat(remedy("no-lid", "no-lid")).contains("a blanket does not take its place");
  }

  @Test
  void oily_rags_lie_outdoors_or_under_water_wherever_it_is_said() {
    for (String text :
        List.of(StandingAdvice.OILY_RAGS.text(Locale.ENGLISH), remedy("oily-rags", "oily-rags"))) {
      assertThat(text).contains("flat outdoors", "under water in a closed metal can");
    }
  }

  private static String remedy(String circumstance, String rule) {
    return Plans.review(MEDIUM + "liquid 80; " + circumstance)
        .finding(rule)
        .get()
        .remedy(Locale.ENGLISH);
  }

  // Every double is a temperature

  @ParameterizedTest
  @ValueSource(doubles = {-273.15, -273, 1e-300, 1e9, 1e15, 1e308, Double.MAX_VALUE})
  void temperature_that_no_thermometer_shows_has_a_review_with_texts(double celsius) {
    TemperaturePoint point = TemperaturePoint.ofCelsius(celsius);
    HeatingPlan plan =
        Plans.parse(MEDIUM + "plate 80 +5").toBuilder()
            .liquidReading(point)
            .surfaceReading(point, SurfaceMethod.PROBE)
            .build();
    assertThatCode(
            () -> {
              texts(HeatingRules.standard().review(plan), Locale.GERMAN);
              HeatingReading.of(Place.LIQUID, point).action().atOnce(Locale.GERMAN);
            })
        .doesNotThrowAnyException();
  }

  // Two versions of one material are two

  @Test
  void own_wax_with_a_lower_flash_point_blocks_whatever_the_order_of_the_parts() {
    Material standard = MaterialCatalogue.standard().require("beeswax-yellow");
    Material own =
        MaterialCatalogue.standard()
            .plus(
                "material: beeswax-yellow\n  flash-point: 120 °C, flash-closed-cup | user | read\n")
            .require("beeswax-yellow");
    for (Composition mix :
        List.of(
            Composition.ofParts(List.of(standard, own), 1, 99),
            Composition.ofParts(List.of(own, standard), 99, 1))) {
      HeatingPlan plan =
          HeatingPlan.builder(mix).liquidReading(TemperaturePoint.ofCelsius(88)).build();
      assertThat(HeatingRules.standard().review(plan).finding("flash-margin")).isPresent();
    }
  }

  private static List<String> texts(HeatingReview review, Locale reader) {
    return Stream.concat(
            review.findings().stream()
                .flatMap(f -> Stream.of(f.summary(reader), f.reason(reader), f.remedy(reader))),
            review.notAssessed().stream().flatMap(n -> Stream.of(n.what(reader), n.remedy(reader))))
        .toList();
  }
}
