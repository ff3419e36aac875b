// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.grams;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.meltwright.core.cost.Price;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

/** Published examples, each named with its source in {@code published.txt}. */
class PublishedPlanningTest {

  @ParameterizedTest(name = "{0} {1}")
  @CsvFileSource(resources = "published.txt", delimiter = '|', maxCharsPerColumn = 2000)
  void published(
      String id,
      String calculation,
      String inputs,
      String expected,
      String tolerance,
      String source,
      String note) {
    double result = result(calculation, numbers(inputs), inputs);
    double wanted = Double.parseDouble(expected.substring(expected.indexOf('=') + 1));
    String[] within = tolerance.split(" ", -1);
    double absolute =
        Double.parseDouble(within[0]) * (within[1].equals("rel") ? Math.abs(wanted) : 1);
    assertThat(result)
        .as("%s (%s; %s)", id, source, note)
        .isCloseTo(wanted, Offset.offset(absolute));
  }

  private static Map<String, Double> numbers(String inputs) {
    return Arrays.stream(inputs.split("; "))
        .filter(e -> !e.startsWith("packs"))
        .collect(
            Collectors.toMap(
                e -> e.substring(0, e.indexOf('=')),
                e -> Double.valueOf(e.substring(e.indexOf('=') + 1))));
  }

  private static double result(String calculation, Map<String, Double> in, String inputs) {
    return switch (calculation) {
      case "mass" ->
          QuantityKind.MASS.toSi(coverage(in).mass(QuantityKind.AREA.ofSi(in.get("area"))));
      case "area-per-mass" ->
          QuantityKind.AREA.toSi(coverage(in).area(QuantityKind.MASS.ofSi(in.get("kilograms"))));
      case "area-per-volume" -> area(in) / in.get("unit");
      case "volume-for-area" -> {
        double perVolume = area(Map.of("film", in.get("film"), "volume", 1.0));
        yield in.get("area") / perVolume / in.get("unit");
      }
      case "wet-film" -> QuantityKind.LENGTH.toSi(coverage(in).wetFilm()) / in.get("unit");
      case "loss-share" -> {
        Map<String, Double> without = Map.of("film", in.get("film"));
        yield 100
            * coverage(without).kilogramsPerSquareMetre()
            / coverage(in).kilogramsPerSquareMetre();
      }
      case "frobenius" -> frobenius(inputs);
      default -> throw new IllegalArgumentException(calculation);
    };
  }

  private static double area(Map<String, Double> in) {
    return QuantityKind.AREA.toSi(
        coverage(in).areaOfVolume(QuantityKind.VOLUME.ofSi(in.get("volume"))));
  }

  private static Coverage coverage(Map<String, Double> in) {
    return Coverage.of(
            QuantityKind.LENGTH.ofSi(in.get("film")),
            in.getOrDefault("layers", 1.0).intValue(),
            QuantityKind.DENSITY.ofSi(in.getOrDefault("density", 1000.0)))
        .withLoss(in.getOrDefault("lost", 0.0))
        .withSolids(VolumeFraction.of(in.getOrDefault("solids", 1.0)));
  }

  private static double frobenius(String inputs) {
    List<PackageOffer> packs =
        Stream.of(inputs.substring(inputs.indexOf('=') + 1).split(" "))
            .map(
                g ->
                    PackageOffer.of(
                        "north",
                        "packs",
                        Price.of(Money.of(CurrencyUnit.EUR, 1), grams(Double.parseDouble(g)))))
            .toList();
    return IntStream.rangeClosed(1, 70).filter(g -> leftOver(packs, g) > 1e-9).max().orElseThrow();
  }

  private static double leftOver(List<PackageOffer> packs, int needed) {
    return PurchaseQuestion.of(
            List.of(Need.of("packs", grams(needed))),
            packs,
            List.of(SupplierTerms.free("north", CurrencyUnit.EUR)),
            LocalDate.of(2026, 9, 1))
        .leastLeftOver()
        .leftOverKilograms();
  }
}
