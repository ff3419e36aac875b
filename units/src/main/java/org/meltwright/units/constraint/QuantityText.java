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
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

/**
 * The text reads as a value of a kind, within bounds if given, such as {@code @QuantityText(kind =
 * TextKind.MASS, min = "1 g", max = "20 kg")}.
 *
 * <p>Stands on a {@link CharSequence}; {@code null} is valid. The text is read by {@link
 * org.meltwright.units.QuantityParser}, and what is wrong is said in the words of its problems.
 *
 * <p>The decimal sign is declared, on any provider. Where one class serves readers of several
 * languages, {@link DecimalSign#EITHER} takes both signs and refuses what may be thousands; with
 * the reference provider, {@code constraintValidatorPayload(locale)} on the validator context makes
 * all of them read the sign of that locale.
 *
 * <p>For example:
 *
 * <pre>{@code
 * record Line(@QuantityText(kind = TextKind.MASS, min = "1 g", max = "20 kg") String amount) {}
 * var words =
 *     new org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator(
 *         Set.of(Locale.ENGLISH), Locale.ENGLISH, false);
 * Validator validator =
 *     Validation.byDefaultProvider().configure().messageInterpolator(words)
 *         .buildValidatorFactory().getValidator();
 * validator.validate(new Line("1 1/2 lb")).size(); // 0
 * var found = validator.validate(new Line("250 ml")).iterator().next();
 * found.getMessage(); // Expected a mass, found a volume: 250 ml. …
 * }</pre>
 */
@Documented
@Constraint(validatedBy = QuantityText.Validator.class)
@Target({
  ElementType.FIELD,
  ElementType.METHOD,
  ElementType.PARAMETER,
  ElementType.ANNOTATION_TYPE,
  ElementType.TYPE_USE
})
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(QuantityText.List.class)
public @interface QuantityText {

  /**
   * The kind of value.
   *
   * @return the kind
   */
  TextKind kind();

  /**
   * The least value allowed.
   *
   * @return text of the kind, with a decimal point; empty for none
   */
  String min() default "";

  /**
   * The greatest value allowed.
   *
   * @return text of the kind, with a decimal point; empty for none
   */
  String max() default "";

  /**
   * Whether the value must be above zero.
   *
   * @return true if it must
   */
  boolean positive() default false;

  /**
   * What stands before the decimals of the text; bounds always have a point. With the reference
   * provider a {@link java.util.Locale} given as validator payload decides instead.
   *
   * @return the sign
   */
  DecimalSign decimalSign() default DecimalSign.POINT;

  /**
   * The message; the default is replaced by the problem's own words.
   *
   * @return the message template
   */
  String message() default "must be text of the kind {kind}";

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
    QuantityText[] value();
  }

  /**
   * Checks the constraint.
   *
   * <p>Compared by identity: a validation provider makes it, one for each constraint.
   */
  final class Validator extends ProblemValidator<QuantityText, CharSequence> {

    /** Creates a validator for the provider. */
    public Validator() {
      super(QuantityText::message, "must be text of the kind {kind}");
    }

    @Override
    Optional<Problem> problem(
        CharSequence value, QuantityText declared, ConstraintValidatorContext context) {
      QuantityParser parser = Locales.parser(declared.decimalSign(), context);
      Object read;
      try {
        read = declared.kind().read(parser, value);
      } catch (ProblemException e) {
        return Optional.of(e.problems().get(0));
      }
      boolean bounded = !declared.min().isEmpty() || !declared.max().isEmpty();
      return bounded || declared.positive()
          ? outsideBounds(Amount.of(read), declared)
          : Optional.empty();
    }

    private static Optional<Problem> outsideBounds(Amount<?> amount, QuantityText declared) {
      Optional<Problem> problem = declared.positive() ? amount.positive() : Optional.empty();
      if (!declared.min().isEmpty()) {
        problem = problem.or(() -> amount.atLeast(declared.min(), true));
      }
      return declared.max().isEmpty()
          ? problem
          : problem.or(() -> amount.atMost(declared.max(), true));
    }
  }
}
