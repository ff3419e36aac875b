// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.examples.studio.day.ClassDay.Paint;
import org.meltwright.examples.studio.file.ClassDraft.PaintDraft;
import org.meltwright.examples.studio.file.StudioBinder.Equipment;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Makes what a class works with from its drafts; the shares are to make a whole. */
final class PaintBinder {

  private final StudioRecipes book;
  private final Equipment equipment;

  PaintBinder(StudioRecipes book, Equipment equipment) {
    this.book = book;
    this.equipment = equipment;
  }

  /** Returns the paints; none if one of them could not be read. */
  List<Paint> paints(FieldReader day, @Nullable List<@Nullable PaintDraft> drafted) {
    Portions portions = new Portions();
    List<Paint> paints = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    Entries.eachAt(
        day,
        "paints",
        drafted,
        (at, d) -> {
          portions.add(at, d.share(), d.rest());
          paint(at, d).ifPresentOrElse(paints::add, portions::spoil);
          if (d.recipe() != null && !seen.add(d.recipe())) {
            at.problems()
                .add(Problem.of(StudioProblem.DOUBLE_ID, d.recipe()).under(at.path() + "/recipe"));
          }
        });
    boolean isAnyMissing = drafted == null || drafted.isEmpty() || drafted.contains(null);
    return isAnyMissing
        ? List.of()
        : portions
            .whole(day.field("paints"))
            .map(shares -> withShares(paints, shares))
            .orElse(List.of());
  }

  private Optional<Paint> paint(FieldReader at, PaintDraft d) {
    FieldReader may = at.optional();
    Optional<Recipe> recipe = book.named(at, "recipe", d.recipe());
    Optional<Vessel> vessel = equipment.vessels().named(may, "vessel", d.vessel());
    Optional<VolumeFraction> fill =
        may.parse("fill", d.fill(), QuantityParser::parseVolumeFraction);
    Optional<HeatSource> source = equipment.heatSources().named(may, "heatSource", d.heatSource());
    Optional<Thermometer> thermometer =
        equipment.thermometers().named(may, "thermometer", d.thermometer());
    Optional<TemperaturePoint> reading = may.parse("reading", d.reading(), Bounds::molten);
    return recipe.map(
        r ->
            new Paint(
                r,
                MassFraction.ZERO,
                vessel.orElse(null),
                fill.orElse(null),
                source.orElse(null),
                thermometer.orElse(null),
                reading.orElse(null)));
  }

  private static List<Paint> withShares(List<Paint> paints, List<Double> shares) {
    List<Paint> whole = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      whole.add(withShare(paints.get(i), MassFraction.of(shares.get(i))));
    }
    return whole;
  }

  private static Paint withShare(Paint paint, MassFraction share) {
    return new Paint(
        paint.recipe(),
        share,
        paint.vessel(),
        paint.fill(),
        paint.source(),
        paint.thermometer(),
        paint.reading());
  }
}
