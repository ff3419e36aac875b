// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import org.meltwright.units.Messages;

/**
 * How sure an estimate is, and why: its worst and its likely range, and what each input does to
 * them.
 *
 * <p>The <em>worst range</em> has all inputs at their worse ends together; whatever warns, blocks,
 * fills a vessel or states a limit keeps to it. The <em>likely range</em> holds 95 % of cases if
 * the inputs do not depend on each other and lie evenly within their ranges, unless an input states
 * otherwise (JCGM 101:2008); it is for planning only, and no statement about the model.
 *
 * <p>The <em>shrink</em> of an input is by how much the worst range would be narrower if that input
 * were known: (width − width if known) ÷ width. The shrinks of several inputs do not add up to one.
 *
 * <p>A tray of 200 × 300 mm, filled 20 to 30 mm deep with something of 820 to 850 kg/m³:
 *
 * <pre>{@code
 * EstimateInput depth =
 *     EstimateInput.of(
 *         Symbol.beside(Drivers.class, "depth", "m"), 0.020, 0.030,
 *         EstimateInput.Direction.RAISES);
 * EstimateInput density =
 *     EstimateInput.of(
 *         Symbol.beside(Drivers.class, "density", "kg/m³"), 820, 850,
 *         EstimateInput.Direction.RAISES);
 * Drivers mass =
 *     Drivers.of(
 *         Symbol.beside(Drivers.class, "mass", "kg"),
 *         List.of(density, depth),
 *         v -> 0.2 * 0.3 * v.of(depth) * v.of(density));
 * mass.worst(); // 0.984–1.53 kg
 * mass.likely(); // 1.01–1.49 kg
 * mass.ranked().get(0).input(); // depth 20–30 mm
 * mass.ranked().get(0).shrink(); // 0.918
 * // to know the mass within ± 50 g, know the depth within ± 0.5 mm
 * mass.needed(depth, 0.05).halfWidth().getAsDouble(); // 0.0005 m
 * mass.minus(mass).worst().width(); // 0 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe, if its model is. Compared by identity: what it works out is asked
 * of a function.
 */
public final class Drivers {

  /** Halvings of a range until what is needed is known to a millionth of it. */
  private static final int HALVINGS = 20;

  private static final double HARDLY = 0.05;

  /** Which value each input has. */
  @FunctionalInterface
  public interface Values {

    /**
     * Returns the value of an input.
     *
     * @param input one of the inputs of the estimate
     * @return its value, in its own unit
     */
    double of(EstimateInput input);
  }

  /** The result for one value of each input. */
  @FunctionalInterface
  public interface Model {

    /**
     * Works out the result.
     *
     * @param values the value of each input
     * @return the result; infinite where it has no end, never NaN
     */
    double of(Values values);
  }

  /**
   * What lies between two ends. Immutable and thread-safe.
   *
   * @param low the low end
   * @param high the high end, not below the low one; infinite where there is no end
   * @param unit the unit of both
   */
  public record Range(double low, double high, String unit) {

    /** Draws a problem if they are not in order. */
    public Range {
      EstimateInput.CHECK.ordered(low, high, "range");
    }

    /**
     * Returns how wide it is.
     *
     * @return high − low; infinite where there is no end
     */
    public double width() {
      return low == high ? 0 : high - low;
    }

    /**
     * Returns the range for a reader.
     *
     * @param reader the reader's language: German for {@code de}, English for all others
     * @return three significant figures, two where the high end is twice the low one or more
     */
    public String text(Locale reader) {
      return Written.range(low, high, unit, reader);
    }

    @Override
    public String toString() {
      return Written.range(low, high, unit, Locale.ROOT);
    }
  }

  /**
   * What one input does to the worst range. Immutable and thread-safe.
   *
   * @param input the input
   * @param ifKnown the worst range if this input were known, at its central value
   * @param shrink by how much that is narrower, as a share of the width; where the worst range has
   *     no end, 1 if this one has and 0 if it has none either
   */
  public record Driver(EstimateInput input, Range ifKnown, double shrink) {

    static Driver of(EstimateInput input, Range ifKnown, Range worst) {
      return new Driver(input, ifKnown, shrink(worst.width(), ifKnown.width()));
    }

    private static double shrink(double width, double ifKnown) {
      if (width == 0) {
        return 0;
      }
      if (Double.isInfinite(width)) {
        return Double.isInfinite(ifKnown) ? 0 : 1;
      }
      return (width - ifKnown) / width;
    }
  }

