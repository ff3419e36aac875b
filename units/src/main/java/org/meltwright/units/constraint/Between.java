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
 * The value lies between two bounds given as text, both allowed, such as {@code @Between(low = "1
 * g", high = "20 kg")}.
 *
 * <p>Stands on a {@link javax.measure.Quantity} of a kind of {@link
 * org.meltwright.units.QuantityKind}, a {@link org.meltwright.units.TemperaturePoint}, {@link
 * org.meltwright.units.TemperatureRange} or {@link org.meltwright.units.TemperatureDifference}, a
 * {@link org.meltwright.units.MassFraction} or a {@link org.meltwright.units.VolumeFraction};
 * {@code null} is valid. The bounds are text of the value's own kind. Bounds are compared as {@link
 * org.meltwright.units.Limit} does.
 *
 * <p>For example, with the {@code validator} of {@link QuantityText}:
 *
 * <pre>{@code
 * record Colour(@Between(low = "0 %", high = "40 %") MassFraction pigment) {}
 * validator.validate(new Colour(MassFraction.ofPercent(40))).size(); // 0
 * validator.validate(new Colour(MassFraction.ofPercent(45))).size(); // 1
 * }</pre>
 */
@Documented
@Constraint(validatedBy = Between.Validator.class)
@Target({
  ElementType.FIELD,
  ElementType.METHOD,
  ElementType.PARAMETER,
  ElementType.ANNOTATION_TYPE,
  ElementType.TYPE_USE
})
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(Between.List.class)
public @interface Between {

  /**
   * The low bound.
   *
   * @return text of the value's kind, with a decimal point
   */
  String low();

  /**
   * The high bound.
   *
   * @return text of the value's kind, with a decimal point
   */
  String high();

  /**
   * The message; the default is replaced by the problem's own words.
   *
   * @return the message template
   */
  String message() default "must be between {low} and {high}";

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
    Between[] value();
  }

  /**
   * Checks the constraint.
   *
   * <p>Compared by identity: a validation provider makes it, one for each constraint.
   */
  final class Validator extends ProblemValidator<Between, Object> {

    /** Creates a validator for the provider. */
    public Validator() {
      super(Between::message, "must be between {low} and {high}");
    }

    @Override
    Optional<Problem> problem(Object value, Between declared, ConstraintValidatorContext context) {
      Amount<?> amount = Amount.of(value);
      return amount.atLeast(declared.low(), true).or(() -> amount.atMost(declared.high(), true));
    }
  }
}
