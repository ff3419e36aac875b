// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

/**
 * Kinds of panels with figures to calculate with.
 *
 * <p>Glass and metal are close to CIBSE Guide A, table 3.36 (glass 1.05/2500/840, aluminium
 * 230/2700/880); the others are assumed. Give a {@link Substance} of your own where you know
 * better.
 *
 * <p>Which surface chills a film least? The one of the lowest effusivity:
 *
 * <pre>{@code
 * PanelKind.WOOD.substance().effusivity(); // 282 W √s/(m² K)
 * PanelKind.GLASS.substance().effusivity(); // 1449 W √s/(m² K)
 * PanelKind.METAL.substance().effusivity(); // 24047 W √s/(m² K)
 * }</pre>
 */
public enum PanelKind {
  /** Plywood or softwood: chills least. */
  WOOD(0.12, 545, 1215, 0.25),
  /** Hardboard or another dense fibreboard. */
  BOARD(0.15, 1000, 1300, 0.25),
  /** A plaster-like ground of chalk or gypsum. */
  PLASTER_GROUND(0.5, 1200, 1090, 0.3),
  /** Glass; stone and tile are much the same. */
  GLASS(1.0, 2500, 840, 0.1),
  /** Aluminium sheet. */
  METAL(237, 2702, 903, 0.1);

  private final double conductivity;
  private final double density;
  private final double specificHeat;
  private final double spread;

  PanelKind(double conductivity, double density, double specificHeat, double spread) {
    this.conductivity = conductivity;
    this.density = density;
    this.specificHeat = specificHeat;
    this.spread = spread;
  }

  /**
   * Returns the figures.
   *
   * @return conductivity, density and specific heat
   */
  public Substance substance() {
    return new Substance(conductivity, density, specificHeat);
  }

  /**
   * Returns how far the conductivity of such panels is taken to scatter either way.
   *
   * @return the share, where 0.2 is 20 %
   */
  public double spread() {
    return spread;
  }
}
