// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.Validity;
import org.meltwright.core.cost.Vat;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

class PurchaseQuestionTest {

  private static final LocalDate DAY = LocalDate.of(2026, 9, 1);
  private static final List<SupplierTerms> FREE =
      List.of(SupplierTerms.free("north", CurrencyUnit.EUR));

  private static Money eur(String amount) {
    return Money.parse("EUR " + amount);
  }

  private static List<PackageOffer> offers(String supplier, String material, String... prices) {
    return Stream.of(prices).map(p -> PackageOffer.of(supplier, material, Price.parse(p))).toList();
  }

  @Test
  void cheapest_combinesPackages() {
    List<PackageOffer> sizes =
        offers("north", "wax", "10 EUR/0.5 kg", "18 EUR/1 kg", "70 EUR/5 kg", "120 EUR/10 kg");
    PurchasePlan plan =
        PurchaseQuestion.of(List.of(Need.of("wax", kilograms(6.7))), sizes, FREE, DAY).cheapest();
    assertThat(sizes).extracting(plan::count).containsExactly(0, 2, 1, 0);
    assertThat(plan.total()).isEqualTo(eur("106.00"));
    assertThat(plan.isProvedOptimal()).isTrue();
    assertThat(plan.lowerBound()).isEqualTo(plan.total());
    assertThat(plan.gap()).isZero();
    assertThat(plan.leftOver().get(0).massKilograms()).isCloseTo(0.3, Offset.offset(1e-12));
    assertThat(plan.leftOver().get(0).worth()).isEqualTo(eur("4.54"));
    assertThat(plan.explanation().text(Locale.ENGLISH))
        .contains("total of the purchase = ", "    = 106 EUR");
  }

  @Test
  void ties_areBrokenTowardsLessLeftOver() {
    List<PackageOffer> sizes = offers("north", "wax", "10.00 EUR/1 kg", "10.00 EUR/700 g");
    PurchasePlan plan =
        PurchaseQuestion.of(List.of(Need.of("wax", grams(600))), sizes, FREE, DAY).cheapest();
    assertThat(sizes).extracting(plan::count).containsExactly(0, 1);
  }

  @Test
  void leastLeftOver_mayCostMore() {
    List<PackageOffer> sizes = offers("north", "wax", "3.00 EUR/100 g", "10.00 EUR/1 kg");
    PurchaseQuestion question =
        PurchaseQuestion.of(List.of(Need.of("wax", grams(600))), sizes, FREE, DAY);
    assertThat(sizes).extracting(question.cheapest()::count).containsExactly(0, 1);
    PurchasePlan least = question.leastLeftOver();
    assertThat(sizes).extracting(least::count).containsExactly(6, 0);
    assertThat(least.leftOverKilograms()).isZero();
    assertThat(least.total()).isEqualTo(eur("18.00"));
  }

  @Test
  void stock_isTakenFirst() {
    List<PackageOffer> sizes = offers("north", "wax", "10.00 EUR/1 kg");
    Need need = Need.of("wax", kilograms(2.4));
    PurchasePlan some =
        PurchaseQuestion.of(List.of(need.withStock(grams(400))), sizes, FREE, DAY).cheapest();
    assertThat(some.total()).isEqualTo(eur("20.00"));
    assertThat(some.leftOverKilograms()).isZero();
    PurchasePlan none =
        PurchaseQuestion.of(List.of(need.withStock(kilograms(3))), sizes, FREE, DAY).cheapest();
    assertThat(none.orders()).isEmpty();
    assertThat(none.total()).isEqualTo(eur("0.00"));
    assertThat(none.isProvedOptimal()).isTrue();
  }

  @Test
  void freeCarriage_isReachedWherePaysToBuyMore() {
    List<SupplierTerms> terms =
        List.of(
            SupplierTerms.of(
                "north", FreightTariff.perOrder(eur("6.00")).withFreeFrom(eur("50.00"))));
    List<PackageOffer> sizes = offers("north", "wax", "24.00 EUR/1 kg", "3.00 EUR/100 g");
    PurchasePlan plan =
        PurchaseQuestion.of(List.of(Need.of("wax", kilograms(2))), sizes, terms, DAY).cheapest();
    assertThat(sizes).extracting(plan::count).containsExactly(2, 1);
    assertThat(plan.total()).isEqualTo(eur("51.00"));
    assertThat(plan.orders().get(0).freight()).isEqualTo(eur("0.00"));
    assertThat(plan.isProvedOptimal()).isTrue();
  }

