// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.thermal.heat.ReadingLog;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.OpenTime;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.units.TemperaturePoint;

/**
 * Makers who measure a truth that the test knows, with errors drawn as they state them: the range
 * of the expanded uncertainty holds the truth in 93 to 97 of a hundred.
 *
 * <p>Two thousand makers for each measurement, ten thousand under the profile {@code random}.
 */
@Tag("random")
class SimulatedMakersTest {

  private static final int MAKERS = Integer.getInteger("random.makers", 2000);
  private static final int THICK = 7;
  private static final int HOT = 35;
  private static final long SEED = Long.getLong("random.seed", 20260314L);

  /** {@link OpenTime} of beeswax on wood, in a table from 64 to 200 °C and 0.28 to 0.34 mm. */
  private static final DoubleBinaryOperator DRAGS = table();

  /** What a maker reads, and how wrong it may be. */
  private record Maker(Random random) {

    Reading normal(double truth, double u) {
      return Reading.of(truth + u * random.nextGaussian(), u);
    }

    Reading even(double truth, double halfWidth) {
      return Reading.within(truth + halfWidth * (2 * random.nextDouble() - 1), halfWidth);
    }

    Reading repeated(double truth, double scatter, int n) {
      double[] readings = new double[n];
      for (int i = 0; i < n; i++) {
        readings[i] = truth + scatter * random.nextGaussian();
      }
      return Reading.repeated(readings);
    }

    /** A balance: a normal scatter and a step of the display. */
    Reading weighed(double truth, double scatter, double step) {
      Reading shown = even(truth, step / 2);
      return Reading.of(shown.value() + scatter * random.nextGaussian(), shown.uncertainty())
          .also(scatter);
    }
  }

  /** A kind of measurement: the truth, and what one maker finds. */
  private record Kind(String name, double truth, Function<Maker, Measurement> found) {

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Kind> kinds() {
    return Stream.of(
        new Kind("thermometer, two points", 0.5, m -> twoPoints(m).correction(70)),
        new Kind("thermometer, two points, corrected", 70, SimulatedMakersTest::corrected),
        new Kind("thermometer, five points", 0.65, m -> points(m, 5).correction(85)),
        new Kind("thermometer, three points", 0.65, m -> points(m, 3).correction(85)),
        new Kind("full cup", 832, SimulatedMakersTest::fullCup),
        new Kind("bottle", 5200, SimulatedMakersTest::bottle),
        new Kind("sinker", 828, SimulatedMakersTest::sinker),
        new Kind("displacement", 955, SimulatedMakersTest::displacement),
        new Kind("shrinkage", 2.2, m -> bar(m).shrinkage()),
        new Kind("mould factor", 1 / 0.978, m -> bar(m).mouldFactor()),
        new Kind("power of a pot", 400, m -> pot(m).power()),
        new Kind("loss of a pot", 3.5, m -> pot(m).loss()),
        new Kind("film", 0.31, SimulatedMakersTest::film),
        new Kind("temperature on contact", 72, SimulatedMakersTest::contact),
        new Kind("dirt in resin", 4, SimulatedMakersTest::dirt),
        new Kind("drained oil", 9, SimulatedMakersTest::oil));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void expandedUncertainty_holdsTheTruthIn93To97OfAHundred(Kind kind) {
    Maker maker = new Maker(new Random(SEED + kind.name().hashCode()));
    int held = 0;
    for (int i = 0; i < MAKERS; i++) {
      Measurement found = kind.found().apply(maker);
      held += Math.abs(found.value() - kind.truth()) <= found.expanded() ? 1 : 0;
    }
    assertThat(100.0 * held / MAKERS).as("of %d makers: %s", MAKERS, kind).isBetween(93.0, 97.0);
  }

  /** A thermometer whose correction is 0.15 + 0.005 t. */
  private static ThermometerCalibration.Point point(Maker m, double shown) {
    double truth = shown + 0.15 + 0.005 * shown;
    return new ThermometerCalibration.Point(m.normal(shown, 0.1), m.even(truth, 0.2));
  }

  private static ThermometerCalibration twoPoints(Maker m) {
    return ThermometerCalibration.of(List.of(point(m, 0), point(m, 99)));
  }

  private static Measurement corrected(Maker m) {
    double shown = (70 - 0.15) / 1.005;
    return twoPoints(m).corrected(m.even(shown, 0.2));
  }

  /** A thermometer whose correction is 0.65 K at 85 °C, read at points that are known well. */
  private static ThermometerCalibration points(Maker m, int n) {
    List<ThermometerCalibration.Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double shown = 100.0 * i / (n - 1);
      double truth = shown + 0.225 + 0.005 * shown;
      points.add(new ThermometerCalibration.Point(Reading.exact(shown), m.normal(truth, 0.15)));
    }
    return ThermometerCalibration.of(points);
  }

  /** 200 ml of steel cup, whose growth is drawn as the type states it. */
  private static Measurement fullCup(Maker m) {
    double growth = m.even(33e-6, 23e-6).value();
    double water = m.random().nextDouble() * 2 - 1 + 20;
    double cup = 200e-6;
    double hot = cup * (1 + growth * 60);
    return new FullCup(
            m.weighed(50, 0.1, 0.1),
            m.weighed(50 + 1e3 * cup * Measuring.waterDensity(water), 0.1, 0.1),
            m.even(water, 1),
            m.weighed(50 + 1e3 * hot * 832, 0.1, 0.1),
            m.even(80, 2))
        .density();
  }

