// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;
import org.meltwright.units.UnitsProblem;

/** What makes two materials one. */
class MaterialIdentityTest {

  private static final MaterialCatalogue STANDARD = MaterialCatalogue.standard();
  private static final Material WAX = STANDARD.require("beeswax-yellow");
  private static final MassFractionRange HALF = MassFractionRange.of(MassFraction.of(0.5));

  private static Material.Builder paint() {
    return Material.builder("paint")
        .names("Paint", "Farbe")
        .otherName("tube")
        .family(MaterialFamily.OIL_PAINT, MaterialRole.COLOURANT)
        .cas("8001-26-1")
        .constituent(WAX, HALF)
        .constituent(STANDARD.require("linseed-oil"), HALF)
        .figure(PropertyKey.FLASH_POINT, flash("206 °C"))
        .absent(PropertyKey.AUTOIGNITION, "not measured");
  }

  private static Sourced<DefinedTemperature> flash(String text) {
    return Sourced.of(
        PropertyKey.FLASH_POINT.parse(text + ", flash-closed-cup"), Source.USER, Knowledge.READ);
  }

  private static Sourced<DefinedTemperature> ignition(String text) {
    return Sourced.of(
        PropertyKey.AUTOIGNITION.parse(text + ", autoignition"), Source.USER, Knowledge.READ);
  }

  @Test
  void equals_sameContent_isEqualAndSharesItsHash() {
    Material paint = paint().build();
    assertThat(paint).isEqualTo(paint().build()).hasSameHashCodeAs(paint().build());
    assertThat(paint.withLot("7")).isEqualTo(paint().build().withLot("7"));
    assertThat(paint).isNotEqualTo(null).isNotEqualTo("paint");
  }

  static Stream<UnaryOperator<Material.Builder>> differences() {
    return Stream.of(
        b -> b.names("Paint", "Tubenfarbe"),
        b -> b.names("Tube paint", "Farbe"),
        b -> b.otherName("squeeze"),
        b -> b.family(MaterialFamily.DISPERSION, MaterialRole.COLOURANT),
        b -> b.family(MaterialFamily.OIL_PAINT, MaterialRole.OIL),
        b -> b.cas("8012-89-3"),
        b -> b.figure(PropertyKey.FLASH_POINT, flash("120 °C")),
        b -> b.figure(PropertyKey.AUTOIGNITION, ignition("350 °C")),
        b -> b.absent(PropertyKey.AUTOIGNITION, "lost"),
        b -> b.absent(PropertyKey.BOILING_RANGE, "not measured"),
        b -> b.alternative(WAX));
  }

  @ParameterizedTest
  @MethodSource("differences")
  void equals_oneThingStatedOtherwise_isAnother(UnaryOperator<Material.Builder> difference) {
    Material other = difference.apply(paint()).build();
    assertThat(other).isNotEqualTo(paint().build());
    assertThat(paint().build()).isNotEqualTo(other);
    assertThat(other.isSameMaterial(paint().build())).isTrue();
  }

  @Test
  void equals_otherLotOrConstituent_isAnother() {
    assertThat(paint().build().withLot("7")).isNotEqualTo(paint().build());
    assertThat(paint().build().withLot("7")).isNotEqualTo(paint().build().withLot("8"));
    Material.Builder ofLot = Material.builder("mix").constituent(WAX.withLot("7"), wholeRange());
    Material.Builder ofAny = Material.builder("mix").constituent(WAX, wholeRange());
    Material.Builder ofLess =
        Material.builder("mix")
            .constituent(WAX, new MassFractionRange(MassFraction.of(0.5), MassFraction.ONE));
    assertThat(ofLot.build()).isNotEqualTo(ofAny.build());
    assertThat(ofLess.build()).isNotEqualTo(ofAny.build());
    assertThat(Material.builder("mix").build()).isNotEqualTo(ofAny.build());
  }

  private static MassFractionRange wholeRange() {
    return MassFractionRange.of(MassFraction.ONE);
  }

