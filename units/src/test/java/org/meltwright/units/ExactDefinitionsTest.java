// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every unit against its defining numbers, computed with 60 digits. */
class ExactDefinitionsTest {

  private static final MathContext SIXTY_DIGITS = new MathContext(60);

  @ParameterizedTest
  @CsvFileSource(resources = "exact-definitions.csv", numLinesToSkip = 1)
  void each_unit_is_its_definition(String kind, String symbol, String definition) {
    UnitDefinition<?> unit =
        UnitTables.all().stream()
            .filter(u -> u.symbol().equals(symbol))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no unit " + symbol));
    BigDecimal exact = evaluate(definition);

    assertThat(unit.kind().id()).isEqualTo(kind);
    assertThat(unit.toSiExact(BigDecimal.ONE))
        .isCloseTo(exact, within(exact.multiply(new BigDecimal("1e-38"))));
    assertThat(unit.toSi(1)).isEqualTo(exact.doubleValue());
    assertThat(unit.fromSi(exact.doubleValue())).isCloseTo(1, within(3e-16));
  }

  @Test
  void every_unit_of_the_three_holders_has_its_definition_here() throws IOException {
    assertThat(UnitTables.all().stream().map(UnitDefinition::symbol))
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(symbols());
  }

  private static BigDecimal evaluate(String definition) {
    String[] words = definition.split(" ");
    BigDecimal result = new BigDecimal(words[0]);
    for (int i = 1; i < words.length; i += 2) {
      BigDecimal operand = new BigDecimal(words[i + 1]);
      result =
          words[i].equals("*")
              ? result.multiply(operand, SIXTY_DIGITS)
              : result.divide(operand, SIXTY_DIGITS);
    }
    return result;
  }

  private static List<String> symbols() throws IOException {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                ExactDefinitionsTest.class.getResourceAsStream("exact-definitions.csv"),
                StandardCharsets.UTF_8))) {
      return lines.lines().skip(5).map(line -> line.split(",")[1]).collect(Collectors.toList());
    }
  }
}
