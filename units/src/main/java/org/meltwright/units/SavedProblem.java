// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.Locale;

/**
 * What stands for a problem in a stream: texts alone, so that it can be read where the class of its
 * code or its bundle is missing.
 */
record SavedProblem(
    String codeType,
    String codeName,
    String id,
    String path,
    LinkedHashMap<String, Bilingual> details,
    LinkedHashMap<String, Bilingual> texts)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /** A code of which only the id came through. */
  private record IdOnly(String id) implements ProblemCode {}

  static SavedProblem of(Problem problem) {
    ProblemCode code = problem.code();
    LinkedHashMap<String, Bilingual> texts = new LinkedHashMap<>();
    for (String part : new String[] {"what", "allowed", "remedy"}) {
      texts.put(part, Bilingual.of((Locale reader) -> problem.text(part, reader)));
    }
    boolean constant = code instanceof Enum<?>;
    return new SavedProblem(
        constant ? ((Enum<?>) code).getDeclaringClass().getName() : "",
        constant ? ((Enum<?>) code).name() : "",
        code.id(),
        problem.path(),
        new LinkedHashMap<>(problem.bilingualDetails()),
        texts);
  }

  private Object readResolve() {
    return problem();
  }

  Problem problem() {
    return new Problem(code(), path, details, texts);
  }

  private ProblemCode code() {
    ClassLoader loader = Thread.currentThread().getContextClassLoader();
    try {
      Class<?> type =
          Class.forName(
              codeType, false, loader == null ? SavedProblem.class.getClassLoader() : loader);
      if (type.isEnum() && ProblemCode.class.isAssignableFrom(type)) {
        for (Object constant : type.getEnumConstants()) {
          if (((Enum<?>) constant).name().equals(codeName)) {
            return (ProblemCode) constant;
          }
        }
      }
    } catch (ClassNotFoundException | LinkageError e) {
      return new IdOnly(id);
    }
    return new IdOnly(id);
  }
}
