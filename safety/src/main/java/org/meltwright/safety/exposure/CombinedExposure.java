// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.exposure.Agent.Trait;
import org.meltwright.units.Limit;

/**
 * Exposures held against the limits that the user entered: averages over time, and the additive
 * formula for agents that harm the same organ (29 CFR 1910.1000(d)).
 *
 * <p>A sum up to 1 means that the limits entered are not exceeded by the numbers entered; it is no
 * clearance. Carcinogens are not added up. Immutable and thread-safe.
 *
 * <p>For example:
 *
 * <pre>{@code
 * LocalDate day = LocalDate.of(2026, 5, 4);
 * List<CombinedExposure.Part> parts = new ArrayList<>();
 * for (int[] entry : new int[][] {{500, 1000}, {45, 200}, {40, 200}}) {
 *   Agent vapour = Agent.vapour("vapour with a limit of " + entry[1] + " ppm", 100);
 *   ExposureLimit limit =
 *       new ExposureLimit(vapour, entry[1], ExposureLimit.Unit.PPM,
 *           ExposureLimit.Averaging.EIGHT_HOURS, "as entered", day);
 *   parts.add(new CombinedExposure.Part(limit, entry[0]));
 * }
 * CombinedExposure together = CombinedExposure.of(parts);
 * together.sumOfShares(); // 0.925
 * together.isExceeded(); // false
 * }</pre>
 */
public final class CombinedExposure {

  private final List<Part> parts;

  /**
   * One agent's exposure and limit.
   *
   * @param limit the limit
   * @param value the exposure, in the unit of the limit and over its averaging time
   */
  public record Part(ExposureLimit limit, double value) {

    /** Draws a problem if it is negative. */
    public Part {
      CHECK.between(value, 0, 1e9, "exposure");
    }

    /**
     * Returns the exposure as a share of its limit.
     *
     * @return the share, where 1 is the limit
     */
    public double share() {
      return value / limit.value();
    }
  }

  /**
   * Returns the combined exposure to agents of the same effect.
   *
   * @param parts one for each agent
   * @return the combined exposure
   * @throws org.meltwright.units.ProblemException if there is none, if averaging times differ, or
   *     if an agent causes cancer
   */
  public static CombinedExposure of(List<Part> parts) {
    if (parts.isEmpty()) {
      throw ExposureProblem.of(ExposureProblem.NOTHING_GIVEN, "0", "");
    }
    for (Part part : parts) {
      if (part.limit().agent().traits().contains(Trait.CARCINOGEN)) {
        throw ExposureProblem.of(
            ExposureProblem.NOT_ADDITIVE, part.limit().agent().name(), "CARCINOGEN");
      }
      if (part.limit().averaging() != parts.get(0).limit().averaging()) {
        throw ExposureProblem.of(
            ExposureProblem.LIMITS_DIFFER, part.limit().agent().name(), "averaging time");
      }
    }
    return new CombinedExposure(List.copyOf(parts));
  }

  private CombinedExposure(List<Part> parts) {
    this.parts = parts;
  }

  /**
   * Returns the parts.
   *
   * @return one for each agent
   */
  public List<Part> parts() {
    return parts;
  }

  /**
   * Returns the sum of exposures, each as a share of its limit.
   *
   * <p>For example, 500 of 1000, 45 of 200 and 40 of 200 ppm add up to 0.925.
   *
   * @return the sum, where 1 is reached when the limits are used up together
   */
  public double sumOfShares() {
    return parts.stream().mapToDouble(Part::share).sum();
  }

  /**
   * Tells whether the limits are exceeded together.
   *
   * @return whether the sum lies above 1
   */
  public boolean isExceeded() {
    return Limit.exceeds(sumOfShares(), 1);
  }

  /**
   * Returns an average over eight hours: Σ C t ⁄ 8.
   *
   * <p>For example, 2 h at 150, 2 h at 75 and 4 h at 50 ppm average 81.25 ppm.
   *
   * @param concentrations the concentrations, in one unit
   * @param hours for how long each, in hours; together any time, the rest of eight hours is zero
   * @return the average, in the same unit
   * @throws org.meltwright.units.ProblemException if there are not as many hours as concentrations,
   *     one is negative, or a time is longer than a day
   */
  public static double eightHourAverage(List<Double> concentrations, List<Double> hours) {
    requireSameCount(concentrations, hours);
    double sum = 0;
    for (int i = 0; i < hours.size(); i++) {
      sum +=
          CHECK.between(concentrations.get(i), 0, 1e9, "concentration")
              * CHECK.between(hours.get(i), 0, 24, "hours");
    }
    return sum / 8;
  }

  /**
   * Returns the limit of a vapour mixture of fixed shares: 1 ⁄ Σ (f ⁄ L).
   *
   * <p>For example, vapours of 47.22 and 13.95 parts with limits of 0.5 and 20 ppm have one of
   * 0.643 ppm.
   *
   * @param vapourParts the shares of the vapours, in any common unit, such as partial pressures
   * @param limits the limits, in one unit
   * @return the limit of the mixture, in that unit
   * @throws org.meltwright.units.ProblemException if there are not as many limits as shares, a
   *     share is negative or none is above zero, or a limit is not above zero
   */
  public static double limitOfVapourMixture(List<Double> vapourParts, List<Double> limits) {
    requireSameCount(vapourParts, limits);
    double total = 0;
    double used = 0;
    for (int i = 0; i < limits.size(); i++) {
      double part = CHECK.between(vapourParts.get(i), 0, 1e12, "share of the vapour");
      total += part;
      used += part / CHECK.between(limits.get(i), 1e-12, 1e9, "exposure limit");
    }
    if (!(total > 0)) {
      throw ExposureProblem.of(ExposureProblem.NOTHING_GIVEN, vapourParts.toString(), "");
    }
    return total / used;
  }

  private static void requireSameCount(List<Double> ones, List<Double> others) {
    if (ones.size() != others.size()) {
      throw ExposureProblem.of(
          ExposureProblem.LIMITS_DIFFER, ones.size() + ", " + others.size(), "number of entries");
    }
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CombinedExposure that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "combined exposure to " + parts;
  }
}
