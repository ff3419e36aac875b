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
 *
 * <p>For example:
 *
 * <pre>{@code
 * // every cake of the mould is held to it
 * record Mould(List<@AtLeast("5 g") Quantity<Mass>> cakes) {}
 * var words = new org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator();
 * Validator validator =
 *     Validation.byDefaultProvider().configure().messageInterpolator(words)
 *         .buildValidatorFactory().getValidator();
 * Mould mould = new Mould(List.of(grams(20), grams(4), grams(20)));
 * validator.validate(mould).iterator().next().getPropertyPath(); // cakes[1].<list element>
 * }</pre>
 *
 * <p>Compared by identity: a validation provider makes it, one for each constraint.
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
