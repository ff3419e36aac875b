// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Assertions;
import org.meltwright.safety.naming.ListedName.Use;

/** Any text is a name. */
class AnyTextProperties {

  private static final List<String> NAMES =
      NameList.standard().names().stream()
          .filter(n -> n.use() == Use.ANYWHERE && !n.isFalseFriend())
          .map(ListedName::text)
          .toList();

  @Provide
  Arbitrary<String> anyText() {
    Arbitrary<String> any = Arbitraries.strings().ofMaxLength(60);
    Arbitrary<String> marks =
        Arbitraries.strings()
            .withChars("äöüß\u0308\u0301\u00ad\u200d-–, '’()0159aouAOU ".toCharArray())
            .ofMaxLength(40);
    return Arbitraries.oneOf(any, marks, texts());
  }

  private static Arbitrary<String> texts() {
    List<String> parts =
        List.of("-frei", "hue", "sans", "1319-46-6", "PY34", ":1", ",", "-", "black");
    return Arbitraries.oneOf(Arbitraries.of(NAMES), Arbitraries.of(parts))
        .list()
        .ofMaxSize(6)
        .map(list -> String.join(" ", list));
  }

  @Provide
  Arbitrary<String> hazards() {
    return Arbitraries.of(NAMES);
  }

  @Property(tries = 4000)
  void no_text_fails_and_every_answer_has_its_words(@ForAll("anyText") String text) {
    assertThat(HazardNames.ofName(text))
        .allSatisfy(
            named -> {
              assertThat(named.found()).isNotBlank();
              assertThat(named.text(Locale.ENGLISH)).isNotBlank();
              assertThat(named.text(Locale.GERMAN)).isNotBlank();
            });
  }

  @Property(tries = 2000)
  void the_answer_is_sorted_worst_first_and_says_nothing_twice(@ForAll("anyText") String text) {
    List<NamedHazard> told = HazardNames.ofName(text);
    assertThat(told).isSortedAccordingTo(NamedHazard.WORST_FIRST);
    assertThat(ids(text)).hasSameSizeAs(told);
  }

  @Property(tries = 2000)
  void what_stands_behind_a_comma_hides_no_hazard_before_it(
      @ForAll("hazards") String hazard, @ForAll("anyText") String rest) {
    boolean settledByANumber = !new StatedNumbers(FoldedText.of(rest)).isEmpty();
    if (!settledByANumber) {
      assertThat(ids(hazard + ", jar; " + rest)).containsAll(ids(hazard));
    }
  }

  private static Set<String> ids(String name) {
    return HazardNames.ofName(name).stream().map(n -> n.hazard().id()).collect(Collectors.toSet());
  }

  /** Linear time is some seconds here at the most, where a square would take hours. */
  @Example
  void a_long_and_hostile_text_is_answered_in_linear_time() {
    List<String> patterns =
        List.of(
            "a",
            "ä",
            "a\u0308\u0301",
            "\u0308",
            " ",
            "1",
            "😀",
            "\ud800",
            "lack",
            "zinnober",
            "lead ",
            "lead, white ",
            "blei-, ",
            "-frei blei",
            "hue lead ",
            "de de lead ",
            "1319-46-6 ",
            "PY34 ",
            "Kobaltblau hell ",
            "naturzinnober",
            "bleichromat",
            "e-");
    for (String pattern : patterns) {
      String text = pattern.repeat(300_000 / pattern.length());
      Assertions.assertTimeout(
          Duration.ofSeconds(30), () -> HazardNames.ofName(text), "pattern " + pattern);
    }
  }
}
