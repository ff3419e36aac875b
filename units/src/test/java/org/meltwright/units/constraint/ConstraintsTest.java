// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Validation;
import jakarta.validation.ValidationException;
import jakarta.validation.Validator;
import jakarta.validation.constraints.Positive;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.hibernate.validator.HibernateValidator;
import org.hibernate.validator.HibernateValidatorFactory;
import org.hibernate.validator.engine.HibernateConstraintViolation;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.units.DecimalSign;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;
import org.meltwright.units.UnitsProblem;
import org.meltwright.units.UsCustomaryUnits;
import org.meltwright.units.VolumeFraction;

class ConstraintsTest {

  private static final Validator ENGLISH = validator(Locale.ENGLISH);
  private static final Validator GERMAN = validator(Locale.GERMAN);

  private static Validator validator(Locale locale) {
    return Validation.byProvider(HibernateValidator.class)
        .configure()
        .locales(Locale.ENGLISH, Locale.GERMAN)
        .defaultLocale(locale)
        .messageInterpolator(
            new ParameterMessageInterpolator(Set.of(Locale.ENGLISH, Locale.GERMAN), locale, false))
        .buildValidatorFactory()
        .getValidator();
  }

  private static Set<String> messages(Validator validator, Object bean) {
    return validator.validate(bean).stream()
        .map(ConstraintViolation::getMessage)
        .collect(Collectors.toSet());
  }

  public record Line(
      @QuantityText(kind = TextKind.MASS, min = "1 g", max = "20 kg") String amount) {}

  public record Comma(
      @QuantityText(kind = TextKind.MASS, decimalSign = DecimalSign.COMMA, positive = true)
          String amount) {}

  public record Pot(
      @AtMost("93.3 °C") TemperaturePoint target,
      @Between(low = "60 °C", high = "90 °C") TemperatureRange window,
      @AtLeast(value = "5 K", inclusive = false) TemperatureDifference margin) {}

  public record Weights(
      @Positive Quantity<Mass> standard,
      @PositiveAmount Quantity<Mass> own,
      @Between(low = "1 g", high = "20 kg") Quantity<Mass> bounded) {}

  public record Shares(
      @AtMost(value = "12 %", inclusive = false) MassFraction paint,
      @AtLeast("1 %") VolumeFraction oil) {}

  @FractionsSumToOne
  public record Blend(MassFraction resin, MassFraction wax) {}

  @FractionsSumToOne(properties = {"resin", "wax"})
  public record BlendText(String resin, String wax) {}

  @FractionsSumToOne
  public record Mixed(MassFraction resin, VolumeFraction wax) {}

  public record OwnMessage(
      @AtMost(value = "1 kg", message = "no more than {value}, please") Quantity<Mass> mass) {}

  public record BadBound(@AtMost("1 litre of something") Quantity<Mass> mass) {}

  public record BadType(@AtMost("1 kg") Thread thread) {}

  @Test
  void quantity_text_is_judged_in_the_words_of_the_parser_in_both_languages() {
    assertThat(messages(ENGLISH, new Line("730 g"))).isEmpty();
    assertThat(messages(ENGLISH, new Line(null))).isEmpty();
    assertThat(messages(ENGLISH, new Line("8 fl oz")))
        .containsExactly(
            "Expected a mass, found a volume: 8 fl oz. Found: 8 fl oz. Allowed: a mass. "
                + "Give the value in a unit of the kind asked for.");
    assertThat(messages(GERMAN, new Line("8 fl oz")))
        .singleElement()
        .asString()
        .startsWith("Erwartet: eine Masse; gefunden: ein Volumen: 8 fl oz.");
  }

  @Test
  void quantity_text_out_of_bounds_names_value_and_limit_in_the_unit_written() {
    assertThat(messages(ENGLISH, new Line("50 lb")))
        .containsExactly(
            "The value is too high. Found: 50 lb. Allowed: at most 44.0925 lb. "
                + "Give a lower value.");
    assertThat(messages(GERMAN, new Line("0.5 g")))
        .containsExactly(
            "Der Wert ist zu niedrig. Gefunden: 0,5 g. Erlaubt: mindestens 1 g. "
                + "Einen höheren Wert angeben.");
  }

  @Test
  void quantity_text_with_a_declared_comma() {
    assertThat(messages(ENGLISH, new Comma("1,5 kg"))).isEmpty();
    assertThat(messages(ENGLISH, new Comma("1.5 kg"))).hasSize(1);
    assertThat(messages(ENGLISH, new Comma("0 kg"))).hasSize(1);
    assertThat(messages(ENGLISH, new Comma("-1,5 kg"))).hasSize(1);
  }

