// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.data.Percentage;

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

  static List<HazardCase> all(String file) {
    return TextTable.rows(file).stream()
        .map(
            r ->
                new HazardCase(
                    r.get(0), r.get(1), r.get(2), r.get(3), r.get(4), r.get(5), r.get(6)))
        .toList();
  }

  RuleSet rules() {
    return day.equals("GHS") ? RuleSet.unGhsAcuteToxicity() : RuleSet.clpOn(LocalDate.parse(day));
  }

  HazardReview review() {
    RuleSet rules = rules();
    HazardMixture.Builder b = HazardMixture.builder(rules);
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
    return known.contains("not-additive") ? b.notAdditive().build() : b.build();
  }

  private static void factors(SubstanceSheet b, String acute, String chronic) {
    if (!acute.equals("0")) {
      b.acuteFactor(Double.parseDouble(acute));
    }
    if (!chronic.equals("0")) {
      b.chronicFactor(Double.parseDouble(chronic));
    }
  }

  private void facts(HazardMixture.Builder b) {
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
        case "ph" -> b.ph(Double.parseDouble(words[++i]));
        default -> assertThat(words[i]).isEmpty();
      }
    }
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
    LabelElements elements =
        LabelElements.of(review.rules().hasLabels() ? review.categories() : List.of());
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
    assertThat(found).as(finding.explanation().text()).isEqualTo(value);
  }

  @Override
  public String toString() {
    return id + ": " + source + " [" + status + "]";
  }
}
