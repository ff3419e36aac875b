// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;

class HazardReviewProperties {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2027, 2, 1));
  private static final SubstanceHazards INERT = SubstanceHazards.presumedNone("inert");

  /** A substance and its parts by mass. */
  record Part(SubstanceHazards substance, double parts) {}

  @Provide
  Arbitrary<List<Part>> mixes() {
    Arbitrary<SubstanceHazards> known = Arbitraries.of(substances());
    Arbitrary<Double> parts =
        Arbitraries.oneOf(
            Arbitraries.doubles().between(0.001, 1).ofScale(4),
            Arbitraries.doubles().between(1, 60));
    return Combinators.combine(known, parts)
        .as(Part::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .uniqueElements(p -> p.substance().key());
  }

  private static List<SubstanceHazards> substances() {
    Stream<SubstanceHazards> entries =
        RULES.entries().stream()
            .flatMap(e -> e.casNumbers().stream().limit(1))
            .flatMap(cas -> RULES.find(cas).stream());
    Stream<SubstanceHazards> others =
        Stream.of(
            RULES.find("1319-46-6").orElseThrow(),
            RULES.find("8050-09-7").orElseThrow(),
            RULES.find("136-52-7").orElseThrow(),
            RULES.find("58339-34-7").orElseThrow(),
            RULES.find("1345-16-0").orElseThrow(),
            SubstanceHazards.unknown("unknown"));
    return Stream.concat(entries, others)
        .sorted(Comparator.comparing(SubstanceHazards::key))
        .toList();
  }

  private static HazardReview review(List<Part> mix, double inertParts) {
    double total = inertParts + mix.stream().mapToDouble(Part::parts).sum();
    HazardMixtureBuilder b = HazardMixture.builder(RULES).state(PhysicalState.LIQUID);
    mix.forEach(p -> b.substance(p.substance(), p.parts() / total * 100));
    b.substance(INERT, inertParts / total * 100);
    return HazardReview.of(
        b.viscosityAt40(1).flashPoint(TemperaturePoint.ofCelsius(80)).build(), RULES);
  }

  /** How severe an answer is: 0 for none, the more the worse. */
  private static int severity(HazardFinding f) {
    ClassRule rule = RULES.rule(f.hazardClass()).orElseThrow();
    return f.isClassified() ? rule.levels().size() - rule.rank(f.category().orElseThrow()) : 0;
  }

  private static void assertNoWorse(HazardReview milder, HazardReview worse) {
    for (HazardFinding f : milder.findings()) {
      HazardFinding other = worse.finding(f.hazardClass());
      assertThat(severity(f))
          .as("%s against %s", f.explanation(), other.explanation())
          .isLessThanOrEqualTo(severity(other));
    }
  }

  @Property(tries = 300)
  void adding_an_inert_ingredient_never_worsens_a_class(
      @ForAll("mixes") List<Part> mix,
      @ForAll("inert") double inert,
      @ForAll("inert") double more) {
    assertNoWorse(review(mix, inert + more), review(mix, inert));
  }

  @Property(tries = 300)
  void raising_a_classified_ingredient_at_the_expense_of_an_inert_one_never_improves_a_class(
      @ForAll("mixes") List<Part> mix, @ForAll("inert") double moved) {
    List<Part> raised = new ArrayList<>(mix);
    Part first = raised.get(0);
    raised.set(0, new Part(first.substance(), first.parts() + moved));
    Assume.that(!first.substance().evidence().isOpen());
    Assume.that(!first.substance().notes().contains("X"));
    assertNoWorse(review(mix, 20 + moved), review(raised, 20));
  }

  /** What is not known is never answered more kindly than what is held to be in no class. */
  @Property(tries = 300)
  void an_unknown_is_never_milder_than_none(
      @ForAll("mixes") List<Part> mix, @ForAll("inert") double parts) {
    HazardReview none = review(mix, parts);
    List<Part> withUnknown = new ArrayList<>(mix);
    withUnknown.add(new Part(SubstanceHazards.unknown("a powder"), parts));
    HazardReview unknown = review(withUnknown, 0);
    assertNoWorse(none, unknown);
    for (HazardFinding f : none.findings()) {
      if (f.status() == HazardStatus.INSUFFICIENT_DATA) {
        assertThat(unknown.finding(f.hazardClass()).status())
            .isNotEqualTo(HazardStatus.NOT_CLASSIFIED);
      }
    }
  }

  @Provide
  Arbitrary<Double> inert() {
    return Arbitraries.doubles().between(0, 200);
  }

  @Property(tries = 200)
  void the_same_substance_on_two_lines_is_added_first(
      @ForAll("mixes") List<Part> mix, @ForAll("half") double share) {
    List<Part> split = new ArrayList<>(mix);
    Part first = split.remove(0);
    split.add(new Part(first.substance(), first.parts() * share));
    split.add(new Part(first.substance(), first.parts() * (1 - share)));
    assertThat(answers(review(split, 10))).isEqualTo(answers(review(mix, 10)));
  }

  @Provide
  Arbitrary<Double> half() {
    return Arbitraries.of(0.25, 0.5, 0.125);
  }

  @Property(tries = 200)
  void the_order_of_ingredients_changes_nothing(
      @ForAll("mixes") List<Part> mix, @ForAll Random random) {
    List<Part> shuffled = new ArrayList<>(mix);
    Collections.shuffle(shuffled, random);
    assertThat(answers(review(shuffled, 10))).isEqualTo(answers(review(mix, 10)));
  }

  private static List<String> answers(HazardReview review) {
    return review.findings().stream()
        .map(f -> f.hazardClass() + " " + f.status() + " " + f.category() + statements(f))
        .toList();
  }

  private static List<String> statements(HazardFinding f) {
    return f.categories().stream().map(HazardCategory::statement).toList();
  }

  @Property(tries = 300)
  void every_code_of_every_label_is_a_finished_text_in_both_languages(
      @ForAll("mixes") List<Part> mix, @ForAll("inert") double inert) {
    HazardLabel label = HazardLabel.of(review(mix, inert), details());
    for (String code : label.statements()) {
      for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
        assertThat(withoutNames(label.text(code, locale), label, locale))
            .as(code + " " + locale)
            .endsWith(".")
            .hasSizeGreaterThan(8)
            .doesNotContain("…", "...", "<", ">", "[", "]", "{", "}", "/", "  ");
      }
    }
    boolean filled =
        label.precautions().stream().anyMatch(p -> p.verdict() == Precaution.Verdict.FILL);
    assertThat(label.precautionaryStatements()).hasSizeLessThanOrEqualTo(filled ? 6 : 16);
    assertThat(label.isComplete())
        .as("%s", label.gaps())
        .isEqualTo(
            label.review().open().isEmpty() && label.review().supplementsToCheck().isEmpty());
  }

  /** A name may hold a stroke, as "CMIT/MIT (3:1)" does; an open alternative may not stand. */
  private static String withoutNames(String text, HazardLabel label, Locale locale) {
    String words = text;
    for (HazardIngredient ingredient : label.review().mixture().ingredients()) {
      words = words.replace(ingredient.name(locale), "name");
    }
    return words;
  }

  private static LabelDetails details() {
    return LabelDetails.builder()
        .productName("Test mix", "Probemischung")
        .nominalMass(QuantityKind.MASS.ofSi(0.04))
        .batch("1")
        .ufi("MWA1-C2D3-E4F5-G6H7")
        .supplier(LabelSupplier.of("Studio", "Street 1, Town", "+00 0"))
        .maximumTemperature(TemperaturePoint.ofCelsius(25))
        .disposal("a collection point for hazardous waste", "einer Schadstoffsammelstelle")
        .extinguisher("dry powder or foam", "Löschpulver oder Schaum")
        .build();
  }
}
