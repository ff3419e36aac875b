// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.hazard.PigmentHazards;

/** The names of the library's own catalogue draw no finding that is not their own. */
class CatalogueNamesTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();

  static List<Material> materials() {
    return CATALOGUE.all();
  }

  private static Set<String> names(Material material) {
    Set<String> names = new LinkedHashSet<>(material.otherNames());
    names.add(material.name(Locale.ENGLISH));
    names.add(material.name(Locale.GERMAN));
    return names;
  }

  @Test
  void catalogue_hasSomeHundredNames() {
    assertThat(materials().stream().mapToInt(m -> names(m).size()).sum()).isGreaterThan(370);
  }

  @ParameterizedTest
  @MethodSource("materials")
  void catalogueMaterial_isNotAsked(Material material) {
    assertThat(HazardNames.of(material)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("materials")
  void catalogueMaterialWithFiguresOfOnesOwn_isNotAsked(Material material) {
    String figure = "material: %s\n  solid-density: 1.5 g/ml | user, jar | read";
    Material own = CATALOGUE.plus(figure.formatted(material.id())).require(material.id());
    assertThat(own).isNotSameAs(material);
    assertThat(HazardNames.of(own)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("materials")
  void nameOfTheCatalogue_askedAsAStranger_tellsWhatTheMaterialIs(Material material) {
    for (String name : names(material)) {
      assertThat(HazardNames.ofName(name))
          .as(name)
          .allSatisfy(told -> assertThat(isOwn(material, told)).as("%s", told).isTrue());
    }
  }

  private static boolean isOwn(Material material, NamedHazard told) {
    return switch (material.family()) {
      case PIGMENT, FILLER, OIL_PAINT -> isOfItsPigment(material, told);
      case WATER -> told.hazard().kind() == NameKind.WATER_BORNE;
      case SOLVENT -> told.hazard().kind() == NameKind.SOLVENT;
      case DRYING_OIL -> told.hazard().kind() == NameKind.OIL_RESIN && isUnlimited(told);
      case RESIN -> told.hazard().kind() == NameKind.RESIN && isUnlimited(told);
      case DISPERSION, OTHER -> told.hazard().id().matches("acrylic-word|water-borne");
      default -> false;
    };
  }

  private static boolean isUnlimited(NamedHazard told) {
    return told.heatUse() == HeatUse.NO_LIMIT_KNOWN;
  }

  /** Never stricter than the pigment table is with the material, or water where it holds some. */
  private static boolean isOfItsPigment(Material material, NamedHazard told) {
    if (told.hazard().kind() == NameKind.WATER_BORNE) {
      return material.id().equals("oil-paint-water-mixable");
    }
    Optional<PigmentHazard> pigment =
        Stream.concat(
                Stream.of(material), material.constituents().stream().map(Constituent::material))
            .flatMap(m -> PigmentHazards.of(m).stream())
            .findFirst();
    return pigment
        .filter(p -> told.heatUse().compareTo(p.heatUse()) >= 0)
        .filter(p -> told.dust().orElseThrow().compareTo(p.dust()) >= 0)
        .isPresent();
  }

  @Test
  void toxicPigmentOfTheCatalogue_isFoundByEachOfItsNames_wereItAStranger() {
    assertThat(materials())
        .filteredOn(m -> PigmentHazards.of(m).filter(p -> !p.elements().isEmpty()).isPresent())
        .filteredOn(m -> !PigmentHazards.of(m).orElseThrow().reasonKey().matches("none|chromium"))
        .hasSizeGreaterThan(7)
        .allSatisfy(
            m ->
                assertThat(names(m))
                    .allSatisfy(n -> assertThat(HazardNames.ofName(n)).as(n).isNotEmpty()));
  }

  @Test
  void paleCadmiumYellow_isNoOneEntry() {
    assertThat(CATALOGUE.require("cadmium yellow pale").id()).isEqualTo("cadmium-yellow");
    assertThat(CATALOGUE.require("Cadmiumgelb, hell").id()).isEqualTo("cadmium-yellow");
    assertThat(CATALOGUE.require("Cadmiumgelb, hell").alternatives()).hasSize(2);
  }
}
