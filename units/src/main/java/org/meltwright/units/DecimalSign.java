// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What stands before the decimals of a number: a point, a comma, or whichever was typed.
 *
 * <p>Which of both a locale writes is a table of this library, by language and then by country, so
 * that it is the same in a runtime image without locale data. It follows the Unicode Common Locale
 * Data Repository, as JDK 17 has it; a locale that is not in it, or whose script has digits of its
 * own, gets the point.
 *
 * <p>For example:
 *
 * <pre>{@code
 * DecimalSign.of(Locale.GERMANY); // COMMA
 * // in Switzerland German has a point
 * DecimalSign.of(Locale.forLanguageTag("de-CH")); // POINT
 * QuantityParser either = QuantityParser.of(DecimalSign.EITHER);
 * either.parseMass("1,5 kg"); // 1.5 kg
 * either.parseMass("1.5 kg"); // 1.5 kg
 * // 1.5 g or 1500 g
 * either.parseMass("1,500 g"); // throws ProblemException
 * }</pre>
 */
public enum DecimalSign {
  /** A point, as in 1.5. */
  POINT,
  /** A comma, as in 1,5. */
  COMMA,
  /**
   * Whichever was typed; what may be a sign of thousands, as in 1,500 and 1.500, is refused with
   * both meanings.
   */
  EITHER;

  private static final Set<String> COMMA_LANGUAGES =
      words(
          "af agq ast az bas be bg br bs ca cs da de dsb dua dyo el eo es et eu ewo fi fo fr fur"
              + " fy gl hr hsb hu hy ia id is it jgo jv ka kab kea kk kkj kl km ksf ksh ku ky lb"
              + " ln lo lt lu lv mgh mk mua nb nl nmg nn nnh no os pl pt rn ro ru rw sah se seh sg"
              + " shi sk sl smn sq sr su sv tg tk tr tt tzm uk uz vi wae wo yav zgh");

  /** Countries where a language has the other sign than by itself. */
  private static final Map<String, Set<String>> OTHERWISE =
      Map.of(
          "ar", words("DZ LY MA TN"),
          "de", words("CH LI"),
          "en", words("AT BE DE DK FI NL SE SI ZA"),
          "es", words("419 BR BZ CU DO GT HN MX NI PA PE PR SV US"),
          "it", words("CH"),
          "ms", words("BN ID"),
          "qu", words("BO"),
          "sw", words("CD"));

  private static final Set<String> SCRIPTS_WITH_OWN_DIGITS = words("Adlm Arab Deva");

  private static Set<String> words(String text) {
    return new HashSet<>(Arrays.asList(text.split(" ")));
  }

  /**
   * Returns the sign that a locale writes.
   *
   * @param locale the locale
   * @return a comma or a point
   */
  public static DecimalSign of(Locale locale) {
    String language = locale.getLanguage();
    boolean comma =
        COMMA_LANGUAGES.contains(language)
            != OTHERWISE.getOrDefault(language, Set.of()).contains(locale.getCountry());
    return comma && !SCRIPTS_WITH_OWN_DIGITS.contains(locale.getScript()) ? COMMA : POINT;
  }

  /** The character; of either, a point. */
  char character() {
    return this == COMMA ? ',' : '.';
  }
}
