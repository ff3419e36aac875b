// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import static org.meltwright.core.thermal.melting.SolubilityAssumptions.CHECK;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Limit;
import org.meltwright.units.Messages;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/**
 * The temperatures between which a mix can be worked: hot enough not to set on the tool, not above
 * a ceiling.
 *
 * <p>The lower bound is itself known only between two ends: <em>low</em> by ideal solubility,
 * <em>high</em> as if the highest-melting component had to melt by itself; both carry the margin.
 * The upper bound is the ceiling given. The window is closed if even the low end leaves less than
 * the least width, and may be closed if only the high end does.
 *
 * <p>For example, one part of a wax of 80–86 °C in nine of a wax of 62–65 °C, a margin of 10 K, a
 * ceiling of 90 °C and a least width of 5 K: the high end alone would need 96 °C, so the window may
 * be closed. Raising the ceiling is never the answer.
 *
 * <p>The same in code:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition mix =
 *     Composition.ofParts(List.of(shelf.require("beeswax"), shelf.require("carnauba")), 9, 1);
 * WorkingWindow window =
 *     WorkingWindow.of(
 *         mix,
 *         ofCelsius(90),
 *         TemperatureDifference.ofKelvin(10),
 *         TemperatureDifference.ofKelvin(5));
 * window.lowerBound().high(); // 96.0 °C
 * window.state(); // MAY_BE_CLOSED
 * window.highestMelting(); // carnauba
 * }</pre>
 *
 * <p>A resin that dissolves only above the ceiling is no part of the melt there, whatever the waxes
 * do: the window is then not open, and {@link #undissolved} names the resin.
 *
 * <p>This class is immutable and thread-safe.
 */
public final class WorkingWindow {

  /** Whether there is room between the bounds. */
  public enum State {
    /** Even the high end of the lower bound leaves the least width, and every resin dissolves. */
    OPEN,
    /**
     * The low end of the lower bound leaves the least width, the high end does not, or a resin
     * dissolves only above the ceiling: try a little.
     */
    MAY_BE_CLOSED,
    /** Even the low end of the lower bound leaves less than the least width. */
    CLOSED
  }

  private static final Symbol CLEAR_POINT =
      Symbol.beside(ThermalProblem.class, "clear point", "°C");

  private final TemperatureRange clear;
  private final TemperaturePoint ceiling;
  private final TemperatureDifference margin;
  private final TemperatureDifference leastWidth;
  private final @Nullable IdealLiquidus liquidus;
  private final List<Material> undissolved;
  private final @Nullable Mix mix;

  /** What the clear point was estimated from. */
  private record Mix(Composition composition, SolubilityAssumptions assumptions) {

    Drivers drivers() {
      return IdealLiquidus.clearPointDrivers(composition, assumptions);
    }
  }

  /**
   * Returns the window of a mix, with {@link SolubilityAssumptions#TYPICAL}.
   *
   * @param composition what the mix is made of
   * @param ceiling the highest temperature allowed
   * @param margin how far above its clear point the mix has to be so that it does not set on the
   *     tool
   * @param leastWidth the least room between the bounds that can be worked in
   * @return the window
   * @throws org.meltwright.units.ProblemException if nothing melts, what melts has no figure, or
   *     margin or least width is negative or above 200 K
   */
  public static WorkingWindow of(
      Composition composition,
      TemperaturePoint ceiling,
      TemperatureDifference margin,
      TemperatureDifference leastWidth) {
    return of(composition, ceiling, margin, leastWidth, SolubilityAssumptions.TYPICAL);
  }

  /**
   * Returns the window of a mix.
   *
   * @param composition what the mix is made of
   * @param ceiling the highest temperature allowed
   * @param margin how far above its clear point the mix has to be
   * @param leastWidth the least room between the bounds that can be worked in
   * @param assumptions what the ideal-solubility estimate assumes
   * @return the window
   * @throws org.meltwright.units.ProblemException if nothing melts, what melts has no figure, or
   *     margin or least width is negative or above 200 K
   */
  public static WorkingWindow of(
      Composition composition,
      TemperaturePoint ceiling,
      TemperatureDifference margin,
      TemperatureDifference leastWidth,
      SolubilityAssumptions assumptions) {
    Mix mix = new Mix(composition, assumptions);
    return of(IdealLiquidus.of(composition, assumptions), mix, ceiling, margin, leastWidth);
  }

  private static WorkingWindow of(
      IdealLiquidus liquidus,
      Mix mix,
      TemperaturePoint ceiling,
      TemperatureDifference margin,
      TemperatureDifference leastWidth) {
    return new WorkingWindow(
        new TemperatureRange(liquidus.point(), liquidus.top()),
        ceiling,
        margin,
        leastWidth,
        liquidus,
        undissolved(mix.composition, ceiling),
        mix);
  }

