// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * Calibration of a thermometer: the correction to its readings as a straight line.
 *
 * <p>b(t) = a₁ + a₂ (t − t₀), u²(b) = u²(a₁) + (t − t₀)² u²(a₂) + 2 (t − t₀) u(a₁) u(a₂) r. With
 * two points the line goes through both, and the uncertainties are those stated of them; with three
 * and more it is that of least squares, and the scatter of the points tells the uncertainty (JCGM
 * 100:2008, H.3).
 *
 * <p>Crushed ice in water, stirred, and water at a rolling boil are two points that every kitchen
 * has; the boil moves with the air pressure, so that is asked for, or the height above the sea. The
 * probe goes back into the wax wholly dry: a drop of water in hot wax boils and spatters.
 *
 * <p>A thermometer that shows 0.6 °C in ice and 98.1 °C in boiling water at 960 hPa:
 *
 * <pre>{@code
 * ThermometerCalibration probe =
 *     ThermometerCalibration.of(
 *         List.of(
 *             ThermometerCalibration.Point.ice(Reading.shown(0.6, 0.1)),
 *             ThermometerCalibration.Point.boiling(
 *                 Reading.shown(98.1, 0.1), Reading.within(960, 3))));
 * probe.correction(85).text(); // 0.24 ± 0.32 K
 * probe.corrected(Reading.shown(85, 0.1)).text(); // 85.24 ± 0.33 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class ThermometerCalibration {

  private final double reference;
  private final Line line;

  /**
   * A temperature that is known, and what the thermometer shows there. Immutable and thread-safe.
   *
   * @param shownCelsius what it shows, in °C
   * @param trueCelsius what it is, in °C
   */
  public record Point(Reading shownCelsius, Reading trueCelsius) {

    /** Ice of tap water, stirred (common practice). */
    private static final Reading ICE = Reading.within(0, 0.2);

    /** Salts in the water, depth of the probe, steam that chills (common practice). */
    private static final double BOIL = 0.3;

    /** The weather moves the pressure at one place by about this much (common practice). */
    private static final double WEATHER = 25;

    /**
     * Returns the point of melting ice.
     *
     * @param shownCelsius what the thermometer shows in crushed ice and water, stirred
     * @return the point, 0 °C within 0.2 K
     */
    public static Point ice(Reading shownCelsius) {
      return new Point(shownCelsius, ICE);
    }

    /**
     * Returns the point of boiling water.
     *
     * @param shownCelsius what the thermometer shows at a rolling boil, off the floor
     * @param hectopascal the air pressure where you are, not reduced to the sea, from 500 to 1100
     * @return the point, within 0.3 K and what the pressure adds
     * @throws ProblemException if the pressure cannot be
     */
    public static Point boiling(Reading shownCelsius, Reading hectopascal) {
      double p = CHECK.between(hectopascal.value(), 500, 1100, "air pressure in hPa");
      double u = hectopascal.uncertainty();
      double moves = (BoilingWater.celsius(p + u) - BoilingWater.celsius(p - u)) / 2;
      Reading boil = Reading.within(BoilingWater.celsius(p), BOIL).also(moves);
      return new Point(shownCelsius, boil);
    }

    /**
     * Returns the point of boiling water where the height is known and not the pressure.
     *
     * @param shownCelsius what the thermometer shows at a rolling boil, off the floor
     * @param metres the height above the sea, from −400 to 5000 m
     * @return the point: that of the mean pressure at this height, within 25 hPa of weather
     * @throws ProblemException if the height cannot be
     */
    public static Point boilingAtHeight(Reading shownCelsius, double metres) {
      CHECK.between(metres, -400, 5000, "height above the sea in m");
      return boiling(shownCelsius, Reading.within(BoilingWater.hectopascal(metres), WEATHER));
    }

    double correction() {
      return trueCelsius.value() - shownCelsius.value();
    }

    double variance() {
      double shown = shownCelsius.uncertainty();
      double truth = trueCelsius.uncertainty();
      return shown * shown + truth * truth;
    }
  }

  /** Intercept and slope with their variances and covariance. */
  private record Line(
      double intercept,
      double slope,
      double interceptVariance,
      double slopeVariance,
      double covariance,
      double freedom) {}

  /**
   * Returns the calibration through two or more points, with 0 °C as reference temperature.
   *
   * @param points the points, at least two that differ in what the thermometer shows
   * @return the calibration
   * @throws ProblemException if there are fewer than two or they do not differ
   */
  public static ThermometerCalibration of(List<Point> points) {
    return of(points, 0);
  }

  /**
   * Returns the calibration through two or more points.
   *
   * @param points the points, at least two that differ in what the thermometer shows
   * @param referenceCelsius t₀: a₁ is the correction there
   * @return the calibration
   * @throws ProblemException if there are fewer than two or they do not differ
   */
  public static ThermometerCalibration of(List<Point> points, double referenceCelsius) {
    CHECK.finite(referenceCelsius, "reference temperature in °C");
    if (points.size() < 2) {
      throw Reading.tooFew(points.size(), 2);
    }
    double[] theta =
        points.stream().mapToDouble(p -> p.shownCelsius.value() - referenceCelsius).toArray();
    Line line = points.size() == 2 ? through(points, theta) : leastSquares(points, theta);
    return new ThermometerCalibration(referenceCelsius, line);
  }

  private ThermometerCalibration(double reference, Line line) {
    this.reference = reference;
    this.line = line;
  }

  /** Both ends are linear in the two corrections: weights 1 − w and w for the intercept. */
  private static Line through(List<Point> points, double[] theta) {
    Point first = points.get(0);
    Point last = points.get(1);
    double apart = apart(theta[1] - theta[0]);
    double slope = (last.correction() - first.correction()) / apart;
    double w = -theta[0] / apart;
    double v1 = first.variance();
    double v2 = last.variance();
    return new Line(
        first.correction() - slope * theta[0],
        slope,
        (1 - w) * (1 - w) * v1 + w * w * v2,
        (v1 + v2) / (apart * apart),
        (w * v2 - (1 - w) * v1) / apart,
        Double.POSITIVE_INFINITY);
  }

  /** JCGM 100:2008, H.3.2: equations H.13a to H.13g. */
  private static Line leastSquares(List<Point> points, double[] theta) {
    int n = theta.length;
    double sum = 0;
    double squares = 0;
    double b = 0;
    double products = 0;
    for (int i = 0; i < n; i++) {
      double correction = points.get(i).correction();
      sum += theta[i];
      squares += theta[i] * theta[i];
      b += correction;
      products += correction * theta[i];
    }
    double d = apart(n * squares - sum * sum);
    double intercept = (b * squares - products * sum) / d;
    double slope = (n * products - b * sum) / d;
    double s2 = residuals(points, theta, intercept, slope) / (n - 2);
    return new Line(intercept, slope, s2 * squares / d, n * s2 / d, -s2 * sum / d, n - 2.0);
  }

  private static double residuals(
      List<Point> points, double[] theta, double intercept, double slope) {
    double residuals = 0;
    for (int i = 0; i < theta.length; i++) {
      double off = points.get(i).correction() - intercept - slope * theta[i];
      residuals += off * off;
    }
    return residuals;
  }

  private static double apart(double spread) {
    if (Math.abs(spread) < 1e-6) {
      throw new ProblemException(
          Problem.of(MeasurementProblem.NOT_APART, Bilingual.of(spread).plus(" K")));
    }
    return spread;
  }

  /**
   * Returns a₁, the correction at the reference temperature.
   *
   * @return the correction, in K
   */
  public Measurement intercept() {
    return one(
        "correction at the reference temperature", "K", line.intercept, line.interceptVariance);
  }

  /**
   * Returns a₂, by how much the correction grows with each kelvin.
   *
   * @return the slope, in K per K
   */
  public Measurement slope() {
    return one("slope of the correction", "", line.slope, line.slopeVariance);
  }

  /**
   * Returns how intercept and slope hang together.
   *
   * @return r, from −1 to 1; 0 where the points leave no doubt
   */
  public double correlation() {
    double both = Math.sqrt(line.interceptVariance * line.slopeVariance);
    return both == 0 ? 0 : line.covariance / both;
  }

  /**
   * Returns what to add to a reading.
   *
   * @param shownCelsius what the thermometer shows, in °C
   * @return the correction, in K
   */
  public Measurement correction(double shownCelsius) {
    double theta = CHECK.finite(shownCelsius, "temperature in °C") - reference;
    double variance =
        line.interceptVariance + theta * theta * line.slopeVariance + 2 * theta * line.covariance;
    return one("correction of the thermometer", "K", line.intercept + line.slope * theta, variance);
  }

  /**
   * Returns the temperature behind a reading.
   *
   * @param shownCelsius what the thermometer shows, in °C
   * @return the temperature, in °C
   */
  public Measurement corrected(Reading shownCelsius) {
    Reading correction = correction(shownCelsius.value()).reading();
    return Measurement.of(
        "temperature by a calibrated thermometer",
        "°C",
        List.of(
            Measuring.input("reading", "°C", shownCelsius),
            Measuring.input("correction", "K", correction)),
        x -> x[0] + x[1]);
  }

  private Measurement one(String name, String unit, double value, double variance) {
    Reading reading = new Reading(value, Math.sqrt(Math.max(0, variance)), line.freedom);
    return Measurement.of(name, unit, List.of(Measuring.input(name, unit, reading)), x -> x[0]);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ThermometerCalibration that
        && reference == that.reference
        && line.equals(that.line);
  }

  @Override
  public int hashCode() {
    return line.hashCode() * 31 + Double.hashCode(reference);
  }

  /**
   * Returns the line.
   *
   * @return intercept and slope
   */
  @Override
  public String toString() {
    return intercept() + "; " + slope();
  }

  /** Boiling point of water, and the pressure of the air at a height. */
  static final class BoilingWater {

    /** IAPWS-IF97, region 4, equation 31 (coefficients from memory, held to its table 36). */
    private static final double[] N = {
      0.11670521452767e4,
      -0.72421316703206e6,
      -0.17073846940092e2,
      0.12020824702470e5,
      -0.32325550322333e7,
      0.14915108613530e2,
      -0.48232657361591e4,
      0.40511340542057e6,
      -0.23855557567849,
      0.65017534844798e3
    };

    private BoilingWater() {}

    /** Saturation temperature in K for a pressure in MPa. */
    static double kelvin(double megapascal) {
      double b = Math.pow(megapascal, 0.25);
      double e = b * b + N[2] * b + N[5];
      double f = N[0] * b * b + N[3] * b + N[6];
      double g = N[1] * b * b + N[4] * b + N[7];
      double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
      double root = (N[9] + d) * (N[9] + d) - 4 * (N[8] + N[9] * d);
      return (N[9] + d - Math.sqrt(root)) / 2;
    }

    static double celsius(double hectopascal) {
      return kelvin(hectopascal * 1e-4) - 273.15;
    }

    /** Standard atmosphere, ISO 2533: pressure in hPa at a height above the sea in m. */
    static double hectopascal(double metres) {
      return 1013.25 * Math.pow(1 - 0.0065 * metres / 288.15, 9.80665 / (287.05287 * 0.0065));
    }
  }
}
