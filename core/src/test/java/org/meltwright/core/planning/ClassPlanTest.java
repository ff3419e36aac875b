// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.core.cost.BreakEven;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

class ClassPlanTest {

  private static final Material WAX = Material.builder("wax").build();
  private static final Material RESIN = Material.builder("resin").build();
  private static final Material RED = Material.builder("red").build();
  private static final Composition MEDIUM = Composition.ofParts(List.of(RESIN, WAX), 1, 8);
  private static final Coverage COVERAGE =
      Coverage.of(QuantityKind.LENGTH.ofSi(150e-6), 8, gramsPerMillilitre(0.97)).withLoss(0.2);
  private static final ClassPlan TWELVE =
      ClassPlan.of(12, List.of(new Piece(6, 0.2 * 0.2)), COVERAGE).withLeftInTins(grams(60));

  @Test
  void twelvePeopleWithSixPanelsEach() {
    assertThat(TWELVE.squareMetres()).isCloseTo(2.88, Offset.offset(1e-12));
    assertThat(TWELVE.totalKilograms()).isCloseTo(4.9104, Offset.offset(1e-9));
    List<Need> needs = TWELVE.ingredients(MEDIUM);
    assertThat(kilograms(needs, "wax")).isCloseTo(4.3648, Offset.offset(1e-9));
    assertThat(kilograms(needs, "resin")).isCloseTo(0.5456, Offset.offset(1e-9));
    assertThat(TWELVE.explanation().text(Locale.ENGLISH)).contains("4.9104");
  }

  private static double kilograms(List<Need> needs, String material) {
    return needs.stream()
        .filter(n -> n.material().equals(material))
        .mapToDouble(Need::neededKilograms)
        .sum();
  }

  @Test
  void coloursTakeTheirShareOfAll() {
    Composition red = Composition.ofParts(List.of(RED, WAX), 1, 4);
    ClassPlan plan =
        TWELVE.withColours(List.of(new ColourShare("red", MassFraction.of(0.25), red)));
    assertThat(plan.kilograms(plan.colours().get(0)) + plan.plainKilograms())
        .isCloseTo(plan.totalKilograms(), Offset.offset(1e-12));
    List<Need> needs = plan.ingredients(MEDIUM);
    assertThat(kilograms(needs, "red")).isCloseTo(4.9104 / 20, Offset.offset(1e-9));
    assertThat(needs.stream().mapToDouble(Need::neededKilograms).sum())
        .isCloseTo(4.9104, Offset.offset(1e-9));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(
            () ->
                TWELVE.withColours(
                    List.of(
                        new ColourShare("all", MassFraction.ONE, red),
                        new ColourShare("more", MassFraction.of(0.01), red))));
  }

  @Test
  void spareComesOnTopOfEverything() {
    assertThat(TWELVE.withSpare(0.1).totalKilograms()).isCloseTo(4.9104 * 1.1, Offset.offset(1e-9));
  }

  @Test
  void theBagsAreThoseOfBruteForce() {
    List<PackageOffer> bags =
        Stream.of(
                offer("wax", "14.00 EUR/1 kg"),
                offer("wax", "62.00 EUR/5 kg"),
                offer("resin", "4.90 EUR/100 g"),
                offer("resin", "17.90 EUR/500 g"))
            .toList();
    List<SupplierTerms> terms = List.of(SupplierTerms.free("north", CurrencyUnit.EUR));
    List<Need> needs = TWELVE.ingredients(MEDIUM);
    PurchasePlan plan =
        PurchaseQuestion.of(needs, bags, terms, LocalDate.of(2026, 9, 1)).cheapest();
    assertThat(bags).extracting(plan::count).containsExactly(0, 1, 1, 1);
    BruteForce all =
        new BruteForce(new PurchaseBook(needs, bags, terms, CurrencyUnit.EUR).model(), false);
    assertThat(plan.total()).isEqualTo(Money.parse("EUR 84.80"));
    assertThat(all.cost()).isEqualTo(84_800_000L);
  }

  private static PackageOffer offer(String material, String price) {
    return PackageOffer.of("north", material, Price.parse(price));
  }

  @Test
  void budget_countsWhatIsBought() {
    ClassBudget budget =
        ClassBudget.of(
            12, Money.parse("EUR 240.00"), Money.parse("EUR 15.00"), Money.parse("EUR 300.00"));
    assertThat(budget.total()).hasToString("720 EUR");
    assertThat(budget.costPerStudent()).hasToString("60 EUR");
    assertThat(budget.costOfOneMore()).hasToString("35 EUR");
    assertThat(budget.fee(Rate.ofPercent("22"), Money.parse("EUR 5.00")))
        .isEqualTo(Money.parse("EUR 75.00"));
    BreakEven even = budget.breakEven(Money.parse("EUR 80.00"));
    assertThat(even.wholeUnits()).isEqualTo(7);
    assertThat(even.profit(7)).hasToString("15 EUR");
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> budget.breakEven(Money.parse("EUR 35.00")));
    assertThat(budget.explanation().text(Locale.ENGLISH)).contains("60 EUR");
  }

  @Test
  void coverage_goesForthAndBack() {
    Coverage panel =
        Coverage.of(QuantityKind.LENGTH.ofSi(300e-6), 10, gramsPerMillilitre(0.97)).withLoss(0.2);
    assertThat(QuantityKind.MASS.toSi(panel.mass(QuantityKind.AREA.ofSi(0.12))))
        .isCloseTo(0.4365, Offset.offset(1e-12));
    assertThat(panel.cakes(QuantityKind.AREA.ofSi(0.12), grams(55))).isEqualTo(8);
    assertThat(QuantityKind.AREA.toSi(panel.area(grams(436.5))))
        .isCloseTo(0.12, Offset.offset(1e-12));
    assertThat(QuantityKind.MASS.toSi(panel.massThatStays(QuantityKind.AREA.ofSi(0.12))))
        .isCloseTo(0.3492, Offset.offset(1e-12));
    Coverage onWood = panel.withAbsorbentGround(grams(1), QuantityKind.AREA.ofSi(0.01));
    assertThat(QuantityKind.MASS.toSi(onWood.mass(QuantityKind.AREA.ofSi(0.12))))
        .isCloseTo(0.4365 + 0.012 / 0.8, Offset.offset(1e-12));
    assertThat(panel.explanation(QuantityKind.AREA.ofSi(0.12)).text(Locale.ENGLISH))
        .contains("436.5 g");
  }
}
