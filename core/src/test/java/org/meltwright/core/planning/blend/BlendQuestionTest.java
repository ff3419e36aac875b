// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.TemperaturePoint.ofCelsius;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.laws.ExplanationLaws;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.mixture.ShareTarget;
import org.meltwright.core.planning.PlanningProblem;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.ScaleInterval;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.VolumeFraction;

class BlendQuestionTest {

  private static final MaterialCatalogue SHELF = MaterialCatalogue.standard();
  private static final Material RESIN = SHELF.require("damar");
  private static final Material WAX = SHELF.require("beeswax-yellow");
  private static final Material PALM = SHELF.require("carnauba");
  private static final Material WHITE = SHELF.require("oil-paint-titanium-white");
  private static final DensityBasis SOLID =
      DensityBasis.SOLID.with(RESIN, gramsPerMillilitre(1.06)).with(WAX, gramsPerMillilitre(0.96));

  private static BlendPart resin() {
    return BlendPart.of(RESIN).at(UnitPrice.parse("32 EUR/kg"));
  }

  private static BlendPart wax() {
    return BlendPart.of(WAX).at(UnitPrice.parse("12.50 EUR/kg"));
  }

  private static Mixture medium(double first, double second, double kilograms) {
    return new Mixture(Composition.ofParts(List.of(RESIN, WAX), first, second), kilograms);
  }

  private static BlendPart cakes() {
    return BlendPart.of("old cakes", medium(1, 4, 0.3)).at(UnitPrice.parse("0 EUR/kg"));
  }

  private static Wish resinBetween(double low, double high) {
    return Wish.share(ShareOf.RESIN, Wish.percent(low, high));
  }

  @Test
  void cheapest_takesTheLeastResinThatIsWished_andSaysWhatAPointLessWouldSave() {
    BlendAnswer.Found found =
        BlendQuestion.of(List.of(resin(), wax()), List.of(resinBetween(11, 14)))
            .cheapest()
            .require();
    assertThat(found.composition().massFractionValue(RESIN)).isCloseTo(0.11, within(1e-12));
    // arithmetic: 12.50 + 0.11 · 19.50
    assertThat(found.value()).isCloseTo(14.645, within(1e-12));
    ExplanationLaws.speaksBothLanguages(found.explanation());
    BindingWish binding = found.binding().get(0);
    assertThat(binding.worth()).isCloseTo(0.195, within(1e-12));
    assertThat(binding.from()).isCloseTo(0, within(1e-9));
    assertThat(binding.to()).isCloseTo(0.14, within(1e-9));
    assertThat(binding.inWords().german())
        .contains("Harz zwischen 11 Masse-% und 14 Masse-%")
        .contains("ein Prozentpunkt weniger würde 0,195 EUR/kg sparen");
    assertThat(found.certificate().holds()).isTrue();
  }

  @Test
  void leftovers_goIntoThe_largestAmountAtTheShareWished() {
    // arithmetic: all of the first, and 261.9 g of the second balance it at 1:7
    List<BlendPart> parts =
        List.of(
            BlendPart.of("strong", medium(1, 6, 0.5)), BlendPart.of("weak", medium(1, 10, 0.3)));
    BlendAnswer.Found found =
        BlendQuestion.of(parts, List.of(resinBetween(12.5, 12.5)))
            .mostOf("strong", "weak")
            .require();
    double second = 0.5 * (1.0 / 7 - 1.0 / 8) / (1.0 / 8 - 1.0 / 11);
    assertThat(found.line("strong").kilograms()).isCloseTo(0.5, within(1e-12));
    assertThat(found.line("weak").kilograms()).isCloseTo(second, within(1e-12));
    assertThat(found.line("weak").leftKilograms().orElseThrow())
        .isCloseTo(0.3 - second, within(1e-12));
    assertThat(BlendQuestion.of(parts, List.of(resinBetween(20, 20))).mostOf("weak"))
        .isInstanceOfSatisfying(
            BlendAnswer.Impossible.class,
            no -> assertThat(no.conflict().get(0).to()).isCloseTo(1.0 / 7, within(1e-9)));
  }

