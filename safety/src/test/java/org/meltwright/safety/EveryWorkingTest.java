// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety;

import static org.meltwright.units.TemperaturePoint.ofCelsius;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.laws.ExplanationLaws;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.exposure.Agent;
import org.meltwright.safety.exposure.CircuitLoad;
import org.meltwright.safety.exposure.DilutionVentilation;
import org.meltwright.safety.exposure.ExposureLimit;
import org.meltwright.safety.hazard.HazardLabel;
import org.meltwright.safety.hazard.HazardMixture;
import org.meltwright.safety.hazard.HazardReview;
import org.meltwright.safety.hazard.LabelDetails;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingPlanBuilder;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.units.TemperatureDifference;

/** What holds for the working of every result of this module that explains itself. */
class EveryWorkingTest {

  private static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 9, 1));
  private static final int DRAWS = Integer.getInteger("random.draws", 500);

  /** A kind of result, and how to draw one of random inputs. */
  private record Explained(String name, Function<Random, Explanation> drawn) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Explained> results() {
    return List.of(
        new Explained("CircuitLoad", EveryWorkingTest::circuit),
        new Explained("DilutionVentilation", EveryWorkingTest::dilution),
        new Explained("HeatingReview", EveryWorkingTest::heating),
        new Explained("HazardFinding", EveryWorkingTest::hazard),
        new Explained("HazardLabel", EveryWorkingTest::label));
  }

  private static Explanation circuit(Random r) {
    CircuitLoad load = CircuitLoad.of(100 + r.nextInt(200), 5 + r.nextInt(20), 1 + r.nextDouble());
    int devices = r.nextInt(5);
    for (int i = 0; i < devices; i++) {
      OptionalDouble power =
          r.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(3000 * r.nextDouble());
      load = load.with(new CircuitLoad.Device("plate", power, r.nextBoolean()));
    }
    return load.explanation();
  }

  private static Explanation dilution(Random r) {
    ExposureLimit limit =
        new ExposureLimit(
            Agent.vapour("ethanol", 20 + 200 * r.nextDouble()),
            100 + 900 * r.nextDouble(),
            ExposureLimit.Unit.PPM,
            ExposureLimit.Averaging.EIGHT_HOURS,
            "as entered",
            LocalDate.of(2026, 5, 4));
    return new DilutionVentilation(limit, 500 * r.nextDouble(), 1 + 9 * r.nextDouble())
        .explanation();
  }

  private static Explanation heating(Random r) {
    List<HeatSource.Kind> kinds =
        Stream.of(HeatSource.Kind.values()).filter(HeatSource.Kind::hasDegrees).toList();
    HeatSource ring =
        HeatSource.of("heat", kinds.get(r.nextInt(kinds.size())))
            .withSetPoint(ofCelsius(60 + 60 * r.nextDouble()))
            .withOvershoot(TemperatureDifference.ofKelvin(15 * r.nextDouble()));
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
    HeatingPlanBuilder plan = HeatingPlan.builder(Composition.of(wax)).heat(ring);
    switch (r.nextInt(3)) {
      case 0 -> plan.liquidReading(ofCelsius(60 + 50 * r.nextDouble()));
      case 1 -> plan.measuredOffset(TemperatureDifference.ofKelvin(-20 * r.nextDouble()));
      default -> {}
    }
    return HeatingRules.standard().review(plan.build()).explanation();
  }

  private static HazardReview classified(Random r) {
    double rosin = 1 + 30 * r.nextDouble();
    double turpentine = 40 * r.nextDouble();
    double lead = r.nextBoolean() ? 0.1 : 8 * r.nextDouble();
    HazardMixture mixture =
        HazardMixture.builder(RULES)
            .cas("8050-09-7", rosin)
            .cas("8006-64-2", turpentine)
            .cas("1319-46-6", lead)
            .cas("8012-89-3", 100 - rosin - turpentine - lead)
            .build();
    return HazardReview.of(mixture, RULES);
  }

  private static Explanation hazard(Random r) {
    List<Explanation> all = classified(r).explanations();
    return all.get(r.nextInt(all.size()));
  }

  private static Explanation label(Random r) {
    return HazardLabel.of(classified(r), LabelDetails.builder().build()).explanation();
  }

  @ParameterizedTest
  @MethodSource("results")
  void every_step_can_be_worked_out_anew(Explained result) {
    Random random = new Random(7);
    for (int i = 0; i < DRAWS; i++) {
      ExplanationLaws.canBeWorkedOutAnew(result.drawn.apply(random));
    }
  }

  @ParameterizedTest
  @MethodSource("results")
  void the_working_speaks_both_languages(Explained result) {
    Random random = new Random(8);
    for (int i = 0; i < 20; i++) {
      ExplanationLaws.speaksBothLanguages(result.drawn.apply(random));
    }
  }
}
