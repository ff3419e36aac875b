// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A name, a number or a phrase as it is said in English and in German.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Bilingual margin = new Bilingual("margin", "Abstand");
 * margin.in(Locale.GERMANY); // Abstand
 * margin.in(Locale.FRANCE); // margin
 * // a number has no name, but a decimal sign
 * Bilingual half = Bilingual.of(0.5).plus(" kg");
 * half.german(); // 0,5 kg
 * Bilingual.range(half, Bilingual.of("2 kg")).german(); // 0,5 kg bis 2 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param english what an English reader is told
 * @param german what a German reader is told
 * @serial exclude
 */
@SuppressWarnings("InvalidBlockTag") // the serialised form is no API
public record Bilingual(String english, String german) implements Serializable {

  private static final long serialVersionUID = 1L;

  public Bilingual {
    Objects.requireNonNull(english, "english");
    Objects.requireNonNull(german, "german");
  }

  /**
   * Returns what is the same in both languages, such as a person's own name for a thing.
   *
   * @param same the text
   * @return the text in both languages
   */
  public static Bilingual of(String same) {
    return new Bilingual(same, same);
  }

  /**
   * Returns what a writer writes in each language.
   *
   * @param writer writes for a reader of {@link Locale#ENGLISH} and of {@link Locale#GERMAN}
   * @return both texts
   */
  public static Bilingual of(Function<Locale, String> writer) {
    return new Bilingual(writer.apply(Locale.ENGLISH), writer.apply(Locale.GERMAN));
  }

  /**
   * Returns a number with the decimal sign of each language.
   *
   * @param number the number
   * @return for example "0.5" and "0,5"
   */
  public static Bilingual of(double number) {
    return of(reader -> QuantityFormatter.exact().withLocale(reader).format(number));
  }

  /**
   * Returns a share with its basis, in words of each language.
   *
   * @param share the share
   * @return for example "12.5 % by mass" and "12,5 Masse-%"
   */
  public static Bilingual of(MassFraction share) {
    return of(reader -> QuantityFormatter.exact().withLocale(reader).format(share));
  }

  /**
   * Returns a share with its basis, in words of each language.
   *
   * @param share the share
   * @return for example "12.5 % by volume" and "12,5 Vol.-%"
   */
  public static Bilingual of(VolumeFraction share) {
    return of(reader -> QuantityFormatter.exact().withLocale(reader).format(share));
  }

  /**
   * Returns a temperature with the decimal sign of each language.
   *
   * @param point the temperature
   * @return for example "62.5 °C" and "62,5 °C"
   */
  public static Bilingual of(TemperaturePoint point) {
    return of(point.celsius()).plus(" °C");
  }

  /**
   * Returns a quantity in its own unit.
   *
   * @param <Q> the kind as a type
   * @param quantity the quantity
   * @return for example "0.5 lb" and "0,5 lb"
   * @throws ProblemException if it is not finite or of no kind that this library knows
   */
  public static <Q extends Quantity<Q>> Bilingual of(Quantity<Q> quantity) {
    QuantityKind<Q> kind = QuantityKind.of(quantity.getUnit());
    return of(kind, kind.toSi(quantity), quantity.getUnit());
  }

  /**
   * Returns a value in a unit, or in the SI unit if that unit has no symbol here.
   *
   * @param <Q> the kind as a type
   * @param kind the kind
   * @param si the value in the kind's SI unit
   * @param unit the unit to say it in
   * @return for example "0.5 lb" and "0,5 lb"
   * @throws ProblemException if the value is not finite
   */
  public static <Q extends Quantity<Q>> Bilingual of(
      QuantityKind<Q> kind, double si, Unit<Q> unit) {
    Unit<Q> shown = kind.hasSymbol(unit) ? unit : kind.siUnit();
    return of(reader -> QuantityFormatter.exact().withLocale(reader).format(kind, si, shown));
  }

  /**
   * Returns what lies between two ends.
   *
   * @param low the low end
   * @param high the high end
   * @return for example "0.5 kg to 2 kg" and "0,5 kg bis 2 kg"
   */
  public static Bilingual range(Bilingual low, Bilingual high) {
    return new Bilingual(low.english + " to " + high.english, low.german + " bis " + high.german);
  }

  /**
   * Returns several of them in a row.
   *
   * @param parts the parts
   * @return the parts, with ", " between them
   */
  public static Bilingual list(Bilingual... parts) {
    return of(
        reader ->
            Arrays.stream(parts).map(part -> part.in(reader)).collect(Collectors.joining(", ")));
  }

  /**
   * Returns this with something behind it that is the same in both languages, such as a unit.
   *
   * @param same what follows
   * @return both texts, followed by it
   */
  public Bilingual plus(String same) {
    return new Bilingual(english + same, german + same);
  }

  /** Whether a reader is told things in German. */
  static boolean isGerman(Locale reader) {
    return reader.getLanguage().equals(Locale.GERMAN.getLanguage());
  }

  /**
   * Returns the text in a reader's language.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return the text
   */
  public String in(Locale reader) {
    return isGerman(reader) ? german : english;
  }

  /** {@return the English text} */
  @Override
  public String toString() {
    return english;
  }
}
