// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperatureRange;

class MaterialOverridesTest {

  private static final String OWN_SHEET =
      """
      # What our supplier writes.
      source: hill-sheet-7
        title: Hill Apiaries, data sheet 7
        year: 2026
        kind: data-sheet

      material: beeswax-yellow
        melting-range: 63.5 to 64.5 °C, drop-point | hill-sheet-7, page 1 | read
        flash-point: 242 °C, flash-closed-cup | hill-sheet-7, page 2 | read
          note: measured on lot 12

      material: studio-medium
        en: Studio medium
        de: Hausmedium
        family: other
        role: base
        part: beeswax-yellow, 88.9 %
        part: damar, 11.1 %
      """;

  private static final MaterialCatalogue STANDARD = MaterialCatalogue.standard();

  @Test
  void parse_fileWithByteOrderMark_readsTheFirstLineToo() {
    String file = "material: clay\n  solid-density: 2.6 g/ml at 20 °C | user | read";

    assertThat(MaterialCatalogue.parse("\uFEFF" + file).require("clay"))
        .isEqualTo(MaterialCatalogue.parse(file).require("clay"));
    assertThat(MaterialCatalogue.parse("\uFEFF").figures()).isEmpty();
  }

  @Test
  void plus_ownFigure_standsFirstAndTheOldOnesStayBehind() {
    Material own = STANDARD.plus(OWN_SHEET).require("beeswax-yellow");
    Material old = STANDARD.require("beeswax-yellow");
    List<Sourced<DefinedTemperature>> flash = own.figures(PropertyKey.FLASH_POINT);
    assertThat(flash.get(0).value().range()).isEqualTo(TemperatureRange.ofCelsius(242, 242));
    assertThat(flash.get(0).source().citation())
        .isEqualTo("Hill Apiaries, data sheet 7, page 2 (2026)");
    assertThat(flash.get(0).note()).hasValue("measured on lot 12");
    assertThat(flash.subList(1, flash.size())).isEqualTo(old.figures(PropertyKey.FLASH_POINT));
    assertThat(own.name(Locale.GERMAN)).isEqualTo("Bienenwachs, gelb");
    assertThat(own.family()).isEqualTo(MaterialFamily.WAX);
    assertThat(own.cas()).hasValue("8006-40-4");
  }

  @Test
  void plus_leavesTheStandardCatalogueAlone() {
    STANDARD.plus(OWN_SHEET);
    assertThat(STANDARD.find("studio-medium")).isEmpty();
    assertThat(STANDARD.require("beeswax-yellow").find(PropertyKey.FLASH_POINT, "hill-sheet-7"))
        .isEmpty();
  }

  @Test
  void plus_newMix_isMadeOfTheCataloguesMaterials() {
    Material medium = STANDARD.plus(OWN_SHEET).require("Hausmedium");
    assertThat(medium.constituents())
        .extracting(c -> c.material().id())
        .containsExactly("beeswax-yellow", "damar");
    assertThat(
            medium.constituents().get(0).material().find(PropertyKey.FLASH_POINT, "hill-sheet-7"))
        .isPresent();
  }

  @Test
  void plus_changedOil_reachesEveryPaintMadeOfIt() {
    MaterialCatalogue own =
        STANDARD.plus(
            "material: linseed-oil\n  flash-point: 230 °C, flash-closed-cup | user | read");
    Material oil = own.require("oil-paint-ultramarine").constituents().get(1).material();
    assertThat(oil.require(PropertyKey.FLASH_POINT).value().range().low().celsius()).isEqualTo(230);
  }

  @Test
  void with_materialFromCode_isOnTopOfTheOld() {
    Material own =
        Material.builder("damar")
            .figure(
                PropertyKey.INSOLUBLES,
                Sourced.of(
                    MassFractionRange.of(MassFraction.ofPercent(2)), Source.USER, Knowledge.READ))
            .build();
    Material damar = STANDARD.with(own).require("dammar");
    assertThat(damar.require(PropertyKey.INSOLUBLES).source()).isEqualTo(Source.USER);
    assertThat(damar.figures(PropertyKey.INSOLUBLES)).hasSize(3);
    assertThat(damar.role()).isEqualTo(MaterialRole.HARDENER);
    assertThat(STANDARD.with(Material.builder("sea-salt").build()).all())
        .hasSize(STANDARD.all().size() + 1);
  }

  @Test
  void plus_figureThatWasAbsent_isKnownFromThenOn() {
    MaterialCatalogue own =
        STANDARD.plus("material: beeswax-yellow\n  autoignition: 350 °C | user | read");
    Material beeswax = own.require("beeswax-yellow");
    assertThat(beeswax.absence(PropertyKey.AUTOIGNITION)).isEmpty();
    assertThat(beeswax.absences()).doesNotContain(PropertyKey.AUTOIGNITION);
    assertThat(beeswax.require(PropertyKey.AUTOIGNITION).value().range().low().celsius())
        .isEqualTo(350);
  }

