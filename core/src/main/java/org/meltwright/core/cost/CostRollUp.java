// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Mass;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.units.ProblemException;

/**
 * What a batch costs: exact inside, rounded once at the total, with the cents pushed down the tree
 * so that the leaves add up to the root.
 *
 * <p>For example:
 *
 * <pre>{@code
 * CostItem wax = CostItem.material("wax", grams(730), UnitPrice.parse("12.50 EUR/kg"));
 * CostItem resin = CostItem.material("resin", grams(91.25), UnitPrice.parse("31.90 EUR/kg"));
 * CostRollUp medium = CostRollUp.of("medium", List.of(wax, resin));
 * medium.exactTotal(); // 12.035875 EUR
 * medium.total(); // EUR 12.04
 * medium.leaves().get(1).amount(); // EUR 2.91
 * // 16 g stay in the pot and the strainer
 * medium.per(grams(805.25)).perKilogramRounded(); // EUR 14.95
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class CostRollUp {

  private final CostLine root;

  /**
   * Rolls up a cost, half a cent upwards.
   *
   * @param root the batch, with all that is in it
   * @return the roll-up
   */
  public static CostRollUp of(CostItem root) {
    return of(root, RoundingMode.HALF_UP);
  }

  /**
   * Rolls up a cost.
   *
   * @param root the batch, with all that is in it
   * @param mode how the total is rounded
   * @return the roll-up
   */
  public static CostRollUp of(CostItem root, RoundingMode mode) {
    return new CostRollUp(CostLine.of(root, root.cost().toMoney(mode)));
  }

  /**
   * Rolls up lines that are not one group yet, half a cent upwards.
   *
   * <p>What {@link BatchPrices} gives is one group already: take {@link #of(CostItem)} for it.
   *
   * @param label the name of the batch
   * @param items its items, at least one
   * @return the roll-up
   * @throws ProblemException if there is no item, or their currencies differ
   */
  public static CostRollUp of(String label, List<CostItem> items) {
    return of(CostItem.group(label, items));
  }

  private CostRollUp(CostLine root) {
    this.root = root;
  }

  /**
   * Returns the tree of lines.
   *
   * @return the root, whose amount is the total
   */
  public CostLine root() {
    return root;
  }

  /**
   * Returns the total.
   *
   * @return the cost to the smallest coin
   */
  public Money total() {
    return root.amount();
  }

  /**
   * Returns the total before rounding.
   *
   * @return the exact cost
   */
  public ExactMoney exactTotal() {
    return root.exact();
  }

  /**
   * Returns the lines that have none below them, from top to bottom.
   *
   * @return the leaves, whose amounts add up to the total
   */
  public List<CostLine> leaves() {
    return leaves(root).toList();
  }

  private static Stream<CostLine> leaves(CostLine line) {
    return line.isLeaf() ? Stream.of(line) : line.parts().stream().flatMap(CostRollUp::leaves);
  }

  /**
   * Returns what is spent on one kind of thing.
   *
   * @param kind the kind, not {@link CostKind#GROUP}
   * @return the sum of the leaves of that kind; zero if there is none
   */
  public Money total(CostKind kind) {
    Money sum = Money.zero(total().getCurrencyUnit());
    for (CostLine leaf : leaves()) {
      sum = leaf.kind() == kind ? sum.plus(leaf.amount()) : sum;
    }
    return sum;
  }

  /**
   * Returns the total per mass.
   *
   * @param basis the mass it is spread over; say whether before or after losses where you print it
   * @return the quotient, kept as total and mass
   * @throws ProblemException if the mass is not above zero, or the total is a credit
   */
  public UnitPrice per(Quantity<Mass> basis) {
    return UnitPrice.of(total(), basis);
  }

  /**
   * Returns the total per piece: a cake, a student, a panel.
   *
   * @param count how many pieces, above zero
   * @return the exact quotient
   * @throws ProblemException if the count is not above zero
   */
  public ExactMoney perPiece(long count) {
    CHECK.between((double) count, 1, 1e15, "number of pieces");
    return ExactMoney.of(total()).dividedBy(count);
  }

  /**
   * Returns the total per square decimetre.
   *
   * @param basis the area it is spread over, above zero
   * @return the exact quotient
   * @throws ProblemException if the area is not above zero
   */
  public ExactMoney perSquareDecimetre(Quantity<Area> basis) {
    double squareMetres = CHECK.between(basis, 1e-9, 1e12, "area");
    return ExactMoney.of(total()).dividedBy(Ratio.decimal(squareMetres).movePointRight(2));
  }

  /**
   * Explains the total.
   *
   * @return the lines with their exact costs and their cents
   */
  public Explanation explanation() {
    return CostWorking.of(this);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CostRollUp that && root.equals(that.root);
  }

  @Override
  public int hashCode() {
    return root.hashCode();
  }

  @Override
  public String toString() {
    return "cost of " + root;
  }
}
