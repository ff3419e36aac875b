// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

import java.util.OptionalDouble;

/**
 * The air of a room and its exchange: air changes, build-up and how long it takes, and the time
 * until a share of the start is left.
 *
 * <p>Times are never a clearance: they say how long until, say, 1 % of what was there at the start
 * is left if nothing is added and the air mixes as the factor states. After the table of MMWR 1994;
 * 43 RR-13, S3-1. For example, at 6 air changes an hour and perfect mixing, 1 % of the start is
 * left after 46 minutes.
 *
 * <p>In code:
 *
 * <pre>{@code
 * // 120 m³ with six air changes an hour
 * RoomAir mixed = RoomAir.ofAirChanges(120, 6, 1);
 * mixed.minutesToShareOfStart(0.01); // 46.05 min
 * // rooms mix worse: three times as long
 * RoomAir real = RoomAir.ofAirChanges(120, 6, 3);
 * real.minutesToShareOfStart(0.01); // 138.2 min
 * real.shareOfStartAfter(60); // 0.1353
 * // a litre of vapour an hour: how long until 3 ppm, and 5 ppm
 * real.minutesToVolumeFraction(0.001, 3e-6); // 38.19 min
 * real.minutesToVolumeFraction(0.001, 5e-6); // OptionalDouble.empty
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param volumeCubicMetres the volume, in m³, from 0.001 to 1e7
 * @param flowCubicMetresPerHour the air exchanged, in m³/h, above zero, at most 1e9
 * @param mixingFactor K, from 1 to 10: 1 for perfect mixing, 3 to 10 in rooms
 */
public record RoomAir(
    double volumeCubicMetres, double flowCubicMetresPerHour, double mixingFactor) {

  public RoomAir {
    CHECK.between(volumeCubicMetres, 1e-3, 1e7, "volume of the room in m³");
    CHECK.between(flowCubicMetresPerHour, 1e-6, 1e9, "air exchanged in m³/h");
    CHECK.between(mixingFactor, 1, 10, "mixing factor");
  }

  /**
   * Returns a room by its air changes.
   *
   * @param volumeCubicMetres the volume, in m³
   * @param airChangesPerHour the air changes per hour
   * @param mixingFactor K
   * @return the room air
   */
  public static RoomAir ofAirChanges(
      double volumeCubicMetres, double airChangesPerHour, double mixingFactor) {
    return new RoomAir(volumeCubicMetres, volumeCubicMetres * airChangesPerHour, mixingFactor);
  }

  /**
   * Returns how often an hour the air is exchanged.
   *
   * @return the air changes per hour
   */
  public double airChangesPerHour() {
    return flowCubicMetresPerHour / volumeCubicMetres;
  }

  /**
   * Returns the flow that the air changes asked for need.
   *
   * <p>For example, ten air changes an hour in 180 m³ are 1800 m³/h.
   *
   * @param volumeCubicMetres the volume, in m³
   * @param airChangesPerHour the air changes per hour
   * @return the flow, in m³/h
   */
  public static double flowFor(double volumeCubicMetres, double airChangesPerHour) {
    return CHECK.between(volumeCubicMetres, 1e-3, 1e7, "volume of the room in m³")
        * CHECK.between(airChangesPerHour, 0, 1e6, "air changes per hour");
  }

  /**
   * Returns the time until a share of the start is left, if nothing is added.
   *
   * @param share the share of the start, from 1e-12 to 1, for example 0.01
   * @return the minutes; never a clearance
   * @throws org.meltwright.units.ProblemException if the share lies outside that range
   */
  public double minutesToShareOfStart(double share) {
    return minutesToShare(CHECK.between(share, 1e-12, 1, "share of the start"));
  }

  private double minutesToShare(double share) {
    return -60 * mixingFactor * Math.log(share) / airChangesPerHour();
  }

  /**
   * Returns the share of the start that is left after a time, if nothing is added.
   *
   * @param minutes the time, in minutes, not negative
   * @return the share, from 0 to 1
   */
  public double shareOfStartAfter(double minutes) {
    CHECK.between(minutes, 0, 1e9, "minutes");
    return Math.exp(-airChangesPerHour() * minutes / 60 / mixingFactor);
  }

  /**
   * Returns the volume fraction that builds up from clean air: C = (G K ⁄ Q)(1 − exp(−Q t ⁄ K V)).
   *
   * @param vapourCubicMetresPerHour the pure vapour generated, in m³/h
   * @param minutes the time, in minutes, not negative
   * @return the average volume fraction in the room
   */
  public double volumeFractionAfter(double vapourCubicMetresPerHour, double minutes) {
    CHECK.between(vapourCubicMetresPerHour, 0, 1e6, "vapour in m³/h");
    double effective = flowCubicMetresPerHour / mixingFactor;
    return vapourCubicMetresPerHour / effective * (1 - shareOfStartAfter(minutes));
  }

  /**
   * Returns the time until a volume fraction builds up from clean air, the build-up turned round: t
   * = −(K V ⁄ Q) ln(1 − C Q ⁄ (G K)).
   *
   * <p>It is the average of the room that takes so long; before a face, and near the source, it is
   * there at once.
   *
   * @param vapourCubicMetresPerHour the pure vapour generated, in m³/h
   * @param volumeFraction the average volume fraction asked for, from 1e-12 to 1
   * @return the minutes; empty if it is never reached, since the air carries off as much before
   * @throws org.meltwright.units.ProblemException if a number cannot be
   */
  public OptionalDouble minutesToVolumeFraction(
      double vapourCubicMetresPerHour, double volumeFraction) {
    CHECK.between(vapourCubicMetresPerHour, 0, 1e6, "vapour in m³/h");
    CHECK.between(volumeFraction, 1e-12, 1, "volume fraction");
    double steady = vapourCubicMetresPerHour * mixingFactor / flowCubicMetresPerHour;
    double left = 1 - volumeFraction / steady;
    return left > 0 ? OptionalDouble.of(minutesToShare(left)) : OptionalDouble.empty();
  }
}
