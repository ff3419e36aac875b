// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Checks {@link PositiveAmount}.
 *
 * <p>Made and called by the validation provider.
 *
 * <p>For example:
 *
 * <pre>{@code
 * record Rise(@PositiveAmount TemperatureDifference step) {}
 * var words = new org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator();
 * Validator validator =
 *     Validation.byDefaultProvider().configure().messageInterpolator(words)
 *         .buildValidatorFactory().getValidator();
 * validator.validate(new Rise(TemperatureDifference.ofKelvin(5))).size(); // 0
 * validator.validate(new Rise(TemperatureDifference.ofKelvin(-5))).size(); // 1
 * // a value that need not be there; add @NotNull where it must
 * validator.validate(new Rise(null)).size(); // 0
 * }</pre>
 *
 * <p>Compared by identity: a validation provider makes it, one for each constraint.
 */
public final class PositiveAmountValidator implements ConstraintValidator<PositiveAmount, Object> {

  /** What the annotation says; set by the provider before first use. */
  private @Nullable PositiveAmount constraint;

  /** Creates a validator for the provider. */
  public PositiveAmountValidator() {}

  @Override
  public void initialize(PositiveAmount annotation) {
    constraint = annotation;
  }

  @Override
  public boolean isValid(@Nullable Object value, ConstraintValidatorContext context) {
    PositiveAmount declared = Objects.requireNonNull(constraint, "not initialised");
    if (value == null) {
      return true;
    }
    return Violations.report(
        Amount.of(value).positive(), declared.message().equals("must be above zero"), context);
  }
}
