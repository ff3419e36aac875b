// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * The working of {@link PurchaseOrder#landed()}: each charge is rounded once for the whole order,
 * then its cents are shared out to the lines.
 */
final class LandedCostCalculation {

  private final PurchaseOrder order;
  private final List<OrderLine> lines;
  private final boolean isImport;

  /** The charges without tax, by line; the cents of each add up to the charge. */
  private final Map<CostPart, List<Money>> parts = new EnumMap<>(CostPart.class);

  private final List<ExactMoney> stated = new ArrayList<>();
  private final List<ExactMoney> net = new ArrayList<>();
  private final List<ExactMoney> gross = new ArrayList<>();
  private final List<Ratio> byValue;
  private final List<Ratio> byMass;

  LandedCostCalculation(PurchaseOrder order) {
    this.order = order;
    this.lines = order.lines();
    this.isImport = order.regime().isPresent();
    for (OrderLine line : lines) {
      ExactMoney price = ExactMoney.of(line.price().unitPrice().amount()).times(line.count());
      stated.add(order.inAccount(price));
      net.add(order.inAccount(line.price().net().times(line.count())));
      gross.add(order.inAccount(line.price().gross().times(line.count())));
    }
    this.byValue = net.stream().map(ExactMoney::amount).toList();
    this.byMass = lines.stream().map(OrderLine::mass).toList();
  }

  LandedCost run() {
    parts.put(CostPart.GOODS, LargestRemainder.round(net, sum(net).toMoney()));
    ExactMoney freight = freight();
    ExactMoney freightNet = isImport ? freight : order.freightVat().net(freight);
    share(CostPart.FREIGHT, freightNet.toMoney(), byMass);
    share(CostPart.INSURANCE, order.insurance().of(sum(net)).toMoney(), byValue);
    ExactMoney handlingNet = order.handlingVat().net(order.handling());
    share(CostPart.HANDLING, handlingNet.toMoney(), byValue);
    List<Money> duties = isImport ? duties() : none();
    parts.put(CostPart.DUTY, duties);
    return isImport ? abroad() : domestic(freight);
  }

  private ExactMoney freight() {
    Ratio mass = byMass.stream().reduce(Ratio.ZERO, Ratio::plus);
    return order.freight().cost(sum(stated), mass);
  }

  private void share(CostPart part, Money total, List<Ratio> weights) {
    parts.put(part, LargestRemainder.allocateBy(total, weights));
  }

