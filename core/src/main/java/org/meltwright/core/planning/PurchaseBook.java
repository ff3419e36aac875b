// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostKind;
import org.meltwright.core.cost.CostLine;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.units.Limit;

/** Turns a purchase into plain numbers, and the numbers of packages back into a plan. */
final class PurchaseBook {

  private static final int MICROGRAMS = 9;
  private static final int MILLIONTHS = 6;
  private static final long MOST_MILLIONTHS = 100_000_000_000_000L;
  private static final MathContext DOUBLE_DIGITS = new MathContext(15);

  private final List<Need> needs;
  private final List<PackageOffer> offers;
  private final List<SupplierTerms> terms;
  private final CurrencyUnit currency;
  private final List<SupplierDuty> duties;
  private final PackageModel model;

  /** A flat duty on what one supplier sells. */
  private record SupplierDuty(String supplier, FlatDuty duty) {

    boolean isOn(PackageOffer offer) {
      return supplier.equals(offer.supplier()) && duty.materials().contains(offer.material());
    }
  }

  PurchaseBook(
      List<Need> needs,
      List<PackageOffer> offers,
      List<SupplierTerms> terms,
      CurrencyUnit currency) {
    this.needs = needs;
    this.offers = offers;
    this.terms = terms;
    this.currency = currency;
    this.duties = terms.stream().flatMap(PurchaseBook::duties).filter(this::canBeDue).toList();
    this.model = buildModel();
  }

  private static Stream<SupplierDuty> duties(SupplierTerms of) {
    return of.flatDuties().stream().map(d -> new SupplierDuty(of.supplier(), d));
  }

  private boolean canBeDue(SupplierDuty duty) {
    return duty.duty().amount().isPositive() && offers.stream().anyMatch(duty::isOn);
  }

  PackageModel model() {
    return model;
  }

  private PackageModel buildModel() {
    int[] supplier = offers.stream().mapToInt(this::supplier).toArray();
    return new PackageModel(
        needs.stream().mapToLong(PurchaseBook::need).toArray(),
        needs.stream().map(this::packagesOf).toArray(int[][]::new),
        supplier,
        each(o -> micrograms(o).longValueExact()),
        each(o -> millionths(termsOf(o).borne(o))),
        each(o -> millionths(stated(o))),
        each(o -> millionths(freight(o))),
        terms.stream().mapToLong(t -> millionths(perOrder(t))).toArray(),
        terms.stream().mapToLong(t -> millionths(t.handling())).toArray(),
        terms.stream().mapToLong(this::freeFrom).toArray(),
        offers.stream().mapToInt(this::dutyOn).toArray(),
        duties.stream().mapToLong(d -> millionths(d.duty().amount())).toArray());
  }

  private int dutyOn(PackageOffer offer) {
    return IntStream.range(0, duties.size())
        .filter(d -> duties.get(d).isOn(offer))
        .findFirst()
        .orElse(PackageModel.NO_DUTY);
  }

  private long[] each(java.util.function.ToLongFunction<PackageOffer> value) {
    return offers.stream().mapToLong(value).toArray();
  }

  private int supplier(PackageOffer offer) {
    return IntStream.range(0, terms.size())
        .filter(s -> terms.get(s).supplier().equals(offer.supplier()))
        .findFirst()
        .orElseThrow();
  }

  private SupplierTerms termsOf(PackageOffer offer) {
    return terms.get(supplier(offer));
  }

  private int[] packagesOf(Need need) {
    return IntStream.range(0, offers.size())
        .filter(p -> offers.get(p).material().equals(need.material()))
        .toArray();
  }

  /** Rounded up to a whole microgram, less the slack with which limits are met. */
  private static long need(Need need) {
    return new BigDecimal(need.missingKilograms(), DOUBLE_DIGITS)
        .multiply(BigDecimal.valueOf(1 - Limit.RELATIVE_SLACK))
        .setScale(MICROGRAMS, RoundingMode.CEILING)
        .unscaledValue()
        .longValueExact();
  }

  private static BigDecimal micrograms(PackageOffer offer) {
    return kilograms(offer).movePointRight(MICROGRAMS).setScale(0, RoundingMode.HALF_UP);
  }

  private static BigDecimal kilograms(PackageOffer offer) {
    return new BigDecimal(offer.price().packageKilograms(), DOUBLE_DIGITS);
  }

  private static ExactMoney stated(PackageOffer offer) {
    return ExactMoney.of(offer.price().unitPrice().amount());
  }

  private ExactMoney freight(PackageOffer offer) {
    SupplierTerms of = termsOf(offer);
    return of.borneFreight(of.freight().perKilogram().times(kilograms(offer)));
  }

