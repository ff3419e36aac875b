// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.List;

/**
 * What a class needs as plain data: any JSON library writes it.
 *
 * <pre>{@code
 * Coverage film = Coverage.of(millimetres(0.15), 8, gramsPerMillilitre(0.97)).withLoss(0.2);
 * ClassPlan plan = ClassPlan.of(12, List.of(new Piece(6, 0.04)), film).withLeftInTins(grams(60));
 *
 * ClassPlanData data = ClassPlanData.of(plan);
 * data.totalKilograms(); // 4.910
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param people how many come, at least one
 * @param squareMetres the area of all pieces of all people, in m²
 * @param totalKilograms how much is needed in all, losses, tins and spare included, in kg, not
 *     rounded
 * @param plainKilograms how much of it stays without colour, in kg, not rounded
 * @param colours the colours; empty if all stays plain
 */
public record ClassPlanData(
    int people,
    double squareMetres,
    double totalKilograms,
    double plainKilograms,
    List<Colour> colours) {

  /**
   * How much is needed of a colour.
   *
   * @param name what the colour is called
   * @param massFraction its share of the mass of all paint, from 0 to 1
   * @param massKilograms how much is needed, in kg, not rounded
   */
  public record Colour(String name, double massFraction, double massKilograms) {}

  public ClassPlanData {
    colours = List.copyOf(colours);
  }

  /**
   * Returns a plan as data.
   *
   * @param plan the plan
   * @return its people, area and masses
   */
  public static ClassPlanData of(ClassPlan plan) {
    return new ClassPlanData(
        plan.people(),
        plan.squareMetres(),
        plan.totalKilograms(),
        plan.plainKilograms(),
        plan.colours().stream()
            .map(c -> new Colour(c.name(), c.share().value(), plan.kilograms(c)))
            .toList());
  }
}