  @Test
  void equals_everyFigureReadTwice_isEqual() {
    for (CatalogueFigure<?> figure : STANDARD.figures()) {
      Object again = figure.key().parse(figure.text());
      assertThat(again).isEqualTo(figure.sourced().value());
      assertThat(again).hasSameHashCodeAs(figure.sourced().value());
    }
  }

  @Test
  void equals_sameFileReadTwice_givesEqualMaterials() {
    String file =
        """
        material: oil
          flash-point: 230 °C, flash-closed-cup | user | read
            note: by telephone
        material: tube
          family: oil-paint
          part: oil, 30 to 50 %
          part: chalk, 50 to 70 %
        material: chalk
          family: filler
          solid-density: 2.7 g/ml at 20 °C | user | read
        """;
    assertThat(MaterialCatalogue.parse(file).all()).isEqualTo(MaterialCatalogue.parse(file).all());
  }

  @Test
  void equals_partsOfPartsSharedFiftyLevelsDeep_takesNoExponentialTime() {
    assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () -> {
          assertThat(nested(50, "230 °C")).isEqualTo(nested(50, "230 °C"));
          assertThat(nested(50, "230 °C")).isNotEqualTo(nested(50, "120 °C"));
          assertThat(nested(50, "230 °C")).hasSameHashCodeAs(nested(50, "230 °C"));
        });
  }

  private static Material nested(int levels, String flashPoint) {
    Material level =
        Material.builder("level-0").figure(PropertyKey.FLASH_POINT, flash(flashPoint)).build();
    for (int i = 1; i <= levels; i++) {
      level =
          Material.builder("level-" + i).constituent(level, HALF).constituent(level, HALF).build();
    }
    return level;
  }

  @Test
  void withLot_name_isTheMaterialWithAllItsFigures() {
    Material bag = WAX.withLot("7");
    assertThat(bag.lot()).hasValue("7");
    assertThat(WAX.lot()).isEmpty();
    assertThat(bag.id()).isEqualTo("beeswax-yellow");
    assertThat(bag.name(Locale.GERMAN)).isEqualTo("Bienenwachs, gelb");
    assertThat(bag.properties()).isEqualTo(WAX.properties());
    assertThat(bag.usableFigures(PropertyKey.FLASH_POINT))
        .isEqualTo(WAX.usableFigures(PropertyKey.FLASH_POINT));
    assertThat(bag).hasToString("beeswax-yellow (lot 7)");
    assertThat(bag.withLot("8")).isEqualTo(WAX.withLot("8"));
    assertThat(bag.preferring(PropertyKey.MELTING_RANGE, "bpc-1911").lot()).hasValue("7");
  }

  @Test
  void withLot_blank_isRefused() {
    ProblemException refused =
        catchThrowableOfType(ProblemException.class, () -> WAX.withLot("  "));
    assertThat(refused.problems().get(0).code()).isEqualTo(UnitsProblem.NAME_BLANK);
    assertThat(refused).hasMessageContaining("(lot), of beeswax-yellow");
  }

  @ParameterizedTest
  @CsvSource({
    "wax, wax, true",
    "wax 7, wax, true",
    "wax 7, wax 7, true",
    "wax 7, wax 8, false",
    "wax, wax 7, false",
    "wax, resin, false",
    "wax 7, resin 7, false",
  })
  void isMeantBy_askedFor_goesByIdAndByTheLotIfOneIsNamed(
      String there, String asked, boolean isMeant) {
    assertThat(material(there).isMeantBy(material(asked))).isEqualTo(isMeant);
  }

  private static Material material(String text) {
    String[] words = text.split(" ");
    Material material = Material.builder(words[0]).build();
    return words.length > 1 ? material.withLot(words[1]) : material;
  }

  @Test
  void isMeantBy_otherFigures_isMeantAllTheSame() {
    Material own = STANDARD.with(WAX).require("beeswax-yellow").preferring(key(), "bpc-1911");
    assertThat(own).isNotEqualTo(WAX);
    assertThat(own.isMeantBy(WAX)).isTrue();
    assertThat(WAX.isMeantBy(own)).isTrue();
  }

  private static PropertyKey<DefinedTemperature> key() {
    return PropertyKey.MELTING_RANGE;
  }

  @Test
  void with_materialAsItIs_changesNothing() {
    for (Material material : STANDARD.all()) {
      assertThat(STANDARD.with(material).require(material.id())).isEqualTo(material);
    }
  }

  @Test
  void with_lot_isKeptBesideItsMaterial() {
    Sourced<NumberRange> measured =
        Sourced.of(
            new NumberRange(18, 19, "mg KOH/g"),
            Source.ownMeasurement("Ada", LocalDate.of(2026, 3, 14), "titration"),
            Knowledge.MEASURED);
    MaterialCatalogue studio =
        STANDARD.with(WAX.withLot("7").withFirst(PropertyKey.ACID_VALUE, measured));
    assertThat(studio.require(WAX.id())).isEqualTo(WAX);
    Material bag = studio.require("Bienenwachs, gelb, lot 7");
    assertThat(bag.lot()).hasValue("7");
    assertThat(bag.require(PropertyKey.ACID_VALUE)).isEqualTo(measured);
    assertThat(bag.figures(PropertyKey.ACID_VALUE)).hasSize(4);
    assertThat(bag.isMeantBy(WAX)).isTrue();
    assertThat(studio.find("8006-40-4")).hasValue(WAX);
  }

  @Test
  void file_statesWhatIsKnownOfOneLot_andTheMaterialBehindIt() {
    String file =
        """
        source: ada
          title: Own measurement by Ada
          edition: full cup of melt
          year: 2026-03-14
          kind: own-measurement

        material: beeswax-yellow, lot 7
          liquid-density: 831 ± 4 kg/m³ at 80 °C | ada | measured
        """;
    Material bag = STANDARD.plus(file).require("beeswax-yellow, lot 7");
    assertThat(bag).hasToString("beeswax-yellow (lot 7)");
    var density = bag.require(PropertyKey.LIQUID_DENSITY);
    assertThat(density.value().range().lowSi()).isEqualTo(827);
    assertThat(density.value().range().highSi()).isEqualTo(835);
    assertThat(bag.figures(PropertyKey.LIQUID_DENSITY)).hasSize(3);
  }

  @Test
  void flashPoint_measuredAtHome_isRefused() {
    String file =
        """
        source: ada
          title: Own measurement by Ada
          kind: own-measurement

        material: beeswax-yellow
          flash-point: 240 °C, flash-open-cup | ada | measured
        """;
    assertThatThrownBy(() -> STANDARD.plus(file))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(MaterialProblem.NOT_AT_HOME));
  }

  /** A figure that stands in no catalogue, but in a part of what is put in. */
  @Test
  void with_mixWhosePartHasAFigureOfItsOwn_keepsIt() {
    Material ownOil =
        Material.builder("linseed-oil").figure(PropertyKey.FLASH_POINT, flash("120 °C")).build();
    Material tube =
        Material.builder("tube")
            .family(MaterialFamily.OIL_PAINT, MaterialRole.COLOURANT)
            .constituent(ownOil.withLot("3"), wholeRange())
            .build();

    Material oil = STANDARD.with(tube).require("tube").constituents().get(0).material();

    Material known = STANDARD.require("linseed-oil");
    assertThat(oil.lot()).hasValue("3");
    assertThat(oil.figures(PropertyKey.FLASH_POINT))
        .startsWith(known.figures(PropertyKey.FLASH_POINT).get(0))
        .endsWith(flash("120 °C"))
        .hasSize(known.figures(PropertyKey.FLASH_POINT).size() + 1);
    List<Sourced<PropertyRange<org.meltwright.units.Density>>> densities =
        oil.figures(PropertyKey.LIQUID_DENSITY);
    assertThat(densities).isEqualTo(known.figures(PropertyKey.LIQUID_DENSITY));
  }
}
