// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Some eight hundred names, each judged by hand before it was asked. */
class JudgedNamesTest {

  static List<JudgedName> names() {
    return JudgedName.all();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("names")
  void name_tellsWhatWasJudged(JudgedName judged) {
    assertThat(JudgedName.written(HazardNames.ofName(judged.name()))).isEqualTo(judged.answer());
  }

  @Test
  void file_isLargeAndSaysNothingTwice() {
    assertThat(names()).hasSizeGreaterThan(750);
    assertThat(names()).extracting(JudgedName::name).doesNotHaveDuplicates();
    assertThat(JudgedName.sections()).isGreaterThan(15);
  }

  @Test
  void aThirdOfTheFile_drawsNothing() {
    assertThat(names().stream().filter(n -> n.answer().isEmpty()).count()).isGreaterThan(200);
  }

  @Test
  void everyKind_isAmongTheAnswers() {
    Set<NameKind> answered =
        names().stream()
            .flatMap(n -> HazardNames.ofName(n.name()).stream())
            .map(n -> n.hazard().kind())
            .collect(Collectors.toSet());
    Set<NameKind> kinds = new HashSet<>(List.of(NameKind.values()));
    kinds.remove(NameKind.FALSE_FRIEND);
    kinds.remove(NameKind.ORDINARY_PIGMENT);
    assertThat(answered).isEqualTo(kinds);
  }
}
