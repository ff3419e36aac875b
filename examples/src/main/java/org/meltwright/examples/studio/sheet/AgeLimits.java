// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.PaintSheet;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Block.Paragraph;
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

  private static final String NOT_FOUND = "age.not-found";

  private final List<HeatingReview> reviews;
  private final Page.Builder page;
  private final Say say;

  AgeLimits(ClassSheet sheet, Page.Builder page) {
    this.reviews = sheet.paints().stream().map(PaintSheet::review).toList();
    this.page = page;
    this.say = page.say();
  }

  /** Adds the table, one row for each rule that has something to say, and the others in a line. */
  void addTo() {
    List<List<String>> rows = new ArrayList<>();
    List<String> notFound = new ArrayList<>();
    for (HeatingRule rule : rules()) {
      if (state(rule.info().id()).equals(NOT_FOUND)) {
        notFound.add(who(rule));
      } else {
        rows.add(row(rule));
      }
    }
    page.add(new Grid(say.words("age.caption"), say.all("age.who", "age.here", "age.why"), rows));
    if (!notFound.isEmpty()) {
      page.add(new Paragraph(say.words(NOT_FOUND, "rules", String.join("; ", notFound))));
    }
  }

  private static List<HeatingRule> rules() {
    return ORDER.stream().flatMap(id -> HeatingRules.standard().find(id).stream()).toList();
  }

  private String who(HeatingRule rule) {
    return say.words("age." + rule.info().id()) + " " + page.cite(rule.info().source().citation());
  }

  /** What is in the risk assessment needs no reason here. */
  private List<String> row(HeatingRule rule) {
    String state = state(rule.info().id());
    return List.of(
        who(rule),
        say.words(state),
        switch (state) {
          case "age.found" -> say.words("age.see-risk");
          case "age.no-powder" -> say.words("age.no-powder.why");
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
    return reviews.stream().anyMatch(r -> r.isNotAsked(id)) ? "age.not-asked" : NOT_FOUND;
  }
}
