// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.litres;
import static org.meltwright.units.MetricUnits.millilitres;
import static org.meltwright.units.MetricUnits.minutes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.LargestBatch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.batch.ShrinkRange;
import org.meltwright.core.batch.StatedAmount;
import org.meltwright.core.batch.Stock;
import org.meltwright.core.batch.StockItem;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.cost.BreakEven;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.Duty;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.ImportRegime;
import org.meltwright.core.cost.LandedCost;
import org.meltwright.core.cost.LargestRemainder;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.OrderLine;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.PurchaseOrder;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.SalesMix;
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
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Correction;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.PigmentVolume;
import org.meltwright.core.mixture.Scrap;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.mixture.ShareTarget;
import org.meltwright.core.mixture.VolumeView;
import org.meltwright.core.planning.ClassBudget;
import org.meltwright.core.planning.ClassPlan;
import org.meltwright.core.planning.Coverage;
import org.meltwright.core.planning.Need;
import org.meltwright.core.planning.PackageOffer;
import org.meltwright.core.planning.Piece;
import org.meltwright.core.planning.PurchaseQuestion;
import org.meltwright.core.planning.SupplierTerms;
import org.meltwright.core.planning.blend.BlendPart;
import org.meltwright.core.planning.blend.BlendQuestion;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.melting.IdealSolubility;
import org.meltwright.core.thermal.settling.Settling;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MaterialState;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.VolumeFraction;

/** What the names on the formula pages compute; masses in g and money in EUR unless said. */
final class WorkedNumbers {

  static final Map<String, ToDoubleFunction<double[]>> ALL = all();

  private static final Material A = SampleMaterials.withDensity("a", 1000);
  private static final Material B = SampleMaterials.withDensity("b", 1000);
  private static final LocalDate DAY = LocalDate.of(2026, 9, 1);

  private WorkedNumbers() {}

  private static Map<String, ToDoubleFunction<double[]>> all() {
    Map<String, ToDoubleFunction<double[]>> all = new LinkedHashMap<>();
    mixture(all);
    batch(all);
    cost(all);
    planning(all);
    thermal(all);
    all.putAll(WorkedExposures.ALL);
    return all;
  }

  private static void mixture(Map<String, ToDoubleFunction<double[]>> all) {
    all.put("massShare", x -> Composition.ofParts(List.of(A, B), x[0], x[1]).massFractionValue(0));
    all.put("volumeShare", x -> volumes(x).volumeFractionValue(0));
    all.put("density", x -> volumes(x).densityKilogramsPerCubicMetre());
    all.put("massShareOfVolumes", WorkedNumbers::massShareOfVolumes);
    all.put("criticalShare", x -> PigmentVolume.critical(x[0], x[1]).value());
    all.put("pigmentVolume", WorkedNumbers::pigmentVolume);
    all.put("toAdd", x -> correction(x).addedKilograms() * 1000);
    all.put("toAddByVolume", WorkedNumbers::toAddByVolume);
    all.put("toTakeOut", WorkedNumbers::toTakeOut);
    all.put("madeUp", WorkedNumbers::madeUp);
    all.put("blendShare", WorkedNumbers::blendShare);
    all.put("largestBatch", WorkedNumbers::largestBatch);
    all.put("scrapLow", x -> scraps(x).share().low().percent());
    all.put("scrapHigh", x -> scraps(x).share().high().percent());
  }

  private static VolumeView volumes(double... x) {
    Material first = SampleMaterials.withDensity("first", x[2]);
    Material second = SampleMaterials.withDensity("second", x[3]);
    return Composition.ofParts(List.of(first, second), x[0], x[1]).volumeView(DensityBasis.SOLID);
  }

  private static double massShareOfVolumes(double... x) {
    Material first = SampleMaterials.withDensity("first", x[2]);
    Material second = SampleMaterials.withDensity("second", x[3]);
    return Composition.ofVolumeParts(DensityBasis.SOLID, List.of(first, second), x[0], x[1])
        .massFractionValue(first);
  }

