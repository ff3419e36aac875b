// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;

import java.util.stream.DoubleStream;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A number that was read, and how sure it is: its standard uncertainty after the GUM (JCGM
 * 100:2008), and on how many free readings that rests.
 *
 * <p>A kitchen balance that shows whole grams, a certificate that prints ± 0.2 g with k = 2, and
 * four weighings of one cup:
 *
 * <pre>{@code
 * Reading.shown(96, 1).uncertainty(); // 0.289
 * Reading.certified(100, 0.2, 2).uncertainty(); // 0.1
 * Reading four = Reading.repeated(10.1, 10.3, 10.2, 10.4);
 * four.value(); // 10.25
 * four.uncertainty(); // 0.0645
 * four.freedom(); // 3
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param value the number, in the unit of whatever takes the reading
 * @param uncertainty its standard uncertainty, in the same unit, not negative
 * @param freedom the degrees of freedom; infinite where the uncertainty is stated, not observed
 */
public record Reading(double value, double uncertainty, double freedom) {

  /**
   * Draws a problem if a number is not finite, the uncertainty is negative or the freedom is below
   * 1.
   */
  public Reading {
    CHECK.finite(value, "reading");
    CHECK.between(uncertainty, 0, Double.MAX_VALUE, "standard uncertainty");
    CHECK.between(Math.min(freedom, Double.MAX_VALUE), 1, Double.MAX_VALUE, "degrees of freedom");
  }

  /**
   * Returns a reading whose standard uncertainty is stated.
   *
   * @param value the number
   * @param standardUncertainty its standard uncertainty
   * @return the reading
   */
  public static Reading of(double value, double standardUncertainty) {
    return new Reading(value, standardUncertainty, Double.POSITIVE_INFINITY);
  }

  /**
   * Returns a number that is exact, by definition or by count.
   *
   * @param value the number
   * @return the reading, without uncertainty
   */
  public static Reading exact(double value) {
    return of(value, 0);
  }

  /**
   * Returns a reading that lies evenly anywhere within a half-width: a/√3.
   *
   * @param value the number
   * @param halfWidth a, such as 0.5 for "± 0.5"
   * @return the reading
   */
  public static Reading within(double value, double halfWidth) {
    return of(value, halfWidth / Math.sqrt(3));
  }

  /**
   * Returns a reading within a half-width whose middle is likelier than its ends: a/√6.
   *
   * @param value the number
   * @param halfWidth a, such as the tolerance that a glass is marked with
   * @return the reading
   */
  public static Reading nearlyWithin(double value, double halfWidth) {
    return of(value, halfWidth / Math.sqrt(6));
  }

  /**
   * Returns what a display or a scale shows: within half a step.
   *
   * @param value the number shown
   * @param step the smallest step of the display
   * @return the reading
   */
  public static Reading shown(double value, double step) {
    return within(value, step / 2);
  }

  /**
   * Returns a number whose expanded uncertainty a certificate states.
   *
   * @param value the number
   * @param expanded the expanded uncertainty
   * @param coverageFactor k, mostly 2
   * @return the reading
   */
  public static Reading certified(double value, double expanded, double coverageFactor) {
    CHECK.between(coverageFactor, 1e-3, 1e3, "coverage factor");
    return of(value, expanded / coverageFactor);
  }

  /**
   * Returns the mean of several readings of one thing: s/√n, n − 1 degrees of freedom.
   *
   * @param readings the readings, at least two
   * @return their mean
   * @throws ProblemException if there are fewer than two
   */
  public static Reading repeated(double... readings) {
    int n = readings.length;
    if (n < 2) {
      throw tooFew(n, 2);
    }
    double mean = DoubleStream.of(readings).sum() / n;
    double squares = DoubleStream.of(readings).map(r -> (r - mean) * (r - mean)).sum();
    return new Reading(mean, Math.sqrt(squares / (n - 1) / n), n - 1.0);
  }

  /**
   * Returns this reading with another, independent doubt added, such as that of the scale.
   *
   * @param standardUncertainty the standard uncertainty to add
   * @return the reading, √(u² + v²) uncertain
   */
  public Reading also(double standardUncertainty) {
    double both = Math.hypot(uncertainty, standardUncertainty);
    double fourth = Math.pow(uncertainty / both, 4);
    boolean observed = freedom < Double.POSITIVE_INFINITY && uncertainty > 0;
    return new Reading(value, both, observed ? freedom / fourth : Double.POSITIVE_INFINITY);
  }

  static ProblemException tooFew(int found, int needed) {
    return new ProblemException(
        Problem.of(MeasurementProblem.TOO_FEW, Bilingual.of(found))
            .with("needed", Bilingual.of(needed)));
  }
}
