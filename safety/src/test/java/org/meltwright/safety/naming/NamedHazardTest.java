// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The one line that a rule or a file shows. */
class NamedHazardTest {

  private static String text(String name, Locale locale) {
    return HazardNames.ofName(name).get(0).text(locale);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Kremser Weiß     | “Kremser Weiß”: named like “Lead white” (word; lead), never heated: ask for the CAS number or the Colour Index name.
          Neapelgelb       | “Neapelgelb”: a name of several things (word; lead and antimony, or neither), never heated until it is known which: ask for the CAS number or the Colour Index name.
          cadmium red hue  | “cadmium red hue”: says that it is not what it is named after (word; cadmium, lead and chromium, mercury, or an organic pigment): ask for the CAS number or the Colour Index name; the word alone refuses nothing.
          Brennspiritus    | “Brennspiritus”: named like a solvent (word; flammable, flash point 12–13 °C, ignites by itself at 363–400 °C), never heated: ask for the safety data sheet.
          Bleiglasur       | “Blei”: a word of hazard (lead), never heated: ask for the CAS number or the Colour Index name.
          CAS 7758-97-6    | CAS number 7758-97-6: “Chrome yellow” (lead and chromium), never heated.
          tube PY35        | Colour Index name PY35: “Cadmium yellow (cadmium zinc sulphide)” (cadmium), melted only, on a plate or palette.
          cobalt blue      | “cobalt blue”: named like “Cobalt blue” (word; cobalt), kept from flames: ask for the CAS number or the Colour Index name.
          raw umber        | “raw umber”: named like “Raw umber” (word; manganese), no heat limit of its own known: ask for the CAS number or the Colour Index name.
          Bleiweiß, PW6    | “Bleiweiß”: named like “Lead white” (word; lead), never heated: ask for the CAS number or the Colour Index name. PW6 says something milder; the worse holds.
          """)
  void text_inEnglish(String name, String text) {
    assertThat(text(name, Locale.ENGLISH)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Kremser Weiß     | „Kremser Weiß“: heißt wie „Bleiweiß“ (Wort; Blei), nie erhitzen: nach der CAS-Nummer oder dem Colour-Index-Namen fragen.
          Neapelgelb       | „Neapelgelb“: ein Name für Verschiedenes (Wort; Blei und Antimon oder keines von beiden), nie erhitzen, bis klar ist, was es ist: nach der CAS-Nummer oder dem Colour-Index-Namen fragen.
          Bleiweiß-Ersatz  | „Bleiweiß-Ersatz“: sagt, dass es nicht das ist, wonach es heißt (Wort; Blei, Zink oder Titan): nach der CAS-Nummer oder dem Colour-Index-Namen fragen; das Wort allein verbietet nichts.
          Brennspiritus    | „Brennspiritus“: heißt wie ein Lösemittel (Wort; entzündbar, Flammpunkt 12–13 °C, zündet von selbst bei 363–400 °C), nie erhitzen: nach dem Sicherheitsdatenblatt fragen.
          CAS 7758-97-6    | CAS-Nummer 7758-97-6: „Chromgelb“ (Blei und Chrom), nie erhitzen.
          Bleiweiß, PW6    | „Bleiweiß“: heißt wie „Bleiweiß“ (Wort; Blei), nie erhitzen: nach der CAS-Nummer oder dem Colour-Index-Namen fragen. PW6 sagt etwas Milderes; das Schlimmere gilt.
          """)
  void text_inGerman(String name, String text) {
    assertThat(text(name, Locale.GERMAN)).isEqualTo(text);
  }

  @Test
  void text_ofEveryEntry_fillsAllItsPlaces() {
    assertThat(NameList.standard().names())
        .flatExtracting(n -> HazardNames.ofName(n.text()))
        .extracting(n -> ((NamedHazard) n).text(Locale.GERMAN))
        .hasSizeGreaterThan(1800)
        .noneMatch(t -> t.contains("{") || t.contains("()") || t.contains("; )"))
        .allMatch(t -> t.endsWith("."));
  }

  @Test
  void entry_tellsElements() {
    ListedHazard yellow = HazardNames.ofName("lemon yellow").get(0).hazard();
    assertThat(yellow.mayHold("Cr")).isTrue();
    assertThat(yellow.mayHold("Ni")).isTrue();
    assertThat(yellow.mayHold("Pb")).isFalse();
    assertThat(yellow.pigment()).isEmpty();
  }
}
