// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Turns a code block of the API docs into a class that runs it and checks what it says.
 *
 * <p>A statement that ends in a comment on the same line states its value: {@code expression; //
 * text} or {@code Type name = expression; // text}. {@code // throws SomeException} states that it
 * fails. Lines of comment only are for the reader. Whatever else stands there must compile and run.
 */
final class ExampleWriter {

  /** What a reader of the API docs is taken to have imported. */
  private static final List<String> IMPORTS =
      List.of(
          "java.time.*",
          "java.util.*",
          "java.util.function.*",
          "javax.measure.*",
          "javax.measure.quantity.*",
          "jakarta.validation.*",
          "org.joda.money.*",
          "org.meltwright.units.*",
          "org.meltwright.units.constraint.*",
          "org.meltwright.core.batch.*",
          "org.meltwright.core.cost.*",
          "org.meltwright.core.equipment.*",
          "org.meltwright.core.explain.*",
          "org.meltwright.core.material.*",
          "org.meltwright.core.measurement.*",
          "org.meltwright.core.mixture.*",
          "org.meltwright.core.numeric.*",
          "org.meltwright.core.planning.*",
          "org.meltwright.core.plausibility.*",
          "org.meltwright.core.planning.blend.*",
          "org.meltwright.core.source.*",
          "org.meltwright.core.thermal.*",
          "org.meltwright.core.thermal.heat.*",
          "org.meltwright.core.thermal.melting.*",
          "org.meltwright.core.thermal.setting.*",
          "org.meltwright.core.thermal.settling.*",
          "org.meltwright.safety.exposure.*",
          "org.meltwright.safety.hazard.*",
          "org.meltwright.safety.naming.*",
          "org.meltwright.safety.heating.*",
          "static org.meltwright.units.MetricUnits.*",
          "static org.meltwright.units.TemperaturePoint.*");

  private static final Pattern STATED = Pattern.compile("(?s)(.*);\\s*// ?(.*)");
  private static final Pattern DECLARED =
      Pattern.compile("(?s)(?:[\\w.]+(?:<.*?>)?(?:\\[\\])?)\\s+(\\w+)\\s*=[^=].*");
  private static final Pattern THROWS = Pattern.compile("throws (\\w+)");
  private static final Pattern TEXT = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"");

  private final StringBuilder out = new StringBuilder();

  private ExampleWriter() {}

  /** The source of a class with a static method {@code run}. */
  static String source(ApiExample example) {
    ExampleWriter writer = new ExampleWriter();
    IMPORTS.forEach(i -> writer.line("import " + i + ";"));
    writer.line("public class " + example.className() + " {");
    if (example.code().contains("validator.")) {
      writer.line("static final Validator validator = Stated.VALIDATOR;");
    }
    writer.line("public static void run() throws Exception {");
    writer.body(example.code());
    writer.line("}}");
    return writer.out.toString();
  }

  private void body(String code) {
    StringBuilder statement = new StringBuilder();
    for (String line : code.lines().filter(l -> !l.strip().startsWith("//")).toList()) {
      statement.append(line).append('\n');
      if (isWhole(statement.toString())) {
        statement(statement.toString().strip());
        statement.setLength(0);
      }
    }
    line(statement.toString());
  }

  /** Whether brackets are closed and the last line ends a statement. */
  private static boolean isWhole(String statement) {
    String bare = TEXT.matcher(statement).replaceAll("").replaceAll("//.*", "").strip();
    int depth =
        bare.chars().map(c -> "({".indexOf(c) >= 0 ? 1 : ")}".indexOf(c) >= 0 ? -1 : 0).sum();
    return depth == 0 && (bare.endsWith(";") || bare.endsWith("}"));
  }

  private void statement(String statement) {
    Matcher stated = STATED.matcher(statement);
    if (!stated.matches()) {
      line(statement);
      made(DECLARED.matcher(statement));
      return;
    }
    String code = stated.group(1);
    String says = literal(stated.group(2).strip());
    Matcher fails = THROWS.matcher(stated.group(2).strip());
    Matcher declared = DECLARED.matcher(code);
    if (fails.matches()) {
      line("Stated.fails(() -> { " + code + "; }, " + fails.group(1) + ".class);");
    } else if (declared.matches()) {
      line(code + ";");
      line("Stated.is(" + declared.group(1) + ", " + says + ");");
      made(declared);
    } else {
      line("Stated.is(" + code + ", " + says + ");");
    }
  }

  private void made(Matcher declared) {
    if (declared.matches()) {
      line("Stated.made(" + declared.group(1) + ");");
    }
  }

  private static String literal(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private void line(String text) {
    out.append(text.replace("Stated.", "org.meltwright.examples.apidocs.Stated.")).append('\n');
  }
}