  /**
   * How well one input must be known for the result to be known within a distance. Immutable and
   * thread-safe.
   *
   * @param input the input
   * @param asked the distance asked for, half the width of the worst range, in the unit of the
   *     result
   * @param halfWidth how far from its central value the input may lie, in its own unit; empty if it
   *     cannot be done by this input alone
   * @param rest the distance that the other inputs leave if this one is known
   * @param unit the unit of the result
   */
  public record Needed(
      EstimateInput input, double asked, OptionalDouble halfWidth, double rest, String unit) {

    /**
     * Says it in a sentence.
     *
     * @param reader the reader's language: German for {@code de}, English for all others
     * @return how well it must be known, or that it cannot be done by this alone and what is left
     */
    public String text(Locale reader) {
      Map<String, String> places =
          Map.of(
              "input", input.symbol().name().in(reader),
              "asked", Written.number(asked, unit, reader),
              "rest", Written.number(rest, unit, reader),
              "half", Written.number(halfWidth.orElse(0), input.symbol().unit(), reader));
      return WORDS.text(
          halfWidth.isPresent() ? "needed.possible" : "needed.not-alone", reader, places);
    }
  }

  private static final Messages WORDS = Messages.beside(Drivers.class);

  private final Symbol result;
  private final List<EstimateInput> inputs;
  private final Model model;
  private final double central;
  private final Range worst;
  private final List<Driver> ranked;

  /**
   * Works out what an estimate hangs on: three evaluations of the model, and two for each input
   * that is not exact.
   *
   * @param result what is estimated, with its unit
   * @param inputs its inputs; one that stands twice is one unknown, and one that is exact may be
   *     left out
   * @param model the result for one value of each input
   * @return the drivers
   */
  public static Drivers of(Symbol result, List<EstimateInput> inputs, Model model) {
    return new Drivers(result, inputs.stream().distinct().toList(), model);
  }

  private Drivers(Symbol result, List<EstimateInput> inputs, Model model) {
    this.result = result;
    this.inputs = inputs;
    this.model = model;
    this.central = at(EstimateInput::central);
    this.worst = between(EstimateInput::forLow, EstimateInput::forHigh);
    this.ranked =
        inputs.stream()
            .filter(input -> !input.isExact())
            .map(input -> Driver.of(input, within(input, 0), worst))
            .sorted(
                Comparator.comparingDouble((Driver d) -> -d.shrink())
                    .thenComparing(d -> d.ifKnown().width()))
            .toList();
  }

  /** The worst range with one input known within a distance of its central value. */
  private Range within(EstimateInput input, double halfWidth) {
    EstimateInput known = input.within(halfWidth);
    return between(
        i -> i.equals(input) ? known.forLow() : i.forLow(),
        i -> i.equals(input) ? known.forHigh() : i.forHigh());
  }

  /** Near the turning point of an input its ends may change places by a little. */
  private Range between(Values forLow, Values forHigh) {
    double low = at(forLow);
    double high = at(forHigh);
    return new Range(
        Math.min(central, Math.min(low, high)),
        Math.max(central, Math.max(low, high)),
        result.unit());
  }

  /** Each input has one value, however often it enters. */
  private double at(Values chosen) {
    Map<EstimateInput, Double> values = new HashMap<>();
    inputs.forEach(input -> values.put(input, chosen.of(input)));
    return model.of(input -> value(values, input));
  }

  private static double value(Map<EstimateInput, Double> values, EstimateInput input) {
    Double value = values.get(input);
    if (value == null && input.isExact()) {
      return input.central();
    }
    if (value == null) {
      throw new NoSuchElementException(input + " is none of the inputs");
    }
    return value;
  }

  /**
   * Returns what is estimated.
   *
   * @return its name and unit
   */
  public Symbol result() {
    return result;
  }

  /**
   * Returns all inputs.
   *
   * @return each once, those that are exact too
   */
  public List<EstimateInput> inputs() {
    return inputs;
  }

  Model model() {
    return model;
  }

  /**
   * Returns the result with every input at its central value.
   *
   * @return the central value, in the unit of the result
   */
  public double central() {
    return central;
  }

  /**
   * Returns the range with all inputs at their worse ends together.
   *
   * @return the worst range
   */
  public Range worst() {
    return worst;
  }

  /**
   * Returns the range that holds 95 % of cases, as many below it as above, for planning; up to 64
   * more evaluations, the same in each run.
   *
   * @return the likely range, within the worst one
   */
  public Range likely() {
    return LikelyRange.of(this);
  }

