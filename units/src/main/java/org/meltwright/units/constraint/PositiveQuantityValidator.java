// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.constraints.Positive;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Checks the standard {@link Positive} on quantities, in words of the provider.
 *
 * <p>The reference provider finds it as a service; other providers know no such service, and {@link
 * PositiveAmount} does the same on them.
 */
public final class PositiveQuantityValidator implements ConstraintValidator<Positive, Quantity<?>> {

  /** Creates a validator for the provider. */
  public PositiveQuantityValidator() {}

  @Override
  public boolean isValid(@Nullable Quantity<?> value, ConstraintValidatorContext context) {
    return value == null || Amount.of(value).positive().isEmpty();
  }
}
