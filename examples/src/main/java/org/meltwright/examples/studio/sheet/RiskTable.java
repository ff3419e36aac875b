// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Source;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
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
  private final Map<NotAssessed, Where> open = new LinkedHashMap<>();
  private final Map<List<String>, Where> said = new HashMap<>();

  RiskTable(Sheet sheet, ClassSheet forClass, Page.Builder page) {
    this.sheet = sheet;
    this.forClass = forClass;
    this.page = page;
    this.say = page.say();
  }

  /** Where something was found: while recipes are made, and in class. */
  private static final class Where {

    private final String why;
    private final Set<String> made = new LinkedHashSet<>();
    private final Set<String> inClass = new LinkedHashSet<>();

    Where(String why) {
      this.why = why;
    }

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
        say.all("risk.hazard", "risk.found", "risk.why", "risk.left"),
        rows);
  }

  /** Sorted, and yet all there: two recipes may differ in what one rule found. */
  private static <T extends Comparable<T>> List<Map.Entry<T, Where>> sorted(Map<T, Where> rows) {
    return rows.entrySet().stream().sorted(Map.Entry.comparingByKey()).toList();
  }

  private void gather(HeatingReview review, String recipe, boolean isMade) {
    for (Finding finding : review.findings()) {
      if (concernsPeople(finding)) {
        List<String> words = List.of(finding.summary(say.locale()), why(finding, review));
        add(where(words, w -> findings.put(finding, w)), recipe, isMade);
      }
    }
    for (NotAssessed entry : review.notAssessed()) {
      List<String> words = List.of(entry.what(say.locale()), entry.remedy(say.locale()));
      add(where(words, w -> open.put(entry, w)), recipe, isMade);
    }
  }

  /** What is said in the same words of two pots has one row. */
  private Where where(List<String> words, Consumer<Where> isNew) {
    Where known = said.get(words);
    if (known != null) {
      return known;
    }
    Where where = new Where(words.get(1));
    said.put(words, where);
    isNew.accept(where);
    return where;
  }

  private String why(Finding finding, HeatingReview review) {
    String bound = ReviewNotes.lowerBound(review, finding, say).map(b -> b + " ").orElse("");
    return bound + finding.reason(say.locale()) + " " + finding.remedy(say.locale());
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
    String signal =
        f.severity().word(say.locale()) + (f.isBlocking() ? ", " + say.words("blocked") : "");
    return row(
        f.summary(say.locale()) + " " + page.cite(f.source().citation()),
        where.who(),
        signal + "; " + recipes(where),
        where.why);
  }

  private List<String> row(NotAssessed n, Where where) {
    String signal = say.words("not-assessed.label");
    return row(n.what(say.locale()), where.who(), signal + "; " + recipes(where), where.why);
  }

  /** Whom it concerns stands before what was found; the last cell is for the pen. */
  private List<String> row(String hazard, String who, String found, String why) {
    String concerns = say.words("risk.who.found", "who", say.words(who), "found", found);
    return List.of(hazard, concerns, why, "");
  }

  private String recipes(Where where) {
    long jobs = sheet.jobs().stream().map(JobSheet::name).distinct().count();
    return where.recipes((int) jobs, forClass.paints().size(), say);
  }

  private List<String> always(String hazard, String source, String found) {
    return row(say.words(hazard) + " " + page.cite(source), ALL, found, say.words(hazard + ".why"));
  }

  private List<String> moltenWax() {
    return always("risk.wax", StandingAdvice.BURN.source().citation(), say.words("risk.wax.found"));
  }

  private List<String> hotSurfaces() {
    return always(
        "risk.metal",
        say.words("risk.burns.source"),
        new HotSurfaces(sheet, forClass, say).found());
  }

  /** The air of the class; that of the studio too, where recipes are made in another room. */
  private List<String> air() {
    Room studio = sheet.studio().place().room();
    Room here = forClass.day().about().room();
    String found =
        sheet.jobs().isEmpty() || Objects.equals(studio, here)
            ? air(here)
            : say.words("risk.air.both", "here", air(here), "studio", air(studio));
    return always("risk.air", StandingAdvice.AIR.source().citation(), found);
  }

  private String air(@Nullable Room room) {
    return room == null || room.airChangesPerHour().isEmpty()
        ? say.words("not-assessed.label") + ": " + say.words("risk.air.open")
        : say.words(
            "risk.air.changes", "count", say.decimals(room.airChangesPerHour().getAsDouble(), 1));
  }

  private List<String> electricity() {
    return always(
        "risk.load", Source.COMMON_PRACTICE.citation(), new CircuitPlan(forClass, say).found());
  }
}
