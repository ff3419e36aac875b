// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.TemperatureDefinition;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/**
 * Each double as a temperature gives a review, with all its texts in both languages, or a problem:
 * never another exception, and no rule that fails on it.
 */
class EveryDoubleTest {

  private static final List<Locale> READERS = List.of(Locale.ENGLISH, Locale.GERMAN);

  private static final Material WAX = MaterialCatalogue.standard().require("beeswax-yellow");

  /** Numbers at which arithmetic or writing may break, and some at random. */
  private static final double[] VALUES =
      DoubleStream.concat(
              DoubleStream.of(
                  0.0,
                  -0.0,
                  Double.MIN_VALUE,
                  -Double.MIN_VALUE,
                  Double.MIN_NORMAL,
                  Math.nextDown(Double.MIN_NORMAL),
                  1e-300,
                  -1e-9,
                  -273.15,
                  Math.nextUp(-273.15),
                  Math.nextDown(-273.15),
                  -273.149999,
                  -272.15,
                  -268,
                  -223.15,
                  -223.16,
                  -459.67,
                  -40,
                  Math.nextDown(90.0),
                  90,
                  Math.nextUp(90.0),
                  Math.nextDown(93.3),
                  93.3,
                  Math.nextUp(93.3),
                  200,
                  999.9999999999999,
                  1000,
                  1e5,
                  999999999.95,
                  1e9,
                  1e15,
                  1e16,
                  1e22,
                  1e100,
                  1e308,
                  -1e308,
                  Double.MAX_VALUE,
                  -Double.MAX_VALUE,
                  Double.MAX_VALUE / 1.8,
                  Double.NaN,
                  Double.POSITIVE_INFINITY,
                  Double.NEGATIVE_INFINITY),
              new Random(20).longs(40).mapToDouble(Double::longBitsToDouble))
          .toArray();

  /** Where a temperature can stand. */
  enum Place {
    LIQUID((plan, t) -> plan.liquidReading(point(t))),
    LIQUID_IN_A_BATH((plan, t) -> plan.heat(source(Kind.WATER_BATH)).liquidReading(point(t))),
    LIQUID_ON_A_PALETTE(
        (plan, t) -> plan.heat(palette(80)).liquidReading(point(t)).surfaceReading(point(81))),
    SURFACE((plan, t) -> plan.heat(plate(85)).surfaceReading(point(t))),
    SURFACE_READ_BY_PROBE(
        (plan, t) -> plan.heat(palette(85)).surfaceReading(point(t), SurfaceMethod.PROBE)),
    SURFACE_OF_METAL(
        (plan, t) ->
            plan.heat(plate(85))
                .surfaceReading(point(t), SurfaceMethod.INFRARED_ON_BARE_METAL)
                .measuredOffset(TemperatureDifference.ofKelvin(-9))),
    SET_POINT((plan, t) -> plan.heat(plate(t))),
    SET_POINT_WITH_OVERSHOOT((plan, t) -> plan.heat(rising(plate(t), 8))),
    SET_POINT_WITH_OFFSET(
        (plan, t) -> plan.heat(plate(t)).measuredOffset(TemperatureDifference.ofKelvin(-9))),
    SET_POINT_OF_A_PALETTE((plan, t) -> plan.heat(rising(palette(t), 8))),
    OVERSHOOT((plan, t) -> plan.heat(rising(plate(85), t))),
    OVERSHOOT_OF_A_PALETTE((plan, t) -> plan.heat(rising(palette(85), t))),
    OFFSET((plan, t) -> plan.heat(plate(85)).measuredOffset(TemperatureDifference.ofKelvin(t))),
    TOLERANCE((plan, t) -> plan.liquidReading(point(85)).thermometer(thermometer(t))),
    TOLERANCE_OF_A_READING(
        (plan, t) -> plan.liquidReading(point(t)).thermometer(thermometer(1000))),
    IRON((plan, t) -> plan.tool(rising(source(Kind.IRON).withSetPoint(point(t)), 5))),
    HEAT_GUN((plan, t) -> plan.tool(source(Kind.HEAT_GUN).withSetPoint(point(t)))),
    FLASH_POINT((plan, t) -> of(own(PropertyKey.FLASH_POINT, t))),
    AUTOIGNITION((plan, t) -> of(own(PropertyKey.AUTOIGNITION, t))),
    MELTING_RANGE((plan, t) -> of(own(PropertyKey.MELTING_RANGE, t))),
    MELTING_RANGE_OF_ALL(
        (plan, t) ->
            HeatingPlan.builder(Composition.of(own(PropertyKey.MELTING_RANGE, t)))
                .liquidReading(point(80))),
    DISSOLVES_FROM((plan, t) -> of(own(PropertyKey.DISSOLVES_FROM, t))),
    TARGET((plan, t) -> hot(plan), (own, t) -> own.withTarget(point(t))),
    HARD_CEILING((plan, t) -> hot(plan), (own, t) -> own.withHardCeiling(point(t))),
    FLOOR_LIMIT((plan, t) -> hot(plan), (own, t) -> own.withFloorLimit(point(t))),
    FLASH_MARGIN(
        (plan, t) -> hot(plan), (own, t) -> own.withFlashMargin(TemperatureDifference.ofKelvin(t))),
    LEAST_WIDTH(
        (plan, t) -> hot(plan), (own, t) -> own.withLeastWidth(TemperatureDifference.ofKelvin(t)));

