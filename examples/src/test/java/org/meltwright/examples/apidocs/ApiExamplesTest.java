// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.net.MalformedURLException;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
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

  private static final List<String> MODULES = List.of("units", "core", "safety");
  private static final String PART = System.getProperty("meltwright.apidocs", "");

  @TempDir static Path classes;

  @TestFactory
  Stream<DynamicTest> example_gives_what_it_states() throws IOException {
    List<ApiExample> examples = files().stream().flatMap(f -> ApiExample.of(f).stream()).toList();
    assertThat(examples).isNotEmpty();
    compile(examples);
    ClassLoader loader = new URLClassLoader(new URL[] {url(classes)}, getClass().getClassLoader());
    return examples.stream().map(e -> DynamicTest.dynamicTest(e.toString(), () -> run(loader, e)));
  }

  @Test
  void every_public_type_has_an_example() throws IOException {
    assertThat(files())
        .filteredOn(ApiExample::isPublic)
        .filteredOn(f -> ApiExample.of(f).isEmpty())
        .extracting(ApiExample::type)
        .isEmpty();
  }

  private static void compile(List<ApiExample> examples) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter told = new StringWriter();
    List<String> options =
        List.of("-d", classes.toString(), "-cp", System.getProperty("java.class.path"));
    List<Source> sources = examples.stream().map(Source::new).toList();
    boolean done = compiler.getTask(told, null, null, options, null, sources).call();
    assertThat(done).as(told.toString()).isTrue();
  }

  private static void run(ClassLoader loader, ApiExample example) throws Throwable {
    try {
      loader.loadClass(example.className()).getMethod("run").invoke(null);
    } catch (java.lang.reflect.InvocationTargetException e) {
      throw e.getCause();
    }
  }

  private static List<Path> files() throws IOException {
    List<Path> files = new ArrayList<>();
    for (String module : MODULES) {
      try (Stream<Path> tree = Files.walk(Path.of("..", module, "src", "main", "java"))) {
        tree.filter(f -> f.toString().endsWith(".java"))
            .filter(f -> !f.toString().endsWith("-info.java"))
            .filter(f -> f.toString().contains(PART))
            .sorted()
            .forEach(files::add);
      }
    }
    return files;
  }

  private static URL url(Path path) throws MalformedURLException {
    return path.toUri().toURL();
  }

  /** A class made of an example. */
  private static final class Source extends SimpleJavaFileObject {

    private final String text;

    Source(ApiExample example) {
      super(URI.create("string:///" + example.className() + ".java"), JavaFileObject.Kind.SOURCE);
      this.text = ExampleWriter.source(example);
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }
}
