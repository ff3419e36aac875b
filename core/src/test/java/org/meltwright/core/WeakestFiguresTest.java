// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.meltwright.core.WeakestFigures.Weak;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.source.Knowledge;

/** Holds the page of the weakest figures to the data; {@code -Dpages.write=true} writes it anew. */
class WeakestFiguresTest {

  private static final Path PAGE = Path.of("..", "docs", "reference", "weakest-figures.md");
  private static final String BEGIN = "<!-- begin weakest figures, written from the data -->";
  private static final String END = "<!-- end weakest figures -->";

  private final WeakestFigures weakest = new WeakestFigures(MaterialCatalogue.standard());

  @Test
  void page_isWhatTheDataSay() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf(BEGIN) + BEGIN.length();
    int to = page.indexOf(END);
    String expected =
        page.substring(0, from) + "\n" + weakest.table(60) + "\n" + page.substring(to);
    if (Boolean.getBoolean("pages.write")) {
      Files.writeString(PAGE, expected);
    } else {
      assertThat(page).as("%s is older than the data", PAGE).isEqualTo(expected);
    }
  }

  @Test
  void figures_areNotRead_andStandInTheOrderOfWhatTheyMove() {
    List<Weak> all = weakest.all();
    assertThat(all).hasSizeGreaterThan(40);
    assertThat(all).noneMatch(w -> w.figure().sourced().knowledge() == Knowledge.READ);
    assertThat(all.stream().map(w -> -w.percent()).toList()).isSorted();
  }

  /** The viscosity of beeswax, 15 to 30 mPa s at 80 °C: a settling time is in proportion. */
  @Test
  void viscosityOfBeeswax_movesTheStandingTimeInProportion() {
    assertThat(weakest.all())
        .filteredOn(w -> w.figure().material().id().equals("beeswax-yellow"))
        .filteredOn(w -> w.answer().contains("oxide"))
        .singleElement()
        .satisfies(w -> assertThat(w.high() / w.low()).isCloseTo(30 / 15.0, within(1e-9)));
  }
}
