// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.HeatingRules;

/** What the rules say of young people, and whether it applies to this class. */
final class AgeLimits {

  private static final Locale READER = Locale.ENGLISH;

  /** The rules on age, and what each keeps away. */
  private static final Map<String, String> RULES =
      Map.of(
          "minors-alone", "Under 18 without an adult",
          "minors-consent", "Under 18 at all",
          "minors-with-flame", "Under 18 and a torch",
          "minors-high-heat", "Under 18 and a heat gun",
          "minors-dry-powder", "Under 18 and dry pigment",
          "minors-toxic-pigment", "Under 18 and a toxic pigment",
          "class-size", "How many to a teacher");

  private static final List<String> ORDER =
      List.of(
          "minors-alone",
          "minors-consent",
          "minors-with-flame",
          "minors-high-heat",
          "minors-dry-powder",
          "minors-toxic-pigment",
          "class-size");

  private final List<HeatingReview> reviews;
  private final Page.Builder page;

  AgeLimits(ClassSheet sheet, Page.Builder page) {
    this.reviews = sheet.paints().stream().map(PaintSheet::review).toList();
    this.page = page;
  }

  /** Returns the table, one row for each rule. */
  Grid grid() {
    List<List<String>> rows = new ArrayList<>();
    ORDER.forEach(id -> HeatingRules.standard().find(id).ifPresent(rule -> rows.add(row(rule))));
    return new Grid(
        "Rules of the trade and of guidelines, and whether the review found them in this class; law"
            + " on young people and school rules come first.",
        List.of("Who and what", "In this class", "Why, and what to do"),
        rows);
  }

  private List<String> row(HeatingRule rule) {
    String id = rule.info().id();
    return List.of(
        RULES.getOrDefault(id, id) + " " + page.cite(rule.info().source().citation()),
        applies(id),
        text(rule, "reason") + " " + text(rule, "remedy"));
  }

  private static String text(HeatingRule rule, String part) {
    return rule.text("rule." + rule.info().id() + "." + part, READER, Map.of());
  }

  private String applies(String id) {
    if (reviews.stream().anyMatch(r -> r.finding(id).isPresent())) {
      return "FOUND";
    }
    if (id.equals("minors-dry-powder")) {
      return "taken as none: paints are made before class";
    }
    if (reviews.stream().anyMatch(r -> r.isNotAssessed(id))) {
      return "NOT ASSESSED";
    }
    return reviews.stream().anyMatch(r -> r.isNotAsked(id)) ? "NOT ASKED" : "not found";
  }
}
