// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.litres;
import static org.meltwright.units.MetricUnits.millilitres;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.cost.BatchPrices;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.core.thermal.melting.IdealLiquidus;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.core.thermal.melting.SolubilityAssumptions;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Beside each answer that throws for want of a figure stands a question that is then empty. */
class KnownOrNotTest {

  private static final MaterialCatalogue SHELF = MaterialCatalogue.standard();
  private static final Material BEESWAX = SHELF.require("beeswax-yellow");

  /** A wax of which nobody knows anything. */
  private static final Material UNKNOWN_WAX =
      Material.builder("unknown-wax").family(MaterialFamily.WAX, MaterialRole.BASE).build();

  private static final TemperaturePoint CEILING = TemperaturePoint.ofCelsius(90);
  private static final TemperatureDifference MARGIN = TemperatureDifference.ofKelvin(10);
  private static final TemperatureDifference LEAST = TemperatureDifference.ofKelvin(5);
  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);
  private static final VolumeFraction FILL = VolumeFraction.ofPercent(80);

  private static final Vessel POT =
      Vessel.of(
          "pot",
          VesselMaterial.STAINLESS_STEEL,
          Lining.NONE,
          Vessel.Bottom.FLAT,
          litres(2),
          grams(600));

  private static final Mould TIN = Mould.of("tin", VesselMaterial.STEEL, 12, millilitres(100));

  /** What is asked, its answer where it is known, and the answer that throws. */
  private record Question(
      String name,
      Function<Composition, Optional<?>> find,
      Function<Composition, Object> of,
      Function<Composition, List<Material>> unknown) {

    @Override
    public String toString() {
      return name;
    }
  }

  private static Mixture pot(Composition mix) {
    return Mixture.of(mix, grams(500));
  }

  private static List<Material> withoutEnd(Composition mix) {
    return MeltingReport.of(mix, CEILING).withoutEnd();
  }

  private static final List<Question> QUESTIONS =
      List.of(
          new Question(
              "densities, solid",
              c -> DensityBasis.SOLID.findTable(c.materials()),
              c -> DensityBasis.SOLID.table(c.materials()),
              c -> DensityBasis.SOLID.unknown(c.materials())),
          new Question(
              "densities, loose",
              c -> DensityBasis.BULK.findTable(c.materials()),
              c -> DensityBasis.BULK.table(c.materials()),
              c -> DensityBasis.BULK.unknown(c.materials())),
          new Question(
              "room in the vessel",
              c -> VesselRoom.find(POT, pot(c), DensityBasis.MELT),
              c -> VesselRoom.of(POT, pot(c), DensityBasis.MELT),
              c -> DensityBasis.MELT.unknown(c.materials())),
          new Question(
              "liquidus",
              c -> IdealLiquidus.find(c, SolubilityAssumptions.TYPICAL),
              c -> IdealLiquidus.of(c, SolubilityAssumptions.TYPICAL),
              KnownOrNotTest::withoutEnd),
          new Question(
              "working window",
              c -> WorkingWindow.find(c, CEILING, MARGIN, LEAST),
              c -> WorkingWindow.of(c, CEILING, MARGIN, LEAST),
              KnownOrNotTest::withoutEnd),
          new Question(
              "figures of a melt",
              c -> MeltFigures.find(c, MeltFigures.TYPICAL),
              c -> MeltFigures.of(c, MeltFigures.TYPICAL),
              KnownOrNotTest::withoutEnd),
          new Question(
              "heat to melt",
              c -> HeatDemand.find(pot(c), ROOM, CEILING, HeatAssumptions.TYPICAL),
              c -> HeatDemand.of(pot(c), ROOM, CEILING, HeatAssumptions.TYPICAL),
              KnownOrNotTest::withoutEnd));

  /** Every material of the catalogue alone, with beeswax, and with a wax that nobody knows. */
  private static List<Composition> mixes() {
    return Stream.concat(SHELF.all().stream(), Stream.of(UNKNOWN_WAX))
        .flatMap(
            m ->
                Stream.of(
                    Composition.of(m),
                    Composition.ofParts(List.of(BEESWAX, m), 1, 1),
                    Composition.ofParts(List.of(UNKNOWN_WAX, BEESWAX, m), 0.5, 1, 1)))
        .toList();
  }

  static List<Question> questions() {
    return QUESTIONS;
  }

  @ParameterizedTest
  @MethodSource("questions")
  void find_anyMix_isEmptyExactlyWhereTheAnswerThrows(Question question) {
    for (Composition mix : mixes()) {
      ProblemException thrown =
          catchThrowableOfType(ProblemException.class, () -> question.of().apply(mix));

      assertThat(question.find().apply(mix).isEmpty())
          .as("%s of %s", question, mix)
          .isEqualTo(thrown != null);
      if (thrown == null) {
        assertThat(question.unknown().apply(mix)).as("%s of %s", question, mix).isEmpty();
      }
    }
  }

  @Test
  void unknown_microcrystallineMelt_namesMaterialAndProperty() {
    Material micro = SHELF.require("microcrystalline");

    assertThat(DensityBasis.MELT.unknown(List.of(BEESWAX, micro))).containsExactly(micro);
    assertThat(DensityBasis.MELT.property(micro).id()).isEqualTo("liquid-density");
    assertThat(DensityBasis.SOLID.unknown(List.of(BEESWAX, micro))).isEmpty();
  }

  /** A pigment keeps its volume in a melt: nobody has to look for its liquid density. */
  @Test
  void property_ofWhatKeepsItsVolume_isTheSolidDensity() {
    Material pigment = SHELF.require("pigment-unspecified");
    Material oil = SHELF.require("linseed-oil");
    ProblemException thrown =
        catchThrowableOfType(ProblemException.class, () -> DensityBasis.MELT.density(pigment));

    assertThat(DensityBasis.MELT.property(pigment).id()).isEqualTo("solid-density");
    assertThat(thrown.problems().get(0).what(Locale.ENGLISH)).contains("solid-density");
    assertThat(DensityBasis.SOLID.property(oil).id()).isEqualTo("liquid-density");
    assertThat(DensityBasis.BULK.property(pigment).id()).isEqualTo("bulk-density");
    assertThat(DensityBasis.MELT.property(SHELF.require("carnauba")).id())
        .isEqualTo("liquid-density");
  }

  /** The dispersion holds water, which is known, and a polymer, which is not. */
  @Test
  void unknown_mixOfAnUnknownPart_isTheMixAndTheProblemNamesThePart() {
    Material dispersion = SHELF.require("acrylic-dispersion");
    ProblemException thrown =
        catchThrowableOfType(ProblemException.class, () -> DensityBasis.SOLID.density(dispersion));

    assertThat(DensityBasis.SOLID.unknown(List.of(dispersion))).containsExactly(dispersion);
    assertThat(thrown.problems()).extracting(p -> p.found()).containsExactly("acrylic-polymer");
  }

  @Test
  void find_castingOfAKnownMelt_hasNoShrinkageWhereOnlyTheColdDensityIsMissing() {
    Material hotOnly =
        Material.builder("hot-only").family(MaterialFamily.WAX, MaterialRole.BASE).build();
    DensityBasis melt = DensityBasis.MELT.with(hotOnly, gramsPerMillilitre(0.8));
    Mixture net = pot(Composition.of(hotOnly));

    assertThat(Casting.find(net, TIN, FILL, DensityBasis.MELT)).isEmpty();
    Casting casting = Casting.find(net, TIN, FILL, melt).orElseThrow();
    assertThat(casting.wholeCakes()).isEqualTo(7);
    assertThat(casting.shrinkage()).isEmpty();
    assertThat(
            Casting.find(pot(Composition.of(BEESWAX)), TIN, FILL, DensityBasis.MELT)
                .orElseThrow()
                .shrinkage())
        .isPresent();
  }

  @Test
  void unknown_oilOfAPaintOfWhichNothingIsStated_isThatPaint() {
    Material paint = SHELF.require("oil-paint-water-mixable");
    Composition mix = Composition.ofParts(List.of(BEESWAX, paint), 9, 1);

    assertThat(ShareOf.FREE_OIL.unknown(mix.materials())).containsExactly(paint);
    assertThat(catchThrowableOfType(ProblemException.class, () -> mix.share(ShareOf.FREE_OIL)))
        .isNotNull();
    assertThat(ShareOf.OIL_PAINT.unknown(mix.materials())).isEmpty();
    assertThat(ShareOf.FREE_OIL.unknown(SHELF.all())).containsExactly(paint);
  }

  @Test
  void unpriced_recipeInRecipe_namesWhatHasNoPrice() {
    Material resin = SHELF.require("damar");
    Recipe medium = Recipe.builder("medium").part(resin, 1).part(BEESWAX, 8).build();
    Recipe colour =
        Recipe.builder("colour").part(medium, 9).part(SHELF.require("chalk"), 1).build();
    Batch batch = Batch.ofTotal(colour, grams(500), Losses.NONE);
    BatchPrices prices = BatchPrices.of(Map.of(BEESWAX, UnitPrice.parse("12.50 EUR/kg")));

    assertThat(prices.unpriced(batch)).extracting(Material::id).containsExactly("damar", "chalk");
    assertThat(catchThrowableOfType(ProblemException.class, () -> prices.cost(batch)).problems())
        .extracting(p -> p.found())
        .containsExactly("damar", "chalk");
    assertThat(prices.unpriced(Batch.ofTotal(wax(), grams(500), Losses.NONE))).isEmpty();
  }

  private static Recipe wax() {
    return Recipe.builder("wax").part(BEESWAX, 1).build();
  }
}
