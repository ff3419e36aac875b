// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.meltwright.core.planning.PlanningProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.units.Density;
import org.meltwright.units.Limit;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

/**
 * How much goes onto an area, and how far a mass reaches: film thickness, layers, what an absorbent
 * ground drinks, what never reaches the ground, and what leaves the film as it dries.
 *
 * <p>mass = area × (density × film × layers ÷ solids + drunk) ÷ transferred, with density in kg/m³
 * as applied, film in m as it stays, solids the share of volume that stays (1 for a melt), drunk in
 * kg/m² for the first coat, transferred the share of mass that reaches the ground.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Coverage panel = Coverage.of(millimetres(0.3), 10, gramsPerMillilitre(0.97)).withLoss(0.2);
 * // 0.3 m × 0.4 m
 * QuantityKind.MASS.toSi(panel.mass(squareCentimetres(1200))); // 0.4365 kg
 * // in cakes of 40 g, begun ones whole
 * panel.cakes(squareCentimetres(1200), grams(40)); // 11
 * // and back: how far 1 kg reaches
 * QuantityKind.AREA.toSi(panel.area(kilograms(1))); // 0.2749 m²
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Coverage {

  private final Film film;
  private final Way way;

  /**
   * Returns layers of a film on a ground that drinks nothing, with nothing lost.
   *
   * @param film the thickness of one layer, as it stays, from 1 nm to 1 m
   * @param layers how many layers, at least one
   * @param density the density as applied
   * @return the coverage
   * @throws ProblemException if a value cannot be
   */
  public static Coverage of(Quantity<Length> film, int layers, Quantity<Density> density) {
    return new Coverage(
        new Film(
            QuantityKind.LENGTH.toSi(checkedFilm(film)),
            checkedLayers(layers),
            QuantityKind.DENSITY.toSi(checkedDensity(density)),
            1),
        new Way(0, 1));
  }

  private Coverage(Film film, Way way) {
    this.film = film;
    this.way = way;
  }

  /**
   * Returns a copy with a loss on the way.
   *
   * @param lostShare the share of the mass that does not reach the ground: scrapings, drips; from 0
   *     to 0.99
   * @return the new coverage
   * @throws ProblemException if the share cannot be
   */
  public Coverage withLoss(double lostShare) {
    return new Coverage(film, new Way(way.drunk, 1 - checkedLoss(lostShare)));
  }

  /**
   * Returns a copy on a ground that drinks.
   *
   * @param mass what the first coat loses into the ground
   * @param area the area that drinks it, above zero
   * @return the new coverage
   * @throws ProblemException if the mass is below zero or the area not above zero
   */
  public Coverage withAbsorbentGround(Quantity<Mass> mass, Quantity<Area> area) {
    double kilograms = QuantityKind.MASS.toSi(checkedDrunk(mass));
    return new Coverage(film, new Way(kilograms / squareMetres(area), way.transferred));
  }

  /**
   * Returns a copy of a stuff of which a part leaves the film, such as a solvent.
   *
   * @param stays the share of the volume that stays, above zero
   * @return the new coverage
   * @throws ProblemException if the share is zero
   */
  public Coverage withSolids(VolumeFraction stays) {
    double share = checkedSolids(stays).value();
    return new Coverage(new Film(film.metres, film.layers, film.density, share), way);
  }

  static Quantity<Length> checkedFilm(Quantity<Length> film) {
    CHECK.between(film, 1e-9, 1, "thickness of a film");
    return film;
  }

  static int checkedLayers(int layers) {
    return (int) CHECK.between(layers, 1, 1e6, "number of layers");
  }

  static Quantity<Density> checkedDensity(Quantity<Density> density) {
    CHECK.between(density, 1, 1e5, "density");
    return density;
  }

  static double checkedLoss(double share) {
    return CHECK.between(share, 0, 0.99, "share that is lost");
  }

  static Quantity<Mass> checkedDrunk(Quantity<Mass> mass) {
    CHECK.between(mass, 0, 1e6, "mass that the ground drinks");
    return mass;
  }

  static VolumeFraction checkedSolids(VolumeFraction stays) {
    CHECK.between(stays.value(), 1e-6, 1, "share of volume that stays");
    return stays;
  }

  /**
   * Returns this coverage as it is written down.
   *
   * @return the draft, which reads back as an equal coverage if the ground drinks at most 1e6 kg on
   *     each square metre
   */
  public CoverageDraft toDraft() {
    return CoverageDraft.of(this);
  }

  double filmMetres() {
    return film.metres;
  }

  int layers() {
    return film.layers;
  }

  double density() {
    return film.density;
  }

  double solidsShare() {
    return film.solids;
  }

  double drunkKilogramsPerSquareMetre() {
    return way.drunk;
  }

  double transferredShare() {
    return way.transferred;
  }

  private static double squareMetres(Quantity<Area> area) {
    return CHECK.between(area, 1e-9, 1e9, "area");
  }

  /**
   * Returns what a square metre takes.
   *
   * @return the mass to charge per area, in kg/m²
   */
  public double kilogramsPerSquareMetre() {
    double applied = film.density * wetMetres() * film.layers;
    return (applied + way.drunk) / way.transferred;
  }

  private double wetMetres() {
    return film.metres / film.solids;
  }

  /**
   * Returns how thick one layer is as applied.
   *
   * @return film ÷ solids
   */
  public Quantity<Length> wetFilm() {
    return QuantityKind.LENGTH.ofSi(wetMetres());
  }

  /**
   * Returns the mass for an area.
   *
   * @param area the area, above zero
   * @return the mass to charge
   * @throws ProblemException if the area is not above zero
   */
  public Quantity<Mass> mass(Quantity<Area> area) {
    return QuantityKind.MASS.ofSi(kilograms(squareMetres(area)));
  }

  double kilograms(double squareMetres) {
    return squareMetres * kilogramsPerSquareMetre();
  }

  /**
   * Returns the mass that stays on an area: what a panel gains.
   *
   * @param area the area, above zero
   * @return film and what the ground drank, without losses
   * @throws ProblemException if the area is not above zero
   */
  public Quantity<Mass> massThatStays(Quantity<Area> area) {
    double stays = film.density * film.metres * film.layers;
    return QuantityKind.MASS.ofSi(squareMetres(area) * (stays + way.drunk));
  }

  /**
   * Returns how many cakes an area takes.
   *
   * @param area the area, above zero
   * @param cake the mass of one cake, above zero
   * @return the number, rounded up
   * @throws ProblemException if the area or the mass is not above zero
   */
  public long cakes(Quantity<Area> area, Quantity<Mass> cake) {
    double each = CHECK.between(cake, 1e-9, 1e9, "mass of a cake");
    return wholeUp(kilograms(squareMetres(area)) / each);
  }

  /** Rounds up, with the slack of limits: 3.0000000001 cakes are three. */
  static long wholeUp(double value) {
    return (long) Math.ceil(value * (1 - Limit.RELATIVE_SLACK));
  }

  /**
   * Returns how far a mass reaches.
   *
   * @param mass the mass, of a cake say
   * @return the area that can be covered with all layers
   * @throws ProblemException if the mass is below zero
   */
  public Quantity<Area> area(Quantity<Mass> mass) {
    double kilograms = CHECK.between(mass, 0, 1e9, "mass");
    return QuantityKind.AREA.ofSi(kilograms / kilogramsPerSquareMetre());
  }

  /**
   * Returns how far a volume reaches.
   *
   * @param volume the volume as applied
   * @return the area that can be covered with all layers
   * @throws ProblemException if the volume is below zero
   */
  public Quantity<Area> areaOfVolume(Quantity<Volume> volume) {
    double cubicMetres = CHECK.between(volume, 0, 1e6, "volume");
    return QuantityKind.AREA.ofSi(cubicMetres * film.density / kilogramsPerSquareMetre());
  }

  /**
   * Explains what an area takes.
   *
   * @param area the area, above zero
   * @return the inputs, the formula and the mass
   * @throws ProblemException if the area is not above zero
   */
  public Explanation explanation(Quantity<Area> area) {
    return explanation(squareMetres(area));
  }

  Explanation explanation(double squareMetres) {
    return PlanningWorking.builder("working.coverage")
        .stated(PlanningWorking.AREA, squareMetres)
        .stated(PlanningWorking.FILM, film.metres)
        .stated(PlanningWorking.LAYERS, film.layers)
        .stated(PlanningWorking.DENSITY, film.density)
        .stated(PlanningWorking.SOLIDS, film.solids)
        .stated(PlanningWorking.DRUNK, way.drunk)
        .stated(PlanningWorking.REACHES, way.transferred)
        .step(PlanningWorking.COVERAGE, kilograms(squareMetres))
        .caution("working.coverage.even")
        .build();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Coverage that && film.equals(that.film) && way.equals(that.way);
  }

  @Override
  public int hashCode() {
    return 31 * film.hashCode() + way.hashCode();
  }

  @Override
  public String toString() {
    return film.layers + " layers of " + film.metres + " m";
  }

  /**
   * What is laid on: the thickness of a layer as it stays, in m; the density as applied, in kg/m³;
   * the share of volume that stays.
   */
  private record Film(double metres, int layers, double density, double solids) {}

  /** What goes elsewhere: into the ground, in kg/m²; the share of mass that reaches the ground. */
  private record Way(double drunk, double transferred) {}
}
