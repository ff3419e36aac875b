// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.numbers.gamma.RegularizedBeta;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/**
 * A figure of one's own: what was measured, how sure it is, and what made it unsure.
 *
 * <p>Formula (JCGM 100:2008, the GUM): y = f(x₁ … xₙ); u² = Σ (cᵢ uᵢ)², with cᵢ uᵢ = ½ [f(xᵢ + uᵢ)
 * − f(xᵢ − uᵢ)] (5.1.3, note 2; 5.1.2); the inputs do not depend on each other. The expanded
 * uncertainty is U = k u, where k is 2, and Student's t for 95.45 % and the effective degrees of
 * freedom where the inputs rest on few readings (G.4). Where one input that lies evenly within its
 * bounds makes nearly all of u, the range ± U holds more than 95 %.
 *
 * <p>Any equation can be fed to it. A hundred milligrams of cadmium of 99.99 % in 100 ml of acid
 * (EURACHEM/CITAC guide, example A1):
 *
 * <pre>{@code
 * double volume = Math.sqrt(0.1 * 0.1 / 6 + 0.02 * 0.02 + 0.084 * 0.084 / 3);
 * Measurement standard =
 *     Measurement.of(
 *         "mass concentration",
 *         "mg/l",
 *         List.of(
 *             new Measurement.Input("mass", "mg", Reading.of(100.28, 0.05)),
 *             new Measurement.Input("purity", "", Reading.within(0.9999, 0.0001)),
 *             new Measurement.Input("volume", "ml", Reading.of(100, volume))),
 *         x -> 1000 * x[0] * x[1] / x[2]);
 * standard.value(); // 1002.7
 * standard.uncertainty(); // 0.835
 * standard.text(); // 1002.7 ± 1.7 mg/l
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Measurement {

  /** What a double may be above a number of two digits without being rounded up from it. */
  private static final double SLACK = 1e-9;

  private final String name;
  private final String unit;
  private final double value;
  private final double uncertainty;
  private final double freedom;
  private final List<Contribution> contributions;
  private final @Nullable TemperaturePoint at;

  /**
   * One of the numbers that a figure is worked out from. Immutable and thread-safe.
   *
   * @param name what it is
   * @param unit its unit; empty for a pure number
   * @param reading the number and how sure it is
   */
  public record Input(String name, String unit, Reading reading) {

    /** Draws a problem if the name is blank. */
    public Input {
      CHECK.named(name, "name of an input");
    }

    @Override
    public String toString() {
      String doubt = " (u " + three(reading.uncertainty()) + ")";
      return (name + " " + five(reading.value()) + " " + unit).strip() + doubt;
    }
  }

  /**
   * What one input adds to the doubt. Immutable and thread-safe.
   *
   * @param input the input
   * @param uncertainty c·u: how far the figure moves with one standard uncertainty of the input
   */
  public record Contribution(Input input, double uncertainty) {}

  /**
   * Works out a figure from what was read.
   *
   * @param name what is measured
   * @param unit its unit, as a materials file writes it where it goes into one
   * @param inputs what was read, independent of each other
   * @param equation the figure from the values of the inputs, in their order
   * @return the figure
   * @throws ProblemException if the name is blank or the figure is not finite
   */
  public static Measurement of(
      String name, String unit, List<Input> inputs, ToDoubleFunction<double[]> equation) {
    double[] values = inputs.stream().mapToDouble(i -> i.reading().value()).toArray();
    List<Contribution> contributions =
        IntStream.range(0, values.length)
            .mapToObj(i -> new Contribution(inputs.get(i), moved(values, inputs, i, equation)))
            .toList();
    return new Measurement(name, unit, equation.applyAsDouble(values), contributions, null);
  }

  private static double moved(
      double[] values, List<Input> inputs, int i, ToDoubleFunction<double[]> equation) {
    double step = inputs.get(i).reading().uncertainty();
    if (step == 0) {
      return 0;
    }
    double[] up = values.clone();
    double[] down = values.clone();
    up[i] += step;
    down[i] -= step;
    return Math.abs(equation.applyAsDouble(up) - equation.applyAsDouble(down)) / 2;
  }

  private Measurement(
      String name,
      String unit,
      double value,
      List<Contribution> contributions,
      @Nullable TemperaturePoint at) {
    this.name = CHECK.named(name, "name of a measurement");
    this.unit = unit;
    this.value = CHECK.finite(value, name);
    this.contributions = contributions;
    this.at = at;
    this.uncertainty = CHECK.finite(root(contributions), name);
    this.freedom = effectiveFreedom(contributions, uncertainty);
  }

  private static double root(List<Contribution> contributions) {
    return Math.sqrt(contributions.stream().mapToDouble(c -> c.uncertainty * c.uncertainty).sum());
  }

  /** After Welch and Satterthwaite, JCGM 100:2008, G.2b. */
  private static double effectiveFreedom(List<Contribution> contributions, double uncertainty) {
    double sum = 0;
    for (Contribution c : contributions) {
      sum += Math.pow(c.uncertainty / uncertainty, 4) / c.input.reading().freedom();
    }
    return sum > 0 ? Math.max(1, 1 / sum) : Double.POSITIVE_INFINITY;
  }

  /**
   * Returns a copy that says at which temperature it holds.
   *
   * @param temperature the temperature of what was measured
   * @return the copy
   */
  public Measurement at(TemperaturePoint temperature) {
    return new Measurement(name, unit, value, contributions, temperature);
  }

  /**
   * Returns what was measured.
   *
   * @return for example "density of the melt"
   */
  public String name() {
    return name;
  }

  /**
   * Returns the unit.
   *
   * @return for example "kg/m³"; empty for a pure number
   */
  public String unit() {
    return unit;
  }

  /**
   * Returns the figure.
   *
   * @return the value, in {@link #unit()}
   */
  public double value() {
    return value;
  }

  /**
   * Returns the combined standard uncertainty.
   *
   * @return u, in {@link #unit()}
   */
  public double uncertainty() {
    return uncertainty;
  }

  /**
   * Returns the effective degrees of freedom.
   *
   * @return from 1; infinite where all doubt was stated and none observed
   */
  public double freedom() {
    return freedom;
  }

  /**
   * Returns by what the standard uncertainty is multiplied to hold about 95 %.
   *
   * @return k: 2, and more where the figure rests on few readings
   */
  public double coverageFactor() {
    return CoverageFactor.of(freedom);
  }

  /**
   * Returns the expanded uncertainty.
   *
   * @return U = k u, in {@link #unit()}
   */
  public double expanded() {
    return coverageFactor() * uncertainty;
  }

  /**
   * Returns what each input adds, the largest first: measure that one better.
   *
   * @return the contributions
   */
  public List<Contribution> contributions() {
    return contributions.stream()
        .sorted((a, b) -> Double.compare(b.uncertainty, a.uncertainty))
        .toList();
  }

  /**
   * Returns the temperature at which it holds.
   *
   * @return the temperature; empty if none was stated
   */
  public Optional<TemperaturePoint> temperature() {
    return Optional.ofNullable(at);
  }

  /**
   * Returns the figure as a number for another measurement.
   *
   * @return value, standard uncertainty and degrees of freedom
   */
  public Reading reading() {
    return new Reading(value, uncertainty, freedom);
  }

  /**
   * Returns the figure as a materials file writes it: its expanded uncertainty rounded up to two
   * digits, the value to the same place.
   *
   * @return for example "832.1 ± 3.8 kg/m³ at 80 °C"
   */
  public String text() {
    String place = at == null ? "" : " at " + tenths(at.celsius()) + " °C";
    return (numbers() + " " + unit).strip() + place;
  }

  private String numbers() {
    double expanded = expanded();
    if (expanded == 0) {
      return digits(value, 12);
    }
    BigDecimal doubt =
        new BigDecimal(expanded * (1 - SLACK)).round(new MathContext(2, RoundingMode.UP));
    BigDecimal rounded = new BigDecimal(value).setScale(doubt.scale(), RoundingMode.HALF_EVEN);
    return rounded.toPlainString() + " ± " + doubt.toPlainString();
  }

  /**
   * Returns the figure for a property of a material: the range ± U, with who measured it and when.
   *
   * <p>Put it on the lot it was measured on ({@link
   * org.meltwright.core.material.Material#withFirst}); it then stands before what is in print, and
   * {@link org.meltwright.core.material.Comparison} tells whether they agree.
   *
   * @param <V> the type of the value
   * @param key the property
   * @param by who measured
   * @param on when
   * @return the figure
   * @throws ProblemException if the property has another unit, or is never measured at home
   */
  public <V> Sourced<V> figure(PropertyKey<V> key, String by, LocalDate on) {
    Source source = Source.ownMeasurement(by, on, name);
    return Sourced.of(parsed(key), source, Knowledge.MEASURED).withNote(text() + ", k = 2");
  }

  private <V> V parsed(PropertyKey<V> key) {
    try {
      return key.parse(text());
    } catch (ProblemException e) {
      throw new ProblemException(
          Problem.of(MeasurementProblem.OTHER_UNIT, text()).with("property", key.inWords()));
    }
  }

  /**
   * Explains the figure.
   *
   * @return what was read, what each input adds to the doubt, and the result
   */
  public Explanation explanation() {
    return MeasurementWorking.of(this);
  }

  private static String tenths(double number) {
    BigDecimal rounded = new BigDecimal(number).setScale(1, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String three(double number) {
    return digits(number, 3);
  }

  private static String five(double number) {
    return digits(number, 5);
  }

  private static String digits(double number, int count) {
    return number == 0
        ? "0"
        : new BigDecimal(number).round(new MathContext(count)).stripTrailingZeros().toPlainString();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Measurement that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(name, unit, value, contributions, temperature());
  }

  /**
   * Returns the figure on one line.
   *
   * @return name and text
   */
  @Override
  public String toString() {
    return name + " " + text();
  }

  /** How many standard uncertainties hold 95.45 %: 2 for a normal distribution, more for few. */
  static final class CoverageFactor {

    /** What two standard uncertainties of a normal distribution hold, JCGM 100:2008, table G.1. */
    static final double LEVEL = 0.9545;

    private static final double ENDLESS = 1e6;

    private CoverageFactor() {}

    /** Student's t for a level and degrees of freedom, JCGM 100:2008, table G.2. */
    static double of(double freedom) {
      if (freedom > ENDLESS) {
        return 2;
      }
      double low = 0;
      double high = 100;
      while (high - low > 1e-9) {
        double middle = (low + high) / 2;
        if (inside(middle, freedom) < LEVEL) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return Math.max(2, low);
    }

    private static double inside(double t, double freedom) {
      return 1 - RegularizedBeta.value(freedom / (freedom + t * t), freedom / 2, 0.5);
    }
  }
}