  @Test
  void carriage_decidesBetweenSuppliers() {
    List<SupplierTerms> terms =
        List.of(
            SupplierTerms.of("north", FreightTariff.perOrder(eur("5.00"))),
            SupplierTerms.of(
                "south", FreightTariff.perOrder(eur("9.00")).withPerKilogram(eur("1.00"))));
    List<PackageOffer> sizes =
        Stream.of(
                offers("north", "wax", "13.00 EUR/1 kg"),
                offers("north", "resin", "21.00 EUR/500 g"),
                offers("south", "wax", "11.00 EUR/1 kg"),
                offers("south", "resin", "15.00 EUR/500 g"))
            .flatMap(List::stream)
            .toList();
    List<Need> needs = List.of(Need.of("wax", kilograms(2)), Need.of("resin", grams(500)));
    PurchasePlan plan = PurchaseQuestion.of(needs, sizes, terms, DAY).cheapest();
    assertThat(plan.total()).isEqualTo(eur("48.50"));
    assertThat(plan.orders()).extracting(SupplierOrder::supplier).containsExactly("south");
  }

  @Test
  void taxAndImport_areInThePlan() {
    SupplierTerms abroad =
        SupplierTerms.of("north", FreightTariff.perOrder(eur("10.00")))
            .withImport(Rate.ofPercent("26.735"), Rate.ofPercent("26.735"))
            .withHandling(eur("5.00"));
    List<PackageOffer> sizes =
        List.of(
            PackageOffer.of(
                "north",
                "red",
                Price.parse("100.00 EUR/1 kg")
                    .withVat(Vat.added(Rate.ofPercent("19")).recoverable())));
    PurchasePlan plan =
        PurchaseQuestion.of(List.of(Need.of("red", grams(900))), sizes, List.of(abroad), DAY)
            .cheapest();
    assertThat(plan.total()).isEqualTo(eur("144.41"));
    assertThat(plan.orders().get(0).handling()).isEqualTo(eur("5.00"));
    PurchasePlan withTax =
        PurchaseQuestion.of(
                List.of(Need.of("red", grams(900))),
                sizes,
                List.of(
                    SupplierTerms.of("north", FreightTariff.perOrder(eur("10.00")))
                        .withFreightVat(Vat.added(Rate.ofPercent("19")))),
                DAY)
            .cheapest();
    assertThat(withTax.total()).isEqualTo(eur("111.90"));
  }

  private static List<PackageOffer> fromBoth() {
    return Stream.of(
            offers("abroad", "wax", "10.00 EUR/1 kg"),
            offers("abroad", "damar", "15.00 EUR/500 g"),
            offers("abroad", "rosin", "15.00 EUR/500 g"),
            offers("home", "wax", "12.00 EUR/1 kg"),
            offers("home", "damar", "17.00 EUR/500 g"),
            offers("home", "rosin", "17.00 EUR/500 g"))
        .flatMap(List::stream)
        .toList();
  }

  private static List<SupplierTerms> abroadWith(FlatDuty... duties) {
    return List.of(
        SupplierTerms.free("abroad", CurrencyUnit.EUR).withFlatDuties(List.of(duties)),
        SupplierTerms.free("home", CurrencyUnit.EUR));
  }

  /** Damar is 15 + 3 abroad and 17 at home; the wax bears no duty: 10 + 17, not 10 + 15 + 3. */
  @Test
  void aFlatDuty_movesItsKindOfGoodsToAnotherSupplier() {
    List<Need> needs = List.of(Need.of("wax", kilograms(1)), Need.of("damar", grams(500)));
    List<SupplierTerms> terms = abroadWith(FlatDuty.of(eur("3.00"), "damar", "rosin"));
    PurchasePlan plan = PurchaseQuestion.of(needs, fromBoth(), terms, DAY).cheapest();
    assertThat(plan.total()).isEqualTo(eur("27.00"));
    assertThat(plan.isProvedOptimal()).isTrue();
    assertThat(plan.orders().get(0).flatDuty()).isEqualTo(eur("0.00"));
  }

  /** Two resins are 4 cheaper abroad and pay the 3 of their kind once: 10 + 15 + 15 + 3. */
  @Test
  void aFlatDuty_isPaidOnceForAKindOfGoods() {
    List<Need> needs =
        List.of(
            Need.of("wax", kilograms(1)),
            Need.of("damar", grams(500)),
            Need.of("rosin", grams(500)));
    List<SupplierTerms> terms = abroadWith(FlatDuty.of(eur("3.00"), "damar", "rosin"));
    PurchasePlan plan = PurchaseQuestion.of(needs, fromBoth(), terms, DAY).cheapest();
    assertThat(plan.total()).isEqualTo(eur("43.00"));
    assertThat(plan.orders()).hasSize(1);
    assertThat(plan.orders().get(0).flatDuty()).isEqualTo(eur("3.00"));
    assertThat(plan.explanation().text(Locale.ENGLISH)).contains("flat duty (abroad): 3 EUR");
    List<SupplierTerms> apart =
        abroadWith(FlatDuty.of(eur("3.00"), "damar"), FlatDuty.of(eur("1.50"), "rosin"));
    assertThat(PurchaseQuestion.of(needs, fromBoth(), apart, DAY).cheapest().total())
        .as("10 + 17 + 15 + 1.50")
        .isEqualTo(eur("43.50"));
  }

