// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.data;

import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.millimetres;

import jakarta.validation.constraints.NotBlank;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.BatchRecord;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.WeighedLine;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.batch.WeighingSheetData;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostKind;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.CostTreeData;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.MakeOrBuyData;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.CompositionData;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.planning.ClassPlan;
import org.meltwright.core.planning.ClassPlanData;
import org.meltwright.core.planning.ColourShare;
import org.meltwright.core.planning.Coverage;
import org.meltwright.core.planning.FlatDuty;
import org.meltwright.core.planning.Need;
import org.meltwright.core.planning.PackageOffer;
import org.meltwright.core.planning.Piece;
import org.meltwright.core.planning.PurchasePlanData;
import org.meltwright.core.planning.PurchaseQuestion;
import org.meltwright.core.planning.SupplierTerms;
import org.meltwright.examples.json.DraftReader;
import org.meltwright.safety.hazard.HazardLabel;
import org.meltwright.safety.hazard.HazardLabelData;
import org.meltwright.safety.hazard.HazardReview;
import org.meltwright.safety.hazard.HazardReviewData;
import org.meltwright.safety.hazard.LabelDetails;
import org.meltwright.safety.hazard.LabelSupplier;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingReviewData;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemData;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.constraint.QuantityText;
import org.meltwright.units.constraint.TextKind;

