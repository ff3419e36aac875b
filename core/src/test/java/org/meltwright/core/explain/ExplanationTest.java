// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.meltwright.core.laws.ExplanationLaws;
import org.meltwright.core.source.Source;
import org.meltwright.units.Bilingual;

class ExplanationTest {

  private static final Symbol DISTANCE = symbol("distance", "m");
  private static final Symbol RANGE = symbol("range", "kg");
  private static final Symbol NAME = symbol("name", "kg/m");
  private static final Bilingual TITLE = new Bilingual("A wire", "Ein Draht");
  private static final Formula WEIGHT = new Formula(RANGE, DISTANCE.times(NAME));

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ExplanationTest.class, name, unit);
  }

  private static Explanation.Builder wire() {
    return Explanation.builder(TITLE)
        .stated(DISTANCE, 0.0125)
        .given(Figure.of(NAME, 2), Source.COMMON_PRACTICE);
  }

  private static String written(Expr tree) {
    return tree.text(Locale.ENGLISH);
  }

  @Test
  void text_givesEachNumberItsUnitAndOrigin() {
    assertThat(wire().step(WEIGHT, 0.025).build().text(Locale.GERMAN))
        .isEqualTo(
            """
            Ein Draht
              gegeben: Abstand: 12,5 mm (eigene Angabe)
              gegeben: Name: 2 kg/m (%1$s)
              Spanne = Abstand × Name
                = 12,5 mm × 2 kg/m
                = 25 g
              Quelle: %1$s"""
                .formatted(Source.COMMON_PRACTICE.citation()));
  }

  @Test
  void shortText_leavesTheWayOut() {
    assertThat(wire().step(WEIGHT, 0.025).build().shortText(Locale.ENGLISH))
        .isEqualTo("A wire\n  range: 25 g");
  }

  @Test
  void given_leadsToItsWorking() {
    Explanation length = Explanation.builder(TITLE).given(DISTANCE, 0.0125).build();
    Explanation weight =
        Explanation.builder(TITLE)
            .given(Figure.of(DISTANCE, 0.0125), length)
            .given(NAME, 2)
            .step(WEIGHT, 0.025)
            .build();

    assertThat(weight.text(Locale.ENGLISH)).contains("(worked out as follows)\n    A wire\n");
  }

  @Test
  void tree_hasBracketsWhereTheyAreNeeded() {
    assertThat(written(DISTANCE.plus(NAME).times(RANGE))).isEqualTo("(distance + name) × range");
    assertThat(written(DISTANCE.minus(NAME.plus(RANGE)))).isEqualTo("distance − (name + range)");
    assertThat(written(DISTANCE.over(NAME.times(RANGE)))).isEqualTo("distance ÷ (name × range)");
    assertThat(written(DISTANCE.times(NAME.over(RANGE)))).isEqualTo("distance × name ÷ range");
    assertThat(written(DISTANCE.plus(NAME).power(2))).isEqualTo("(distance + name)^2");
    assertThat(written(DISTANCE.over(NAME).over(RANGE))).isEqualTo("distance ÷ name ÷ range");
    assertThat(written(RANGE.minus(Expr.of(-2)))).isEqualTo("range − (-2)");
  }

  @Test
  void choiceAndCall_areSaidInWords() {
    Expr least = Expr.call(Expr.Function.MIN, DISTANCE, NAME);

    assertThat(written(new Expr.Choice(DISTANCE, NAME, least, Expr.of(0))))
        .isEqualTo("(min(distance; name) if distance ≥ name, else 0)");
  }

  @Test
  void lines_areSummedOneByOne() {
    Formula all = new Formula(RANGE, new Expr.Total(DISTANCE, DISTANCE.times(NAME)));
    List<Bilingual> lines =
        Explanation.lines(List.of(Bilingual.of("a"), Bilingual.of("a"), Bilingual.of("b")));
    Explanation.Builder text = Explanation.builder(TITLE).given(NAME, 2);
    lines.forEach(line -> text.given(DISTANCE.of(line), 3));

    Explanation sum = text.step(all, 18).build();

    assertThat(lines).extracting(Bilingual::english).containsExactly("a", "a 2", "b");
    assertThat(sum.text(Locale.ENGLISH))
        .contains("range = sum over all lines (distance × name)")
        .contains("= 3 m × 2 kg/m + 3 m × 2 kg/m + 3 m × 2 kg/m\n")
        .contains("= 18 kg");
    ExplanationLaws.canBeWorkedOutAnew(sum);
  }

  @Test
  void aWrongNumber_isFound() {
    Explanation wrong = wire().step(WEIGHT, 0.025 * (1 + 1e-11)).build();

    assertThatThrownBy(() -> ExplanationLaws.canBeWorkedOutAnew(wrong))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("kept is");
  }

  @Test
  void tooFewPrintedDigits_areFound() {
    Symbol coarse = symbol("distance", "kg").withDigits(1);
    Explanation hidden =
        Explanation.builder(TITLE)
            .given(DISTANCE, 0.0125)
            .given(NAME, 2)
            .step(new Formula(coarse, DISTANCE.times(NAME)), 0.025)
            .build();

    // said to one digit it may be anything from 25 to 35 g, so that nothing contradicts it
    ExplanationLaws.canBeWorkedOutAnew(hidden);
    assertThat(hidden.shortText(Locale.ENGLISH)).contains("distance: 30 g");
  }

  @Test
  void aGivenThatIsNotInItsOwnWorking_isFound() {
    Explanation length = Explanation.builder(TITLE).given(DISTANCE, 0.0125).build();
    Explanation weight = Explanation.builder(TITLE).given(Figure.of(DISTANCE, 3), length).build();

    assertThatThrownBy(() -> ExplanationLaws.canBeWorkedOutAnew(weight))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("its own working");
  }

  @Test
  void aSymbolThatIsNotKnown_isFound() {
    Explanation half = Explanation.builder(TITLE).given(NAME, 2).step(WEIGHT, 0.025).build();

    assertThatThrownBy(() -> half.text(Locale.ENGLISH)).hasMessageContaining("is not known");
  }
}
