// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.PaintSheet;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.HeatingRules;

/** What the rules say of young people, and whether it applies to this class. */
final class AgeLimits {

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
  private final Say say;

  AgeLimits(ClassSheet sheet, Page.Builder page) {
    this.reviews = sheet.paints().stream().map(PaintSheet::review).toList();
    this.page = page;
    this.say = page.say();
  }

  /** Returns the table, one row for each rule. */
  Grid grid() {
    List<List<String>> rows = new ArrayList<>();
    ORDER.forEach(id -> HeatingRules.standard().find(id).ifPresent(rule -> rows.add(row(rule))));
    return new Grid(say.words("age.caption"), say.all("age.who", "age.here", "age.why"), rows);
  }

  /** What is in the risk assessment, or is not found, needs no reason here. */
  private List<String> row(HeatingRule rule) {
    String id = rule.info().id();
    String state = state(id);
    return List.of(
        say.words("age." + id) + " " + page.cite(rule.info().source().citation()),
        say.words(state),
        switch (state) {
          case "age.found" -> say.words("age.see-risk");
          case "age.no-powder" -> say.words("age.no-powder.why");
          case "age.not-found" -> say.words("age.nothing");
          default -> text(rule, "reason") + " " + text(rule, "remedy");
        });
  }

  private String text(HeatingRule rule, String part) {
    return rule.text("rule." + rule.info().id() + "." + part, say.locale(), Map.of());
  }

  private String state(String id) {
    if (reviews.stream().anyMatch(r -> r.finding(id).isPresent())) {
      return "age.found";
    }
    if (id.equals("minors-dry-powder")) {
      return "age.no-powder";
    }
    if (reviews.stream().anyMatch(r -> r.isNotAssessed(id))) {
      return "not-assessed.label";
    }
    return reviews.stream().anyMatch(r -> r.isNotAsked(id)) ? "age.not-asked" : "age.not-found";
  }
}
