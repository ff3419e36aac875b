// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;

/**
 * Checks {@link FractionsSumToOne}.
 *
 * <p>Made and called by the validation provider.
 *
 * <p>For example:
 *
 * <pre>{@code
 * final @FractionsSumToOne record Paint(MassFraction wax, VolumeFraction pigment) {}
 * var words = new org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator();
 * Validator validator =
 *     Validation.byDefaultProvider().configure().messageInterpolator(words)
 *         .buildValidatorFactory().getValidator();
 * // half by mass and half by volume do not add up to a whole
 * Paint paint = new Paint(MassFraction.ofPercent(50), VolumeFraction.ofPercent(50));
 * validator.validate(paint).size(); // 1
 * // what is not known is not judged here
 * validator.validate(new Paint(MassFraction.ofPercent(50), null)).size(); // 0
 * }</pre>
 *
 * <p>Compared by identity: a validation provider makes it, one for each constraint.
 */
public final class FractionsSumToOneValidator
    implements ConstraintValidator<FractionsSumToOne, Object> {

  private static final double TOLERANCE = 1e-9;

  /** What the annotation says; set by the provider before first use. */
  private @Nullable FractionsSumToOne constraint;

  /** Creates a validator for the provider. */
  public FractionsSumToOneValidator() {}

  @Override
  public void initialize(FractionsSumToOne annotation) {
    constraint = annotation;
  }

  @Override
  public boolean isValid(@Nullable Object value, ConstraintValidatorContext context) {
    FractionsSumToOne declared = Objects.requireNonNull(constraint, "not initialised");
    if (value == null) {
      return true;
    }
    return Violations.report(
        problem(Fractions.of(value, declared, Locales.parser(declared.decimalSign(), context))),
        declared.message().equals("must have fractions that sum to one"),
        context);
  }

  private static Optional<Problem> problem(Fractions fractions) {
    if (!fractions.areKnown()) {
      return Optional.empty();
    }
    if (fractions.areMixed()) {
      return Optional.of(Problem.of(ConstraintProblem.MIXED_BASES, fractions.names()));
    }
    return Math.abs(fractions.sum() - 1) <= TOLERANCE
        ? Optional.empty()
        : Optional.of(
            Problem.of(ConstraintProblem.SUM_NOT_ONE, fractions.sumInPercent())
                .with("names", fractions.names()));
  }
}
