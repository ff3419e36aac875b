// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.ValidationException;
import java.util.Locale;
import java.util.Optional;
import org.hibernate.validator.constraintvalidation.HibernateConstraintValidatorContext;
import org.meltwright.units.Problem;

/**
 * Turns a problem into a violation.
 *
 * <p>With the reference provider the message is in the reader's language, and the violation carries
 * the {@link Problem} as its dynamic payload. On any other provider the message is the English
 * text. A message of the application's own is left alone.
 */
final class Violations {

  static final boolean REFERENCE_PROVIDER = isReferenceProviderPresent();

  private Violations() {}

  private static boolean isReferenceProviderPresent() {
    try {
      Class.forName(
          "org.hibernate.validator.constraintvalidation.HibernateConstraintValidatorContext",
          false,
          Violations.class.getClassLoader());
      return true;
    } catch (ClassNotFoundException e) {
      return false;
    }
  }

  /** Reports the problem, if there is one; returns whether there is none. */
  static boolean report(
      Optional<Problem> problem, boolean ownWords, ConstraintValidatorContext context) {
    problem.ifPresent(
        found -> {
          if (!(REFERENCE_PROVIDER && Bilingual.report(found, ownWords, context)) && ownWords) {
            String english = found.inWords(Locale.ENGLISH);
            replaceMessage(escaped(english), context);
          }
        });
    return problem.isEmpty();
  }

  private static void replaceMessage(String template, ConstraintValidatorContext context) {
    context.disableDefaultConstraintViolation();
    context.buildConstraintViolationWithTemplate(template).addConstraintViolation();
  }

  /** What was found may hold the characters of a template. */
  private static String escaped(String text) {
    return text.replaceAll("([\\\\{}$])", "\\\\$1");
  }

  /** Apart, so that the provider's classes load only where they are. */
  private static final class Bilingual {

    private Bilingual() {}

    static boolean report(Problem problem, boolean ownWords, ConstraintValidatorContext context) {
      HibernateConstraintValidatorContext hibernate;
      try {
        hibernate = context.unwrap(HibernateConstraintValidatorContext.class);
      } catch (ValidationException e) {
        return false; // another provider than the one that is also there
      }
      hibernate.withDynamicPayload(problem);
      if (ownWords) {
        hibernate.addMessageParameter("inEnglish", problem.inWords(Locale.ENGLISH));
        hibernate.addMessageParameter("inGerman", problem.inWords(Locale.GERMAN));
        replaceMessage("{org.meltwright.units.constraint.problem}", context);
      }
      return true;
    }
  }
}
