// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Optional;
import org.meltwright.units.Problem;

/**
 * The value is at most a bound given as text, such as {@code @AtMost("93.3 °C")}.
 *
 * <p>Stands on a {@link javax.measure.Quantity} of a kind of {@link
 * org.meltwright.units.QuantityKind}, a {@link org.meltwright.units.TemperaturePoint}, {@link
 * org.meltwright.units.TemperatureRange} or {@link org.meltwright.units.TemperatureDifference}, a
 * {@link org.meltwright.units.MassFraction} or a {@link org.meltwright.units.VolumeFraction};
 * {@code null} is valid. The bound is text of the value's own kind. A range of temperatures is held
 * to it by its high end. Bounds are compared as {@link org.meltwright.units.Limit} does.
 *
 * <p>For example, with the {@code validator} of {@link QuantityText}:
 *
 * <pre>{@code
 * record Pot(@AtMost("90 °C") TemperatureRange held) {}
 * validator.validate(new Pot(TemperatureRange.ofCelsius(80, 90))).size(); // 0
 * // held to it by its high end
 * validator.validate(new Pot(TemperatureRange.ofCelsius(80, 95))).size(); // 1
 * }</pre>
 */
@Documented
@Constraint(validatedBy = AtMost.Validator.class)
@Target({
  ElementType.FIELD,
  ElementType.METHOD,
  ElementType.PARAMETER,
  ElementType.ANNOTATION_TYPE,
  ElementType.TYPE_USE
})
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(AtMost.List.class)
public @interface AtMost {

  /**
   * The bound, for example "20 kg", "93.3 °C" or "12 %".
   *
   * @return text of the value's kind, with a decimal point
   */
  String value();

  /**
   * Whether the bound itself is allowed.
   *
   * @return true if it is
   */
  boolean inclusive() default true;

  /**
   * The message; the default is replaced by the problem's own words.
   *
   * @return the message template
   */
  String message() default "must be at most {value}";

  /**
   * The validation groups.
   *
   * @return the groups, none for the default group
   */
  Class<?>[] groups() default {};

  /**
   * The payload for who reads the violations.
   *
   * @return the payload types
   */
  Class<? extends Payload>[] payload() default {};

  /** Several of these constraints on one element. */
  @Documented
  @Target({
    ElementType.FIELD,
    ElementType.METHOD,
    ElementType.PARAMETER,
    ElementType.ANNOTATION_TYPE,
    ElementType.TYPE_USE
  })
  @Retention(RetentionPolicy.RUNTIME)
  @interface List {

    /**
     * The constraints.
     *
     * @return all of them apply
     */
    AtMost[] value();
  }

  /**
   * Checks the constraint.
   *
   * <p>Compared by identity: a validation provider makes it, one for each constraint.
   */
  final class Validator extends ProblemValidator<AtMost, Object> {

    /** Creates a validator for the provider. */
    public Validator() {
      super(AtMost::message, "must be at most {value}");
    }

    @Override
    Optional<Problem> problem(Object value, AtMost declared, ConstraintValidatorContext context) {
      return Amount.of(value).atMost(declared.value(), declared.inclusive());
    }
  }
}
