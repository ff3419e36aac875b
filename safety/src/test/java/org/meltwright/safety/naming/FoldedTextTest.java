// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoldedTextTest {

  private static String letters(String text) {
    FoldedText folded = FoldedText.of(text);
    return folded.part(0, folded.length());
  }

  @ParameterizedTest
  @CsvSource({
    "Bleiweiß, bleiweiss",
    "BLEIWEIẞ, bleiweiss",
    "Bleiglätte, bleiglaette",
    "Blei\u00adweiß, bleiweiss",
    "céruse, ceruse",
    "œillette, oeillette",
    "ﬁxatif, fixatif",
    "ÉMERAUDE, emeraude",
    "naïve, naive",
    "K₂CrO₄, k2cro4",
    "İstanbul, istanbul",
    "Ǖ, ue",
    "свинец, свинец"
  })
  void letters_areFolded(String text, String letters) {
    assertThat(letters(text)).isEqualTo(letters);
  }

  @Test
  void dotsThatStandByThemselves_makeAnUmlaut() {
    assertThat(letters("Gru\u0308n")).isEqualTo("gruen");
    assertThat(letters("e\u0308")).isEqualTo("e");
    assertThat(letters("\u0308a")).isEqualTo("a");
  }

  @Test
  void words_arePartedByWhatIsNoLetter() {
    FoldedText text = FoldedText.of("Blei-Weiß, rein (alt)");
    assertThat(text.words()).isEqualTo(4);
    assertThat(text.word(1)).isEqualTo("weiss");
    assertThat(text.isHyphenated(1)).isTrue();
    assertThat(text.isAfterComma(2)).isTrue();
    assertThat(text.isDirect(2)).isFalse();
    assertThat(text.isDirect(3)).isFalse();
  }

  @Test
  void written_isWhatStoodThere() {
    FoldedText text = FoldedText.of("  Krémser  Weiß!");
    assertThat(text.written(0, text.length())).isEqualTo("Krémser  Weiß");
  }

  @Test
  void textWithoutLetters_hasNoWords() {
    assertThat(FoldedText.of(" -- \ud800 \u0308").words()).isZero();
  }
}
