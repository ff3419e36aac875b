// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.meltwright.units.TemperaturePoint;

/** One line of a file of cases: a mixture in a few words, and what is expected of it. */
record HazardCase(
    String id,
    String source,
    String status,
    String day,
    String facts,
    String lines,
    String expected) {

  private static final Pattern LINE = Pattern.compile("([\\d.]+)(?:-([\\d.]+))? (.+)");
  private static final Pattern BRACES = Pattern.compile("\\{([^}]*)}");
  private static final Pattern ESTIMATE =
      Pattern.compile("(oral|dermal|gas|vapour|dust)=([\\d.]+)");
  private static final Pattern FACTORS = Pattern.compile("M (\\d+)/(\\d+)");
  private static final Pattern NUMBERS = Pattern.compile("(cas|ec|entry|carries) (\\S+)");

  static List<HazardCase> all(String file) {
    return TextTable.rows(file).stream()
        .map(
            r ->
                new HazardCase(
                    r.get(0), r.get(1), r.get(2), r.get(3), r.get(4), r.get(5), r.get(6)))
        .toList();
  }

  RuleSet rules() {
    return day.equals("GHS")
        ? RuleSet.unGhsOn(LocalDate.of(2026, 6, 1))
        : RuleSet.clpOn(LocalDate.parse(day));
  }

  HazardReview review() {
    RuleSet rules = rules();
    HazardMixtureBuilder b = HazardMixture.builder(rules);
    int number = 0;
    for (String line : split(lines)) {
      Matcher m = LINE.matcher(line);
      assertThat(m.matches()).as(line).isTrue();
      double low = Double.parseDouble(m.group(1));
      double high = m.group(2) == null ? low : Double.parseDouble(m.group(2));
      number++;
      b.substance(substance(m.group(3), number, rules), low, high);
    }
    facts(b);
    return HazardReview.of(b.build(), rules);
  }

  /** Semicolons part the lines, but not inside braces. */
  private static List<String> split(String text) {
    return TextTable.items(text, ";(?![^{]*})");
  }

  private static SubstanceHazards substance(String known, int number, RuleSet rules) {
    String name = "substance " + number;
    if (known.equals("none")) {
      return SubstanceHazards.presumedNone(name);
    }
    if (known.equals("unknown")) {
      return SubstanceHazards.unknown(name);
    }
    if (known.equals("none oel")) {
      return SubstanceHazards.builder(name).notClassified().unionWorkplaceLimit().build();
    }
    if (known.startsWith("cas ")) {
      String cas = known.substring(4);
      return rules.find(cas).orElseGet(() -> SubstanceHazards.unknown("CAS " + cas));
    }
    SubstanceSheet b = SubstanceHazards.builder(name);
    BRACES.matcher(known).results().forEach(r -> b.classified(r.group(1)));
    ESTIMATE
        .matcher(known)
        .results()
        .forEach(r -> b.estimate(UptakeForm.ofId(r.group(1)), Double.parseDouble(r.group(2))));
    FACTORS.matcher(known).results().forEach(r -> factors(b, r.group(1), r.group(2)));
    NUMBERS.matcher(known).results().forEach(r -> number(b, r.group(1), r.group(2)));
    if (known.endsWith("note 12")) {
      b.notes("12");
    }
    return known.contains("not-additive") ? b.notAdditive().build() : b.build();
  }

  private static void number(SubstanceSheet b, String kind, String number) {
    switch (kind) {
      case "cas" -> b.cas(number);
      case "ec" -> b.ec(number);
      case "entry" -> b.entry(number);
      default -> b.supplements(number);
    }
  }

  private static void factors(SubstanceSheet b, String acute, String chronic) {
    if (!acute.equals("0")) {
      b.acuteFactor(Double.parseDouble(acute));
    }
    if (!chronic.equals("0")) {
      b.chronicFactor(Double.parseDouble(chronic));
    }
  }

  private void facts(HazardMixtureBuilder b) {
    if (facts.startsWith("tested ")) {
      b.tested(facts.substring(7));
      return;
    }
    String[] words = facts.split(" ", -1);
    for (int i = 0; i < words.length; i++) {
      switch (words[i]) {
        case "solid" -> b.state(PhysicalState.SOLID_AT_40);
        case "liquid" -> b.state(PhysicalState.LIQUID);
        case "viscosity" -> b.viscosityAt40(Double.parseDouble(words[++i]));
        case "flash" -> b.flashPoint(celsius(words[++i]));
        case "boil" -> b.initialBoilingPoint(celsius(words[++i]));
        case "reserve-tested" -> b.reserve(1).phRefutedByTest();
        case "public", "professional", "paint" -> {}
        case "ph" -> b.ph(Double.parseDouble(words[++i]));
        default -> supplement(b, words[i]);
      }
    }
  }

  private static void supplement(HazardMixtureBuilder b, String word) {
    if (!word.isEmpty()) {
      b.supplement(word);
    }
  }

  private static TemperaturePoint celsius(String text) {
    return TemperaturePoint.ofCelsius(Double.parseDouble(text));
  }

  private HazardLabel label(HazardReview review) {
    LabelDetails.Builder b =
        LabelDetails.builder()
            .disposal("a collection point", "einer Sammelstelle")
            .extinguisher("dry powder", "Löschpulver");
    return HazardLabel.of(
        review, facts.contains("professional") ? b.forProfessionals().build() : b.build());
  }

  void check() {
    HazardReview review = review();
    for (String item : split(expected)) {
      String[] pair = item.split("=", -1);
      check(review, pair[0], pair[1]);
    }
  }

  private void check(HazardReview review, String what, String value) {
    if (what.startsWith("ate ")) {
      checkEstimate(review, UptakeForm.ofId(what.substring(4)), Double.parseDouble(value));
      return;
    }
    if (checkLabel(review, what, value)) {
      return;
    }
    LabelElements elements =
        LabelElements.of(
            review.rules().hasLabels() ? review.categories() : List.of(), review.rules());
    switch (what) {
      case "H" -> assertThat(String.join(",", elements.hazardStatements())).isEqualTo(value);
      case "EUH" ->
          assertThat(
                  String.join(
                      ",", review.supplements().stream().map(SupplementalStatement::code).toList()))
              .isEqualTo(value);
      case "pic" ->
          assertThat(String.join(",", elements.pictograms().stream().map(Enum::name).toList()))
              .isEqualTo(value);
      case "signal" ->
          assertThat(elements.signalWord().map(Enum::name).orElse("")).isEqualTo(value);
      case "request" ->
          assertThat(review.dataSheetOnRequestFor().isEmpty()).isEqualTo(value.equals("no"));
      default -> checkClass(review.finding(HazardClass.ofId(what)), value);
    }
  }

  /** Checks what a label or a whole review says; false if the word is not one of these. */
  private boolean checkLabel(HazardReview review, String what, String value) {
    List<String> expected = value.isEmpty() ? List.of() : List.of(value.split(","));
    switch (what) {
      case "classes" ->
          assertThat(classes(review))
              .containsExactlyInAnyOrderElementsOf(TextTable.items(value, ","));
      case "label-H" ->
          assertThat(statements(review, "H")).containsExactlyInAnyOrderElementsOf(expected);
      case "label-EUH" ->
          assertThat(statements(review, "EUH")).containsExactlyInAnyOrderElementsOf(expected);
      case "P" ->
          assertThat(
                  label(review).precautions().stream()
                      .filter(p -> p.verdict().isPrinted())
                      .map(Precaution::code))
              .containsAll(expected);
      case "assumed" ->
          assertThat(review.assumptions()).extracting(a -> a.kind().id()).containsAll(expected);
      case "not-assumed" ->
          assertThat(review.assumptions())
              .extracting(a -> a.kind().id())
              .doesNotContainAnyElementsOf(expected);
      case "at-least" -> checkUntilTested(label(review), expected);
      case "unknown" ->
          assertThat(review.unknownAcutePercent(UptakeForm.ORAL))
              .isEqualTo(Double.parseDouble(value));
      case "named" ->
          assertThat(label(review).namedIngredients())
              .extracting(i -> i.name(Locale.ENGLISH))
              .containsExactlyElementsOf(TextTable.items(value, " \\+ "));
      default -> {
        return false;
      }
    }
    return true;
  }

  /** What a label says at least until the open classes are settled; nothing if nothing stands. */
  private static void checkUntilTested(HazardLabel label, List<String> expected) {
    if (expected.isEmpty()) {
      assertThat(label.untilTested()).isEmpty();
    } else {
      assertThat(label.untilTested()).containsAll(expected);
    }
  }

  private static List<String> classes(HazardReview review) {
    return review.findings().stream()
        .filter(HazardFinding::isClassified)
        .map(f -> f.hazardClass().id() + " " + f.category().orElseThrow().key())
        .toList();
  }

  /** By rules without labels the statements of the classes. */
  private List<String> statements(HazardReview review, String start) {
    Stream<String> codes =
        review.rules().hasLabels()
            ? Stream.concat(
                label(review).hazardStatements().stream(),
                label(review).supplementalStatements().stream())
            : review.categories().stream().map(HazardCategory::statement);
    return codes
        .flatMap(code -> Stream.of(code.split("\\+")))
        .filter(code -> code.startsWith(start))
        .toList();
  }

  private static void checkEstimate(HazardReview review, UptakeForm form, double expected) {
    Working w =
        review.finding(form.hazardClass()).workings().stream()
            .filter(x -> x.level().equals(form.id()))
            .findFirst()
            .orElseThrow();
    assertThat(w.value()).isCloseTo(expected, Percentage.withPercentage(0.05));
  }

  private static void checkClass(HazardFinding finding, String value) {
    String found =
        switch (finding.status()) {
          case CLASSIFIED -> finding.category().map(Category::key).orElse("");
          case NOT_CLASSIFIED -> "-";
          case INSUFFICIENT_DATA -> "?";
        };
    assertThat(found).as(finding.explanation().text(Locale.ENGLISH)).isEqualTo(value);
  }

  @Override
  public String toString() {
    return id + ": " + source + " [" + status + "]";
  }
}
