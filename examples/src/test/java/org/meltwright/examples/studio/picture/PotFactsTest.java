// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.TemperaturePoint;

/** What melts, dissolves and flashes in a mix, and what of it is not known. */
class PotFactsTest {

  private static final Composition MEDIUM = Pots.mix("beeswax-yellow", 8, "damar", 1);

  private static String said(HeatingReview review) {
    return PotFacts.ofTheMix(Say.ENGLISH, review).stream()
        .map(f -> f.name() + ": " + f.value())
        .collect(Collectors.joining("; "));
  }

  @Test
  void ranges_of_melting_and_dissolving_are_those_of_the_report() {
    HeatingReview review = Pots.at(88, MEDIUM);
    MeltingReport report = MeltingReport.of(MEDIUM, review.target());
    DefinedTemperature melts =
        report.melting().get(0).endOfMelting().map(Sourced::value).orElseThrow();

    assertThat(said(review))
        .contains("Beeswax, yellow: melts " + Say.ENGLISH.celsius(melts.range()))
        .contains("Damar resin: dissolves from ")
        .contains(Say.ENGLISH.celsius(report.dissolving().get(0).shown().orElseThrow()));
  }

  @Test
  void a_flash_point_is_one_to_stay_below_only_where_it_binds() {
    HeatingReview medium = Pots.at(88, MEDIUM);
    TemperaturePoint lowest = medium.lowestFlashPoint().orElseThrow();
    HeatingReview turpentine = Pots.at(80, Pots.mix("beeswax-yellow", 8, "gum-turpentine", 1));

    assertThat(said(medium))
        .contains(
            "Lowest flash point known: "
                + Say.ENGLISH.celsius(lowest)
                + "; its margin begins at "
                + Say.ENGLISH.celsius(TemperatureTable.STANDARD.flashLimit(lowest)))
        .doesNotContain("stay below");
    assertThat(said(turpentine)).contains("stay below -19.4 °C");
  }

  @Test
  void an_unknown_flash_point_is_named_with_whose_it_is() {
    assertThat(said(Pots.at(88, Pots.withStuffOfUnknownFlashPoint())))
        .contains("Flash point unknown: Own stuff");
  }

  @Test
  void what_is_not_there_is_not_named() {
    assertThat(said(Pots.unstated(Pots.mix("beeswax-yellow", 1, "damar", 0))))
        .doesNotContain("Damar");
  }

  @Test
  void a_german_reader_has_german_words_and_a_decimal_comma() {
    List<Fact> facts = PotFacts.ofTheMix(Say.in(java.util.Locale.GERMAN), Pots.at(88, MEDIUM));

    assertThat(facts.get(0).value()).startsWith("schmilzt 62 bis 65 °C");
    assertThat(facts.toString()).contains("204,0 °C");
  }
}
