// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.BLUE;
import static org.meltwright.core.laws.SampleMaterials.OIL;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.core.laws.SampleMaterials.withDensity;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.litres;
import static org.meltwright.units.MetricUnits.millilitres;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.VolumeView;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

class RecipeTest {

  private static final Recipe MEDIUM = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();

  @Test
  void composition_nested_flattensToMaterials() {
    Recipe white = Recipe.builder("white").part(WHITE, 20).part(MEDIUM, 80).build();
    Recipe pale = Recipe.builder("pale").part(white, 1).part(MEDIUM, 1).part(BLUE, 2).build();
    assertThat(pale.composition().massFractionValue(WHITE)).isCloseTo(0.05, within(1e-15));
    assertThat(pale.composition().massFractionValue(WAX))
        .isCloseTo((0.8 + 1) * 8 / 9 / 4, within(1e-15));
    assertThat(pale.lineShare(Ingredient.of(white))).isEqualTo(0.25);
    assertThat(pale.lineShare(Ingredient.of(WAX))).isZero();
    assertThat(pale).hasToString("pale = 1.0 white + 1.0 medium + 2.0 blue");
  }

  private static RecipePart line(Material material, StatedAmount amount) {
    return new RecipePart(Ingredient.of(material), amount);
  }

  private static StatedAmount solid(double percent) {
    return StatedAmount.of(VolumeFraction.ofPercent(percent), DensityBasis.SOLID);
  }

  private static StatedAmount byMass(double percent) {
    return StatedAmount.of(MassFraction.ofPercent(percent));
  }

  @Test
  void shares_byMass_theRestIsWhatTheyLeave() {
    Recipe paint = Recipe.of("p", List.of(line(WHITE, byMass(30)), line(WAX, StatedAmount.rest())));
    assertThat(paint.composition().massFractionValue(WAX)).isEqualTo(0.7);
    assertThat(paint).hasToString("p = 30.0 % by mass white + rest wax");
  }

  @Test
  void shares_byVolume_areReachedByVolume() {
    Recipe paint = Recipe.of("p", List.of(line(WHITE, solid(6)), line(WAX, StatedAmount.rest())));
    assertThat(paint.composition().volumeView(DensityBasis.SOLID).volumeFraction(WHITE).percent())
        .isCloseTo(6, within(1e-12));
  }

  /** Each share is what it says, on its own basis; the rest makes it a whole. */
  @Property(tries = 300)
  void shares_onBothBases_areBothReached(
      @ForAll @DoubleRange(min = 0, max = 40) double volume,
      @ForAll @DoubleRange(min = 0, max = 20) double mass) {
    Composition mix =
        Recipe.of(
                "p",
                List.of(
                    line(WHITE, solid(volume)),
                    line(RESIN, byMass(mass)),
                    line(WAX, StatedAmount.rest())))
            .composition();
    assertThat(mix.massFractionValue(RESIN)).isCloseTo(mass / 100, within(1e-12));
    assertThat(mix.volumeView(DensityBasis.SOLID).volumeFraction(WHITE).value())
        .isCloseTo(volume / 100, within(1e-12));
  }

  static List<List<RecipePart>> noWholes() {
    return List.of(
        List.of(line(WHITE, byMass(30)), line(WAX, byMass(69))),
        List.of(line(WHITE, byMass(100)), line(WAX, StatedAmount.rest())),
        List.of(line(WHITE, StatedAmount.rest()), line(WAX, StatedAmount.rest())),
        List.of(line(WHITE, solid(30)), line(WAX, byMass(70))),
        // 60 % of white by volume is more than 60 % of the mass
        List.of(line(WHITE, solid(60)), line(RESIN, byMass(60)), line(WAX, StatedAmount.rest())));
  }

  @ParameterizedTest
  @MethodSource("noWholes")
  void shares_thatMakeNoWhole_areRefused(List<RecipePart> lines) {
    assertThat(codes(lines)).containsExactly(BatchProblem.SHARES);
  }

  static List<List<RecipePart>> mixed() {
    return List.of(
        List.of(line(WHITE, byMass(30)), line(WAX, StatedAmount.parts(7))),
        List.of(line(WHITE, StatedAmount.parts(1)), line(WAX, StatedAmount.rest())),
        List.of(
            line(WHITE, StatedAmount.parts(1)),
            line(WAX, StatedAmount.volumeParts(7, DensityBasis.SOLID))),
        List.of(
            line(WHITE, solid(30)),
            line(WAX, StatedAmount.of(VolumeFraction.ofPercent(70), DensityBasis.MELT))));
  }

