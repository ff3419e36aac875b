// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.OIL;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.core.laws.SampleMaterials.WHITE_PAINT;
import static org.meltwright.units.MetricUnits.grams;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;

class CorrectionTest {

  private static final ShareOf RESIN_SHARE = ShareOf.material(RESIN);

  private static Composition ratio(double resin, double wax) {
    return Composition.ofParts(List.of(RESIN, WAX), resin, wax);
  }

  @Test
  void blend_oneToSixWithOneToTen_isOneToSevenPointOne() {
    // arithmetic: 71.43 g + 27.27 g in 800 g
    Mixture whole = Mixture.of(ratio(1, 6), grams(500)).plus(Mixture.of(ratio(1, 10), grams(300)));
    double resin = whole.composition().massFractionValue(RESIN);
    assertThat(1 / resin - 1).isCloseTo(7.1, within(0.01));
    assertThat(resin).isCloseTo(0.1234, within(5e-5));
  }

  @ParameterizedTest
  @CsvSource({
    "200, 35, 10, 500", // arithmetic: 2.5 g per gram, exactly
    "200, 35, 30, 33.333333333333",
    "1, 35, 10, 2.5",
  })
  void toShare_paintDownWithMedium_is(double pot, double percent, double target, double added) {
    Composition present = ratio(1, 8).with(WHITE_PAINT, MassFraction.ofPercent(percent));
    Correction correction =
        Correction.toShare(
            Mixture.of(present, grams(pot)),
            ShareOf.OIL_PAINT,
            MassFraction.ofPercent(target),
            ratio(1, 8));
    assertThat(correction.addedKilograms() * 1000).isCloseTo(added, within(1e-9));
    assertThat(correction.result().composition().share(ShareOf.OIL_PAINT).high().percent())
        .isCloseTo(target, within(1e-9));
  }

  @Test
  void toShare_tenPerCentOfTheMix_isMoreThanTenPerCentOfTheMedium() {
    // arithmetic: 250 / 9, not 25
    Correction correction =
        Correction.toShare(
            Mixture.of(ratio(1, 8), grams(250)),
            ShareOf.OIL_PAINT,
            MassFraction.ofPercent(10),
            Composition.of(WHITE_PAINT));
    assertThat(correction.addedKilograms()).isCloseTo(0.250 / 9, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "600, 10, 7, true, 23.376623", // 600 g at 1:10 with resin to 1:7
    "600, 4, 7, false, 360", // 600 g at 1:4 with wax to 1:7
  })
  void toShare_mediumTooSoftOrTooBrittle_is(
      double pot, double parts, double target, boolean addResin, double added) {
    Correction correction =
        Correction.toShare(
            Mixture.of(ratio(1, parts), grams(pot)),
            RESIN_SHARE,
            MassFraction.of(1 / (1 + target)),
            Composition.of(addResin ? RESIN : WAX));
    assertThat(correction.addedKilograms() * 1000).isCloseTo(added, within(1e-6));
    assertThat(correction.explanation().text(Locale.GERMAN))
        .contains("zuzugebende Masse = Masse des Topfinhalts × ", "Masse danach");
  }

  @Test
  void toShare_constituentAtItsHighEnd_keepsTheWorstCaseBelowTheTarget() {
    Mixture pot = Mixture.of(Composition.ofParts(List.of(WHITE_PAINT, WAX), 1, 1), grams(100));
    Correction correction =
        Correction.toShare(
            pot, ShareOf.FREE_OIL.atHigh(), MassFraction.ofPercent(5), Composition.of(WAX));
    assertThat(correction.result().composition().share(ShareOf.FREE_OIL).high().percent())
        .isCloseTo(5, within(1e-12));
    assertThat(correction.addedKilograms()).isCloseTo(0.150, within(1e-12));
  }

  @Test
  void toShare_alreadyThere_addsNothing() {
    Correction correction =
        Correction.toShare(
            Mixture.of(ratio(1, 1), grams(10)),
            RESIN_SHARE,
            MassFraction.of(0.5),
            Composition.of(WAX));
    assertThat(correction.addedKilograms()).isZero();
  }

