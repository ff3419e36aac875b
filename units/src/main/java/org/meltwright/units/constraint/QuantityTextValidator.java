// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

/**
 * Checks {@link QuantityText}.
 *
 * <p>Made and called by the validation provider.
 *
 * <p>For example:
 *
 * <pre>{@code
 * record Line(
 *     @QuantityText(kind = TextKind.MASS, decimalSign = DecimalSign.COMMA) String amount) {}
 * var words = new org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator();
 * Validator validator =
 *     Validation.byDefaultProvider().configure().messageInterpolator(words)
 *         .buildValidatorFactory().getValidator();
 * validator.validate(new Line("1,5 kg")).size(); // 0
 * // where a comma is declared, a point may mean thousands
 * validator.validate(new Line("1.5 kg")).size(); // 1
 * }</pre>
 *
 * <p>Compared by identity: a validation provider makes it, one for each constraint.
 */
public final class QuantityTextValidator
    implements ConstraintValidator<QuantityText, CharSequence> {

  /** What the annotation says; set by the provider before first use. */
  private @Nullable QuantityText constraint;

  /** Creates a validator for the provider. */
  public QuantityTextValidator() {}

  @Override
  public void initialize(QuantityText annotation) {
    constraint = annotation;
  }

  @Override
  public boolean isValid(@Nullable CharSequence value, ConstraintValidatorContext context) {
    QuantityText declared = Objects.requireNonNull(constraint, "not initialised");
    if (value == null) {
      return true;
    }
    QuantityParser parser = Locales.parser(declared.decimalSign(), context);
    return Violations.report(
        problem(value, declared, parser),
        declared.message().equals("must be text of the kind {kind}"),
        context);
  }

  private static Optional<Problem> problem(
      CharSequence text, QuantityText declared, QuantityParser parser) {
    Object value;
    try {
      value = declared.kind().read(parser, text);
    } catch (ProblemException e) {
      return Optional.of(e.problems().get(0));
    }
    boolean bounded = !declared.min().isEmpty() || !declared.max().isEmpty();
    return bounded || declared.positive()
        ? outsideBounds(Amount.of(value), declared)
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
