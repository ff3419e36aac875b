// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import org.joda.money.BigMoneyProvider;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Estimate;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/**
 * How pages and their pictures speak: words, and numbers with their units, in the reader's language
 * and its notation.
 *
 * <p>The pages' own words stand in one file for each language, {@code words_en.properties} beside
 * this class; what the library says itself comes in English where it does not speak the language.
 *
 * <p>Immutable and thread-safe.
 */
public final class Say {

  /** English words and notation. */
  public static final Say ENGLISH = in(Locale.ENGLISH);

  private static final double GRAMS = 1000;
  private static final double OUNCE = 0.028349523125;
  private static final int MOST_DECIMALS = 6;
  private static final double MINUTE = 60;
  private static final double HOUR = 3600;

  private final Locale locale;
  private final Vocabulary words;
  private final String decimalSign;

  /**
   * Returns how pages speak a language.
   *
   * @param locale the reader's language
   * @return its words, or the English ones if there are none
   */
  public static Say in(Locale locale) {
    return find(locale.getLanguage()).orElseGet(() -> find("en").orElseThrow());
  }

  /**
   * Looks for a language.
   *
   * @param language its code after ISO 639, such as "de"
   * @return how pages speak it; empty if there is no file of its words
   */
  public static Optional<Say> find(String language) {
    return language.matches("[a-z]{2,8}")
        ? Vocabulary.find(language).map(v -> new Say(Locale.forLanguageTag(language), v))
        : Optional.empty();
  }

  private Say(Locale locale, Vocabulary words) {
    this.locale = locale;
    this.words = words;
    this.decimalSign = words.words("decimal-sign");
  }

  /**
   * Returns the reader's language.
   *
   * @return the language, for texts of the library
   */
  public Locale locale() {
    return locale;
  }

  /**
   * Says something.
   *
   * @param key the key of the words
   * @param places the name of a place in them, what stands in it, the name of the next, and so on
   * @return the words
   * @throws java.util.MissingResourceException if the language lacks them, a defect of ours
   */
  public String words(String key, Object... places) {
    return words(Phrase.of(key, places));
  }

  /**
   * Says several things.
   *
   * @param keys the keys of the words, which have no places
   * @return the words of each
   */
  public List<String> all(String... keys) {
    return Stream.of(keys).map(this::words).toList();
  }

  /**
   * Says something.
   *
   * @param phrase what is to be said
   * @return the words
   * @throws java.util.MissingResourceException if the language lacks them, a defect of ours
   */
  public String words(Phrase phrase) {
    Map<String, String> places = new LinkedHashMap<>();
    phrase.places().forEach((name, value) -> places.put(name, written(value)));
    return words.words(phrase.key(), places);
  }

  private String written(Object value) {
    if (value instanceof Phrase phrase) {
      return words(phrase);
    }
    if (value instanceof Material material) {
      return material.name(locale);
    }
    if (value instanceof PropertyKey<?> key) {
      return property(key);
    }
    if (value instanceof Collection<?> several) {
      return several.stream().map(this::written).collect(Collectors.joining("; "));
    }
    return value.toString();
  }

  /**
   * Says how many there are, in the singular or the plural.
   *
   * @param key the key, to which ".one" or ".many" is added; its place is {@code {count}}
   * @param count how many
   * @return such as "2 things not assessed"
   */
  public String count(String key, long count) {
    return words(key + (count == 1 ? ".one" : ".many"), "count", count);
  }

  /**
   * Says a constant.
   *
   * @param constant the constant; its words stand under its type's and its own name
   * @return its words
   */
  public String word(Enum<?> constant) {
    return words(id(constant.getDeclaringClass().getSimpleName()) + "." + id(constant.name()));
  }

