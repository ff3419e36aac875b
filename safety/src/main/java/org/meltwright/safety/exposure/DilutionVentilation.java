// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/**
 * The air that thins an evaporating vapour to a limit: Q = G K ⁄ C.
 *
 * <p>Dilution is for vapours of low toxicity that evaporate slowly and evenly. It is refused for
 * agents with a limit below 100 ppm, for carcinogens, sensitisers, dusts and fumes: there, local
 * exhaust, and ask an occupational hygienist. Turpentine makes allergic, so it is refused, and by
 * lists that limit it to 20 ppm for that too; spirit (ethanol), with a limit in the hundreds, is
 * not. An arithmetic aid, no clearance: people stand nearer to the source than the average of the
 * room.
 *
 * <p>For example:
 *
 * <pre>{@code
 * ExposureLimit limit =
 *     new ExposureLimit(Agent.vapour("ethanol", 46.07), 200, ExposureLimit.Unit.PPM,
 *         ExposureLimit.Averaging.EIGHT_HOURS, "as entered", LocalDate.of(2026, 5, 4));
 * // 46.07 g/h, a mole, in a room that mixes no better than 3
 * DilutionVentilation air = new DilutionVentilation(limit, 46.07, 3);
 * air.flowCubicMetresPerHour(); // 366.75 m³/h
 * air.flowCubicMetresPerHour(ofCelsius(35)); // 379.05 m³/h, for warm vapour takes more room
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param limit the limit to thin to
 * @param evaporationGramsPerHour how much evaporates, in g/h, not negative
 * @param mixingFactor K, from 1 to 10: 1 for perfect mixing, 3 to 10 in rooms
 */
public record DilutionVentilation(
    ExposureLimit limit, double evaporationGramsPerHour, double mixingFactor) {

  /** No dilution for agents with a limit below this, in ppm. */
  public static final double LEAST_LIMIT_PPM = 100;

  /** The temperature of {@link Agent#LITRES_PER_MOLE}. */
  private static final double AT_25_CELSIUS_KELVIN = 298.15;

  private static final Source FORM =
      Source.of(
          "toledo-dilution",
          "University of Toledo, dilution ventilation form sheet",
          SourceKind.WEB_PAGE);

  /** Draws a problem if the agent needs local exhaust, or a number cannot be. */
  public DilutionVentilation {
    CHECK.between(evaporationGramsPerHour, 0, 1e9, "evaporation in g/h");
    CHECK.between(mixingFactor, 1, 10, "mixing factor");
    if (!limit.agent().traits().isEmpty()) {
      throw ExposureProblem.of(
          ExposureProblem.NOT_FOR_DILUTION,
          Bilingual.of(limit.agent().name()),
          Bilingual.list(
              limit.agent().traits().stream()
                  .sorted()
                  .map(trait -> CHECK.name(trait.name()))
                  .toArray(Bilingual[]::new)));
    }
    if (!Limit.reaches(limit.partsPerMillion(), LEAST_LIMIT_PPM)) {
      throw ExposureProblem.of(
          ExposureProblem.NOT_FOR_DILUTION,
          Bilingual.of(limit.agent().name()),
          Bilingual.of(limit.partsPerMillion()).plus(" ppm"));
    }
  }

  /**
   * Returns the air needed at the temperature of the room: a vapour takes up more of warm air, by
   * the absolute temperature. A limit in mg/m³ is one of mass and asks the same flow at any.
   *
   * @param room the temperature of the room, from 0 to 60 °C
   * @return the flow, in m³/h of that air
   * @throws org.meltwright.units.ProblemException if the temperature is none of a room
   */
  public double flowCubicMetresPerHour(TemperaturePoint room) {
    CHECK.between(room.celsius(), 0, 60, "temperature of the room in °C");
    double warmer =
        limit.unit() == ExposureLimit.Unit.PPM ? room.kelvin() / AT_25_CELSIUS_KELVIN : 1;
    return warmer * flowCubicMetresPerHour();
  }

  /**
   * Returns the air needed, at 25 °C.
   *
   * @return the flow, in m³/h
   */
  public double flowCubicMetresPerHour() {
    double vapour = limit.agent().vapourLitres(evaporationGramsPerHour) / 1000;
    return flow(vapour, limit.partsPerMillion() * 1e-6, mixingFactor);
  }

  /**
   * Returns Q = G K ⁄ C.
   *
   * @param generation the vapour generated, per time
   * @param fraction the concentration to thin to, as a volume fraction
   * @param mixingFactor K
   * @return the flow, in the unit of the generation
   */
  static double flow(double generation, double fraction, double mixingFactor) {
    return generation / fraction * mixingFactor;
  }

  /**
   * Returns how the flow came about.
   *
   * @return inputs, formula, result and warnings
   */
  public Explanation explanation() {
    return ExposureWorking.builder(
            "working.dilution", Map.of("agent", Bilingual.of(limit.agent().name())))
        .stated(ExposureWorking.EVAPORATION, evaporationGramsPerHour)
        .stated(ExposureWorking.MOLAR_MASS, limit.agent().molarMassGrams())
        .given(Figure.of(ExposureWorking.MOLAR_VOLUME, Agent.LITRES_PER_MOLE), FORM)
        .stated(ExposureWorking.LIMIT, limit.partsPerMillion())
        .stated(ExposureWorking.MIXING, mixingFactor)
        .step(ExposureWorking.DILUTION, flowCubicMetresPerHour())
        .conclusion(
            "working.dilution.limit",
            Map.of(
                "jurisdiction",
                Bilingual.of(limit.jurisdiction()),
                "day",
                Bilingual.of(limit.asOf().toString())))
        .caution("working.dilution.face")
        .build();
  }
}