  private List<Money> duties() {
    Map<String, List<Integer>> kinds = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      kinds.computeIfAbsent(lines.get(i).kindOfGoods(), k -> new ArrayList<>()).add(i);
    }
    List<Money> duties = new ArrayList<>(none());
    kinds.forEach((kind, members) -> dutyOfKind(kind, members, duties));
    return duties;
  }

  private void dutyOfKind(String kind, List<Integer> members, List<Money> duties) {
    List<ExactMoney> bases = members.stream().map(this::customsValue).toList();
    Duty duty = Duty.require(order.duties(), kind, order.date(), sum(net));
    List<Money> shares =
        LargestRemainder.allocateBy(
            duty.on(sum(bases)).toMoney(), bases.stream().map(ExactMoney::amount).toList());
    for (int k = 0; k < shares.size(); k++) {
      duties.set(members.get(k), shares.get(k));
    }
  }

  private ExactMoney customsValue(int line) {
    return base(line, regime().dutyBase());
  }

  private ExactMoney taxBase(int line) {
    ExactMoney base = base(line, regime().taxBase());
    return regime().taxBase().contains(CostPart.UPLIFT)
        ? base.plus(regime().uplift().of(customsValue(line)))
        : base;
  }

  private ImportRegime regime() {
    return order.regime().orElseThrow();
  }

  private ExactMoney base(int line, Iterable<CostPart> of) {
    ExactMoney base = ExactMoney.zero(order.currency());
    for (CostPart part : of) {
      List<Money> amounts = parts.get(part);
      base = amounts == null ? base : base.plus(ExactMoney.of(amounts.get(line)));
    }
    return base;
  }

  private LandedCost abroad() {
    List<ExactMoney> customs = each(this::customsValue);
    List<ExactMoney> bases = each(this::taxBase);
    Money tax = regime().taxRate().of(sum(bases)).toMoney();
    List<Money> importTax =
        LargestRemainder.allocateBy(tax, bases.stream().map(ExactMoney::amount).toList());
    List<Money> feeTax = taxOn(order.handlingVat(), order.handling(), CostPart.HANDLING, byValue);
    boolean feeBack = order.handlingVat().isRecoverable();
    List<LandedLine> landed = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Money back = back(importTax.get(i), regime().isTaxRecoverable());
      Money feeTaxBack = back(feeTax.get(i), feeBack);
      landed.add(line(i, importTax.get(i).plus(feeTax.get(i)), back.plus(feeTaxBack)));
    }
    return new LandedCost(order, landed, sum(customs), sum(bases));
  }

  private LandedCost domestic(ExactMoney freight) {
    List<Money> goodsTax = goodsTax();
    List<Money> freightTax = taxOn(order.freightVat(), freight, CostPart.FREIGHT, byMass);
    List<Money> feeTax = taxOn(order.handlingVat(), order.handling(), CostPart.HANDLING, byValue);
    List<LandedLine> landed = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Money tax = goodsTax.get(i).plus(freightTax.get(i)).plus(feeTax.get(i));
      Money back =
          back(goodsTax.get(i), lines.get(i).price().vat().isRecoverable())
              .plus(back(freightTax.get(i), order.freightVat().isRecoverable()))
              .plus(back(feeTax.get(i), order.handlingVat().isRecoverable()));
      landed.add(line(i, tax, back));
    }
    return new LandedCost(
        order, landed, ExactMoney.zero(order.currency()), ExactMoney.of(total(CostPart.GOODS)));
  }

  /** What is left between gross and net amounts, so that gross prices come out as stated. */
  private List<Money> goodsTax() {
    Money tax = sum(gross).toMoney().minus(total(CostPart.GOODS));
    List<ExactMoney> left = each(i -> gross.get(i).minus(ExactMoney.of(at(CostPart.GOODS, i))));
    if (left.stream().noneMatch(ExactMoney::isNegative)) {
      return LargestRemainder.round(left, tax);
    }
    List<ExactMoney> exact = each(i -> gross.get(i).minus(net.get(i)));
    return LargestRemainder.allocateBy(tax, exact.stream().map(ExactMoney::amount).toList());
  }

  private List<Money> taxOn(Vat vat, ExactMoney charge, CostPart part, List<Ratio> weights) {
    return LargestRemainder.allocateBy(vat.gross(charge).toMoney().minus(total(part)), weights);
  }

  private Money total(CostPart part) {
    return Money.total(parts.getOrDefault(part, none()));
  }

  private Money back(Money tax, boolean isRecoverable) {
    return isRecoverable ? tax : Money.zero(order.currency());
  }

  private LandedLine line(int i, Money tax, Money recovered) {
    return new LandedLine(
        lines.get(i),
        at(CostPart.GOODS, i),
        at(CostPart.FREIGHT, i),
        at(CostPart.INSURANCE, i),
        at(CostPart.DUTY, i),
        at(CostPart.HANDLING, i),
        tax,
        recovered);
  }

  private Money at(CostPart part, int i) {
    return parts.getOrDefault(part, none()).get(i);
  }

  private List<Money> none() {
    return lines.stream().map(l -> Money.zero(order.currency())).toList();
  }

  private List<ExactMoney> each(java.util.function.IntFunction<ExactMoney> of) {
    return IntStream.range(0, lines.size()).mapToObj(of).toList();
  }

  private ExactMoney sum(List<ExactMoney> amounts) {
    return amounts.stream().reduce(ExactMoney.zero(order.currency()), ExactMoney::plus);
  }
}
