// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import static org.meltwright.core.equipment.EquipmentProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.meltwright.units.QuantityKind;

/**
 * A mould with equal cups, such as a muffin tin.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Mould tin = Mould.of("muffin tin", VesselMaterial.STEEL, 12, millilitres(103.5));
 * tin.cupCubicMetres() * 1e6; // 103.5 ml
 * tin.cups() * tin.cupCubicMetres() * 1e6; // 1242 ml
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name what the studio calls it
 * @param material what it is made of
 * @param cups how many cups it has, at least 1
 * @param cupCubicMetres the volume of one cup up to the brim, in m³, above zero
 */
public record Mould(String name, VesselMaterial material, int cups, double cupCubicMetres) {

  /** Draws a problem if number or volume cannot be, or the name is blank. */
  public Mould {
    CHECK.named(name, "mould");
    checkedCups(cups);
    CHECK.between(cupCubicMetres, 1e-9, 1e3, "volume of a cup in m³");
  }

  /**
   * Returns a mould whose cups have a known volume.
   *
   * @param name what the studio calls it
   * @param material what it is made of
   * @param cups how many cups it has
   * @param cup the volume of one cup up to the brim
   * @return the mould
   * @throws org.meltwright.units.ProblemException if number or volume cannot be, or the name is
   *     blank
   */
  public static Mould of(String name, VesselMaterial material, int cups, Quantity<Volume> cup) {
    return new Mould(name, material, cups, checkedCup(cup));
  }

  /**
   * Returns a mould whose cups were measured or weighed with water.
   *
   * @param name what the studio calls it
   * @param material what it is made of
   * @param cups how many cups it has
   * @param cup the inside of one cup
   * @return the mould
   * @throws org.meltwright.units.ProblemException if number or volume cannot be, or the name is
   *     blank
   */
  public static Mould of(String name, VesselMaterial material, int cups, CupShape cup) {
    return new Mould(name, material, cups, cup.cubicMetres());
  }

  /**
   * Returns the volume of one cup up to the brim.
   *
   * @return the volume
   */
  public Quantity<Volume> cup() {
    return QuantityKind.VOLUME.ofSi(cupCubicMetres);
  }

  /**
   * Returns this mould as it is written down.
   *
   * @return the draft, which reads back as an equal mould
   */
  public MouldDraft toDraft() {
    return MouldDraft.of(this);
  }

  static int checkedCups(int cups) {
    return (int) CHECK.between(cups, 1, 1e6, "number of cups");
  }

  static double checkedCup(Quantity<Volume> cup) {
    return CHECK.between(cup, 1e-9, 1e3, "volume of a cup");
  }
}
