// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Check;
import org.meltwright.units.Messages;

/**
 * What a number stands for: its name in both languages, its unit, and how a maker comes to know it
 * better.
 *
 * <p>The English name stands in the code; the German one stands in the message bundle beside the
 * class that says it, under {@code what.} and the name with hyphens for spaces, and so does what to
 * do, under {@code measure.}, with a place {@code {share}} for how much it decides. Both are looked
 * up when asked.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Symbol cup = Symbol.beside(Symbol.class, "volume of the cup", "m³");
 * cup.name(); // volume of the cup
 * cup.of(new Bilingual("tin", "Dose")).name(); // volume of the cup (tin)
 * // nobody has written down how
 * cup.advice("all of this range", Locale.ENGLISH).isPresent(); // false
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Symbol implements Expr {

  private static final int USUAL_DIGITS = 5;
  private static final int MOST_DIGITS = 17;

  private final Class<?> anchor;
  private final String english;
  private final String unit;
  private final int digits;
  private final @Nullable Bilingual whose;
  private final String sign;

  /**
   * Returns what a number stands for.
   *
   * @param anchor a class in the package that holds the bundle
   * @param name the English name
   * @param unit the unit of the number; empty for a pure number
   * @return the symbol
   * @throws org.meltwright.units.ProblemException if the name is blank
   */
  public static Symbol beside(Class<?> anchor, String name, String unit) {
    return new Symbol(anchor, name, unit, USUAL_DIGITS, null, name);
  }

  private Symbol(
      Class<?> anchor,
      String english,
      String unit,
      int digits,
      @Nullable Bilingual whose,
      String sign) {
    this.anchor = anchor;
    this.english = EstimateInput.CHECK.named(english, "name");
    this.unit = unit;
    this.digits = (int) EstimateInput.CHECK.between(digits, 1, MOST_DIGITS, "digits");
    this.whose = whose;
    this.sign = sign;
  }

  /**
   * Returns the same of one of several things.
   *
   * @param thing whose it is, such as the name of a material
   * @return the symbol of that thing
   */
  public Symbol of(Bilingual thing) {
    return new Symbol(anchor, english, unit, digits, thing, sign);
  }

  /**
   * Returns the same of which another number of digits is worth showing.
   *
   * @param shown the significant digits, from 1 to 17; 5 if nothing else is said
   * @return the symbol
   * @throws org.meltwright.units.ProblemException if the number of digits lies outside that range
   */
  public Symbol withDigits(int shown) {
    return new Symbol(anchor, english, unit, shown, whose, sign);
  }

  /**
   * Returns the same with the letter that stands for it in a formula.
   *
   * @param letter the letter, such as "ρ"
   * @return the symbol, equal to this one
   */
  public Symbol withSign(String letter) {
    return new Symbol(anchor, english, unit, digits, whose, letter);
  }

  /**
   * Returns what stands for it in a formula.
   *
   * @return a letter, or the English name if there is none; how it is written, not what it is: it
   *     does not count when two symbols are compared
   */
  public String sign() {
    return sign;
  }

  /**
   * Returns how many significant digits are worth showing.
   *
   * @return the digits
   */
  public int digits() {
    return digits;
  }

  /**
   * Returns whose it is.
   *
   * @return one of several things; empty if there is but one
   */
  public Optional<Bilingual> whose() {
    return Optional.ofNullable(whose);
  }

  /**
   * Tells whether another symbol is this one of one of several things.
   *
   * @param other the other symbol
   * @return for example true for the mass of a line, asked of the mass
   */
  public boolean isOneOf(Symbol other) {
    return other.whose != null && of(other.whose).equals(other) && whose == null;
  }

  /**
   * Returns the unit.
   *
   * @return for example "W/(m K)"; empty for a pure number
   */
  public String unit() {
    return unit;
  }

  /** {@return the name in both languages, followed by whose it is} */
  public Bilingual name() {
    Bilingual name = Check.beside(anchor).name(english);
    return whose == null
        ? name
        : new Bilingual(
            name.english() + " (" + whose.english() + ")",
            name.german() + " (" + whose.german() + ")");
  }

  /**
   * Returns what to do to know it better.
   *
   * @param share how much it decides, in words, such as "two thirds of this range"
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return a sentence or two; empty if none is written down
   */
  public Optional<String> advice(String share, Locale reader) {
    String of = whose == null ? "" : whose.in(reader);
    return Messages.beside(anchor)
        .find("measure." + english.replace(' ', '-'), reader, Map.of("share", share, "of", of));
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(anchor.getPackageName(), english, unit, digits, whose);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Symbol that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return 31 * english.hashCode() + (whose == null ? 0 : whose.hashCode());
  }

  /**
   * Returns the English name.
   *
   * @return the name, followed by whose it is
   */
  @Override
  public String toString() {
    return whose == null ? english : english + " (" + whose.english() + ")";
  }
}
