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
 * The value is above zero.
 *
 * <p>Stands on a {@link javax.measure.Quantity} of a kind of {@link
 * org.meltwright.units.QuantityKind}, a {@link org.meltwright.units.TemperatureDifference}, a
 * {@link org.meltwright.units.MassFraction} or a {@link org.meltwright.units.VolumeFraction};
 * {@code null} is valid. With the reference provider the standard {@code @Positive} does the same
 * on quantities; this one works on every provider.
 *
 * <p>For example, with the {@code validator} of {@link QuantityText}:
 *
 * <pre>{@code
 * record Leftover(@PositiveAmount Quantity<Mass> wax) {}
 * validator.validate(new Leftover(grams(730))).size(); // 0
 * validator.validate(new Leftover(grams(0))).size(); // 1
 * }</pre>
 */
@Documented
@Constraint(validatedBy = PositiveAmount.Validator.class)
@Target({
  ElementType.FIELD,
  ElementType.METHOD,
  ElementType.PARAMETER,
  ElementType.ANNOTATION_TYPE,
  ElementType.TYPE_USE
})
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(PositiveAmount.List.class)
public @interface PositiveAmount {

  /**
   * The message; the default is replaced by the problem's own words.
   *
   * @return the message template
   */
  String message() default "must be above zero";

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
    PositiveAmount[] value();
  }

  /**
   * Checks the constraint.
   *
   * <p>Compared by identity: a validation provider makes it, one for each constraint.
   */
  final class Validator extends ProblemValidator<PositiveAmount, Object> {

    /** Creates a validator for the provider. */
    public Validator() {
      super(PositiveAmount::message, "must be above zero");
    }

    @Override
    Optional<Problem> problem(
        Object value, PositiveAmount declared, ConstraintValidatorContext context) {
      return Amount.of(value).positive();
    }
  }
}