  private static double pigmentVolume(double... x) {
    Material pigment =
        Material.builder("pigment")
            .names("pigment", "Pigment")
            .family(MaterialFamily.PIGMENT, MaterialRole.COLOURANT)
            .figure(
                PropertyKey.SOLID_DENSITY,
                Sourced.of(
                    PropertyRange.of(
                        new QuantityRange<>(QuantityKind.DENSITY, x[2], x[2]), MaterialState.SOLID),
                    Source.USER,
                    Knowledge.READ))
            .build();
    Composition mix =
        Composition.ofParts(
            List.of(pigment, SampleMaterials.withDensity("binder", x[3])), x[0], x[1]);
    return PigmentVolume.of(mix, DensityBasis.SOLID).concentration().value();
  }

  /** Pot in g, share present, target and share in the addition in per cent. */
  private static Correction correction(double... x) {
    return Correction.toShare(
        new Mixture(percentOfA(x[1]), x[0] / 1000),
        ShareOf.material(A),
        MassFraction.ofPercent(x[2]),
        percentOfA(x[3]));
  }

  private static Composition percentOfA(double percent) {
    return Composition.ofParts(List.of(A, B), percent, 100 - percent);
  }

  /** Pot in g, densities of the two, share by volume of the first there and wanted in per cent. */
  private static double toAddByVolume(double... x) {
    Material first = SampleMaterials.withDensity("first", x[1]);
    Composition second = Composition.of(SampleMaterials.withDensity("second", x[2]));
    Composition pot = second.with(first, VolumeFraction.ofPercent(x[3]), DensityBasis.SOLID);
    return Correction.toVolumeShare(
                new Mixture(pot, x[0] / 1000),
                ShareOf.material(first),
                VolumeFraction.ofPercent(x[4]),
                DensityBasis.SOLID,
                second)
            .addedKilograms()
        * 1000;
  }

  private static double toTakeOut(double... x) {
    return Correction.byDraining(
                new Mixture(percentOfA(x[1]), x[0] / 1000),
                ShareOf.material(A),
                MassFraction.ofPercent(x[2]),
                A)
            .takenOutKilograms()
        * 1000;
  }

  /** The first in g and its density; litres of the whole, and the density of the second. */
  private static double madeUp(double... x) {
    Material first = SampleMaterials.withDensity("first", x[1]);
    Material second = SampleMaterials.withDensity("second", x[3]);
    Recipe recipe =
        Recipe.of(
            "made up",
            List.of(
                new RecipePart(Ingredient.of(first), StatedAmount.of(grams(x[0]))),
                new RecipePart(
                    Ingredient.of(second), StatedAmount.upTo(litres(x[2]), DensityBasis.SOLID))));
    double share = recipe.composition().massFractionValue(first);
    return x[0] * (1 - share) / share;
  }

  private static double blendShare(double... x) {
    List<BlendPart> parts =
        List.of(BlendPart.of("1", percentOfA(x[0])), BlendPart.of("2", percentOfA(x[1])));
    ShareTarget target = ShareTarget.ofPercent(ShareOf.material(A), x[2]);
    return BlendQuestion.of(parts, List.of()).closest(target).require().line("1").share();
  }

  private static double largestBatch(double... x) {
    Stock stock =
        Stock.of(
            List.of(
                new StockItem("first", Ingredient.of(A), x[2]),
                new StockItem("second", Ingredient.of(B), x[3])));
    return LargestBatch.of(oneTo(x[0], x[1]), stock).massKilograms();
  }

  private static Scrap scraps(double... x) {
    return Scrap.blend(List.of(scrap(x[0], x[1], x[2]), scrap(x[3], x[4], x[5])));
  }

  private static Scrap scrap(double grams, double low, double high) {
    return Scrap.of(
        grams(grams),
        new MassFractionRange(MassFraction.ofPercent(low), MassFraction.ofPercent(high)));
  }

