// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.KILOGRAM;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.litres;

import jakarta.validation.Validation;
import jakarta.validation.Validator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.hibernate.validator.HibernateValidator;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.BatchLine;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.RecipeDraft;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.batch.WeighingSheetData;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.laws.MixtureLaws;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.safety.heating.RuleInfo;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.Severity;
import org.meltwright.units.DecimalSign;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;
import org.meltwright.units.constraint.QuantityText;
import org.meltwright.units.constraint.TextKind;
import tools.jackson.databind.json.JsonMapper;

/**
 * The twelve use-cases that an engineer built from README, guides and API docs alone, as this
 * library answers them today.
 */
class UseCasesTest {

  private static final MaterialCatalogue SHELF = MaterialCatalogue.standard();
  private static final Material RESIN = SHELF.require("damar");
  private static final Material WAX = SHELF.require("beeswax-yellow");
  private static final Recipe MEDIUM = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();
  private static final JsonMapper JSON = JsonMapper.builder().build();

  @Test
  void a_plain_number_of_kilograms() {
    Quantity<Mass> typed = QuantityParser.localeFree().parseMass("1 lb 8 oz");

    assertThat(QuantityKind.MASS.in(typed, KILOGRAM)).isEqualTo(0.680388555);
  }

  @Test
  void a_material_of_my_own() {
    MaterialCatalogue mine =
        SHELF.plus(
            """
            material: rice-bran-wax
              en: rice bran wax
              de: Reiskleiewachs
              family: wax
              melting-range: 77–82 °C, drop-point | user | read
            """);

    Material rice = mine.require("Reiskleiewachs");
    assertThat(rice.require(PropertyKey.MELTING_RANGE).value().range().high())
        .isEqualTo(TemperaturePoint.ofCelsius(82));
    assertThat(Composition.builder().part(rice, 1).part(WAX, 3).build().massFraction(rice))
        .isEqualTo(MassFraction.ofPercent(25));
  }

  @Test
  void a_recipe_scaled_to_an_amount() {
    Batch batch = Batch.of(MEDIUM, kilograms(2));

    assertThat(QuantityKind.MASS.toSi(batch.massOf(RESIN))).isCloseTo(2.0 / 9, within(1e-12));
    assertThat(batch.lines()).extracting(BatchLine::massKilograms).hasSize(2);
  }

  @Test
  void a_result_as_json_and_back() {
    Balance balance = Balance.of("kitchen balance", grams(5000), grams(1));
    WeighingSheet sheet = WeighingSheet.of(Batch.of(MEDIUM, grams(900)), ingredient -> balance);
    WeighingSheetData written = WeighingSheetData.of(sheet, Locale.GERMAN);

    String json = JSON.writeValueAsString(written);

    assertThat(JSON.readValue(json, WeighingSheetData.class)).isEqualTo(written);
  }

  @Test
  void a_recipe_saved_and_read() {
    String json = JSON.writeValueAsString(MEDIUM.toDraft());

    RecipeDraft read = JSON.readValue(json, RecipeDraft.class);

    assertThat(read.toRecipe(QuantityParser.localeFree(), SHELF::require)).isEqualTo(MEDIUM);
  }

  /** A studio that stops earlier than the library does. */
  private record OwnTarget(TemperaturePoint target) implements HeatingRule {

    @Override
    public RuleInfo info() {
      return RuleInfo.of(
              "own-target", Severity.DANGER, RuleInfo.Topic.UPPER_LIMIT, Source.COMMON_PRACTICE)
          .asBlocking();
    }

    @Override
    public RuleOutcome review(HeatingPlan plan) {
      return plan.bindingTemperature()
          .map(
              binding ->
                  RuleOutcome.foundIf(Limit.exceeds(binding.value().celsius(), target.celsius())))
          .orElseGet(() -> RuleOutcome.notAssessed("temperature"));
    }
  }

  @Test
  void a_limit_tighter_than_that_of_the_library() {
    HeatingRules own = HeatingRules.standard().with(new OwnTarget(TemperaturePoint.ofCelsius(75)));
    HeatingPlan plan = HeatingPlan.of(MEDIUM.composition(), TemperaturePoint.ofCelsius(80));

    HeatingReview standard = HeatingRules.standard().review(plan);
    HeatingReview tighter = own.review(plan);

    assertThat(standard.isBlocked()).isFalse();
    assertThat(tighter.isBlocked()).isTrue();
    assertThat(tighter.findings()).extracting(Finding::ruleId).contains("own-target");
  }