  @ParameterizedTest
  @MethodSource("mixed")
  void amounts_thatDoNotGoTogether_areRefused(List<RecipePart> lines) {
    assertThat(codes(lines)).containsExactly(BatchProblem.MIXED_AMOUNTS);
  }

  @Test
  void amounts_ofMassAndVolume_standSideBySide() {
    // arithmetic: 40 g beside 60 ml at the oil's density
    double density = Composition.of(OIL).density(DensityBasis.MELT).centralSi();
    Recipe balm =
        Recipe.of(
            "balm",
            List.of(
                line(WAX, StatedAmount.of(grams(40))),
                line(OIL, StatedAmount.of(millilitres(60), DensityBasis.MELT))));
    assertThat(balm.composition().massFractionValue(OIL))
        .isCloseTo(60e-6 * density / (0.04 + 60e-6 * density), within(1e-15));
    assertThat(balm).hasToString("balm = 0.04 kg wax + 6.0E-5 m³, liquid oil");
  }

  @Test
  void madeUp_toAMass_theLastLineIsTheRest() {
    Recipe balm =
        Recipe.of(
            "balm",
            List.of(
                line(WAX, StatedAmount.of(grams(30))),
                line(RESIN, byMass(5)),
                line(OIL, StatedAmount.upTo(grams(120)))));
    assertThat(balm.composition().massFractionValue(WAX)).isCloseTo(0.25, within(1e-15));
    assertThat(balm.composition().massFractionValue(RESIN)).isCloseTo(0.05, within(1e-15));
    assertThat(balm.composition().massFractionValue(OIL)).isCloseTo(0.70, within(1e-15));
  }

  /** Grams, millilitres, grams in each 100 ml and per cent, in one whole that is a volume. */
  @Property(tries = 300)
  void madeUp_toAVolume_holdsWhatEachLineStates(
      @ForAll @DoubleRange(min = 0, max = 150) double grams,
      @ForAll @DoubleRange(min = 0, max = 150) double millilitres,
      @ForAll @DoubleRange(min = 0, max = 200) double gramsInALitre,
      @ForAll @DoubleRange(min = 0, max = 10) double percent) {
    DensityBasis solid = DensityBasis.SOLID;
    Recipe recipe =
        Recipe.of(
            "p",
            List.of(
                line(RESIN, StatedAmount.of(grams(grams))),
                line(BLUE, StatedAmount.of(millilitres(millilitres), solid)),
                line(WHITE, StatedAmount.inEach(gramsPerMillilitre(gramsInALitre / 1000), solid)),
                line(WAX, byMass(percent)),
                line(OIL, StatedAmount.upTo(litres(1), solid))));
    Mixture litre = Mixture.ofVolume(recipe.composition(), litres(1), solid);
    assertThat(litre.massKilograms(RESIN) * 1000).isCloseTo(grams, within(1e-9));
    assertThat(litre.massKilograms(WHITE) * 1000).isCloseTo(gramsInALitre, within(1e-9));
    assertThat(recipe.composition().massFractionValue(WAX) * 100).isCloseTo(percent, within(1e-9));
    VolumeView view = recipe.composition().volumeView(solid);
    assertThat(view.volumeFraction(BLUE).value() * 1000).isCloseTo(millilitres, within(1e-9));
    assertThat(QuantityKind.DENSITY.toSi(view.massPerVolume(WHITE)))
        .isCloseTo(gramsInALitre, within(1e-9));
  }

  static List<List<RecipePart>> overfull() {
    return List.of(
        List.of(line(WAX, StatedAmount.of(grams(130))), line(OIL, StatedAmount.upTo(grams(120)))),
        List.of(
            line(WHITE, StatedAmount.of(grams(130))),
            line(OIL, StatedAmount.upTo(millilitres(20), DensityBasis.SOLID))),
        List.of(line(WAX, StatedAmount.upTo(grams(10))), line(OIL, StatedAmount.upTo(grams(120)))));
  }

  @ParameterizedTest
  @MethodSource("overfull")
  void madeUp_toLessThanTheLines_isRefused(List<RecipePart> lines) {
    assertThat(codes(lines)).containsExactly(BatchProblem.SHARES);
  }

  static List<List<RecipePart>> amountsWithoutAWhole() {
    StatedAmount ten = StatedAmount.of(grams(10));
    return List.of(
        List.of(line(WAX, ten), line(OIL, StatedAmount.rest())),
        List.of(line(WAX, ten), line(OIL, byMass(5))),
        List.of(line(WAX, ten), line(OIL, StatedAmount.parts(5))),
        List.of(
            line(WHITE, solid(10)), line(OIL, StatedAmount.upTo(litres(1), DensityBasis.MELT))));
  }