  private static void batch(Map<String, ToDoubleFunction<double[]>> all) {
    all.put("pot", x -> usingUp(x).charge().massKilograms() * 1000);
    all.put("other", x -> (usingUp(x).charge().massKilograms() - x[0] / 1000) * 1000);
    all.put("net", x -> lossy(x).net().massKilograms() * 1000);
    all.put("potForNet", WorkedNumbers::potForNet);
    all.put("onBothBases", WorkedNumbers::onBothBases);
    all.put("cakeMass", x -> cakes(x).cakeKilograms() * 1000);
    all.put("wholeCakes", x -> cakes(x).wholeCakes());
    all.put("partCake", x -> cakes(x).partCakeKilograms() * 1000);
    all.put("shrinkage", WorkedNumbers::shrinkage);
    all.put("linearShrinkage", x -> ShrinkRange.linear(VolumeFraction.ofPercent(x[0])));
    all.put("fillLevel", WorkedNumbers::fillLevel);
  }

  /** All that is left of the second side in g, parts of the first and of the second. */
  private static Batch usingUp(double... x) {
    return Batch.usingUp(oneTo(x[1], x[2]), B, grams(x[0]), Losses.NONE);
  }

  private static Recipe oneTo(double first, double second) {
    return Recipe.builder("medium").part(A, first).part(B, second).build();
  }

  /** Pot in g, parts, insolubles of the first, straining and film in per cent, fixed film in g. */
  private static Batch lossy(double... x) {
    return Batch.ofTotal(oneTo(x[1], x[2]), grams(x[0]), losses(x));
  }

  /**
   * Share by volume and density of the first, share by mass and density of the second; the rest.
   */
  private static double onBothBases(double... x) {
    Material first = SampleMaterials.withDensity("first", x[1]);
    Material second = SampleMaterials.withDensity("second", x[3]);
    Material third = SampleMaterials.withDensity("third", x[4]);
    StatedAmount byVolume = StatedAmount.of(VolumeFraction.ofPercent(x[0]), DensityBasis.SOLID);
    StatedAmount byMass = StatedAmount.of(MassFraction.ofPercent(x[2]));
    List<RecipePart> lines =
        List.of(
            new RecipePart(Ingredient.of(first), byVolume),
            new RecipePart(Ingredient.of(second), byMass),
            new RecipePart(Ingredient.of(third), StatedAmount.rest()));
    return Recipe.of("mix", lines).composition().massFraction(first).percent();
  }

  private static double potForNet(double... x) {
    return Batch.ofNet(oneTo(x[1], x[2]), grams(x[0]), losses(x)).charge().massKilograms() * 1000;
  }

  private static Losses losses(double... x) {
    return Losses.NONE
        .withInsolubles(A, MassFraction.ofPercent(x[3]))
        .withStraining(MassFraction.ofPercent(x[4]))
        .withFilm(grams(x[6]), MassFraction.ofPercent(x[5]));
  }

  /** Net in g, cup in ml, fill level in per cent, hot density in g/ml. */
  private static Casting cakes(double... x) {
    Mould mould = Mould.of("tin", VesselMaterial.STEEL, 12, millilitres(x[1]));
    return Casting.of(grams(x[0]), mould, VolumeFraction.ofPercent(x[2]), gramsPerMillilitre(x[3]));
  }

  private static double shrinkage(double... x) {
    return ShrinkRange.of(density(x[0]), density(x[1])).central().percent();
  }

  private static Estimate<Density> density(double value) {
    return new Estimate<>(QuantityKind.DENSITY, value, value, value);
  }

  private static double fillLevel(double... x) {
    Vessel pot =
        Vessel.of(
            "pot",
            VesselMaterial.STEEL,
            Lining.NONE,
            Vessel.Bottom.FLAT,
            millilitres(x[0]),
            kilograms(0.5));
    Mixture melt = new Mixture(Composition.of(SampleMaterials.withDensity("melt", x[2])), x[1]);
    return VesselRoom.of(pot, melt, DensityBasis.MELT).fillLevel();
  }

