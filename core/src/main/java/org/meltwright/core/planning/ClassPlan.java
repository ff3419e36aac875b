// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.meltwright.core.planning.PlanningProblem.CHECK;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Limit;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * What a class needs: people × pieces × sizes × layers, what stays in their tins, and a spare.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Composition medium = Composition.ofParts(List.of(resin, wax), 1, 8);
 * Piece panels = Piece.of(6, squareCentimetres(400));
 * Coverage film = Coverage.of(millimetres(0.15), 8, gramsPerMillilitre(0.97)).withLoss(0.2);
 * ClassPlan plan = ClassPlan.of(12, List.of(panels), film).withLeftInTins(grams(60));
 * plan.totalKilograms(); // 4.910 kg
 * Need need = plan.ingredients(medium).get(1);
 * need.material(); // beeswax-yellow
 * need.neededKilograms(); // 4.365 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class ClassPlan {

  private final int people;
  private final List<Piece> pieces;
  private final Coverage coverage;
  private final double leftInTinsKilograms;
  private final double spare;
  private final List<ColourShare> colours;

  /**
   * Returns what a class needs with nothing left in tins and no spare.
   *
   * @param people how many there are, at least one
   * @param pieces what each of them makes
   * @param coverage film, layers and losses
   * @return the plan
   * @throws ProblemException if nobody comes
   */
  public static ClassPlan of(int people, List<Piece> pieces, Coverage coverage) {
    return new ClassPlan(checkedPeople(people), List.copyOf(pieces), coverage, 0, 0, List.of());
  }

  private ClassPlan(
      int people,
      List<Piece> pieces,
      Coverage coverage,
      double leftInTinsKilograms,
      double spare,
      List<ColourShare> colours) {
    this.people = people;
    this.pieces = pieces;
    this.coverage = coverage;
    this.leftInTinsKilograms = leftInTinsKilograms;
    this.spare = spare;
    this.colours = colours;
  }

  /**
   * Returns a copy with something left in the tins.
   *
   * @param perPerson what remains in the tins of one person
   * @return the new plan
   * @throws ProblemException if the mass is below zero
   */
  public ClassPlan withLeftInTins(Quantity<Mass> perPerson) {
    double kilograms = QuantityKind.MASS.toSi(checkedLeft(perPerson));
    return new ClassPlan(people, pieces, coverage, kilograms, spare, colours);
  }

  /**
   * Returns a copy with a spare on top of everything.
   *
   * @param share the share on top, where 0.1 is a tenth more, zero or more
   * @return the new plan
   * @throws ProblemException if the share is below zero
   */
  public ClassPlan withSpare(double share) {
    double more = checkedSpare(share);
    return new ClassPlan(people, pieces, coverage, leftInTinsKilograms, more, colours);
  }

  /**
   * Returns a copy of which parts are coloured.
   *
   * @param shares the colours with their shares of the mass; what they leave stays plain
   * @return the new plan
   * @throws ProblemException if the shares add up to more than the whole
   */
  public ClassPlan withColours(List<ColourShare> shares) {
    double sum = coloured(shares);
    if (Limit.exceeds(sum, 1)) {
      throw PlanningProblem.exception(PlanningProblem.SHARES, sum);
    }
    return new ClassPlan(people, pieces, coverage, leftInTinsKilograms, spare, List.copyOf(shares));
  }

  static int checkedPeople(int people) {
    return (int) CHECK.between(people, 1, 1e6, "number of people");
  }

  static Quantity<Mass> checkedLeft(Quantity<Mass> perPerson) {
    CHECK.between(perPerson, 0, 1e3, "mass left in tins");
    return perPerson;
  }

  static double checkedSpare(double share) {
    return CHECK.between(share, 0, 10, "spare share");
  }

  /**
   * Returns this plan as it is written down.
   *
   * @return the draft, which reads back as an equal plan if there are pieces
   * @throws ProblemException if two materials of one id and lot are in a colour
   */
  public ClassPlanDraft toDraft() {
    return ClassPlanDraft.of(this);
  }

  List<Piece> pieces() {
    return pieces;
  }

  Coverage coverage() {
    return coverage;
  }

  double leftInTinsKilograms() {
    return leftInTinsKilograms;
  }

  double spare() {
    return spare;
  }

  private static double coloured(List<ColourShare> shares) {
    return shares.stream().mapToDouble(s -> s.share().value()).sum();
  }

  /**
   * Returns how many come.
   *
   * @return the number of people
   */
  public int people() {
    return people;
  }

  /** {@return the colours with their shares; empty if all stays plain} */
  public List<ColourShare> colours() {
    return colours;
  }

  /**
   * Returns the area that is covered.
   *
   * @return the area of all pieces of all people, in m²
   */
  public double squareMetres() {
    return people * pieces.stream().mapToDouble(Piece::totalSquareMetres).sum();
  }

  /**
   * Returns how much is needed in all, plain and coloured.
   *
   * @return the mass
   */
  public Quantity<Mass> total() {
    return QuantityKind.MASS.ofSi(totalKilograms());
  }

  /**
   * Returns how much is needed in all, plain and coloured.
   *
   * @return (mass for the area + what is left in tins) × (1 + spare), in kg
   */
  public double totalKilograms() {
    double used = coverage.kilograms(squareMetres());
    return (used + people * leftInTinsKilograms) * (1 + spare);
  }

  /**
   * Returns how much of a colour is needed.
   *
   * @param colour one of {@link #colours}
   * @return its mass in kg
   */
  public double kilograms(ColourShare colour) {
    return totalKilograms() * colour.share().value();
  }

  /**
   * Returns how much stays plain.
   *
   * @return the mass without colour, in kg
   */
  public double plainKilograms() {
    return totalKilograms() * Math.max(0, 1 - coloured(colours));
  }

  /**
   * Returns the ingredients of all that is needed: plain and each colour by its composition.
   *
   * @param plain what the plain part is made of
   * @return the needs, one for each material, named by its id
   */
  public List<Need> ingredients(Composition plain) {
    Map<String, Double> sums = new LinkedHashMap<>();
    add(sums, plain, plainKilograms());
    colours.forEach(c -> add(sums, c.composition(), kilograms(c)));
    return sums.entrySet().stream().map(e -> new Need(e.getKey(), e.getValue(), 0)).toList();
  }

  private static void add(Map<String, Double> sums, Composition composition, double kilograms) {
    for (int i = 0; i < composition.size(); i++) {
      double part = kilograms * composition.massFractionValue(i);
      sums.merge(composition.materials().get(i).id(), part, Double::sum);
    }
  }

  /**
   * Explains the total.
   *
   * @return the inputs, the formula and the mass
   */
  public Explanation explanation() {
    double area = squareMetres();
    return PlanningWorking.builder("working.class")
        .stated(PlanningWorking.PEOPLE, people)
        .stated(PlanningWorking.LEFT, leftInTinsKilograms)
        .stated(PlanningWorking.SPARE, spare)
        .given(
            Figure.of(PlanningWorking.USED, coverage.kilograms(area)), coverage.explanation(area))
        .step(PlanningWorking.CLASS, totalKilograms())
        .build();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ClassPlan that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(people, pieces, coverage, leftInTinsKilograms, spare, colours);
  }

  @Override
  public String toString() {
    return "class of " + people + ", " + pieces;
  }
}
