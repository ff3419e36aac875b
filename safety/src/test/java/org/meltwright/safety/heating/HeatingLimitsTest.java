// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.safety.heating.HeatingLimits.Figure;
import org.meltwright.units.Bilingual;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

class HeatingLimitsTest {

  private static final HeatingLimits STANDARD = HeatingLimits.standard();

  private static TemperaturePoint celsius(double value) {
    return TemperaturePoint.ofCelsius(value);
  }

  @Test
  void tightening_refusesWhatIsLooserThanTheStandard() {
    assertThatThrownBy(() -> STANDARD.withTarget(celsius(90.1))).hasMessageContaining("looser");
    assertThatThrownBy(() -> STANDARD.withHardCeiling(celsius(94))).hasMessageContaining("looser");
    assertThatThrownBy(() -> STANDARD.withFloorLimit(celsius(111))).hasMessageContaining("looser");
    assertThatThrownBy(() -> STANDARD.withFlashMargin(TemperatureDifference.ofKelvin(49)))
        .hasMessageContaining("looser");
    assertThatThrownBy(() -> STANDARD.withLeastWidth(TemperatureDifference.ofKelvin(4)))
        .hasMessageContaining("looser");
  }

  @Test
  void withHardCeiling_takesTheTargetWithIt() {
    HeatingLimits cool = STANDARD.withHardCeiling(celsius(80));
    assertThat(cool.target()).isEqualTo(celsius(80));
    assertThatThrownBy(() -> cool.withTarget(celsius(81))).isInstanceOf(ProblemException.class);
  }

  @Test
  void floorCaution_beginsAtTheHardCeiling_orAtALowerFloorLimit() {
    assertThat(STANDARD.floorCaution()).isEqualTo(celsius(93.3));
    assertThat(STANDARD.withFloorLimit(celsius(85)).floorCaution()).isEqualTo(celsius(85));
  }

  @ParameterizedTest
  @CsvSource({"0, 40", "2, 40", "3, 40", "6, 40", "7, 45", "11, 45", "12, 75", "15, 75"})
  void forYoungest_setsTargetAndCeiling(int age, double limit) {
    HeatingLimits limits = HeatingLimits.forYoungest(age);
    assertThat(limits.target()).isEqualTo(celsius(limit));
    assertThat(limits.hardCeiling()).isEqualTo(celsius(limit));
    assertThat(limits.floorLimit()).isEqualTo(STANDARD.floorLimit());
    assertThat(limits.reasons(Figure.TARGET)).hasSize(1);
  }

  @Test
  void forYoungest_isStandardFrom16On() {
    assertThat(HeatingLimits.forYoungest(16)).isEqualTo(STANDARD);
    assertThat(HeatingLimits.forYoungest(70)).isEqualTo(STANDARD);
    assertThatThrownBy(() -> HeatingLimits.forYoungest(-1)).isInstanceOf(ProblemException.class);
  }

  @Provide
  Arbitrary<HeatingLimits> limits() {
    Arbitrary<Double> target = Arbitraries.of(90.0, 85.0, 80.0, 60.0);
    Arbitrary<Double> ceiling = Arbitraries.of(93.3, 90.0, 85.0, 75.0);
    Arbitrary<Double> floor = Arbitraries.of(110.0, 100.0, 80.0);
    Arbitrary<Double> margin = Arbitraries.of(50.0, 60.0, 80.0);
    Arbitrary<String> reason = Arbitraries.of("school", "insurer", "house rule");
    return Combinators.combine(target, ceiling, floor, margin, reason)
        .as(
            (t, c, f, m, r) ->
                STANDARD
                    .withTarget(celsius(t))
                    .withHardCeiling(celsius(c))
                    .withFloorLimit(celsius(f))
                    .withFlashMargin(TemperatureDifference.ofKelvin(m))
                    .because(Bilingual.of(r)));
  }

