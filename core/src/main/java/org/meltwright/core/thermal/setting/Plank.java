// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.meltwright.core.thermal.setting.Substance.CHECK;

import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.ProblemException;

/**
 * Freezing time after Plank, for a slab, a long cylinder or a sphere, with the sensible heat of the
 * melt as an option.
 *
 * <p>Formula: t = (V/A)(1/h)(1 + h (a/2)/(2k)) [ρ c (Ti − Tm)/ΔT₁ + ρ L/ΔT₂], with ΔT₁ = (Ti +
 * Tm)/2 − Ta and ΔT₂ = Tm − Ta; without the first term Plank's own.
 *
 * <p>Symbols: V/A volume over cooled area [m]: a/2, a/4, a/6 for slab, cylinder, sphere; a full
 * thickness or diameter [m]; h heat transfer coefficient [W/(m² K)]; k conductivity of the solid
 * [W/(m K)]; ρ density [kg/m³]; c specific heat of the melt [J/(kg K)]; L heat of fusion [J/kg];
 * Ti, Tm, Ta melt, melting point, air [°C].
 *
 * <p>Valid for one melting point (the middle of a range is taken) and until the last melt is gone:
 * 4–7 % short of a one-dimensional solution for one melting point, and no more over a range of 14
 * K; 21 % short if 63 °C, near its upper end, is taken for a range of 50–64 °C. A slab cooled on
 * one side counts with twice its thickness.
 *
 * <p>Source: Encyclopaedia of Food Sciences and Nutrition, freezing; the split of the heat after
 * Pham (1986; remembered). For example, a 25 mm slab with ρ 900, L 180 kJ/kg, ΔT₂ 43 K, h 10, k
 * 0.25 takes 5887 s.
 *
 * <p>The same in code, with air at 20 °C and a melting point of 63 °C, and then poured at 75 °C:
 *
 * <pre>{@code
 * MeltSubstance wax =
 *     new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63));
 * Plank.seconds(wax, Plank.Shape.SLAB, 0.025, 10, 20); // 5887 s
 * Plank.seconds(wax, Plank.Shape.SLAB, 0.025, 10, 20, 75); // 6679 s
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class Plank {

  /** The shape of a body that is cooled all over. */
  public enum Shape {
    /** A slab cooled on both faces; a is its thickness. */
    SLAB(2),
    /** A long cylinder; a is its diameter. */
    CYLINDER(4),
    /** A sphere; a is its diameter. */
    SPHERE(6);

    private final double divisor;

    Shape(double divisor) {
      this.divisor = divisor;
    }

    /**
     * Returns volume over area.
     *
     * @param sizeMetres thickness or diameter, in m
     * @return V/A, in m
     * @throws ProblemException if the size cannot be
     */
    public double volumeOverArea(double sizeMetres) {
      return CHECK.between(sizeMetres, 1e-9, 1e4, "thickness or diameter in m") / divisor;
    }
  }

  private Plank() {}

  /**
   * Returns the freezing time from the melting point on.
   *
   * @param melt the figures of the melt
   * @param shape the shape
   * @param sizeMetres thickness or diameter, in m
   * @param heatTransferWattsPerSquareMetreKelvin h, in W/(m² K)
   * @param airCelsius the temperature of the air, in °C, below the melting point
   * @return the time, in s
   * @throws ProblemException if a figure cannot be
   */
  public static double seconds(
      MeltSubstance melt,
      Shape shape,
      double sizeMetres,
      double heatTransferWattsPerSquareMetreKelvin,
      double airCelsius) {
    return seconds(
        melt,
        shape,
        sizeMetres,
        heatTransferWattsPerSquareMetreKelvin,
        airCelsius,
        melt.meltingCelsius());
  }

  /**
   * Returns the freezing time from a melt that is poured hot.
   *
   * @param melt the figures of the melt
   * @param shape the shape
   * @param sizeMetres thickness or diameter, in m
   * @param heatTransferWattsPerSquareMetreKelvin h, in W/(m² K)
   * @param airCelsius the temperature of the air, in °C, below the melting point
   * @param pourCelsius the temperature of the melt, in °C, not below the melting point
   * @return the time, in s
   * @throws ProblemException if a figure cannot be
   */
  public static double seconds(
      MeltSubstance melt,
      Shape shape,
      double sizeMetres,
      double heatTransferWattsPerSquareMetreKelvin,
      double airCelsius,
      double pourCelsius) {
    double drive = drive(melt, airCelsius, pourCelsius);
    CHECK.between(sizeMetres, 1e-6, 1e3, "thickness or diameter in m");
    CHECK.between(
        heatTransferWattsPerSquareMetreKelvin, 1e-6, 1e6, "heat transfer coefficient in W/(m² K)");
    double resistance =
        1 / heatTransferWattsPerSquareMetreKelvin
            + sizeMetres / 4 / melt.solidConductivityWattsPerMetreKelvin();
    double superheat = pourCelsius - melt.meltingCelsius();
    double heat =
        melt.heat().liquidSpecificHeatJoulesPerKilogramKelvin()
                * superheat
                / (drive + superheat / 2)
            + melt.heat().heatOfFusionJoulesPerKilogram() / drive;
    return shape.volumeOverArea(sizeMetres)
        * resistance
        * melt.densityKilogramsPerCubicMetre()
        * heat;
  }

  /**
   * Returns the thickness of the crust on a slab that is cooled on one face, from the melting point
   * on.
   *
   * @param melt the figures of the melt
   * @param heatTransferWattsPerSquareMetreKelvin h, in W/(m² K)
   * @param airCelsius the temperature of the air, in °C, below the melting point
   * @param seconds the time, in s, not negative
   * @return the thickness, in m
   * @throws ProblemException if a figure cannot be
   */
  public static double crustMetres(
      MeltSubstance melt,
      double heatTransferWattsPerSquareMetreKelvin,
      double airCelsius,
      double seconds) {
    double drive = drive(melt, airCelsius, melt.meltingCelsius());
    CHECK.between(
        heatTransferWattsPerSquareMetreKelvin, 1e-6, 1e6, "heat transfer coefficient in W/(m² K)");
    CHECK.between(seconds, 0, 1e15, "time in s");
    double film =
        melt.solidConductivityWattsPerMetreKelvin() / heatTransferWattsPerSquareMetreKelvin;
    double grown =
        2
            * melt.solidConductivityWattsPerMetreKelvin()
            * drive
            * seconds
            / (melt.densityKilogramsPerCubicMetre() * melt.heat().heatOfFusionJoulesPerKilogram());
    return grown / (film + Math.sqrt(film * film + grown));
  }

  private static double drive(MeltSubstance melt, double air, double pour) {
    CHECK.between(air, -273.15, 1e5, "temperature of the air in °C");
    CHECK.between(pour, -273.15, 1e5, "temperature of the melt in °C");
    double melting = melt.meltingCelsius();
    if (!(air < melting && melting <= pour)) {
      throw ThermalProblem.outOfOrder("air < melting point ≤ melt", air, melting, pour);
    }
    return melting - air;
  }
}