  @Test
  void rankedWish_givesWayNoMoreThanItMust_theLaterRankFirst() {
    List<Wish> wishes =
        List.of(
            Wish.amount(grams(500)),
            resinBetween(11, 14),
            Wish.useUp("old cakes").ranked(2),
            Wish.useAtLeast("beeswax-yellow", grams(300)).ranked(1));
    BlendAnswer.Found found =
        BlendQuestion.of(List.of(cakes(), resin(), wax()), wishes).cheapest().require();
    assertThat(found.line("beeswax-yellow").kilograms()).isCloseTo(0.3, within(1e-9));
    // arithmetic: r of fresh resin lifts 0.2 − r of cakes with a fifth of it to 11 % of 0.5 kg
    assertThat(found.line("old cakes").kilograms()).isCloseTo(0.18125, within(1e-9));
    assertThat(found.concessions()).hasSize(1);
    assertThat(found.concessions().get(0).to()).isCloseTo(0.18125, within(1e-9));
    assertThat(found.concessions().get(0).inWords().english())
        .isEqualTo("old cakes at least 300 g: gave way to 181.3 g");
  }

  @Test
  void wishesThatContradict_areNamed_eachWithItsOwnWayOut() {
    BlendAnswer answer =
        BlendQuestion.of(
                List.of(resin().withStock(grams(100)), wax()),
                List.of(
                    Wish.amount(grams(1000)),
                    resinBetween(12, 100),
                    Wish.shareOfPart("beeswax-yellow", Wish.percent(50, 100)),
                    Wish.costAtMost(UnitPrice.parse("40 EUR/kg"))))
            .cheapest();
    List<Concession> conflict = ((BlendAnswer.Impossible) answer).conflict();
    assertThat(conflict)
        .extracting(c -> c.wish().inWords().english())
        .containsExactlyInAnyOrder(
            "damar at most 100 g", "amount 1 kg", "resin at least 12 % by mass");
    assertThat(conflict).allMatch(Concession::isEnough);
    assertThat(conflict)
        .extracting(c -> c.inWords().english())
        .contains("damar at most 100 g: alone it would have to give way to 120 g");
    assertThatThrownBy(answer::require)
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems().get(0).inWords(Locale.GERMAN))
                    .contains("Diese Wünsche widersprechen einander")
                    .contains("allein müsste er nachgeben bis 10 Masse-%"));
  }

  @Test
  void wishThatAloneDoesNotHelp_isSaid() {
    BlendAnswer answer =
        BlendQuestion.of(
                List.of(resin(), wax()),
                List.of(
                    resinBetween(20, 100),
                    Wish.shareOfPart("beeswax-yellow", Wish.percent(90, 100)),
                    Wish.costAtMost(UnitPrice.parse("10 EUR/kg"))))
            .cheapest();
    assertThat(((BlendAnswer.Impossible) answer).conflict())
        .anySatisfy(c -> assertThat(c.inWords().english()).contains("that does not help"))
        .anySatisfy(c -> assertThat(c.inWords().german()).contains("hilft das nicht"));
  }

  @Test
  void severalBlendsAsGood_areSaidToBeSeveral_theNearestToTheUsualIsShown() {
    Material other = SHELF.require("beeswax-bleached");
    List<BlendPart> parts =
        List.of(resin(), wax(), BlendPart.of(other).at(UnitPrice.parse("12.50 EUR/kg")));
    Composition usual = Composition.ofParts(List.of(RESIN, WAX, other), 12, 44, 44);
    BlendAnswer.Found found =
        BlendQuestion.of(parts, List.of(resinBetween(11, 14)))
            .withUsual(usual)
            .cheapest()
            .require();
    assertThat(found.isOneOfSeveral()).isTrue();
    assertThat(found.line("beeswax-bleached").leastShare()).isCloseTo(0, within(1e-6));
    assertThat(found.line("beeswax-bleached").mostShare()).isCloseTo(0.89, within(1e-6));
    assertThat(KeptWishes.change(found.composition(), usual)).isCloseTo(0.01, within(1e-7));
    assertThat(found.sentences()).anyMatch(s -> s.german().contains("ebenso gut"));
    assertThat(
            BlendQuestion.of(List.of(resin(), wax()), List.of(resinBetween(11, 14)))
                .cheapest()
                .require()
                .isOneOfSeveral())
        .isFalse();
  }

  @Test
  void nearestTo_changesARecipeLeast() {
    Composition usual = Composition.ofParts(List.of(RESIN, WAX), 1, 4);
    BlendAnswer.Found found =
        BlendQuestion.of(List.of(resin(), wax()), List.of(resinBetween(11, 14)))
            .nearestTo(usual)
            .require();
    assertThat(found.value()).isCloseTo(0.06, within(1e-12));
    assertThat(found.binding().get(0).worth()).isCloseTo(0.01, within(1e-9));
    BlendAnswer near =
        BlendQuestion.of(
                List.of(resin(), wax()),
                List.of(Wish.near(usual, MassFraction.ofPercent(5)), resinBetween(0, 14)))
            .cheapest();
    assertThat(((BlendAnswer.Impossible) near).conflict()).hasSize(2);
    assertThat(((BlendAnswer.Impossible) near).conflict())
        .anySatisfy(c -> assertThat(c.to()).isCloseTo(0.06, within(1e-9)))
        .anySatisfy(c -> assertThat(c.to()).isCloseTo(0.15, within(1e-9)));
  }

  @Test
  void shareByVolume_isCountedWithDensities() {
    Wish tenth =
        Wish.volumeShare(
            ShareOf.material(RESIN),
            VolumeFraction.ofPercent(11.4558),
            VolumeFraction.ofPercent(11.4558),
            SOLID);
    BlendAnswer.Found found =
        BlendQuestion.of(List.of(resin(), wax()), List.of(tenth)).cheapest().require();
    // 1 : 7 by mass of 1060 and 960 kg/m³, as in the page of formulas
    assertThat(found.composition().massFractionValue(RESIN)).isCloseTo(0.125, within(1e-5));
  }

  @Test
  void densityRatioFigureAndNumberOfParts_areWishesToo() {
    QuantityRange<org.meltwright.units.Density> range =
        QuantityRange.of(QuantityKind.DENSITY, gramsPerMillilitre(0.97), gramsPerMillilitre(0.98));
    List<BlendPart> two = List.of(resin(), wax());
    BlendAnswer.Found dense =
        BlendQuestion.of(two, List.of(Wish.density(range, SOLID))).cheapest().require();
    assertThat(dense.composition().volumeView(SOLID).densityKilogramsPerCubicMetre())
        .isCloseTo(970, within(1e-6));
    assertThat(dense.binding().get(0).inWords().english()).contains("10 kg/m³ less would save");

    Wish ratio =
        Wish.ratio(ShareOf.material(RESIN), ShareOf.material(WAX), 0.125, Double.POSITIVE_INFINITY);
    assertThat(BlendQuestion.of(two, List.of(ratio)).cheapest().require().line("damar").share())
        .isCloseTo(1.0 / 9, within(1e-12));

    Wish acid = Wish.figure(PropertyKey.ACID_VALUE, new NumberRange(0, 20, "mg KOH/g"));
    List<BlendPart> waxes = List.of(wax(), BlendPart.of(PALM).at(UnitPrice.parse("9 EUR/kg")));
    BlendAnswer.Found mild = BlendQuestion.of(waxes, List.of(acid)).cheapest().require();
    double mean =
        mild.composition()
            .mean(
                i ->
                    mild.composition()
                        .materials()
                        .get(i)
                        .require(PropertyKey.ACID_VALUE)
                        .value()
                        .middle());
    assertThat(mean).isLessThanOrEqualTo(20 + 1e-9);

    List<BlendPart> three = List.of(cakes(), resin(), wax());
    BlendAnswer.Found few =
        BlendQuestion.of(
                three, List.of(Wish.partsAtMost(1), Wish.amount(grams(200)), resinBetween(11, 30)))
            .cheapest()
            .require();
    assertThat(few.certificate().cases()).isEqualTo(3);
    assertThat(few.line("old cakes").share()).isEqualTo(1);
    assertThat(few.certificate().inWords().english()).contains("all 3 choices");
  }

  @Test
  void forEveryLot_takesTheWorstEndOfEachRange_andSaysWhatThatCosts() {
    List<BlendPart> parts =
        List.of(
            wax().at(UnitPrice.parse("40 EUR/kg")),
            BlendPart.of(WHITE).at(UnitPrice.parse("20 EUR/kg")));
    Wish lean = Wish.share(ShareOf.FREE_OIL, Wish.percent(0, 6));
    BlendQuestion question = BlendQuestion.of(parts, List.of(lean));
    // oil of this paint: 18 to 30 %
    BlendAnswer.Found middle = question.cheapest().require();
    BlendAnswer.Found safe = question.forEveryLot().cheapest().require();
    assertThat(middle.line(WHITE.id()).share()).isCloseTo(0.25, within(1e-12));
    assertThat(safe.line(WHITE.id()).share()).isCloseTo(0.2, within(1e-12));
    assertThat(safe.safetyCost().orElseThrow()).isCloseTo(1, within(1e-9));
    assertThat(safe.inTheMiddle()).contains(middle);
    assertThat(safe.sentences()).anyMatch(s -> s.english().contains("every lot costs 1 EUR/kg"));
  }

  @Test
  void rangeThatStandsAboveAndBelow_isTakenAtOneEnd() {
    DensityBasis basis =
        DensityBasis.SOLID.with(RESIN, range(1.0, 1.2)).with(WAX, gramsPerMillilitre(1.0));
    Wish half =
        Wish.volumeShare(
            ShareOf.material(RESIN), VolumeFraction.ZERO, VolumeFraction.ofPercent(50), basis);
    BlendAnswer.Found found =
        BlendQuestion.of(List.of(resin(), wax()), List.of(half))
            .forEveryLot()
            .closest(ShareTarget.ofPercent(ShareOf.RESIN, 100))
            .require();
    // at its lightest the resin takes as much room as the wax: half and half, not 1.2 : 1
    assertThat(found.composition().massFractionValue(RESIN)).isCloseTo(0.5, within(1e-9));
  }

  private static QuantityRange<org.meltwright.units.Density> range(double low, double high) {
    return QuantityRange.of(
        QuantityKind.DENSITY, gramsPerMillilitre(low), gramsPerMillilitre(high));
  }

  @Test
  void weighedAmounts_areWholeStepsThatStillKeepTheWishes() {
    BlendQuestion question =
        BlendQuestion.of(
            List.of(resin(), wax()), List.of(Wish.amount(grams(730)), resinBetween(11, 14)));
    BlendAnswer.Found found = question.weighedTo(ScaleInterval.of(grams(1))).cheapest().require();
    // 80.3 g would be 80 g: too little
    assertThat(found.line("damar").weighedKilograms()).isEqualTo(0.081);
    assertThat(found.line("beeswax-yellow").weighedKilograms()).isEqualTo(0.649);
    assertThat(found.brokenByWeighing()).isEmpty();
    BlendAnswer.Found exact =
        question
            .with(resinBetween(11.111, 11.111))
            .weighedTo(ScaleInterval.of(grams(1)))
            .cheapest()
            .require();
    assertThat(exact.brokenByWeighing()).containsExactly(resinBetween(11.111, 11.111));
    assertThat(exact.sentences()).anyMatch(s -> s.german().contains("gilt nicht"));
  }

  @Test
  void closedWindow_isCutOffByAFurtherWish_orRefusedWithIt() {
    List<BlendPart> parts = List.of(wax(), BlendPart.of(PALM).at(UnitPrice.parse("9 EUR/kg")));
    BlendQuestion question =
        BlendQuestion.of(parts, List.of(Wish.amount(grams(500))))
            .withWorkingWindow(
                ofCelsius(90),
                TemperatureDifference.ofKelvin(10),
                TemperatureDifference.ofKelvin(5));
    BlendAnswer.Found found = question.cheapest().require();
    assertThat(found.cuts()).isNotEmpty();
    assertThat(found.window().orElseThrow().state()).isNotEqualTo(WorkingWindow.State.CLOSED);
    assertThat(found.line("carnauba").share()).isPositive().isLessThan(1);
    assertThat(found.sentences())
        .anyMatch(s -> s.english().contains("does not close: carnauba at most"));
    BlendAnswer refused =
        question.with(Wish.shareOfPart("carnauba", Wish.percent(95, 100))).cheapest();
    assertThat(refused.sentences()).anyMatch(s -> s.english().contains("carnauba at most"));
  }

  @Test
  void orderOfPartsAndWishes_makesNoDifference() {
    List<BlendPart> parts = new ArrayList<>(List.of(cakes(), resin(), wax()));
    List<Wish> wishes = new ArrayList<>(List.of(Wish.amount(grams(500)), resinBetween(11, 14)));
    BlendAnswer one = BlendQuestion.of(parts, wishes).cheapest();
    java.util.Collections.reverse(parts);
    java.util.Collections.reverse(wishes);
    assertThat(BlendQuestion.of(parts, wishes).cheapest().require().lines())
        .isEqualTo(one.require().lines());
  }

  @Test
  void whatCannotBeAsked_isToldAtOnce() {
    assertThatThrownBy(
            () ->
                BlendQuestion.of(
                    List.of(wax(), wax()),
                    List.of(
                        Wish.useUp("beeswax-yellow"), Wish.shareOfPart("x", Wish.percent(1, 2)))))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems())
                    .extracting(p -> p.code())
                    .contains(
                        PlanningProblem.TWICE,
                        PlanningProblem.NO_STOCK,
                        PlanningProblem.NO_SUCH_PART));
    BlendQuestion unpriced = BlendQuestion.of(List.of(BlendPart.of(WAX)), List.of());
    assertThatThrownBy(unpriced::cheapest).hasMessageContaining("beeswax-yellow");
    assertThatThrownBy(() -> unpriced.mostOf("beeswax-yellow"))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> Wish.figure(PropertyKey.REFRACTIVE_INDEX, new NumberRange(1, 2, "")))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> Wish.partsAtMost(3).ranked(1)).isInstanceOf(ProblemException.class);
    List<BlendPart> many = new ArrayList<>();
    for (int i = 0; i < 13; i++) {
      many.add(BlendPart.of("part " + i, Composition.of(WAX)));
    }
    assertThatThrownBy(() -> BlendQuestion.of(many, List.of(Wish.partsAtMost(3))))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void exactShare_isAWishOfBothBounds() {
    MassFractionRange third = MassFractionRange.of(MassFraction.of(1.0 / 3));
    BlendAnswer.Found found =
        BlendQuestion.of(List.of(resin(), wax()), List.of(Wish.share(ShareOf.RESIN, third)))
            .cheapest()
            .require();
    assertThat(found.composition().massFractionValue(RESIN)).isCloseTo(1.0 / 3, within(1e-15));
    assertThat(found.binding().get(0).inWords().english()).contains("one point less would save");
  }
}
