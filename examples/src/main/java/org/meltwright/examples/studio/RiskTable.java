// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.source.Source;
import org.meltwright.examples.page.Block.Grid;
import org.meltwright.examples.page.Page;
import org.meltwright.examples.page.Say;
import org.meltwright.safety.exposure.BurnThresholds;
import org.meltwright.safety.exposure.WaxContact;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.NotAssessed;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.Severity;
import org.meltwright.safety.heating.StandingAdvice;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** The risk assessment: what the reviews found, what they could not assess, what always holds. */
final class RiskTable {

  /** What the thresholds of burns rest on. */
  static final String BURNS =
      "ISO 13732-1 and EN 563, burn thresholds of surfaces, as secondary pages restate them; the"
          + " standards themselves were not opened";

  private static final Locale READER = Locale.ENGLISH;

  private static final String ALL = "everyone";

  /** Contact of half a second: a touch. */
  private static final double TOUCH_SECONDS = 0.5;

  private final Sheet sheet;
  private final ClassSheet forClass;
  private final Page.Builder page;
  private final Map<Finding, Where> findings = new TreeMap<>();
  private final Map<NotAssessed, Where> open = new TreeMap<>();

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
    sheet.jobs().forEach(j -> gather(j.review(), j.batch().recipe().name(), true));
    forClass.paints().forEach(p -> gather(p.review(), p.name(), false));
    List<List<String>> rows = new ArrayList<>();
    findings.forEach((f, where) -> rows.add(row(f, where)));
    open.forEach((n, where) -> rows.add(row(n, where)));
    rows.add(moltenWax());
    hotSurfaces().ifPresent(rows::add);
    rows.add(air());
    rows.add(electricity());
    return new Grid(
        "What can hurt someone, from the heating reviews and the exposure figures; the last column is"
            + " for the pen: what risk is left, and initials.",
        List.of("Hazard", "Who", "Found", "Why, and what to do", "Left over"),
        rows);
  }

  private void gather(HeatingReview review, String recipe, boolean isMade) {
    for (Finding finding : review.findings()) {
      if (concernsPeople(finding)) {
        add(findings.computeIfAbsent(finding, f -> new Where()), recipe, isMade);
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
        f.reason(READER) + " " + f.remedy(READER),
        "");
  }

  private String recipes(Where where) {
    long jobs = sheet.jobs().stream().map(j -> j.batch().recipe().name()).distinct().count();
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

  /** The hottest bare metal of the class, if a set point is stated. */
  private java.util.Optional<List<String>> hotSurfaces() {
    TemperatureRange touch =
        BurnThresholds.threshold(BurnThresholds.Surface.BARE_METAL, TOUCH_SECONDS);
    return sources().stream()
        .filter(s -> s.setPoint().isPresent())
        .map(RiskTable::surface)
        .max(java.util.Comparator.naturalOrder())
        .map(
            hottest ->
                List.of(
                    "Hot metal: plates, pots, tools " + page.cite(BURNS),
                    ALL,
                    found(hottest)
                        + ": up to "
                        + Say.decimals(hottest.celsius(), 0)
                        + " °C where stated; bare metal burns at a touch from "
                        + Say.temperature(touch),
                    "The threshold is of healthy adult skin; thin, young or ill skin may burn below"
                        + " it, and a longer touch burns at less.",
                    ""));
  }

  private static String found(TemperaturePoint hottest) {
    return switch (BurnThresholds.outcome(
        BurnThresholds.Surface.BARE_METAL, hottest, TOUCH_SECONDS)) {
      case BURNS -> "burns at a touch";
      case MAY_BURN -> "may burn at a touch";
      case BELOW_THRESHOLD -> "below the threshold of a touch, not of a longer one";
    };
  }

  private static TemperaturePoint surface(HeatSource source) {
    TemperaturePoint set = source.setPoint().orElseThrow();
    return source.overshoot().map(set::plus).orElse(set);
  }

  /** All heat sources of the day. */
  private Set<HeatSource> sources() {
    Set<HeatSource> sources = new LinkedHashSet<>(forClass.day().power().tools());
    sheet.jobs().forEach(j -> sources.add(j.job().heating().source()));
    forClass.paints().stream()
        .map(p -> p.paint().source())
        .filter(java.util.Objects::nonNull)
        .forEach(sources::add);
    return sources;
  }

  private List<String> air() {
    var room = sheet.studio().place().room();
    String found =
        room == null || room.airChangesPerHour().isEmpty()
            ? "NOT ASSESSED: room or extraction not stated"
            : Say.decimals(room.airChangesPerHour().getAsDouble(), 1) + " air changes an hour";
    return List.of(
        "Fumes of wax and resin, vapours " + page.cite(StandingAdvice.AIR.source().citation()),
        ALL,
        found,
        StandingAdvice.AIR.text(READER),
        "");
  }

  private List<String> electricity() {
    Map<String, String> words = new LinkedHashMap<>();
    forClass.circuits().forEach(c -> words.put(c.circuit().name(), c.word()));
    forClass.onNoCircuit().forEach(s -> words.put(s.name(), "NOT ASSESSED: on no circuit stated"));
    String found =
        words.isEmpty()
            ? "NOT ASSESSED: no circuit stated"
            : String.join(
                "; ",
                words.entrySet().stream().map(e -> e.getKey() + ": " + e.getValue()).toList());
    return List.of(
        "Overloaded circuits, cables " + page.cite(Source.COMMON_PRACTICE.citation()),
        ALL,
        found,
        "See the circuit plan. An electrician and local code decide.",
        "");
  }
}