  /**
   * Returns the window of a mix, if its clear point can be estimated, with {@link
   * SolubilityAssumptions#TYPICAL}.
   *
   * @param composition what the mix is made of
   * @param ceiling the highest temperature allowed
   * @param margin how far above its clear point the mix has to be so that it does not set on the
   *     tool
   * @param leastWidth the least room between the bounds that can be worked in
   * @return the window; empty if nothing melts, or what melts has no figure: see {@link
   *     MeltingReport#tellsClearPoint}
   * @throws org.meltwright.units.ProblemException if margin or least width is negative or above 200
   *     K
   */
  public static Optional<WorkingWindow> find(
      Composition composition,
      TemperaturePoint ceiling,
      TemperatureDifference margin,
      TemperatureDifference leastWidth) {
    Mix mix = new Mix(composition, SolubilityAssumptions.TYPICAL);
    return IdealLiquidus.find(composition, mix.assumptions)
        .map(liquidus -> of(liquidus, mix, ceiling, margin, leastWidth));
  }

  /**
   * Returns what melts in a mix and has no melting range: what the window of the mix waits for.
   *
   * @param composition what the mix is made of
   * @return the materials, in the order of the mix; empty if every figure is there
   */
  public static List<Material> withoutMeltingRange(Composition composition) {
    return IdealLiquidus.withoutFigure(IdealLiquidus.report(composition).melting());
  }

  private static List<Material> undissolved(Composition composition, TemperaturePoint ceiling) {
    return MeltingReport.of(composition, ceiling).dissolving().stream()
        .filter(b -> b.dissolves() && b.isAboveCeiling())
        .map(DissolvingBound::material)
        .toList();
  }

  /**
   * Returns the window of a mix whose clear point was measured: a measured value wins over every
   * estimate.
   *
   * @param clearPoint the range in which the last crystals vanish, as measured
   * @param ceiling the highest temperature allowed
   * @param margin how far above its clear point the mix has to be
   * @param leastWidth the least room between the bounds that can be worked in
   * @return the window
   * @throws org.meltwright.units.ProblemException if margin or least width is negative or above 200
   *     K
   */
  public static WorkingWindow ofMeasured(
      TemperatureRange clearPoint,
      TemperaturePoint ceiling,
      TemperatureDifference margin,
      TemperatureDifference leastWidth) {
    return new WorkingWindow(clearPoint, ceiling, margin, leastWidth, null, List.of(), null);
  }

  private WorkingWindow(
      TemperatureRange clear,
      TemperaturePoint ceiling,
      TemperatureDifference margin,
      TemperatureDifference leastWidth,
      @Nullable IdealLiquidus liquidus,
      List<Material> undissolved,
      @Nullable Mix mix) {
    CHECK.between(margin.kelvin(), 0, 200, "margin in K");
    CHECK.between(leastWidth.kelvin(), 0, 200, "least width in K");
    this.clear = clear;
    this.ceiling = ceiling;
    this.margin = margin;
    this.leastWidth = leastWidth;
    this.liquidus = liquidus;
    this.undissolved = undissolved;
    this.mix = mix;
  }

  /**
   * Returns where the last crystals vanish: from the ideal liquidus to the top of the
   * highest-melting component, or as measured.
   *
   * @return the range, without the margin
   */
  public TemperatureRange clearPoint() {
    return clear;
  }

  /**
   * Returns what the clear point hangs on.
   *
   * @return the drivers of the clear point in °C: where the components melt and how far the mix is
   *     from ideal, or the measured range alone
   */
  public Drivers clearPointDrivers() {
    return mix == null ? measuredDrivers() : mix.drivers();
  }

  private Drivers measuredDrivers() {
    EstimateInput measured =
        EstimateInput.of(
            CLEAR_POINT, clear.low().celsius(), clear.high().celsius(), Direction.RAISES);
    return Drivers.of(CLEAR_POINT, List.of(measured), values -> values.of(measured));
  }

  /**
   * Returns the lower bound with every input at the middle of its range, for planning: whether the
   * window is open is told by the ends.
   *
   * @return the central clear point and the margin
   */
  public TemperaturePoint centralLowerBound() {
    return TemperaturePoint.ofCelsius(clearPointDrivers().central()).plus(margin);
  }

  /**
   * Returns the lower bound, low and high, with the margin.
   *
   * @return the range in which the lower bound lies
   */
  public TemperatureRange lowerBound() {
    return new TemperatureRange(clear.low().plus(margin), clear.high().plus(margin));
  }

  /**
   * Returns the upper bound.
   *
   * @return the ceiling given
   */
  public TemperaturePoint upperBound() {
    return ceiling;
  }

