// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The smallest step of a balance's display, such as 1 g for a kitchen scale or 0.1 g for pigment.
 *
 * <p>A mass is rounded to a whole number of steps, halves up. 12.34 g on a balance of 0.1 g is 12.3
 * g.
 *
 * <p>For example:
 *
 * <pre>{@code
 * ScaleInterval fine = ScaleInterval.of(grams(0.1));
 * fine.round(grams(12.34)); // 0.0123 kg
 * fine.roundKilograms(0.01235); // 0.0124 kg
 * ScaleInterval.of(grams(1)).isTooCoarseFor(0.0005); // true
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class ScaleInterval implements Comparable<ScaleInterval> {

  private static final double FINEST = 1e-9;
  private static final double COARSEST = 1e6;
  private static final double SNAP = 1e-9;

  private final double kilograms;
  private final BigDecimal step;

  /**
   * Returns the interval of a balance.
   *
   * @param step the smallest step, from 1 µg to 1000 t
   * @return the interval
   * @throws ProblemException if the step lies outside that range
   */
  public static ScaleInterval of(Quantity<Mass> step) {
    return ofKilograms(UnitsProblem.CHECK.between(step, FINEST, COARSEST, "scale interval"));
  }

  /**
   * Returns the interval of a balance.
   *
   * @param kilograms the smallest step in kg, from 1e-9 to 1e6
   * @return the interval
   * @throws ProblemException if the step lies outside that range
   */
  public static ScaleInterval ofKilograms(double kilograms) {
    return new ScaleInterval(
        UnitsProblem.CHECK.between(kilograms, FINEST, COARSEST, "scale interval in kg"));
  }

  private ScaleInterval(double kilograms) {
    this.kilograms = kilograms;
    this.step = BigDecimal.valueOf(kilograms);
  }

  /**
   * Returns the step.
   *
   * @return kg, above zero
   */
  public double intervalKilograms() {
    return kilograms;
  }

  /**
   * Returns the step.
   *
   * @return the quantity, in kg
   */
  public Quantity<Mass> interval() {
    return QuantityKind.MASS.ofSi(kilograms);
  }

  /**
   * Rounds a mass to whole steps, halves up.
   *
   * @param mass the mass
   * @return the rounded mass, in kg
   * @throws ProblemException if the mass is not finite or has more than 2^53 steps
   */
  public Quantity<Mass> round(Quantity<Mass> mass) {
    double most = kilograms * MOST_STEPS;
    return QuantityKind.MASS.ofSi(
        roundKilograms(UnitsProblem.CHECK.between(mass, -most, most, "mass")));
  }

  /**
   * Rounds a mass to whole steps, halves up.
   *
   * @param massKilograms the mass in kg
   * @return the rounded mass in kg
   * @throws ProblemException if the mass is not finite or has more than 2^53 steps
   */
  public double roundKilograms(double massKilograms) {
    return kilogramsOf((long) Math.floor(steps(massKilograms) + 0.5)).doubleValue();
  }

  /**
   * Tells whether a balance with this interval cannot show a mass, since it is less than one step.
   *
   * @param massKilograms the mass in kg
   * @return whether the mass is above zero and below one step
   */
  public boolean isTooCoarseFor(double massKilograms) {
    return massKilograms > 0 && !Limit.reaches(massKilograms, kilograms);
  }

  /** The number of steps in a mass; a hair beside a whole or half number counts as that number. */
  double steps(double mass) {
    double steps = mass / kilograms;
    UnitsProblem.CHECK.between(steps, -MOST_STEPS, MOST_STEPS, "number of scale intervals");
    double halves = Math.rint(steps * 2) / 2;
    return Math.abs(steps - halves) <= SNAP * Math.max(1, Math.abs(steps)) ? halves : steps;
  }

  private static final double MOST_STEPS = 1L << 53;

  /** A number of steps in kg, without the noise of a product of doubles. */
  BigDecimal kilogramsOf(long steps) {
    return step.multiply(BigDecimal.valueOf(steps));
  }

  /**
   * Compares the steps.
   *
   * @param other the other interval
   * @return below zero if this interval is the finer
   */
  @Override
  public int compareTo(ScaleInterval other) {
    return Double.compare(kilograms, other.kilograms);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ScaleInterval that && kilograms == that.kilograms;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(kilograms);
  }

  /**
   * Returns the step, locale-free.
   *
   * <p>In thirteen digits, for reading; {@link QuantityFormatter#exact} keeps every bit.
   *
   * @return for example "1.0E-4 kg"
   */
  @Override
  public String toString() {
    return Shown.number(kilograms) + " kg";
  }
}
