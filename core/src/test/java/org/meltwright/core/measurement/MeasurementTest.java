// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.material.Comparison;
import org.meltwright.core.material.Comparison.Agreement;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.OpenTime;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.units.Density;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

class MeasurementTest {

  private static final Material WAX = MaterialCatalogue.standard().require("beeswax-yellow");
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  private static Measurement density(double value, double u, double celsius) {
    return Measurement.of(
            "full cup of melt",
            "kg/m³",
            List.of(new Measurement.Input("density", "kg/m³", Reading.of(value, u))),
            x -> x[0])
        .at(TemperaturePoint.ofCelsius(celsius));
  }

  private static Comparison<PropertyRange<Density>> compared(Measurement measured) {
    var figure = measured.figure(PropertyKey.LIQUID_DENSITY, "Ada", DAY);
    Material bag = WAX.withLot("7").withFirst(PropertyKey.LIQUID_DENSITY, figure);
    return Comparison.of(bag, PropertyKey.LIQUID_DENSITY).orElseThrow();
  }

  /** 820 to 850 kg/m³ at 80 °C are in print. */
  @ParameterizedTest
  @CsvSource({
    "835, 2, 80, AGREES",
    "853, 1.5, 80, AGREES",
    "853, 1.4, 80, DIFFERS",
    "816, 2, 84, AGREES",
    "816, 1.9, 84, DIFFERS",
    "835, 2, 98, NOT_COMPARABLE"
  })
  void ownFigure_agreesWithinItsExpandedUncertainty(
      double value, double u, double celsius, Agreement expected) {
    assertThat(compared(density(value, u, celsius)).agreement()).isEqualTo(expected);
  }

  @Test
  void ownFigure_standsFirst_andSaysWhoWhenHowAndHowSure() {
    var comparison = compared(density(861, 2, 80));
    var own = comparison.own();
    assertThat(own.source().kind()).isEqualTo(SourceKind.OWN_MEASUREMENT);
    assertThat(own.source().citation())
        .isEqualTo("Own measurement by Ada, full cup of melt (2026-03-14)");
    assertThat(own.knowledge()).isEqualTo(Knowledge.MEASURED);
    assertThat(own.note()).hasValue("861.0 ± 4.0 kg/m³ at 80 °C, k = 2");
    assertThat(comparison.printed().source().id()).isEqualTo("pcm-papers");
  }

  @Test
  void figureForRules_isTheWorseOfBoth_whereTheyDiffer_andOnesOwnWhereTheyAgree() {
    assertThat(PropertyKey.LIQUID_DENSITY.format(compared(density(861, 2, 80)).forRules()))
        .isEqualTo("0.82 to 0.865 g/ml at 80 °C");
    assertThat(PropertyKey.LIQUID_DENSITY.format(compared(density(840, 2, 80)).forRules()))
        .isEqualTo("0.836 to 0.844 g/ml at 80 °C");
  }

  @Test
  void material_withoutAFigureOfOnesOwn_hasNothingToCompare() {
    assertThat(Comparison.of(WAX, PropertyKey.LIQUID_DENSITY)).isEmpty();
  }

  @Test
  void text_readBack_isTheRangeOfTheExpandedUncertainty() {
    var value = density(832.14, 1.91, 80).figure(PropertyKey.LIQUID_DENSITY, "Ada", DAY).value();
    assertThat(value.range().lowSi()).isEqualTo(828.2);
    assertThat(value.range().highSi()).isEqualTo(836.0);
    assertThat(value.at()).hasValueSatisfying(t -> assertThat(t.low().celsius()).isEqualTo(80));
  }

