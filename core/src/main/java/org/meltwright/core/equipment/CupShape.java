// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import static org.meltwright.core.equipment.EquipmentProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * The inside of one cup of a mould, measured with a rule or weighed full of water.
 *
 * <p>Sold sizes of cups differ by half; weighing one cup full of water settles it.
 *
 * <p>For example, a cup measured with a rule, half full, and another weighed full of water:
 *
 * <pre>{@code
 * CupShape cup = CupShape.frustum(millimetres(70), millimetres(50), millimetres(30));
 * cup.cubicMetres() * 1e6; // 85.6 ml
 * cup.cubicMetresTo(0.015) * 1e6; // 35.7 ml
 * CupShape other = CupShape.weighedWithWater(grams(103.3));
 * other.cubicMetres() * 1e6; // 103.5 ml
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface CupShape {

  /** The density of water at 20 °C in kg/m³; a remembered handbook value. */
  double WATER_AT_20_CELSIUS = 998.2;

  /**
   * Returns the volume up to the brim.
   *
   * @return the volume in m³
   */
  double cubicMetres();

  /**
   * Returns the volume up to a height above the bottom.
   *
   * @param metres the height in m, from 0 to the depth of the cup
   * @return the volume in m³
   * @throws org.meltwright.units.ProblemException if the height lies outside, or the shape is not
   *     known
   */
  double cubicMetresTo(double metres);

  /**
   * Returns the volume up to the brim.
   *
   * @return the volume
   */
  default Quantity<Volume> volume() {
    return QuantityKind.VOLUME.ofSi(cubicMetres());
  }

  /**
   * Returns a cup that is wider at the top than at the bottom, or the other way round.
   *
   * <p>V = π h (R² + R r + r²) / 3. For example, 70 and 50 mm across and 30 mm deep is 85.6 ml.
   *
   * @param topDiameter the inner diameter at the brim, up to 2 m; 0 for a cone
   * @param bottomDiameter the inner diameter at the bottom, up to 2 m; 0 for a cone
   * @param depth the inner depth, from 10 µm to 2 m
   * @return the shape
   * @throws org.meltwright.units.ProblemException if a length cannot be
   */
  static CupShape frustum(
      Quantity<Length> topDiameter, Quantity<Length> bottomDiameter, Quantity<Length> depth) {
    return new Frustum(
        CHECK.between(topDiameter, 0, 2, "diameter at the brim") / 2,
        CHECK.between(bottomDiameter, 0, 2, "diameter at the bottom") / 2,
        CHECK.between(depth, 1e-5, 2, "depth"));
  }

  /**
   * Returns a round cup with straight walls.
   *
   * @param diameter the inner diameter, from 10 µm to 2 m
   * @param depth the inner depth, from 10 µm to 2 m
   * @return the shape
   * @throws org.meltwright.units.ProblemException if a length cannot be
   */
  static CupShape cylinder(Quantity<Length> diameter, Quantity<Length> depth) {
    double radius = CHECK.between(diameter, 1e-5, 2, "diameter") / 2;
    return new Frustum(radius, radius, CHECK.between(depth, 1e-5, 2, "depth"));
  }

  /**
   * Returns a rectangular cup with straight walls.
   *
   * @param length the inner length, from 10 µm to 2 m
   * @param width the inner width, from 10 µm to 2 m
   * @param depth the inner depth, from 10 µm to 2 m
   * @return the shape
   * @throws org.meltwright.units.ProblemException if a length cannot be
   */
  static CupShape block(Quantity<Length> length, Quantity<Length> width, Quantity<Length> depth) {
    return new Block(
        CHECK.between(length, 1e-5, 2, "length"),
        CHECK.between(width, 1e-5, 2, "width"),
        CHECK.between(depth, 1e-5, 2, "depth"));
  }

  /**
   * Returns a cup that was weighed full of water at room temperature.
   *
   * @param water the mass of the water that fills it to the brim, above zero
   * @return the shape
   * @throws org.meltwright.units.ProblemException if the mass cannot be
   */
  static CupShape weighedWithWater(Quantity<Mass> water) {
    return weighedWith(water, QuantityKind.DENSITY.ofSi(WATER_AT_20_CELSIUS));
  }

  /**
   * Returns a cup that was weighed full of a liquid.
   *
   * @param liquid the mass of the liquid that fills it to the brim, above zero
   * @param density the density of the liquid, above zero
   * @return the shape
   * @throws org.meltwright.units.ProblemException if the mass or the density cannot be
   */
  static CupShape weighedWith(Quantity<Mass> liquid, Quantity<Density> density) {
    double kilograms = CHECK.between(liquid, 1e-9, 1e6, "mass of the liquid");
    double kilogramsPerCubicMetre = CHECK.between(density, 1, 1e5, "density of the liquid");
    return new Weighed(kilograms / kilogramsPerCubicMetre);
  }

  /**
   * A round cup whose radius changes evenly from bottom to brim.
   *
   * @param topRadiusMetres the inner radius at the brim, in m, from 0 to 1
   * @param bottomRadiusMetres the inner radius at the bottom, in m, from 0 to 1
   * @param depthMetres the inner depth in m
   */
  record Frustum(double topRadiusMetres, double bottomRadiusMetres, double depthMetres)
      implements CupShape {

    public Frustum {
      CHECK.between(topRadiusMetres, 0, 1, "radius at the brim in m");
      CHECK.between(bottomRadiusMetres, 0, 1, "radius at the bottom in m");
      CHECK.between(topRadiusMetres + bottomRadiusMetres, 1e-5, 2, "sum of the radii in m");
      CHECK.between(depthMetres, 1e-5, 2, "depth in m");
    }

    @Override
    public double cubicMetres() {
      return volume(topRadiusMetres, bottomRadiusMetres, depthMetres);
    }

    @Override
    public double cubicMetresTo(double metres) {
      CHECK.between(metres, 0, depthMetres, "fill height in m");
      double radius =
          bottomRadiusMetres + (topRadiusMetres - bottomRadiusMetres) * metres / depthMetres;
      return volume(radius, bottomRadiusMetres, metres);
    }

    private static double volume(double top, double bottom, double height) {
      return Math.PI * height * (top * top + top * bottom + bottom * bottom) / 3;
    }
  }

  /**
   * A rectangular cup with straight walls.
   *
   * @param lengthMetres the inner length in m
   * @param widthMetres the inner width in m
   * @param depthMetres the inner depth in m
   */
  record Block(double lengthMetres, double widthMetres, double depthMetres) implements CupShape {

    public Block {
      CHECK.between(lengthMetres, 1e-5, 2, "length in m");
      CHECK.between(widthMetres, 1e-5, 2, "width in m");
      CHECK.between(depthMetres, 1e-5, 2, "depth in m");
    }

    @Override
    public double cubicMetres() {
      return lengthMetres * widthMetres * depthMetres;
    }

    @Override
    public double cubicMetresTo(double metres) {
      return lengthMetres * widthMetres * CHECK.between(metres, 0, depthMetres, "fill height in m");
    }
  }

  /**
   * A cup of which only the volume is known.
   *
   * @param cubicMetres the volume up to the brim in m³, above zero, at most 10
   */
  record Weighed(double cubicMetres) implements CupShape {

    /** Draws a problem if it is not above zero. */
    public Weighed {
      CHECK.between(cubicMetres, 1e-15, 10, "volume of a cup in m³");
    }

    @Override
    public double cubicMetresTo(double metres) {
      if (metres == 0) {
        return 0;
      }
      throw new ProblemException(
          Problem.of(
              EquipmentProblem.CUP_SHAPE_UNKNOWN,
              Bilingual.of(CHECK.finite(metres, "fill height in m")).plus(" m")));
    }
  }
}
