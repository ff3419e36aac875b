// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.validation.ClockProvider;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.ValidationException;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.meltwright.units.DecimalSign;
import org.meltwright.units.MetricUnits;

/** What a provider sees that knows nothing of the reference provider's extensions. */
class OtherProviderTest {

  @AtMost("1 kg")
  private static final String BOUND = "annotation carrier";

  @Test
  void the_message_is_the_english_text_with_template_signs_escaped() throws Exception {
    AtMost.Validator validator = new AtMost.Validator();
    validator.initialize(
        OtherProviderTest.class.getDeclaredField("BOUND").getAnnotation(AtMost.class));
    PlainContext context = new PlainContext();

    assertThat(validator.isValid(MetricUnits.kilograms(2), context)).isFalse();
    assertThat(context.defaultDisabled).isTrue();
    assertThat(context.templates)
        .containsExactly(
            "The value is too high. Found: 2 kg. Allowed: at most 1 kg. Give a lower value.");
  }

  @Test
  void hostile_text_is_escaped() throws Exception {
    QuantityText.Validator validator = new QuantityText.Validator();
    validator.initialize(
        OtherProviderTest.class.getDeclaredField("hostile").getAnnotation(QuantityText.class));
    PlainContext context = new PlainContext();

    assertThat(validator.isValid("1 ${x}", context)).isFalse();
    assertThat(context.templates).singleElement().asString().contains("1 \\$\\{x\\}");
  }

  @QuantityText(kind = TextKind.MASS)
  @SuppressWarnings("unused") // carries the annotation
  private String hostile;

  @QuantityText(kind = TextKind.MASS, decimalSign = DecimalSign.COMMA)
  @SuppressWarnings("unused") // carries the annotation
  private String comma;

  @QuantityText(kind = TextKind.MASS, decimalSign = DecimalSign.EITHER)
  @SuppressWarnings("unused") // carries the annotation
  private String either;

  private static List<String> told(String field, String text) throws Exception {
    QuantityText.Validator validator = new QuantityText.Validator();
    validator.initialize(
        OtherProviderTest.class.getDeclaredField(field).getAnnotation(QuantityText.class));
    PlainContext context = new PlainContext();
    assertThat(validator.isValid(text, context)).isEqualTo(context.templates.isEmpty());
    return context.templates;
  }

  @Test
  void a_declared_comma_is_read_and_a_point_refused() throws Exception {
    assertThat(told("comma", "1,5 kg")).isEmpty();
    assertThat(told("comma", "1.5 kg")).singleElement().asString().contains("point");
  }

  @Test
  void either_sign_is_read_unless_it_may_mean_thousands() throws Exception {
    assertThat(told("either", "1,5 kg")).isEmpty();
    assertThat(told("either", "1.5 kg")).isEmpty();
    assertThat(told("either", "1,500 kg")).singleElement().asString().contains("1.5", "1500");
    assertThat(told("either", "1.500 kg")).singleElement().asString().contains("1.5", "1500");
  }

  /** The standard's context without any provider behind it. */
  private static final class PlainContext implements ConstraintValidatorContext {
    final List<String> templates = new ArrayList<>();
    boolean defaultDisabled;

    @Override
    public void disableDefaultConstraintViolation() {
      defaultDisabled = true;
    }

    @Override
    public String getDefaultConstraintMessageTemplate() {
      return "";
    }

    @Override
    public ClockProvider getClockProvider() {
      throw new UnsupportedOperationException();
    }

    @Override
    public ConstraintViolationBuilder buildConstraintViolationWithTemplate(String template) {
      templates.add(template);
      return (ConstraintViolationBuilder)
          Proxy.newProxyInstance(
              getClass().getClassLoader(),
              new Class<?>[] {ConstraintViolationBuilder.class},
              (proxy, method, arguments) -> this);
    }

    @Override
    public <T> T unwrap(Class<T> type) {
      throw new ValidationException("not of this provider");
    }
  }
}