  @Test
  void figure_ofAnotherUnit_isRefused() {
    assertThatThrownBy(() -> density(832, 2, 80).figure(PropertyKey.ACID_VALUE, "Ada", DAY))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(MeasurementProblem.OTHER_UNIT));
  }

  @Test
  void flashPoint_isNeverMeasuredAtHome() {
    Measurement flash =
        Measurement.of(
            "flash point",
            "°C",
            List.of(new Measurement.Input("flame", "°C", Reading.of(240, 5))),
            x -> x[0]);
    var figure = flash.figure(PropertyKey.AUTOIGNITION, "Ada", DAY);
    assertThatThrownBy(() -> WAX.withFirst(PropertyKey.AUTOIGNITION, figure))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(MaterialProblem.NOT_AT_HOME));
  }

  @Test
  void twoPoints_lineGoesThroughBoth_andIsAsSureThereAsTheyAre() {
    var ice = ThermometerCalibration.Point.ice(Reading.of(0.4, 0.1));
    var boil = ThermometerCalibration.Point.boiling(Reading.of(99.1, 0.1), Reading.exact(1013.25));
    var line = ThermometerCalibration.of(List.of(ice, boil));
    assertThat(line.correction(0.4).value()).isCloseTo(-0.4, within(1e-12));
    assertThat(line.correction(0.4).uncertainty())
        .isCloseTo(Math.hypot(0.1, 0.2 / Math.sqrt(3)), within(1e-12));
    assertThat(line.correction(99.1).value()).isCloseTo(99.974 - 99.1, within(0.001));
    assertThat(line.correction(99.1).uncertainty())
        .isCloseTo(Math.hypot(0.1, 0.3 / Math.sqrt(3)), within(1e-12));
    assertThat(line.correction(50).uncertainty()).isLessThan(line.correction(0.4).uncertainty());
  }

  @Test
  void calibration_ofOtherPoints_isAnother() {
    var ice = ThermometerCalibration.Point.ice(Reading.of(0.4, 0.1));
    var boil = ThermometerCalibration.Point.boilingAtHeight(Reading.of(99, 0.1), 180);
    var other = ThermometerCalibration.Point.boilingAtHeight(Reading.of(99.1, 0.1), 180);
    var line = ThermometerCalibration.of(List.of(ice, boil));
    assertThat(line).isEqualTo(ThermometerCalibration.of(List.of(ice, boil)));
    assertThat(line).hasSameHashCodeAs(ThermometerCalibration.of(List.of(ice, boil)));
    assertThat(line).isNotEqualTo(ThermometerCalibration.of(List.of(ice, other)));
    assertThat(line).isNotEqualTo(ThermometerCalibration.of(List.of(ice, boil), 20));
  }

  @Test
  void boilingPoint_fallsWithTheHeight() {
    var sea = ThermometerCalibration.Point.boilingAtHeight(Reading.exact(99), 0);
    var alp = ThermometerCalibration.Point.boilingAtHeight(Reading.exact(94), 1600);
    assertThat(sea.trueCelsius().value()).isCloseTo(99.97, within(0.01));
    assertThat(alp.trueCelsius().value()).isBetween(94.4, 94.8);
    assertThat(alp.trueCelsius().uncertainty()).isGreaterThan(0.4);
  }

  @Test
  void points_tooFewOrInOnePlace_areRefused() {
    var ice = ThermometerCalibration.Point.ice(Reading.within(0.4, 0.1));
    assertThatThrownBy(() -> ThermometerCalibration.of(List.of(ice)))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> ThermometerCalibration.of(List.of(ice, ice, ice)))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> Reading.repeated(1)).isInstanceOf(ProblemException.class);
  }

  @Test
  void weighings_thatCannotBe_areRefused() {
    Reading one = Reading.exact(1);
    Reading two = Reading.exact(2);
    Reading cold = Reading.exact(20);
    assertThatThrownBy(() -> new FullCup(two, one, cold, two, cold))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new FullCup(one, two, Reading.exact(60), two, cold))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new Bottle(one, two, Reading.exact(9), two, Reading.exact(998)))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new Sinker(one, two, cold, one, cold))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new DrainedOil(one, one, Reading.exact(9)))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> new ResinDirt(one, one, Reading.exact(9), ResinDirt.PRESSED))
        .isInstanceOf(ProblemException.class);
  }

  /** The time at 68 °C, fed back, gives 68 °C. */
  @Test
  void contact_isTheTemperatureThatGivesTheTimeMeasured() {
    MeltFigures melt = MeltFigures.of(Composition.of(WAX), MeltFigures.TYPICAL);
    Panel panel = Panel.of(PanelKind.WOOD, 0.010, TemperaturePoint.ofCelsius(20));
    Surroundings room = Surroundings.stillRoom(TemperaturePoint.ofCelsius(20));
    Film film = Film.of(melt, 3e-4, 3e-4, TemperaturePoint.ofCelsius(68));
    double seconds = OpenTime.of(film, panel, room).halfSet().centralSi();
    TimedStrokes strokes =
        new TimedStrokes(
            Reading.exact(100),
            Reading.exact(100 + 3e-4 * 0.01 * 955 * 1e3),
            Reading.exact(100),
            1,
            Reading.exact(955),
            Reading.of(seconds, 0.02 * seconds));
    Measurement contact = strokes.contact(melt, panel, room);
    assertThat(contact.value()).isCloseTo(68, within(0.5));
    assertThat(contact.uncertainty()).isGreaterThan(0.1);
  }

  @Property
  void aSumOfTwoReadings_isAsUnsureAsTheRootOfTheSquares(
      @ForAll @DoubleRange(min = 0.01, max = 10) double a,
      @ForAll @DoubleRange(min = 0.01, max = 10) double b) {
    Measurement sum =
        Measurement.of(
            "sum",
            "",
            List.of(
                new Measurement.Input("a", "", Reading.of(1, a)),
                new Measurement.Input("b", "", Reading.of(2, b))),
            x -> x[0] + x[1]);
    assertThat(sum.uncertainty()).isCloseTo(Math.hypot(a, b), within(1e-9));
    assertThat(sum.expanded()).isCloseTo(2 * Math.hypot(a, b), within(1e-9));
  }

  @Property
  void moreReadings_neverNeedALargerFactor(
      @ForAll @DoubleRange(min = 1, max = 500) double freedom) {
    assertThat(Measurement.CoverageFactor.of(freedom + 1))
        .isLessThanOrEqualTo(Measurement.CoverageFactor.of(freedom));
    assertThat(Measurement.CoverageFactor.of(freedom)).isGreaterThanOrEqualTo(2);
  }

  @Property
  void aMaterialsFileLine_readsBackWhatWasMeasured(
      @ForAll @DoubleRange(min = 700, max = 6000) double value,
      @ForAll @DoubleRange(min = 0.01, max = 90) double u) {
    Measurement measured = density(value, u, 80);
    var range = measured.figure(PropertyKey.LIQUID_DENSITY, "Ada", DAY).value().range();
    double place = measured.expanded() / 9;
    assertThat(range.middleSi()).isCloseTo(value, within(place));
    assertThat(range.highSi() - range.lowSi())
        .isGreaterThanOrEqualTo(2 * measured.expanded() * (1 - 1e-8));
  }
}
