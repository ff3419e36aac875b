// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.meltwright.core.cost.Duty;
import org.meltwright.core.cost.ImportRegime;
import org.meltwright.core.cost.OrderLine;
import org.meltwright.core.cost.PurchaseOrder;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.Vat;
import org.meltwright.core.source.Source;

class PurchaseProperties {

  /** So long that no test depends on how busy the machine is. */
  private static final Duration NO_LIMIT = Duration.ofDays(1);

  private static PurchaseSearch.Outcome search(PackageModel model, boolean isMassFirst) {
    long never = System.nanoTime() + NO_LIMIT.toNanos();
    return new PurchaseSearch(new Incumbent(model, isMassFirst, never)).run();
  }

  /** The more packages to choose from, the fewer of each that brute force can try. */
  private static int mostGrams(int packages) {
    return packages > 4 ? 200 : 700;
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void noPlanIsCheaperThanTheProvedOneNorAsCheapWithLessLeftOver(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 1, max = 2) int materials,
      @ForAll @IntRange(min = 1, max = 2) int suppliers,
      @ForAll @IntRange(min = 1, max = 2) int sizes) {
    PackageModel model =
        PurchaseInstance.of(
                seed, materials, suppliers, sizes, mostGrams(materials * suppliers * sizes))
            .model();
    PurchaseSearch.Outcome found = search(model, false);
    BruteForce all = new BruteForce(model, false);
    assertThat(found.isProved()).isTrue();
    assertThat(found.cost()).as("seed %s", seed).isEqualTo(all.cost());
    assertThat(model.massOf(found.plan())).as("seed %s", seed).isEqualTo(all.mass());
    assertThat(model.costOf(found.plan())).isEqualTo(found.cost());
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void noPlanLeavesLessThanTheOneOfLeastLeftOverNorAsLittleForLess(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 1, max = 2) int materials,
      @ForAll @IntRange(min = 1, max = 2) int suppliers,
      @ForAll @IntRange(min = 1, max = 2) int sizes) {
    PackageModel model =
        PurchaseInstance.of(
                seed, materials, suppliers, sizes, mostGrams(materials * suppliers * sizes))
            .model();
    PurchaseSearch.Outcome found = search(model, true);
    BruteForce all = new BruteForce(model, true);
    assertThat(found.isProved()).isTrue();
    assertThat(model.massOf(found.plan())).as("seed %s", seed).isEqualTo(all.mass());
    assertThat(found.cost()).as("seed %s", seed).isEqualTo(all.cost());
  }

  /**
   * Fixed purchases: how long the general solver takes varies by a hundred from one to another. It
   * may stop within its own tolerance, so its plan may be dearer, never cheaper.
   */
  @Property(tries = 12, shrinking = ShrinkingMode.OFF, generation = GenerationMode.EXHAUSTIVE)
  void aGeneralIntegerSolverFindsNothingCheaper(@ForAll @LongRange(min = 0, max = 11) long seed) {
    PackageModel model = PurchaseInstance.of(seed, 2, 2, 3, 2000).model();
    PurchaseSearch.Outcome found = search(model, false);
    assertThat(found.isProved()).isTrue();
    int[] general = GeneralSolver.solve(model);
    assertThat(general).as("answer of the general solver, seed %s", seed).isNotEmpty();
    assertThat(found.cost()).as("seed %s", seed).isLessThanOrEqualTo(model.costOf(general));
    assertThat(model.costOf(found.plan())).as("seed %s", seed).isEqualTo(found.cost());
  }

  @Property(tries = 60, shrinking = ShrinkingMode.OFF)
  void everyPlanMeetsItsNeedsAndItsMoneyAddsUp(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 1, max = 6) int materials,
      @ForAll @IntRange(min = 1, max = 3) int suppliers) {
    PurchaseInstance instance = PurchaseInstance.of(seed, materials, suppliers, 4, 5000);
    PurchaseQuestion question = instance.question().withTimeLimit(NO_LIMIT);
    PurchasePlan cheapest = question.cheapest();
    PurchasePlan least = question.leastLeftOver();
    for (PurchasePlan plan : new PurchasePlan[] {cheapest, least}) {
      for (Need need : instance.needs()) {
        double bought =
            plan.lines().stream()
                .filter(l -> l.offer().material().equals(need.material()))
                .mapToDouble(PurchaseLine::massKilograms)
                .sum();
        assertThat(bought).isGreaterThanOrEqualTo(need.missingKilograms() * (1 - 1e-8));
      }
      plan.orders().forEach(o -> assertThat(o.total()).isEqualTo(landed(o, instance)));
      assertThat(plan.total())
          .isEqualTo(Money.total(plan.orders().stream().map(SupplierOrder::total).toList()));
    }
    assertThat(least.leftOverKilograms()).isLessThanOrEqualTo(cheapest.leftOverKilograms() + 1e-9);
    assertThat(cheapest.total().minus(least.total()).getAmountMinorLong())
        .as("cheapest against least left over, up to the cents of rounding each order")
        .isLessThanOrEqualTo(2L * suppliers);
  }

  /** The same order as the landed cost counts it, each flat duty a kind of goods for customs. */
  private static Money landed(SupplierOrder order, PurchaseInstance instance) {
    SupplierTerms terms =
        instance.terms().stream()
            .filter(t -> t.supplier().equals(order.supplier()))
            .findFirst()
            .orElseThrow();
    List<OrderLine> lines =
        order.lines().stream()
            .map(l -> l.offer())
            .map(o -> OrderLine.of(o.material(), kind(o, terms), o.price(), count(order, o)))
            .toList();
    List<Duty> duties = new ArrayList<>();
    duties.add(Duty.percent("free", Rate.ZERO));
    terms.flatDuties().forEach(d -> duties.add(Duty.flat(d.toString(), d.amount().toMoney())));
    ImportRegime regime = ImportRegime.onDeliveredValue("without tax", Rate.ZERO, Source.USER);
    return PurchaseOrder.of(lines, CurrencyUnit.EUR, LocalDate.of(2026, 9, 1))
        .withFreight(terms.freight(), Vat.NONE)
        .withImport(regime, duties)
        .landed()
        .borne();
  }

  private static int count(SupplierOrder order, PackageOffer offer) {
    return order.lines().stream()
        .filter(l -> l.offer().equals(offer))
        .mapToInt(PurchaseLine::count)
        .sum();
  }

  private static String kind(PackageOffer offer, SupplierTerms terms) {
    return terms.flatDuties().stream()
        .filter(d -> d.materials().contains(offer.material()))
        .map(FlatDuty::toString)
        .findFirst()
        .orElse("free");
  }

  @Property(tries = 30, shrinking = ShrinkingMode.OFF)
  void withoutTimeAPlanIsFoundAllTheSameAndItsBoundHolds(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    PurchaseQuestion question = PurchaseInstance.of(seed, 6, 3, 6, 8000).question();
    PurchasePlan hasty = question.withTimeLimit(Duration.ZERO).cheapest();
    PurchasePlan proved = question.withTimeLimit(NO_LIMIT).cheapest();
    assertThat(hasty.total().isLessThan(proved.total().minusMinor(3))).isFalse();
    assertThat(hasty.lowerBound().isGreaterThan(proved.total().plusMinor(3))).isFalse();
    assertThat(hasty.gap()).isBetween(0.0, 1.0);
  }
}
