// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures that circulate and are wrong stay out. */
class RejectedFiguresTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();

  @ParameterizedTest
  @CsvFileSource(resources = "rejected-figures.csv", numLinesToSkip = 1)
  void figureThatIsWrong_isNotShipped(
      String id, String property, double low, double high, String why) {
    PropertyKey<?> key = PropertyKey.find(property).orElseThrow();
    assertThat(CATALOGUE.require(id).figures(key))
        .as(why)
        .noneMatch(f -> low(f.value()) <= high && high(f.value()) >= low);
  }

  private static double low(Object value) {
    return end(value, true);
  }

  private static double high(Object value) {
    return end(value, false);
  }

  private static double end(Object value, boolean low) {
    if (value instanceof PropertyRange<?> range) {
      return low ? range.range().lowSi() : range.range().highSi();
    }
    if (value instanceof DefinedTemperature temperature) {
      return (low ? temperature.range().low() : temperature.range().high()).celsius();
    }
    if (value instanceof MassFractionRange share) {
      return (low ? share.low() : share.high()).value();
    }
    NumberRange number = (NumberRange) value;
    return low ? number.low() : number.high();
  }

  @Test
  void meltingFigureOfAResin_isNeverForRules() {
    for (Material resin : CATALOGUE.byFamily(MaterialFamily.RESIN)) {
      assertThat(resin.usableFigures(PropertyKey.MELTING_RANGE)).as(resin.id()).isEmpty();
    }
    assertThat(CATALOGUE.require("damar").require(PropertyKey.MELTING_RANGE).barredBecause())
        .hasValueSatisfying(reason -> assertThat(reason).contains("no temperature to heat to"));
  }

  @Test
  void resin_dissolvesFromATemperatureThatNeverPasses90() {
    for (Material resin : CATALOGUE.having(PropertyKey.DISSOLVES_FROM)) {
      assertThat(resin.require(PropertyKey.DISSOLVES_FROM).value().range().high().celsius())
          .as(resin.id())
          .isLessThanOrEqualTo(90);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "working-temperature",
        "fume-warning-temperature",
        "decomposition-claimed-onset",
        "exposure-limit-twa",
        "exposure-limit-ceiling"
      })
  void propertyThatStaysOut_hasNoKey(String id) {
    assertThat(PropertyKey.find(id)).isEmpty();
  }

  @Test
  void bandsOfTheTrade_areNoFiguresOfBeeswax() {
    Material beeswax = CATALOGUE.require("beeswax-yellow");
    List<DefinedTemperature> temperatures =
        beeswax.properties().stream()
            .flatMap(key -> beeswax.figures(key).stream())
            .map(f -> (Object) f.value())
            .filter(DefinedTemperature.class::isInstance)
            .map(DefinedTemperature.class::cast)
            .toList();
    assertThat(temperatures)
        .isNotEmpty()
        .noneMatch(t -> t.range().high().celsius() > 90 && t.range().low().celsius() < 125);
  }

  @Test
  void referenceSubstances_areOnlyInTheTests() {
    assertThat(CATALOGUE.all())
        .extracting(Material::id)
        .noneMatch(id -> id.startsWith("ref-"))
        .doesNotContain("acrolein");
  }
}
