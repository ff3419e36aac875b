// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.PropertyKey;

/** Measurements against numbers that guides and standards print, to every digit printed. */
class PublishedMeasurementsTest {

  /** JCGM 100:2008, table H.6: readings in °C. */
  private static final double[] T = {
    21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
  };

  /** JCGM 100:2008, table H.6: observed corrections in °C. */
  private static final double[] B = {
    -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
  };

  private static final ThermometerCalibration H3 =
      ThermometerCalibration.of(
          IntStream.range(0, T.length)
              .mapToObj(
                  i ->
                      new ThermometerCalibration.Point(
                          Reading.exact(T[i]), Reading.exact(T[i] + B[i])))
              .toList(),
          20);

  /** JCGM 100:2008, H.3.3: y₁ = −0.1712(29), y₂ = 0.00218(67), r = −0.930, s = 0.0035. */
  @Test
  void thermometer_ofTheGum_hasItsLine() {
    assertThat(rounded(H3.intercept().value(), 4)).isEqualTo("-0.1712");
    assertThat(rounded(H3.intercept().uncertainty(), 4)).isEqualTo("0.0029");
    assertThat(rounded(H3.slope().value(), 5)).isEqualTo("0.00218");
    assertThat(rounded(H3.slope().uncertainty(), 5)).isEqualTo("0.00067");
    assertThat(rounded(H3.correlation(), 3)).isEqualTo("-0.930");
    assertThat(H3.intercept().freedom()).isCloseTo(9, within(1e-9));
  }

  /** JCGM 100:2008, H.3.4: b(30 °C) = −0.1494(41). */
  @Test
  void thermometer_ofTheGum_correctsAt30() {
    assertThat(rounded(H3.correction(30).value(), 4)).isEqualTo("-0.1494");
    assertThat(rounded(H3.correction(30).uncertainty(), 4)).isEqualTo("0.0041");
  }

  /** By another way: the correction and its uncertainty do not depend on the reference. */
  @ParameterizedTest
  @CsvSource({"0", "20", "24.0085", "30"})
  void correction_isTheSameForEveryReference(double reference) {
    ThermometerCalibration other =
        ThermometerCalibration.of(
            IntStream.range(0, T.length)
                .mapToObj(
                    i ->
                        new ThermometerCalibration.Point(
                            Reading.exact(T[i]), Reading.exact(T[i] + B[i])))
                .toList(),
            reference);
    assertThat(other.correction(30).value()).isCloseTo(H3.correction(30).value(), within(1e-9));
    assertThat(other.correction(30).uncertainty())
        .isCloseTo(H3.correction(30).uncertainty(), within(1e-9));
  }

  /** EURACHEM/CITAC guide QUAM:2012, example A1: 1002.7 mg/l, standard uncertainty 0.835 mg/l. */
  @Test
  void cadmiumStandard_ofEurachem_hasItsUncertainty() {
    Reading volume =
        Reading.nearlyWithin(100, 0.1).also(0.02).also(100 * 4 * 2.1e-4 / Math.sqrt(3));
    Measurement standard =
        Measurement.of(
            "mass concentration",
            "mg/l",
            List.of(
                new Measurement.Input("mass", "mg", Reading.of(100.28, 0.05)),
                new Measurement.Input("purity", "", Reading.within(0.9999, 0.0001)),
                new Measurement.Input("volume", "ml", volume)),
            x -> 1000 * x[0] * x[1] / x[2]);
    assertThat(rounded(standard.value(), 1)).isEqualTo("1002.7");
    assertThat(rounded(standard.uncertainty(), 3)).isEqualTo("0.835");
    assertThat(rounded(volume.uncertainty(), 2)).isEqualTo("0.07");
    assertThat(standard.contributions().get(0).input().name()).isEqualTo("volume");
  }

  /** JCGM 100:2008, table G.2, column 95.45 %. */
  @ParameterizedTest
  @CsvSource({
    "1, 13.97",
    "2, 4.53",
    "3, 3.31",
    "4, 2.87",
    "5, 2.65",
    "8, 2.37",
    "10, 2.28",
    "20, 2.13",
    "50, 2.05",
    "100, 2.025"
  })
  void coverageFactor_isStudentsT(double freedom, String printed) {
    int places = new BigDecimal(printed).scale();
    assertThat(rounded(Measurement.CoverageFactor.of(freedom), places)).isEqualTo(printed);
  }

  @Test
  void coverageFactor_withoutLimit_isTwo() {
    assertThat(Measurement.CoverageFactor.of(Double.POSITIVE_INFINITY)).isEqualTo(2);
    assertThat(Measurement.CoverageFactor.of(1e6)).isCloseTo(2, within(1e-4));
  }

  /** IAPWS-IF97 (2012 release), table 36: saturation temperature in K for 0.1, 1 and 10 MPa. */
  @ParameterizedTest
  @CsvSource({"0.1, 372.755919", "1, 453.035632", "10, 584.149488"})
  void boilingPoint_isThatOfIapws(double megapascal, String printed) {
    assertThat(rounded(ThermometerCalibration.BoilingWater.kelvin(megapascal), 6))
        .isEqualTo(printed);
  }

  /** ISO 2533, standard atmosphere: 898.76 hPa at 1000 m, 795.01 at 2000 m. */
  @ParameterizedTest
  @CsvSource({"0, 1013.25", "1000, 898.76", "2000, 795.01"})
  void airPressure_isThatOfTheStandardAtmosphere(double metres, String printed) {
    double height = 6356766.0 * metres / (6356766.0 + metres); // geopotential
    assertThat(ThermometerCalibration.BoilingWater.hectopascal(height))
        .isCloseTo(Double.parseDouble(printed), within(0.011));
  }

  /** IAPWS-95 as the catalogue holds it. */
  @ParameterizedTest
  @CsvSource({"4, 0.999975", "15, 0.999103", "20, 0.998207", "25, 0.997048"})
  void waterDensity_isThatOfTheCatalogue(double celsius, double gramsPerMillilitre) {
    assertThat(Measuring.waterDensity(celsius)).isCloseTo(gramsPerMillilitre * 1000, within(0.01));
    assertThat(MaterialCatalogue.standard().require("water").figures(PropertyKey.LIQUID_DENSITY))
        .anyMatch(f -> Math.abs(f.value().range().lowSi() - gramsPerMillilitre * 1000) < 1e-6);
  }

  private static String rounded(double value, int places) {
    return new BigDecimal(value, new MathContext(15))
        .setScale(places, RoundingMode.HALF_UP)
        .toPlainString();
  }
}
