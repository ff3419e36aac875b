// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.examples.studio.day.ClassDay.Paint;
import org.meltwright.examples.studio.file.ClassDraft.PaintDraft;
import org.meltwright.examples.studio.file.StudioBinder.Equipment;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.Problems;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Makes what a class works with from its drafts; the shares are to make a whole. */
final class PaintBinder {

  private final StudioRecipes book;
  private final Equipment equipment;
  private final Leaves leaves;
  private final Problems problems;

  PaintBinder(StudioRecipes book, Equipment equipment, Leaves leaves, Problems problems) {
    this.book = book;
    this.equipment = equipment;
    this.leaves = leaves;
    this.problems = problems;
  }

  /** Returns the paints; none if one of them could not be read. */
  List<Paint> paints(String path, @Nullable List<PaintDraft> drafted) {
    List<PaintDraft> drafts = drafted == null ? List.of() : drafted;
    Portions portions = new Portions(problems);
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < drafts.size(); i++) {
      PaintDraft d = drafts.get(i);
      if (d == null) {
        portions.spoil();
      } else {
        String at = path + "/" + i;
        portions.add(at, d.share(), d.rest(), () -> share(at, d));
        paint(at, d).ifPresentOrElse(paints::add, portions::spoil);
      }
    }
    eachRecipeOnce(path, drafts);
    return portions.whole(path).map(shares -> withShares(paints, shares)).orElse(List.of());
  }

  private Optional<Double> share(String path, PaintDraft d) {
    return leaves.massFraction(path + "/share", d.share()).map(MassFraction::value);
  }

  private void eachRecipeOnce(String path, List<PaintDraft> drafts) {
    List<String> seen = new ArrayList<>();
    for (int i = 0; i < drafts.size(); i++) {
      PaintDraft d = drafts.get(i);
      String id = d == null ? null : d.recipe();
      if (id != null && seen.contains(id)) {
        problems.add(Problem.of(StudioProblem.DOUBLE_ID, id).under(path + "/" + i + "/recipe"));
      } else if (id != null) {
        seen.add(id);
      }
    }
  }

  private Optional<Paint> paint(String path, PaintDraft d) {
    Optional<Recipe> recipe = book.named(path + "/recipe", d.recipe());
    Optional<Vessel> vessel = equipment.vessels().named(path + "/vessel", d.vessel(), problems);
    Optional<VolumeFraction> fill = leaves.volumeFraction(path + "/fill", d.fill());
    Optional<HeatSource> source =
        equipment.heatSources().named(path + "/heatSource", d.heatSource(), problems);
    Optional<Thermometer> thermometer =
        equipment.thermometers().named(path + "/thermometer", d.thermometer(), problems);
    Optional<TemperaturePoint> reading = leaves.molten(path + "/reading", d.reading());
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
