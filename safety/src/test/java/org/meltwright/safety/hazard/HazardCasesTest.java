// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Published cases and cases worked out from the rules, each with its source and status. */
class HazardCasesTest {

  static List<HazardCase> cases() {
    return Stream.of("hazard-cases.txt", "hazard-cases-label.txt", "hazard-cases-derived.txt")
        .flatMap(file -> HazardCase.all(file).stream())
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void case_givesWhatItsSourceSays(HazardCase oneCase) {
    oneCase.check();
  }

  @Test
  void everyCase_hasSourceAndStatus() {
    assertThat(cases()).extracting(HazardCase::id).doesNotHaveDuplicates();
    assertThat(cases())
        .allSatisfy(
            c -> {
              assertThat(c.source()).isNotBlank();
              assertThat(c.status()).isIn("found", "derived", "remembered");
            });
  }
}