  @Test
  void toShare_outOfReach_saysTheNearest() {
    Mixture pot = Mixture.of(ratio(1, 9), grams(100));
    ProblemException refused =
        catchThrowableOfType(
            ProblemException.class,
            () ->
                Correction.toShare(
                    pot, RESIN_SHARE, MassFraction.ofPercent(15), Composition.of(WAX)));
    assertThat(refused.problems()).hasSize(1);
    assertThat(refused.problems().get(0).code()).isEqualTo(MixtureProblem.OUT_OF_REACH);
    assertThat(refused.problems().get(0).allowed(Locale.ENGLISH)).contains("10 %");
    assertThatThrownBy(
            () ->
                Correction.toShare(
                    pot, RESIN_SHARE, MassFraction.ofPercent(0), Composition.of(WAX)))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void toShare_hardlyOutOfReach_isNotToldThatTheNearestIsTheTarget() {
    Mixture pot = Mixture.of(ratio(1, 9), grams(100));
    MassFraction hardlyMore = MassFraction.ofPercent(10.00003);

    ProblemException refused =
        catchThrowableOfType(
            ProblemException.class,
            () -> Correction.toShare(pot, RESIN_SHARE, hardlyMore, Composition.of(WAX)));

    assertThat(refused.problems().get(0).found(Locale.ENGLISH)).isEqualTo("10.00003 % by mass");
    assertThat(refused.problems().get(0).allowed(Locale.ENGLISH)).contains("10 %");
  }

  @Test
  void toShares_severalTargets_addsAsLittleAsPossible() {
    Mixture pot =
        Mixture.of(Composition.ofParts(List.of(RESIN, WAX, WHITE), 5, 85, 10), grams(100));
    Correction correction =
        Correction.toShares(
            pot,
            List.of(
                ShareTarget.ofPercent(RESIN_SHARE, 10), ShareTarget.ofPercent(ShareOf.PIGMENT, 8)),
            List.of(Composition.of(WAX), Composition.of(RESIN), ratio(1, 4)));
    Composition reached = correction.result().composition();
    assertThat(reached.massFraction(RESIN).percent()).isCloseTo(10, within(1e-9));
    assertThat(reached.massFraction(WHITE).percent()).isCloseTo(8, within(1e-9));
    assertThat(correction.addedKilograms()).isCloseTo(0.025, within(1e-9));
  }

  @Test
  void toShares_oneTargetOutOfReach_namesThatOneAndItsNearest() {
    Mixture pot = Mixture.of(Composition.ofParts(List.of(RESIN, WAX), 1, 9), grams(100));
    ProblemException refused =
        catchThrowableOfType(
            ProblemException.class,
            () ->
                Correction.toShares(
                    pot,
                    List.of(
                        ShareTarget.ofPercent(RESIN_SHARE, 12),
                        ShareTarget.ofPercent(ShareOf.FREE_OIL, 5)),
                    List.of(Composition.of(RESIN), Composition.of(WAX))));
    assertThat(refused.problems()).hasSize(1);
    assertThat(refused.getMessage()).contains("free oil").contains("nearest: 0 %");
  }

  @Test
  void toShares_reachedOnlyWithoutThePot_isRefused() {
    Mixture pot = Mixture.of(Composition.ofParts(List.of(OIL, WAX), 1, 9), grams(100));
    assertThatThrownBy(
            () ->
                Correction.toShares(
                    pot,
                    List.of(ShareTarget.ofPercent(ShareOf.FREE_OIL, 0)),
                    List.of(Composition.of(WAX))))
        .isInstanceOf(ProblemException.class);
  }

  private static Mixture traces(double resin, double oil) {
    return Mixture.of(Composition.ofParts(List.of(RESIN, OIL, WAX), resin, oil, 1), grams(1000));
  }

  private static List<ShareTarget> traceTargets(double resin, double oil) {
    return List.of(
        new ShareTarget(RESIN_SHARE, MassFraction.of(resin)),
        new ShareTarget(ShareOf.material(OIL), MassFraction.of(oil)));
  }

  @Test
  void toShares_contentsTooFarApart_saysThatNothingCouldBeProved() {
    Composition leaner = traces(1e-11, 0).composition();
    assertThatThrownBy(
            () ->
                Correction.toShares(
                    traces(1e-9, 0), traceTargets(1e-10, 0), List.of(Composition.of(WAX), leaner)))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(MixtureProblem.UNDECIDED));
  }