    private final BiFunction<HeatingPlanBuilder, Double, HeatingPlanBuilder> stated;
    private final BiFunction<HeatingLimits, Double, HeatingLimits> limits;

    Place(BiFunction<HeatingPlanBuilder, Double, HeatingPlanBuilder> stated) {
      this(stated, (own, t) -> own);
    }

    Place(
        BiFunction<HeatingPlanBuilder, Double, HeatingPlanBuilder> stated,
        BiFunction<HeatingLimits, Double, HeatingLimits> limits) {
      this.stated = stated;
      this.limits = limits;
    }

    HeatingReview review(double value) {
      HeatingRules rules =
          HeatingRules.standard()
              .withLimits(limits.apply(HeatingLimits.standard(), value), "house rule");
      return rules.review(stated.apply(HeatingPlan.builder(Composition.of(WAX)), value).build());
    }
  }

  private static TemperaturePoint point(double celsius) {
    return TemperaturePoint.ofCelsius(celsius);
  }

  private static HeatSource source(Kind kind) {
    return HeatSource.of("source", kind);
  }

  private static HeatSource plate(double celsius) {
    return source(Kind.HOT_PLATE).withSetPoint(point(celsius));
  }

  private static HeatSource palette(double celsius) {
    return source(Kind.HEATED_PALETTE).withSetPoint(point(celsius));
  }

  private static HeatSource rising(HeatSource source, double kelvin) {
    return source.withOvershoot(TemperatureDifference.ofKelvin(kelvin));
  }

  private static Thermometer thermometer(double tolerance) {
    TemperatureDifference one = TemperatureDifference.ofKelvin(1);
    return new Thermometer(
        "dip", Thermometer.Place.LIQUID, one, TemperatureDifference.ofKelvin(tolerance));
  }

  private static HeatingPlanBuilder hot(HeatingPlanBuilder plan) {
    return plan.heat(rising(plate(100), 12)).liquidReading(point(99)).thermometer(thermometer(2));
  }

  /** Half beeswax, half a material of the user's own with one figure, at 80 °C. */
  private static HeatingPlanBuilder of(Material own) {
    Composition mix = Composition.ofParts(List.of(WAX, own), 1, 1);
    return HeatingPlan.builder(mix)
        .liquidReading(point(80))
        .tool(source(Kind.HEAT_GUN).withSetPoint(point(300)));
  }

