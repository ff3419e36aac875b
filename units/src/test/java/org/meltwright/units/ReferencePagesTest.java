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
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The reference pages, held to the code. */
class ReferencePagesTest {

  private static final Path REFERENCE = Path.of("..", "docs", "reference");
  private static final String KINDS = "## Kinds\n";

  /** All below the heading of the kinds is written from the code: {@code -Dpages.write=true}. */
  @Test
  void the_page_of_units_lists_each_unit_as_the_code_has_it() throws Exception {
    Path file = REFERENCE.resolve("units.md");
    String page = Files.readString(file);
    String head = page.substring(0, page.indexOf(KINDS) + KINDS.length());
    String written = head + String.join("\n", kinds()) + "\n";
    if (Boolean.getBoolean("pages.write")) {
      Files.writeString(file, written);
    }

    assertThat(Files.readString(file)).isEqualTo(written);
  }

  private static List<String> kinds() throws ReflectiveOperationException {
    List<String> lines = new ArrayList<>();
    for (QuantityKind<?> kind : QuantityKind.all()) {
      lines.add("");
      lines.add("### " + kind.id().replace('-', ' '));
      lines.add("");
      lines.add("| symbol | constant | in " + kind.siDefinition().symbol() + " | also read |");
      lines.add("|---|---|---|---|");
      for (Holder holder : HOLDERS) {
        for (UnitDefinition<?> unit : holder.table().definitions()) {
          if (unit.kind() == kind) {
            lines.add(row(unit, holder));
          }
        }
      }
    }
    return lines;
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

  /** What values and fields say, not what reads a text. */
  private static final Set<UnitsProblem> NOT_OF_THE_PARSER =
      EnumSet.of(
          UnitsProblem.NUMBER_NOT_FINITE,
          UnitsProblem.NAME_BLANK,
          UnitsProblem.TEMPERATURE_POINT_OR_DIFFERENCE,
          UnitsProblem.FIELD_MISSING,
          UnitsProblem.ENTRY_MISSING,
          UnitsProblem.WORD_UNKNOWN);

  @Test
  void the_grammar_page_names_each_problem_of_the_parser() throws IOException {
    String page = Files.readString(REFERENCE.resolve("text-grammar.md"));

    for (UnitsProblem problem : UnitsProblem.values()) {
      assertThat(page.contains("`" + problem.id() + "`"))
          .as(problem.id())
          .isEqualTo(!NOT_OF_THE_PARSER.contains(problem));
    }
  }

  /** Each production that lists words has those of the code, and no others. */
  @Test
  void the_grammar_page_lists_the_words_of_the_code() throws IOException {
    assertThat(words("about")).isEqualTo(Set.of(QuantityText.ABOUT));
    assertThat(words("number in words")).isEqualTo(NumberWords.NUMBERS.keySet());
    assertThat(words("joined to unit"))
        .contains(NumberWords.JOINED.keySet().toArray(String[]::new));
    assertThat(words("share in words")).isEqualTo(NumberWords.SHARES.keySet());
    assertThat(words("degrees")).isEqualTo(Set.of(TemperatureScale.DEGREES));
    assertThat(words("scale word")).isEqualTo(TemperatureScale.BY_WORD.keySet());
    assertThat(words("share sign")).isEqualTo(ShareReader.SIGNS.keySet());
    assertThat(words("basis")).isEqualTo(ShareReader.BASES.keySet());
    assertThat(words("quotient")).isEqualTo(ShareReader.QUOTIENTS.keySet());
    assertThat(words("state")).isEqualTo(MaterialState.BY_WORD.keySet());
  }

  private static Set<String> words(String production) throws IOException {
    String page = Files.readString(REFERENCE.resolve("text-grammar.md"));
    int from = page.indexOf("\n" + production + " ");
    String definition = page.substring(from, page.indexOf(";\n", from));
    return Pattern.compile("\"([^\"]+)\"")
        .matcher(definition)
        .results()
        .map(word -> word.group(1).toLowerCase(Locale.ROOT))
        .collect(Collectors.toSet());
  }
}
