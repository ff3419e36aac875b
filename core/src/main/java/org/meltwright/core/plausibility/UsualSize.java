// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.plausibility;

import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * What is usual of one size, as plain numbers in one unit, and how far outside it nobody is asked.
 */
record UsualSize(double low, double high, double times, String knownBy) {

  /** How a hand slips: a decimal sign one, two or three places off, a prefix of a unit. */
  private static final double[] SLIPS = {1e-3, 1e3, 0.01, 100, 0.1, 10};

  /** Nothing is a gift, or no size at all: it is not judged. */
  boolean isUnusual(double found) {
    return found != 0 && (found < low / times || found > high * times);
  }

  /** The same rule for other ends. */
  UsualSize between(double least, double most) {
    return new UsualSize(least, most, times, knownBy);
  }

  /** By how many times a figure was probably missed: the slip that leads nearest to the middle. */
  Optional<Double> slip(double found) {
    return DoubleStream.of(SLIPS)
        .filter(slip -> found * slip >= low && found * slip <= high)
        .boxed()
        .min((one, other) -> Double.compare(off(found * one), off(found * other)));
  }

  private double off(double likely) {
    return Math.abs(Math.log(likely * likely / (low * high)));
  }
}
