// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.joda.money.BigMoneyProvider;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Spread;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * Own product against ready-made offers, on one basis: the mass of net product.
 *
 * <p>For example:
 *
 * <pre>{@code
 * CostItem batch =
 *     CostItem.of(CostKind.MATERIAL, "wax and resin", ExactMoney.of(Money.parse("EUR 20")));
 * ReadyMade offer = ReadyMade.of("ready-made cakes", Money.parse("EUR 30"), grams(500));
 * MakeOrBuy question =
 *     MakeOrBuy.of(CostRollUp.of(batch), kilograms(0.8), List.of(offer))
 *         .withFixedCostPerYear(Money.parse("EUR 70"));
 * question.own().perKilogram(); // 25 EUR
 * question.savingPerKilogram(); // 35 EUR
 * question.breakEvenKilogramsPerYear(); // 2.00 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class MakeOrBuy {

  private final CostRollUp batch;
  private final double netKilograms;
  private final List<ReadyMade> offers;
  private final ExactMoney fixedPerYear;

  /**
   * Compares a batch with offers.
   *
   * @param batch what the own batch costs
   * @param netProduct what comes out of it, after losses, above zero
   * @param offers the offers, at least one, in the currency of the batch
   * @return the comparison
   * @throws ProblemException if there is no offer, a currency differs or the mass is not above zero
   */
  public static MakeOrBuy of(CostRollUp batch, Quantity<Mass> netProduct, List<ReadyMade> offers) {
    double kilograms = CHECK.between(netProduct, 1e-9, 1e9, "mass of net product");
    if (offers.isEmpty()) {
      throw CostProblem.exception(CostProblem.NO_LINES, batch.root().label());
    }
    offers.forEach(
        o -> CostProblem.requireSame(batch.exactTotal().currency(), o.landed().currency()));
    return new MakeOrBuy(
        batch,
        kilograms,
        offers.stream().sorted(Comparator.comparing(ReadyMade::landed)).toList(),
        ExactMoney.zero(batch.exactTotal().currency()));
  }

  private MakeOrBuy(
      CostRollUp batch, double netKilograms, List<ReadyMade> offers, ExactMoney fixedPerYear) {
    this.batch = batch;
    this.netKilograms = netKilograms;
    this.offers = offers;
    this.fixedPerYear = fixedPerYear;
  }

  /**
   * Returns a copy with costs of making that do not depend on how much is made and are not in the
   * batch.
   *
   * @param amount the amount a year, zero or more
   * @return the new comparison
   * @throws ProblemException if the amount is below zero or in another currency
   */
  public MakeOrBuy withFixedCostPerYear(BigMoneyProvider amount) {
    ExactMoney fixed = ExactMoney.of(amount);
    CostProblem.requireSame(fixedPerYear.currency(), fixed.currency());
    if (fixed.isNegative()) {
      throw CostProblem.negative(fixed, "fixed cost");
    }
    return new MakeOrBuy(batch, netKilograms, offers, fixed);
  }

  /**
   * Returns the own cost, as it stands on the batch's sheet.
   *
   * @return the total of the batch per mass of net product
   */
  public UnitPrice own() {
    return batch.per(QuantityKind.MASS.ofSi(netKilograms));
  }

  /** {@return the offers, the cheapest per mass first} */
  public List<ReadyMade> offers() {
    return offers;
  }

  /**
   * Returns the offer to beat.
   *
   * @return the cheapest per mass of net product
   */
  public ReadyMade best() {
    return offers.get(0);
  }

  /**
   * Returns what making saves.
   *
   * @return the best offer less the own cost, per kilogram of net product; below zero if buying is
   *     cheaper
   */
  public ExactMoney savingPerKilogram() {
    return best().landed().perKilogram().minus(own().perKilogram());
  }

  /**
   * Tells whether a kilogram of one's own costs less, fixed costs aside.
   *
   * @return whether making saves anything
   */
  public boolean isMakingCheaper() {
    return savingPerKilogram().isPositive();
  }

  /**
   * Returns the own cost as a share of the best offer.
   *
   * @return the quotient, where 0.5 is half the price
   * @throws ArithmeticException if the best offer is free
   */
  public double ownShareOfReadyMade() {
    return own().dividedBy(best().landed());
  }

  /**
   * Returns how much must be made a year before making pays.
   *
   * @return the mass of net product in kg a year: fixed cost ÷ saving per kilogram; empty if making
   *     saves nothing
   */
  public OptionalDouble breakEvenKilogramsPerYear() {
    return isMakingCheaper()
        ? OptionalDouble.of(fixedPerYear.dividedBy(savingPerKilogram()))
        : OptionalDouble.empty();
  }

  /**
   * Returns what making saves in a year.
   *
   * @param netProduct the net product used in a year
   * @return the saving of that mass less the fixed cost; below zero if buying is cheaper
   */
  public ExactMoney savingPerYear(Quantity<Mass> netProduct) {
    return savingPerKilogram()
        .times(Ratio.of(QuantityKind.MASS.toSi(netProduct)))
        .minus(fixedPerYear);
  }

  /**
   * Returns what an hour of one's own earns, against buying: what the batch saves, wages not
   * counted, per hour.
   *
   * @param activeTime the working time of the batch, above zero
   * @return the exact quotient, below zero if the materials alone cost more than the offer
   * @throws ProblemException if the time is not above zero
   */
  public ExactMoney worthOfAnHour(Quantity<Time> activeTime) {
    double seconds = CHECK.between(activeTime, 1e-5, 1e12, "working time");
    double hours = QuantityKind.TIME.fromSi(seconds, MetricUnits.HOUR);
    ExactMoney bought = best().landed().cost(netKilograms);
    ExactMoney wages = ExactMoney.of(batch.total(CostKind.LABOUR));
    ExactMoney withoutWages = ExactMoney.of(batch.total()).minus(wages);
    return bought.minus(withoutWages).dividedBy(Ratio.decimal(hours));
  }

  /**
   * Returns what the saving hangs on, if each price and cost may be off by as much.
   *
   * @param off how far each input may lie from what was stated, such as 10 %; up to 100 %
   * @return the drivers of {@link #savingPerKilogram}: the lines of the batch, those of one name
   *     taken together, and the price of the best offer
   * @throws ProblemException if the rate is below zero or above 100 %
   */
  public Drivers savingDrivers(Rate off) {
    CHECK.between(off.percent().doubleValue(), 0, 100, "rate in %");
    EstimateInput bought =
        input(best().label(), best().landed().perKilogram(), off, Direction.RAISES);
    List<EstimateInput> own = new ArrayList<>();
    inputsPerKilogram()
        .forEach((label, cost) -> own.add(input(label, cost, off, Direction.LOWERS)));
    return Drivers.of(
        Symbol.beside(MakeOrBuy.class, "saving per kilogram", bought.symbol().unit()),
        Stream.concat(own.stream(), Stream.of(bought)).toList(),
        values -> values.of(bought) - own.stream().mapToDouble(values::of).sum());
  }

  private static EstimateInput input(
      String label, ExactMoney perKilogram, Rate off, Direction direction) {
    String currency = perKilogram.currency().getCode();
    ExactMoney one = ExactMoney.of(Money.of(perKilogram.currency(), 1));
    ExactMoney change = off.of(perKilogram);
    return new EstimateInput(
        Symbol.beside(MakeOrBuy.class, label, currency + "/kg"),
        perKilogram.minus(change).dividedBy(one),
        perKilogram.dividedBy(one),
        perKilogram.plus(change).dividedBy(one),
        direction,
        Spread.EVEN);
  }

  /**
   * Returns at which factor of one input making and buying would cost the same.
   *
   * @param input the name of a line of the batch, or of the best offer
   * @return the factor; empty if no factor of zero or more does that
   * @throws NoSuchElementException if there is no such input
   */
  public OptionalDouble turnsAtFactor(String input) {
    if (input.equals(best().label())) {
      return factor(own().perKilogram(), best().landed().perKilogram());
    }
    ExactMoney cost = Optional.ofNullable(inputsPerKilogram().get(input)).orElseThrow();
    return factor(cost.plus(savingPerKilogram()), cost);
  }

  private Map<String, ExactMoney> inputsPerKilogram() {
    Map<String, ExactMoney> sums = new LinkedHashMap<>();
    Ratio perKilogram = Ratio.ONE.dividedBy(Ratio.of(netKilograms));
    for (CostLine leaf : batch.leaves()) {
      sums.merge(leaf.label(), leaf.exact().times(perKilogram), ExactMoney::plus);
    }
    return sums;
  }

  private static OptionalDouble factor(ExactMoney wanted, ExactMoney now) {
    return now.isZero() || wanted.isNegative()
        ? OptionalDouble.empty()
        : OptionalDouble.of(wanted.dividedBy(now));
  }

  /**
   * Explains the comparison.
   *
   * @return both costs on their one basis, and the break-even
   */
  public Explanation explanation() {
    Explanation.Builder text =
        CostWorking.builder(
                "working.make-or-buy", Map.of("name", Bilingual.of(batch.root().label())))
            .given(ExactMoney.of(batch.total()).figure(CostWorking.BATCH), batch.explanation())
            .stated(CostWorking.NET, netKilograms)
            .stated(best().landed().perKilogram().figure(CostWorking.READY_MADE))
            .stated(fixedPerYear.figure(CostWorking.FIXED))
            .step(CostWorking.OWN_COST, own().perKilogram().figure(CostWorking.OWN))
            .step(CostWorking.SAVES, savingPerKilogram().figure(CostWorking.SAVING))
            .conclusion("working.make-or-buy.best", Map.of("name", Bilingual.of(best().label())));
    breakEvenKilogramsPerYear()
        .ifPresentOrElse(
            kilograms -> text.step(CostWorking.EVEN, kilograms),
            () -> text.caution("working.make-or-buy.nothing"));
    return text.build();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MakeOrBuy that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(batch, netKilograms, offers, fixedPerYear);
  }

  @Override
  public String toString() {
    return "make " + netKilograms + " kg or buy one of " + offers;
  }
}