  private static Material own(PropertyKey<DefinedTemperature> key, double celsius) {
    MaterialFamily family =
        key == PropertyKey.DISSOLVES_FROM ? MaterialFamily.RESIN : MaterialFamily.WAX;
    DefinedTemperature value =
        new DefinedTemperature(TemperatureRange.of(point(celsius)), definition(key));
    return Material.builder("own")
        .family(family, MaterialRole.BASE)
        .figure(key, Sourced.of(value, Source.USER, Knowledge.READ))
        .build();
  }

  private static TemperatureDefinition definition(PropertyKey<DefinedTemperature> key) {
    if (key == PropertyKey.AUTOIGNITION) {
      return TemperatureDefinition.AUTOIGNITION;
    } else if (key == PropertyKey.FLASH_POINT) {
      return TemperatureDefinition.FLASH_CLOSED_CUP;
    } else if (key == PropertyKey.DISSOLVES_FROM) {
      return TemperatureDefinition.ONSET;
    }
    return TemperatureDefinition.CAPILLARY_RANGE;
  }

  @ParameterizedTest
  @EnumSource
  void number_isAReviewOrAProblem(Place place) {
    int reviews = 0;
    for (double value : VALUES) {
      reviews += reviewed(place, value).map(review -> sayAll(place, value, review)).orElse(0);
    }
    assertThat(reviews).as("%s: numbers that have a review", place).isPositive();
  }

  private static Optional<HeatingReview> reviewed(Place place, double value) {
    try {
      return Optional.of(place.review(value));
    } catch (ProblemException e) {
      assertThat(e.problems()).as("%s of %s", place, value).isNotEmpty();
      return Optional.empty();
    }
  }

  private static int sayAll(Place place, double value, HeatingReview review) {
    String named = place + " of " + value;
    assertThat(Double.isFinite(value)).as(named).isTrue();
    assertThat(review.notAssessed()).as(named).noneMatch(n -> n.property().equals("rule"));
    for (Locale reader : READERS) {
      assertThat(texts(review, reader)).as(named).doesNotContain("{").doesNotContain("NaN");
    }
    return 1;
  }

  private static String texts(HeatingReview review, Locale reader) {
    StringBuilder all = new StringBuilder();
    for (Finding f : review.findings()) {
      all.append(f.summary(reader)).append(f.reason(reader)).append(f.remedy(reader)).append(f);
    }
    review
        .notAssessed()
        .forEach(n -> all.append(n.what(reader)).append(n.remedy(reader)).append(n));
    all.append(NotAsked.line(review.notAsked(), reader));
    all.append(HeatingReviewData.of(review, reader).findings().size());
    all.append(review.plan().otherScale().map(words -> words.in(reader)).orElse(""));
    all.append(review.explanation().text(reader))
        .append(review.workingCeiling())
        .append(review.limits());
    return all.append(review.workingWindow()).append(review.marginToHardCeiling()).toString();
  }

  @ParameterizedTest
  @EnumSource(HeatingReading.Place.class)
  void reading_isAnActionOrAProblem(HeatingReading.Place place) {
    for (double value : VALUES) {
      if (!(Double.isFinite(value) && value >= -273.15)) {
        assertThatThrownBy(() -> point(value)).isInstanceOf(ProblemException.class);
        continue;
      }
      HeatingReading reading =
          new HeatingReading(
              place, point(value), Optional.of(SurfaceMethod.PROBE), OptionalDouble.of(20));
      for (UnaryOperator<HeatingLimits> limits : LIMITS) {
        sayAll(reading.action(limits.apply(HeatingLimits.standard()), Composition.of(WAX)));
      }
      sayAll(reading.action());
    }
  }

  private static final List<UnaryOperator<HeatingLimits>> LIMITS =
      Arrays.asList(
          own -> own,
          own -> own.withHardCeiling(point(Double.MIN_VALUE)),
          own -> own.withFlashMargin(TemperatureDifference.ofKelvin(1000)));

  private static void sayAll(HeatingAction action) {
    for (Locale reader : READERS) {
      assertThat(action.atOnce(reader) + action.later(reader) + action + action.lowerBy())
          .as(action.reading().toString())
          .doesNotContain("{")
          .doesNotContain("NaN");
    }
  }
}
