// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.litres;
import static org.meltwright.units.MetricUnits.millilitres;
import static org.meltwright.units.TemperaturePoint.ofCelsius;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Volume;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.batch.BatchLine;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.LineDeviation;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.batch.ShrinkRange;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.equipment.CupShape;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.CatalogueFigure;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.DensityTable;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.Scrap;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.planning.blend.BlendPart;
import org.meltwright.core.planning.blend.BlendQuestion;
import org.meltwright.core.planning.blend.Wish;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Estimate;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.VolumeFraction;

/** What cannot be does not get in, by whatever public constructor or factory it comes. */
class PublicDoorsTest {

  private static final Material WAX = Material.builder("wax").build();
  private static final Ingredient SHELF = Ingredient.of(WAX);
  private static final Vessel POT = pot(" pot", 0.001, 0.5);

  private static Vessel pot(String name, double cubicMetres, double kilograms) {
    return new Vessel(
        name, VesselMaterial.STEEL, Lining.NONE, Vessel.Bottom.FLAT, cubicMetres, kilograms);
  }

  private static Thermometer probe(double interval, double tolerance) {
    return new Thermometer(
        "probe",
        Thermometer.Place.LIQUID,
        TemperatureDifference.ofKelvin(interval),
        TemperatureDifference.ofKelvin(tolerance));
  }

  private static Estimate<Volume> melt(double low, double high) {
    return new Estimate<>(QuantityKind.VOLUME, low, high, high);
  }

  private static MassFractionRange share(double percent) {
    return MassFractionRange.of(MassFraction.ofPercent(percent));
  }

  private static Source source(String id, String title, String locator, String year) {
    return Source.of(id, title, SourceKind.HANDBOOK).at(locator).ofYear(year);
  }

  private static Arguments shut(String door, ThrowingCallable call) {
    return arguments(door, call);
  }

  /** Each door with each number that no amount can be. */
  static Stream<Arguments> numbers() {
    return Stream.of(-1, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NaN)
        .map(Number::doubleValue)
        .flatMap(
            x ->
                Stream.of(
                    shut("balance " + x, () -> new Balance("b", x, 0.001)),
                    shut("interval " + x, () -> new Balance("b", 1, x)),
                    shut("vessel " + x, () -> pot("pot", x, 0.5)),
                    shut("mass of a vessel " + x, () -> pot("pot", 0.001, x)),
                    shut("fill " + x, () -> POT.fillLevel(x)),
                    shut("mould " + x, () -> new Mould("m", VesselMaterial.STEEL, 1, x)),
                    shut("weighed " + x, () -> new CupShape.Weighed(x)),
                    shut("block " + x, () -> new CupShape.Block(x, 1, 1)),
                    shut("frustum " + x, () -> new CupShape.Frustum(x, 1, 1)),
                    shut("probe " + x, () -> probe(x, 1)),
                    shut("tolerance " + x, () -> probe(0.1, x)),
                    shut("power " + x, () -> plate().withPowerWatts(x)),
                    shut("part " + x, () -> new RecipePart(SHELF, x)),
                    shut("batch line " + x, () -> new BatchLine(SHELF, x)),
                    shut("planned " + x, () -> new LineDeviation(SHELF, x, 0.5)),
                    shut("weighed share " + x, () -> new LineDeviation(SHELF, 0.5, x)),
                    shut("room " + x, () -> new VesselRoom(POT, melt(x, x))),
                    shut("mixture " + x, () -> new Mixture(Composition.of(WAX), x)),
                    shut("scrap " + x, () -> new Scrap(x, Scrap.UNKNOWN)),
                    shut("density " + x, () -> DensityTable.of(x)),
                    shut("wished amount " + x, () -> Wish.amount(kilograms(x))),
                    shut("fraction " + x, () -> MassFraction.of(x)),
                    shut("expansion " + x, () -> meltAt(x, x))));
  }

  private static HeatSource plate() {
    return HeatSource.of("plate", HeatSource.Kind.HOT_PLATE);
  }

  private static DensityBasis meltAt(double low, double high) {
    return DensityBasis.meltAt(ofCelsius(85), new NumberRange(low, high, "1/K"));
  }

