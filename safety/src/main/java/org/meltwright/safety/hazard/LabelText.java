// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes a label as plain text, a line each. */
final class LabelText {

  private final HazardLabel label;
  private final Locale locale;
  private final List<String> lines = new ArrayList<>();

  LabelText(HazardLabel label, Locale locale) {
    this.label = label;
    this.locale = locale;
  }

  String text() {
    completeness();
    head();
    hazards();
    precautions();
    supplier();
    care();
    small();
    return String.join("\n", lines);
  }

  private void completeness() {
    List<LabelGap> gaps = label.gaps();
    if (!gaps.isEmpty()) {
      lines.add(HazardTexts.label("incomplete", locale));
      gaps.forEach(g -> lines.add("  - " + g.text(locale)));
    }
  }

  private void head() {
    LabelDetails d = label.details();
    add("product", d.productName(locale).orElse(""));
    d.massKilograms().ifPresent(kg -> add("mass", grams(kg)));
    add("batch", d.batch().orElse(""));
    add("ufi", d.ufi().orElse(""));
  }

  private void hazards() {
    String pictograms =
        label.pictograms().stream()
            .map(p -> p + " (" + p.symbol(locale) + ")")
            .collect(joining(", "));
    add("pictograms", pictograms);
    label.signalWord().ifPresent(w -> lines.add(w.word(locale)));
    statements(label.hazardStatements());
    statements(label.supplementalStatements());
    add("contains", HazardTexts.names(label.namedIngredients(), locale));
    label.restriction(locale).ifPresent(lines::add);
    lines.addAll(remarks());
  }

  /** What stands beside the statements: that no class was reached, what is not known. */
  List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (label.hazardStatements().isEmpty()) {
      remarks.add(HazardTexts.label("no-class", locale));
    } else {
      remarks.addAll(label.acuteUnknown(locale));
    }
    return remarks;
  }

  private void precautions() {
    statements(label.precautionaryStatements());
    List<String> least = label.untilTested();
    if (!least.isEmpty()) {
      lines.add(HazardTexts.label("until-tested", locale));
      statements(least);
    }
  }

  private void statements(List<String> codes) {
    codes.forEach(code -> lines.add(code + " " + label.text(code, locale)));
  }

  private void supplier() {
    LabelSupplier s = label.details().supplier();
    add(
        "supplier",
        java.util.stream.Stream.of(
                s.name(), s.postalAddress(), s.telephone(), s.electronicAddress())
            .flatMap(Optional::stream)
            .collect(joining(", ")));
  }

  private void care() {
    add(
        "composition",
        label.review().mixture().declared().stream()
            .map(share -> share.name(locale) + " " + range(share))
            .collect(joining(", ")));
    lines.addAll(advice());
  }

  /** How to use it with care: highest temperature, use, dust and heat of its pigments. */
  List<String> advice() {
    List<String> advice = new ArrayList<>(new HeatingAdvice(label).lines(locale));
    if (label.holdsDryingOil()) {
      advice.add(HazardTexts.label("oily-rags", locale));
    }
    advice.add(HazardTexts.label("not-a-toy", locale));
    for (PigmentHazard p : label.review().dusts()) {
      if (p.dust() != DustClass.FINE) {
        advice.add(p.name(locale) + ": " + p.dustAdvice(locale));
      }
      if (p.heatUse() != HeatUse.NO_LIMIT_KNOWN) {
        advice.add(p.name(locale) + ": " + p.reason(locale));
      }
    }
    return advice;
  }

  private void small() {
    section("assumed", label.review().assumptions().stream().map(a -> a.text(locale)).toList());
    section("open", label.review().open().stream().map(this::openLine).toList());
    section("to-check", label.review().supplementsToCheck().stream().map(this::checkLine).toList());
    section("english-names", label.namesWithoutGerman(locale));
    section("packaging", label.packaging().stream().map(p -> p.text(locale)).toList());
    section("notices", label.review().notices().stream().map(n -> n.text(locale)).toList());
    section("not-assessed", label.notAssessedHere(locale));
    lines.add(HazardTexts.label("screening", locale));
    HazardTexts.age(label.review().rules(), locale).ifPresent(lines::add);
  }

  private String openLine(HazardFinding f) {
    String who = HazardTexts.names(f.open(), locale);
    String why = f.remarks().stream().map(r -> r.text(locale)).collect(joining("; "));
    String reason =
        who.isEmpty()
            ? why
            : why.isEmpty()
                ? HazardTexts.label("no-data-of", locale) + " " + who
                : why + ": " + who;
    return f.hazardClass().name(locale) + ": " + reason;
  }

  private String checkLine(SupplementalStatement s) {
    return s.code()
        + " "
        + label.text(s.code(), locale)
        + " ("
        + HazardTexts.names(s.ingredients(), locale)
        + ")";
  }

  private void section(String key, List<String> items) {
    if (!items.isEmpty()) {
      lines.add(HazardTexts.label(key, locale));
      items.forEach(item -> lines.add("  - " + item));
    }
  }

  private void add(String key, String value) {
    if (!value.isBlank()) {
      lines.add(HazardTexts.label(key, locale) + ": " + value);
    }
  }

  private String grams(double kilograms) {
    return number(kilograms * 1000) + " g";
  }

  private String range(DeclaredShare share) {
    return share.lowPercent() == share.highPercent()
        ? percent(share.highPercent())
        : percent(share.lowPercent()) + " – " + percent(share.highPercent());
  }

  private String percent(double value) {
    return HazardTexts.shownPercent(value, locale);
  }

  private String number(double value) {
    return HazardTexts.shown(value, locale);
  }
}
