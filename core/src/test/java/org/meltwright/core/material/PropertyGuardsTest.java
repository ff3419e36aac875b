// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.meltwright.units.TemperaturePoint.ofCelsius;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Density;
import org.meltwright.units.MaterialState;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperatureRange;

/** What a property denies in a file it denies in code. */
class PropertyGuardsTest {

  private static <V> Problem refused(PropertyKey<V> key, V value) {
    Material.Builder builder = Material.builder("wax");
    Sourced<V> figure = Sourced.of(value, Source.USER, Knowledge.READ);
    ProblemException refused =
        catchThrowableOfType(ProblemException.class, () -> builder.figure(key, figure));
    assertThat(refused).as("%s of %s", value, key).isNotNull();
    return refused.problems().get(0);
  }

  private static PropertyRange<Density> density(double low, double high, MaterialState state) {
    return PropertyRange.of(new QuantityRange<>(QuantityKind.DENSITY, low, high), state);
  }

  @Test
  void a_density_is_above_zero() {
    Problem problem = refused(PropertyKey.SOLID_DENSITY, density(-950, -950, MaterialState.SOLID));

    assertThat(problem.code().id()).isEqualTo("value.out-of-range");
    assertThat(problem.what(Locale.GERMAN)).contains("(Dichte)");
    assertThat(problem.allowed(Locale.ENGLISH)).startsWith("more than 0");
    refused(PropertyKey.SOLID_DENSITY, density(0, 950, MaterialState.SOLID));
  }

  @Test
  void a_density_is_of_the_state_of_its_property() {
    Problem problem = refused(PropertyKey.LIQUID_DENSITY, density(820, 860, MaterialState.SOLID));

    assertThat(problem.code()).isEqualTo(MaterialProblem.STATE);
    assertThat(problem.inWords(Locale.GERMAN)).contains("Gefunden: fest.").contains("flüssig");
  }

  @Test
  void a_drop_point_is_no_flash_point() {
    DefinedTemperature dropPoint =
        new DefinedTemperature(
            TemperatureRange.of(ofCelsius(120)), TemperatureDefinition.DROP_POINT);

    assertThat(refused(PropertyKey.FLASH_POINT, dropPoint).allowed(Locale.ENGLISH))
        .contains("flash-closed-cup")
        .doesNotContain("drop-point");
  }

  @Test
  void a_number_has_the_unit_of_its_property() {
    assertThat(
            refused(PropertyKey.OIL_ABSORPTION, new NumberRange(25, 25, "ml/100 g"))
                .allowed(Locale.ENGLISH))
        .isEqualTo("g/100 g");
    assertThat(
            refused(PropertyKey.MOLECULAR_WEIGHT, new NumberRange(0.677, 0.677, "kg/mol"))
                .allowed(Locale.ENGLISH))
        .isEqualTo("g/mol");
    assertThat(
            refused(PropertyKey.REFRACTIVE_INDEX, new NumberRange(1.5, 1.5, "%"))
                .allowed(Locale.GERMAN))
        .isEqualTo("keine Einheit");
  }

  @Test
  void a_word_is_one_of_its_property() {
    assertThat(refused(PropertyKey.IARC_GROUP, "4").code()).isEqualTo(MaterialProblem.WORD);
  }

  /** The same in the text of a materials file. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "solid-density    | -0.95 g/ml",
        "solid-density    | 0 g/ml",
        "flash-point      | 120 °C, drop-point",
        "oil-absorption   | 25 ml/100 g",
        "molecular-weight | 0.677 kg/mol",
        "combustibility   | doesn't burn"
      })
  void text_is_refused_alike(String key, String text) {
    PropertyKey<?> property = PropertyKey.find(key).orElseThrow();
    assertThat(catchThrowableOfType(ProblemException.class, () -> property.parse(text)))
        .isNotNull();
  }

  @Test
  void every_property_has_a_german_name() {
    assertThat(PropertyKey.all())
        .allSatisfy(
            key ->
                assertThat(key.inWords().german())
                    .as(key.id())
                    .doesNotStartWith(key.id().replace('-', ' ') + " ("));
  }
}
