// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hibernate.validator.engine.HibernateConstraintViolation;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * Reads JSON into a draft record and reports all problems at once.
 *
 * <p>The text is read as a tree, held against the record's shape and bound; then, if asked for, the
 * record is checked by Bean Validation. A problem in one place does not hide those in others: what
 * does not fit is taken out, and the rest is checked on.
 *
 * @param <T> the draft record
 */
public final class DraftReader<T extends Record> {

  /**
   * A draft as far as it could be read, and all problems found on the way.
   *
   * @param <T> the draft record
   * @param draft the draft
   * @param problems all problems; empty if the draft is as it should be
   */
  public record Reading<T>(T draft, List<Problem> problems) {

    public Reading {
      problems = List.copyOf(problems);
    }
  }

  /** Built when first used: it takes more than half a second. */
  private static final class Default {
    static final Set<Class<?>> PRESENCE = Set.of(NotNull.class, NotBlank.class, NotEmpty.class);
    static final Validator VALIDATOR =
        Validation.byDefaultProvider()
            .configure()
            .messageInterpolator(new ParameterMessageInterpolator())
            .buildValidatorFactory()
            .getValidator();
  }

  private final Class<T> type;
  private final boolean isValidating;

  /**
   * Returns a reader for a draft record that says itself what is wrong with it.
   *
   * @param <T> the draft record
   * @param type the draft record's class
   * @return the reader
   */
  public static <T extends Record> DraftReader<T> of(Class<T> type) {
    return new DraftReader<>(type, false);
  }

  /**
   * Returns a reader for a record with constraints of Bean Validation, which are checked.
   *
   * @param <T> the record
   * @param type the record's class
   * @return the reader
   */
  public static <T extends Record> DraftReader<T> validating(Class<T> type) {
    return new DraftReader<>(type, true);
  }

  private DraftReader(Class<T> type, boolean isValidating) {
    this.type = type;
    this.isValidating = isValidating;
  }

  /**
   * Reads a draft.
   *
   * @param in JSON in UTF-8
   * @return the draft and all problems
   * @throws ProblemException if there is no object to read a draft from
   * @throws IOException if the text cannot be read
   */
  public Reading<T> read(InputStream in) throws IOException {
    JsonTree tree = JsonTree.read(in);
    List<Problem> problems = new ArrayList<>(tree.problems());
    problems.addAll(RecordShape.prune(tree.root(), type));
    if (!tree.root().isObject()) {
      throw new ProblemException(problems);
    }
    T draft = RecordShape.bind(tree.root(), type);
    if (isValidating) {
      problems.addAll(missed(validate(draft), problems));
    }
    return new Reading<>(draft, problems);
  }

  /** What was taken out of the tree is reported already and not missing as well. */
  private static List<Problem> missed(List<Problem> found, List<Problem> before) {
    Set<String> paths = before.stream().map(Problem::path).collect(Collectors.toSet());
    return found.stream().filter(p -> !paths.contains(p.path())).toList();
  }

  private List<Problem> validate(T draft) {
    return Default.VALIDATOR.validate(draft).stream()
        .map(DraftReader::problem)
        .sorted(Comparator.comparing(Problem::path))
        .toList();
  }

  private static Problem problem(ConstraintViolation<?> violation) {
    String path = JsonPointers.of(violation.getPropertyPath());
    HibernateConstraintViolation<?> hibernate =
        violation.unwrap(HibernateConstraintViolation.class);
    Problem carried = hibernate.getDynamicPayload(Problem.class);
    return (carried == null ? plain(violation) : carried).under(path);
  }

  private static Problem plain(ConstraintViolation<?> violation) {
    if (Default.PRESENCE.contains(
        violation.getConstraintDescriptor().getAnnotation().annotationType())) {
      return Problem.of(JsonProblem.MISSING_FIELD, JsonProblem.CHECK.name("nothing"));
    }
    return Problem.of(JsonProblem.INVALID_VALUE, String.valueOf(violation.getInvalidValue()))
        .with("message", violation.getMessage());
  }
}
