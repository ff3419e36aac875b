// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Source;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.PaintSheet;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.hazard.HazardCategory;
import org.meltwright.safety.hazard.HazardClass;
import org.meltwright.safety.hazard.HazardEvidence;
import org.meltwright.safety.hazard.HazardIngredient;
import org.meltwright.safety.hazard.HazardMixture;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.safety.hazard.SubstanceHazards;

/** What may set off an allergy among all that is made and used, and of what nobody knows. */
public final class Allergens {

  private static final List<HazardClass> CLASSES =
      List.of(HazardClass.SKIN_SENSITISATION, HazardClass.RESPIRATORY_SENSITISATION);

  /** The CAS registry number of colophony. */
  private static final String COLOPHONY = "8050-09-7";

  private static final String SENSITISER = "allergens.known";
  private static final String UNKNOWN = "allergens.unknown";
  private static final String PRESUMED = "allergens.no-entry";
  private static final String OTHER = "allergens.other";

  private final RuleSet rules;
  private final Page.Builder page;
  private final Say say;
  private final Map<String, Set<String>> names = new LinkedHashMap<>();
  private final Set<String> materials = new TreeSet<>();

  Allergens(ClassSheet sheet, Page.Builder page) {
    this.rules = RuleSet.clpOn(sheet.day().about().date());
    this.page = page;
    this.say = page.say();
    List.of(SENSITISER, UNKNOWN, PRESUMED, OTHER).forEach(k -> names.put(k, new TreeSet<>()));
    Stream<Composition> made = sheet.ledger().jobs().stream().map(j -> j.job().mix());
    Stream<Composition> used = sheet.paints().stream().map(PaintSheet::composition);
    List<Composition> all = Stream.concat(made, used).toList();
    all.forEach(c -> c.materials().forEach(m -> materials.add(m.id())));
    all.stream()
        .flatMap(c -> HazardMixture.builder(c, rules).build().ingredients().stream())
        .filter(i -> i.percent() > 0)
        .forEach(this::add);
  }

  private void add(HazardIngredient ingredient) {
    SubstanceHazards hazards = ingredient.hazards();
    List<String> found =
        hazards.categories().stream()
            .filter(c -> CLASSES.contains(c.hazardClass()))
            .map(this::words)
            .toList();
    String name = ingredient.name(say.locale());
    if (!found.isEmpty()) {
      String where = page.cite(hazards.source().citation());
      put(SENSITISER, name + " (" + String.join("; ", found) + ") " + where);
    } else if (CLASSES.stream().anyMatch(hazards::isOpenFor)) {
      put(UNKNOWN, name);
    } else {
      put(hazards.evidence() == HazardEvidence.PRESUMED_NONE ? PRESUMED : OTHER, name);
    }
  }

  private String words(HazardCategory c) {
    return c.hazardClass().name(say.locale()) + " " + c.category().id() + ", " + c.statement();
  }

  private void put(String kind, String name) {
    names.computeIfAbsent(kind, k -> new TreeSet<>()).add(name);
  }

  /** Returns the table, one row for each state of knowledge that occurs. */
  Grid grid() {
    List<List<String>> rows = new ArrayList<>();
    names.forEach(
        (kind, of) -> {
          if (!of.isEmpty()) {
            rows.add(List.of(say.words(kind), String.join("; ", of), say.words(kind + ".advice")));
          }
        });
    return new Grid(
        say.words("allergens.caption", "rules", rules.title(), "day", say.day(rules.day())),
        say.all("allergens.state", "allergens.ingredients", "allergens.do"),
        rows);
  }

  /** What a material may hold beside what it is sold as. */
  List<String> hiddenSensitisers() {
    List<String> notes = new ArrayList<>();
    if (materials.contains("damar")) {
      notes.add(
          say.words(
              "allergens.damar",
              "practice",
              page.cite(Source.COMMON_PRACTICE.citation()),
              "law",
              rules.find(COLOPHONY).map(h -> page.cite(h.source().citation())).orElse("")));
    }
    if (materials.stream().anyMatch(id -> id.startsWith("beeswax"))) {
      notes.add(say.words("allergens.propolis"));
    }
    return notes;
  }
}
