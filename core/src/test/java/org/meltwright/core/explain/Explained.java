// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import static org.meltwright.units.MetricUnits.grams;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.cost.BreakEven;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.laws.SampleMaterials;
import org.meltwright.core.material.Material;
import org.meltwright.core.planning.ClassBudget;
import org.meltwright.core.planning.ClassPlan;
import org.meltwright.core.planning.Coverage;
import org.meltwright.core.planning.Piece;
import org.meltwright.units.Estimate;
import org.meltwright.units.MassFraction;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

/** A kind of result that explains itself, and how to draw one of random inputs. */
record Explained(String name, Function<Random, Explanation> drawn) {

  private static final CurrencyUnit EURO = CurrencyUnit.of("EUR");

  Explanation draw(Random random) {
    return drawn.apply(random);
  }

  static List<Explained> all() {
    return List.of(
        new Explained("Batch", Explained::batch),
        new Explained("Casting", Explained::casting),
        new Explained("VesselRoom", Explained::room),
        new Explained(
            "Coverage", r -> coverage(r).explanation(QuantityKind.AREA.ofSi(log(r, 1e-3, 1e3)))),
        new Explained("ClassPlan", Explained::classPlan),
        new Explained("ClassBudget", Explained::classBudget),
        new Explained("BreakEven", Explained::breakEven));
  }

  private static Explanation batch(Random r) {
    Material left = SampleMaterials.all().get(r.nextInt(SampleMaterials.all().size()));
    Losses losses =
        Losses.NONE
            .withInsolubles(left, MassFraction.of(r.nextDouble() * 0.2))
            .withStraining(MassFraction.of(r.nextDouble() * 0.1))
            .withFilm(
                grams(r.nextBoolean() ? 0 : log(r, 0.1, 30)),
                MassFraction.of(r.nextDouble() * 0.1));
    Losses stated = r.nextInt(4) == 0 ? Losses.NONE : losses;
    return Batch.ofTotal(recipe(r), mass(r, 0.2, 50), stated).explanation();
  }

  private static Recipe recipe(Random r) {
    Recipe.Builder recipe = Recipe.builder("medium");
    for (Material material : some(r)) {
      recipe.part(material, log(r, 0.01, 100));
    }
    return recipe.build();
  }

  private static List<Material> some(Random r) {
    List<Material> all = new ArrayList<>(SampleMaterials.all());
    Collections.shuffle(all, r);
    return all.subList(0, 1 + r.nextInt(all.size()));
  }

  private static Explanation casting(Random r) {
    double density = 700 + 600 * r.nextDouble();
    return Casting.of(
            mass(r, 1e-3, 100),
            Mould.of(
                "tray", VesselMaterial.SILICONE, 6, QuantityKind.VOLUME.ofSi(log(r, 1e-6, 1e-3))),
            VolumeFraction.of(0.05 + 0.95 * r.nextDouble()),
            QuantityKind.DENSITY.ofSi(density))
        .explanation();
  }

  private static Explanation room(Random r) {
    double low = log(r, 1e-6, 1e-1);
    return new VesselRoom(
            Vessel.of(
                "pot",
                VesselMaterial.STAINLESS_STEEL,
                Lining.NONE,
                Vessel.Bottom.FLAT,
                QuantityKind.VOLUME.ofSi(log(r, 1e-5, 1e-1)),
                grams(400)),
            new Estimate<>(QuantityKind.VOLUME, low, low * 1.1, low * (1.2 + r.nextDouble())))
        .explanation();
  }

  private static Coverage coverage(Random r) {
    Coverage layers =
        Coverage.of(
                QuantityKind.LENGTH.ofSi(log(r, 1e-6, 1e-2)),
                1 + r.nextInt(20),
                QuantityKind.DENSITY.ofSi(log(r, 500, 3000)))
            .withLoss(r.nextDouble() * 0.6)
            .withSolids(VolumeFraction.of(0.1 + 0.9 * r.nextDouble()));
    return r.nextBoolean()
        ? layers
        : layers.withAbsorbentGround(grams(log(r, 1, 100)), QuantityKind.AREA.ofSi(1));
  }

  private static Explanation classPlan(Random r) {
    return ClassPlan.of(
            1 + r.nextInt(30),
            List.of(Piece.of(1 + r.nextInt(5), QuantityKind.AREA.ofSi(log(r, 1e-3, 1)))),
            coverage(r))
        .withLeftInTins(grams(r.nextBoolean() ? 0 : log(r, 1, 100)))
        .withSpare(r.nextDouble())
        .explanation();
  }

  private static Explanation classBudget(Random r) {
    return ClassBudget.of(1 + r.nextInt(30), euros(r, 1, 1e4), euros(r, 0.1, 100), euros(r, 1, 1e3))
        .explanation();
  }

  private static Explanation breakEven(Random r) {
    BigMoney cost = euros(r, 0.1, 50);
    return BreakEven.of(euros(r, 1, 1e5), cost.plus(euros(r, 0.1, 50)), cost).explanation();
  }

  static double log(Random r, double low, double high) {
    return low * Math.pow(high / low, r.nextDouble());
  }

  private static Quantity<Mass> mass(Random r, double low, double high) {
    return QuantityKind.MASS.ofSi(log(r, low, high));
  }

  static BigMoney euros(Random r, double low, double high) {
    return BigMoney.of(EURO, BigDecimal.valueOf(log(r, low, high)).setScale(2, RoundingMode.UP));
  }

  @Override
  public String toString() {
    return name;
  }
}
