// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.SourceKind;

/** "Cadmium yellow" without a CAS number may be PY37 or PY35. */
class UndecidedMaterialTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();
  private static final Material EITHER = CATALOGUE.require("Cadmium yellow");

  @Test
  void cadmiumYellow_withoutNumber_isNeitherOfTheTwo() {
    assertThat(EITHER.id()).isEqualTo("cadmium-yellow");
    assertThat(EITHER.cas()).isEmpty();
    assertThat(EITHER.alternatives())
        .extracting(Material::id)
        .containsExactly("cadmium-yellow-pure", "cadmium-yellow-zinc");
    assertThat(CATALOGUE.require("1306-23-6").alternatives()).isEmpty();
    assertThat(CATALOGUE.require("8048-07-5").id()).isEqualTo("cadmium-yellow-zinc");
  }

  @Test
  void figure_ofTheUndecided_spansThoseOfBoth() {
    var density = EITHER.require(PropertyKey.SOLID_DENSITY);
    assertThat(density.value().range().lowSi()).isEqualTo(4350);
    assertThat(density.value().range().highSi()).isEqualTo(4826);
    assertThat(density.source().kind()).isEqualTo(SourceKind.CALCULATED);
    assertThat(density.knowledge()).isEqualTo(Knowledge.DERIVED);
    assertThat(density.note()).hasValue("cadmium-yellow-pure or cadmium-yellow-zinc");
    assertThat(EITHER.require(PropertyKey.DECOMPOSITION_ONSET).knowledge())
        .isEqualTo(Knowledge.DERIVED);
  }

  @Test
  void figure_thatOneAloneHas_isUnknownOfTheUndecided() {
    assertThat(CATALOGUE.require("cadmium-yellow-pure").find(PropertyKey.MELTING_RANGE))
        .isPresent();
    assertThat(EITHER.find(PropertyKey.MELTING_RANGE)).isEmpty();
  }

  @Test
  void warningWord_thatOneAloneHas_countsForTheUndecided() {
    MaterialCatalogue own =
        CATALOGUE.plus(
            """
            material: dust-a
              combustibility: burns | user | read
              iarc-group: 3 | user | read
            material: dust-b
              combustibility: does not burn | user | read
              iarc-group: 1 | user | read
              sensitiser: yes | user | read
            material: dust
              either: dust-a, dust-b
            """);
    Material dust = own.require("dust");
    assertThat(dust.require(PropertyKey.COMBUSTIBILITY).value()).isEqualTo(Combustibility.BURNS);
    assertThat(dust.require(PropertyKey.IARC_GROUP).value()).isEqualTo("1");
    assertThat(dust.require(PropertyKey.SENSITISER).value()).isTrue();
  }

  @Test
  void undecided_followsWhenACandidateChanges_andTakesAFigureOfItsOwnFirst() {
    MaterialCatalogue own =
        CATALOGUE.plus("material: cadmium-yellow-pure\n  solid-density: 4.9 g/ml | user | read");
    assertThat(
            own.require("cadmium-yellow")
                .require(PropertyKey.SOLID_DENSITY)
                .value()
                .range()
                .highSi())
        .isEqualTo(4900);
    MaterialCatalogue weighed =
        own.plus("material: cadmium-yellow\n  solid-density: 4.5 g/ml | user | read");
    assertThat(
            weighed
                .require("cadmium-yellow")
                .require(PropertyKey.SOLID_DENSITY)
                .value()
                .range()
                .lowSi())
        .isEqualTo(4500);
  }
}