  public record Either(
      @QuantityText(kind = TextKind.MASS, decimalSign = DecimalSign.EITHER) String amount) {}

  public record Typed(
      @QuantityText(kind = TextKind.MASS, min = "1.5 g") String amount,
      @QuantityText(kind = TextKind.TEMPERATURE, max = "93.3 °C") String reading) {}

  @FractionsSumToOne(
      properties = {"resin", "wax"},
      decimalSign = DecimalSign.COMMA)
  public record CommaBlend(String resin, String wax) {}

  @Test
  void quantity_text_with_either_sign_refuses_what_may_be_thousands_with_both_meanings() {
    assertThat(messages(ENGLISH, new Either("1,5 kg"))).isEmpty();
    assertThat(messages(ENGLISH, new Either("1.5 kg"))).isEmpty();
    assertThat(messages(ENGLISH, new Either("1,500 kg")))
        .singleElement()
        .asString()
        .startsWith("1,500 may be 1.5 or 1500.");
    assertThat(messages(GERMAN, new Either("1.500 kg")))
        .singleElement()
        .asString()
        .startsWith("1.500 kann 1,5 oder 1500 heißen.");
  }

  /** One class, readers of several languages: each request says whose decimal sign it is. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de    | 1,500 kg | 0",
        "de    | 1.500 kg | 1",
        "de    | 1.5 kg   | 0",
        "de-CH | 1.500 kg | 0",
        "de-CH | 1,500 kg | 1",
        "en    | 1.500 kg | 0",
        "en    | 1,500 kg | 1",
        "xx    | 1.500 kg | 0"
      })
  void locale_as_validator_payload_decides_which_sign_is_read(
      String tag, String text, int violations) {
    Validator validator = validatorFor(Locale.forLanguageTag(tag));

    assertThat(validator.validate(new Typed(text, null))).hasSize(violations);
    assertThat(validator.validate(new Comma(text))).hasSize(violations);
  }

  private static Validator validatorFor(Locale locale) {
    return Validation.byProvider(HibernateValidator.class)
        .configure()
        .messageInterpolator(new ParameterMessageInterpolator())
        .buildValidatorFactory()
        .unwrap(HibernateValidatorFactory.class)
        .usingContext()
        .constraintValidatorPayload(locale)
        .getValidator();
  }

  @Test
  void german_messages_have_a_comma_in_what_was_found_and_in_the_bound() {
    assertThat(messages(GERMAN, new Typed("0.25 g", "200 °F")))
        .containsExactlyInAnyOrder(
            "Der Wert ist zu niedrig. Gefunden: 0,25 g. Erlaubt: mindestens 1,5 g. "
                + "Einen höheren Wert angeben.",
            "Der Wert ist zu hoch. Gefunden: 93,3333 °C. Erlaubt: höchstens 93,3 °C. "
                + "Einen niedrigeren Wert angeben.");
    assertThat(
            messages(GERMAN, new Shares(MassFraction.ofPercent(12.5), VolumeFraction.ofPercent(1))))
        .containsExactly(
            "Der Wert ist zu hoch. Gefunden: 12,5 Masse-%. Erlaubt: weniger als 12 Masse-%. "
                + "Einen niedrigeren Wert angeben.");
    assertThat(
            messages(GERMAN, new Blend(MassFraction.ofPercent(10), MassFraction.ofPercent(89.5))))
        .singleElement()
        .asString()
        .contains("Gefunden: 99,5 %.");
  }

  @Test
  void a_value_is_never_shown_rounded_onto_its_bound() {
    assertThat(messages(ENGLISH, new Typed(null, "93.30001 °C")))
        .containsExactly(
            "The value is too high. Found: 93.30001 °C. Allowed: at most 93.3 °C. "
                + "Give a lower value.");
  }

  @Test
  void fractions_in_text_have_the_declared_sign() {
    assertThat(messages(ENGLISH, new CommaBlend("11,5 %", "88,5 %"))).isEmpty();
    assertThat(messages(ENGLISH, new CommaBlend("11,5 %", "88 %"))).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({"8 {fl} oz", "${1+1} kg", "{inEnglish} kg", "1 \\{kg", "{{}}", "5 k}g"})
  void hostile_text_stays_text_in_the_message(String text) {
    assertThat(messages(ENGLISH, new Line(text))).singleElement().asString().contains(text);
  }

  @Test
  void temperatures_are_held_to_bounds_in_degrees() {
    TemperatureRange inside = TemperatureRange.ofCelsius(62, 65);
    TemperatureDifference ten = TemperatureDifference.ofKelvin(10);

    assertThat(messages(ENGLISH, new Pot(TemperaturePoint.ofCelsius(93.3), inside, ten))).isEmpty();
    assertThat(
            messages(
                ENGLISH,
                new Pot(
                    TemperaturePoint.ofFahrenheit(200),
                    TemperatureRange.ofCelsius(62, 95),
                    TemperatureDifference.ofKelvin(5))))
        .containsExactlyInAnyOrder(
            "The value is too high. Found: 93.3333 °C. Allowed: at most 93.3 °C. "
                + "Give a lower value.",
            "The value is too high. Found: 62–95 °C. Allowed: at most 90 °C. "
                + "Give a lower value.",
            "The value is too low. Found: 5 K. Allowed: more than 5 K. Give a higher value.");
  }

  @Test
  void quantities_are_positive_and_between() {
    assertThat(messages(ENGLISH, new Weights(grams(1), grams(1), grams(1)))).isEmpty();
    assertThat(messages(ENGLISH, new Weights(null, null, null))).isEmpty();
    assertThat(messages(ENGLISH, new Weights(grams(0), grams(-1), UsCustomaryUnits.pounds(50))))
        .containsExactlyInAnyOrder(
            "must be greater than 0",
            "The value is not above zero. Found: -1 g. Allowed: values above zero. "
                + "Give a value above zero.",
            "The value is too high. Found: 50 lb. Allowed: at most 44.0925 lb. "
                + "Give a lower value.");
    assertThat(messages(GERMAN, new Weights(grams(0), grams(1), kilograms(20))))
        .containsExactly("muss größer als 0 sein");
  }

  @Test
  void fractions_are_held_to_bounds_with_their_basis() {
    assertThat(
            messages(
                ENGLISH, new Shares(MassFraction.ofPercent(12), VolumeFraction.ofPercent(0.5))))
        .containsExactlyInAnyOrder(
            "The value is too high. Found: 12 % by mass. Allowed: less than 12 % by mass. "
                + "Give a lower value.",
            "The value is too low. Found: 0.5 % by volume. Allowed: at least 1 % by volume. "
                + "Give a higher value.");
  }

  @Test
  void fractions_of_an_object_sum_to_one() {
    assertThat(messages(ENGLISH, new Blend(MassFraction.of(1.0 / 9), MassFraction.of(8.0 / 9))))
        .isEmpty();
    assertThat(
            messages(ENGLISH, new Blend(MassFraction.ofPercent(10), MassFraction.ofPercent(89.5))))
        .containsExactly(
            "The fractions (resin, wax) do not sum to one. Found: 99.5 %. "
                + "Allowed: a sum of 100 %. Correct one of the fractions.");
    assertThat(messages(ENGLISH, new BlendText("11 %", "89 %"))).isEmpty();
    assertThat(messages(ENGLISH, new BlendText("11 %", null))).isEmpty();
    assertThat(messages(ENGLISH, new BlendText("11 %", "89"))).isEmpty();
    assertThat(messages(GERMAN, new BlendText("11 %", "88 %")))
        .singleElement()
        .asString()
        .startsWith("Die Anteile (resin, wax) ergeben zusammen nicht eins.");
    assertThat(
            messages(ENGLISH, new Mixed(MassFraction.ofPercent(50), VolumeFraction.ofPercent(50))))
        .singleElement()
        .asString()
        .startsWith("Fractions by mass and by volume do not add up.");
  }

  @Test
  void the_violation_carries_the_problem() {
    ConstraintViolation<Line> violation = ENGLISH.validate(new Line("8 ml")).iterator().next();

    Problem problem =
        violation.unwrap(HibernateConstraintViolation.class).getDynamicPayload(Problem.class)
                instanceof Problem found
            ? found
            : null;
    assertThat(problem).isNotNull();
    assertThat(problem.code()).isEqualTo(UnitsProblem.WRONG_KIND);
    assertThat(violation.getPropertyPath()).hasToString("amount");
  }

  @Test
  void an_own_message_is_left_alone() {
    assertThat(messages(ENGLISH, new OwnMessage(kilograms(2))))
        .containsExactly("no more than 1 kg, please");
  }

  @Test
  void a_bound_that_does_not_fit_is_a_defect_of_the_declaration() {
    assertThatThrownBy(() -> ENGLISH.validate(new BadBound(kilograms(2))))
        .isInstanceOf(ValidationException.class);
    assertThatThrownBy(() -> ENGLISH.validate(new BadType(Thread.currentThread())))
        .isInstanceOf(ValidationException.class);
  }
}
