// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.grams;

import java.math.BigDecimal;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/** What the units engine does in a surprising way, and what the door makes of it. */
class UnitsEngineTrapsTest {

  private static final QuantityParser PARSER = QuantityParser.localeFree();

  @Test
  void one_degree_more_is_one_kelvin_more_and_not_274() {
    Quantity<Temperature> engine =
        Quantities.getQuantity(1, Units.CELSIUS).add(Quantities.getQuantity(1, Units.CELSIUS));
    assertThat(engine.getValue().doubleValue()).isCloseTo(275.15, within(1e-9));

    assertThat(TemperaturePoint.ofCelsius(1).plus(TemperatureDifference.ofKelvin(1)).celsius())
        .isEqualTo(2);
    assertThat(TemperaturePoint.ofCelsius(90).minus(TemperaturePoint.ofCelsius(85)).kelvin())
        .isEqualTo(5);
  }

  @Test
  void a_temperature_below_absolute_zero_is_refused_at_the_door() {
    Quantity<Temperature> impossible = Quantities.getQuantity(-300, Units.CELSIUS);

    assertThatThrownBy(() -> TemperaturePoint.of(impossible)).isInstanceOf(ProblemException.class);
  }

  @Test
  void a_temperature_quantity_is_a_point_or_a_difference_but_never_taken_for_the_other() {
    Quantity<Temperature> absolute = Quantities.getQuantity(5, Units.CELSIUS);
    Quantity<Temperature> relative =
        Quantities.getQuantity(5, Units.CELSIUS, Quantity.Scale.RELATIVE);

    assertThat(TemperaturePoint.of(absolute)).isEqualTo(TemperaturePoint.ofCelsius(5));
    assertThat(TemperatureDifference.of(relative)).isEqualTo(TemperatureDifference.ofKelvin(5));
    assertThatThrownBy(() -> TemperaturePoint.of(relative)).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> TemperatureDifference.of(absolute))
        .isInstanceOf(ProblemException.class);
    assertThat(TemperatureDifference.of(Quantities.getQuantity(5, Units.KELVIN)).kelvin())
        .isEqualTo(5);
  }

  @Test
  void the_bridge_back_adds_up_in_the_engine() {
    Quantity<Temperature> sum =
        TemperaturePoint.ofCelsius(70)
            .toQuantity()
            .add(TemperatureDifference.ofKelvin(5).toQuantity());

    assertThat(TemperaturePoint.of(sum).celsius()).isCloseTo(75, within(1e-12));
  }

  @Test
  void fahrenheit_of_ours_and_of_others_are_the_same_points_and_differences() {
    Unit<Temperature> others =
        Units.CELSIUS.shift(-160.0 / 9).transform(MultiplyConverter.ofRational(5, 9));
    Unit<Temperature> ours = UsCustomaryUnits.FAHRENHEIT;

    for (Unit<Temperature> unit : List.of(ours, others)) {
      assertThat(TemperaturePoint.of(Quantities.getQuantity(200, unit)).celsius())
          .isCloseTo(93 + 1.0 / 3, within(1e-9));
      assertThat(
              TemperatureDifference.of(Quantities.getQuantity(9, unit, Quantity.Scale.RELATIVE))
                  .kelvin())
          .isCloseTo(5, within(1e-6));
    }
    assertThat(ours.getConverterTo(Units.KELVIN).convert(32.0)).isCloseTo(273.15, within(1e-9));
  }

  @Test
  void a_kilogram_is_a_thousand_grams_however_it_was_built() {
    Quantity<Mass> kilogram = Quantities.getQuantity(1, Units.KILOGRAM);
    assertThat(kilogram.equals(Quantities.getQuantity(1000, Units.GRAM))).isFalse();

    for (Unit<Mass> gram :
        List.of(Units.GRAM, MetricUnits.GRAM, MetricPrefix.MILLI(Units.KILOGRAM))) {
      assertThat(QuantityKind.MASS.toSi(Quantities.getQuantity(1000, gram))).isEqualTo(1.0);
    }
    assertThat(QuantityKind.MASS.toSi(Quantities.getQuantity(1, MetricPrefix.KILO(Units.GRAM))))
        .isEqualTo(1.0);
  }

  @Test
  void units_of_ours_equal_those_of_the_engine_where_it_has_them() {
    assertThat(MetricUnits.KILOGRAM).isEqualTo(Units.KILOGRAM);
    assertThat(Units.KILOGRAM).isEqualTo(MetricUnits.KILOGRAM);
    assertThat(MetricUnits.GRAM).isEqualTo(Units.GRAM);
    assertThat(MetricUnits.CUBIC_METRE).isEqualTo(Units.CUBIC_METRE);
    assertThat(MetricUnits.LITRE.isCompatible(Units.LITRE)).isTrue();
    assertThat(MetricUnits.JOULE).isEqualTo(Units.JOULE);
    assertThat(MetricUnits.WATT).isEqualTo(Units.WATT);
    assertThat(MetricUnits.PASCAL).isEqualTo(Units.PASCAL);
    assertThat(MetricUnits.CELSIUS).isEqualTo(Units.CELSIUS);
    assertThat(MetricUnits.KELVIN).isEqualTo(Units.KELVIN);
    assertThat(MetricUnits.METRE).isEqualTo(Units.METRE);
    assertThat(MetricUnits.SQUARE_METRE).isEqualTo(Units.SQUARE_METRE);
    assertThat(MetricUnits.SECOND).isEqualTo(Units.SECOND);
    assertThat(UsCustomaryUnits.pounds(2).to(Units.KILOGRAM).getValue().doubleValue())
        .isCloseTo(0.90718474, within(1e-15));
    assertThat(grams(730)).hasToString("730 g");
  }

  @Test
  void text_that_the_engine_misreads_is_read_right_or_refused() {
    assertThat(QuantityKind.MASS.toSi(PARSER.parseMass("1e3 g"))).isEqualTo(1.0);
    assertThat(QuantityKind.MASS.toSi(PARSER.parseMass("1/3 g")))
        .isCloseTo(1e-3 / 3, within(1e-18));
    assertThatThrownBy(() -> PARSER.parseMass("1,5 kg")).isInstanceOf(ProblemException.class);
    assertThat(PARSER.parseTemperature("200 F").celsius()).isCloseTo(93.3, within(0.04));
    assertThat(PARSER.parseTemperature("70 C").celsius()).isEqualTo(70);
    assertThat(QuantityKind.MASS.toSi(PARSER.parseMass("0.25kg"))).isEqualTo(0.25);
  }

  @Test
  void a_pint_means_the_same_whatever_else_is_loaded() {
    double before = QuantityKind.VOLUME.toSi(PARSER.parseVolume("1 pt US"));
    QuantityKind.VOLUME.toSi(1, ImperialUnits.PINT);

    assertThat(QuantityKind.VOLUME.toSi(PARSER.parseVolume("1 pt US"))).isEqualTo(before);
    assertThatThrownBy(() -> PARSER.parseVolume("1 pt")).isInstanceOf(ProblemException.class);
  }

  @Test
  void spoons_are_exact_parts_of_231_cubic_inches() {
    assertThat(QuantityKind.VOLUME.toSi(768, UsCustomaryUnits.TEASPOON)).isEqualTo(3.785411784e-3);
    assertThat(QuantityKind.VOLUME.toSi(256, UsCustomaryUnits.TABLESPOON))
        .isEqualTo(3.785411784e-3);
  }

  @Test
  void parse_and_format_from_many_threads_do_not_mix() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Callable<Boolean>> work =
          IntStream.range(0, 400)
              .<Callable<Boolean>>mapToObj(i -> () -> roundTrips(i + 0.1 * (i % 10)))
              .toList();
      for (Future<Boolean> done : threads.invokeAll(work)) {
        assertThat(done.get()).isTrue();
      }
    } catch (ExecutionException e) {
      throw new AssertionError(e.getCause());
    } finally {
      threads.shutdownNow();
    }
  }

  private static boolean roundTrips(double grams) {
    String text = QuantityFormatter.exact().format(grams(grams));
    return QuantityKind.MASS.toSi(PARSER.parseMass(text)) == QuantityKind.MASS.toSi(grams(grams));
  }

  @Test
  void units_without_end_do_not_fill_the_memory_and_still_convert() {
    for (int i = 1; i <= 1000; i++) {
      Unit<Mass> odd =
          new TransformedUnit<>("odd", Units.KILOGRAM, MultiplyConverter.ofRational(i, 7));
      assertThat(QuantityKind.MASS.toSi(7, odd)).isCloseTo(i, within(1e-12 * i));
      assertThat(QuantityKind.MASS.fromSi(i, odd)).isCloseTo(7, within(1e-12));
    }
  }

  @Test
  @SuppressWarnings({"unchecked", "rawtypes"})
  void a_unit_of_another_kind_behind_an_unchecked_cast_is_refused() {
    QuantityKind mass = QuantityKind.MASS;

    assertThatThrownBy(() -> mass.toSi(1.0, MetricUnits.LITRE))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("a mass");
  }

  @Test
  void a_number_of_many_digits_is_converted_exactly_and_rounded_once() {
    Quantity<Mass> mass =
        Quantities.getQuantity(new BigDecimal("1000.00000000000000000001"), MetricUnits.GRAM);

    assertThat(QuantityKind.MASS.toSi(mass)).isEqualTo(1.0);
  }

  @Test
  void a_number_that_is_none_is_refused_at_the_door() {
    for (double none : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> QuantityKind.MASS.toSi(none, MetricUnits.GRAM))
          .isInstanceOf(ProblemException.class);
    }
  }
}