  private static Measurement bottle(Maker m) {
    double powder = 20;
    double liquid = 998;
    double room = 50e-6;
    double displaced = powder * 1e-3 / 5200;
    return new Bottle(
            m.weighed(31, 0.01, 0.01),
            m.weighed(31 + powder, 0.01, 0.01),
            m.weighed(31 + powder + 1e3 * (room - displaced) * liquid, 0.01, 0.01),
            m.weighed(31 + 1e3 * room * liquid, 0.01, 0.01),
            m.even(liquid, 1))
        .density();
  }

  private static Measurement sinker(Maker m) {
    double growth = m.even(45e-6, 12e-6).value();
    double volume = 12.8e-6;
    double hot = volume * (1 + growth * 60);
    return new Sinker(
            m.weighed(101.3, 0.01, 0.01),
            m.weighed(101.3 - 1e3 * volume * Measuring.waterDensity(20), 0.01, 0.01),
            m.even(20, 1),
            m.weighed(101.3 - 1e3 * hot * 828, 0.01, 0.01),
            m.even(80, 2))
        .density();
  }

  private static Measurement displacement(Maker m) {
    double volume = 74.5e-6;
    return Displacement.ofWater(
            m.weighed(1e3 * volume * 955, 0.1, 0.1),
            m.weighed(1e3 * volume * Measuring.waterDensity(20), 0.1, 0.1),
            m.even(20, 1))
        .density();
  }

  private static CastLength bar(Maker m) {
    return new CastLength(m.repeated(200, 0.3, 6), m.repeated(200 * 0.978, 0.3, 6));
  }

  /** 400 W into 8800 J/K that lose 3.5 W/K to a room of 20 °C, read every 90 s for an hour. */
  private static HeatUpLog pot(Maker m) {
    List<ReadingLog.Reading> readings = new ArrayList<>();
    for (int i = 0; i <= 40; i++) {
      double seconds = 90.0 * i;
      double truth = 20 + 400 / 3.5 * (1 - Math.exp(-3.5 * seconds / 8800));
      double shown = truth + 0.2 * m.random().nextGaussian();
      readings.add(new ReadingLog.Reading(seconds, TemperaturePoint.ofCelsius(shown)));
    }
    return new HeatUpLog(
        new ReadingLog(readings), TemperaturePoint.ofCelsius(20), m.normal(8800, 60));
  }

  private static Measurement film(Maker m) {
    double grams = 10 * 0.31e-3 * 100e-4 * 955 * 1e3;
    return new TimedStrokes(
            m.weighed(212, 0.1, 0.1),
            m.weighed(212 + grams, 0.1, 0.1),
            m.normal(100, 1),
            10,
            m.even(955, 5),
            m.repeated(9.5, 0.7, 5))
        .film();
  }

  /** Strokes of 0.31 mm that met the panel at 72 °C. */
  private static Measurement contact(Maker m) {
    double grams = 10 * 0.31e-3 * 100e-4 * 955 * 1e3;
    return new TimedStrokes(
            m.weighed(212, 0.1, 0.1),
            m.weighed(212 + grams, 0.1, 0.1),
            m.normal(100, 1),
            10,
            m.even(955, 5),
            m.repeated(DRAGS.applyAsDouble(0.31e-3, 72), 0.15, 10))
        .contact(DRAGS);
  }

  private static DoubleBinaryOperator table() {
    double[][] seconds = new double[THICK][HOT];
    for (int i = 0; i < THICK; i++) {
      for (int j = 0; j < HOT; j++) {
        seconds[i][j] = drags(2.8e-4 + i * 1e-5, 64 + j * 4.0);
      }
    }
    return (metres, celsius) -> {
      double x = Math.min(Math.max((metres - 2.8e-4) / 1e-5, 0), THICK - 1.0001);
      double y = Math.min((celsius - 64) / 4, HOT - 1.0001);
      return celsius < 64 ? 0 : between(seconds, x, y);
    };
  }

  private static double between(double[][] table, double x, double y) {
    int i = (int) x;
    int j = (int) y;
    double low = table[i][j] + (y - j) * (table[i][j + 1] - table[i][j]);
    double high = table[i + 1][j] + (y - j) * (table[i + 1][j + 1] - table[i + 1][j]);
    return low + (x - i) * (high - low);
  }

  private static double drags(double metres, double celsius) {
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
    MeltFigures melt = MeltFigures.of(Composition.of(wax), MeltFigures.TYPICAL);
    TemperaturePoint room = TemperaturePoint.ofCelsius(20);
    Film film = Film.of(melt, metres, metres, TemperaturePoint.ofCelsius(celsius));
    Panel wood = Panel.of(PanelKind.WOOD, 0.010, room);
    return OpenTime.of(film, wood, Surroundings.stillRoom(room)).halfSet().centralSi();
  }

  private static Measurement dirt(Maker m) {
    double clinging = 0.5;
    double stayed = 8 / (1 - clinging);
    return new ResinDirt(
            m.weighed(200, 0.5, 0.1),
            m.weighed(12, 0.5, 0.1),
            m.weighed(12 + stayed, 0.5, 0.1),
            m.normal(clinging, 0.03))
        .share();
  }

  private static Measurement oil(Maker m) {
    return new DrainedOil(
            m.weighed(40, 0.05, 0.1), m.weighed(6.2, 0.05, 0.1), m.weighed(9.8, 0.05, 0.1))
        .share();
  }
}
