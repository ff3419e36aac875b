// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

import java.time.LocalDate;
import org.meltwright.units.Bilingual;

/**
 * An exposure limit as the user enters it: with the place where it holds and the date it was looked
 * up. Limits differ from place to place and change; this library ships none.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Agent dust = new Agent("cadmium", 112.41, Set.of(Agent.Trait.CARCINOGEN, Agent.Trait.DUST));
 * ExposureLimit limit =
 *     new ExposureLimit(dust, 0.005, ExposureLimit.Unit.MILLIGRAMS_PER_CUBIC_METRE,
 *         ExposureLimit.Averaging.EIGHT_HOURS, "as entered", LocalDate.of(2026, 5, 4));
 * // as cadmium sulphide, which is 77.81 % cadmium
 * limit.dustMilligramsPerCubicMetre(0.7781); // 0.00643 mg/m³
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param agent what is limited
 * @param value the limit, in its unit, from 1e-12 to 1e9
 * @param unit its unit
 * @param averaging over which time it is taken
 * @param jurisdiction where it holds, and by which list; not blank
 * @param asOf when it was looked up
 */
public record ExposureLimit(
    Agent agent,
    double value,
    Unit unit,
    Averaging averaging,
    String jurisdiction,
    LocalDate asOf) {

  /** The unit of a limit. */
  public enum Unit {
    /** Parts per million by volume. */
    PPM,
    /** Milligrams per cubic metre. */
    MILLIGRAMS_PER_CUBIC_METRE
  }

  /** The time over which a limit is taken. */
  public enum Averaging {
    /** A working day of eight hours. */
    EIGHT_HOURS,
    /** A short time, mostly 15 minutes. */
    SHORT_TERM,
    /** At no time. */
    CEILING
  }

  /** Draws a problem if the value cannot be or no place is given. */
  public ExposureLimit {
    CHECK.between(value, 1e-12, 1e9, "exposure limit");
    if (jurisdiction.isBlank()) {
      throw ExposureProblem.of(
          ExposureProblem.LIMIT_WITHOUT_JURISDICTION,
          Bilingual.of(reader -> agent.name() + " " + Bilingual.of(value).in(reader)),
          Bilingual.of(""));
    }
  }

  /**
   * Returns the limit in parts per million.
   *
   * @return ppm by volume
   */
  public double partsPerMillion() {
    return unit == Unit.PPM ? value : agent.partsPerMillion(value);
  }

  /**
   * Returns the limit in milligrams per cubic metre.
   *
   * @return mg/m³
   */
  public double milligramsPerCubicMetre() {
    return unit == Unit.PPM ? agent.milligramsPerCubicMetre(value) : value;
  }

  /**
   * Returns the average concentration after a mass has evaporated into closed air, as a share of
   * the limit.
   *
   * <p>For example, 0.86 g of turpentine in 1.546 m³ reach a limit of 100 ppm: a share of 1.
   *
   * @param grams the mass that evaporated, in g
   * @param roomCubicMetres the air it went into, in m³
   * @return the share, where 1 is the limit; no clearance below it
   */
  public double shareAfterEvaporating(double grams, double roomCubicMetres) {
    return agent.dilutingCubicMetres(grams, partsPerMillion())
        / CHECK.between(roomCubicMetres, 1e-6, 1e9, "volume of air in m³");
  }

  /**
   * Returns how much dust of a compound holds as much of the agent as the limit allows.
   *
   * <p>For example, a limit of 0.005 mg/m³ for cadmium allows 0.00643 mg/m³ of cadmium sulphide,
   * which is 77.81 % cadmium.
   *
   * @param share the share by mass of the agent in the dust, above 0, at most 1
   * @return mg/m³ of dust
   * @throws org.meltwright.units.ProblemException if the share is not above 0 and at most 1
   */
  public double dustMilligramsPerCubicMetre(double share) {
    return milligramsPerCubicMetre()
        / CHECK.between(share, 1e-9, 1, "share of the agent in the dust");
  }
}
