// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.TemperatureDefinition;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Sourced;
import org.meltwright.examples.Output;

class WhereAFigureComesFromTest {

  private static final Path GUIDE = Path.of("..", "docs", "guide", "where-a-figure-comes-from.md");

  private final String output = Output.of(() -> WhereAFigureComesFrom.main(new String[0]));

  @Test
  void main_printsTheFiguresInOrder() {
    assertThat(output)
        .startsWith(
            """
            Beeswax, yellow: melting-range
              62 to 65 °C, capillary-range
                from United States Pharmacopeia and National Formulary, USP 32-NF 27, seen in a\
             copy, White Wax, Melting range, class II (2009, remembered)
                known: derived from another figure, for rules: yes
                first because: the official specifications agree on it; the calorimeter’s peaks\
             measure something else
              61 to 64 °C, not-stated
            """)
        .contains("  70.34 °C, dsc-peak\n    from Zhang et al.")
        .contains("As in 1911: 61 to 64 °C, not-stated\n")
        .endsWith(
            "The property \"autoignition\" of \"beeswax-yellow\" is not known."
                + " No reliable value is published.\n");
    assertThat(output.lines().filter(line -> line.startsWith("    from "))).hasSize(11);
  }

  @Test
  void guide_showsWhatTheProgramPrints() throws IOException {
    String guide = Files.readString(GUIDE);
    assertThat(guide)
        .contains(output.lines().limit(5).reduce((a, b) -> a + "\n" + b).orElseThrow());
    assertThat(guide).contains(output.lines().reduce((a, b) -> b).orElseThrow());
  }

  @Test
  void guide_firstCode_givesTheFigureWithItsDefinition() {
    Material wax = MaterialCatalogue.standard().require("Bienenwachs, gelb");
    Sourced<DefinedTemperature> melting = wax.require(PropertyKey.MELTING_RANGE);
    assertThat(melting.value().definition()).isEqualTo(TemperatureDefinition.CAPILLARY_RANGE);

    Material asIn1911 = wax.preferring(PropertyKey.MELTING_RANGE, "bpc-1911");
    assertThat(asIn1911.require(PropertyKey.MELTING_RANGE).source().year()).hasValue("1911");
  }

  @Test
  void guide_ownDataSheet_standsFirst(@TempDir Path folder) throws IOException {
    String guide = Files.readString(GUIDE);
    int start = guide.indexOf("source: hill-sheet-7");
    String sheet = guide.substring(start, guide.indexOf("```", start));
    Path file = Files.writeString(folder.resolve("our-materials.txt"), sheet);
    MaterialCatalogue own = MaterialCatalogue.standard().plus(file);
    assertThat(own.require("beeswax-yellow").figures(PropertyKey.FLASH_POINT))
        .extracting(f -> f.value().range().low().celsius())
        .isEqualTo(List.of(242.0, 204.0, 254.0, 265.0));
  }

  @Test
  void guide_twoVersions_areTwoLinesThatAreAskedAsOne() {
    Material resin = MaterialCatalogue.standard().require("damar");
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
    Material ownWax =
        MaterialCatalogue.standard()
            .plus(
                "material: beeswax-yellow\n  flash-point: 242 °C, flash-closed-cup | user | read\n")
            .require("beeswax-yellow");

    Recipe old = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
    Recipe pot = Recipe.builder("pot").part(old, 1).part(ownWax, 9).build();
    pot.composition().size(); // 3
    pot.composition().massFraction(wax).percent(); // 98.9 %

    assertThat(pot.composition().size()).isEqualTo(3);
    assertThat(pot.composition().massFraction(wax).percent()).isCloseTo(98.9, within(0.05));
  }

  @Test
  void guide_lots_areAskedByMaterialOrByLot() {
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");

    Composition bags = Composition.ofParts(List.of(wax.withLot("7"), wax.withLot("8")), 1, 3);
    bags.massFraction(wax).percent(); // 100.0 %
    bags.massFraction(wax.withLot("7")).percent(); // 25.0 %

    assertThat(bags.massFraction(wax).percent()).isEqualTo(100.0);
    assertThat(bags.massFraction(wax.withLot("7")).percent()).isEqualTo(25.0);
  }
}
