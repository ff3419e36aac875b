// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The guards of one package's values: each names what it guards in the reader's language and
 * answers in the unit that was given.
 *
 * <p>A name is English, as in "mass in kg"; its German stands in the message bundle beside the
 * package, under {@code what.} and the name with hyphens for spaces. A name without German is told
 * as it is.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Check check = Check.beside(UnitsProblem.class);
 * check.between(0.5, 0, 1, "mass fraction"); // 0.5
 * // the answer is in grams: 0 g to 1000 g
 * check.between(grams(2000), 0, 1, "mass"); // throws ProblemException
 * check.between(1.5, 0, 1, "mass fraction"); // throws ProblemException
 * check.name("mass fraction").german(); // Massenanteil
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 *
 * <p>Compared by identity: a package has one, in a constant.
 */
public final class Check {

  /** Below it lies nothing that a bound means: a low end of this size stands for "above zero". */
  private static final double NEXT_TO_NOTHING = 1e-300;

  private static final MathContext DIGITS = new MathContext(13);

  private final Messages names;

  /**
   * Returns the guards whose names stand beside a class.
   *
   * @param anchor a class in the package that holds the bundle
   * @return the guards
   */
  public static Check beside(Class<?> anchor) {
    return new Check(Messages.beside(anchor));
  }

  private Check(Messages names) {
    this.names = names;
  }

  /**
   * Returns the name of a thing in both languages.
   *
   * @param english the English name
   * @return the name, with the German that the bundle has for it
   */
  public Bilingual name(String english) {
    String key = "what." + english.replace(' ', '-');
    return new Bilingual(english, names.find(key, Locale.GERMAN).orElse(english));
  }

  /**
   * Guards a number against NaN and infinity.
   *
   * @param value the number
   * @param name its name with its unit, such as "mass in kg"
   * @return the number
   * @throws ProblemException if it is not finite
   */
  public double finite(double value, String name) {
    return finite(value, name, "");
  }

  private double finite(double value, String name, String of) {
    if (Double.isFinite(value)) {
      return value;
    }
    throw new ProblemException(
        Problem.of(UnitsProblem.NUMBER_NOT_FINITE, Double.toString(value))
            .with("what", name(name))
            .with("of", of));
  }

  /**
   * Guards a number between two limits, both allowed.
   *
   * @param value the number
   * @param low the lowest value allowed
   * @param high the highest value allowed
   * @param name its name with its unit, such as "mass in kg"
   * @return the number
   * @throws ProblemException if it is not finite or lies outside
   */
  public double between(double value, double low, double high, String name) {
    return between(value, low, high, name, "");
  }

  /**
   * Guards a number between two limits, both allowed, of one of several things.
   *
   * @param value the number
   * @param low the lowest value allowed
   * @param high the highest value allowed
   * @param name its name with its unit, such as "mass in kg"
   * @param of whose it is, in the person's own words
   * @return the number
   * @throws ProblemException if it is not finite or lies outside
   */
  public double between(double value, double low, double high, String name, String of) {
    if (finite(value, name, of) >= low && value <= high) {
      return value;
    }
    throw outside(name, of, value, low, high, Bilingual::of);
  }

  /**
   * Guards a quantity between two limits, both allowed; the answer is in the quantity's own unit.
   *
   * @param <Q> the kind as a type
   * @param value the quantity
   * @param lowSi the lowest value allowed, in the kind's SI unit
   * @param highSi the highest value allowed, in the kind's SI unit
   * @param name its name without a unit, such as "mass of a cake"
   * @return the value in the kind's SI unit
   * @throws ProblemException if it is not finite or lies outside
   */
  public <Q extends Quantity<Q>> double between(
      Quantity<Q> value, double lowSi, double highSi, String name) {
    return between(value, lowSi, highSi, name, "");
  }

  /**
   * Guards a quantity of one of several things between two limits, both allowed.
   *
   * @param <Q> the kind as a type
   * @param value the quantity
   * @param lowSi the lowest value allowed, in the kind's SI unit
   * @param highSi the highest value allowed, in the kind's SI unit
   * @param name its name without a unit, such as "mass of a cake"
   * @param of whose it is, in the person's own words
   * @return the value in the kind's SI unit
   * @throws ProblemException if it is not finite or lies outside
   */
  public <Q extends Quantity<Q>> double between(
      Quantity<Q> value, double lowSi, double highSi, String name, String of) {
    QuantityKind<Q> kind = QuantityKind.of(value.getUnit());
    double si = finite(kind.toSi(value), name, of);
    if (si >= lowSi && si <= highSi) {
      return si;
    }
    Unit<Q> unit = value.getUnit();
    throw outside(name, of, si, lowSi, highSi, end -> Bilingual.of(kind, end, unit));
  }

  /**
   * Guards a name, an id or a reason against blank text.
   *
   * @param text the text
   * @param name what it names, such as "vessel"
   * @return the text as it is
   * @throws ProblemException if it is empty or blank
   */
  public String named(String text, String name) {
    return named(text, name, "");
  }

  /**
   * Guards a name of one of several things against blank text.
   *
   * @param text the text
   * @param name what it names, such as "name"
   * @param of whose it is, in the person's own words
   * @return the text as it is
   * @throws ProblemException if it is empty or blank
   */
  public String named(String text, String name, String of) {
    if (text.isBlank()) {
      throw new ProblemException(
          Problem.of(UnitsProblem.NAME_BLANK, text).with("what", name(name)).with("of", of));
    }
    return text;
  }

  /**
   * Guards the ends of a range, which may be equal.
   *
   * @param low the low end
   * @param high the high end
   * @param name its name with its unit, such as "mass in kg"
   * @throws ProblemException if the low end lies above the high one
   */
  public void ordered(double low, double high, String name) {
    if (low > high) {
      throw reversed(Bilingual.range(Bilingual.of(low), Bilingual.of(high)), name);
    }
  }

  /**
   * Returns the exception for ends that are not in order.
   *
   * @param found the ends as they were given, as each reader reads them
   * @param name what has these ends
   * @return the exception, to be thrown
   */
  public ProblemException reversed(Bilingual found, String name) {
    return new ProblemException(
        Problem.of(UnitsProblem.RANGE_REVERSED, found).with("what", name(name)));
  }

  private ProblemException outside(
      String name,
      String of,
      double value,
      double low,
      double high,
      DoubleFunction<Bilingual> written) {
    Problem problem =
        Problem.of(UnitsProblem.VALUE_OUT_OF_RANGE, written.apply(value))
            .with("what", name(name))
            .with("of", of)
            .with("low", low(low, written));
    return new ProblemException(low == high ? problem : problem.with("high", high(high, written)));
  }

  /** The smallest numbers there are stand for "above zero". */
  private static Bilingual low(double low, DoubleFunction<Bilingual> written) {
    return low > 0 && low < NEXT_TO_NOTHING
        ? phrase("range.above", written.apply(0))
        : written.apply(low);
  }

  /** A hair below a round number stands for that number, itself not allowed. */
  private static Bilingual high(double high, DoubleFunction<Bilingual> written) {
    if (!Double.isFinite(high)) {
      return written.apply(high);
    }
    double round = BigDecimal.valueOf(high).round(DIGITS).doubleValue();
    return round != high && Math.nextUp(high) == round
        ? phrase("range.below", written.apply(round))
        : written.apply(high);
  }

  private static Bilingual phrase(String key, Bilingual end) {
    return Bilingual.of(
        reader -> Messages.beside(Check.class).text(key, reader, Map.of("end", end.in(reader))));
  }
}
