// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.meltwright.core.planning.PlanningProblem.CHECK;

import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MassFraction;

/**
 * The part of all paint that has one colour.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Material ochre = MaterialCatalogue.standard().require("yellow-ochre");
 * Composition paint = Composition.ofParts(List.of(wax, ochre), 3, 1);
 * ColourShare colour = new ColourShare("ochre", MassFraction.ofPercent(25), paint);
 * // 10 m² with 100 µm of film at 1000 kg/m³ are 1 kg, a quarter of it ochre paint
 * Coverage film = Coverage.of(millimetres(0.1), 1, gramsPerMillilitre(1));
 * ClassPlan plan =
 *     ClassPlan.of(10, List.of(new Piece(1, 1.0)), film).withColours(List.of(colour));
 * plan.kilograms(colour); // 0.2500 kg
 * plan.plainKilograms(); // 0.7500 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name what the colour is called, not blank
 * @param share its share of the mass of all paint
 * @param composition what it is made of
 */
public record ColourShare(String name, MassFraction share, Composition composition) {

  /** Draws a problem if the name is blank. */
  public ColourShare {
    CHECK.named(name, "colour");
  }
}
