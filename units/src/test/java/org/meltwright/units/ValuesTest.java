// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;

import org.junit.jupiter.api.Test;

/** Fractions, ratios, ranges, estimates and limits. */
class ValuesTest {

  @Test
  void estimate_withoutEnd_isATimeOnly() {
    double never = Double.POSITIVE_INFINITY;
    assertThat(new Estimate<>(QuantityKind.TIME, 60, never, never).highSi()).isInfinite();
    assertThat(new Estimate<>(QuantityKind.TIME, never, never, never).lowSi()).isInfinite();
    assertThatThrownBy(() -> new Estimate<>(QuantityKind.MASS, 1, 2, never))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new Estimate<>(QuantityKind.DENSITY, -never, 2, 3))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new Estimate<>(QuantityKind.TIME, -never, 2, 3))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new Estimate<>(QuantityKind.TIME, 1, Double.NaN, 3))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void ofPercent_10_is_of_a_tenth_on_each_basis() {
    assertThat(MassFraction.ofPercent(10)).isEqualTo(MassFraction.of(0.10));
    assertThat(VolumeFraction.ofPercent(10)).isEqualTo(VolumeFraction.of(0.10));
    assertThat(MassFraction.of(0.10)).isNotEqualTo(VolumeFraction.of(0.10));
    assertThat(MassFraction.ofPercent(10).complement().percent()).isCloseTo(90, within(1e-12));
    assertThat(MassFraction.ofPercent(10)).hasToString("10.0 % by mass");
    assertThat(VolumeFraction.ofPercent(10)).hasToString("10.0 % by volume");
    assertThat(MassFraction.of(0.1)).isLessThan(MassFraction.of(0.2));
    assertThat(MassFraction.of(-0.0)).isEqualTo(MassFraction.ZERO);
  }

  @Test
  void fractions_outside_zero_to_one_are_refused() {
    for (double wrong : new double[] {-0.01, 1.01, 10, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> MassFraction.of(wrong)).isInstanceOf(ProblemException.class);
      assertThatThrownBy(() -> VolumeFraction.of(wrong)).isInstanceOf(ProblemException.class);
    }
    assertThatThrownBy(() -> MassFraction.ofPercent(100.1)).isInstanceOf(ProblemException.class);
  }

  @Test
  void firstShare_of_1_to_8_is_a_ninth_and_not_an_eighth() {
    MixingRatio ratio = new MixingRatio(1, 8, "resin", "wax");

    assertThat(ratio.firstShare()).isEqualTo(1.0 / 9);
    assertThat(ratio.secondShare()).isEqualTo(8.0 / 9);
    assertThat(ratio).hasToString("1.0:8.0 resin:wax");
    assertThatThrownBy(() -> new MixingRatio(0, 0, "a", "b")).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new MixingRatio(-1, 8, "a", "b")).isInstanceOf(ProblemException.class);
  }

  @Test
  void a_range_has_its_low_end_first() {
    QuantityRange<javax.measure.quantity.Mass> range =
        QuantityRange.of(QuantityKind.MASS, grams(500), kilograms(2));

    assertThat(range.middleSi()).isEqualTo(1.25);
    assertThat(range.low().getValue().doubleValue()).isEqualTo(0.5);
    assertThat(range.high().getValue().doubleValue()).isEqualTo(2);
    assertThatThrownBy(() -> QuantityRange.of(QuantityKind.MASS, kilograms(2), grams(500)))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("range.reversed");
  }

  @Test
  void an_estimate_is_low_central_high_and_may_have_no_end() {
    Estimate<javax.measure.quantity.Time> estimate =
        new Estimate<>(QuantityKind.TIME, 60, 90, Double.POSITIVE_INFINITY);

    assertThat(estimate.low().getValue().doubleValue()).isEqualTo(60);
    assertThat(estimate.central().getValue().doubleValue()).isEqualTo(90);
    assertThatThrownBy(() -> new Estimate<>(QuantityKind.TIME, 90, 60, 120))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new Estimate<>(QuantityKind.TIME, Double.NaN, 60, 120))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void a_limit_is_reached_at_its_value_and_passed_only_beyond() {
    assertThat(Limit.reaches(25.0 / 1000, 0.025)).isTrue();
    assertThat(Limit.reaches(0.1 + 0.2, 0.3)).isTrue();
    assertThat(Limit.reaches(0.3 - 1e-7, 0.3)).isFalse();
    assertThat(Limit.exceeds(0.1 + 0.2, 0.3)).isFalse();
    assertThat(Limit.exceeds(0.3 + 1e-7, 0.3)).isTrue();
  }

  @Test
  void short_factories_are_in_the_units_they_name() {
    assertThat(QuantityKind.MASS.toSi(grams(730))).isEqualTo(0.73);
    assertThat(QuantityKind.VOLUME.toSi(MetricUnits.litres(2))).isEqualTo(0.002);
    assertThat(QuantityKind.VOLUME.toSi(MetricUnits.millilitres(2))).isEqualTo(2e-6);
    assertThat(QuantityKind.DENSITY.toSi(MetricUnits.gramsPerMillilitre(0.96))).isEqualTo(960);
    assertThat(QuantityKind.LENGTH.toSi(MetricUnits.millimetres(5))).isEqualTo(0.005);
    assertThat(QuantityKind.AREA.toSi(MetricUnits.squareCentimetres(600))).isEqualTo(0.06);
    assertThat(QuantityKind.TIME.toSi(MetricUnits.minutes(90))).isEqualTo(5400);
    assertThat(QuantityKind.POWER.toSi(MetricUnits.watts(1500))).isEqualTo(1500);
    assertThat(QuantityKind.ENERGY.toSi(MetricUnits.kilowattHours(0.5))).isEqualTo(1.8e6);
    assertThat(QuantityKind.MASS.toSi(UsCustomaryUnits.pounds(1))).isEqualTo(0.45359237);
    assertThat(QuantityKind.MASS.toSi(UsCustomaryUnits.ounces(16))).isEqualTo(0.45359237);
    assertThat(QuantityKind.LENGTH.toSi(UsCustomaryUnits.inches(1))).isEqualTo(0.0254);
    assertThat(QuantityKind.VOLUME.toSi(UsCustomaryUnits.fluidOunces(128)))
        .isCloseTo(3.785411784e-3, within(1e-18));
    assertThat(QuantityKind.MASS.ofSi(0.73).getUnit()).isSameAs(MetricUnits.KILOGRAM);
  }

  @Test
  void ratio_sidesWithoutNamesOfTheirOwn_areRefusedInBothLanguages() {
    for (String side :
        java.util.List.of(
            "", " ", "wax", "a:b", "a\nb", "a\u2028b", "a ", "a\u00a0", " a", "2nd", "a±b")) {
      ProblemException refused =
          org.assertj.core.api.Assertions.catchThrowableOfType(
              ProblemException.class, () -> new MixingRatio(1, 8, side, "wax"));
      assertThat(refused).as("<%s>", side).isNotNull();
      Problem problem = refused.problems().get(0);
      assertThat(problem.code()).isEqualTo(UnitsProblem.RATIO_SIDES);
      assertThat(problem.what(java.util.Locale.ENGLISH)).contains("names of their own");
      assertThat(problem.what(java.util.Locale.GERMAN)).contains("eigenen Namen");
    }
  }
}
