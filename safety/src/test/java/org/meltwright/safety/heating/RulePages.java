// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.meltwright.core.source.Source;

/** The pages in {@code docs/rules}, written from the rules, their texts and their cases. */
final class RulePages {

  private static final Locale EN = Locale.ENGLISH;
  private static final Locale DE = Locale.GERMAN;

  private RulePages() {}

  static List<HeatingRule> inOrder() {
    return HeatingRules.standard().rules().stream()
        .sorted(
            Comparator.comparing((HeatingRule r) -> r.info().topic())
                .thenComparing(r -> !r.info().blocking())
                .thenComparing(r -> r.info().severity())
                .thenComparing(r -> r.info().id()))
        .toList();
  }

  static String page(HeatingRule rule) {
    RuleInfo info = rule.info();
    List<RuleCase> cases = RuleCase.of(info.id());
    RuleCase first = cases.stream().filter(RuleCase::isBad).findFirst().orElseThrow();
    Finding finding = Plans.review(first.plan()).finding(info.id()).orElseThrow();
    List<String> lines = new ArrayList<>();
    lines.add("# " + info.id());
    lines.add("");
    lines.add(standing(info));
    lines.add("");
    lines.add("**Rests on:** " + source(info.source()) + ".");
    lines.add("");
    lines.add("**Why.** " + finding.reason(EN));
    lines.add("");
    lines.add("**What to do.** " + finding.remedy(EN));
    lines.add("");
    addCases(lines, "## It finds", cases, true);
    addCases(lines, "## It does not find", cases, false);
    lines.add("## What it says of the first case");
    lines.add("");
    lines.add("> " + finding.severity().word(EN) + ": " + finding.summary(EN));
    lines.add(">");
    lines.add("> " + finding.severity().word(DE) + ": " + finding.summary(DE));
    lines.add("> " + finding.reason(DE) + " " + finding.remedy(DE));
    lines.add("");
    return String.join("\n", lines);
  }

  private static String standing(RuleInfo info) {
    return "**"
        + info.severity()
        + "**"
        + (info.blocking() ? ", blocks" : "")
        + (info.fixed() ? ", fixed: it cannot be switched off" : "")
        + ".";
  }

  private static String source(Source source) {
    return source.equals(Source.COMMON_PRACTICE) ? "common practice" : source.citation();
  }

  private static void addCases(
      List<String> lines, String title, List<RuleCase> cases, boolean bad) {
    lines.add(title);
    lines.add("");
    cases.stream().filter(c -> c.isBad() == bad).forEach(c -> lines.add("- " + c.words()));
    lines.add("");
  }

  static String index() {
    List<String> lines = new ArrayList<>();
    lines.add("# Rules of the heating review");
    lines.add("");
    lines.add(
        "One page for each rule. The words of severity are those of the safety-sign standards;"
            + " *blocks* means that the work must not go on");
    lines.add(
        "until the finding is gone. What no rule looks at, burn-out of wax patterns among it:"
            + " [not-looked-at.md](not-looked-at.md).");
    lines.add("What was considered and left out, and why: [left-out.md](left-out.md).");
    for (RuleInfo.Topic topic : RuleInfo.Topic.values()) {
      lines.add("");
      lines.add("## " + title(topic));
      lines.add("");
      lines.add("| rule | severity | blocks | fixed | rests on |");
      lines.add("|---|---|---|---|---|");
      inOrder().stream()
          .map(HeatingRule::info)
          .filter(info -> info.topic() == topic)
          .forEach(info -> lines.add(row(info)));
    }
    lines.add("");
    return String.join("\n", lines);
  }

  private static String title(RuleInfo.Topic topic) {
    return switch (topic) {
      case UPPER_LIMIT -> "Upper limits of temperature";
      case WORKING -> "Melting, dissolving, working";
      case MIX -> "What is in the pot";
      case PIGMENT -> "Pigments";
      case VESSEL -> "Vessels";
      case TOOL -> "Tools that heat";
      case PLACE -> "People and place";
    };
  }

  private static String row(RuleInfo info) {
    return "| [%s](%s.md) | %s | %s | %s | %s |"
        .formatted(
            info.id(),
            info.id(),
            info.severity(),
            info.blocking() ? "yes" : "",
            info.fixed() ? "yes" : "",
            source(info.source()));
  }
}
