// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Checks {@link Between}.
 *
 * <p>Made and called by the validation provider.
 *
 * <p>For example:
 *
 * <pre>{@code
 * record Pigment(@Between(low = "1 g", high = "20 kg") Quantity<Mass> mass) {}
 * var words = new org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator();
 * Validator validator =
 *     Validation.byDefaultProvider().configure().messageInterpolator(words)
 *         .buildValidatorFactory().getValidator();
 * // a value that is not in an object yet
 * validator.validateValue(Pigment.class, "mass", grams(730)).size(); // 0
 * validator.validateValue(Pigment.class, "mass", grams(0.5)).size(); // 1
 * }</pre>
 *
 * <p>Compared by identity: a validation provider makes it, one for each constraint.
 */
public final class BetweenValidator implements ConstraintValidator<Between, Object> {

  /** What the annotation says; set by the provider before first use. */
  private @Nullable Between constraint;

  /** Creates a validator for the provider. */
  public BetweenValidator() {}

  @Override
  public void initialize(Between annotation) {
    constraint = annotation;
  }

  @Override
  public boolean isValid(@Nullable Object value, ConstraintValidatorContext context) {
    Between declared = Objects.requireNonNull(constraint, "not initialised");
    if (value == null) {
      return true;
    }
    Amount<?> amount = Amount.of(value);
    return Violations.report(
        amount.atLeast(declared.low(), true).or(() -> amount.atMost(declared.high(), true)),
        declared.message().equals("must be between {low} and {high}"),
        context);
  }
}