  private static void cost(Map<String, ToDoubleFunction<double[]>> all) {
    all.put("batchCost", x -> rollUp(x).total().getAmount().doubleValue());
    all.put(
        "exactCost",
        x -> rollUp(x).exactTotal().toBigMoney(6, RoundingMode.HALF_UP).getAmount().doubleValue());
    all.put("firstOfThree", WorkedNumbers::firstOfThree);
    all.put("withoutTax", x -> value(Vat.included(rate(x[1])).net(exact(x[0]))));
    all.put("withTax", x -> value(Vat.added(rate(x[1])).gross(exact(x[0]))));
    all.put("customsValue", x -> value(landed(x).customsValue()));
    all.put("taxBase", x -> value(landed(x).taxBase()));
    all.put("landed", x -> landed(x).paid().getAmount().doubleValue());
    all.put("saving", x -> value(makeOrBuy(x).savingPerKilogram()));
    all.put("evenKilograms", x -> makeOrBuy(x).breakEvenKilogramsPerYear().orElseThrow());
    all.put("evenUnits", x -> BreakEven.of(eur(x[0]), eur(x[1]), eur(x[2])).units());
    all.put("evenSets", WorkedNumbers::evenSets);
    sales(all);
  }

  private static void sales(Map<String, ToDoubleFunction<double[]>> all) {
    all.put("leaves", x -> value(terms(x[1], x[2], x[3]).left(eur(x[0]))));
    all.put("profit", x -> value(sale(x).profit()));
    all.put("perHour", x -> value(sale(x).leftPerHour().orElseThrow()));
    all.put("priceLeaving", x -> cents(terms(x[1], x[2], x[3]).priceLeaving(eur(x[0]))));
    all.put(
        "markUpPrice",
        x ->
            cents(
                SellingPrice.forMarkUp(UnitCost.of(eur(x[0])), terms(x[2], x[3], x[4]), rate(x[1]))
                    .price()));
    all.put(
        "marginPrice",
        x ->
            cents(
                SellingPrice.forMargin(UnitCost.of(eur(x[0])), terms(x[2], x[3], x[4]), rate(x[1]))
                    .price()));
  }

  private static double cents(ExactMoney amount) {
    return amount.toMoney().getAmount().doubleValue();
  }

  /** Rates of tax and fee in per cent, and the fee for each sale. */
  private static SalesTerms terms(double tax, double fee, double perSale) {
    return SalesTerms.taxed(rate(tax)).withFee(rate(fee)).withFixedFee(eur(perSale));
  }

  /** Price, tax, fee, fee for each sale, what is spent, minutes and wage. */
  private static SellingPrice sale(double... x) {
    UnitCost cost = UnitCost.of(eur(x[4])).withWork(minutes(x[5]), eur(x[6]));
    return SellingPrice.of(cost, terms(x[1], x[2], x[3]), eur(x[0]));
  }

  /** Fixed cost, then pieces in a set, price and cost of each product. */
  private static double evenSets(double... x) {
    List<SalesMix.Product> products = new ArrayList<>();
    for (int i = 1; i < x.length; i += 3) {
      products.add(SalesMix.Product.of("" + i, (long) x[i], eur(x[i + 1]), eur(x[i + 2])));
    }
    return SalesMix.of(products).breakEven(eur(x[0])).units();
  }

  private static Money eur(double amount) {
    return Money.of(CurrencyUnit.EUR, BigDecimal.valueOf(amount));
  }

  private static ExactMoney exact(double amount) {
    return ExactMoney.of(BigMoney.of(CurrencyUnit.EUR, BigDecimal.valueOf(amount)));
  }

  private static Rate rate(double percent) {
    return Rate.ofPercent(BigDecimal.valueOf(percent));
  }

  private static double value(ExactMoney money) {
    return money.toMoney().getAmount().doubleValue();
  }

  /** Mass in kg and price in EUR/kg of two materials. */
  private static CostRollUp rollUp(double... x) {
    return CostRollUp.of(
        "batch",
        List.of(
            CostItem.material("first", kilograms(x[0]), UnitPrice.perKilogram(eur(x[1]))),
            CostItem.material("second", kilograms(x[2]), UnitPrice.perKilogram(eur(x[3])))));
  }

  private static double firstOfThree(double... x) {
    List<BigDecimal> weights = new ArrayList<>();
    for (int i = 1; i < x.length; i++) {
      weights.add(BigDecimal.valueOf(x[i]));
    }
    return LargestRemainder.allocate(eur(x[0]), weights).get(0).getAmount().doubleValue();
  }

