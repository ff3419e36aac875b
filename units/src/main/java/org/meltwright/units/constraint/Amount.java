// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintDeclarationException;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;
import org.meltwright.units.TemperatureScale;
import org.meltwright.units.VolumeFraction;

/**
 * A value on its way through a constraint: its ends, and how bounds of its kind are read, compared
 * and shown.
 *
 * @param low the low end
 * @param high the high end
 * @param read reads a bound; fails as a parser does
 * @param number an end or a bound as a number to compare
 * @param write an end or a bound in the value's own unit
 * @param shown the value itself
 */
record Amount<T>(
    T low,
    T high,
    Function<String, T> read,
    ToDoubleFunction<T> number,
    BiFunction<QuantityFormatter, T, String> write,
    Function<QuantityFormatter, String> shown) {

  private static final QuantityParser PARSER = QuantityParser.localeFree();
  private static final QuantityFormatter SIX_DIGITS = QuantityFormatter.ofSignificantDigits(6);
  private static final TemperatureScale CELSIUS = TemperatureScale.CELSIUS;

  /** The amount in a value. */
  static Amount<?> of(Object value) {
    if (value instanceof Quantity<?> quantity) {
      return ofAnyQuantity(quantity);
    }
    if (value instanceof TemperatureRange range) {
      return ofTemperatures(range);
    }
    if (value instanceof TemperaturePoint point) {
      return ofTemperatures(TemperatureRange.of(point));
    }
    if (value instanceof TemperatureDifference difference) {
      return single(
          difference,
          PARSER::parseTemperatureDifference,
          TemperatureDifference::kelvin,
          (formatter, d) -> formatter.format(d, TemperatureScale.KELVIN));
    }
    if (value instanceof MassFraction share) {
      return single(
          share, PARSER::parseMassFraction, MassFraction::value, QuantityFormatter::format);
    }
    if (value instanceof VolumeFraction share) {
      return single(
          share, PARSER::parseVolumeFraction, VolumeFraction::value, QuantityFormatter::format);
    }
    throw new ConstraintDeclarationException(
        "a bound cannot stand on a value of " + value.getClass().getName());
  }

  private static <T> Amount<T> single(
      T value,
      Function<String, T> read,
      ToDoubleFunction<T> number,
      BiFunction<QuantityFormatter, T, String> write) {
    return new Amount<>(
        value, value, read, number, write, formatter -> write.apply(formatter, value));
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the wildcard names one kind
  private static Amount<?> ofAnyQuantity(Quantity<?> quantity) {
    return ofQuantity((Quantity) quantity);
  }

  private static <Q extends Quantity<Q>> Amount<Quantity<Q>> ofQuantity(Quantity<Q> quantity) {
    Unit<Q> unit = quantity.getUnit();
    QuantityKind<Q> kind = QuantityKind.of(unit);
    return single(
        quantity,
        bound -> PARSER.parse(bound, kind),
        kind::toSi,
        (formatter, q) -> formatter.format(kind, kind.toSi(q), unit));
  }

  private static Amount<TemperaturePoint> ofTemperatures(TemperatureRange range) {
    return new Amount<>(
        range.low(),
        range.high(),
        PARSER::parseTemperature,
        TemperaturePoint::kelvin,
        (formatter, point) -> formatter.format(point, CELSIUS),
        formatter -> formatter.format(range, CELSIUS));
  }

  Optional<Problem> atLeast(String bound, boolean inclusive) {
    double value = number.applyAsDouble(low);
    double limit = number.applyAsDouble(limit(bound));
    boolean kept = inclusive ? Limit.reaches(value, limit) : Limit.exceeds(value, limit);
    ConstraintProblem code = inclusive ? ConstraintProblem.TOO_LOW : ConstraintProblem.NOT_ABOVE;
    return problemUnless(kept, code, bound);
  }

  Optional<Problem> atMost(String bound, boolean inclusive) {
    double value = number.applyAsDouble(high);
    double limit = number.applyAsDouble(limit(bound));
    boolean passed = inclusive ? Limit.exceeds(value, limit) : Limit.reaches(value, limit);
    ConstraintProblem code = inclusive ? ConstraintProblem.TOO_HIGH : ConstraintProblem.NOT_BELOW;
    return problemUnless(!passed, code, bound);
  }

  Optional<Problem> positive() {
    if (low instanceof TemperaturePoint) {
      throw new ConstraintDeclarationException("a temperature has no sign; give a bound");
    }
    return number.applyAsDouble(low) > 0
        ? Optional.empty()
        : Optional.of(Problem.of(ConstraintProblem.NOT_POSITIVE, inWords(SIX_DIGITS)));
  }

  /** In six digits, or in all of them where six would show the value as its own limit. */
  private Optional<Problem> problemUnless(boolean kept, ConstraintProblem code, String bound) {
    if (kept) {
      return Optional.empty();
    }
    T limit = limit(bound);
    String six = write.apply(SIX_DIGITS, limit);
    boolean same =
        write.apply(SIX_DIGITS, low).equals(six) || write.apply(SIX_DIGITS, high).equals(six);
    QuantityFormatter digits = same ? QuantityFormatter.exact() : SIX_DIGITS;
    return Optional.of(
        Problem.of(code, inWords(digits))
            .with(
                "limit",
                Bilingual.of(reader -> write.apply(SIX_DIGITS.withLocale(reader), limit))));
  }

  private Bilingual inWords(QuantityFormatter digits) {
    return Bilingual.of(reader -> shown.apply(digits.withLocale(reader)));
  }

  /** A bound that does not read is a defect of the declaration, not of the value. */
  private T limit(String bound) {
    try {
      return read.apply(bound);
    } catch (ProblemException e) {
      throw new ConstraintDeclarationException("the bound does not fit its value: " + bound, e);
    }
  }
}