  @Test
  void what_a_german_reader_is_told() {
    HeatingPlan plan = HeatingPlan.of(MEDIUM.composition(), TemperaturePoint.ofCelsius(91.5));
    HeatingReview review = HeatingRules.standard().review(plan);
    QuantityFormatter writer = QuantityFormatter.exact().withLocale(Locale.GERMANY);

    assertThat(review.findings())
        .extracting(finding -> finding.summary(Locale.GERMANY))
        .contains("Das Wachs hat 91,5 °C (196,7 °F), über dem Ziel von 90,0 °C.");
    assertThat(writer.format(MassFraction.ofPercent(12.5))).isEqualTo("12,5 Masse-%");
    try {
      VolumeFraction.ofPercent(112.5);
    } catch (ProblemException refused) {
      assertThat(refused.problems().get(0).inWords(Locale.GERMANY))
          .contains("Volumenanteil in Prozent", "112,5", "0 bis 100");
    }
  }

  @Test
  void a_price_as_a_german_types_it() {
    QuantityParser german = QuantityParser.forLocale(Locale.GERMANY);

    assertThat(UnitPrice.parse("12,50 €/kg", german)).isEqualTo(UnitPrice.parse("12.50 EUR/kg"));
  }

  @Test
  void one_batch_over_several_pots() {
    Mixture melt = Mixture.of(MEDIUM.composition(), kilograms(1.4));
    List<Vessel> pots = List.of(pot("brown", 1.0), pot("grey", 0.8), pot("blue", 0.8));
    Map<String, Mixture> poured = new LinkedHashMap<>();

    Mixture left = melt;
    for (Vessel pot : pots) {
      double fits =
          VesselRoom.of(pot, left, DensityBasis.MELT).shareThatFits(HeatingReview.WORKING_FILL);
      List<Mixture> parts = left.split(MassFraction.of(Math.min(1, fits)));
      poured.put(pot.name(), parts.get(0));
      left = parts.get(1);
    }

    assertThat(left.massKilograms()).isZero();
    assertThat(poured.values().stream().mapToDouble(Mixture::massKilograms).sum())
        .isCloseTo(1.4, within(1e-12));
  }

  private static Vessel pot(String name, double litres) {
    return Vessel.of(
        name,
        VesselMaterial.STAINLESS_STEEL,
        Lining.NONE,
        Vessel.Bottom.FLAT,
        litres(litres),
        grams(400));
  }

  /** A property that the catalogue has no key for stays beside it, by material. */
  @Test
  void a_property_of_my_own() {
    Map<String, MassFraction> scentLoad = Map.of(WAX.id(), MassFraction.ofPercent(6));
    Quantity<Mass> wax = Batch.of(MEDIUM, grams(900)).massOf(WAX);

    double scent = QuantityKind.MASS.toSi(wax) * scentLoad.get(WAX.id()).value();

    assertThat(scent).isCloseTo(0.048, within(1e-12));
  }

  /** A request in the language of whoever sent it. */
  private record Request(
      @QuantityText(kind = TextKind.MASS, decimalSign = DecimalSign.EITHER)
          @Nullable String mass) {}

  @Test
  void constraints_without_an_expression_language() {
    Validator validator =
        Validation.byProvider(HibernateValidator.class)
            .configure()
            .messageInterpolator(
                new ParameterMessageInterpolator(
                    Set.of(Locale.ENGLISH, Locale.GERMAN), Locale.GERMAN, false))
            .buildValidatorFactory()
            .getValidator();

    assertThat(validator.validate(new Request("1,5 kg"))).isEmpty();
    assertThat(validator.validate(new Request("1.5 kg"))).isEmpty();
    assertThat(validator.validate(new Request("1.500 kg")))
        .singleElement()
        .satisfies(refused -> assertThat(refused.getMessage()).contains("1,5", "1500"));
  }

  @Test
  void the_laws_in_my_own_tests() {
    MixtureLaws.sharesSumToOne(MEDIUM.composition());
    MixtureLaws.massToVolumeToMassReturns(MEDIUM.composition(), DensityBasis.MELT);
  }
}