  @ParameterizedTest
  @MethodSource("amountsWithoutAWhole")
  void amounts_besideSharesOfNothing_areRefused(List<RecipePart> lines) {
    assertThat(codes(lines)).containsExactly(BatchProblem.MIXED_AMOUNTS);
  }

  @Test
  void amount_beyondAllMeasure_isToldInItsOwnUnit() {
    assertThatThrownBy(() -> StatedAmount.of(grams(-3)))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("-3 g");
    assertThatThrownBy(() -> StatedAmount.upTo(millilitres(0), DensityBasis.MELT))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("0 ml");
  }

  private static List<ProblemCode> codes(List<RecipePart> lines) {
    try {
      throw new AssertionError("not refused: " + Recipe.of("p", lines));
    } catch (ProblemException e) {
      return e.problems().stream().map(Problem::code).toList();
    }
  }

  private static RecipePart byVolume(Material material, double parts) {
    return new RecipePart(
        Ingredient.of(material), StatedAmount.volumeParts(parts, DensityBasis.SOLID));
  }

  private static RecipePart byVolume(Recipe recipe, double parts) {
    return new RecipePart(
        Ingredient.of(recipe), StatedAmount.volumeParts(parts, DensityBasis.SOLID));
  }

  @Test
  void partsByVolume_concentrateLetDown_isByMassInTheEnd() {
    // common practice: one volume of a 25 % concentrate and four of medium make 5 %
    Recipe concentrate =
        Recipe.of("concentrate", List.of(byVolume(WHITE, 25), byVolume(MEDIUM, 75)));
    Recipe paint = Recipe.of("paint", List.of(byVolume(concentrate, 1), byVolume(MEDIUM, 4)));
    assertThat(paint.composition().volumeView(DensityBasis.SOLID).volumeFraction(WHITE).percent())
        .isCloseTo(5, within(1e-9));
  }

  @Test
  @Timeout(5)
  void composition_fiftyLevelsOfSharedSubRecipes_takesFiftySteps() {
    Recipe level = MEDIUM;
    for (int i = 0; i < 50; i++) {
      level = Recipe.builder("level " + i).part(level, 1).part(level, 2).part(WAX, 0.1).build();
    }
    assertThat(level.composition().size()).isEqualTo(2);
    assertThat(level.tree(1000)).hasSizeLessThan(160);
    assertThat(level.equals(Recipe.builder("level 49").part(WAX, 1).build())).isFalse();
    assertThat(level.hashCode()).isNotZero();
  }

  @Test
  @Timeout(10)
  void composition_tenThousandPartsAndLevels_overflowsNothing() {
    Recipe.Builder wide = Recipe.builder("wide");
    for (int i = 0; i < 10_000; i++) {
      wide.part(withDensity("m" + i, 1000), i + 1);
    }
    assertThat(wide.build().composition().size()).isEqualTo(10_000);
    assertThat(wide.build().tree(20)).hasSize(20).last().isEqualTo("…");
    Recipe deep = MEDIUM;
    for (int i = 0; i < 10_000; i++) {
      deep = Recipe.builder("level " + i).part(deep, 1).build();
    }
    assertThat(deep.composition().massFractionValue(RESIN)).isCloseTo(1.0 / 9, within(1e-9));
    assertThat(deep.tree(50)).hasSize(50);
  }

  @Test
  void tree_sharedSubRecipe_isSpelledOutOnce() {
    Recipe two = Recipe.builder("two").part(MEDIUM, 1).part(MEDIUM, 2).build();
    assertThat(two.tree(10))
        .containsExactly(
            "two", "  1.0 medium", "    1.0 resin", "    8.0 wax", "  2.0 medium (see above)");
    assertThat(two.tree(3)).containsExactly("two", "  1.0 medium", "…");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY, 1e13})
  void part_partsThatCannotBe_areRefused(double parts) {
    assertThatThrownBy(() -> Recipe.builder("bad").part(WAX, parts))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("wax");
  }

  @Test
  void build_nothingInIt_isRefused() {
    assertThatThrownBy(() -> Recipe.builder("empty").build())
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("no parts");
    assertThatThrownBy(() -> Recipe.builder("zero").part(WAX, 0).build())
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> Recipe.builder(" ").part(WAX, 1).build())
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("no name");
  }
}
