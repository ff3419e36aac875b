// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.examples.studio.ClassDay.Paint;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingPlanBuilder;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;

/** A class, worked out: what is used, made and bought, whether it may be heated, what is loaded. */
final class ClassSheet {

  private final ClassDay day;
  private final Studio studio;
  private final Ledger ledger;
  private final List<PaintSheet> paints;
  private final List<CircuitSheet> circuits;
  private final Known<Provisions> provisions;

  /**
   * Works out a class.
   *
   * @throws org.meltwright.units.ProblemException if an amount cannot be
   */
  static ClassSheet of(ClassDay day, Studio studio, List<JobSheet> jobs, Say say) {
    return new ClassSheet(day, studio, new Ledger(jobs, studio.recipes().leftovers()), say);
  }

  private ClassSheet(ClassDay day, Studio studio, Ledger ledger, Say say) {
    this.day = day;
    this.studio = studio;
    this.ledger = ledger;
    this.paints = day.paints().stream().map(this::paint).toList();
    this.circuits =
        day.power().circuits().stream()
            .map(c -> CircuitSheet.of(c, day.power().continuousShare(), say))
            .toList();
    Composition mix = mix(paints);
    this.provisions = density(mix).map(d -> new Provisions(day, studio, ledger, paints, d, say));
  }

  private PaintSheet paint(Paint paint) {
    Composition net = Ingredient.of(paint.recipe(), studio.insolubles()).composition();
    return new PaintSheet(paint, net, review(paint, net));
  }

  /** All paints together, each by its share of what is used. */
  private static Composition mix(List<PaintSheet> paints) {
    return Composition.blend(
        paints.stream().map(PaintSheet::composition).toList(),
        paints.stream().mapToDouble(p -> p.paint().share().value()).toArray());
  }

  /** The density of all paints together, solid, in kg/m³. */
  private static Known<Double> density(Composition mix) {
    return Known.of(
        DensityBasis.SOLID
            .findTable(mix.materials())
            .map(table -> mix.volumeView(table).density().centralSi()),
        () ->
            NotKnown.density(
                Phrase.of("not-known.class"),
                DensityBasis.SOLID,
                mix.materials(),
                Phrase.of("not-known.class.remedy")));
  }

  /** How a paint is kept hot while the class is in the room; it was made before. */
  private HeatingReview review(Paint paint, Composition mix) {
    HeatingPlanBuilder heating =
        HeatingPlan.builder(mix).hoursHeld(day.hours()).people(day.people());
    Optional.ofNullable(paint.source()).ifPresent(heating::heat);
    Optional.ofNullable(paint.vessel()).ifPresent(heating::vessel);
    Optional.ofNullable(paint.thermometer()).ifPresent(heating::thermometer);
    Optional.ofNullable(paint.reading()).ifPresent(heating::liquidReading);
    Optional.ofNullable(day.about().room()).ifPresent(heating::room);
    Optional.ofNullable(paint.fill()).ifPresent(fill -> heating.fillLevel(fill.value()));
    tools().forEach(heating::tool);
    return HeatingRules.standard().review(heating.build());
  }

  ClassDay day() {
    return day;
  }

  Ledger ledger() {
    return ledger;
  }

  List<PaintSheet> paints() {
    return paints;
  }

  List<CircuitSheet> circuits() {
    return circuits;
  }

  /** What is used, made and bought. */
  Known<Provisions> provisions() {
    return provisions;
  }

  /** The paints whose review rests on shares by mass that are not known, and why. */
  List<NotKnown> unknownShares() {
    return paints.stream()
        .flatMap(p -> studio.unknownShares(p.paint().recipe()).stream())
        .distinct()
        .toList();
  }

  /** What heats beside the pots: the tools, and what hangs on a circuit and is nothing else. */
  List<HeatSource> tools() {
    List<HeatSource> tools = new ArrayList<>(day.power().tools());
    Set<HeatSource> known = new HashSet<>(tools);
    day.paints().forEach(p -> Optional.ofNullable(p.source()).ifPresent(known::add));
    day.power().circuits().stream()
        .flatMap(c -> c.sources().stream())
        .filter(known::add)
        .forEach(tools::add);
    return tools;
  }

  /** The paints of which it is not stated what keeps them hot. */
  List<PaintSheet> withoutSource() {
    return paints.stream().filter(p -> p.paint().source() == null).toList();
  }

  /** The pieces that hang on no circuit of the file, by heat source; a torch needs none. */
  Map<HeatSource, Integer> onNoCircuit() {
    Map<HeatSource, Integer> pieces =
        new TreeMap<>(Comparator.comparing(HeatSource::name).thenComparing(HeatSource::kind));
    day.power().tools().forEach(s -> pieces.merge(s, 1, Integer::sum));
    day.paints()
        .forEach(
            p -> Optional.ofNullable(p.source()).ifPresent(s -> pieces.merge(s, 1, Integer::sum)));
    day.power().circuits().stream()
        .flatMap(c -> c.sources().stream())
        .forEach(s -> pieces.computeIfPresent(s, (same, count) -> count > 1 ? count - 1 : null));
    pieces.keySet().removeIf(s -> s.kind() == HeatSource.Kind.TORCH);
    return pieces;
  }

  /** Whether the class may not be held as planned, or a recipe that it needs may not be made. */
  boolean isBlocked() {
    return paints.stream().anyMatch(p -> p.review().isBlocked()) || !blockedJobs().isEmpty();
  }

  /** The blocked jobs of today that make what the class needs. */
  List<JobSheet> blockedJobs() {
    Set<String> names = new HashSet<>();
    paints.forEach(p -> collect(p.paint().recipe(), names));
    return ledger.jobs().stream()
        .filter(JobSheet::isBlocked)
        .filter(j -> names.contains(j.name()))
        .toList();
  }

  private void collect(Recipe recipe, Set<String> names) {
    if (names.add(recipe.name())) {
      recipe.parts().forEach(p -> p.ingredient().recipe().ifPresent(r -> collect(r, names)));
    }
  }
}
