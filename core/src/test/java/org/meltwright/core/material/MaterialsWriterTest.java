// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

class MaterialsWriterTest {

  private static final MaterialCatalogue STANDARD = MaterialCatalogue.standard();

  private static Sourced<DefinedTemperature> melts(String range, Source source) {
    return Sourced.of(PropertyKey.MELTING_RANGE.parse(range), source, Knowledge.READ);
  }

  private static Material own(Source source) {
    return Material.builder("own-wax")
        .names("Our wax", "Unser Wachs")
        .figure(PropertyKey.MELTING_RANGE, melts("61 to 64 °C, capillary-range", source))
        .build();
  }

  @Test
  void toText_ofTheStandardCatalogue_isReadBackAsAnEqualOne() {
    MaterialCatalogue again = MaterialCatalogue.parse(STANDARD.toText());
    assertThat(again).isEqualTo(STANDARD);
    assertThat(again.all()).isEqualTo(STANDARD.all());
    assertThat(again.toText()).isEqualTo(STANDARD.toText());
  }

  @Test
  void toText_withALotAndAFigureOfOnesOwn_isReadBackAsEqualMaterials() {
    Material bag =
        Material.builder("beeswax-yellow")
            .figure(PropertyKey.MELTING_RANGE, melts("61 to 64 °C, capillary-range", Source.USER))
            .build()
            .withLot("bag 7");
    MaterialCatalogue mine = STANDARD.with(own(Source.USER)).with(bag);
    assertThat(MaterialCatalogue.parse(mine.toText())).isEqualTo(mine);
  }

  @Test
  void toText_ofOneMaterial_listsTheSourcesThatItCites() {
    Source day = Source.ownMeasurement("A. Maker", LocalDate.of(2026, 3, 14), "in a glass tube");
    MaterialCatalogue mine = MaterialCatalogue.empty().with(own(day));
    assertThat(mine.toText())
        .isEqualTo(
            """
            source: own-measurement
              title: Own measurement by A. Maker
              year: 2026-03-14
              kind: own-measurement

            material: own-wax
              en: Our wax
              de: Unser Wachs
              melting-range: 61 to 64 °C, capillary-range | own-measurement, in a glass tube | read

            """);
    assertThat(MaterialCatalogue.parse(mine.toText()).all()).isEqualTo(mine.all());
  }

  @Test
  void toText_twoSourcesOfOneId_isAProblem() {
    Source one = Source.ownMeasurement("A. Maker", LocalDate.of(2026, 3, 14), "in a glass tube");
    Source other = Source.ownMeasurement("B. Maker", LocalDate.of(2026, 3, 15), "in a glass tube");
    Material twice =
        own(one).toBuilder()
            .figure(PropertyKey.MELTING_RANGE, melts("62 °C, capillary-range", other))
            .build();
    assertThat(problem(MaterialCatalogue.empty().with(twice)).code())
        .isEqualTo(MaterialProblem.REFERENCE_SHARED);
  }

  @Test
  void toText_aNameThatTheFormatCannotHold_isAProblem() {
    Material odd = Material.builder("odd").otherName("one; two").build();
    Problem problem = problem(MaterialCatalogue.empty().with(odd));
    assertThat(problem.code()).isEqualTo(MaterialProblem.NOT_WRITABLE);
    assertThat(problem.found()).isEqualTo("odd");
  }

  private static Problem problem(MaterialCatalogue catalogue) {
    return catchThrowableOfType(ProblemException.class, catalogue::toText).problems().get(0);
  }
}
