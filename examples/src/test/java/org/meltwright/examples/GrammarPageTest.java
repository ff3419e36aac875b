// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.data.Percentage.withPercentage;

import java.io.IOException;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/** The table of texts on the grammar page is read by the library, line by line. */
class GrammarPageTest {

  private static final Path PAGE = Path.of("..", "docs", "reference", "text-grammar.md");
  private static final Pattern ROW = Pattern.compile("(?m)^\\| ([a-z ]+) \\| `(.+)` \\| (.+) \\|$");
  private static final QuantityParser PARSER = QuantityParser.localeFree();

  private record Row(String kind, String text, String is) {}

  private static List<Row> rows() throws IOException {
    return ROW.matcher(Files.readString(PAGE, StandardCharsets.UTF_8))
        .results()
        .map(m -> new Row(m.group(1), m.group(2), m.group(3)))
        .toList();
  }

  private static double read(Row row) {
    return switch (row.kind()) {
      case "mass" -> QuantityKind.MASS.toSi(PARSER.parseMass(row.text()));
      case "volume" -> QuantityKind.VOLUME.toSi(PARSER.parseVolume(row.text()));
      case "area" -> QuantityKind.AREA.toSi(PARSER.parseArea(row.text()));
      case "length" -> QuantityKind.LENGTH.toSi(PARSER.parseLength(row.text()));
      case "time" -> QuantityKind.TIME.toSi(PARSER.parseTime(row.text()));
      case "density" -> QuantityKind.DENSITY.toSi(PARSER.parseDensity(row.text()));
      case "temperature" -> PARSER.parseTemperature(row.text()).celsius();
      case "difference" -> PARSER.parseTemperatureDifference(row.text()).kelvin();
      case "mass fraction" -> PARSER.parseMassFraction(row.text()).value();
      case "volume fraction" -> PARSER.parseVolumeFraction(row.text()).value();
      case "ratio" -> secondToFirst(PARSER.parseMixingRatio(row.text()));
      case "price" -> perKilogram(UnitPrice.parse(row.text()));
      default -> throw new IllegalArgumentException(row.kind());
    };
  }

  private static double secondToFirst(MixingRatio ratio) {
    return ratio.secondParts() / ratio.firstParts();
  }

  private static double perKilogram(UnitPrice price) {
    return price.perKilogram().toBigMoney(6, RoundingMode.HALF_UP).getAmount().doubleValue();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void text_on_the_page_is_read_as_the_page_says(Row row) {
    if (row.is().startsWith("refused")) {
      ProblemException refused = catchThrowableOfType(ProblemException.class, () -> read(row));
      assertThat(refused).as("%s is refused", row.text()).isNotNull();
      assertThat(row.is()).endsWith("`" + refused.problems().get(0).code().id() + "`");
    } else {
      double expected = Double.parseDouble(row.is().split(" ", 2)[0]);
      assertThat(read(row)).isCloseTo(expected, withPercentage(1e-3));
    }
  }

  @Test
  void page_has_texts_of_every_kind_read_and_refused() throws IOException {
    assertThat(rows().stream().map(Row::kind).distinct()).hasSize(12);
    assertThat(rows()).hasSizeGreaterThan(55);
  }
}
