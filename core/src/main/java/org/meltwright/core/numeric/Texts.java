// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureScale;

/**
 * Numbers as explanations write them: three significant figures, locale-free.
 *
 * <pre>{@code
 * Texts.three(1234.5); // 1230
 * }</pre>
 */
public final class Texts {

  private static final MathContext THREE = new MathContext(3);

  private Texts() {}

  /**
   * Writes a number with three significant figures.
   *
   * @param value the number; not finite is said in words
   * @return the number
   */
  public static String three(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value).round(THREE).stripTrailingZeros().toPlainString()
        : "without end";
  }

  /**
   * Writes a temperature for a reader, to a tenth of a degree.
   *
   * @param point the temperature
   * @param reader whose notation
   * @return the temperature in °C
   */
  public static String celsius(TemperaturePoint point, Locale reader) {
    return QuantityFormatter.ofDecimals(1)
        .withLocale(reader)
        .format(point, TemperatureScale.CELSIUS);
  }
}
