// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.meltwright.safety.hazard.PlainMixture.Known;
import org.meltwright.safety.hazard.PlainMixture.Line;

/** What holds for every mixture, whatever the limits are. */
class HazardLawsProperties {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2027, 2, 1));
  private static final List<Known> ENTRIES = PlainBridge.entries(RULES);

  @Provide
  Arbitrary<PlainMixture> mixtures() {
    return Arbitraries.longs().map(seed -> new RandomMixtures(seed, ENTRIES).next());
  }

  /** How grave an answer is: none, then open, then the categories from the mildest on. */
  private static double gravity(HazardFinding f) {
    return switch (f.status()) {
      case NOT_CLASSIFIED -> 0;
      case INSUFFICIENT_DATA -> 0.5;
      case CLASSIFIED -> {
        ClassRule rule = RULES.rule(f.hazardClass()).orElseThrow();
        yield rule.levels().size() - rule.rank(f.category().orElseThrow());
      }
    };
  }

  private static HazardReview review(PlainMixture mixture) {
    return HazardReview.of(PlainBridge.mixture(mixture, RULES), RULES);
  }

  private static void assertNoMilder(PlainMixture before, PlainMixture after) {
    HazardReview worse = review(after);
    for (HazardFinding f : review(before).findings()) {
      HazardFinding other = worse.finding(f.hazardClass());
      assertThat(gravity(other))
          .as("%s of %s%nagainst %s of %s", f, before, other, after)
          .isGreaterThanOrEqualTo(gravity(f));
    }
  }

  private static void assertSame(PlainMixture one, PlainMixture other) {
    Map<String, String> answers = PlainBridge.answers(one, RULES);
    assertThat(PlainBridge.answers(other, RULES)).as("%s%nand %s", one, other).isEqualTo(answers);
  }

  private static boolean isNone(Line line) {
    return line.known().toString().equals("none") && line.high() > 0;
  }

  private static PlainMixture changed(PlainMixture mixture, UnaryOperator<List<Line>> change) {
    return new PlainMixture(mixture.facts(), change.apply(new ArrayList<>(mixture.lines())));
  }

  @Property(tries = 1000)
  void more_of_an_ingredient_in_place_of_one_in_no_class_never_gives_a_milder_class(
      @ForAll("mixtures") PlainMixture mixture,
      @ForAll @DoubleRange(min = 0, max = 1) double part,
      @ForAll Random random) {
    List<Line> inert = mixture.lines().stream().filter(HazardLawsProperties::isNone).toList();
    List<Line> others = mixture.lines().stream().filter(l -> !isNone(l)).toList();
    Assume.that(!inert.isEmpty() && !others.isEmpty());
    Line from = inert.get(random.nextInt(inert.size()));
    Line to = others.get(random.nextInt(others.size()));
    double moved = Math.min(from.low(), 100 - to.high()) * part;
    PlainMixture after =
        changed(
            mixture,
            lines -> {
              lines.set(lines.indexOf(from), plus(from, -moved));
              lines.set(lines.indexOf(to), plus(to, moved));
              return lines;
            });
    assertNoMilder(mixture, after);
  }

  private static Line plus(Line line, double percent) {
    return new Line(line.low() + percent, line.high() + percent, line.known());
  }

  @Property(tries = 1000)
  void an_unknown_is_never_milder_than_one_in_no_class(@ForAll("mixtures") PlainMixture mixture) {
    Assume.that(mixture.lines().stream().anyMatch(HazardLawsProperties::isNone));
    for (Line line : mixture.lines()) {
      if (isNone(line)) {
        Known unknown = new Known();
        unknown.id = "not known";
        unknown.unknown = true;
        assertNoMilder(
            mixture,
            changed(
                mixture,
                lines -> {
                  lines.set(lines.indexOf(line), new Line(line.low(), line.high(), unknown));
                  return lines;
                }));
      }
    }
  }

  @Property(tries = 500)
  void the_order_of_the_lines_changes_nothing(
      @ForAll("mixtures") PlainMixture mixture, @ForAll Random random) {
    PlainMixture shuffled =
        changed(
            mixture,
            lines -> {
              Collections.shuffle(lines, random);
              return lines;
            });
    assertSame(mixture, shuffled);
    assertThat(label(shuffled)).as("%s", mixture).isEqualTo(label(mixture));
  }

  /** What the label of a mixture says: codes, and names in their order. */
  private static List<String> label(PlainMixture mixture) {
    HazardLabel label =
        HazardLabel.of(
            HazardReview.of(PlainBridge.mixture(mixture, RULES), RULES),
            LabelDetails.builder().build());
    List<String> said = new ArrayList<>(label.statements());
    label.namedIngredients().forEach(i -> said.add(i.hazards().casNumbers() + i.hazards().name()));
    return said;
  }

  @Property(tries = 1000)
  void a_substance_on_two_lines_of_one_number_or_one_sheet_is_one(
      @ForAll("mixtures") PlainMixture mixture,
      @ForAll @DoubleRange(min = 0, max = 1) double part,
      @ForAll Random random) {
    Line line = mixture.lines().get(random.nextInt(mixture.lines().size()));
    double first = Math.rint(line.high() * part * 1024) / 1024;
    Assume.that(line.low() == line.high() && first <= line.high());
    assertSame(
        mixture,
        changed(
            mixture,
            lines -> {
              lines.set(lines.indexOf(line), new Line(first, first, line.known()));
              lines.add(new Line(line.high() - first, line.high() - first, line.known()));
              return lines;
            }));
  }
}
