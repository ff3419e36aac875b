// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.GRAM;
import static org.meltwright.units.MetricUnits.grams;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.meltwright.units.constraint.QuantityText;
import org.meltwright.units.constraint.TextKind;

/** The code of the guide page, run; and the page held to it. */
class ReadingAndWritingGuideTest {

  private static final Path GUIDE =
      Path.of("..", "docs", "guide", "reading-and-writing-quantities.md");
  private static final Path THIS =
      Path.of(
          "src", "test", "java", "org", "meltwright", "units", "ReadingAndWritingGuideTest.java");

  @Test
  void the_code_of_the_guide_does_what_the_guide_says() {
    QuantityParser parser = QuantityParser.localeFree();

    Quantity<Mass> wax = parser.parseMass("1 lb 4 oz");
    double kilograms = QuantityKind.MASS.toSi(wax);
    assertThat(kilograms).isCloseTo(0.56699046250, within(1e-15));

    TemperaturePoint target = parser.parseTemperature("90 C");
    TemperatureRange melting = parser.parseTemperatureRange("62–65 °C");
    MixingRatio ratio = parser.parseMixingRatio("1:8 resin:wax");
    MassFraction paint = parser.parseMassFraction("10 %");
    StatedDensity powder = parser.parseStatedDensity("0.55 g/ml bulk");
    assertThat(ratio.firstShare()).isEqualTo(1.0 / 9);
    assertThat(paint.value()).isEqualTo(0.1);
    assertThat(powder.state()).isEqualTo(MaterialState.BULK);

    Quantity<Mass> typed = QuantityParser.withDecimalComma().parseMass("1,5 kg");
    assertThat(QuantityKind.MASS.toSi(typed)).isEqualTo(1.5);

    QuantityParser german = QuantityParser.forLocale(Locale.GERMANY);
    double flour = QuantityKind.MASS.in(german.parseMass("1,500 kg"), GRAM);
    double sugar = QuantityKind.MASS.in(german.parseMass("1.5 kg"), GRAM);
    String doubt = "";
    try {
      german.parseMass("1.500 kg");
    } catch (ProblemException refused) {
      doubt = refused.problems().get(0).what(Locale.GERMAN);
    }
    assertThat(List.of(flour, sugar)).containsExactly(1500.0, 1500.0);
    assertThat(doubt).startsWith("1.500 kann 1,5 oder 1500 heißen.");

    MixingRatio asked = parser.parseMixingRatio("1:8", "resin", "wax");
    assertThat(asked).isEqualTo(ratio);

    double pounds = QuantityKind.MASS.in(wax, UsCustomaryUnits.POUND);
    Quantity<Mass> portion = Quantities.of(730, GRAM);
    assertThat(pounds).isEqualTo(1.25);
    assertThat(QuantityKind.MASS.toSi(portion)).isEqualTo(0.73);

    String label = QuantityFormatter.ofDecimals(1).format(target, TemperatureScale.FAHRENHEIT);
    String file = QuantityFormatter.exact().format(wax);
    String etikett =
        QuantityFormatter.ofSignificantDigits(3)
            .withLocale(Locale.GERMANY)
            .format(wax, MetricUnits.GRAM);
    assertThat(List.of(label, file, etikett)).containsExactly("194.0 °F", "1.25 lb", "567 g");

    TemperaturePoint warmer = target.plus(TemperatureDifference.ofKelvin(3.3));
    TemperatureDifference margin = melting.marginBelow(target);
    assertThat(warmer.celsius()).isEqualTo(93.3);
    assertThat(margin.kelvin()).isEqualTo(25);
  }

  @Test
  void a_refusal_says_what_was_found() {
    QuantityParser parser = QuantityParser.localeFree();
    String said = "";
    try {
      parser.parseMass("8 fl oz");
    } catch (ProblemException refused) {
      Problem problem = refused.problems().get(0);
      said = problem.what(Locale.ENGLISH) + " " + problem.what(Locale.GERMAN);
    }
    assertThat(said)
        .isEqualTo(
            "Expected a mass, found a volume: 8 fl oz. "
                + "Erwartet: eine Masse; gefunden: ein Volumen: 8 fl oz.");
  }

  @Test
  void a_mass_is_rounded_for_its_balance() {
    ScaleInterval kitchen = ScaleInterval.of(grams(1));
    ScaleInterval fine = ScaleInterval.of(grams(0.1));
    double coarse = kitchen.roundKilograms(0.02778);
    assertThat(coarse).isEqualTo(0.028);
    assertThat(fine.roundKilograms(0.01234)).isEqualTo(0.0123);
    assertThat(kitchen.isTooCoarseFor(0.0003)).isTrue();
  }

  public record PotDraft(
      @QuantityText(kind = TextKind.MASS, min = "1 g", max = "20 kg") String wax,
      @QuantityText(kind = TextKind.TEMPERATURE, max = "93.3 °C") String target) {}

  @Test
  void each_code_block_of_the_guide_stands_in_this_test() throws IOException {
    String here = squeezed(Files.readString(THIS));

    assertThat(
            Pattern.compile("```java\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(GUIDE))
                .results()
                .map(block -> squeezed(block.group(1))))
        .hasSize(11)
        .allSatisfy(block -> assertThat(here).contains(block));
  }

  private static String squeezed(String code) {
    return code.replaceAll("\\s+", "");
  }
}
