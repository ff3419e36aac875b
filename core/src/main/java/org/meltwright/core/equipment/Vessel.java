// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import static org.meltwright.core.equipment.EquipmentProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.meltwright.units.QuantityKind;

/**
 * A vessel that a melt is kept in: a pot, a tin, a well of a heated palette.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Vessel pot =
 *     Vessel.of(
 *         "enamel pot", VesselMaterial.ENAMELLED_STEEL, Lining.ENAMEL, Vessel.Bottom.FLAT,
 *         litres(1.5), grams(600));
 * pot.capacityCubicMetres(); // 0.0015 m³
 * pot.fillLevel(0.001); // 0.67
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name what the studio calls it
 * @param material what it is made of
 * @param lining what its inside is coated with
 * @param bottom the shape of its bottom
 * @param capacityCubicMetres the volume up to the brim, in m³, above zero
 * @param massKilograms its own mass, in kg, not negative; it is heated too
 */
public record Vessel(
    String name,
    VesselMaterial material,
    Lining lining,
    Bottom bottom,
    double capacityCubicMetres,
    double massKilograms) {

  /** The shape of a vessel's bottom. */
  public enum Bottom {
    /** Flat: full contact with a plate. */
    FLAT,
    /** Round or uneven: contact in places only. */
    ROUND,
    /** Not stated. */
    UNKNOWN
  }

  /** Draws a problem if volume or mass cannot be, or the name is blank. */
  public Vessel {
    CHECK.named(name, "vessel");
    CHECK.between(capacityCubicMetres, 1e-9, 1e3, "capacity in m³");
    CHECK.between(massKilograms, 0, 1e6, "mass of the vessel in kg");
  }

  /**
   * Returns a vessel.
   *
   * @param name what the studio calls it
   * @param material what it is made of
   * @param lining what its inside is coated with
   * @param bottom the shape of its bottom
   * @param capacity the volume up to the brim
   * @param mass its own mass
   * @return the vessel
   * @throws org.meltwright.units.ProblemException if volume or mass cannot be, or the name is blank
   */
  public static Vessel of(
      String name,
      VesselMaterial material,
      Lining lining,
      Bottom bottom,
      Quantity<Volume> capacity,
      Quantity<Mass> mass) {
    return new Vessel(name, material, lining, bottom, checkedCapacity(capacity), checkedMass(mass));
  }

  /**
   * Returns the volume up to the brim.
   *
   * @return the volume
   */
  public Quantity<Volume> capacity() {
    return QuantityKind.VOLUME.ofSi(capacityCubicMetres);
  }

  /**
   * Returns how full the vessel is with a volume in it.
   *
   * @param volume the volume in it, not negative
   * @return the fill level, where 1 is full to the brim; above 1 it overflows
   * @throws org.meltwright.units.ProblemException if the volume is negative or not finite
   */
  public double fillLevel(Quantity<Volume> volume) {
    return CHECK.between(volume, 0, 1e6, "volume in the vessel") / capacityCubicMetres;
  }

  /**
   * Returns how full the vessel is with a volume in it.
   *
   * @param volumeCubicMetres the volume in it, in m³, not negative
   * @return the fill level, where 1 is full to the brim; above 1 it overflows
   * @throws org.meltwright.units.ProblemException if the volume is negative or not finite
   */
  public double fillLevel(double volumeCubicMetres) {
    return CHECK.between(volumeCubicMetres, 0, 1e6, "volume in the vessel in m³")
        / capacityCubicMetres;
  }

  /**
   * Returns this vessel as it is written down.
   *
   * @return the draft, which reads back as an equal vessel
   */
  public VesselDraft toDraft() {
    return VesselDraft.of(this);
  }

  static double checkedCapacity(Quantity<Volume> capacity) {
    return CHECK.between(capacity, 1e-9, 1e3, "capacity");
  }

  static double checkedMass(Quantity<Mass> mass) {
    return CHECK.between(mass, 0, 1e6, "mass of the vessel");
  }
}