  static Stream<Arguments> others() {
    Sourced<MassFractionRange> figure = Sourced.of(share(5), Source.USER, Knowledge.READ);
    return Stream.of(
        shut("interval of nothing", () -> probe(0, 1)),
        shut("cup of nothing", () -> new CupShape.Weighed(0)),
        shut("mould without cups", () -> new Mould("m", VesselMaterial.STEEL, 0, 1e-4)),
        shut("more than all of it", () -> new LineDeviation(SHELF, 1.01, 0.5)),
        shut("expansion to nothing", () -> meltAt(0, 0.01)),
        shut("expansion without end", () -> meltAt(0, Double.POSITIVE_INFINITY)),
        shut("range without a start", () -> new NumberRange(Double.NaN, 1, "")),
        shut("no high end", () -> DensityTable.of(new double[] {900}, new double[] {})),
        shut("high end too many", () -> DensityTable.of(new double[] {9}, new double[] {9, 9})),
        shut("blend of nothing", () -> BlendQuestion.of(List.of(), List.of())),
        shut("part without a name", () -> BlendPart.of(" ", Composition.of(WAX))),
        shut("rank 0 of a wish", () -> Wish.useUp("wax").ranked(0)),
        shut("no parts at all", () -> Wish.partsAtMost(0)),
        shut("ratio below zero", () -> Wish.ratio(ShareOf.RESIN, ShareOf.FREE_OIL, -1, 1)),
        shut("amount of nothing", () -> Wish.amount(grams(0))),
        shut("rank 0", () -> new CatalogueFigure<>(WAX, PropertyKey.INSOLUBLES, 0, figure)),
        shut("shrinks in no order", () -> shrink(5, 4, 6)),
        shut("shrinks to less", () -> shrink(3, 4, 2)),
        shut("parts of 110 %", () -> paint(50, 60)),
        shut("parts of 90 %", () -> paint(50, 40)));
  }

  private static ShrinkRange shrink(double low, double central, double high) {
    return new ShrinkRange(
        VolumeFraction.ofPercent(low),
        VolumeFraction.ofPercent(central),
        VolumeFraction.ofPercent(high));
  }

  private static Material paint(double pigment, double oil) {
    return Material.builder("paint")
        .constituent(WAX, share(pigment))
        .constituent(Material.builder("oil").build(), share(oil))
        .build();
  }

  static Stream<Arguments> blanks() {
    return Stream.of("", " ", "\t\n")
        .flatMap(
            t ->
                Stream.of(
                    shut("balance", () -> Balance.of(t, grams(200), grams(1))),
                    shut("vessel", () -> pot(t, 0.001, 0.5)),
                    shut("mould", () -> Mould.of(t, VesselMaterial.STEEL, 1, millilitres(9))),
                    shut("heat source", () -> HeatSource.of(t, HeatSource.Kind.LAMP)),
                    shut("material", () -> Material.builder(t)),
                    shut("name", () -> Material.builder("a").names(t, "")),
                    shut("other name", () -> Material.builder("a").otherName(t)),
                    shut("source id", () -> source(t, "a", "b", "c")),
                    shut("title", () -> source("a", t, "b", "c")),
                    shut("locator", () -> source("a", "b", t, "c")),
                    shut("year", () -> source("a", "b", "c", t)),
                    shut(
                        "bar",
                        () -> Sourced.of(1, Source.USER, Knowledge.READ).barredFromRules(t))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource({"numbers", "others", "blanks"})
  void door_is_shut(String door, ThrowingCallable call) {
    assertThatThrownBy(call).as(door).isInstanceOf(ProblemException.class);
  }

  @Test
  void what_can_be_gets_in() {
    assertThat(probe(0.1, 0).tolerance()).isEqualTo(TemperatureDifference.ZERO);
    assertThat(new CupShape.Weighed(1e-4).cubicMetres()).isEqualTo(1e-4);
    assertThat(new VesselRoom(POT, melt(0, 0.0005)).fillLevel()).isEqualTo(0.5);
    assertThat(shrink(3, 3, 4).linearHigh()).isPositive();
    assertThat(meltAt(0, 0.002).state()).isEqualTo(DensityBasis.MELT.state());
    assertThat(pot("pot", 0.001, 0).capacity()).isNotEqualTo(litres(2));
    assertThat(new LineDeviation(SHELF, 1, 0).difference()).isEqualTo(-1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {50, 60, 100})
  void parts_that_can_sum_to_one_make_a_material(double most) {
    Material made =
        Material.builder("paint")
            .constituent(WAX, share(50))
            .constituent(
                Material.builder("oil").build(),
                new MassFractionRange(MassFraction.ofPercent(20), MassFraction.ofPercent(most)))
            .build();
    assertThat(made.constituents()).hasSize(2);
  }
}
