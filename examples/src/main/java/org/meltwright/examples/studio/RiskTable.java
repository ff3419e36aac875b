// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
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

  /** What the thresholds of burns rest on. */
  static final String BURNS =
      "ISO 13732-1 and EN 563, burn thresholds of surfaces, as secondary pages restate them; the"
          + " standards themselves were not opened";

  private static final Locale READER = Locale.ENGLISH;

  private static final String ALL = "everyone";

  private final Sheet sheet;
  private final ClassSheet forClass;
  private final Page.Builder page;
  private final Map<Finding, Where> findings = new LinkedHashMap<>();
  private final Map<Finding, String> lowerBounds = new HashMap<>();
  private final Map<NotAssessed, Where> open = new LinkedHashMap<>();

  RiskTable(Sheet sheet, ClassSheet forClass, Page.Builder page) {
    this.sheet = sheet;
    this.forClass = forClass;
    this.page = page;
  }

  /** Where something was found: while recipes are made, and in class. */
  private static final class Where {

    private final Set<String> made = new LinkedHashSet<>();
    private final Set<String> inClass = new LinkedHashSet<>();

    String who() {
      if (inClass.isEmpty()) {
        return "who prepares";
      }
      return made.isEmpty() ? "the class" : ALL;
    }

    /** The recipes; "all" where there are several and none is spared. */
    String recipes(int jobs, int paints) {
      List<String> parts = new ArrayList<>();
      if (!made.isEmpty()) {
        parts.add("before class: " + names(made, jobs));
      }
      if (!inClass.isEmpty()) {
        parts.add("in class: " + names(inClass, paints));
      }
      return String.join("; ", parts);
    }

    private static String names(Set<String> names, int all) {
      return names.size() == all && all > 1 ? "all recipes" : String.join(", ", names);
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
        "What can hurt someone, from the heating reviews and the exposure figures; the last column is"
            + " for the pen: what risk is left, and initials.",
        List.of("Hazard", "Who", "Found", "Why, and what to do", "Risk left"),
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
        Readings.lowerBound(review, finding)
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
        f.summary(READER) + " " + page.cite(f.source().citation()),
        where.who(),
        f.severity().word(READER) + (f.isBlocking() ? ", BLOCKED" : "") + "; " + recipes(where),
        lowerBounds.getOrDefault(f, "") + f.reason(READER) + " " + f.remedy(READER),
        "");
  }

  private String recipes(Where where) {
    long jobs = sheet.jobs().stream().map(JobSheet::name).distinct().count();
    return where.recipes((int) jobs, forClass.paints().size());
  }

  private List<String> row(NotAssessed n, Where where) {
    return List.of(
        n.what(READER), where.who(), "NOT ASSESSED; " + recipes(where), n.remedy(READER), "");
  }

  private List<String> moltenWax() {
    return List.of(
        "Molten wax on skin " + page.cite(StandingAdvice.BURN.source().citation()),
        ALL,
        "burns at once, at any working temperature",
        WaxContact.text(READER) + " " + StandingAdvice.CLOTHING.text(READER),
        "");
  }

  private List<String> hotSurfaces() {
    return List.of(
        "Hot metal: plates, pots, tools " + page.cite(BURNS),
        ALL,
        new HotSurfaces(sheet, forClass).found(),
        "The threshold is of healthy adult skin; thin, young or ill skin may burn below it, and a"
            + " longer touch burns at less.",
        "");
  }

  /** The air of the class; that of the studio too, where recipes are made in another room. */
  private List<String> air() {
    Room studio = sheet.studio().place().room();
    Room here = forClass.day().about().room();
    String found =
        sheet.jobs().isEmpty() || Objects.equals(studio, here)
            ? air(here)
            : "in class: " + air(here) + "; before class, in the studio: " + air(studio);
    return List.of(
        "Fumes of wax and resin, vapours " + page.cite(StandingAdvice.AIR.source().citation()),
        ALL,
        found,
        StandingAdvice.AIR.text(READER),
        "");
  }

  private static String air(@Nullable Room room) {
    return room == null || room.airChangesPerHour().isEmpty()
        ? "NOT ASSESSED: room or extraction not stated"
        : Say.decimals(room.airChangesPerHour().getAsDouble(), 1) + " air changes an hour";
  }

  private List<String> electricity() {
    List<String> words = new ArrayList<>();
    forClass.circuits().forEach(c -> words.add(c.circuit().name() + ": " + c.word()));
    forClass.onNoCircuit().forEach((s, n) -> words.add(CircuitPlan.open(s, n)));
    forClass
        .withoutSource()
        .forEach(p -> words.add(p.name() + ": NOT ASSESSED: heat source not stated"));
    return List.of(
        "Overloaded circuits, cables " + page.cite(Source.COMMON_PRACTICE.citation()),
        ALL,
        words.isEmpty() ? "NOT ASSESSED: no circuit stated" : String.join("; ", words),
        "See the circuit plan. An electrician and local code decide.",
        "");
  }
}
