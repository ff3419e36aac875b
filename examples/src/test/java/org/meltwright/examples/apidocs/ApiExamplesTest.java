// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The examples in the API docs compile, run and give what they state; every public type has one.
 *
 * <p>To check the examples of some files only, name a part of their path: {@code
 * -Dmeltwright.apidocs=core/batch}.
 */
class ApiExamplesTest {

  private static final String PART = System.getProperty("meltwright.apidocs", "");

  @TempDir static Path classes;

  @TestFactory
  Stream<DynamicTest> example_gives_what_it_states() throws IOException {
    CompiledExamples compiled = CompiledExamples.of(files(), classes);
    return compiled.examples().stream()
        .map(e -> DynamicTest.dynamicTest(e.toString(), () -> compiled.run(e)));
  }

  @Test
  void every_public_type_has_an_example() throws IOException {
    assertThat(files())
        .filteredOn(ApiExample::isPublic)
        .filteredOn(f -> ApiExample.of(f).isEmpty())
        .extracting(ApiExample::type)
        .isEmpty();
  }

  private static List<Path> files() throws IOException {
    return CompiledExamples.files().stream().filter(f -> f.toString().contains(PART)).toList();
  }
}