  @Test
  void toShares_ofAPotThatIsThereWithinRounding_addsNothing() {
    Correction none =
        Correction.toShares(
            traces(0, 1e-12),
            traceTargets(0, 0),
            List.of(Composition.of(WAX), Composition.of(WHITE)));
    assertThat(none.addedKilograms()).isZero();
    assertThat(none.additions()).hasSize(2);
  }

  @Test
  void blendScrap_unknownShares_givesBounds() {
    Scrap scrapings = Scrap.of(grams(200), range(0, 0.30));
    Scrap known = Scrap.of(grams(300), range(0.10, 0.10));
    Scrap whole = Scrap.blend(List.of(scrapings, known));
    assertThat(whole.massKilograms()).isCloseTo(0.5, within(1e-12));
    assertThat(whole.share().low().percent()).isCloseTo(6, within(1e-12));
    assertThat(whole.share().high().percent()).isCloseTo(18, within(1e-12));
    Scrap of = Scrap.of(Mixture.of(ratio(1, 9), grams(100)), ShareOf.RESIN);
    assertThat(
            Scrap.blend(List.of(of, Scrap.of(grams(100), Scrap.UNKNOWN))).share().high().percent())
        .isCloseTo(55, within(1e-12));
  }

  @Test
  void drainedPaint_weightLost_isOil() {
    // arithmetic: 20 g with 20 to 25 % oil that weigh 18 g hold 2 to 3 g of oil
    DrainedPaint drained = DrainedPaint.of(WHITE_PAINT, grams(20), grams(18));
    assertThat(drained.lostKilograms()).isCloseTo(0.002, within(1e-15));
    assertThat(drained.oilLeft().low().value()).isCloseTo(2.0 / 18, within(1e-12));
    assertThat(drained.oilLeft().high().value()).isCloseTo(3.0 / 18, within(1e-12));
    MassFractionRange asMaterial = ShareOf.FREE_OIL.contentOf(drained.material());
    assertThat(asMaterial.low().value()).isCloseTo(2.0 / 18, within(1e-12));
    assertThat(asMaterial.high().value()).isCloseTo(3.0 / 18, within(1e-12));
    assertThat(ShareOf.PIGMENT.contentOf(drained.material()).low().value())
        .isCloseTo(15.0 / 18, within(1e-12));
  }