/** Results of an invented studio, as apps would show or store them. All prices are invented. */
final class Forms {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();
  private static final Material WAX = CATALOGUE.require("beeswax-yellow");
  private static final Material RESIN = CATALOGUE.require("damar");
  private static final Composition MEDIUM = Composition.ofParts(List.of(RESIN, WAX), 1, 8);
  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 11, 25));
  private static final LocalDate DAY = LocalDate.of(2026, 9, 1);

  /** What an app may ask for. */
  record Wanted(
      @NotBlank @Nullable String name,
      @QuantityText(kind = TextKind.MASS, positive = true) @Nullable String mass,
      @QuantityText(kind = TextKind.TEMPERATURE) @Nullable String target) {}

  private Forms() {}

  static List<Form> all() {
    return Stream.of(inBothLanguages(Locale.ENGLISH), inBothLanguages(Locale.GERMAN), plain())
        .flatMap(List::stream)
        .toList();
  }

  private static List<Form> inBothLanguages(Locale locale) {
    String language = "." + locale.getLanguage();
    return List.of(
        Form.of("heating-review-blocked" + language, HeatingReviewData.of(tooHot(), locale)),
        Form.of("heating-review-allowed" + language, HeatingReviewData.of(warm(), locale)),
        Form.of("hazard-review" + language, HazardReviewData.of(cadmiumCake(), locale)),
        Form.of("label-complete" + language, HazardLabelData.of(whiteLabel(), locale)),
        Form.of("label-incomplete" + language, HazardLabelData.of(bareLabel(), locale)),
        Form.of("weighing-sheet" + language, WeighingSheetData.of(sheet(), locale)),
        Form.of("problems" + language, problems(locale)));
  }

  private static List<Form> plain() {
    return List.of(
        Form.of("composition-solid", CompositionData.of(MEDIUM, DensityBasis.SOLID)),
        Form.of("composition-melt", CompositionData.of(MEDIUM, DensityBasis.MELT)),
        Form.of("cost-tree", CostTreeData.of(cost())),
        Form.of("make-or-buy", MakeOrBuyData.of(choice("60.00 EUR/kg", "17.50 EUR/250 g"))),
        Form.of("buy-and-not-make", MakeOrBuyData.of(choice("14.00 EUR/kg"))),
        Form.of("class-plan", ClassPlanData.of(classPlan())),
        Form.of("purchase-plan", purchasePlan()),
        Form.of("batch-record", batchRecord().toDraft()));
  }

  static HeatingReview tooHot() {
    HeatSource plate =
        HeatSource.of("plate by the window", HeatSource.Kind.HOT_PLATE)
            .withSetPoint(TemperaturePoint.ofCelsius(110));
    return HeatingRules.standard()
        .without("darkening", "a test melt that is thrown away")
        .review(
            HeatingPlan.builder(MEDIUM)
                .heat(plate)
                .liquidReading(TemperaturePoint.ofFahrenheit(207))
                .tool(HeatSource.of("torch", HeatSource.Kind.TORCH))
                .circumstance(Circumstance.WATER_NEAR)
                .build());
  }

  static HeatingReview warm() {
    HeatSource plate =
        HeatSource.of("plate by the window", HeatSource.Kind.HOT_PLATE)
            .withSetPoint(TemperaturePoint.ofCelsius(85))
            .withOvershoot(TemperatureDifference.ofKelvin(3));
    return HeatingRules.standard()
        .review(
            HeatingPlan.builder(MEDIUM)
                .heat(plate)
                .liquidReading(TemperaturePoint.ofCelsius(82.5))
                .build());
  }

  private static HazardReview cadmiumCake() {
    return cake("cadmium-red", 25);
  }

  private static HazardReview cake(String pigment, double percent) {
    return HazardReview.ofCake(
        Composition.ofParts(
            List.of(CATALOGUE.require("beeswax-bleached"), RESIN, CATALOGUE.require(pigment)),
            92 - percent,
            8,
            percent),
        RULES);
  }

  private static HazardLabel whiteLabel() {
    LabelDetails details =
        LabelDetails.builder()
            .productName("Zinc white cake", "Zinkweiß-Block")
            .nominalMass(grams(40))
            .batch("2026-11-A")
            .supplier(
                LabelSupplier.of("Atelier Fernhof", "Mill Lane 1, Oldtown", "+00 123")
                    .withElectronicAddress("fern.example"))
            .maximumTemperature(TemperaturePoint.ofCelsius(90))
            .disposal("a collection point for hazardous waste", "einer Schadstoffsammelstelle")
            .build();
    return HazardLabel.of(cake("zinc-white", 30), details);
  }

  private static HazardLabel bareLabel() {
    return HazardLabel.of(
        cake("colophony", 15), LabelDetails.builder().productName("Trial", "Probe").build());
  }

  static WeighingSheet sheet() {
    Recipe medium = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();
    Recipe recipe =
        Recipe.builder("zinc white")
            .part(medium, 85)
            .part(CATALOGUE.require("zinc-white"), 15)
            .build();
    Losses losses = Losses.NONE.withFilm(grams(15), MassFraction.ofPercent(2));
    Balance kitchen = Balance.of("kitchen balance", grams(5000), grams(1));
    Balance fine = Balance.of("fine balance", grams(200), grams(0.1));
    return WeighingSheet.of(Batch.ofNet(recipe, grams(480), losses), List.of(kitchen, fine));
  }

  private static List<ProblemData> problems(Locale locale) {
    String text = "{\"name\":\"\",\"mass\":\"8 fl oz US\",\"target\":\"90\",\"colour\":\"red\"}";
    try {
      var in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
      return ProblemData.allOf(DraftReader.validating(Wanted.class).read(in).problems(), locale);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static CostRollUp cost() {
    CostItem medium =
        CostItem.group(
            "medium",
            List.of(
                CostItem.material("beeswax", grams(730), UnitPrice.parse("12.50 EUR/kg")),
                CostItem.material("damar", grams(91.25), UnitPrice.parse("31.90 EUR/kg"))));
    return CostRollUp.of(
        "zinc white",
        List.of(
            medium.times(0.5),
            CostItem.material("zinc white", grams(72), UnitPrice.parse("10.00 EUR/300 g")),
            CostItem.energy("melting", QuantityKind.ENERGY.ofSi(0.72e6), Money.parse("EUR 0.34")),
            CostItem.labour("stirring", QuantityKind.TIME.ofSi(1200), Money.parse("EUR 20.00")),
            CostItem.equipment("hot plate", Money.parse("EUR 89.00"), 1, 200),
            CostItem.of(
                CostKind.OTHER,
                "scrap back on the shelf",
                ExactMoney.of(Money.parse("EUR -0.75")))));
  }

  private static MakeOrBuy choice(String... offers) {
    List<ReadyMade> readyMade =
        Stream.of(offers).map(o -> new ReadyMade("bars at " + o, UnitPrice.parse(o))).toList();
    return MakeOrBuy.of(cost(), kilograms(0.47), readyMade)
        .withFixedCostPerYear(Money.parse("EUR 80.00"));
  }

  static ClassPlan classPlan() {
    Coverage film = Coverage.of(millimetres(0.15), 8, gramsPerMillilitre(0.97)).withLoss(0.2);
    Composition white =
        Composition.ofParts(List.of(WAX, RESIN, CATALOGUE.require("zinc-white")), 77, 8, 15);
    return ClassPlan.of(12, List.of(new Piece(6, 0.04)), film)
        .withLeftInTins(grams(60))
        .withSpare(0.1)
        .withColours(List.of(new ColourShare("white", MassFraction.ofPercent(40), white)));
  }

  private static PurchasePlanData purchasePlan() {
    FreightTariff freight =
        FreightTariff.perOrder(Money.parse("EUR 6.90")).withFreeFrom(Money.parse("EUR 90.00"));
    SupplierTerms abroad =
        SupplierTerms.of("abroad", FreightTariff.perOrder(Money.parse("EUR 4.50")))
            .withFlatDuties(List.of(FlatDuty.of(Money.parse("EUR 3.00"), "damar")));
    return PurchasePlanData.of(
        PurchaseQuestion.of(
                List.of(Need.of("beeswax", kilograms(4.4)), Need.of("damar", kilograms(0.55))),
                List.of(
                    offer("beeswax", "14.90 EUR/1 kg"),
                    offer("beeswax", "66.00 EUR/5 kg"),
                    offer("damar", "17.90 EUR/500 g"),
                    offer("damar", "4.90 EUR/100 g"),
                    PackageOffer.of("abroad", "damar", Price.parse("6.00 EUR/300 g"))),
                List.of(SupplierTerms.of("north", freight), abroad),
                DAY)
            .cheapest());
  }

  private static PackageOffer offer(String material, String price) {
    return PackageOffer.of("north", material, Price.parse(price));
  }

  private static BatchRecord batchRecord() {
    Instant start = Instant.parse("2026-03-14T09:30:00Z");
    Recipe medium = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();
    BatchRecord made =
        BatchRecord.of(
            "M-17",
            medium,
            start,
            List.of(
                WeighedLine.of(RESIN.withLot("resin lot 9"), grams(93), start.plusSeconds(660)),
                WeighedLine.of(WAX.withLot("wax lot 4"), grams(730), start)));
    Recipe colour =
        Recipe.builder("white").part(medium, 85).part(CATALOGUE.require("zinc-white"), 15).build();
    Instant later = start.plusSeconds(86400);
    return BatchRecord.of(
            "B-3",
            colour,
            later,
            List.of(
                WeighedLine.of(made, grams(340), later),
                WeighedLine.of(CATALOGUE.require("zinc-white"), grams(60.5), later)))
        .withCakes(List.of("B-3/1", "B-3/2"));
  }
}
