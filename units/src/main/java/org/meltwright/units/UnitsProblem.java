// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

/**
 * The problems that values and texts of this package report.
 *
 * <p>For example:
 *
 * <pre>{@code
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   QuantityParser.localeFree().parseVolume("4 oz");
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // OUNCE_FOR_VOLUME
 * problems.get(0).what(Locale.ENGLISH); // The ounce (oz) is a mass; a volume is asked for.
 * }</pre>
 */
public enum UnitsProblem implements ProblemCode {
  /** A number that is not finite. */
  NUMBER_NOT_FINITE("number.not-finite"),
  /** A value below or above what its type allows. */
  VALUE_OUT_OF_RANGE("value.out-of-range"),
  /** The low end of a range lies above its high end. */
  RANGE_REVERSED("range.reversed"),
  /** A temperature below absolute zero. */
  TEMPERATURE_BELOW_ABSOLUTE_ZERO("temperature.below-absolute-zero"),
  /** A unit of another kind than asked for. */
  WRONG_KIND("quantity.wrong-kind"),
  /** An ounce, which is a mass, where a volume is asked for. */
  OUNCE_FOR_VOLUME("quantity.ounce-for-volume"),
  /** A unit that is not known. */
  UNKNOWN_UNIT("quantity.unknown-unit"),
  /** A name that several units share, such as "cup". */
  AMBIGUOUS_UNIT("quantity.ambiguous-unit"),
  /** A number without a unit. */
  MISSING_UNIT("quantity.missing-unit"),
  /** Amounts of several units that do not make one, such as "4 oz 1 lb". */
  COMPOUND_MALFORMED("quantity.compound-malformed"),
  /** No text at all. */
  TEXT_EMPTY("text.empty"),
  /** A name or an id without a letter in it. */
  NAME_BLANK("name.blank"),
  /** A text too long to be a quantity. */
  TEXT_TOO_LONG("text.too-long"),
  /** No number, or one that is not written as this library reads them. */
  NUMBER_MALFORMED("number.malformed"),
  /** A number too large or too small to compute with. */
  NUMBER_OUT_OF_REACH("number.out-of-reach"),
  /** A decimal comma where none was declared. */
  DECIMAL_COMMA("number.decimal-comma"),
  /** A decimal point where a decimal comma was declared. */
  DECIMAL_POINT("number.decimal-point"),
  /** A number such as 1,500, whose sign may stand before decimals or thousands. */
  DECIMAL_OR_THOUSANDS("number.decimal-or-thousands"),
  /** A number whose digits are grouped. */
  NUMBER_GROUPED("number.grouped"),
  /** A fraction such as 11/2, which may be 1 1/2 with its blank lost. */
  FRACTION_OR_MIXED("number.fraction-or-mixed"),
  /** A range where one amount is asked for. */
  RANGE_GIVEN("quantity.range"),
  /** A symbol in another case, which is that of another prefix: "Mg" is no milligram. */
  PREFIX_CASE("quantity.prefix-case"),
  /** A temperature quantity that may be a point or a difference. */
  TEMPERATURE_POINT_OR_DIFFERENCE("temperature.point-or-difference"),
  /** A fraction without per cent, per mille or parts per million. */
  FRACTION_WITHOUT_UNIT("fraction.without-unit"),
  /** A fraction by mass where one by volume is asked for, or the other way round. */
  FRACTION_WRONG_BASIS("fraction.wrong-basis"),
  /** A mass per volume, such as "5 % w/v", which is no share. */
  FRACTION_MASS_PER_VOLUME("fraction.mass-per-volume"),
  /** A ratio that is not written as two numbers and two sides. */
  RATIO_MALFORMED("ratio.malformed"),
  /** A ratio such as 1:8 that does not say which side is which. */
  RATIO_BARE("ratio.bare"),
  /** A side of a ratio that has no name of its own. */
  RATIO_SIDES("ratio.sides"),
  /** A value with its deviation, such as "70 °C ± 2 K". */
  PLUS_MINUS("quantity.plus-minus"),
  /** A density whose state is missing, or given where none is asked for. */
  DENSITY_STATE("density.state"),
  /** A field of a draft in which nothing stands. */
  FIELD_MISSING("field.missing"),
  /** An entry of a list in which nothing stands. */
  ENTRY_MISSING("entry.missing"),
  /** A word that is not one of those asked for. */
  WORD_UNKNOWN("word.unknown");

  /** The guards of this package. */
  static final Check CHECK = Check.beside(UnitsProblem.class);

  private final String id;

  UnitsProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  static Problem wrongKind(String found, String expectedId, String foundId) {
    return Problem.of(WRONG_KIND, found).with("expected", expectedId).with("kind", foundId);
  }
}
