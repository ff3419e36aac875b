// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Checks {@link AtLeast}.
 *
 * <p>Made and called by the validation provider.
 */
public final class AtLeastValidator implements ConstraintValidator<AtLeast, Object> {

  /** What the annotation says; set by the provider before first use. */
  private @Nullable AtLeast constraint;

  /** Creates a validator for the provider. */
  public AtLeastValidator() {}

  @Override
  public void initialize(AtLeast annotation) {
    constraint = annotation;
  }

  @Override
  public boolean isValid(@Nullable Object value, ConstraintValidatorContext context) {
    AtLeast declared = Objects.requireNonNull(constraint, "not initialised");
    if (value == null) {
      return true;
    }
    return Violations.report(
        Amount.of(value).atLeast(declared.value(), declared.inclusive()),
        declared.message().equals("must be at least {value}"),
        context);
  }
}
