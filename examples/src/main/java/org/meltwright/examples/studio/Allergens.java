// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Source;
import org.meltwright.examples.studio.page.Block.Grid;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.safety.hazard.HazardCategory;
import org.meltwright.safety.hazard.HazardClass;
import org.meltwright.safety.hazard.HazardEvidence;
import org.meltwright.safety.hazard.HazardIngredient;
import org.meltwright.safety.hazard.HazardMixture;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.safety.hazard.SubstanceHazards;

/** What may set off an allergy among all that is made and used, and of what nobody knows. */
final class Allergens {

  private static final Locale READER = Locale.ENGLISH;

  private static final List<HazardClass> CLASSES =
      List.of(HazardClass.SKIN_SENSITISATION, HazardClass.RESPIRATORY_SENSITISATION);

  /** The CAS registry number of colophony. */
  private static final String COLOPHONY = "8050-09-7";

  private static final String SENSITISER = "Known to sensitise";
  private static final String UNKNOWN = "NOT KNOWN";
  private static final String PRESUMED = "No entry in the law's list";
  private static final String OTHER = "Listed, not as a sensitiser";

  private final RuleSet rules;
  private final Page.Builder page;
  private final Map<String, Set<String>> names = new LinkedHashMap<>();
  private final Set<String> materials = new TreeSet<>();

  Allergens(ClassSheet sheet, Page.Builder page) {
    this.rules = RuleSet.clpOn(sheet.day().about().date());
    this.page = page;
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
            .map(Allergens::words)
            .toList();
    String name = ingredient.name(READER);
    if (!found.isEmpty()) {
      String where = page.cite(hazards.source().citation());
      put(SENSITISER, name + " (" + String.join("; ", found) + ") " + where);
    } else if (CLASSES.stream().anyMatch(hazards::isOpenFor)) {
      put(UNKNOWN, name);
    } else {
      put(hazards.evidence() == HazardEvidence.PRESUMED_NONE ? PRESUMED : OTHER, name);
    }
  }

  private static String words(HazardCategory c) {
    return c.hazardClass().name(READER) + " " + c.category().id() + ", " + c.statement();
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
            rows.add(List.of(kind, String.join("; ", of), advice(kind)));
          }
        });
    return new Grid(
        "Sensitisers of skin and airways among all that is made and used, by "
            + rules.title()
            + " on "
            + rules.day()
            + "; a screening aid.",
        List.of("State", "Ingredients", "What to do"),
        rows);
  }

  /** What a material may hold beside what it is sold as. */
  List<String> hiddenSensitisers() {
    List<String> notes = new ArrayList<>();
    if (materials.contains("damar")) {
      notes.add(
          "Damar is no colophony, but is at times adulterated with it "
              + page.cite(Source.COMMON_PRACTICE.citation())
              + "; colophony is known to sensitise the skin "
              + rules.find(COLOPHONY).map(h -> page.cite(h.source().citation())).orElse("")
              + ".");
    }
    if (materials.stream().anyMatch(id -> id.startsWith("beeswax"))) {
      notes.add("Beeswax may hold traces of propolis, which sensitises the skin (remembered).");
    }
    return notes;
  }

  private static String advice(String kind) {
    return switch (kind) {
      case SENSITISER -> "Who is allergic keeps away from it; tell everyone before the class.";
      case UNKNOWN -> "Ask the supplier for the safety data sheet; unknown is never safe.";
      case PRESUMED ->
          "Taken as no sensitiser, as suppliers usually do; check the data sheet of your own lot.";
      default -> "Some react all the same; check the data sheet of your own lot.";
    };
  }
}