  /**
   * Returns the margin above the clear point.
   *
   * @return the margin given
   */
  public TemperatureDifference margin() {
    return margin;
  }

  /**
   * Returns the room that the low end of the lower bound leaves.
   *
   * @return ceiling less low end; negative if that lies above the ceiling
   */
  public TemperatureDifference widestWidth() {
    return ceiling.minus(lowerBound().low());
  }

  /**
   * Returns the room that the high end of the lower bound leaves.
   *
   * @return ceiling less high end; negative if that lies above the ceiling
   */
  public TemperatureDifference narrowestWidth() {
    return ceiling.minus(lowerBound().high());
  }

  /**
   * Returns whether there is room between the bounds.
   *
   * @return the state
   */
  public State state() {
    if (leavesRoom(narrowestWidth()) && undissolved.isEmpty()) {
      return State.OPEN;
    }
    return leavesRoom(widestWidth()) ? State.MAY_BE_CLOSED : State.CLOSED;
  }

  private boolean leavesRoom(TemperatureDifference width) {
    return Limit.reaches(width.kelvin(), leastWidth.kelvin());
  }

  /**
   * Returns how the clear point was estimated.
   *
   * @return the estimate; empty if the clear point was measured
   */
  public Optional<IdealLiquidus> liquidus() {
    return Optional.ofNullable(liquidus);
  }

  /**
   * Returns the component that melts highest: the one to use less of if the window is closed.
   *
   * @return the component; empty if the clear point was measured
   */
  public Optional<Material> highestMelting() {
    return liquidus().map(IdealLiquidus::highestMelting);
  }

  /**
   * Returns the resins that dissolve only above the ceiling: a window for a medium that holds them
   * in solution already, not for melting them in.
   *
   * @return the resins; empty if each dissolves below it or nobody knows, and for a measured clear
   *     point
   */
  public List<Material> undissolved() {
    return undissolved;
  }

  /**
   * Returns what to change.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return some sentences; empty text if the window is open
   */
  public String advice(Locale locale) {
    return Stream.of(adviceOnMelting(locale), adviceOnResins(locale))
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private String adviceOnMelting(Locale locale) {
    if (leavesRoom(narrowestWidth())) {
      return "";
    }
    String component = highestMelting().map(m -> m.name(locale)).orElse("");
    String key =
        (leavesRoom(widestWidth()) ? "window.may-be-closed" : "window.closed")
            + (component.isEmpty() ? "-measured" : "");
    return Messages.beside(WorkingWindow.class).text(key, locale, Map.of("component", component));
  }

  private String adviceOnResins(Locale locale) {
    String names =
        undissolved.stream().map(m -> m.name(locale)).distinct().collect(Collectors.joining(", "));
    return names.isEmpty()
        ? ""
        : Messages.beside(WorkingWindow.class)
            .text("window.undissolved", locale, Map.of("component", names));
  }

  /**
   * Explains the window.
   *
   * @return bounds, width, assumptions and what to change
   */
  public Explanation explanation() {
    Explanation.Builder text =
        MeltingWorking.builder("working.window", Map.of())
            .stated(MeltingWorking.CEILING, ceiling.celsius())
            .stated(MeltingWorking.MARGIN, margin.kelvin())
            .stated(MeltingWorking.LEAST_WIDTH, leastWidth.kelvin());
    clearPoint(text);
    TemperatureRange lower = lowerBound();
    text.step(MeltingWorking.LOWER, Figure.LOW, lower.low().celsius())
        .step(MeltingWorking.LOWER, Figure.HIGH, lower.high().celsius())
        .step(MeltingWorking.ROOM, Figure.LOW, widestWidth().kelvin())
        .step(MeltingWorking.ROOM, Figure.HIGH, narrowestWidth().kelvin())
        .conclusion("working.window." + state(), Map.of());
    Bilingual advice = Bilingual.of(this::advice);
    return advice.english().isEmpty() ? text.build() : text.caution(advice).build();
  }

  private void clearPoint(Explanation.Builder text) {
    Figure low = Figure.of(MeltingWorking.CLEAR.of(Figure.LOW), clear.low().celsius());
    Figure high = Figure.of(MeltingWorking.CLEAR.of(Figure.HIGH), clear.high().celsius());
    liquidus()
        .ifPresentOrElse(
            l -> text.method(MeltingWorking.solubility(l, low, high)),
            () -> text.stated(low).stated(high).source(Source.USER));
    liquidus().ifPresent(l -> MeltingWorking.cautions(l, text));
  }

  @Override
  public String toString() {
    return state() + " " + lowerBound() + " to " + ceiling;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof WorkingWindow that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(
        clear, ceiling, margin, leastWidth, liquidus(), undissolved, Optional.ofNullable(mix));
  }
}