  private static ExactMoney perOrder(SupplierTerms of) {
    return of.borneFreight(of.freight().perOrder());
  }

  private long freeFrom(SupplierTerms of) {
    return of.freight().freeFrom().map(this::millionths).orElse(PackageModel.NEVER);
  }

  private long millionths(ExactMoney money) {
    ExactMoney same = ExactMoney.zero(currency).plus(money);
    BigInteger amount =
        same.toBigMoney(MILLIONTHS, RoundingMode.HALF_UP).getAmount().unscaledValue();
    if (amount.compareTo(BigInteger.valueOf(MOST_MILLIONTHS)) > 0) {
      throw PlanningProblem.exception(PlanningProblem.TOO_DEAR, money);
    }
    return amount.longValueExact();
  }

  /** Writes out the plan that a search came to. */
  PurchasePlan plan(PurchaseSearch.Outcome outcome) {
    int[] counts = outcome.plan();
    List<SupplierOrder> orders = new ArrayList<>();
    for (int s = 0; s < terms.size(); s++) {
      if (model.isUsed(counts, s)) {
        orders.add(order(s, counts));
      }
    }
    Money total =
        orders.stream().map(SupplierOrder::total).reduce(Money.zero(currency), Money::plus);
    Money bound = outcome.isProved() ? total : bound(outcome.bound(), total);
    return new PurchasePlan(orders, leftOver(counts), total, bound, outcome.isProved());
  }

  private Money bound(long millionths, Money total) {
    Money bound =
        Money.of(currency, BigDecimal.valueOf(millionths, MILLIONTHS), RoundingMode.FLOOR);
    return bound.isGreaterThan(total) ? total : bound;
  }

  private SupplierOrder order(int s, int[] counts) {
    List<Integer> bought = boughtFrom(s, counts);
    List<CostItem> items = new ArrayList<>();
    ExactMoney goods = ExactMoney.zero(currency);
    BigDecimal mass = BigDecimal.ZERO;
    for (int p : bought) {
      PackageOffer offer = offers.get(p);
      items.add(
          CostItem.of(
              CostKind.MATERIAL, offer.material(), terms.get(s).borne(offer).times(counts[p])));
      goods = goods.plus(stated(offer).times(counts[p]));
      mass = mass.add(kilograms(offer).multiply(BigDecimal.valueOf(counts[p])));
    }
    ExactMoney freight = terms.get(s).borneFreight(terms.get(s).freight().cost(goods, mass));
    List<CostLine> lines = CostRollUp.of(terms.get(s).supplier(), items).leaves();
    return new SupplierOrder(
        terms.get(s).supplier(),
        IntStream.range(0, bought.size())
            .mapToObj(k -> line(bought.get(k), counts, lines.get(k).amount()))
            .toList(),
        freight.toMoney(),
        terms.get(s).handling().toMoney(),
        duty(terms.get(s).supplier(), counts));
  }

  /** The flat duties of an order, each rounded as it is charged. */
  private Money duty(String supplier, int[] counts) {
    return IntStream.range(0, duties.size())
        .filter(d -> duties.get(d).supplier().equals(supplier) && model.isDue(counts, d))
        .mapToObj(d -> duties.get(d).duty().amount().toMoney())
        .reduce(Money.zero(currency), Money::plus);
  }

  private List<Integer> boughtFrom(int s, int[] counts) {
    return IntStream.range(0, counts.length)
        .filter(p -> model.supplier()[p] == s && counts[p] > 0)
        .boxed()
        .toList();
  }

  private PurchaseLine line(int p, int[] counts, Money amount) {
    return new PurchaseLine(offers.get(p), counts[p], amount);
  }

  private List<LeftOver> leftOver(int[] counts) {
    return needs.stream().map(n -> leftOver(n, counts)).toList();
  }

  private LeftOver leftOver(Need need, int[] counts) {
    BigDecimal bought = BigDecimal.ZERO;
    ExactMoney cost = ExactMoney.zero(currency);
    for (int p : packagesOf(need)) {
      bought = bought.add(kilograms(offers.get(p)).multiply(BigDecimal.valueOf(counts[p])));
      cost = cost.plus(termsOf(offers.get(p)).borne(offers.get(p)).times(counts[p]));
    }
    BigDecimal wanted = new BigDecimal(need.missingKilograms(), DOUBLE_DIGITS);
    BigDecimal left = bought.subtract(wanted).max(BigDecimal.ZERO);
    Money worth = cost.times(left).dividedBy(bought).toMoney();
    return new LeftOver(need.material(), bought.doubleValue(), left.doubleValue(), worth);
  }
}
