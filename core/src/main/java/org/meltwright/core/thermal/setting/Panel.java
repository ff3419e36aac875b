// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.meltwright.core.thermal.ThermalProblem.CHECK;

import org.meltwright.units.TemperaturePoint;

/**
 * A panel that a film of melt is laid on: its body, a ground on it, its temperature, and what is
 * below.
 *
 * <p>A wooden panel of 10 mm with 1 mm of plaster ground on it, warmed to 40 °C; the film touches
 * the ground. It lies insulated until it is put on a grid:
 *
 * <pre>{@code
 * Panel panel =
 *     Panel.of(PanelKind.WOOD, 0.010, ofCelsius(40))
 *         .withGround(PanelKind.PLASTER_GROUND.substance(), 0.001);
 * panel.surface().conductivityWattsPerMetreKelvin(); // 0.5 W/(m K)
 * panel.backTransferWattsPerSquareMetreKelvin(); // 0 W/(m² K)
 * panel.withBack(10, ofCelsius(20)).backTransferWattsPerSquareMetreKelvin(); // 10 W/(m² K)
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param body what it is made of
 * @param thicknessMetres its thickness with the ground, in m, from 0.1 mm
 * @param ground what the ground is made of; the body itself if there is none
 * @param groundMetres the thickness of the ground, in m; 0 if there is none
 * @param temperature its temperature throughout when the film is laid
 * @param backTransferWattsPerSquareMetreKelvin heat transfer below, in W/(m² K); 0 where it lies
 *     insulated
 * @param backCelsius the temperature below, in °C
 * @param spread how far its conductivity may lie off either way, as a share
 */
public record Panel(
    Substance body,
    double thicknessMetres,
    Substance ground,
    double groundMetres,
    TemperaturePoint temperature,
    double backTransferWattsPerSquareMetreKelvin,
    double backCelsius,
    double spread) {

  public Panel {
    CHECK.between(temperature.celsius(), -100, 1000, "temperature of the panel in °C");
    CHECK.between(thicknessMetres, 1e-4, 10, "thickness of the panel in m");
    CHECK.between(groundMetres, 0, thicknessMetres, "thickness of the ground in m");
    CHECK.between(backTransferWattsPerSquareMetreKelvin, 0, 1e6, "heat transfer below in W/(m² K)");
    CHECK.between(backCelsius, -100, 1000, "temperature below in °C");
    CHECK.between(spread, 0, 0.9, "spread of the conductivity");
  }

  /**
   * Returns a panel of a kind, lying insulated.
   *
   * @param kind the kind
   * @param thicknessMetres its thickness, in m
   * @param temperature its temperature throughout
   * @return the panel
   * @throws org.meltwright.units.ProblemException if the thickness cannot be
   */
  public static Panel of(PanelKind kind, double thicknessMetres, TemperaturePoint temperature) {
    return of(kind.substance(), thicknessMetres, temperature).withSpread(kind.spread());
  }

  /**
   * Returns a panel of known figures, lying insulated, with no spread.
   *
   * @param body what it is made of
   * @param thicknessMetres its thickness, in m
   * @param temperature its temperature throughout
   * @return the panel
   * @throws org.meltwright.units.ProblemException if the thickness cannot be
   */
  public static Panel of(Substance body, double thicknessMetres, TemperaturePoint temperature) {
    return new Panel(body, thicknessMetres, body, 0, temperature, 0, 20, 0);
  }

  /**
   * Returns a copy with a ground laid on, within the thickness.
   *
   * @param substance what the ground is made of
   * @param metres its thickness, in m
   * @return the new panel
   * @throws org.meltwright.units.ProblemException if the thickness cannot be
   */
  public Panel withGround(Substance substance, double metres) {
    return new Panel(
        body,
        thicknessMetres,
        substance,
        metres,
        temperature,
        backTransferWattsPerSquareMetreKelvin,
        backCelsius,
        spread);
  }

  /**
   * Returns a copy that is open to air, or to a plate, below.
   *
   * @param transferWattsPerSquareMetreKelvin heat transfer below, in W/(m² K)
   * @param below the temperature below
   * @return the new panel
   * @throws org.meltwright.units.ProblemException if the transfer cannot be
   */
  public Panel withBack(double transferWattsPerSquareMetreKelvin, TemperaturePoint below) {
    return new Panel(
        body,
        thicknessMetres,
        ground,
        groundMetres,
        temperature,
        transferWattsPerSquareMetreKelvin,
        below.celsius(),
        spread);
  }

  /**
   * Returns a copy at another temperature.
   *
   * @param point its temperature throughout
   * @return the new panel
   */
  public Panel withTemperature(TemperaturePoint point) {
    return new Panel(
        body,
        thicknessMetres,
        ground,
        groundMetres,
        point,
        backTransferWattsPerSquareMetreKelvin,
        backCelsius,
        spread);
  }

  /**
   * Returns a copy with another spread of its conductivity.
   *
   * @param share how far it may lie off either way, from 0 to 0.9
   * @return the new panel
   * @throws org.meltwright.units.ProblemException if the share cannot be
   */
  public Panel withSpread(double share) {
    return new Panel(
        body,
        thicknessMetres,
        ground,
        groundMetres,
        temperature,
        backTransferWattsPerSquareMetreKelvin,
        backCelsius,
        share);
  }

  /**
   * Returns what the film touches: the ground if there is one, else the body.
   *
   * @return its figures
   */
  public Substance surface() {
    return groundMetres > 0 ? ground : body;
  }

  /** Returns the panel with its conductivities multiplied. */
  Panel conducting(double factor) {
    return new Panel(
        times(body, factor),
        thicknessMetres,
        times(ground, factor),
        groundMetres,
        temperature,
        backTransferWattsPerSquareMetreKelvin,
        backCelsius,
        spread);
  }

  private static Substance times(Substance substance, double factor) {
    return new Substance(
        substance.conductivityWattsPerMetreKelvin() * factor,
        substance.densityKilogramsPerCubicMetre(),
        substance.specificHeatJoulesPerKilogramKelvin());
  }
}
