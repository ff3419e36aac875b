// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Checks {@link AtMost}.
 *
 * <p>Made and called by the validation provider.
 *
 * <p>For example:
 *
 * <pre>{@code
 * // a message of the application's own stays as it is
 * record Pot(@AtMost(value = "90 °C", message = "too hot to leave") TemperaturePoint held) {}
 * var words = new org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator();
 * Validator validator =
 *     Validation.byDefaultProvider().configure().messageInterpolator(words)
 *         .buildValidatorFactory().getValidator();
 * Pot pot = new Pot(ofFahrenheit(200));
 * validator.validate(pot).iterator().next().getMessage(); // too hot to leave
 * }</pre>
 *
 * <p>Compared by identity: a validation provider makes it, one for each constraint.
 */
public final class AtMostValidator implements ConstraintValidator<AtMost, Object> {

  /** What the annotation says; set by the provider before first use. */
  private @Nullable AtMost constraint;

  /** Creates a validator for the provider. */
  public AtMostValidator() {}

  @Override
  public void initialize(AtMost annotation) {
    constraint = annotation;
  }

  @Override
  public boolean isValid(@Nullable Object value, ConstraintValidatorContext context) {
    AtMost declared = Objects.requireNonNull(constraint, "not initialised");
    if (value == null) {
      return true;
    }
    return Violations.report(
        Amount.of(value).atMost(declared.value(), declared.inclusive()),
        declared.message().equals("must be at most {value}"),
        context);
  }
}
