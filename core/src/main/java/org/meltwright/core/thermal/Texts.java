// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.meltwright.units.Estimate;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;
import org.meltwright.units.TemperatureScale;

/** Numbers as explanations write them: three significant figures, locale-free. */
final class Texts {

  private static final MathContext THREE = new MathContext(3);

  private Texts() {}

  static String three(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value).round(THREE).stripTrailingZeros().toPlainString()
        : "without end";
  }

  /** For a reader, to a tenth of a degree. */
  static String celsius(TemperaturePoint point, Locale reader) {
    return QuantityFormatter.ofDecimals(1)
        .withLocale(reader)
        .format(point, TemperatureScale.CELSIUS);
  }

  static String range(TemperatureRange range) {
    return String.format(
        Locale.ROOT, "%.1f and %.1f °C", range.low().celsius(), range.high().celsius());
  }

  static String range(TemperatureDifference low, TemperatureDifference high) {
    return String.format(Locale.ROOT, "%.1f to %.1f K", low.kelvin(), high.kelvin());
  }

  static String estimate(Estimate<?> estimate, double divisor, String unit) {
    return three(estimate.lowSi() / divisor)
        + " / "
        + three(estimate.centralSi() / divisor)
        + " / "
        + three(estimate.highSi() / divisor)
        + " "
        + unit;
  }
}