  @Test
  void drainedPaint_lostMoreThanItsOil_isRefused() {
    assertThatThrownBy(() -> DrainedPaint.of(WHITE_PAINT, grams(20), grams(14)))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("free oil");
    assertThatThrownBy(() -> DrainedPaint.of(WHITE_PAINT, grams(20), grams(21)))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> DrainedPaint.of(WHITE_PAINT, grams(20), grams(0)))
        .isInstanceOf(ProblemException.class);
  }

  private static MassFractionRange range(double low, double high) {
    return new MassFractionRange(MassFraction.of(low), MassFraction.of(high));
  }

  @ParameterizedTest
  @CsvSource({"0.09999999999999999", "0.1", "0.10000000000000002", "0.10000000000005"})
  void toShare_metButForRounding_addsNothing(double present) {
    for (Composition addition : List.of(Composition.of(WAX), Composition.of(RESIN))) {
      Composition pot = Composition.ofParts(List.of(RESIN, WAX), present, 1 - present);
      Correction correction =
          Correction.toShare(
              Mixture.of(pot, grams(100)), RESIN_SHARE, MassFraction.of(0.1), addition);
      assertThat(correction.addedKilograms()).isZero();
    }
  }

  @Test
  void toShare_shortByMoreThanRounding_isRefused() {
    Composition pot = Composition.ofParts(List.of(RESIN, WAX), 0.0999999999, 0.9000000001);
    assertThatThrownBy(
            () ->
                Correction.toShare(
                    Mixture.of(pot, grams(100)),
                    RESIN_SHARE,
                    MassFraction.of(0.1),
                    Composition.of(WAX)))
        .isInstanceOf(ProblemException.class);
  }

  private static Material of(String id, MaterialFamily family) {
    return Material.builder(id).family(family, MaterialRole.FILLER).build();
  }

  /** What was taken out, put back, is the pot again. */
  @Property(tries = 500)
  void byDraining_putBack_isThePot(
      @ForAll @DoubleRange(min = 1, max = 99) double oil,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double part) {
    Mixture pot =
        Mixture.of(Composition.ofPercents(List.of(OIL, WHITE), oil, 100 - oil), grams(80));
    MassFraction target = MassFraction.ofPercent(oil * part);
    Correction drained = Correction.byDraining(pot, ShareOf.FREE_OIL, target, OIL);
    Mixture left = drained.result();
    assertThat(left.composition().massFractionValue(OIL)).isCloseTo(target.value(), within(1e-12));
    assertThat(left.massKilograms(WHITE)).isCloseTo(pot.massKilograms(WHITE), within(1e-15));
    assertThat(left.plus(drained.takenOut().orElseThrow()).isCloseTo(pot, 1e-12)).isTrue();
    assertThat(drained.addedKilograms()).isZero();
  }

  @Test
  void byDraining_toMoreThanIsThere_tellsTheNearest() {
    Mixture pot = Mixture.of(ratio(1, 8), grams(90));
    // without any wax it is all resin, and of resin alone none of the two leaves
    assertThatThrownBy(
            () -> Correction.byDraining(pot, RESIN_SHARE, MassFraction.ofPercent(20), RESIN))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("11.11 %");
    assertThatThrownBy(
            () -> Correction.byDraining(pot, RESIN_SHARE, MassFraction.ofPercent(20), OIL))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("does not hold");
  }

  @Test
  void byDraining_whereTheShareIsThere_takesNothing() {
    Mixture pot = Mixture.of(ratio(1, 9), grams(90));
    Correction none = Correction.byDraining(pot, RESIN_SHARE, MassFraction.ofPercent(10), WAX);
    assertThat(none.takenOutKilograms()).isZero();
    assertThat(none.result().isCloseTo(pot, 1e-15)).isTrue();
  }

  @Test
  void byDrying_waterOutOfPigment_isWhatDrainingSays() {
    Material water = of("water", MaterialFamily.WATER);
    Mixture paste = Mixture.of(Composition.ofParts(List.of(WHITE, water), 1, 4), grams(1000));
    Correction dried =
        Correction.byDrying(paste, ShareOf.material(water), MassFraction.ofPercent(2), water);
    // arithmetic: 200 g of pigment are 98 % of what is left
    assertThat(dried.result().massKilograms()).isCloseTo(0.2 / 0.98, within(1e-15));
  }

  /** Out of these nothing is ever offered to be driven, and the remedy names another way. */
  @ParameterizedTest
  @EnumSource(
      value = MaterialFamily.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"WATER", "PIGMENT", "FILLER", "DISPERSION"})
  void byDrying_besideWhatBurns_isRefused(MaterialFamily family) {
    Material water = of("water", MaterialFamily.WATER);
    Mixture pot =
        Mixture.of(Composition.ofParts(List.of(of("this", family), water), 1, 1), grams(100));
    assertThatThrownBy(
            () ->
                Correction.byDrying(pot, ShareOf.material(water), MassFraction.ofPercent(2), water))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems().get(0).code()).isEqualTo(MixtureProblem.NOT_TO_BE_DRIED);
              assertThat(e.problems().get(0).remedy(Locale.GERMAN)).contains("abgießen");
            });
  }

  @Test
  void byDrying_ofAPaintWithOilInIt_isRefused() {
    Material water = of("water", MaterialFamily.WATER);
    Mixture pot = Mixture.of(Composition.ofParts(List.of(WHITE_PAINT, water), 1, 1), grams(100));
    assertThatThrownBy(
            () ->
                Correction.byDrying(pot, ShareOf.material(water), MassFraction.ofPercent(2), water))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void byDrying_ofAnythingButWater_isRefused() {
    Material solvent = of("solvent", MaterialFamily.SOLVENT);
    Mixture pot = Mixture.of(Composition.ofParts(List.of(WHITE, solvent), 1, 1), grams(100));
    assertThatThrownBy(
            () ->
                Correction.byDrying(
                    pot, ShareOf.material(solvent), MassFraction.ofPercent(2), solvent))
        .isInstanceOf(ProblemException.class);
  }
}
