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
 * The value is at least a bound given as text, such as {@code @AtLeast("1 g")}.
 *
 * <p>Stands on a {@link javax.measure.Quantity} of a kind of {@link
 * org.meltwright.units.QuantityKind}, a {@link org.meltwright.units.TemperaturePoint}, {@link
 * org.meltwright.units.TemperatureRange} or {@link org.meltwright.units.TemperatureDifference}, a
 * {@link org.meltwright.units.MassFraction} or a {@link org.meltwright.units.VolumeFraction};
 * {@code null} is valid. The bound is text of the value's own kind. A range of temperatures is held
 * to it by its low end. Bounds are compared as {@link org.meltwright.units.Limit} does.
 *
 * <p>For example, with the {@code validator} of {@link QuantityText}:
 *
 * <pre>{@code
 * record Cake(@AtLeast("5 g") Quantity<Mass> mass) {}
 * validator.validate(new Cake(grams(5))).size(); // 0
 * validator.validate(new Cake(grams(4.9))).size(); // 1
 * }</pre>
 */
@Documented
@Constraint(validatedBy = AtLeast.Validator.class)
@Target({
  ElementType.FIELD,
  ElementType.METHOD,
  ElementType.PARAMETER,
  ElementType.ANNOTATION_TYPE,
  ElementType.TYPE_USE
})
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(AtLeast.List.class)
public @interface AtLeast {

  /**
   * The bound, for example "1 g", "20 °C" or "2.5 %".
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
  String message() default "must be at least {value}";

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
    AtLeast[] value();
  }

  /**
   * Checks the constraint.
   *
   * <p>Compared by identity: a validation provider makes it, one for each constraint.
   */
  final class Validator extends ProblemValidator<AtLeast, Object> {

    /** Creates a validator for the provider. */
    public Validator() {
      super(AtLeast::message, "must be at least {value}");
    }

    @Override
    Optional<Problem> problem(Object value, AtLeast declared, ConstraintValidatorContext context) {
      return Amount.of(value).atLeast(declared.value(), declared.inclusive());
    }
  }
}
