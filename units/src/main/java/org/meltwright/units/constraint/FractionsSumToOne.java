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
import org.meltwright.units.DecimalSign;
import org.meltwright.units.Problem;

/**
 * The fractions of an object sum to one, within 1e-9.
 *
 * <p>Stands on a class. The named properties are record components or getters that give a {@link
 * org.meltwright.units.MassFraction}, a {@link org.meltwright.units.VolumeFraction}, or text that
 * reads as a fraction of the {@link #basis()}. Where one is {@code null} or unreadable text, the
 * sum is not judged: a constraint on that property says so. Fractions by mass and by volume in one
 * sum are a violation.
 *
 * <p>For example, with the {@code validator} of {@link QuantityText}:
 *
 * <pre>{@code
 * final @FractionsSumToOne(properties = {"resin", "wax"})
 * record Medium(String name, String resin, String wax) {}
 * validator.validate(new Medium("hard", "10 %", "90 %")).size(); // 0
 * validator.validate(new Medium("hard", "10 %", "80 %")).size(); // 1
 * }</pre>
 */
@Documented
@Constraint(validatedBy = FractionsSumToOne.Validator.class)
@Target({ElementType.TYPE, ElementType.ANNOTATION_TYPE})
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(FractionsSumToOne.List.class)
public @interface FractionsSumToOne {

  /**
   * The properties that hold the fractions.
   *
   * @return their names; none for all components of a record that are a {@link
   *     org.meltwright.units.MassFraction} or a {@link org.meltwright.units.VolumeFraction}, of
   *     which there must be one: text has to be named
   */
  String[] properties() default {};

  /**
   * What text properties are read as.
   *
   * @return {@link TextKind#MASS_FRACTION} or {@link TextKind#VOLUME_FRACTION}
   */
  TextKind basis() default TextKind.MASS_FRACTION;

  /**
   * What stands before the decimals of text properties; a {@link java.util.Locale} given to the
   * reference provider as validator payload decides instead.
   *
   * @return the sign
   */
  DecimalSign decimalSign() default DecimalSign.POINT;

  /**
   * The message; the default is replaced by the problem's own words.
   *
   * @return the message template
   */
  String message() default "must have fractions that sum to one";

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
  @Target({ElementType.TYPE, ElementType.ANNOTATION_TYPE})
  @Retention(RetentionPolicy.RUNTIME)
  @interface List {

    /**
     * The constraints.
     *
     * @return all of them apply
     */
    FractionsSumToOne[] value();
  }

  /**
   * Checks the constraint.
   *
   * <p>Compared by identity: a validation provider makes it, one for each constraint.
   */
  final class Validator extends ProblemValidator<FractionsSumToOne, Object> {

    /** Creates a validator for the provider. */
    public Validator() {
      super(FractionsSumToOne::message, "must have fractions that sum to one");
    }

    @Override
    Optional<Problem> problem(
        Object value, FractionsSumToOne declared, ConstraintValidatorContext context) {
      return Fractions.of(value, declared, Locales.parser(declared.decimalSign(), context))
          .problem();
    }
  }
}
