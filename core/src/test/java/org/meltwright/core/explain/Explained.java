// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import static org.meltwright.units.MetricUnits.grams;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.cost.BreakEven;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostKind;
import org.meltwright.core.cost.CostPart;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.Duty;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.ImportRegime;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.OrderLine;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.PurchaseOrder;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.SalesTerms;
import org.meltwright.core.cost.SellingPrice;
import org.meltwright.core.cost.UnitCost;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.cost.Vat;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.laws.SampleMaterials;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Correction;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.PigmentVolume;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.mixture.ShareTarget;
import org.meltwright.core.planning.ClassBudget;
import org.meltwright.core.planning.ClassPlan;
import org.meltwright.core.planning.Coverage;
import org.meltwright.core.planning.Need;
import org.meltwright.core.planning.PackageOffer;
import org.meltwright.core.planning.Piece;
import org.meltwright.core.planning.PurchaseQuestion;
import org.meltwright.core.planning.SupplierTerms;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Estimate;
import org.meltwright.units.MassFraction;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

/** A kind of result that explains itself, and how to draw one of random inputs. */
record Explained(String name, Function<Random, Explanation> drawn) {

  private static final LocalDate DAY = LocalDate.of(2026, 9, 1);
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
        new Explained("BreakEven", Explained::breakEven),
        new Explained("SellingPrice", Explained::sellingPrice),
        new Explained("CostRollUp", r -> cost(r).explanation()),
        new Explained("MakeOrBuy", Explained::makeOrBuy),
        new Explained("LandedCost", Explained::landed),
        new Explained("PurchasePlan", Explained::purchase),
        new Explained("Correction to a share", Explained::correction),
        new Explained("Correction to a share by volume", Explained::correctionByVolume),
        new Explained("Correction to several shares", Explained::corrections),
        new Explained("Correction by draining", Explained::draining),
        new Explained("PigmentVolume", Explained::pigmentVolume),
        new Explained("HeatDemand", ExplainedHeat::demand),
        new Explained("CakeSetting", ExplainedHeat::cake),
        new Explained("OpenTime", ExplainedHeat::openTime),
        new Explained("StirringInterval", ExplainedHeat::stirring),
        new Explained("WorkingWindow", ExplainedHeat::window),
        new Explained("MeltingReport", ExplainedHeat::melting),
        new Explained("Measurement", ExplainedHeat::measurement));
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

  private static Explanation sellingPrice(Random r) {
    UnitCost cost = UnitCost.of(euros(r, 0.1, 50)).withWork(hours(r), euros(r, 5, 50));
    SalesTerms terms =
        SalesTerms.taxed(Rate.ofPercent(r.nextBoolean() ? "0" : "19"))
            .withFee(Rate.ofPercent(BigDecimal.valueOf(r.nextInt(60))));
    SalesTerms stated = r.nextBoolean() ? terms : terms.withFixedFee(euros(r, 0.1, 2));
    return SellingPrice.of(cost.withOverheads(euros(r, 1, 1e4), 300), stated, euros(r, 0.1, 200))
        .explanation();
  }

  private static Quantity<Time> hours(Random r) {
    return QuantityKind.TIME.ofSi(r.nextInt(4) == 0 ? 0 : log(r, 1, 1e5));
  }

  private static CostRollUp cost(Random r) {
    List<CostItem> items = new ArrayList<>();
    int count = 1 + r.nextInt(5);
    for (int i = 0; i < count; i++) {
      items.add(
          switch (r.nextInt(3)) {
            case 0 ->
                CostItem.material("wax", mass(r, 1e-3, 10), UnitPrice.perKilogram(euros(r, 1, 99)));
            case 1 ->
                CostItem.labour(
                    "casting", QuantityKind.TIME.ofSi(log(r, 60, 9e3)), euros(r, 5, 50));
            default -> CostItem.of(CostKind.OTHER, "label", euros(r, 0.01, 2));
          });
    }
    List<RoundingMode> modes = List.of(RoundingMode.HALF_UP, RoundingMode.UP, RoundingMode.DOWN);
    return CostRollUp.of(CostItem.group("cakes", items), modes.get(r.nextInt(3)));
  }

  private static Explanation makeOrBuy(Random r) {
    CostRollUp batch = CostRollUp.of(CostItem.of(CostKind.OTHER, "all", euros(r, 1, 99)));
    return MakeOrBuy.of(
            r.nextBoolean() ? cost(r) : batch,
            mass(r, 0.05, 20),
            List.of(
                ReadyMade.of("one", euros(r, 1, 99), mass(r, 0.05, 5)),
                ReadyMade.of("two", euros(r, 1, 99), mass(r, 0.05, 5))))
        .withFixedCostPerYear(euros(r, 1, 500))
        .explanation();
  }

  private static Explanation landed(Random r) {
    Vat vat = r.nextBoolean() ? Vat.NONE : Vat.included(Rate.ofPercent("19"));
    List<OrderLine> lines = new ArrayList<>();
    int count = 1 + r.nextInt(4);
    for (int i = 0; i < count; i++) {
      Price price = Price.parse(euros(r, 1, 99).getAmount() + " EUR/500 g").withVat(vat);
      lines.add(OrderLine.of("wax", "any", price, 1 + r.nextInt(5)));
    }
    PurchaseOrder order =
        PurchaseOrder.of(lines, EURO, DAY)
            .withFreight(FreightTariff.perOrder(euros(r, 1, 20)), vat)
            .withHandling(euros(r, 1, 20), vat);
    return (r.nextBoolean() ? order : order.withImport(regime(), List.of(duty(r))))
        .landed()
        .explanation();
  }

  private static ImportRegime regime() {
    return ImportRegime.of(
        "border",
        Set.of(CostPart.GOODS),
        Set.of(CostPart.GOODS, CostPart.DUTY),
        Rate.ofPercent("15"),
        Source.USER);
  }

  private static Duty duty(Random r) {
    return Duty.percent("any", Rate.ofPercent(BigDecimal.valueOf(r.nextInt(30))));
  }

  private static Explanation purchase(Random r) {
    List<PackageOffer> offers = new ArrayList<>();
    for (String size : List.of("500 g", "1 kg", "5 kg")) {
      offers.add(
          PackageOffer.of(
              "north", "wax", Price.parse(euros(r, 2, 60).getAmount() + " EUR/" + size)));
    }
    return PurchaseQuestion.of(
            List.of(Need.of("wax", mass(r, 0.1, 9))),
            offers,
            List.of(SupplierTerms.free("north", EURO)),
            DAY)
        .cheapest()
        .explanation();
  }

  private static Explanation correction(Random r) {
    Mixture pot = Mixture.of(mix(r, SampleMaterials.WAX, SampleMaterials.RESIN), mass(r, 0.1, 9));
    ShareOf resin = ShareOf.material(SampleMaterials.RESIN);
    double present = resin.valueIn(pot.composition());
    boolean more = r.nextBoolean();
    double wanted =
        more ? present + (1 - present) * 0.9 * r.nextDouble() : present * r.nextDouble();
    Material added = more ? SampleMaterials.RESIN : SampleMaterials.WAX;
    MassFraction target = MassFraction.of(Math.max(wanted, 0.01 * present));
    return Correction.toShare(pot, resin, target, Composition.of(added)).explanation();
  }

  private static Explanation correctionByVolume(Random r) {
    Mixture pot = Mixture.of(mix(r, SampleMaterials.WAX, SampleMaterials.WHITE), mass(r, 0.1, 9));
    return Correction.toVolumeShare(
            pot,
            ShareOf.PIGMENT,
            VolumeFraction.of(0.98 + 0.015 * r.nextDouble()),
            DensityBasis.SOLID,
            Composition.of(SampleMaterials.WHITE))
        .explanation();
  }

  private static Explanation corrections(Random r) {
    Mixture pot = Mixture.of(Composition.of(SampleMaterials.WAX), mass(r, 0.1, 9));
    return Correction.toShares(
            pot,
            List.of(
                ShareTarget.ofPercent(ShareOf.material(SampleMaterials.RESIN), 5 + r.nextInt(10)),
                ShareTarget.ofPercent(ShareOf.material(SampleMaterials.OIL), 5 + r.nextInt(10))),
            List.of(Composition.of(SampleMaterials.RESIN), Composition.of(SampleMaterials.OIL)))
        .explanation();
  }

  private static Explanation draining(Random r) {
    Mixture pot = Mixture.of(mix(r, SampleMaterials.WHITE, SampleMaterials.OIL), mass(r, 0.1, 9));
    ShareOf oil = ShareOf.material(SampleMaterials.OIL);
    double wanted = oil.valueIn(pot.composition()) * r.nextDouble();
    return Correction.byDraining(pot, oil, MassFraction.of(wanted), SampleMaterials.OIL)
        .explanation();
  }

  private static Explanation pigmentVolume(Random r) {
    double absorption = 10 + r.nextInt(60);
    double density = log(r, 1200, 6000);
    Material red =
        Material.builder("red")
            .names("red", "Rot")
            .family(MaterialFamily.PIGMENT, MaterialRole.COLOURANT)
            .figure(
                PropertyKey.SOLID_DENSITY,
                SampleMaterials.withDensity("red", density).require(PropertyKey.SOLID_DENSITY))
            .figure(
                PropertyKey.OIL_ABSORPTION,
                Sourced.of(
                    new NumberRange(absorption, absorption, "g/100 g"),
                    Source.USER,
                    Knowledge.READ))
            .build();
    Material other = r.nextInt(3) == 0 ? SampleMaterials.WHITE_PAINT : SampleMaterials.OIL;
    return PigmentVolume.of(
            Composition.ofParts(
                List.of(red, SampleMaterials.WAX, other), log(r, 0.1, 9), log(r, 0.1, 9), 1),
            DensityBasis.SOLID)
        .explanation();
  }

  private static Composition mix(Random r, Material one, Material two) {
    return Composition.ofParts(List.of(one, two), log(r, 0.05, 9), log(r, 0.05, 9));
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
