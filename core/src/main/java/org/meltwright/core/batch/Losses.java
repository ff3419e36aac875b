// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.ByMaterial;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What a batch loses between weighing and casting.
 *
 * <pre>
 * net = pot · (1 − Σ wᵢ dᵢ − s) − max(F, f · pot)
 * </pre>
 *
 * <p>pot total weighed in [kg], w share by mass, d insolubles of that ingredient, s straining loss,
 * F fixed and f proportional film loss. Insolubles leave the net composition; film and straining
 * take it as it is. What was strained when an {@linkplain Ingredient#of(Recipe, Losses) ingredient}
 * was made leaves nothing behind again. For example, 730 g at 1 : 8 with 4 % insolubles in the
 * first side and 2 % film is 821.25 g in the pot and 801.2 g net.
 *
 * <p>For example, a film that is the larger of 10 g and 2 % of the pot:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Losses losses =
 *     Losses.NONE
 *         .withInsolubles(resin, MassFraction.ofPercent(3))
 *         .withFilm(grams(10), MassFraction.ofPercent(2));
 * losses.insolubles(resin).get().percent(); // 3.0 %
 * losses.filmKilograms(0.3); // 0.010 kg
 * losses.filmKilograms(0.9); // 0.018 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Losses {

  /** No losses. */
  public static final Losses NONE = new Losses(ByMaterial.none(), 0, 0, 0);

  private static final double HEAVIEST_FILM = 1e6;
  private static final double HEAVIEST = 1e12;

  private final ByMaterial<Double> insolubles;
  private final double fixedFilmKilograms;
  private final double filmShare;
  private final double strainingShare;

  private Losses(
      ByMaterial<Double> insolubles,
      double fixedFilmKilograms,
      double filmShare,
      double strainingShare) {
    this.insolubles = insolubles;
    this.fixedFilmKilograms = fixedFilmKilograms;
    this.filmShare = filmShare;
    this.strainingShare = strainingShare;
  }

  /**
   * Returns a copy in which an ingredient leaves insolubles behind.
   *
   * @param material the ingredient, whatever its figures and its lot; that lot alone if it names
   *     one
   * @param share its share by mass that stays behind
   * @return the new losses
   */
  public Losses withInsolubles(Material material, MassFraction share) {
    return new Losses(
        insolubles.with(material, share.value()), fixedFilmKilograms, filmShare, strainingShare);
  }

  /**
   * Returns a copy with a film loss: what stays on pot and tools is the larger of a fixed mass and
   * a share of the pot's content.
   *
   * @param fixed the fixed mass, however small the batch
   * @param ofPot the share of all that was weighed in
   * @return the new losses
   * @throws ProblemException if the fixed mass is negative or not finite
   */
  public Losses withFilm(Quantity<Mass> fixed, MassFraction ofPot) {
    double kilograms = checkedFilm(fixed);
    return new Losses(insolubles, kilograms, ofPot.value(), strainingShare);
  }

  /**
   * Returns a copy with a film loss that is a share of the pot's content.
   *
   * @param ofPot the share of all that was weighed in
   * @return the new losses
   */
  public Losses withFilm(MassFraction ofPot) {
    return new Losses(insolubles, 0, ofPot.value(), strainingShare);
  }

  /**
   * Returns a copy with a loss in straining or pouring off.
   *
   * @param ofPot the share of all that was weighed in
   * @return the new losses
   */
  public Losses withStraining(MassFraction ofPot) {
    return new Losses(insolubles, fixedFilmKilograms, filmShare, ofPot.value());
  }

  /**
   * Returns the insolubles of an ingredient.
   *
   * @param material the ingredient
   * @return the share by mass that its lot leaves behind, else the material; empty if none was
   *     given
   */
  public Optional<MassFraction> insolubles(Material material) {
    return insolubles.find(material).map(MassFraction::of);
  }

  /** The share by mass of an ingredient that stays behind; zero if none was given. */
  double insolublesValue(Material material) {
    return insolubles.find(material).orElse(0.0);
  }

  /**
   * Returns what stays on pot and tools.
   *
   * @param potKilograms all that was weighed in, in kg
   * @return the film loss in kg
   */
  public double filmKilograms(double potKilograms) {
    return Math.max(fixedFilmKilograms, filmShare * mass(potKilograms));
  }

  /**
   * Returns what is lost in straining.
   *
   * @param potKilograms all that was weighed in, in kg
   * @return the straining loss in kg
   */
  public double strainingKilograms(double potKilograms) {
    return strainingShare * mass(potKilograms);
  }

  /** What is left to cast of a pot of so many kilograms. */
  Mixture net(Contents charge, double pot) {
    double net =
        pot * (1 - charge.insolublesShare(this)) - strainingKilograms(pot) - filmKilograms(pot);
    if (!(net > 0)) {
      throw new ProblemException(
          Problem.of(BatchProblem.NOTHING_LEFT, Bilingual.of(pot).plus(" kg"))
              .with("lost", Bilingual.of(pot - net).plus(" kg")));
    }
    return new Mixture(charge.strained(this).composition(), net);
  }

  /** What must be weighed in, in kg, so that so many kilograms are left. */
  double chargeKilograms(Contents charge, double netKilograms) {
    mass(netKilograms);
    double kept = 1 - charge.insolublesShare(this) - strainingShare;
    if (!(kept - filmShare > 1e-9)) {
      throw new ProblemException(
          Problem.of(BatchProblem.NOTHING_LEFT, Bilingual.of(netKilograms).plus(" kg"))
              .with("lost", Bilingual.of((1 - kept + filmShare) * 100).plus(" %")));
    }
    return Math.max((netKilograms + fixedFilmKilograms) / kept, netKilograms / (kept - filmShare));
  }

  /** Tells what was stated. */
  void explain(Explanation.Builder text, Symbol strained, Symbol leastFilm, Symbol ofPot) {
    text.stated(strained, strainingShare)
        .stated(leastFilm, fixedFilmKilograms)
        .stated(ofPot, filmShare);
  }

  /**
   * Returns these losses as they are written down.
   *
   * @return the draft, which reads back as equal losses
   */
  public LossesDraft toDraft() {
    return LossesDraft.of(this);
  }

  static double checkedFilm(Quantity<Mass> fixed) {
    return CHECK.between(fixed, 0, HEAVIEST_FILM, "film loss");
  }

  Map<Material, Double> insolubles() {
    return insolubles.toMap();
  }

  double fixedFilmKilograms() {
    return fixedFilmKilograms;
  }

  double filmShare() {
    return filmShare;
  }

  double strainingShare() {
    return strainingShare;
  }

  private static double mass(double kilograms) {
    return CHECK.between(kilograms, 0, HEAVIEST, "mass in kg");
  }

  @Override
  public String toString() {
    return "insolubles "
        + insolubles
        + ", film "
        + fixedFilmKilograms
        + " kg or "
        + filmShare * 100
        + " %, straining "
        + strainingShare * 100
        + " %";
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Losses that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(insolubles, fixedFilmKilograms, filmShare, strainingShare);
  }
}