  @Test
  void plus_file_isReadAsUtf8_andNamesItselfInProblems(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("studio.txt"), OWN_SHEET);
    assertThat(STANDARD.plus(file).find("studio-medium")).isPresent();
    Files.writeString(file, "material: beeswax-yellow\n  flash-point: hot");
    ProblemException e = catchThrowableOfType(ProblemException.class, () -> STANDARD.plus(file));
    assertThat(e.problems()).extracting(Problem::path).containsExactly("/studio.txt/2");
    assertThatThrownBy(() -> STANDARD.plus(folder.resolve("none.txt")))
        .isInstanceOfSatisfying(
            ProblemException.class,
            p -> assertThat(p.problems().get(0).code()).isEqualTo(MaterialProblem.FILE));
  }

  @Test
  void plus_severalMistakes_reportsAllWithTheirLines() {
    String text =
        """
        material: chalk
          solid-density: 2.7 kg | user | read
          melting-range: warm °C, not-stated | user | read
          flash-point: 200 °C, by-eye | user | read
          colour: white | user | read
          acid-value: 3 mg KOH/g
          cas: 471-34-2 | user | read
          oil-content: 10 % | nobody | read
          oil-content: 20 to 10 % | user | read
          oil-content: 10 % | user | guessed
          part: unicorn, 100 %
          family: gas
        chalk dust
        """;
    ProblemException e = catchThrowableOfType(ProblemException.class, () -> STANDARD.plus(text));
    assertThat(e.problems())
        .extracting(p -> p.path() + " " + p.code().id())
        .containsExactlyInAnyOrder(
            "/materials/2 material.unit",
            "/materials/3 material.value",
            "/materials/4 material.word",
            "/materials/5 material.key",
            "/materials/6 material.figure",
            "/materials/7 material.identifier",
            "/materials/8 material.source",
            "/materials/9 range.reversed",
            "/materials/10 material.word",
            "/materials/11 material.part",
            "/materials/12 material.word",
            "/materials/13 material.line");
    assertThat(e.problems()).allSatisfy(MaterialOverridesTest::isReadableInBothLanguages);
  }

  private static void isReadableInBothLanguages(Problem problem) {
    for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
      assertThat(problem.what(locale)).isNotBlank();
      assertThat(problem.allowed(locale)).isNotBlank();
      assertThat(problem.remedy(locale)).isNotBlank();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "material: a\\nmaterial: a | material.twice",
        "source: s\\nsource: s | material.twice",
        "en: Nameless | material.line",
        "note: of nothing | material.line",
        "source: s\\n  colour: red | material.key",
        "material: a\\n  part: water | material.line",
        "material: a\\n  part: water, 40 % | material.parts-sum",
        "material: a\\n  part: a, 100 % | material.cycle",
        "material: a\\n  part: b, 100 %\\nmaterial: b\\n  part: a, 100 % | material.cycle",
        "material: a\\n  either: water, dragon | material.part",
        "material: a\\n  unknown: colour | material.key",
        "material: a\\n  viscosity: >= 3 mPa s ¦ user ¦ read | material.unit",
        "material: a\\n  combustibility: maybe ¦ user ¦ read | material.word",
        "material: a\\n  combustibility: does-not-burn ¦ user ¦ read | material.word",
        "material: a\\n  use-in-hot-melt: refused ¦ user ¦ read | material.word",
        "material: a\\n  dissolves-in-melt: never ¦ user ¦ read | material.word",
        "material: a\\n  flash-point: -300 °C, not-stated ¦ user ¦ read"
            + " | temperature.below-absolute-zero",
      })
  void plus_oneMistake_isNamed(String text, String code) {
    String file = text.replace("\\n", "\n").replace('¦', '|');
    assertThatThrownBy(() -> STANDARD.plus(file))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems()).extracting(p -> p.code().id()).containsOnly(code));
  }

  @Test
  void preferring_oneSource_putsItFirstAndKeepsTheRest() {
    Material beeswax = STANDARD.require("beeswax-yellow");
    Material forced = beeswax.preferring(PropertyKey.MELTING_RANGE, "bpc-1911");
    assertThat(forced.require(PropertyKey.MELTING_RANGE).value().range())
        .isEqualTo(TemperatureRange.ofCelsius(61, 64));
    assertThat(forced.figures(PropertyKey.MELTING_RANGE))
        .hasSameSizeAs(beeswax.figures(PropertyKey.MELTING_RANGE));
    assertThat(beeswax.require(PropertyKey.MELTING_RANGE).value().range())
        .isEqualTo(TemperatureRange.ofCelsius(62, 65));
    assertThatThrownBy(() -> beeswax.preferring(PropertyKey.MELTING_RANGE, "astm-d13"))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems().get(0).code())
                    .isEqualTo(MaterialProblem.NO_FIGURE_OF_SOURCE));
  }

  @Test
  void require_unknownFigure_namesMaterialPropertyAndReason() {
    assertThatThrownBy(() -> STANDARD.require("damar").require(PropertyKey.FLASH_POINT))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              Problem problem = e.problems().get(0);
              assertThat(problem.code()).isEqualTo(MaterialProblem.PROPERTY_MISSING);
              assertThat(problem.what(Locale.ENGLISH))
                  .isEqualTo(
                      "The property \"flash-point\" of \"damar\" is not known."
                          + " No reliable value is published; it burns.");
            });
  }

  @Test
  void parse_ownFileAlone_holdsItsMaterialsOnly() {
    MaterialCatalogue own =
        MaterialCatalogue.parse("material: clay\n  solid-density: 2.6 g/ml at 20 °C | user | read");
    assertThat(own.all()).extracting(Material::id).containsExactly("clay");
    assertThat(own.require("clay").require(PropertyKey.SOLID_DENSITY).value().toString())
        .contains("2600");
    assertThat(MaterialCatalogue.empty().all()).isEmpty();
  }
}
