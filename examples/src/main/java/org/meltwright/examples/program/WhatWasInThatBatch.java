// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.grams;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.meltwright.core.batch.BatchLedger;
import org.meltwright.core.batch.BatchRecord;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.WeighedLine;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;

/** What was in that batch? From which lots is it, and which cakes hold a lot? */
public final class WhatWasInThatBatch {

  private WhatWasInThatBatch() {}

  /**
   * Prints how far a batch was from its recipe, the lots in a cake, and the cakes with a lot.
   *
   * @param args none
   */
  public static void main(String[] args) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    Material wax = catalogue.require("beeswax-yellow");
    Material resin = catalogue.require("damar");
    Material paint = catalogue.require("oil-paint-ultramarine");
    Instant monday = Instant.parse("2026-11-23T09:00:00Z");
    Instant tuesday = Instant.parse("2026-11-24T14:00:00Z");

    Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
    BatchRecord made =
        BatchRecord.of(
            "M-17",
            medium,
            monday,
            List.of(
                WeighedLine.of(wax.withLot("4"), grams(730), monday),
                WeighedLine.of(resin.withLot("9"), grams(93), monday)));
    Recipe blue = Recipe.builder("blue").part(medium, 9).part(paint, 1).build();
    BatchRecord colour =
        BatchRecord.of(
                "B-3",
                blue,
                tuesday,
                List.of(
                    WeighedLine.of(made, grams(250), tuesday),
                    WeighedLine.of(paint.withLot("tube 2"), grams(27.8), tuesday)))
            .withCakes(List.of("B-3/1", "B-3/2"));

    made.deviations()
        .forEach(
            d ->
                System.out.println(
                    String.format(
                        Locale.ROOT,
                        "M-17 %s: planned %.2f %%, weighed %.2f %%",
                        d.ingredient().name(),
                        d.plannedShare() * 100,
                        d.weighedShare() * 100)));
    BatchLedger ledger = BatchLedger.of(List.of(made, colour));
    ledger.lotsIn("B-3/1").forEach(lot -> System.out.println("in B-3/1: " + lot));
    System.out.println("with lot 9 of the resin: " + ledger.cakesWith(resin.withLot("9")));
  }
}
