// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintDeclarationException;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
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
 * A value on its way through a constraint: its ends as numbers in one unit, and how to read and
 * show bounds of its kind.
 */
abstract class Amount {

  private static final QuantityParser PARSER = QuantityParser.localeFree();
  private static final QuantityFormatter SHOWN = QuantityFormatter.ofSignificantDigits(6);

  /** The amount in a value. */
  static Amount of(Object value) {
    if (value instanceof Quantity<?> quantity) {
      return ofQuantity(quantity);
    }
    if (value instanceof TemperatureRange range) {
      return new Temperatures(range);
    }
    if (value instanceof TemperaturePoint point) {
      return new Temperatures(TemperatureRange.of(point));
    }
    if (value instanceof TemperatureDifference difference) {
      return new Difference(difference);
    }
    if (value instanceof MassFraction fraction) {
      return new ByMass(fraction);
    }
    if (value instanceof VolumeFraction fraction) {
      return new ByVolume(fraction);
    }
    throw new ConstraintDeclarationException(
        "a bound cannot stand on a value of " + value.getClass().getName());
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the wildcard names one kind
  private static Amount ofQuantity(Quantity<?> quantity) {
    return new Amounts((Quantity) quantity);
  }

  abstract double low();

  double high() {
    return low();
  }

  abstract String shown();

  /** A bound's number in the unit of {@link #low()}; fails as a parser does. */
  abstract double read(String bound);

  /** A bound in the value's own unit. */
  abstract String shown(String bound);

  Optional<Problem> atLeast(String bound, boolean inclusive) {
    double limit = limit(bound);
    boolean kept = inclusive ? Limit.reaches(low(), limit) : Limit.exceeds(low(), limit);
    ConstraintProblem code = inclusive ? ConstraintProblem.TOO_LOW : ConstraintProblem.NOT_ABOVE;
    return problemUnless(kept, code, bound);
  }

  Optional<Problem> atMost(String bound, boolean inclusive) {
    double limit = limit(bound);
    boolean passed = inclusive ? Limit.exceeds(high(), limit) : Limit.reaches(high(), limit);
    ConstraintProblem code = inclusive ? ConstraintProblem.TOO_HIGH : ConstraintProblem.NOT_BELOW;
    return problemUnless(!passed, code, bound);
  }

  Optional<Problem> positive() {
    return low() > 0
        ? Optional.empty()
        : Optional.of(Problem.of(ConstraintProblem.NOT_POSITIVE, shown()));
  }

  private Optional<Problem> problemUnless(boolean kept, ConstraintProblem code, String bound) {
    return kept
        ? Optional.empty()
        : Optional.of(Problem.of(code, shown()).with("limit", shown(bound)));
  }

  /** A bound that does not read is a defect of the declaration, not of the value. */
  private double limit(String bound) {
    try {
      return read(bound);
    } catch (ProblemException e) {
      throw new ConstraintDeclarationException("the bound does not fit its value: " + bound, e);
    }
  }

  private static final class Amounts<Q extends Quantity<Q>> extends Amount {
    private final Number value;
    private final Unit<Q> unit;
    private final QuantityKind<Q> kind;

    Amounts(Quantity<Q> quantity) {
      this.value = quantity.getValue();
      this.unit = quantity.getUnit();
      this.kind = QuantityKind.of(unit);
    }

    @Override
    double low() {
      return kind.toSi(value.doubleValue(), unit);
    }

    @Override
    String shown() {
      return SHOWN.format(kind, low(), unit);
    }

    @Override
    double read(String bound) {
      return kind.toSi(PARSER.parse(bound, kind));
    }

    @Override
    String shown(String bound) {
      return SHOWN.format(PARSER.parse(bound, kind), unit);
    }
  }

  private static final class Temperatures extends Amount {
    private final TemperatureRange range;

    Temperatures(TemperatureRange range) {
      this.range = range;
    }

    @Override
    double low() {
      return range.low().kelvin();
    }

    @Override
    double high() {
      return range.high().kelvin();
    }

    @Override
    Optional<Problem> positive() {
      throw new ConstraintDeclarationException("a temperature has no sign; give a bound");
    }

    @Override
    String shown() {
      return SHOWN.format(range, TemperatureScale.CELSIUS);
    }

    @Override
    double read(String bound) {
      return PARSER.parseTemperature(bound).kelvin();
    }

    @Override
    String shown(String bound) {
      return SHOWN.format(PARSER.parseTemperature(bound), TemperatureScale.CELSIUS);
    }
  }

  private static final class Difference extends Amount {
    private final TemperatureDifference difference;

    Difference(TemperatureDifference difference) {
      this.difference = difference;
    }

    @Override
    double low() {
      return difference.kelvin();
    }

    @Override
    String shown() {
      return SHOWN.format(difference, TemperatureScale.KELVIN);
    }

    @Override
    double read(String bound) {
      return PARSER.parseTemperatureDifference(bound).kelvin();
    }

    @Override
    String shown(String bound) {
      return SHOWN.format(PARSER.parseTemperatureDifference(bound), TemperatureScale.KELVIN);
    }
  }

  private static final class ByMass extends Amount {
    private final MassFraction fraction;

    ByMass(MassFraction fraction) {
      this.fraction = fraction;
    }

    @Override
    double low() {
      return fraction.value();
    }

    @Override
    String shown() {
      return SHOWN.format(fraction);
    }

    @Override
    double read(String bound) {
      return PARSER.parseMassFraction(bound).value();
    }

    @Override
    String shown(String bound) {
      return SHOWN.format(PARSER.parseMassFraction(bound));
    }
  }

  private static final class ByVolume extends Amount {
    private final VolumeFraction fraction;

    ByVolume(VolumeFraction fraction) {
      this.fraction = fraction;
    }

    @Override
    double low() {
      return fraction.value();
    }

    @Override
    String shown() {
      return SHOWN.format(fraction);
    }

    @Override
    double read(String bound) {
      return PARSER.parseVolumeFraction(bound).value();
    }

    @Override
    String shown(String bound) {
      return SHOWN.format(PARSER.parseVolumeFraction(bound));
    }
  }
}
