// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.ValidationException;
import java.util.Locale;
import org.hibernate.validator.constraintvalidation.HibernateConstraintValidatorContext;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.DecimalSign;
import org.meltwright.units.QuantityParser;

/** Finds the parser of a text: by the locale that the validator was given, else as declared. */
final class Locales {

  private Locales() {}

  static QuantityParser parser(DecimalSign declared, ConstraintValidatorContext context) {
    Locale given = Violations.REFERENCE_PROVIDER ? Payload.locale(context) : null;
    return given == null ? QuantityParser.of(declared) : QuantityParser.forLocale(given);
  }

  /** Apart, so that the provider's classes load only where they are. */
  private static final class Payload {

    private Payload() {}

    static @Nullable Locale locale(ConstraintValidatorContext context) {
      try {
        return context
            .unwrap(HibernateConstraintValidatorContext.class)
            .getConstraintValidatorPayload(Locale.class);
      } catch (ValidationException e) {
        return null; // another provider than the one that is also there
      }
    }
  }
}