  /** Goods, freight, duty in per cent, handling, import tax in per cent. */
  private static LandedCost landed(double... x) {
    OrderLine goods = OrderLine.of("goods", "kind", Price.of(eur(x[0]), kilograms(1)), 1);
    return PurchaseOrder.of(List.of(goods), CurrencyUnit.EUR, DAY)
        .withFreight(FreightTariff.perOrder(eur(x[1])), Vat.NONE)
        .withHandling(eur(x[3]), Vat.NONE)
        .withImport(
            ImportRegime.onDeliveredValue("import", rate(x[4]), Source.USER),
            List.of(Duty.percent("kind", rate(x[2]))))
        .landed();
  }

  /** Cost of the batch, net product in kg, ready-made per kg, fixed cost a year. */
  private static MakeOrBuy makeOrBuy(double... x) {
    CostRollUp batch =
        CostRollUp.of(
            "batch",
            List.of(CostItem.material("all", kilograms(1), UnitPrice.perKilogram(eur(x[0])))));
    return MakeOrBuy.of(
            batch, kilograms(x[1]), List.of(ReadyMade.of("bars", eur(x[2]), kilograms(1))))
        .withFixedCostPerYear(eur(x[3]));
  }

  private static void planning(Map<String, ToDoubleFunction<double[]>> all) {
    all.put("filmMass", WorkedNumbers::filmMass);
    all.put("classMass", x -> classPlan(x).totalKilograms());
    all.put("costEach", x -> value(budget(x).costPerStudent()));
    all.put("comingToBreakEven", x -> budget(x).breakEven(eur(x[4])).wholeUnits());
    all.put("cheapest", WorkedNumbers::cheapest);
  }

  /** Area in m², layers, film in mm, density in g/ml, share lost. */
  private static double filmMass(double... x) {
    return QuantityKind.MASS.toSi(
            coverage(x[1], x[2], x[3], x[4]).mass(QuantityKind.AREA.ofSi(x[0])))
        * 1000;
  }

  private static Coverage coverage(double layers, double film, double density, double lost) {
    return Coverage.of(
            QuantityKind.LENGTH.ofSi(film / 1000), (int) layers, gramsPerMillilitre(density))
        .withLoss(lost);
  }

  /** People, pieces, m² of one, layers, film in mm, density in g/ml, share lost, g in tins. */
  private static ClassPlan classPlan(double... x) {
    Piece piece = new Piece((int) x[1], x[2]);
    return ClassPlan.of((int) x[0], List.of(piece), coverage(x[3], x[4], x[5], x[6]))
        .withLeftInTins(grams(x[7]));
  }

  private static ClassBudget budget(double... x) {
    return ClassBudget.of((int) x[0], eur(x[1]), eur(x[2]), eur(x[3]));
  }

  /** Need in kg, then mass in kg and price of each package. */
  private static double cheapest(double... x) {
    List<PackageOffer> offers = new ArrayList<>();
    for (int i = 1; i < x.length; i += 2) {
      offers.add(PackageOffer.of("north", "wax", Price.of(eur(x[i + 1]), kilograms(x[i]))));
    }
    return PurchaseQuestion.of(
            List.of(new Need("wax", x[0], 0)),
            offers,
            List.of(SupplierTerms.free("north", CurrencyUnit.EUR)),
            DAY)
        .cheapest()
        .total()
        .getAmount()
        .doubleValue();
  }

  private static void thermal(Map<String, ToDoubleFunction<double[]>> all) {
    all.put("solubleShare", x -> IdealSolubility.moleFraction(x[0], x[1], x[2]));
    all.put("stokesVelocity", x -> Settling.stokesVelocity(x[0] * 1e-6, x[1], x[2]) * 1e6);
    all.put("stirWithin", x -> Settling.convectingSeconds(x[0], x[1] / 1000, x[2] * 1e-6));
    all.put(
        "crowding",
        x -> Settling.hindrance(VolumeFraction.ofPercent(x[0]), Settling.HINDRANCE_EXPONENT));
  }
}
