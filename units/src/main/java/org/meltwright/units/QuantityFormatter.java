// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Writes values as text: the unit, the digits and the decimal sign are the caller's.
 *
 * <p>What {@link #exact()} writes, {@link QuantityParser} reads back as the same value: for a
 * quantity the same number in the SI unit to the last bit, in every unit of this library. It takes
 * the fewest digits that do so. Digits are never grouped, and unit symbols are the same in all
 * languages; the basis of a share is said in the reader's.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<Mass> resin = grams(91.25);
 * QuantityFormatter.exact().format(resin); // 91.25 g
 * QuantityFormatter.ofDecimals(1).format(resin); // 91.3 g
 * QuantityFormatter.ofSignificantDigits(3).format(resin, UsCustomaryUnits.OUNCE); // 3.22 oz
 * QuantityFormatter german = QuantityFormatter.exact().withLocale(Locale.GERMANY);
 * german.format(resin); // 91,25 g
 * TemperatureScale celsius = TemperatureScale.CELSIUS;
 * QuantityFormatter.ofDecimals(1).format(ofFahrenheit(200), celsius); // 93.3 °C
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class QuantityFormatter {

  private static final int MOST_DIGITS = 60;

  /** A number of more digits is shortened; a long has 19, a double printed whole has 17. */
  private static final int MOST_KEPT = 19;

  private enum Digits {
    EXACT,
    SIGNIFICANT,
    DECIMALS
  }

  private final Digits digits;
  private final int count;
  private final DecimalSign decimalSign;
  private final boolean german;

  /**
   * Returns the formatter whose text reads back as the same value.
   *
   * @return the formatter, with a decimal point
   */
  public static QuantityFormatter exact() {
    return new QuantityFormatter(Digits.EXACT, 0, DecimalSign.POINT, false);
  }

  /**
   * Returns a formatter that rounds to a number of significant digits, halves away from zero.
   *
   * @param count the digits, from 1 to 60
   * @return the formatter, with a decimal point
   * @throws ProblemException if the count lies outside that range
   */
  public static QuantityFormatter ofSignificantDigits(int count) {
    UnitsProblem.CHECK.between(count, 1, MOST_DIGITS, "number of digits");
    return new QuantityFormatter(Digits.SIGNIFICANT, count, DecimalSign.POINT, false);
  }

  /**
   * Returns a formatter that rounds to a number of decimals, halves away from zero.
   *
   * @param count the decimals, from 0 to 60
   * @return the formatter, with a decimal point
   * @throws ProblemException if the count lies outside that range
   */
  public static QuantityFormatter ofDecimals(int count) {
    UnitsProblem.CHECK.between(count, 0, MOST_DIGITS, "number of digits");
    return new QuantityFormatter(Digits.DECIMALS, count, DecimalSign.POINT, false);
  }

  private QuantityFormatter(Digits digits, int count, DecimalSign decimalSign, boolean german) {
    this.digits = digits;
    this.count = count;
    this.decimalSign = decimalSign;
    this.german = german;
  }

  /**
   * Returns a formatter that writes a decimal comma, for {@link QuantityParser#withDecimalComma()}.
   *
   * @return the formatter
   */
  public QuantityFormatter withDecimalComma() {
    return new QuantityFormatter(digits, count, DecimalSign.COMMA, german);
  }

  /**
   * Returns a formatter that writes for a reader: the decimal sign of a locale, by the table of
   * {@link DecimalSign#of}, and German words for {@code de}.
   *
   * @param locale the reader's locale
   * @return the formatter
   */
  public QuantityFormatter withLocale(Locale locale) {
    return new QuantityFormatter(digits, count, DecimalSign.of(locale), Bilingual.isGerman(locale));
  }

  /**
   * Writes a number that has no unit.
   *
   * @param number the number
   * @return for example "0.5"; what is not finite as {@link Double#toString} writes it
   */
  public String format(double number) {
    return Double.isFinite(number)
        ? plain(rounded(BigDecimal.valueOf(number)))
        : Double.toString(number);
  }

  /**
   * Writes a quantity in its own unit.
   *
   * @param <Q> the kind as a type
   * @param quantity the quantity, of one of the kinds of {@link QuantityKind}
   * @return for example "730 g"
   * @throws ProblemException if its unit has no symbol here
   */
  public <Q extends Quantity<Q>> String format(Quantity<Q> quantity) {
    return format(quantity, quantity.getUnit());
  }

  /**
   * Writes a quantity in a unit.
   *
   * @param <Q> the kind as a type
   * @param quantity the quantity, of one of the kinds of {@link QuantityKind}
   * @param unit the unit wanted
   * @return for example "0.73 kg"
   * @throws ProblemException if the unit has no symbol here, or the value is not finite
   */
  public <Q extends Quantity<Q>> String format(Quantity<Q> quantity, Unit<Q> unit) {
    QuantityKind<Q> kind = QuantityKind.of(unit);
    UnitDefinition<Q> definition = kind.known(unit);
    Number value = quantity.getValue();
    double si = kind.toSi(quantity);
    boolean own = quantity.getUnit() == unit && digits == Digits.EXACT;
    BigDecimal number = asItStands(value);
    return own && number.precision() <= MOST_KEPT
        ? join(plain(number), definition.symbol())
        : format(si, definition);
  }

  /** A number whose digits a text keeps; trailing zeros are none. */
  private static BigDecimal asItStands(Number value) {
    BigDecimal precise = ManyDigits.of(value);
    return precise == null ? BigDecimal.valueOf(value.doubleValue()) : precise.stripTrailingZeros();
  }

  /**
   * Writes a number in the SI unit in another unit.
   *
   * @param <Q> the kind as a type
   * @param kind the kind
   * @param si the value in the kind's SI unit, finite
   * @param unit the unit wanted
   * @return for example "0.73 kg"
   * @throws ProblemException if the unit has no symbol here, or the value is not finite
   */
  public <Q extends Quantity<Q>> String format(QuantityKind<Q> kind, double si, Unit<Q> unit) {
    return format(UnitsProblem.CHECK.finite(si, kind.noun()), kind.known(unit));
  }

  /**
   * Writes a range of quantities in a unit.
   *
   * @param <Q> the kind as a type
   * @param range the range
   * @param unit the unit wanted
   * @return for example "0.82–0.86 g/ml"
   * @throws ProblemException if the unit has no symbol here
   */
  public <Q extends Quantity<Q>> String format(QuantityRange<Q> range, Unit<Q> unit) {
    UnitDefinition<Q> definition = range.kind().known(unit);
    return dashed(number(range.lowSi(), definition), number(range.highSi(), definition))
        + ' '
        + definition.symbol();
  }

  /**
   * Writes a temperature.
   *
   * @param point the temperature
   * @param scale the scale wanted
   * @return for example "93.3 °C"
   */
  public String format(TemperaturePoint point, TemperatureScale scale) {
    return join(number(point, scale), scale.symbol());
  }

  /**
   * Writes a temperature range; one point for a range of a single one.
   *
   * @param range the range
   * @param scale the scale wanted
   * @return for example "62–65 °C"
   */
  public String format(TemperatureRange range, TemperatureScale scale) {
    return join(dashed(number(range.low(), scale), number(range.high(), scale)), scale.symbol());
  }

  /**
   * Writes a temperature difference.
   *
   * @param difference the difference
   * @param scale the scale whose degrees are wanted
   * @return for example "5 K"; "9 °F" is read back as a difference only where one is asked for
   */
  public String format(TemperatureDifference difference, TemperatureScale scale) {
    return join(
        number(scale.exactDifference(difference.kelvin()), difference.kelvin(), scale::kelvins),
        scale.symbol());
  }

  /**
   * Writes a mass fraction in per cent.
   *
   * @param fraction the fraction
   * @return for example "10 % by mass", or "10 Masse-%" in German
   */
  public String format(MassFraction fraction) {
    return join(percent(fraction.value()), german ? "Masse-%" : "% by mass");
  }

  /**
   * Writes a volume fraction in per cent.
   *
   * @param fraction the fraction
   * @return for example "10 % by volume", or "10 Vol.-%" in German
   */
  public String format(VolumeFraction fraction) {
    return join(percent(fraction.value()), german ? "Vol.-%" : "% by volume");
  }

  /**
   * Writes a mixing ratio with its sides.
   *
   * @param ratio the ratio
   * @return for example "1:8 resin:wax"
   */
  public String format(MixingRatio ratio) {
    return signed(plain(rounded(BigDecimal.valueOf(ratio.firstParts()))))
        + ':'
        + signed(plain(rounded(BigDecimal.valueOf(ratio.secondParts()))))
        + ' '
        + ratio.firstSide()
        + ':'
        + ratio.secondSide();
  }

  private <Q extends Quantity<Q>> String format(double si, UnitDefinition<Q> definition) {
    return join(number(si, definition), definition.symbol());
  }

  private String number(double si, UnitDefinition<?> unit) {
    return digits == Digits.EXACT
        ? number(
            unit.fromSiExact(new BigDecimal(si)),
            si,
            d -> ManyDigits.of(d) != null ? unit.toSi(d) : unit.toSi(d.doubleValue()))
        : plain(rounded(BigDecimal.valueOf(unit.fromSi(si))));
  }

  private String percent(double share) {
    return number(
        new BigDecimal(share).movePointRight(2),
        share,
        d -> ManyDigits.of(d) != null ? d.movePointLeft(2).doubleValue() : d.doubleValue() / 100);
  }

  private String number(TemperaturePoint point, TemperatureScale scale) {
    return number(scale.exactDegrees(point.celsius()), point.celsius(), scale::celsius);
  }

  /** Digits as asked for; exact ones are the fewest from which {@code back} finds the target. */
  private String number(BigDecimal exact, double target, ToDoubleFunction<BigDecimal> back) {
    return plain(digits == Digits.EXACT ? ExactDigits.find(exact, target, back) : rounded(exact));
  }

  private BigDecimal rounded(BigDecimal value) {
    return switch (digits) {
      case EXACT -> value;
      case SIGNIFICANT -> value.round(new MathContext(count, RoundingMode.HALF_UP));
      case DECIMALS -> value.setScale(count, RoundingMode.HALF_UP);
    };
  }

  /** Without an exponent where a person would write none. */
  private String plain(BigDecimal number) {
    BigDecimal shown = digits == Digits.DECIMALS ? number : number.stripTrailingZeros();
    int magnitude = shown.precision() - shown.scale();
    boolean readable = shown.signum() == 0 || (magnitude <= 21 && magnitude > -9);
    String text =
        readable || digits == Digits.DECIMALS
            ? shown.toPlainString()
            : shown.toString().replace("E+", "e").replace('E', 'e');
    return signed(text);
  }

  private String signed(String text) {
    return decimalSign == DecimalSign.COMMA ? text.replace('.', ',') : text;
  }

  private static String dashed(String low, String high) {
    return low.equals(high) ? low : low + '–' + high;
  }

  private static String join(String number, String symbol) {
    return number + ' ' + symbol;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof QuantityFormatter that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(digits, count, decimalSign, german);
  }

  @Override
  public String toString() {
    return "formatter of quantities by " + digits + " " + count + ", decimal sign " + decimalSign;
  }

  /** The fewest digits from which reading finds a value again, bit for bit. */
  private static final class ExactDigits {

    private static final int MOST = 40;
    private static final int LONG = 20;

    private ExactDigits() {}

    /** Shortens a number to the fewest digits from which {@code back} leads to the target. */
    static BigDecimal find(BigDecimal exact, double target, ToDoubleFunction<BigDecimal> back) {
      for (int digits = 1; digits <= MOST; digits++) {
        BigDecimal candidate = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
        if (back.applyAsDouble(candidate) == target) {
          return candidate;
        }
      }
      return written(exact);
    }

    /**
     * A number whose few digits a double would take for another value: a twentieth digit, too small
     * to change the value, has it read exactly.
     */
    private static BigDecimal written(BigDecimal exact) {
      BigDecimal last = BigDecimal.ONE.scaleByPowerOfTen(exact.precision() - exact.scale() - LONG);
      return exact.signum() < 0 ? exact.subtract(last) : exact.add(last);
    }
  }
}
