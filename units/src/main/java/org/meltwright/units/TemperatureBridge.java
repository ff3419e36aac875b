// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/** Temperature quantities of the units engine, read as what they say they are. */
final class TemperatureBridge {

  /** Far from any zero point, so that the offset does not cost the difference its digits. */
  private static final double FAR = 1e9;

  private TemperatureBridge() {}

  static TemperaturePoint point(double value, Unit<Temperature> unit) {
    TemperatureScale scale = scale(unit);
    return scale != null
        ? scale.point(value)
        : TemperaturePoint.ofKelvin(unit.getConverterTo(SiUnits.KELVIN).convert(value));
  }

  static double kelvins(double difference, Unit<Temperature> unit) {
    TemperatureScale scale = scale(unit);
    if (scale != null) {
      return scale.difference(difference).kelvin();
    }
    UnitConverter converter = unit.getConverterTo(SiUnits.KELVIN);
    return difference * ((converter.convert(FAR) - converter.convert(0.0)) / FAR);
  }

  private static @Nullable TemperatureScale scale(Unit<Temperature> unit) {
    if (unit.equals(SiUnits.KELVIN)) {
      return TemperatureScale.KELVIN;
    }
    if (unit.equals(SiUnits.CELSIUS)) {
      return TemperatureScale.CELSIUS;
    }
    return "°F".equals(unit.getSymbol()) ? TemperatureScale.FAHRENHEIT : null;
  }

  static ProblemException pointOrDifference(Quantity<Temperature> quantity) {
    return new ProblemException(
        Problem.of(
            UnitsProblem.TEMPERATURE_POINT_OR_DIFFERENCE,
            quantity.getValue() + " " + quantity.getUnit() + ", " + quantity.getScale()));
  }
}
