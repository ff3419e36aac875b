// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.millimetres;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.cases.CaseFile;
import org.meltwright.core.measurement.Displacement;
import org.meltwright.core.measurement.Reading;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

/** Shapes against worked examples of others, from the data file beside this class. */
class CupShapeTest {

  static Stream<Arguments> cases() {
    return CaseFile.read(CupShapeTest.class, "cup-shapes.txt").stream()
        .map(
            f ->
                Arguments.of(
                    f.get(0) + " [" + f.get(5) + "]", f.get(1), f.get(2), f.get(3), f.get(4)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void case_published_comesOut(
      String name, String shape, String inputs, double expected, double tolerance) {
    assertThat(result(shape, CaseFile.numbers(inputs)))
        .as(name)
        .isCloseTo(expected, Percentage.withPercentage(tolerance * 100));
  }

  private static double result(String shape, double[] x) {
    return switch (shape) {
      case "block" -> millilitresOf(CupShape.block(cm(x[0]), cm(x[1]), cm(x[2])));
      case "cylinder" -> millilitresOf(CupShape.cylinder(cm(x[0]), cm(x[1])));
      case "frustum" -> millilitresOf(CupShape.frustum(cm(x[0]), cm(x[1]), cm(x[2])));
      case "weighed" -> millilitresOf(CupShape.weighedWith(grams(x[0]), gramsPerMillilitre(x[1])));
      case "left" -> {
        CupShape tank = CupShape.block(cm(x[0]), cm(x[1]), cm(x[2]));
        yield (tank.cubicMetres() - tank.cubicMetresTo(x[3] / 100)) * 1e6;
      }
      case "count" ->
          Casting.of(
                  grams(x[0]),
                  Mould.of(
                      "m", VesselMaterial.STEEL, 1, CupShape.block(cm(x[1]), cm(x[2]), cm(x[3]))),
                  VolumeFraction.ONE,
                  gramsPerMillilitre(1))
              .wholeCakes();
      case "displaced" -> gramsPerMillilitreBy(x[0], x[1], 1);
      case "immersed" -> gramsPerMillilitreBy(x[0], x[0] - x[1], x[2]);
      default -> throw new IllegalArgumentException(shape);
    };
  }

  private static double gramsPerMillilitreBy(double piece, double displaced, double liquid) {
    Reading density = Reading.exact(liquid * 1000);
    Reading room = Reading.exact(20);
    return new Displacement(Reading.exact(piece), Reading.exact(displaced), density, room)
            .density()
            .value()
        / 1000;
  }

  @Test
  void cubicMetresTo_frustum_growsToTheBrim() {
    CupShape cup = CupShape.frustum(cm(7), cm(5), cm(3));
    assertThat(cup.cubicMetresTo(0)).isZero();
    assertThat(cup.cubicMetresTo(0.03)).isEqualTo(cup.cubicMetres());
    assertThat(cup.cubicMetresTo(0.015))
        .isCloseTo(
            Math.PI * 0.015 * (0.025 * 0.025 + 0.025 * 0.03 + 0.03 * 0.03) / 3, within(1e-15));
    assertThatThrownBy(() -> cup.cubicMetresTo(0.031)).isInstanceOf(ProblemException.class);
  }

  @Test
  void weighedWithWater_oneCup_isItsVolume() {
    CupShape cup = CupShape.weighedWithWater(grams(99.82));
    assertThat(cup.cubicMetres()).isCloseTo(100e-6, within(1e-15));
    assertThat(QuantityKind.VOLUME.toSi(cup.volume())).isEqualTo(cup.cubicMetres());
    assertThatThrownBy(() -> cup.cubicMetresTo(0.01)).isInstanceOf(ProblemException.class);
  }

  @Test
  void shapes_lengthsThatCannotBe_areRefused() {
    assertThatThrownBy(() -> CupShape.block(cm(0), cm(1), cm(1)))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> CupShape.cylinder(cm(-1), cm(1))).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> CupShape.frustum(cm(0), cm(0), cm(1)))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> CupShape.weighedWithWater(grams(0)))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> gramsPerMillilitreBy(8, 0, 1)).isInstanceOf(ProblemException.class);
  }

  private static Quantity<Length> cm(double value) {
    return millimetres(value * 10);
  }

  private static double millilitresOf(CupShape shape) {
    return shape.cubicMetres() * 1e6;
  }
}
