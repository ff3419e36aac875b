// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.withDensity;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;

/** Two versions and several lots of one material in a mix, and what two equal mixes are. */
class CompositionIdentityTest {

  /** The wax with a data sheet of its own on top. */
  private static final Material OWN_WAX = own("wax");

  private static final Material LOT_7 = WAX.withLot("7");
  private static final Material LOT_8 = WAX.withLot("8");

  private static Material own(String id) {
    return Material.builder(id)
        .figure(
            PropertyKey.FLASH_POINT,
            Sourced.of(
                PropertyKey.FLASH_POINT.parse("120 °C, flash-closed-cup"),
                Source.USER,
                Knowledge.READ))
        .build();
  }

  private static Composition of(List<Material> materials, double... parts) {
    return Composition.ofParts(materials, parts);
  }

  @Test
  void blend_twoVersionsOfOneMaterial_keepsBothWithTheirFigures() {
    Composition medium = of(List.of(RESIN, WAX), 1, 8);
    Composition pot = Composition.blend(List.of(medium, Composition.of(OWN_WAX)), 1, 99);
    assertThat(pot.materials()).containsExactly(RESIN, WAX, OWN_WAX);
    assertThat(pot.materials().get(2).find(PropertyKey.FLASH_POINT)).isPresent();
    assertThat(pot.massFraction(WAX)).isEqualTo(pot.massFraction(OWN_WAX));
    assertThat(pot.massFractionValue(WAX)).isCloseTo(0.99 + 0.01 * 8 / 9, within(1e-15));
  }

  @Test
  void equals_versions_areTwo() {
    assertThat(Composition.of(WAX)).isNotEqualTo(Composition.of(OWN_WAX));
    assertThat(Composition.of(WAX)).isNotEqualTo(Composition.of(LOT_7));
    assertThat(Composition.of(WAX).isCloseTo(Composition.of(OWN_WAX), 0.5)).isFalse();
    assertThat(Map.of(Composition.of(WAX), "standard").get(Composition.of(OWN_WAX))).isNull();
  }

  @Test
  void equals_otherOrder_isTheSameToTheLastBit() {
    Composition one = of(List.of(WAX, RESIN, OWN_WAX), 0.1, 0.7, 0.3);
    Composition other = of(List.of(OWN_WAX, WAX, RESIN), 0.3, 0.1, 0.7);
    assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
    assertThat(one.materials()).containsExactly(WAX, RESIN, OWN_WAX);
    assertThat(one).isNotEqualTo(of(List.of(WAX, RESIN, OWN_WAX), 0.1, 0.3, 0.7));
    assertThat(one).isNotEqualTo(of(List.of(WAX, RESIN, LOT_7), 0.1, 0.7, 0.3));
    assertThat(one).isNotEqualTo(of(List.of(WAX, RESIN), 0.1, 0.7));
    assertThat(of(List.of(WAX, RESIN), 1, 0)).isNotEqualTo(of(List.of(WAX, LOT_7), 1, 0));
  }

  @ParameterizedTest
  @CsvSource({"2, 16", "3, 24", "0.5, 4", "1000, 8000", "7, 56"})
  void equals_sameRatioInNumbersThatDoublesHold_isTheSame(double resin, double wax) {
    assertThat(of(List.of(WAX, RESIN), wax, resin)).isEqualTo(of(List.of(RESIN, WAX), 1, 8));
  }

  @Test
  void equals_numbersThatDoublesDoNotHold_isForIsCloseTo() {
    Composition tenths = of(List.of(RESIN, WAX), 0.1, 0.8);
    assertThat(tenths.isCloseTo(of(List.of(RESIN, WAX), 1, 8), 1e-15)).isTrue();
    Composition rounded = of(List.of(RESIN, WAX), 1.1, 8.8);
    assertThat(rounded.isCloseTo(of(List.of(RESIN, WAX), 1, 8), 1e-15)).isTrue();
    assertThat(rounded).isNotEqualTo(of(List.of(RESIN, WAX), 1, 8));
  }

  @Test
  void equals_partInTwoLines_isTheSameWhereTheyAddUpExactly() {
    Composition whole = of(List.of(RESIN, WAX), 1, 8);
    assertThat(of(List.of(WAX, RESIN, WAX), 4, 1, 4)).isEqualTo(whole);
    assertThat(of(List.of(WAX, WAX, RESIN), 7.75, 0.25, 1)).isEqualTo(whole);
    assertThat(of(List.of(WAX, LOT_7, RESIN), 4, 4, 1)).isNotEqualTo(whole);
  }

