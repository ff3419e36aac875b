// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Symbol;

/**
 * The formula pages have one form, and every worked number on them is computed anew by the library.
 *
 * <p>A worked number stands on the page as {@code `name(1, 2) = 3.4`}; {@link WorkedNumbers} knows
 * what each name computes. As many digits count as the page shows.
 */
class FormulaPagesTest {

  private static final Path REFERENCE = Path.of("..", "docs", "reference");
  private static final Pattern SECTION =
      Pattern.compile("(?ms)^## (?!Symbols)(.+?)$(.*?)(?=^## |\\z)");
  private static final Pattern LABEL = Pattern.compile("(?m)^- \\*\\*(\\w+)\\*\\*");
  private static final Pattern WORKED = Pattern.compile("`(\\w+)\\(([^()`]*)\\) = ([^`]+)`");
  private static final List<String> LABELS =
      List.of("Answers", "Formula", "Symbols", "Valid", "Source", "Worked");

  /** A worked number as it stands on a page. */
  private record Worked(String page, String name, double[] arguments, BigDecimal result) {
    @Override
    public String toString() {
      return page + ": " + name + Arrays.toString(arguments) + " = " + result;
    }
  }

  private static Stream<Path> pages() throws IOException {
    try (Stream<Path> files = Files.list(REFERENCE)) {
      return files
          .filter(f -> f.getFileName().toString().matches("formulas-.*\\.md"))
          .filter(f -> !f.endsWith("formulas-thermal.md"))
          .sorted()
          .toList()
          .stream();
    }
  }

  private static String read(Path page) {
    try {
      return Files.readString(page, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Worked> worked() throws IOException {
    List<Worked> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(REFERENCE)) {
      files
          .filter(f -> f.getFileName().toString().startsWith("formulas-"))
          .sorted()
          .forEach(p -> WORKED.matcher(read(p)).results().forEach(m -> all.add(worked(p, m))));
    }
    return all;
  }

  private static Worked worked(Path page, MatchResult match) {
    double[] arguments =
        Stream.of(match.group(2).split(",", -1)).mapToDouble(Double::parseDouble).toArray();
    return new Worked(
        page.getFileName().toString(), match.group(1), arguments, new BigDecimal(match.group(3)));
  }

  @ParameterizedTest
  @MethodSource("worked")
  void worked_number_is_what_the_library_computes(Worked worked) {
    ToDoubleFunction<double[]> formula = WorkedNumbers.ALL.get(worked.name());
    assertThat(formula).as("formula %s", worked.name()).isNotNull();

    BigDecimal computed = BigDecimal.valueOf(formula.applyAsDouble(worked.arguments()));

    assertThat(computed.setScale(worked.result().scale(), RoundingMode.HALF_EVEN))
        .isEqualByComparingTo(worked.result());
  }

  @ParameterizedTest
  @MethodSource("pages")
  void every_formula_has_its_six_parts_in_order_and_a_worked_number(Path page) {
    List<MatchResult> sections = SECTION.matcher(read(page)).results().toList();

    assertThat(sections).isNotEmpty();
    for (MatchResult section : sections) {
      assertThat(LABEL.matcher(section.group(2)).results().map(m -> m.group(1)))
          .as("%s: %s", page, section.group(1))
          .containsExactlyElementsOf(LABELS);
      assertThat(WORKED.matcher(section.group(2)).find()).as(section.group(1)).isTrue();
    }
  }

  /** Formula and symbols of a section, as its working has them. */
  private static String lines(Explanation working) {
    Set<Symbol> symbols = new LinkedHashSet<>();
    List<String> formulas = new ArrayList<>();
    for (Explanation.Step step : working.steps()) {
      if (!formulas.contains(step.formula().signs())) {
        formulas.add(step.formula().signs());
        symbols.add(step.formula().result());
        symbols(step.formula().tree(), symbols);
      }
    }
    return symbols.stream()
        .map(s -> s.sign() + " " + s.name().english() + " [" + unit(s) + "]")
        .collect(
            Collectors.joining(
                "; ", "- **Formula** " + String.join("; ", formulas) + "\n- **Symbols** ", ".\n"));
  }

  private static String unit(Symbol symbol) {
    return symbol.unit().isEmpty() || symbol.unit().equals("1") ? "–" : symbol.unit();
  }

  private static void symbols(Expr tree, Set<Symbol> found) {
    if (tree instanceof Symbol symbol) {
      found.add(symbol);
    } else if (tree instanceof Expr.Sum sum) {
      sum.terms().forEach(t -> symbols(t, found));
    } else if (tree instanceof Expr.Product product) {
      product.factors().forEach(f -> symbols(f, found));
    } else if (tree instanceof Expr.Call call) {
      call.arguments().forEach(a -> symbols(a, found));
    } else {
      List.of(parts(tree)).forEach(part -> symbols(part, found));
    }
  }

  private static Expr[] parts(Expr tree) {
    if (tree instanceof Expr.Difference d) {
      return new Expr[] {d.from(), d.taken()};
    } else if (tree instanceof Expr.Quotient q) {
      return new Expr[] {q.over(), q.under()};
    } else if (tree instanceof Expr.Power p) {
      return new Expr[] {p.base(), p.exponent()};
    } else if (tree instanceof Expr.Total t) {
      return new Expr[] {t.each()};
    } else if (tree instanceof Expr.Choice c) {
      return new Expr[] {c.left(), c.right(), c.reached(), c.below()};
    }
    return new Expr[] {};
  }

  private static Set<String> explained() {
    return new TreeSet<>(WorkedFormulas.ALL.keySet());
  }

  @ParameterizedTest
  @MethodSource("explained")
  void formula_and_symbols_are_those_that_results_explain_themselves_with(String section)
      throws IOException {
    String[] place = section.split(": ", 2);
    Path page = REFERENCE.resolve("formulas-" + place[0] + ".md");
    String text = read(page);
    int start = text.indexOf("- **Formula**", text.indexOf("## " + place[1] + "\n"));
    int end = text.indexOf("- **Valid**", start);
    String lines = lines(WorkedFormulas.ALL.get(section));

    if (Boolean.getBoolean("pages.write")) {
      text = text.substring(0, start) + lines + text.substring(end);
      Files.writeString(page, text, StandardCharsets.UTF_8);
      return;
    }
    assertThat(text.substring(start, end)).isEqualTo(lines);
  }

  @Test
  void no_worked_number_is_left_without_a_page() throws IOException {
    Set<String> used = new TreeSet<>();
    worked().forEach(w -> used.add(w.name()));

    assertThat(used).isEqualTo(new TreeSet<>(WorkedNumbers.ALL.keySet()));
  }
}
