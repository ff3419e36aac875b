// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.List;
import java.util.Optional;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.source.Sourced;

/**
 * One's own figure beside the one in print.
 *
 * <p>They agree if they differ by no more than the expanded uncertainty (k = 2) of one's own: if
 * the range ± U meets the range in print. A density at another temperature or a drop point beside a
 * peak are not compared. Where they differ, or cannot be compared, a rule takes the worse of the
 * two: {@link #forRules} spans both, as the room in a vessel does.
 *
 * <p>A melt of 861 kg/m³ where 820 to 850 are in print, and one of 853:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow").withLot("7");
 * Measurement melt =
 *     Measurement.of(
 *         "full cup of melt",
 *         "kg/m³",
 *         List.of(new Measurement.Input("density", "kg/m³", Reading.of(861, 2))),
 *         x -> x[0]);
 * Sourced<PropertyRange<Density>> own =
 *     melt.at(ofCelsius(80)).figure(PropertyKey.LIQUID_DENSITY, "Ada", LocalDate.of(2026, 3, 14));
 * Comparison<PropertyRange<Density>> differs =
 *     Comparison.of(wax.withFirst(PropertyKey.LIQUID_DENSITY, own), PropertyKey.LIQUID_DENSITY)
 *         .orElseThrow();
 * differs.agreement(); // DIFFERS
 * PropertyKey.LIQUID_DENSITY.format(differs.forRules()); // 0.82 to 0.865 g/ml at 80 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param <V> the type of the value
 * @param key the property
 * @param own one's own figure
 * @param printed the first figure behind it that is not one's own
 * @param agreement whether they agree
 */
public record Comparison<V>(
    PropertyKey<V> key, Sourced<V> own, Sourced<V> printed, Agreement agreement) {

  /** Whether one's own figure agrees with the one in print. */
  public enum Agreement {
    /** They differ by no more than the expanded uncertainty. */
    AGREES,
    /** They differ by more: weigh again, then ask what lot this is. */
    DIFFERS,
    /** They hold at different temperatures, or measure different things. */
    NOT_COMPARABLE
  }

  /**
   * Compares the figures of a material.
   *
   * @param <V> the type of the value
   * @param material the material, with a figure of one's own in front
   * @param key the property
   * @return the comparison; empty if the first figure is not one's own or none is in print
   */
  public static <V> Optional<Comparison<V>> of(Material material, PropertyKey<V> key) {
    List<Sourced<V>> figures = material.figures(key);
    Optional<Sourced<V>> own = figures.stream().limit(1).filter(Comparison::isOwn).findFirst();
    Optional<Sourced<V>> printed = figures.stream().filter(f -> !isOwn(f)).findFirst();
    return own.flatMap(
        mine -> printed.map(p -> new Comparison<>(key, mine, p, agreement(mine, p))));
  }

  private static boolean isOwn(Sourced<?> figure) {
    return figure.source().kind() == SourceKind.OWN_MEASUREMENT;
  }

  private static Agreement agreement(Sourced<?> own, Sourced<?> printed) {
    Optional<double[]> mine = ends(own.value());
    Optional<double[]> theirs = ends(printed.value());
    boolean comparable =
        mine.isPresent() && theirs.isPresent() && isComparable(own.value(), printed.value());
    if (!comparable) {
      return Agreement.NOT_COMPARABLE;
    }
    double[] a = mine.get();
    double[] b = theirs.get();
    return a[0] <= b[1] && b[0] <= a[1] ? Agreement.AGREES : Agreement.DIFFERS;
  }

  private static Optional<double[]> ends(Object value) {
    if (value instanceof PropertyRange<?> range) {
      return Optional.of(new double[] {range.range().lowSi(), range.range().highSi()});
    }
    if (value instanceof DefinedTemperature t) {
      double high = t.isOpenAbove() ? Double.POSITIVE_INFINITY : t.range().high().kelvin();
      return Optional.of(new double[] {t.range().low().kelvin(), high});
    }
    if (value instanceof MassFractionRange share) {
      return Optional.of(new double[] {share.low().value(), share.high().value()});
    }
    return value instanceof NumberRange n
        ? Optional.of(new double[] {n.low(), n.high()})
        : Optional.empty();
  }

  /** Within 5 K of each other, or of which one does not say. */
  private static boolean isComparable(Object own, Object printed) {
    if (own instanceof PropertyRange<?> mine && printed instanceof PropertyRange<?> theirs) {
      return mine.at().isEmpty()
          || theirs.at().isEmpty()
          || Math.abs(mine.at().get().middle().kelvin() - theirs.at().get().middle().kelvin()) <= 5;
    }
    return !(own instanceof DefinedTemperature mine && printed instanceof DefinedTemperature theirs)
        || mine.definition() == theirs.definition()
        || theirs.definition() == TemperatureDefinition.NOT_STATED;
  }

  /**
   * Returns the range for a rule: one's own where the two agree, else one that spans both, so that
   * its safe end is that of the worse.
   *
   * @return the range
   */
  public V forRules() {
    return agreement == Agreement.AGREES ? own.value() : key.span(own.value(), printed.value());
  }

  /**
   * Returns both on one line each, and whether they agree.
   *
   * @return three lines
   */
  @Override
  public String toString() {
    String words =
        switch (agreement) {
          case AGREES -> "they agree";
          case DIFFERS ->
              "they differ by more than the expanded uncertainty; a rule takes the worse";
          case NOT_COMPARABLE -> "not comparable; a rule takes the worse";
        };
    return String.join("\n", line(own), line(printed), words);
  }

  private String line(Sourced<V> figure) {
    return key.format(figure.value())
        + " ("
        + figure.knowledge().inWords().english()
        + "; "
        + figure.source().citation()
        + ")";
  }
}