  @Test
  void equals_recipeOfMaterials_isTheCompositionOfTheSameParts() {
    Recipe medium = Recipe.builder("medium").part(WAX, 4).part(RESIN, 1.1).part(WAX, 4).build();
    assertThat(medium.composition()).isEqualTo(of(List.of(RESIN, WAX), 1.1, 8));
    assertThat(Recipe.builder("copy").parts(medium.composition()).build().composition())
        .isEqualTo(medium.composition().withParts(shares(medium.composition())));
  }

  private static double[] shares(Composition composition) {
    return composition.materials().stream().mapToDouble(composition::massFractionValue).toArray();
  }

  @Test
  void equals_manyLines_isFoundWhateverTheOrder() {
    List<Material> many = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      many.add(i % 4 == 0 ? WAX.withLot("" + i) : withDensity("m" + i / 2, 900 + i));
    }
    double[] parts = DoubleStream.iterate(1, p -> p % 97 + 1).limit(400).toArray();
    List<Material> turned = new ArrayList<>();
    double[] turnedParts = new double[400];
    for (int i = 0; i < 400; i++) {
      turned.add(0, many.get(i));
      turnedParts[399 - i] = parts[i];
    }
    Composition one = of(many, parts);
    Composition other = of(turned, turnedParts);
    assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
    assertThat(one.massFractionValue(WAX)).isEqualTo(other.massFractionValue(WAX));
    double wax = 0;
    for (int i = 0; i < 400; i += 4) {
      wax += one.massFractionValue(i);
      assertThat(one.massFractionValue(many.get(i))).isEqualTo(one.massFractionValue(i));
    }
    assertThat(one.massFractionValue(WAX)).isCloseTo(wax, within(1e-15));
  }

  @Test
  void massFraction_askedByMaterialOrLot_addsUpWhatIsMeant() {
    Composition mix = of(List.of(LOT_7, WAX, RESIN, LOT_8, OWN_WAX), 10, 20, 30, 25, 15);
    assertThat(mix.massFraction(WAX).percent()).isCloseTo(70, within(1e-12));
    assertThat(mix.massFraction(LOT_7).percent()).isCloseTo(10, within(1e-12));
    assertThat(mix.massFraction(OWN_WAX.withLot("8")).percent()).isCloseTo(25, within(1e-12));
    assertThat(mix.massFraction(WAX.withLot("9"))).isEqualTo(MassFraction.ZERO);
    assertThat(mix.share(ShareOf.material(WAX)).low().percent()).isCloseTo(70, within(1e-12));
    assertThat(mix.share(ShareOf.material(LOT_8)).low().percent()).isCloseTo(25, within(1e-12));
    assertThat(new Mixture(mix, 2).massKilograms(WAX)).isCloseTo(1.4, within(1e-12));
    assertThat(of(List.of(LOT_7, LOT_8, RESIN), 1, 1, 2).volumeView(DensityBasis.SOLID))
        .satisfies(
            v ->
                assertThat(v.volumeFraction(WAX).value())
                    .isCloseTo(v.volumeFractionValue(0) + v.volumeFractionValue(1), within(1e-15)));
  }

  @Test
  void without_materialOrLot_leavesOutWhatIsMeant() {
    Composition mix = of(List.of(LOT_7, RESIN, LOT_8, OWN_WAX), 1, 2, 3, 4);
    assertThat(mix.without(WAX)).isEqualTo(Composition.of(RESIN));
    assertThat(mix.without(LOT_8)).isEqualTo(of(List.of(LOT_7, RESIN, OWN_WAX), 1, 2, 4));
    assertThat(mix.with(LOT_7, MassFraction.of(0.5)).massFraction(LOT_7).percent())
        .isCloseTo(50, within(1e-12));
    assertThat(mix.with(WAX, MassFraction.of(0.5))).isEqualTo(of(List.of(WAX, RESIN), 1, 1));
    assertThatThrownBy(() -> mix.without(WAX.withLot("9")))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("wax (lot 9)");
    assertThatThrownBy(() -> of(List.of(LOT_7, OWN_WAX), 1, 1).without(WAX))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void replacing_oneLotByAnother_capsTheLotThatIsNamed() {
    Composition mix = of(List.of(LOT_7, LOT_8, RESIN), 4, 1, 5);
    MassFraction tenth = MassFraction.of(0.1);
    Composition moved = mix.replacing(LOT_7, LOT_8, tenth, MassFraction.of(0.2));
    assertThat(moved.isCloseTo(of(List.of(LOT_7, LOT_8, RESIN), 3, 2, 5), 1e-15)).isTrue();
    assertThatThrownBy(() -> mix.replacing(LOT_7, LOT_8, tenth, MassFraction.of(0.19)))
        .hasMessageContaining("wax (lot 8)");
    Composition less = mix.replacing(WAX, RESIN, MassFraction.of(0.25), MassFraction.ONE);
    assertThat(less.isCloseTo(of(List.of(LOT_7, LOT_8, RESIN), 2, 0.5, 7.5), 1e-15)).isTrue();
  }

  @Test
  void minus_material_takesFromAllItsLinesInProportion() {
    Mixture pot = Mixture.of(of(List.of(LOT_7, LOT_8, RESIN), 3, 1, 4), grams(800));
    Mixture rest = pot.minus(WAX, grams(200));
    assertThat(rest.massKilograms(LOT_7)).isCloseTo(0.15, within(1e-12));
    assertThat(rest.massKilograms(LOT_8)).isCloseTo(0.05, within(1e-12));
    assertThat(rest.massKilograms(RESIN)).isCloseTo(0.4, within(1e-12));
    assertThat(pot.minus(LOT_8, grams(100)).massKilograms(WAX)).isCloseTo(0.3, within(1e-12));
    assertThatThrownBy(() -> pot.minus(LOT_8, grams(101))).isInstanceOf(ProblemException.class);
  }

  @Test
  void ofMasses_weighed_isTheMixtureOfAll() {
    Mixture pot = Mixture.ofMasses(List.of(WAX, RESIN, LOT_7), 0.3, 0.1, 0.4);
    assertThat(pot.massKilograms()).isCloseTo(0.8, within(1e-15));
    assertThat(pot.massKilograms(WAX)).isCloseTo(0.7, within(1e-15));
    assertThat(pot).isEqualTo(Mixture.ofMasses(List.of(LOT_7, WAX, RESIN), 0.4, 0.3, 0.1));
  }

  @Test
  void shareOf_countingTheSame_isEqual() {
    assertThat(ShareOf.material(WAX)).isEqualTo(ShareOf.material(OWN_WAX));
    assertThat(ShareOf.material(WAX)).hasSameHashCodeAs(ShareOf.material(OWN_WAX));
    assertThat(ShareOf.material(WAX)).isNotEqualTo(ShareOf.material(LOT_7));
    assertThat(ShareOf.material(LOT_7)).hasToString("wax (lot 7)");
    assertThat(ShareOf.ofFamily(WAX.family())).isEqualTo(ShareOf.ofFamily(WAX.family()));
    assertThat(ShareOf.FREE_OIL.atLow()).isEqualTo(ShareOf.FREE_OIL.atLow());
    assertThat(ShareOf.FREE_OIL.atLow()).isNotEqualTo(ShareOf.FREE_OIL);
    assertThat(ShareTarget.ofPercent(ShareOf.material(WAX), 5))
        .isEqualTo(ShareTarget.ofPercent(ShareOf.material(WAX), 5));
  }

  @Test
  void densityBasis_statedForAMaterialOrALot_isUsedForWhatIsMeant() {
    Composition mix = of(List.of(WAX, LOT_7, withDensity("rest", 1000)), 1, 1, 2);
    DensityBasis basis =
        DensityBasis.SOLID
            .with(LOT_7, gramsPerMillilitre(0.5))
            .with(OWN_WAX, gramsPerMillilitre(0.8));
    assertThat(mix.density(basis).centralSi())
        .isCloseTo(1 / (0.25 / 800 + 0.25 / 500 + 0.5 / 1000), within(1e-9));
  }

  @Test
  void withParts_zeroWithASign_isZero() {
    assertThat(of(List.of(WAX, RESIN), -0.0, 1)).isEqualTo(of(List.of(WAX, RESIN), 0, 1));
    assertThat(of(List.of(WAX, RESIN), -0.0, 1))
        .hasSameHashCodeAs(of(List.of(WAX, RESIN), 0, 1))
        .hasToString("wax 0.000 % + resin 100.000 % by mass");
  }
}