  private static String id(String name) {
    return name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Says what the library has in two languages.
   *
   * @param text the text
   * @return in the reader's language, or else in English
   */
  public String in(Bilingual text) {
    return text.in(locale);
  }

  /**
   * Says what a property is called; an id stands in for what has no other name.
   *
   * @param key the property
   * @return such as "liquid density"
   */
  public String property(PropertyKey<?> key) {
    String name = in(key.inWords()).replace(" (" + key.id() + ")", "");
    return name.equals(key.id()) ? name.replace('-', ' ') : name;
  }

  /**
   * Says a row of things.
   *
   * @param parts the things
   * @return such as "wax, resin and oil"
   */
  public String list(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : words("and", "first", String.join(", ", parts.subList(0, last)), "last", parts.get(last));
  }

  /**
   * Writes a day.
   *
   * @param day the day
   * @return such as "2026-12-05" or "05.12.2026"
   */
  public String day(LocalDate day) {
    return day.format(DateTimeFormatter.ofPattern(words("day"), Locale.ROOT));
  }

  /**
   * Writes money to its smallest coin.
   *
   * @param money the money
   * @return such as "EUR 19.80" or "19,80 EUR"
   */
  public String money(BigMoneyProvider money) {
    BigDecimal amount = money.toBigMoney().getAmount();
    int places = Math.max(0, money.toBigMoney().getCurrencyUnit().getDecimalPlaces());
    return money(
        money.toBigMoney().getCurrencyUnit().getCode(),
        amount.setScale(Math.max(places, amount.stripTrailingZeros().scale())).toPlainString());
  }

  private String money(String currency, String amount) {
    return words("money", "currency", currency, "amount", amount.replace(".", decimalSign));
  }

  /**
   * Writes the price of a package.
   *
   * @param price the price
   * @return such as "500.0 g for EUR 11.60"
   */
  public String packed(Price price) {
    return words(
        "package", "mass", grams(price.packageKilograms()), "money", money(price.amount()));
  }

  /**
   * Writes a mass as the balance shows it: to as many decimals as its scale interval has, in grams,
   * or in ounces where the interval is one of ounces.
   *
   * @param kilograms the mass in kg
   * @param intervalKilograms the scale interval in kg
   * @return such as "91.3 g"
   */
  public String grams(double kilograms, double intervalKilograms) {
    int grams = decimalsOf(intervalKilograms * GRAMS);
    int ounces = decimalsOf(intervalKilograms / OUNCE);
    if (grams < MOST_DECIMALS) {
      return decimals(kilograms * GRAMS, grams) + " g";
    }
    if (ounces == MOST_DECIMALS) {
      return decimals(kilograms * GRAMS, 2) + " g"; // an interval of neither grams nor ounces
    }
    return decimals(kilograms / OUNCE, ounces) + " oz";
  }

  /**
   * Writes a mass in grams to a tenth.
   *
   * @param kilograms the mass in kg
   * @return such as "91.3 g"
   */
  public String grams(double kilograms) {
    return decimals(kilograms * GRAMS, 1) + " g";
  }

  /**
   * Writes a scale interval.
   *
   * @param kilograms the interval in kg
   * @return such as "0.1 g"
   */
  public String interval(double kilograms) {
    return grams(kilograms, kilograms);
  }

  /**
   * Writes an estimate to three significant figures, to two where it is rough: where its high end
   * is twice its low end or more.
   *
   * @param estimate the estimate
   * @param factor what turns its SI value into the unit
   * @param unit the unit
   * @return the central value, and its bounds where they differ
   */
  public String estimate(Estimate<?> estimate, double factor, String unit) {
    int figures = figures(estimate);
    String central = significant(estimate.centralSi() * factor, figures) + " " + unit;
    return estimate.lowSi() == estimate.highSi()
        ? central
        : central
            + " ("
            + span(
                significant(estimate.lowSi() * factor, figures),
                significant(estimate.highSi() * factor, figures))
            + ")";
  }

  private static int figures(Estimate<?> estimate) {
    return estimate.highSi() >= 2 * estimate.lowSi() && estimate.highSi() > estimate.lowSi()
        ? 2
        : 3;
  }

  /**
   * Writes a share.
   *
   * @param share the share, from 0 to 1
   * @return per cent, such as "4.00 %" or "12.5 %"
   */
  public String percent(double share) {
    return decimals(share * 100, share < 0.1 ? 2 : 1) + " %";
  }

  /**
   * Writes a temperature to a tenth.
   *
   * @param point the temperature
   * @return such as "90.0 °C"
   */
  public String celsius(TemperaturePoint point) {
    return decimals(point.celsius(), 1) + " °C";
  }

  /**
   * Writes a range as its source states it.
   *
   * @param range the range
   * @return such as "62 to 65 °C" or "62.5 to 65.0 °C"; one temperature where both ends are one
   */
  public String celsius(TemperatureRange range) {
    if (celsius(range.low()).equals(celsius(range.high()))) {
      return celsius(range.low());
    }
    int count = isWhole(range.low()) && isWhole(range.high()) ? 0 : 1;
    return span(decimals(range.low().celsius(), count), decimals(range.high().celsius(), count))
        + " °C";
  }

  /**
   * Writes a temperature for an axis.
   *
   * @param point the temperature
   * @return its number, such as "20" or "22.5"
   */
  public String degrees(TemperaturePoint point) {
    return decimals(point.celsius(), isWhole(point) ? 0 : 1);
  }

  private boolean isWhole(TemperaturePoint point) {
    return decimals(point.celsius(), 1).endsWith("0");
  }

  /**
   * Writes a temperature on both scales.
   *
   * @param point the temperature
   * @return such as "90.0 °C / 194.0 °F"
   */
  public String temperature(TemperaturePoint point) {
    int count = places(point.celsius());
    return decimals(point.celsius(), count)
        + " °C / "
        + decimals(point.fahrenheit(), count)
        + " °F";
  }

  /** One decimal for what is a whole tenth, else two: 93.25 must not read as a limit of 93.3. */
  private static int places(double number) {
    return Math.abs(number * 10 - Math.rint(number * 10)) < 1e-6 ? 1 : 2;
  }

  /**
   * Writes a temperature of which only a lower bound is known.
   *
   * @param point the lower bound
   * @return such as "at least 95.0 °C; how far it rises above is not known"
   */
  public String atLeast(TemperaturePoint point) {
    return words("at-least", "low", celsius(point));
  }

  /**
   * Writes a range that is an estimate, to whole degrees.
   *
   * @param range the range
   * @return such as "71 to 75 °C"
   */
  public String temperature(TemperatureRange range) {
    String low = decimals(range.low().celsius(), 0);
    String high = decimals(range.high().celsius(), 0);
    return (low.equals(high) ? low : span(low, high)) + " °C";
  }

  /**
   * Writes a time to three figures.
   *
   * @param seconds the time in s; may be infinite
   * @return such as "12.5 s", "1.50 min" or "no end"
   */
  public String time(double seconds) {
    return time(seconds, 3);
  }

  private String time(double seconds, int figures) {
    if (Double.isInfinite(seconds)) {
      return words("time.no-end");
    }
    if (seconds < MINUTE) {
      return significant(seconds, figures) + " s";
    }
    return seconds < HOUR
        ? significant(seconds / MINUTE, figures) + " min"
        : significant(seconds / HOUR, figures) + " h";
  }

  /**
   * Writes an estimate of a time, to two figures where it is rough.
   *
   * @param time the estimate
   * @return the central value, and its bounds where they differ
   */
  public String time(Estimate<Time> time) {
    int figures = figures(time);
    String central = time(time.centralSi(), figures);
    return time.lowSi() == time.highSi()
        ? central
        : central + " (" + span(time(time.lowSi(), figures), time(time.highSi(), figures)) + ")";
  }

  /**
   * Writes a difference with its sign turned into words.
   *
   * @param margin how far something lies below a limit; negative above it
   * @return such as "3.7 K above it"
   */
  public String margin(TemperatureDifference margin) {
    double kelvin = Math.abs(margin.kelvin());
    String size = decimals(kelvin, places(kelvin)) + " K";
    return words(margin.isNegative() ? "margin.above" : "margin.below", "size", size);
  }

  /**
   * Writes a price per kilogram.
   *
   * @param price the price
   * @return money, such as "EUR 19.80"
   */
  public String perKilogram(UnitPrice price) {
    return money(price.perKilogramRounded());
  }

  /**
   * Writes three significant figures, for what is an estimate.
   *
   * @param value the value
   * @return its digits, such as "71.2" or "1230"
   */
  public String significant(double value) {
    return significant(value, 3);
  }

  private String significant(double value, int figures) {
    if (value == 0) {
      return "0";
    }
    int digits = figures - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
    double step = Math.pow(10, -digits);
    return decimals(Math.rint(value / step) * step, Math.max(0, digits));
  }

  /**
   * Writes a number.
   *
   * @param value the number
   * @param count how many decimals, from 0
   * @return its digits; never "-0"
   */
  public String decimals(double value, int count) {
    String text = String.format(Locale.ROOT, "%." + count + "f", value);
    String number = text.matches("-0(\\.0+)?") ? text.substring(1) : text;
    return number.replace(".", decimalSign);
  }

  /**
   * Writes the numbers of a text of the library, which have a decimal point.
   *
   * @param text the text
   * @return the same with the reader's decimal sign
   */
  public String numbers(String text) {
    return text.replaceAll("(?<=\\d)\\.(?=\\d)", decimalSign);
  }

  /**
   * Writes what lies between two ends.
   *
   * @param low the low end
   * @param high the high end
   * @return such as "0.2 to 0.5"
   */
  public String span(String low, String high) {
    return words("span", "low", low, "high", high);
  }

  private static int decimalsOf(double interval) {
    int count = 0;
    while (count < MOST_DECIMALS && Math.abs(interval - Math.rint(interval)) > 1e-9 * interval) {
      interval *= 10;
      count++;
    }
    return count;
  }
}
