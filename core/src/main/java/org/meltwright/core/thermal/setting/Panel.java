// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.meltwright.core.thermal.setting.Substance.CHECK;

import java.util.Optional;
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
 * panel.back().isPresent(); // false
 * Panel onGrid = panel.withBack(10, ofCelsius(20));
 * onGrid.back().get().transferWattsPerSquareMetreKelvin(); // 10 W/(m² K)
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param body what it is made of
 * @param thicknessMetres its thickness with the ground, in m, from 0.1 mm
 * @param ground what is laid on it, within the thickness; empty if the film touches the body
 * @param temperature its temperature throughout when the film is laid
 * @param back what it gives heat to below; empty where it lies insulated
 * @param spread how far its conductivity may lie off either way, as a share
 */
public record Panel(
    Substance body,
    double thicknessMetres,
    Optional<Ground> ground,
    TemperaturePoint temperature,
    Optional<Back> back,
    double spread) {

  /**
   * A ground on a panel.
   *
   * @param substance what it is made of
   * @param thicknessMetres its thickness, in m
   */
  public record Ground(Substance substance, double thicknessMetres) {

    public Ground {
      CHECK.between(thicknessMetres, 0, 10, "thickness of the ground in m");
    }
  }

  /**
   * What is below a panel: air, or a plate.
   *
   * @param transferWattsPerSquareMetreKelvin heat transfer to it, in W/(m² K)
   * @param temperature its temperature
   */
  public record Back(double transferWattsPerSquareMetreKelvin, TemperaturePoint temperature) {

    public Back {
      CHECK.between(transferWattsPerSquareMetreKelvin, 0, 1e6, "heat transfer below in W/(m² K)");
      CHECK.between(temperature.celsius(), -100, 1000, "temperature below in °C");
    }
  }

  public Panel {
    CHECK.between(temperature.celsius(), -100, 1000, "temperature of the panel in °C");
    CHECK.between(thicknessMetres, 1e-4, 10, "thickness of the panel in m");
    double most = thicknessMetres;
    ground.ifPresent(
        g -> CHECK.between(g.thicknessMetres(), 0, most, "thickness of the ground in m"));
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
    return new Panel(body, thicknessMetres, Optional.empty(), temperature, Optional.empty(), 0);
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
    Optional<Ground> laid = Optional.of(new Ground(substance, metres));
    return new Panel(body, thicknessMetres, laid, temperature, back, spread);
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
    Optional<Back> open = Optional.of(new Back(transferWattsPerSquareMetreKelvin, below));
    return new Panel(body, thicknessMetres, ground, temperature, open, spread);
  }

  /**
   * Returns a copy at another temperature.
   *
   * @param point its temperature throughout
   * @return the new panel
   */
  public Panel withTemperature(TemperaturePoint point) {
    return new Panel(body, thicknessMetres, ground, point, back, spread);
  }

  /**
   * Returns a copy with another spread of its conductivity.
   *
   * @param share how far it may lie off either way, from 0 to 0.9
   * @return the new panel
   * @throws org.meltwright.units.ProblemException if the share cannot be
   */
  public Panel withSpread(double share) {
    return new Panel(body, thicknessMetres, ground, temperature, back, share);
  }

  /**
   * Returns what the film touches: the ground if there is one, else the body.
   *
   * @return its figures
   */
  public Substance surface() {
    return ground.filter(g -> g.thicknessMetres() > 0).map(Ground::substance).orElse(body);
  }

  /** Returns the panel with its conductivities multiplied. */
  Panel conducting(double factor) {
    Optional<Ground> laid =
        ground.map(g -> new Ground(times(g.substance(), factor), g.thicknessMetres()));
    return new Panel(times(body, factor), thicknessMetres, laid, temperature, back, spread);
  }

  private static Substance times(Substance substance, double factor) {
    return new Substance(
        substance.conductivityWattsPerMetreKelvin() * factor,
        substance.densityKilogramsPerCubicMetre(),
        substance.specificHeatJoulesPerKilogramKelvin());
  }
}
