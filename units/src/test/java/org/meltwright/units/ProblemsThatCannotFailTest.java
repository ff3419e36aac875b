// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.meltwright.units.MetricUnits.grams;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.units.constraint.ConstraintProblem;

/**
 * Messages, stack traces and streams of problems, with codes of an app's own and without bundles.
 */
class ProblemsThatCannotFailTest {

  /** An app's code without a bundle beside it that knows it. */
  enum KilnProblem implements ProblemCode {
    DOOR_OPEN {
      @Override
      public String id() {
        return "kiln.door-open";
      }
    }
  }

  /** A code that is no enum, and no stream takes it. */
  private static final ProblemCode NAMELESS = () -> "kiln.nameless";

  private static Problem kiln() {
    return Problem.of(KilnProblem.DOOR_OPEN, "ajar")
        .with("limit", Bilingual.of(1.5).plus(" mm"))
        .under("/kiln");
  }

  private static <T> T throughAStream(T object, Class<T> type)
      throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(object);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return type.cast(in.readObject());
    }
  }

  @Test
  void code_without_a_bundle_is_told_by_its_id_and_details() {
    Problem problem = kiln();

    assertThat(problem.what(Locale.ENGLISH)).isEqualTo("kiln.door-open (limit: 1.5 mm).");
    assertThat(problem.inWords(Locale.ENGLISH))
        .isEqualTo("kiln.door-open (limit: 1.5 mm). Found: ajar.");
    assertThat(problem.inWords(Locale.GERMAN))
        .isEqualTo("kiln.door-open (limit: 1,5 mm). Gefunden: ajar.");
    assertThat(problem.allowed(Locale.GERMAN)).isEmpty();
    assertThat(ProblemData.of(problem, Locale.GERMAN).what()).contains("kiln.door-open");
  }

  @Test
  void exception_with_such_a_code_has_message_stack_trace_and_log_record() {
    ProblemException exception = new ProblemException(List.of(kiln(), kiln().under("/2")));
    StringWriter trace = new StringWriter();
    exception.printStackTrace(new PrintWriter(trace));

    assertThat(exception.getMessage()).hasLineCount(2).contains("/kiln: kiln.door-open");
    assertThat(trace.toString()).contains("kiln.door-open").contains("/2/kiln");
    assertThat(logged(exception)).contains("kiln.door-open");
  }

  private static String logged(ProblemException exception) {
    StringBuilder text = new StringBuilder();
    Logger logger = Logger.getAnonymousLogger();
    logger.setUseParentHandlers(false);
    logger.addHandler(
        new Handler() {
          @Override
          public void publish(LogRecord entry) {
            text.append(new SimpleFormatter().format(entry));
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        });
    logger.log(Level.WARNING, "refused", exception);
    return text.toString();
  }

  @ParameterizedTest
  @EnumSource(UnitsProblem.class)
  void problem_of_ours_comes_back_from_a_stream_as_it_was(UnitsProblem code) throws Exception {
    Problem problem = Problem.of(code, "x").with("unit", "y").under("/a");

    Problem back = throughAStream(problem, Problem.class);

    assertThat(back).isEqualTo(problem).hasSameHashCodeAs(problem);
    assertThat(back.code()).isSameAs(code);
    for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
      assertThat(back.inWords(locale)).isEqualTo(problem.inWords(locale));
    }
  }

  @Test
  void exception_comes_back_from_a_stream_with_all_its_problems() throws Exception {
    ProblemException exception =
        new ProblemException(
            List.of(
                kiln(),
                Problem.of(NAMELESS, "x"),
                Problem.of(ConstraintProblem.TOO_HIGH, "95 °C").with("limit", "90 °C")));

    ProblemException back = throughAStream(exception, ProblemException.class);

    assertThat(back.getMessage()).isEqualTo(exception.getMessage());
    assertThat(back.problems().get(0)).isEqualTo(exception.problems().get(0));
    assertThat(back.problems().get(0).code()).isSameAs(KilnProblem.DOOR_OPEN);
    assertThat(back.problems().get(0).what(Locale.GERMAN)).contains("1,5 mm");
    assertThat(back.problems().get(1).code().id()).isEqualTo("kiln.nameless");
    assertThat(back.problems().get(2).details()).containsEntry("limit", "90 °C");
    assertThat(back.under("/x").problems().get(0).path()).isEqualTo("/x/kiln");
  }

  /** A stream from another program: neither the code's class nor its bundle is here. */
  @Test
  void texts_come_through_where_the_code_is_unknown() {
    Problem problem = kiln();
    SavedProblem saved = SavedProblem.of(problem);
    SavedProblem elsewhere =
        new SavedProblem(
            "org.example.Gone", "LOST", saved.id(), saved.path(), saved.details(), saved.texts());

    Problem back = elsewhere.problem();

    assertThat(back.code().id()).isEqualTo("kiln.door-open");
    assertThat(back.inWords(Locale.GERMAN)).isEqualTo(problem.inWords(Locale.GERMAN));
    assertThat(back.under("/b").path()).isEqualTo("/b/kiln");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void factories_answer_what_is_no_number_with_a_problem_that_names_the_kind(double value) {
    for (Problem problem :
        List.of(
            refused(() -> grams(value)),
            refused(() -> UsCustomaryUnits.inches(value)),
            refused(() -> Quantities.of(value, MetricUnits.CENTIMETRE)),
            refused(() -> QuantityKind.DENSITY.ofSi(value)),
            refused(() -> QuantityKind.MASS.toSi(value, MetricUnits.GRAM)),
            refused(() -> TemperaturePoint.ofFahrenheit(value)),
            refused(() -> TemperaturePoint.ofKelvin(value)),
            refused(() -> TemperatureDifference.ofFahrenheitDegrees(value)),
            refused(() -> MassFraction.ofPercent(value)),
            refused(() -> ScaleInterval.ofKilograms(value)))) {
      assertThat(problem.code()).isEqualTo(UnitsProblem.NUMBER_NOT_FINITE);
      assertThat(problem.what(Locale.GERMAN)).doesNotContain("of ");
    }
    assertThat(refused(() -> grams(value)).what(Locale.GERMAN))
        .isEqualTo("Der Wert (Masse) ist keine endliche Zahl.");
  }

  private static Problem refused(Runnable door) {
    return catchThrowableOfType(ProblemException.class, door::run).problems().get(0);
  }

  @Test
  void guard_answers_in_the_unit_given() {
    Check check = Check.beside(UnitsProblem.class);
    Problem problem = refused(() -> check.between(grams(2500.5), 0.001, 2, "mass"));

    assertThat(problem.inWords(Locale.ENGLISH))
        .isEqualTo(
            "The mass lies outside its range. Found: 2500.5 g. Allowed: 1 g to 2000 g. "
                + "Give a value in this range.");
    assertThat(problem.inWords(Locale.GERMAN))
        .isEqualTo(
            "Der Wert (Masse) liegt außerhalb seines Bereichs. Gefunden: 2500,5 g. "
                + "Erlaubt: 1 g bis 2000 g. Einen Wert in diesem Bereich angeben.");
    assertThat(check.between(grams(1500), 0.001, 2, "mass")).isEqualTo(1.5);
  }

  @Test
  void guard_says_open_ends_in_words_and_whose_value_it_is() {
    Check check = Check.beside(UnitsProblem.class);

    assertThat(
            refused(() -> check.between(0, Double.MIN_NORMAL, 5, "mass", "damar"))
                .inWords(Locale.ENGLISH))
        .startsWith(
            "The mass of damar lies outside its range. Found: 0. Allowed: more than 0 to 5.");
    assertThat(
            refused(() -> check.between(1, 0, Math.nextDown(1.0), "mass fraction"))
                .allowed(Locale.GERMAN))
        .isEqualTo("0 bis weniger als 1");
    assertThat(refused(() -> check.between(3, 2, 2, "mass")).allowed(Locale.ENGLISH))
        .isEqualTo("2");
    assertThat(refused(() -> check.named(" ", "mass", "damar")).what(Locale.ENGLISH))
        .contains("mass")
        .contains("damar");
  }

  @Test
  void a_temperature_below_absolute_zero_is_told_in_the_scale_given() {
    assertThat(refused(() -> TemperaturePoint.ofFahrenheit(-500.5)).found()).isEqualTo("-500.5 °F");
    assertThat(refused(() -> TemperaturePoint.ofKelvin(-1)).found(Locale.GERMAN)).isEqualTo("-1 K");
  }
}
