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
 *
 * <p>For example, with the {@code validator} of {@link QuantityText}:
 *
 * <pre>{@code
 * record Pot(@jakarta.validation.constraints.Positive Quantity<Volume> content) {}
 * validator.validate(new Pot(litres(1.5))).size(); // 0
 * validator.validate(new Pot(litres(0))).size(); // 1
 * }</pre>
 *
 * <p>Compared by identity: a validation provider makes it, one for each constraint.
 */
public final class PositiveQuantityValidator implements ConstraintValidator<Positive, Quantity<?>> {

  /** Creates a validator for the provider. */
  public PositiveQuantityValidator() {}

  @Override
  public boolean isValid(@Nullable Quantity<?> value, ConstraintValidatorContext context) {
    return value == null || Amount.of(value).positive().isEmpty();
  }
}