  /**
   * Returns what each input that is not exact does to the worst range.
   *
   * @return the inputs, the one that shrinks it most first
   */
  public List<Driver> ranked() {
    return ranked;
  }

  /**
   * Returns how well an input must be known for the result to be known within a distance of its
   * middle, whatever the others are.
   *
   * @param input one of the inputs
   * @param halfWidth the distance, half the width of the worst range, above zero
   * @return how well, or that it cannot be done by this input alone
   * @throws NoSuchElementException if it is none of the inputs
   * @throws org.meltwright.units.ProblemException if the distance is not above zero
   */
  public Needed needed(EstimateInput input, double halfWidth) {
    if (!inputs.contains(input)) {
      throw new NoSuchElementException(input + " is none of the inputs");
    }
    EstimateInput.CHECK.between(halfWidth, Double.MIN_VALUE, Double.MAX_VALUE, "distance");
    double rest = within(input, 0).width() / 2;
    OptionalDouble needed =
        rest > halfWidth ? OptionalDouble.empty() : OptionalDouble.of(widest(input, halfWidth));
    return new Needed(input, halfWidth, needed, rest, result.unit());
  }

  private double widest(EstimateInput input, double halfWidth) {
    double enough = 0;
    double most = Math.max(input.high() - input.central(), input.central() - input.low());
    if (worst.width() / 2 <= halfWidth) {
      return most;
    }
    double tooMuch = most;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (enough + tooMuch) / 2;
      if (within(input, middle).width() / 2 <= halfWidth) {
        enough = middle;
      } else {
        tooMuch = middle;
      }
    }
    return enough;
  }

  /**
   * Returns the drivers of a sum; an input of both is varied once.
   *
   * @param other what is added, in the same unit
   * @return the drivers of the sum
   */
  public Drivers plus(Drivers other) {
    return with(other, 1);
  }

  /**
   * Returns the drivers of a difference; an input of both is varied once, so that x − x is exactly
   * zero.
   *
   * @param other what is taken away, in the same unit
   * @return the drivers of the difference
   */
  public Drivers minus(Drivers other) {
    return with(other, -1);
  }

  private Drivers with(Drivers other, int sign) {
    Map<EstimateInput, EstimateInput> theirs = new LinkedHashMap<>();
    for (EstimateInput input : other.inputs) {
      EstimateInput here = sign > 0 ? input : input.turned();
      theirs.put(input, inputs.contains(here.turned()) ? here.turned() : here);
    }
    List<EstimateInput> all = new ArrayList<>(inputs);
    theirs.values().stream().filter(input -> !inputs.contains(input)).forEach(all::add);
    return directed(
        all, v -> sum(model.of(v), sign * other.model.of(i -> v.of(theirs.getOrDefault(i, i)))));
  }

  /** What has no end less the same is nothing. */
  private static double sum(double one, double other) {
    return one == -other ? 0 : one + other;
  }

  /** Where the two pull an input both ways, the stronger decides its direction. */
  private Drivers directed(List<EstimateInput> all, Model both) {
    Map<EstimateInput, EstimateInput> now = new LinkedHashMap<>();
    for (EstimateInput input : all) {
      double low = both.of(i -> i.equals(input) ? input.forLow() : i.central());
      double high = both.of(i -> i.equals(input) ? input.forHigh() : i.central());
      now.put(input, low > high ? input.turned() : input);
    }
    return new Drivers(
        result,
        List.copyOf(now.values()),
        v -> both.of(input -> v.of(now.getOrDefault(input, input))));
  }

  /**
   * Returns what to measure first, in a maker's words.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return what to do and how much of the worst range it decides; empty if nothing by itself
   *     decides a twentieth of it
   */
  public Optional<String> measureFirst(Locale reader) {
    return ranked.stream()
        .limit(1)
        .filter(d -> d.shrink() >= HARDLY)
        .findFirst()
        .map(first -> advice(first, reader));
  }

  private static String advice(Driver driver, Locale reader) {
    String share = Written.share(driver.shrink(), reader);
    Symbol symbol = driver.input().symbol();
    return symbol
        .advice(share, reader)
        .orElseGet(
            () ->
                WORDS.text(
                    "measure-first",
                    reader,
                    Map.of("input", symbol.name().in(reader), "share", share)));
  }

  /**
   * Returns the estimate on one line.
   *
   * @return what is estimated, its worst range, and the inputs, the one that decides most first
   */
  @Override
  public String toString() {
    return result
        + " "
        + worst
        + ranked.stream().map(d -> "; " + d.input()).reduce("", String::concat);
  }
}
