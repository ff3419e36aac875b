// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.lang.reflect.InvocationTargetException;
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

/** The examples in the API docs of the library, compiled, ready to be run. */
final class CompiledExamples {

  private static final List<String> MODULES = List.of("units", "core", "safety");

  private final List<ApiExample> examples;
  private final ClassLoader loader;

  private CompiledExamples(List<ApiExample> examples, ClassLoader loader) {
    this.examples = examples;
    this.loader = loader;
  }

  /** Compiles the examples of some files into a folder. */
  static CompiledExamples of(List<Path> files, Path classes) throws IOException {
    List<ApiExample> examples = files.stream().flatMap(f -> ApiExample.of(f).stream()).toList();
    assertThat(examples).isNotEmpty();
    compile(examples, classes);
    URL[] folder = {classes.toUri().toURL()};
    return new CompiledExamples(
        examples, new URLClassLoader(folder, CompiledExamples.class.getClassLoader()));
  }

  List<ApiExample> examples() {
    return examples;
  }

  void run(ApiExample example) throws Throwable {
    try {
      loader.loadClass(example.className()).getMethod("run").invoke(null);
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }

  /** The source files of the library. */
  static List<Path> files() throws IOException {
    return files(MODULES);
  }

  /** The source files of some modules. */
  static List<Path> files(List<String> modules) throws IOException {
    List<Path> files = new ArrayList<>();
    for (String module : modules) {
      try (Stream<Path> tree = Files.walk(Path.of("..", module, "src", "main", "java"))) {
        tree.filter(f -> f.toString().endsWith(".java"))
            .filter(f -> !f.toString().endsWith("-info.java"))
            .sorted()
            .forEach(files::add);
      }
    }
    return files;
  }

  private static void compile(List<ApiExample> examples, Path classes) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter told = new StringWriter();
    List<String> options =
        List.of("-d", classes.toString(), "-cp", System.getProperty("java.class.path"));
    List<Source> sources = examples.stream().map(Source::new).toList();
    boolean done = compiler.getTask(told, null, null, options, null, sources).call();
    assertThat(done).as(told.toString()).isTrue();
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
