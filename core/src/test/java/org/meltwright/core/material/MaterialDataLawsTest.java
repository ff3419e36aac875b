// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MassFraction;

/** Laws that hold for every row of the catalogue. */
class MaterialDataLawsTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();

  /** The only figures that stand above one that was read, each with words in the data why. */
  private static final Set<String> REMEMBERED_OVER_READ =
      Set.of(
          "beeswax-yellow solid-specific-heat",
          "carnauba solid-specific-heat",
          "carnauba viscosity",
          "colophony flash-point",
          "paraffin-52-54 liquid-density",
          "paraffin-56-58 liquid-density",
          "paraffin-60-62 liquid-density",
          "paraffin-52-54 heat-of-fusion",
          "paraffin-56-58 heat-of-fusion",
          "paraffin-60-62 heat-of-fusion",
          "titanium-white-rutile oil-absorption",
          "yellow-ochre solid-density",
          "odourless-mineral-spirits liquid-density",
          "phthalo-blue decomposition-onset",
          "arylide-yellow decomposition-onset");

  @Test
  void everyFigure_writtenAndReadBack_isTheSame() {
    assertThat(CATALOGUE.figures()).hasSizeGreaterThan(500).allSatisfy(this::assertRoundTrip);
  }

  private <V> void assertRoundTrip(CatalogueFigure<V> figure) {
    assertThat(figure.key().parse(figure.text()))
        .as("%s", figure)
        .isEqualTo(figure.sourced().value());
  }

  @Test
  void rememberedFigure_aboveOneThatWasRead_isOneOfTheNamedExceptions() {
    List<String> found = new ArrayList<>();
    for (Material material : CATALOGUE.all()) {
      for (PropertyKey<?> key : material.properties()) {
        if (rememberedStandsAboveRead(material.figures(key))) {
          found.add(material + " " + key);
        }
      }
    }
    assertThat(found).containsExactlyInAnyOrderElementsOf(REMEMBERED_OVER_READ);
  }

  private static boolean rememberedStandsAboveRead(List<? extends Sourced<?>> figures) {
    boolean remembered = false;
    for (Sourced<?> figure : figures) {
      if (remembered && figure.knowledge() != Knowledge.REMEMBERED) {
        return true;
      }
      remembered |= figure.knowledge() == Knowledge.REMEMBERED;
    }
    return false;
  }

  @Test
  void firstOfSeveralFigures_andNoOther_saysWhyItIsFirst() {
    for (CatalogueFigure<?> figure : CATALOGUE.figures()) {
      boolean rivals = figure.material().figures(figure.key()).size() > 1;
      assertThat(figure.sourced().preferredBecause().isPresent())
          .as("%s", figure)
          .isEqualTo(rivals && figure.rank() == 1);
    }
  }

  @Test
  void everySourceCited_isInTheBibliography_andEveryEntryIsCited() {
    Set<String> cited = new TreeSet<>();
    CATALOGUE.figures().forEach(f -> cited.add(f.sourced().source().id()));
    for (Material material : CATALOGUE.all()) {
      for (IdentifierScheme scheme : IdentifierScheme.values()) {
        material.identifiers(scheme).forEach(i -> cited.add(i.source().id()));
      }
    }
    cited.add(Source.USER.id());
    assertThat(CATALOGUE.bibliography())
        .extracting(Source::id)
        .containsExactlyInAnyOrderElementsOf(cited);
  }

  @Test
  void everySource_namesTitleKindAndYear_orSaysNotStated() {
    assertThat(CATALOGUE.bibliography())
        .allSatisfy(
            s -> {
              assertThat(s.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
              assertThat(s.title()).isNotBlank().isNotEqualTo(s.id());
              assertThat(s.year().orElse("not stated")).matches("not stated|[0-9]{4}.*");
            });
  }

  @Test
  void everyIdentifier_hasTheRightForm() {
    for (Material material : CATALOGUE.all()) {
      for (IdentifierScheme scheme : IdentifierScheme.values()) {
        assertThat(material.identifiers(scheme))
            .as("%s %s", material, scheme.id())
            .allMatch(i -> scheme.accepts(i.value()));
      }
    }
  }

  @Test
  void everyMaterial_hasAnEnglishAndAGermanName() {
    List<String> same = new ArrayList<>();
    for (Material material : CATALOGUE.all()) {
      String english = material.name(Locale.ENGLISH);
      assertThat(english).isNotEqualTo(material.id());
      if (english.equals(material.name(Locale.GERMAN))) {
        same.add(material.id());
      }
    }
    assertThat(same).containsExactlyInAnyOrder("ceresin", "kaolin");
  }

  @Test
  void everyName_belongsToOneMaterial() {
    for (Material material : CATALOGUE.all()) {
      Stream.concat(
              material.otherNames().stream(),
              Stream.of(material.name(Locale.ENGLISH), material.name(Locale.GERMAN)))
          .forEach(name -> assertThat(CATALOGUE.matches(name)).as(name).containsExactly(material));
    }
  }

  @Test
  void melt_isLighterThanItsSolid() {
    for (Material material : CATALOGUE.all()) {
      for (var melt : material.figures(PropertyKey.LIQUID_DENSITY)) {
        for (var solid : material.figures(PropertyKey.SOLID_DENSITY)) {
          assertThat(melt.value().range().highSi())
              .as("%s: melt %s, solid %s", material, melt, solid)
              .isLessThan(solid.value().range().lowSi());
        }
      }
    }
  }

  @Test
  void flashPoint_liesBelowAutoignition_andAboveMelting() {
    for (Material material : CATALOGUE.all()) {
      for (var flash : material.usableFigures(PropertyKey.FLASH_POINT)) {
        double low = flash.value().range().low().celsius();
        assertThat(material.usableFigures(PropertyKey.AUTOIGNITION))
            .as("%s flash %s", material, flash)
            .allMatch(a -> a.value().range().low().celsius() > low);
        assertThat(material.usableFigures(PropertyKey.MELTING_RANGE))
            .as("%s flash %s", material, flash)
            .allMatch(m -> m.value().range().high().celsius() < low);
      }
    }
  }

  @Test
  void everyFlashPoint_saysWhetherARuleMayUseIt() {
    List<String> barred =
        CATALOGUE.figures().stream()
            .filter(f -> f.key() == PropertyKey.FLASH_POINT && !f.sourced().isUsableForRules())
            .map(f -> f.material() + " " + f.text())
            .toList();
    assertThat(barred)
        .containsExactlyInAnyOrder(
            "beeswax-yellow 254 to 274 °C, not-stated",
            "beeswax-yellow 265 °C, not-stated",
            "ceresin 113 °C, not-stated",
            "colophony 123.9 to 198.9 °C, flash-closed-cup",
            "linseed-oil 125 °C, flash-closed-cup",
            "linseed-oil >= 300 °C, not-stated");
  }

  @Test
  void parts_sumToOne_andTakeTheOilOfTheFigures() {
    List<Material> mixes =
        CATALOGUE.all().stream().filter(m -> !m.constituents().isEmpty()).toList();
    assertThat(mixes).hasSizeGreaterThan(20);
    for (Material mix : mixes) {
      List<MassFractionRange> shares = mix.constituents().stream().map(Constituent::share).toList();
      assertThat(shares.get(0).low().value() + shares.get(1).high().value())
          .as(mix.id())
          .isCloseTo(1, within(1e-12));
      assertThat(shares.get(0).high().value() + shares.get(1).low().value())
          .as(mix.id())
          .isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void oilPaint_holdsTheOilThatItsFiguresSpan() {
    for (Material paint : CATALOGUE.byFamily(MaterialFamily.OIL_PAINT)) {
      List<Sourced<MassFractionRange>> contents = paint.figures(PropertyKey.OIL_CONTENT);
      if (!contents.isEmpty()) {
        MassFractionRange span =
            contents.stream()
                .map(Sourced::value)
                .reduce(PropertyKey.OIL_CONTENT::span)
                .orElseThrow();
        assertThat(paint.constituents().get(1).share()).as(paint.id()).isEqualTo(span);
        assertThat(paint.constituents().get(1).material().id()).isEqualTo("linseed-oil");
      }
    }
  }

  /** r grams of oil to 100 g of pigment are r / (100 + r) of the paint. */
  @Test
  void oilContent_fromTheSameSourceAsOilDemand_followsFromIt() {
    int compared = 0;
    for (Material paint : CATALOGUE.byFamily(MaterialFamily.OIL_PAINT)) {
      for (Sourced<MassFractionRange> content : paint.figures(PropertyKey.OIL_CONTENT)) {
        for (Sourced<NumberRange> demand : demands(paint, content.source().id())) {
          compared++;
          assertThat(content.value().low().value())
              .as("%s %s", paint, demand)
              .isCloseTo(share(demand.value().low()), within(0.001));
          assertThat(content.value().high().value())
              .as("%s %s", paint, demand)
              .isCloseTo(share(demand.value().high()), within(0.001));
        }
      }
    }
    assertThat(compared).isGreaterThan(30);
  }

  private static List<Sourced<NumberRange>> demands(Material paint, String sourceId) {
    return paint.constituents().get(0).material().figures(PropertyKey.OIL_DEMAND).stream()
        .filter(d -> d.source().id().equals(sourceId))
        .toList();
  }

  private static double share(double gramsPer100) {
    return MassFraction.of(gramsPer100 / (100 + gramsPer100)).value();
  }

  @Test
  void everyMaterial_saysWhetherItBurns_saveThePigmentNobodyNamed() {
    assertThat(CATALOGUE.all())
        .filteredOn(m -> m.find(PropertyKey.COMBUSTIBILITY).isEmpty())
        .extracting(Material::id)
        .containsExactly("pigment-unspecified");
    Set<String> burns =
        CATALOGUE.all().stream()
            .filter(
                m ->
                    m.find(PropertyKey.COMBUSTIBILITY).stream()
                        .anyMatch(c -> c.value() == Combustibility.BURNS))
            .filter(
                m -> m.family() == MaterialFamily.PIGMENT || m.family() == MaterialFamily.FILLER)
            .map(Material::id)
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(burns)
        .containsExactly(
            "arylide-yellow",
            "carbon-black",
            "ivory-black",
            "phthalo-blue",
            "phthalo-green",
            "prussian-blue",
            "quinacridone",
            "vermilion");
  }

  /** Counted over the figures that stand first, whether a thing burns left out. */
  @Test
  void figuresThatStandFirst_areFromMemoryInFewerThan22OfAHundred() {
    List<CatalogueFigure<?>> first =
        CATALOGUE.figures().stream()
            .filter(f -> f.rank() == 1 && f.key() != PropertyKey.COMBUSTIBILITY)
            .toList();
    assertThat(first).hasSizeGreaterThan(500);
    assertThat(shareFromMemory(first)).isLessThan(0.22);
  }

  @Test
  void flashPointsThatStandFirst_areFromMemoryInFewerThanAThird() {
    List<CatalogueFigure<?>> first =
        CATALOGUE.figures().stream()
            .filter(f -> f.rank() == 1 && f.key() == PropertyKey.FLASH_POINT)
            .toList();
    assertThat(first).hasSizeGreaterThan(20);
    assertThat(shareFromMemory(first)).isLessThan(1 / 3.0);
  }

  private static double shareFromMemory(List<CatalogueFigure<?>> figures) {
    long remembered =
        figures.stream().filter(f -> f.sourced().knowledge() == Knowledge.REMEMBERED).count();
    return (double) remembered / figures.size();
  }

  @Test
  void kinematicViscosity_saysItsTemperature_orIsBarred() {
    for (var key : List.of(PropertyKey.KINEMATIC_VISCOSITY, PropertyKey.SAYBOLT_VISCOSITY)) {
      for (Material material : CATALOGUE.having(key)) {
        assertThat(material.usableFigures(key))
            .as(material.id())
            .allMatch(f -> f.note().orElseThrow().matches("at .* °C.*"));
      }
    }
  }

  @Test
  void viscosity_saysItsTemperature() {
    for (Material material : CATALOGUE.having(PropertyKey.VISCOSITY)) {
      assertThat(material.figures(PropertyKey.VISCOSITY))
          .as(material.id())
          .allMatch(f -> f.value().at().isPresent());
    }
  }

  @Test
  void clumps_areLargerThanTheGrainsInThem() {
    for (Material paint : CATALOGUE.having(PropertyKey.CLUMP_SIZE)) {
      NumberRange clump = paint.require(PropertyKey.CLUMP_SIZE).value();
      assertThat(clump).as(paint.id()).isEqualTo(new NumberRange(2, 55, "µm"));
      paint.constituents().get(0).material().find(PropertyKey.PRIMARY_PARTICLE_SIZE).stream()
          .forEach(grain -> assertThat(grain.value().high()).isLessThan(clump.low()));
    }
  }

  @Test
  void pigmentsAndFillers_sayTheirIarcGroup_orThatNoneWasFound() {
    assertThat(CATALOGUE.all())
        .filteredOn(
            m -> m.family() == MaterialFamily.PIGMENT || m.family() == MaterialFamily.FILLER)
        .filteredOn(m -> m.find(PropertyKey.IARC_GROUP).isEmpty())
        .filteredOn(m -> m.absence(PropertyKey.IARC_GROUP).isEmpty())
        .extracting(Material::id)
        .containsExactly("pigment-unspecified");
  }

  @Test
  void source_citesNoAddress() {
    assertThat(CATALOGUE.bibliography())
        .allMatch(
            s ->
                !(s.title() + s.locator().orElse(""))
                    .matches("(?i).*(https?:|www\\.|\\.(com|org|net|edu)\\b).*"));
  }

  @Test
  void figureNobodyKnows_isAbsentAndSaysSo() {
    Material beeswax = CATALOGUE.require("beeswax-yellow");
    Material damar = CATALOGUE.require("damar");
    assertThat(beeswax.find(PropertyKey.AUTOIGNITION)).isEmpty();
    assertThat(beeswax.absence(PropertyKey.AUTOIGNITION))
        .hasValueSatisfying(r -> assertThat(r).isNotBlank());
    assertThat(damar.figures(PropertyKey.FLASH_POINT)).isEmpty();
    assertThat(damar.absences()).contains(PropertyKey.FLASH_POINT);
    assertThat(damar.find(PropertyKey.COMBUSTIBILITY))
        .hasValueSatisfying(c -> assertThat(c.value()).isEqualTo(Combustibility.BURNS));
  }
}
