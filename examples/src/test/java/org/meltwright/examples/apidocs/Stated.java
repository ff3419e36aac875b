// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jakarta.validation.Validation;
import jakarta.validation.Validator;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;

/** What an example of the API docs says of a value, checked. */
public final class Stated {

  /** The validator of the examples of constraints, as that of {@code QuantityText} makes it. */
  public static final Validator VALIDATOR =
      Validation.byDefaultProvider()
          .configure()
          .messageInterpolator(new ParameterMessageInterpolator())
          .buildValidatorFactory()
          .getValidator();

  private static final List<Object> MADE = new ArrayList<>();

  private Stated() {}

  /** What an example has put into a variable. */
  public static void made(Object value) {
    MADE.add(value);
  }

  /** Hands out what was made since it was asked last. */
  static List<Object> made() {
    List<Object> made = new ArrayList<>(MADE);
    MADE.clear();
    return made;
  }

  /** What is there is as stated: a number to its digits, with or without a unit; else the text. */
  public static void is(Object value, String stated) {
    if (value instanceof OptionalDouble found && found.isPresent()) {
      is(found.getAsDouble(), stated);
    } else if (value instanceof Optional<?> found && found.isPresent()) {
      is(found.get(), stated);
    } else if (value instanceof Double number) {
      BigDecimal digits = new BigDecimal(stated.split(" ", 2)[0]);
      double half = 0.5000001 * digits.ulp().doubleValue();
      assertThat(number).as(stated).isCloseTo(digits.doubleValue(), within(half));
    } else if (stated.endsWith("…")) {
      assertThat(String.valueOf(value)).startsWith(stated.substring(0, stated.length() - 1));
    } else {
      assertThat(String.valueOf(value)).isEqualTo(stated);
    }
  }

  /** The code fails with this exception. */
  public static void fails(ThrowingCallable code, Class<? extends Throwable> type) {
    assertThatThrownBy(code).isInstanceOf(type);
  }
}
