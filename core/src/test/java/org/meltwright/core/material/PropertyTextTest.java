// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Texts of figures that must not be read as something else. */
class PropertyTextTest {

  private static PropertyKey<?> key(String id) {
    return PropertyKey.find(id).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "iodine-value, 5 to 1e400 g I2/100 g, material.value",
    "iodine-value, >= 1e400 g I2/100 g, material.value",
    "iodine-value, 1e-400 g I2/100 g, material.value",
    "liquid-density, -0.85 g/ml, value.out-of-range",
    "liquid-density, 0.85 g/ml at <= 20 °C, material.low-end",
    "melting-range, '<= 65 °C, capillary-range', material.low-end",
    "melting-range, '65 to 62 °C, capillary-range', range.reversed",
    "insolubles, 40 to 140 %, value.out-of-range",
    "insolubles, >= 40 %, material.unit",
  })
  void text_is_refused(String property, String text, String problem) {
    assertThatThrownBy(() -> key(property).parse(text))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining(problem);
  }

  @ParameterizedTest
  @CsvSource({
    "liquid-density, 0.82–0.85 g/ml, 0.82 to 0.85 g/ml",
    "liquid-density, 0.96 g/cm³, 0.96 g/ml",
    "liquid-density, 0.82 to 0.85 g/cm³ at 100 °C, 0.82 to 0.85 g/ml at 100 °C",
    "solid-density, 60 lb/ft³, 0.961107802437608 g/ml",
    "melting-range, '62–65 °C, drop-point', '62 to 65 °C, drop-point'",
    "usual-share, 10 – 12 %, 10 to 12 %",
  })
  void text_is_read_as_everywhere(String property, String text, String written) {
    assertThat(format(key(property), text)).isEqualTo(written);
  }

  private static <V> String format(PropertyKey<V> key, String text) {
    return key.format(key.parse(text));
  }

  @ParameterizedTest
  @CsvSource({
    "combustibility, does not burn, burns",
    "use-in-hot-melt, fit, caution",
    "use-in-hot-melt, caution, refuse",
    "dissolves-in-melt, yes, no",
    "sensitiser, no, yes",
    "acid-sensitive, no, yes",
    "bleeding, possible, yes",
  })
  void span_of_two_words_is_the_one_that_warns(String property, String mild, String warning) {
    assertThat(span(key(property), mild, warning)).isEqualTo(warning);
    assertThat(span(key(property), warning, mild)).isEqualTo(warning);
    assertThat(span(key(property), mild, mild)).isEqualTo(mild);
  }

  private static <V> String span(PropertyKey<V> key, String one, String other) {
    return key.format(key.span(key.parse(one), key.parse(other)));
  }

  @ParameterizedTest
  @CsvSource({
    ">= 250 °C, 300 °C, 250",
    "300 °C, >= 250 °C, 250",
    ">= 300 °C, 240 to 260 °C, 240",
  })
  void span_with_a_lower_bound_stays_open(String one, String other, double low) {
    PropertyKey<DefinedTemperature> flash = PropertyKey.FLASH_POINT;
    String how = ", flash-open-cup";
    DefinedTemperature span = flash.span(flash.parse(one + how), flash.parse(other + how));
    assertThat(span.isOpenAbove()).isTrue();
    assertThat(span.range().low().celsius()).isEqualTo(low);
    assertThat(flash.parse(flash.format(span))).isEqualTo(span);
  }

  @ParameterizedTest
  @CsvSource({
    "20, 25, 20 to 25 % by mass",
    "3, 3, 3 % by mass",
    "0, 0.25, 0 to 0.25 % by mass",
  })
  void range_of_shares_is_written_as_a_range(double low, double high, String text) {
    assertThat(new MassFractionRange(MassFraction.ofPercent(low), MassFraction.ofPercent(high)))
        .hasToString(text);
  }

  @ParameterizedTest
  @CsvSource({
    "'material: ', /m.txt/1, name.blank",
    "'material: a\\nen: ', /m.txt/2, name.blank",
    "'material: a\\nalso: b;;c', /m.txt/2, name.blank",
    "'material: a\\ninsolubles: 3 % | user | read\\nbarred: ', /m.txt/3, name.blank",
    "'source: ', /m.txt/1, name.blank",
  })
  void blank_stands_for_nothing(String lines, String path, String problem) {
    MaterialsReader reader = new MaterialsReader(Map.of());
    reader.read("m.txt", lines.replace("\\n", "\n").getBytes(StandardCharsets.UTF_8));
    Problem first = reader.problems().get(0);
    assertThat(first.code().id()).isEqualTo(problem);
    assertThat(first.path()).isEqualTo(path);
  }

  @Test
  void part_that_is_missing_is_the_only_problem_of_a_mix() {
    MaterialsReader reader = new MaterialsReader(Map.of());
    reader.read(
        "m.txt",
        "material: mix\npart: nobody, 60 %\npart: oil, 40 %\nmaterial: oil\n"
            .getBytes(StandardCharsets.UTF_8));
    Linker linker = new Linker(Map.of(), reader.entries(), reader.problems());
    linker.link();
    assertThat(reader.problems()).extracting(p -> p.code().id()).containsExactly("material.part");
  }
}
