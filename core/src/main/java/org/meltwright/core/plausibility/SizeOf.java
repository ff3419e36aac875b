// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.plausibility;

import static org.meltwright.units.MetricUnits.GRAM;
import static org.meltwright.units.MetricUnits.KILOGRAM;
import static org.meltwright.units.MetricUnits.KILOWATT;
import static org.meltwright.units.MetricUnits.LITRE;
import static org.meltwright.units.MetricUnits.METRE;
import static org.meltwright.units.MetricUnits.MICROMETRE;
import static org.meltwright.units.MetricUnits.MILLIGRAM;
import static org.meltwright.units.MetricUnits.MILLILITRE;
import static org.meltwright.units.MetricUnits.MILLIMETRE;
import static org.meltwright.units.MetricUnits.WATT;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Volume;
import org.meltwright.units.Bilingual;
import org.meltwright.units.QuantityKind;

/**
 * What a size is the size of.
 *
 * <p>For example:
 *
 * <pre>{@code
 * SizeOf.FILM.id(); // film
 * SizeOf.FILM.kind(); // length
 * }</pre>
 *
 * <p>Compared by identity: there is one of each. Immutable and thread-safe.
 *
 * @param <Q> the kind of quantity
 */
public final class SizeOf<Q extends Quantity<Q>> {

  /** One layer on a panel. */
  public static final SizeOf<Length> FILM = ofLength("film");

  /** A side of a panel. */
  public static final SizeOf<Length> PANEL_SIDE = ofLength("panel-side");

  /** A batch, as weighed out. */
  public static final SizeOf<Mass> BATCH =
      new SizeOf<>("batch", QuantityKind.MASS, List.of(KILOGRAM, GRAM, MILLIGRAM));

  /** What a pot holds. */
  public static final SizeOf<Volume> VESSEL = ofVolume("vessel");

  /** What one cup of a mould holds. */
  public static final SizeOf<Volume> CUP = ofVolume("cup");

  /** What a heat source draws. */
  public static final SizeOf<Power> POWER =
      new SizeOf<>("power", QuantityKind.POWER, List.of(KILOWATT, WATT));

  private static final MathContext THREE_DIGITS = new MathContext(3);

  private static final List<SizeOf<?>> ALL = List.of(FILM, PANEL_SIDE, BATCH, VESSEL, CUP, POWER);

  private final String id;
  private final QuantityKind<Q> kind;
  private final List<Unit<Q>> units;

  private static SizeOf<Length> ofLength(String id) {
    return new SizeOf<>(id, QuantityKind.LENGTH, List.of(METRE, MILLIMETRE, MICROMETRE));
  }

  private static SizeOf<Volume> ofVolume(String id) {
    return new SizeOf<>(id, QuantityKind.VOLUME, List.of(LITRE, MILLILITRE));
  }

  /** The units that a maker would say, largest first. */
  private SizeOf(String id, QuantityKind<Q> kind, List<Unit<Q>> units) {
    this.id = id;
    this.kind = kind;
    this.units = units;
  }

  static List<SizeOf<?>> all() {
    return ALL;
  }

  /** A size with three digits, in the largest unit of which it holds at least one. */
  Bilingual shown(double si) {
    Unit<Q> unit =
        units.stream()
            .filter(each -> kind.fromSi(si, each) >= 1)
            .findFirst()
            .orElse(units.get(units.size() - 1));
    return Bilingual.of(kind, kind.toSi(rounded(kind.fromSi(si, unit)), unit), unit);
  }

  static double rounded(double number) {
    return new BigDecimal(number).round(THREE_DIGITS).doubleValue();
  }

  /**
   * Returns the stable id, as the data name it.
   *
   * @return for example "film"
   */
  public String id() {
    return id;
  }

  /**
   * Returns the kind of quantity.
   *
   * @return the kind
   */
  public QuantityKind<Q> kind() {
    return kind;
  }

  /**
   * Returns the id.
   *
   * @return the id
   */
  @Override
  public String toString() {
    return id;
  }
}
