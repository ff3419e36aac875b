// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.grams;

import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of decimal signs, beside the locale data of the machine that runs the tests. */
class DecimalSignTest {

  @ParameterizedTest
  @CsvSource({
    "de,COMMA",
    "de-DE,COMMA",
    "de-AT,COMMA",
    "de-CH,POINT",
    "de-LI,POINT",
    "it-CH,POINT",
    "fr-CH,COMMA",
    "en,POINT",
    "en-GB,POINT",
    "en-US,POINT",
    "en-ZA,COMMA",
    "es,COMMA",
    "es-MX,POINT",
    "fr,COMMA",
    "nl,COMMA",
    "ja,POINT",
    "und,POINT",
    "xx,POINT",
    "ar-EG,POINT",
    "sr-Latn,COMMA",
    "uz-Arab,POINT"
  })
  void of_language_then_country_and_a_point_for_what_is_not_known(String tag, DecimalSign sign) {
    assertThat(DecimalSign.of(Locale.forLanguageTag(tag))).isEqualTo(sign);
  }

  /**
   * The Common Locale Data Repository as this JDK has it; other signs than these two get a point.
   */
  @Test
  void of_agrees_with_the_locale_data_of_the_jdk() {
    List<String> different = new ArrayList<>();
    for (Locale locale : Locale.getAvailableLocales()) {
      boolean comma = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',';
      boolean plain = locale.getVariant().isEmpty() && !locale.hasExtensions();
      if (plain && comma != (DecimalSign.of(locale) == DecimalSign.COMMA)) {
        different.add(locale.toLanguageTag());
      }
    }

    assertThat(Locale.getAvailableLocales()).hasSizeGreaterThan(300);
    // Fula: its locale data is of two scripts, and only one of them writes a comma
    assertThat(different).allMatch(tag -> tag.startsWith("ff"));
  }

  @Test
  void parser_and_formatter_of_a_locale_agree() {
    for (String tag : List.of("de-DE", "de-CH", "en-US", "fr-FR")) {
      Locale locale = Locale.forLanguageTag(tag);
      String text = QuantityFormatter.exact().withLocale(locale).format(grams(1234.5));

      assertThat(QuantityKind.MASS.toSi(QuantityParser.forLocale(locale).parseMass(text)))
          .as(tag)
          .isEqualTo(1.2345);
    }
  }
}
