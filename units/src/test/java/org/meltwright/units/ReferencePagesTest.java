// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The reference pages, held to the code. */
class ReferencePagesTest {

  private static final Path REFERENCE = Path.of("..", "docs", "reference");

  @Test
  void the_page_of_units_lists_each_unit_as_the_code_has_it() throws Exception {
    List<String> rows = new ArrayList<>();
    for (QuantityKind<?> kind : QuantityKind.all()) {
      rows.add("### " + kind.id().replace('-', ' '));
      rows.add("| symbol | constant | in " + kind.siDefinition().symbol() + " | also read |");
      for (Holder holder : HOLDERS) {
        for (UnitDefinition<?> unit : holder.table().definitions()) {
          if (unit.kind() == kind) {
            rows.add(row(unit, holder));
          }
        }
      }
    }

    assertThat(Files.readAllLines(REFERENCE.resolve("units.md"))).containsSubsequence(rows);
    assertThat(Files.readAllLines(REFERENCE.resolve("units.md")))
        .filteredOn(line -> line.startsWith("| `"))
        .hasSize(UnitTables.all().size());
  }

  private record Holder(Class<?> type, UnitTable table) {}

  private static final List<Holder> HOLDERS =
      List.of(
          new Holder(MetricUnits.class, MetricUnits.TABLE),
          new Holder(UsCustomaryUnits.class, UsCustomaryUnits.TABLE),
          new Holder(ImperialUnits.class, ImperialUnits.TABLE));

  private static String row(UnitDefinition<?> unit, Holder holder)
      throws ReflectiveOperationException {
    return "| `%s` | `%s.%s` | %s | %s |"
        .formatted(
            unit.symbol(),
            holder.type().getSimpleName(),
            constant(unit, holder.type()),
            factor(unit),
            holder.table().spellings(unit).stream().collect(Collectors.joining(", ")));
  }

  private static String constant(UnitDefinition<?> unit, Class<?> holder)
      throws ReflectiveOperationException {
    for (Field field : holder.getFields()) {
      if (field.get(null) == unit.unit()) {
        return field.getName();
      }
    }
    throw new AssertionError("no constant for " + unit);
  }

  private static String factor(UnitDefinition<?> unit) {
    BigDecimal exact = unit.toSiExact(BigDecimal.ONE).stripTrailingZeros();
    return exact.precision() <= 20
        ? exact.toPlainString()
        : "≈ " + exact.round(new MathContext(10)).toPlainString();
  }

  @Test
  void the_grammar_page_names_each_problem_of_the_parser() throws IOException {
    String page = Files.readString(REFERENCE.resolve("text-grammar.md"));

    for (UnitsProblem problem : UnitsProblem.values()) {
      boolean ofValues =
          problem == UnitsProblem.NUMBER_NOT_FINITE
              || problem == UnitsProblem.NAME_BLANK
              || problem == UnitsProblem.TEMPERATURE_POINT_OR_DIFFERENCE;
      assertThat(page.contains("`" + problem.id() + "`")).as(problem.id()).isNotEqualTo(ofValues);
    }
  }

  @Test
  void the_grammar_page_lists_each_scale_word_that_reads() throws IOException {
    String page = Files.readString(REFERENCE.resolve("text-grammar.md"));
    String scales =
        page.substring(page.indexOf("scale           ="), page.indexOf("share sign      ="));

    assertThat(java.util.regex.Pattern.compile("\"([^\"]+)\"").matcher(scales).results())
        .hasSizeGreaterThan(15)
        .allSatisfy(
            word -> assertThat(TemperatureScale.find(UnitTable.key(word.group(1)))).isNotNull());
  }
}
