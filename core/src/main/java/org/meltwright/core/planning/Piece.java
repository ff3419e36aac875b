// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.meltwright.core.planning.PlanningProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * Pieces of one size that each person of a class makes.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Piece panels = Piece.of(6, millimetres(200), millimetres(300));
 * panels.squareMetres(); // 0.0600 m²
 * panels.totalSquareMetres(); // 0.3600 m²
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param count how many of them, from 1 to 1e6
 * @param squareMetres the area of one, in m², from 1e-9 to 1e6
 */
public record Piece(int count, double squareMetres) {

  /** Draws a problem if there is none or it has no area. */
  public Piece {
    checkedCount(count);
    CHECK.between(squareMetres, 1e-9, 1e6, "area of a piece in m²");
  }

  /**
   * Returns pieces of an area.
   *
   * @param count how many of them, at least one
   * @param area the area of one
   * @return the pieces
   * @throws ProblemException if there is none or it has no area
   */
  public static Piece of(int count, Quantity<Area> area) {
    return new Piece(count, QuantityKind.AREA.toSi(checkedArea(area)));
  }

  /**
   * Returns rectangular pieces.
   *
   * @param count how many of them, at least one
   * @param width the width of one
   * @param height the height of one
   * @return the pieces
   * @throws ProblemException if there is none or it has no area
   */
  public static Piece of(int count, Quantity<Length> width, Quantity<Length> height) {
    return new Piece(
        count,
        CHECK.between(width, 1e-6, 1e6, "width of a piece")
            * CHECK.between(height, 1e-6, 1e6, "height of a piece"));
  }

  static int checkedCount(int count) {
    return (int) CHECK.between(count, 1, 1e6, "number of pieces");
  }

  static Quantity<Area> checkedArea(Quantity<Area> area) {
    CHECK.between(area, 1e-9, 1e6, "area of a piece");
    return area;
  }

  /**
   * Returns the area of all of them.
   *
   * @return count × area, in m²
   */
  public double totalSquareMetres() {
    return count * squareMetres;
  }
}
