// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;
import static org.meltwright.units.MetricUnits.kilowattHours;
import static org.meltwright.units.MetricUnits.minutes;

import java.math.BigDecimal;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.joda.money.BigMoneyProvider;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * One thing that a batch costs, before anything is rounded: a line, or a group of items such as a
 * recipe within a recipe.
 *
 * <p>Amounts below zero are credits: scraps that go back into stock, say.
 *
 * <p>For example:
 *
 * <pre>{@code
 * CostItem wax = CostItem.material("wax", grams(730), UnitPrice.parse("12.50 EUR/kg"));
 * CostItem heat = CostItem.energy("hot plate", kilowattHours(0.2), Money.parse("EUR 0.30"));
 * CostItem plate = CostItem.equipment("hot plate", Money.parse("EUR 90"), 1, 200);
 * wax.cost(); // 9.125 EUR
 * plate.cost(); // 0.45 EUR
 * CostItem.group("medium", List.of(wax, heat, plate)).cost(); // 9.635 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class CostItem {

  private final CostKind kind;
  private final String label;
  private final double massKilograms;
  private final ExactMoney cost;
  private final List<CostItem> parts;

  /**
   * Returns what a mass of a material costs.
   *
   * @param label what it is
   * @param mass how much goes into the pot, losses included
   * @param price what it costs per mass
   * @return the item
   * @throws ProblemException if the mass is below zero
   */
  public static CostItem material(String label, Quantity<Mass> mass, UnitPrice price) {
    return ofKilograms(label, CHECK.between(mass, 0, 1e9, "mass", label), price);
  }

  static CostItem ofKilograms(String label, double massKilograms, UnitPrice price) {
    return new CostItem(
        CostKind.MATERIAL, label, massKilograms, price.cost(massKilograms), List.of());
  }

  /**
   * Returns what energy from the mains costs.
   *
   * @param label what it is for
   * @param energy what the meter counts: the heat wanted divided by the share that reaches the pot
   * @param perKilowattHour the price of a kilowatt hour
   * @return the item
   * @throws ProblemException if the energy is below zero
   */
  public static CostItem energy(
      String label, Quantity<Energy> energy, BigMoneyProvider perKilowattHour) {
    double joules = CHECK.between(energy, 0, 1e15, "energy", label);
    return line(
        CostKind.ENERGY,
        label,
        joules,
        QuantityKind.ENERGY.toSi(kilowattHours(1)),
        perKilowattHour);
  }

  /**
   * Returns what working time costs.
   *
   * @param label what is done
   * @param activeTime the time at work, not the time that a pot stands by itself
   * @param perHour what an hour is worth
   * @return the item
   * @throws ProblemException if the time is below zero
   */
  public static CostItem labour(String label, Quantity<Time> activeTime, BigMoneyProvider perHour) {
    double seconds = CHECK.between(activeTime, 0, 1e15, "working time", label);
    return line(CostKind.LABOUR, label, seconds, QuantityKind.TIME.toSi(minutes(60)), perHour);
  }

  /**
   * Returns the share of a thing that lasts.
   *
   * @param label what it is
   * @param price what it cost
   * @param used how much of its life is used here, in batches, hours or years
   * @param life its whole life, in the same measure, above zero
   * @return the item: price × used ÷ life
   * @throws ProblemException if the use is below zero or the life is not above zero
   */
  public static CostItem equipment(String label, BigMoneyProvider price, double used, double life) {
    CHECK.between(life, 1e-9, 1e12, "life", label);
    return line(CostKind.EQUIPMENT, label, used, life, price);
  }

  private static CostItem line(
      CostKind kind, String label, double used, double whole, BigMoneyProvider priceOfWhole) {
    CHECK.between(used, 0, 1e15, "amount used", label);
    Ratio share = Ratio.of(used).dividedBy(Ratio.of(whole));
    return new CostItem(kind, label, 0, ExactMoney.of(priceOfWhole).times(share), List.of());
  }

  /**
   * Returns an amount that is known.
   *
   * @param kind what it is spent on, not {@link CostKind#GROUP}
   * @param label what it is
   * @param cost the amount
   * @return the item
   * @throws ProblemException if the kind is {@code GROUP}
   */
  public static CostItem of(CostKind kind, String label, BigMoneyProvider cost) {
    if (kind == CostKind.GROUP) {
      throw CostProblem.exception(CostProblem.GROUP_HAS_PARTS, label);
    }
    return new CostItem(kind, label, 0, ExactMoney.of(cost), List.of());
  }

  /**
   * Returns what a number of units cost, such as packages or hours.
   *
   * @param kind what it is spent on
   * @param label what it is
   * @param each what one unit costs
   * @param count how many
   * @return the item
   */
  public static CostItem counted(
      CostKind kind, String label, BigMoneyProvider each, BigDecimal count) {
    return of(kind, label, ExactMoney.of(each).times(count));
  }

  /**
   * Returns items added up under one name.
   *
   * @param label the name
   * @param parts the items, at least one
   * @return the group
   * @throws ProblemException if there is no item, or their currencies differ
   */
  public static CostItem group(String label, List<CostItem> parts) {
    if (parts.isEmpty()) {
      throw CostProblem.exception(CostProblem.NO_LINES, label);
    }
    ExactMoney sum = ExactMoney.zero(parts.get(0).cost.currency());
    double mass = 0;
    for (CostItem part : parts) {
      sum = sum.plus(part.cost);
      mass += part.massKilograms;
    }
    return new CostItem(CostKind.GROUP, label, mass, sum, parts);
  }

  private CostItem(
      CostKind kind, String label, double massKilograms, ExactMoney cost, List<CostItem> parts) {
    this.kind = kind;
    this.label = label;
    this.massKilograms = massKilograms;
    this.cost = cost;
    this.parts = List.copyOf(parts);
  }

  /**
   * Returns what it is spent on.
   *
   * @return the kind
   */
  public CostKind kind() {
    return kind;
  }

  /** {@return the label} */
  public String label() {
    return label;
  }

  /**
   * Returns how much material it holds.
   *
   * @return the mass in kg; zero for what has none
   */
  public double massKilograms() {
    return massKilograms;
  }

  /**
   * Returns the exact cost.
   *
   * @return the amount, not rounded
   */
  public ExactMoney cost() {
    return cost;
  }

  /**
   * Returns the items of a group.
   *
   * @return the items; empty for a line
   */
  public List<CostItem> parts() {
    return parts;
  }

  /**
   * Returns the same item for another amount of everything in it, as when a recipe gives more than
   * is taken from it.
   *
   * @param factor what masses and costs are multiplied with, zero or more
   * @return the scaled item
   * @throws ProblemException if the factor is below zero or not finite
   */
  public CostItem times(double factor) {
    CHECK.between(factor, 0, 1e12, "factor");
    return scaled(factor, Ratio.of(factor));
  }

  private CostItem scaled(double factor, Ratio exact) {
    List<CostItem> more = parts.stream().map(p -> p.scaled(factor, exact)).toList();
    return new CostItem(kind, label, massKilograms * factor, cost.times(exact), more);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CostItem that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(kind, label, massKilograms, cost, parts);
  }

  @Override
  public String toString() {
    return label + ": " + cost;
  }
}
