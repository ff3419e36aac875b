// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import java.lang.annotation.Annotation;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;

/** Finds what is wrong with a value, and says so in its own words unless the app has others. */
abstract class ProblemValidator<A extends Annotation, T> implements ConstraintValidator<A, T> {

  private final Function<A, String> message;
  private final String standard;

  /** What the annotation says; set by the provider before first use. */
  private @Nullable A constraint;

  ProblemValidator(Function<A, String> message, String standard) {
    this.message = message;
    this.standard = standard;
  }

  @Override
  public void initialize(A annotation) {
    constraint = annotation;
  }

  @Override
  public boolean isValid(@Nullable T value, ConstraintValidatorContext context) {
    A declared = Objects.requireNonNull(constraint, "not initialised");
    return value == null
        || Violations.report(
            problem(value, declared, context), message.apply(declared).equals(standard), context);
  }

  abstract Optional<Problem> problem(T value, A declared, ConstraintValidatorContext context);
}
