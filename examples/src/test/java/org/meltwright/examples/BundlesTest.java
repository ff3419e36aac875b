// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;

/** Every problem speaks English and German, and says what is allowed and what to do. */
class BundlesTest {

  private static List<ProblemCode> codes() {
    return new ClassFileImporter()
        .importPackages("org.meltwright").stream()
            .filter(c -> c.isEnum() && c.isAssignableTo(ProblemCode.class))
            .map(JavaClass::reflect)
            .flatMap(c -> Arrays.stream(c.getEnumConstants()))
            .map(ProblemCode.class::cast)
            .toList();
  }

  @Test
  void every_problem_code_has_its_three_texts_in_both_languages() {
    for (ProblemCode code : codes()) {
      Problem problem = Problem.of(code, "x");
      for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
        assertThat(problem.what(locale)).as(code.id()).isNotBlank();
        assertThat(problem.remedy(locale)).as(code.id()).isNotBlank();
        problem.allowed(locale);
      }
    }
  }

  @Test
  void problem_codes_are_unique_across_the_house() {
    Set<String> ids = new HashSet<>();

    assertThat(codes())
        .hasSizeGreaterThan(40)
        .allSatisfy(c -> assertThat(ids.add(c.id())).isTrue());
  }

  @Test
  void both_languages_of_each_bundle_have_the_same_keys() {
    Set<String> packages = new HashSet<>();
    codes().forEach(c -> packages.add(c.getClass().getPackageName()));
    for (String name : packages) {
      Set<String> english = ResourceBundle.getBundle(name + ".messages", Locale.ENGLISH).keySet();
      Set<String> german = ResourceBundle.getBundle(name + ".messages", Locale.GERMAN).keySet();
      german.removeIf(key -> key.startsWith("what.")); // the English stands in the code
      assertThat(german).as(name).isEqualTo(english);
    }
  }
}