  @Property(tries = 500)
  void tightened_takesTheStricterOfEach_whateverTheOrder(
      @ForAll("limits") HeatingLimits a,
      @ForAll("limits") HeatingLimits b,
      @ForAll("limits") HeatingLimits c) {
    assertThat(a.tightened(b)).isEqualTo(b.tightened(a));
    assertThat(a.tightened(b).tightened(c)).isEqualTo(a.tightened(b.tightened(c)));
    assertThat(a.tightened(a)).isEqualTo(a);
    assertThat(a.tightened(STANDARD)).isEqualTo(a);
    assertThat(a.tightened(b).hardCeiling().isAbove(a.hardCeiling())).isFalse();
    assertThat(a.tightened(b).target().isAbove(a.tightened(b).hardCeiling())).isFalse();
  }

  @Test
  void withLimits_refusesWhatIsLooserThanTheSetsOwn_figureByFigure() {
    HeatingRules school =
        HeatingRules.standard().withLimits(STANDARD.withHardCeiling(celsius(80)), "house rule 3");
    HeatingLimits other = STANDARD.withFloorLimit(celsius(100)); // its ceiling is the standard one
    assertThatThrownBy(() -> school.withLimits(other, "another rule"))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems())
                    .extracting(p -> p.details().get("figure"))
                    .containsExactly("target", "hard-ceiling"));
    assertThatThrownBy(() -> school.withLimits(school.limits(), " "))
        .hasMessageContaining("reason-missing");
  }

  @Test
  void limitLooser_namesItsFigure() {
    assertThatThrownBy(() -> STANDARD.withHardCeiling(celsius(94)))
        .hasMessageContaining("The hard ceiling cannot be 94 °C here");
    assertThatThrownBy(() -> HeatingRules.standard().withLimits(STANDARD, " "))
        .hasMessageContaining("No reason was given for \"limits\"");
  }

  @Test
  void figureThatChanges_dropsTheReasonOfTheOldOne() {
    HeatingRules insured =
        HeatingRules.standard().withLimits(STANDARD.withHardCeiling(celsius(80)), "insurer");
    HeatingLimits tighter = insured.limits().withHardCeiling(celsius(65));
    HeatingRules both = insured.withLimits(tighter, "children with eczema");

    assertThat(both.limits().reasons(Figure.HARD_CEILING))
        .containsExactly(Bilingual.of("children with eczema"));
    assertThat(both.limits().reasons(Figure.TARGET))
        .containsExactly(Bilingual.of("children with eczema"));
    assertThat(insured.limits().withFloorLimit(celsius(100)).reasons(Figure.HARD_CEILING))
        .containsExactly(Bilingual.of("insurer"));
  }

  @Test
  void limitsOfAReview_doNotStickToItsPlan() {
    HeatingPlan plan = Plans.review("mix beeswax-yellow; people 2 0 6 13").plan();
    assertThat(plan.limits().hardCeiling()).isEqualTo(celsius(75));
    assertThat(plan.toBuilder().build().limits()).isEqualTo(STANDARD);
  }

  @Test
  void findingAtATightenedLimit_saysSoAndWhy() {
    HeatingRules school =
        HeatingRules.standard().withLimits(STANDARD.withHardCeiling(celsius(80)), "house rule 3");
    HeatingReview review =
        school.review(Plans.parse("mix beeswax-yellow; plate 75 +5; liquid 81; no-others"));
    Finding ceiling = review.finding("hard-ceiling").get();
    assertThat(ceiling.summary(Locale.ENGLISH)).contains("at or above the hard ceiling of 80.0 °C");
    assertThat(ceiling.reason(Locale.ENGLISH))
        .endsWith("The hard ceiling is tightened to 80.0 °C: house rule 3.");
    assertThat(ceiling.reason(Locale.GERMAN))
        .endsWith("Verschärft auf 80,0 °C (harte Grenze): house rule 3.");
    assertThat(review.marginToTarget().get().kelvin()).isCloseTo(-1, within());
    assertThat(HeatingReviewData.of(review, Locale.ENGLISH).limits().tightened())
        .containsExactly(
            new HeatingReviewData.TightenedData("target", List.of("house rule 3")),
            new HeatingReviewData.TightenedData("hard-ceiling", List.of("house rule 3")));
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }

  @Test
  void age_tightensTheLimits_unlessAdultsAloneHandleThePot() {
    String plan = "mix beeswax-yellow; plate 75 +5; liquid 78; people 2 0 6 13";
    assertThat(Plans.review(plan).finding("hard-ceiling")).isPresent();
    assertThat(Plans.review(plan).limits().hardCeiling()).isEqualTo(celsius(75));
    assertThat(Plans.review(plan + " adults").finding("hard-ceiling")).isEmpty();
    assertThat(Plans.review(plan.replace(" 13", "")).limits()).isEqualTo(STANDARD);
  }

  @Test
  void ownRule_seesTheLimitsOfTheReview() {
    HeatingRules school =
        HeatingRules.standard()
            .withLimits(STANDARD.withTarget(celsius(70)), "low heat")
            .with(
                OwnRule.of(
                    "own-target",
                    plan ->
                        RuleOutcome.foundIf(
                            plan.limits().target().equals(TemperaturePoint.ofCelsius(70)))));
    assertThat(school.review(Plans.parse("mix beeswax-yellow")).finding("own-target")).isPresent();
  }

  @Test
  void action_followsTheLimitsGiven() {
    HeatingReading reading = HeatingReading.of(HeatingReading.Place.LIQUID, celsius(78));
    assertThat(reading.action().level()).isEqualTo(HeatingAction.Level.KEEP_WATCH);
    HeatingAction child =
        reading.action(HeatingLimits.forYoungest(13), Plans.mix("beeswax-yellow"));
    assertThat(child.level()).isEqualTo(HeatingAction.Level.HEAT_OFF);
    assertThat(child.atOnce(Locale.ENGLISH)).contains("hard ceiling of 75.0 °C");
  }

  /** The margin for the brush is the same at each target, so less said is never judged milder. */
  @Test
  void age_that_lowers_the_target_does_not_reopen_a_closed_window() {
    HeatingRules rules =
        HeatingRules.standard()
            .withLimits(STANDARD.withHardCeiling(celsius(76)).withTarget(celsius(76)), "own");
    String plan = "mix beeswax-yellow; liquid 68; people 1 0 3 13";

    assertThat(rules.review(Plans.parse(plan + " adults")).finding("window-closed")).isPresent();
    assertThat(rules.review(Plans.parse(plan)).finding("window-closed")).isPresent();
  }

  /**
   * Where low heat is what an age asks for, that the window is narrow is nothing against the wax.
   */
  @Test
  void beeswax_can_be_worked_at_the_low_heat_of_an_age() {
    String plan = "mix beeswax-yellow; plate 70 +3; liquid 72; people 2 1 10 13";
    assertThat(Plans.review(plan).findings()).isEmpty();
    assertThat(Plans.review(plan.replace("13", "9")).finding("window-closed")).isPresent();
    assertThat(Plans.review(plan.replace("beeswax-yellow", "carnauba")).finding("window-closed"))
        .isPresent();
  }

  /**
   * At a ceiling lowered for a child the reading counts, and still does not vouch for the probe.
   */
  @ParameterizedTest
  @CsvSource({
    "cooker, slow-cooker",
    "bath, water-bath",
    "numbers, ring-with-numbers",
    "oven 80, oven"
  })
  void reading_tooColdForMoltenWax_leavesTheHeatUnprobed(String heat, String rule) {
    String plan = "mix microcrystalline; %s; liquid 41.6; people 1 1 1 2".formatted(heat);

    assertThat(Plans.review(plan + " adults").finding(rule)).isPresent();
    assertThat(Plans.review(plan).finding(rule)).isPresent();
    assertThat(Plans.review(plan).finding("hard-ceiling")).isPresent();
  }
}
