// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.Price;
import org.meltwright.units.MetricUnits;

/** A made-up purchase: prices fall with the size of the package, suppliers differ by a fifth. */
record PurchaseInstance(List<Need> needs, List<PackageOffer> offers, List<SupplierTerms> terms) {

  private static final int[] SIZES_GRAMS = {100, 250, 500, 1000, 2500, 5000};
  private static final LocalDate DAY = LocalDate.of(2026, 9, 1);

  static PurchaseInstance of(long seed, int materials, int suppliers, int sizes, int mostGrams) {
    Random random = new Random(seed);
    List<Need> needs = new ArrayList<>();
    List<PackageOffer> offers = new ArrayList<>();
    for (int m = 0; m < materials; m++) {
      String material = "material " + m;
      needs.add(new Need(material, (1 + random.nextInt(mostGrams)) / 1000.0, 0));
      double perKilogram = 8 + random.nextInt(60);
      for (int s = 0; s < suppliers; s++) {
        double level = perKilogram * (0.9 + 0.2 * random.nextDouble());
        addSizes(offers, "supplier " + s, material, level, sizes, random);
      }
    }
    List<SupplierTerms> terms = new ArrayList<>();
    for (int s = 0; s < suppliers; s++) {
      terms.add(SupplierTerms.of("supplier " + s, tariff(random, materials, mostGrams)));
    }
    terms.replaceAll(t -> t.withFlatDuties(duties(random, materials)));
    return new PurchaseInstance(needs, offers, terms);
  }

  /** One kind of goods holds the even materials, one the odd; or no supplier is abroad. */
  private static List<FlatDuty> duties(Random random, int materials) {
    List<FlatDuty> duties = new ArrayList<>();
    for (int kind = 0; kind < Math.min(2, materials); kind++) {
      int first = kind;
      String[] goods =
          IntStream.range(0, materials)
              .filter(m -> m % 2 == first)
              .mapToObj(m -> "material " + m)
              .toArray(String[]::new);
      Money amount = Money.ofMinor(CurrencyUnit.EUR, 50L * random.nextInt(8));
      if (random.nextBoolean()) {
        duties.add(FlatDuty.of(amount, goods));
      }
    }
    return duties;
  }

  private static void addSizes(
      List<PackageOffer> offers,
      String supplier,
      String material,
      double perKilogram,
      int sizes,
      Random random) {
    for (int k = 0; k < sizes; k++) {
      int grams = SIZES_GRAMS[k];
      double discount = Math.pow(grams / 100.0, -0.08) * (0.97 + 0.06 * random.nextDouble());
      long cents = Math.max(1, Math.round(perKilogram * grams / 10 * discount));
      Money price = Money.ofMinor(CurrencyUnit.EUR, cents);
      offers.add(PackageOffer.of(supplier, material, Price.of(price, MetricUnits.grams(grams))));
    }
  }

  private static FreightTariff tariff(Random random, int materials, int mostGrams) {
    Money perOrder = Money.ofMinor(CurrencyUnit.EUR, 390 + 100L * random.nextInt(9));
    Money perKilogram = Money.ofMinor(CurrencyUnit.EUR, 10L * random.nextInt(8));
    long typical = (long) materials * mostGrams * 2;
    Money freeFrom = Money.ofMinor(CurrencyUnit.EUR, typical / 2 + random.nextInt((int) typical));
    FreightTariff paid = FreightTariff.perOrder(perOrder).withPerKilogram(perKilogram);
    return random.nextInt(3) == 0 ? paid : paid.withFreeFrom(freeFrom);
  }

  PurchaseQuestion question() {
    return PurchaseQuestion.of(needs, offers, terms, DAY);
  }

  PackageModel model() {
    return new PurchaseBook(needs, offers, terms, CurrencyUnit.EUR).model();
  }
}
