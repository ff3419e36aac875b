// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Source;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.exposure.WaxContact;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.NotAssessed;
import org.meltwright.safety.heating.Room;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.Severity;
import org.meltwright.safety.heating.StandingAdvice;

/** The risk assessment: what the reviews found, what they could not assess, what always holds. */
final class RiskTable {

  private static final String ALL = "risk.everyone";

  private final Sheet sheet;
  private final ClassSheet forClass;
  private final Page.Builder page;
  private final Say say;
  private final Map<Finding, Where> findings = new LinkedHashMap<>();
  private final Map<Finding, String> lowerBounds = new HashMap<>();
  private final Map<NotAssessed, Where> open = new LinkedHashMap<>();

  RiskTable(Sheet sheet, ClassSheet forClass, Page.Builder page) {
    this.sheet = sheet;
    this.forClass = forClass;
    this.page = page;
    this.say = page.say();
  }

  /** Where something was found: while recipes are made, and in class. */
  private static final class Where {

    private final Set<String> made = new LinkedHashSet<>();
    private final Set<String> inClass = new LinkedHashSet<>();

    String who() {
      if (inClass.isEmpty()) {
        return "risk.who-prepares";
      }
      return made.isEmpty() ? "risk.the-class" : ALL;
    }

    /** The recipes; "all" where there are several and none is spared. */
    String recipes(int jobs, int paints, Say say) {
      List<String> parts = new ArrayList<>();
      if (!made.isEmpty()) {
        parts.add(say.words("risk.before-class", "recipes", names(made, jobs, say)));
      }
      if (!inClass.isEmpty()) {
        parts.add(say.words("risk.in-class", "recipes", names(inClass, paints, say)));
      }
      return String.join("; ", parts);
    }

    private static String names(Set<String> names, int all, Say say) {
      return names.size() == all && all > 1
          ? say.words("risk.all-recipes")
          : String.join(", ", names);
    }
  }

  /** Returns the table, one row for each hazard. */
  Grid grid() {
    sheet.jobs().forEach(j -> gather(j.review(), j.name(), true));
    forClass.paints().forEach(p -> gather(p.review(), p.name(), false));
    List<List<String>> rows = new ArrayList<>();
    sorted(findings).forEach(e -> rows.add(row(e.getKey(), e.getValue())));
    sorted(open).forEach(e -> rows.add(row(e.getKey(), e.getValue())));
    rows.add(moltenWax());
    rows.add(hotSurfaces());
    rows.add(air());
    rows.add(electricity());
    return new Grid(
        say.words("risk.caption"),
        say.all("risk.hazard", "risk.who", "risk.found", "risk.why", "risk.left"),
        rows);
  }

  /** Sorted, and yet all there: two recipes may differ in what one rule found. */
  private static <T extends Comparable<T>> List<Map.Entry<T, Where>> sorted(Map<T, Where> rows) {
    return rows.entrySet().stream().sorted(Map.Entry.comparingByKey()).toList();
  }

  private void gather(HeatingReview review, String recipe, boolean isMade) {
    for (Finding finding : review.findings()) {
      if (concernsPeople(finding)) {
        add(findings.computeIfAbsent(finding, f -> new Where()), recipe, isMade);
        Readings.lowerBound(review, finding, say)
            .ifPresent(said -> lowerBounds.put(finding, said + " "));
      }
    }
    review
        .notAssessed()
        .forEach(n -> add(open.computeIfAbsent(n, k -> new Where()), recipe, isMade));
  }

  private static void add(Where where, String recipe, boolean isMade) {
    (isMade ? where.made : where.inClass).add(recipe);
  }

  /** A mere notice is about the work, unless it blocks, or is about people, place or pigment. */
  private static boolean concernsPeople(Finding finding) {
    Topic topic = finding.info().topic();
    return finding.isBlocking()
        || finding.severity().isAtLeast(Severity.CAUTION)
        || topic == Topic.PLACE
        || topic == Topic.PIGMENT;
  }

  private List<String> row(Finding f, Where where) {
    return List.of(
        f.summary(say.locale()) + " " + page.cite(f.source().citation()),
        say.words(where.who()),
        f.severity().word(say.locale()) + (f.isBlocking() ? ", " + say.words("blocked") : "") + "; " + recipes(where),
        lowerBounds.getOrDefault(f, "") + f.reason(say.locale()) + " " + f.remedy(say.locale()),
        "");
  }

  private String recipes(Where where) {
    long jobs = sheet.jobs().stream().map(JobSheet::name).distinct().count();
    return where.recipes((int) jobs, forClass.paints().size(), say);
  }

  private List<String> row(NotAssessed n, Where where) {
    return List.of(
        n.what(say.locale()), say.words(where.who()), say.words("not-assessed.label") + "; " + recipes(where), n.remedy(say.locale()), "");
  }

  private List<String> moltenWax() {
    return List.of(
        say.words("risk.wax") + " " + page.cite(StandingAdvice.BURN.source().citation()),
        say.words(ALL),
        say.words("risk.wax.found"),
        WaxContact.text(say.locale()) + " " + StandingAdvice.CLOTHING.text(say.locale()),
        "");
  }

  private List<String> hotSurfaces() {
    return List.of(
        say.words("risk.metal") + " " + page.cite(say.words("risk.burns.source")),
        say.words(ALL),
        new HotSurfaces(sheet, forClass, say).found(),
        say.words("risk.metal.why"),
        "");
  }

  /** The air of the class; that of the studio too, where recipes are made in another room. */
  private List<String> air() {
    Room studio = sheet.studio().place().room();
    Room here = forClass.day().about().room();
    String found =
        sheet.jobs().isEmpty() || Objects.equals(studio, here)
            ? air(here)
            : say.words("risk.air.both", "here", air(here), "studio", air(studio));
    return List.of(
        say.words("risk.air") + " " + page.cite(StandingAdvice.AIR.source().citation()),
        say.words(ALL),
        found,
        StandingAdvice.AIR.text(say.locale()),
        "");
  }

  private String air(@Nullable Room room) {
    return room == null || room.airChangesPerHour().isEmpty()
        ? say.words("not-assessed.label") + ": " + say.words("risk.air.open")
        : say.words(
            "risk.air.changes",
            "count",
            say.decimals(room.airChangesPerHour().getAsDouble(), 1));
  }

  private List<String> electricity() {
    return List.of(
        say.words("risk.load") + " " + page.cite(Source.COMMON_PRACTICE.citation()),
        say.words(ALL),
        new CircuitPlan(forClass, say).found(),
        say.words("risk.load.why"),
        "");
  }
}