  /** At equal mass the cheaper plan wins; a duty on what is not bought is not paid. */
  @Test
  void leastLeftOver_weighsFlatDutiesToo() {
    List<Need> needs = List.of(Need.of("damar", grams(500)));
    List<SupplierTerms> terms =
        abroadWith(FlatDuty.of(eur("3.00"), "damar"), FlatDuty.of(eur("9.00"), "wax"));
    PurchasePlan plan = PurchaseQuestion.of(needs, fromBoth(), terms, DAY).leastLeftOver();
    assertThat(plan.total()).isEqualTo(eur("17.00"));
  }

  @Test
  void termsThatCannotBe_areRefused() {
    SupplierTerms terms = SupplierTerms.free("abroad", CurrencyUnit.EUR);
    List<FlatDuty> twice =
        List.of(FlatDuty.of(eur("1.00"), "damar"), FlatDuty.of(eur("2.00"), "damar", "rosin"));
    List<FlatDuty> foreign = List.of(FlatDuty.of(Money.parse("USD 1.00"), "damar"));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> terms.withFlatDuties(twice))
        .satisfies(
            e -> assertThat(e.problems()).extracting(Problem::found).containsExactly("damar"));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> terms.withFlatDuties(foreign));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> FlatDuty.of(eur("-1.00"), "damar"));
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> FlatDuty.of(eur("1.00")));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> terms.withHandling(eur("-1.00")));
  }

  @Test
  void poundsBesideKilograms_areBoundedHonestly() {
    List<PackageOffer> sizes = offers("north", "wax", "5.00 EUR/1 lb", "12.00 EUR/1.1 kg");
    PurchasePlan plan =
        PurchaseQuestion.of(List.of(Need.of("wax", kilograms(20))), sizes, FREE, DAY).cheapest();
    double bought = plan.lines().stream().mapToDouble(PurchaseLine::massKilograms).sum();
    assertThat(bought).isGreaterThanOrEqualTo(20);
    assertThat(plan.lowerBound().isGreaterThan(plan.total())).isFalse();
    assertThat(plan.total()).isEqualTo(Money.ofMinor(CurrencyUnit.EUR, cheapestOfPounds()));
  }

  @Test
  void packagesFinerThanTheGrid_areBoundedByTheBestPricePerMass() {
    List<PackageOffer> sizes = offers("north", "red", "1.00 EUR/0.1 g", "1.90 EUR/0.17 g");
    PurchasePlan plan =
        PurchaseQuestion.of(List.of(Need.of("red", kilograms(100))), sizes, FREE, DAY).cheapest();
    assertThat(plan.total()).isEqualTo(eur("1000000.00"));
    assertThat(plan.lowerBound().isLessThan(eur("999999.90"))).isFalse();
    assertThat(plan.gap()).isLessThan(1e-6);
  }

  private static long cheapestOfPounds() {
    long best = Long.MAX_VALUE;
    for (int pounds = 0; pounds <= 45; pounds++) {
      double left = Math.max(0, 20 - pounds * 0.45359237);
      best = Math.min(best, 500L * pounds + 1200L * (long) Math.ceil(left / 1.1));
    }
    return best;
  }

  @Test
  void anAnswerWithoutProof_saysSo() {
    PurchasePlan hasty =
        PurchaseInstance.of(7, 12, 3, 6, 9000).question().withTimeLimit(Duration.ZERO).cheapest();
    assertThat(hasty.isProvedOptimal()).isFalse();
    assertThat(hasty.gap()).isGreaterThan(0);
    assertThat(hasty.explanation().cautions()).hasSize(1);
  }

  @Test
  void whatIsMissing_isAllNamed() {
    PackageOffer expired =
        new PackageOffer(
            "east", "wax", Price.parse("1 EUR/kg"), Validity.until(LocalDate.of(2026, 8, 31)));
    List<PackageOffer> sizes =
        Stream.concat(offers("west", "resin", "9 EUR/kg").stream(), Stream.of(expired)).toList();
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(
            () ->
                PurchaseQuestion.of(
                    List.of(
                        Need.of("wax", kilograms(1)),
                        Need.of("resin", kilograms(1)),
                        Need.of("resin", kilograms(2))),
                    sizes,
                    FREE,
                    DAY))
        .satisfies(
            e ->
                assertThat(e.problems())
                    .extracting(Problem::code)
                    .containsExactly(
                        PlanningProblem.TWICE,
                        PlanningProblem.NO_OFFER,
                        PlanningProblem.TERMS_MISSING));
  }

  @Test
  void anotherCurrency_isRefused() {
    PurchaseQuestion question =
        PurchaseQuestion.of(
            List.of(Need.of("wax", kilograms(1))), offers("north", "wax", "9 USD/kg"), FREE, DAY);
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(question::cheapest)
        .withMessageContaining("USD");
  }

  @ParameterizedTest
  @EnumSource(PlanningProblem.class)
  void everyProblem_hasTextsInBothLanguages(PlanningProblem code) {
    for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      Problem problem = Problem.of(code, "x");
      assertThat(problem.what(locale)).isNotBlank();
      assertThat(problem.allowed(locale)).isNotBlank();
      assertThat(problem.remedy(locale)).isNotBlank();
    }
  }
}
