// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.units.ProblemException;

class MaterialCatalogueTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();

  @ParameterizedTest
  @CsvSource({
    "beeswax-yellow, beeswax-yellow",
    "'Beeswax, yellow', beeswax-yellow",
    "gelbes bienenwachs, beeswax-yellow",
    "8012-89-3, beeswax-bleached",
    "Leinoel, linseed-oil",
    "LEINÖL, linseed-oil",
    "dammar, damar",
    "PB29, ultramarine",
    "pb29, ultramarine",
    "236-675-5, titanium-white-rutile",
    "Titanweiß, titanium-white-rutile",
    "PY35, cadmium-yellow-zinc",
    "1306-23-6, cadmium-yellow-pure",
    "cadmium yellow, cadmium-yellow",
    "oil-paint-ultramarine, oil-paint-ultramarine",
  })
  void find_knownName_isThatMaterial(String name, String id) {
    assertThat(CATALOGUE.require(name).id()).isEqualTo(id);
    assertThat(CATALOGUE.find(name)).map(Material::id).hasValue(id);
  }

  @ParameterizedTest
  @CsvSource({
    "beexwax, beeswax",
    "dammer, damar",
    "carnuba wax, carnauba",
    "oil-paint-ultramarin, oil-paint-ultramarine",
    "Zinkweis, zinc-white",
  })
  void require_misspeltName_namesTheNearest(String name, String near) {
    assertThat(CATALOGUE.find(name)).isEmpty();
    assertThatThrownBy(() -> CATALOGUE.require(name))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems()).hasSize(1);
              assertThat(e.problems().get(0).code()).isEqualTo(MaterialProblem.UNKNOWN);
              assertThat(e.problems().get(0).remedy(Locale.ENGLISH)).contains(near);
            });
  }

  @Test
  void find_sharedColourIndexName_doesNotGuess() {
    assertThat(CATALOGUE.find("PBr7")).isEmpty();
    assertThat(CATALOGUE.matches("PBr7"))
        .extracting(Material::id)
        .containsExactly("raw-sienna", "burnt-sienna", "raw-umber", "burnt-umber");
    assertThatThrownBy(() -> CATALOGUE.require("PBr7"))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems().get(0).code()).isEqualTo(MaterialProblem.AMBIGUOUS);
              assertThat(e.problems().get(0).allowed(Locale.GERMAN)).contains("burnt-umber");
            });
  }

  @Test
  void byFamily_resins_holdsDamar() {
    assertThat(CATALOGUE.byFamily(MaterialFamily.RESIN))
        .extracting(Material::id)
        .contains("damar", "colophony", "mastic");
    assertThat(CATALOGUE.having(PropertyKey.DISSOLVES_FROM))
        .extracting(Material::id)
        .containsExactlyInAnyOrder("damar", "colophony", "mastic");
  }

  @Test
  void nearestNames_ofAWholePage_areNone_withoutComparingItsLetters() {
    assertThat(CATALOGUE.nearest("wax and resin ".repeat(100_000))).isEmpty();
    assertThat(CATALOGUE.nearest("dammar gum")).first().isEqualTo("damar");
    assertThat(CATALOGUE.nearest("beeswex")).first().asString().startsWith("beeswax");
  }
}
