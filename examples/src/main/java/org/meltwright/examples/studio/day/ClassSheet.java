// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

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
import org.meltwright.examples.studio.day.ClassDay.Paint;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingPlanBuilder;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;

/** A class, worked out: what is used, made and bought, whether it may be heated, what is loaded. */
public final class ClassSheet {

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

  /**
   * Returns the class.
   *
   * @return the class
   */
  public ClassDay day() {
    return day;
  }

  /**
   * Returns what today makes and takes.
   *
   * @return the ledger
   */
  public Ledger ledger() {
    return ledger;
  }

  /**
   * Returns the answers for each paint.
   *
   * @return the paints, in the order of the file
   */
  public List<PaintSheet> paints() {
    return paints;
  }

  /**
   * Returns the answers for each circuit.
   *
   * @return the circuits, in the order of the file
   */
  public List<CircuitSheet> circuits() {
    return circuits;
  }

  /**
   * Returns what is used, made and bought.
   *
   * @return the provisions, or why they are not known
   */
  public Known<Provisions> provisions() {
    return provisions;
  }

  /**
   * Returns the paints whose review rests on shares by mass that are not known.
   *
   * @return why, each once
   */
  public List<NotKnown> unknownShares() {
    return paints.stream()
        .flatMap(p -> studio.unknownShares(p.paint().recipe()).stream())
        .distinct()
        .toList();
  }

  /**
   * Returns what heats beside the pots: the tools, and what hangs on a circuit and is nothing else.
   *
   * @return the heat sources
   */
  public List<HeatSource> tools() {
    List<HeatSource> tools = new ArrayList<>(day.power().tools());
    Set<HeatSource> known = new HashSet<>(tools);
    day.paints().forEach(p -> Optional.ofNullable(p.source()).ifPresent(known::add));
    day.power().circuits().stream()
        .flatMap(c -> c.sources().stream())
        .filter(known::add)
        .forEach(tools::add);
    return tools;
  }

  /**
   * Returns the paints of which it is not stated what keeps them hot.
   *
   * @return the paints
   */
  public List<PaintSheet> withoutSource() {
    return paints.stream().filter(p -> p.paint().source() == null).toList();
  }

  /**
   * Returns the pieces that hang on no circuit of the file; a torch needs none.
   *
   * @return how many pieces, by heat source
   */
  public Map<HeatSource, Integer> onNoCircuit() {
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

  /**
   * Returns whether the class may not be held as planned, or a recipe that it needs may not be
   * made.
   *
   * @return whether it may not
   */
  public boolean isBlocked() {
    return paints.stream().anyMatch(p -> p.review().isBlocked()) || !blockedJobs().isEmpty();
  }

  /**
   * Returns the blocked jobs of today that make what the class needs.
   *
   * @return the jobs
   */
  public List<JobSheet> blockedJobs() {
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
