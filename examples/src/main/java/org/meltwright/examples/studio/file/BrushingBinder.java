// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.examples.studio.day.Brushing;
import org.meltwright.examples.studio.day.Costing;
import org.meltwright.examples.studio.day.Known;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.safety.heating.HeatingLimits;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;

/** Makes what is brushed from its draft. */
final class BrushingBinder {

  private static final String PATH = "/brushing";
  private static final double COLDEST_CELSIUS = -20;
  private static final double MILLIMETRES = 1000;
  private static final Bounds STROKE = Bounds.between(0.001, 10, "mm");

  private final StudioRecipes book;
  private final Leaves leaves;
  private final Problems problems;

  BrushingBinder(StudioRecipes book, Leaves leaves, Problems problems) {
    this.book = book;
    this.leaves = leaves;
    this.problems = problems;
  }

  Optional<Known<Brushing>> brushing(@Nullable BrushingDraft d) {
    if (d == null) {
      return Optional.empty();
    }
    Optional<Recipe> recipe = book.named(PATH + "/recipe", d.recipe());
    double room = Costing.ROOM.celsius();
    List<TemperaturePoint> melts = temperatures("/melts", d.melts(), room);
    List<TemperaturePoint> panels = temperatures("/panels", d.panels(), COLDEST_CELSIUS);
    Optional<PanelKind> kind = leaves.word(PATH + "/panel", d.panel(), PanelKind.class);
    Optional<QuantityRange<Length>> stroke = stroke(d.stroke());
    Optional<PanelKind> ground = ground(d);
    Optional<Panel> panel = panel(d, kind).flatMap(p -> onGround(d, ground, p));
    if (recipe.isEmpty()
        || melts.isEmpty()
        || panels.isEmpty()
        || stroke.isEmpty()
        || panel.isEmpty()) {
      return Optional.empty();
    }
    String name = recipe.get().name();
    PanelKind of = kind.orElseThrow();
    return Optional.of(
        figures(recipe.get())
            .map(f -> new Brushing(name, f, stroke.get(), panel.get(), of, ground, melts, panels)));
  }

  /** The figures of a mix, what no material states taken from natural waxes. */
  private Known<MeltFigures> figures(Recipe recipe) {
    return book.unknownShares(recipe)
        .map(Known::<MeltFigures>not)
        .orElseGet(
            () ->
                Known.of(
                    MeltFigures.find(recipe.composition(), MeltFigures.TYPICAL),
                    () -> unknown(recipe)));
  }

  private static NotKnown unknown(Recipe recipe) {
    return NotKnown.clearPoint(
        Phrase.of("not-known.brushing", "recipe", recipe.name()),
        recipe.composition(),
        Phrase.of("not-known.brushing.remedy"));
  }

  private Optional<Panel> panel(BrushingDraft d, Optional<PanelKind> kind) {
    Optional<Double> thickness =
        leaves.amount(PATH + "/thickness", d.thickness(), QuantityKind.LENGTH);
    Optional<TemperaturePoint> air = temperature("/air", d.air(), COLDEST_CELSIUS);
    return kind.isEmpty() || thickness.isEmpty() || air.isEmpty()
        ? Optional.empty()
        : problems.attempt(
            PATH + "/thickness", () -> Panel.of(kind.get(), thickness.get(), air.get()));
  }

  private Optional<PanelKind> ground(BrushingDraft d) {
    return d.ground() == null
        ? Optional.empty()
        : leaves.word(PATH + "/ground/of", d.ground().of(), PanelKind.class);
  }

  private Optional<Panel> onGround(BrushingDraft d, Optional<PanelKind> ground, Panel panel) {
    if (d.ground() == null) {
      return Optional.of(panel);
    }
    String field = PATH + "/ground/thickness";
    Optional<Double> metres = leaves.amount(field, d.ground().thickness(), QuantityKind.LENGTH);
    return ground.isEmpty() || metres.isEmpty()
        ? Optional.empty()
        : problems.attempt(field, () -> panel.withGround(ground.get().substance(), metres.get()));
  }

  private Optional<QuantityRange<Length>> stroke(@Nullable String text) {
    return leaves
        .read(PATH + "/stroke", text, p -> t -> p.parseRange(t, QuantityKind.LENGTH))
        .flatMap(s -> problems.attempt(PATH + "/stroke", () -> requireThin(s)));
  }

  private static QuantityRange<Length> requireThin(QuantityRange<Length> stroke) {
    STROKE.require(stroke.lowSi() * MILLIMETRES, "thickness of a stroke");
    STROKE.require(stroke.highSi() * MILLIMETRES, "thickness of a stroke");
    return stroke;
  }

  private List<TemperaturePoint> temperatures(
      String field, @Nullable List<String> texts, double coldest) {
    List<TemperaturePoint> points = new ArrayList<>();
    for (int i = 0; texts != null && i < texts.size(); i++) {
      temperature(field + "/" + i, texts.get(i), coldest).ifPresent(points::add);
    }
    return points;
  }

  /** Neither melt nor panel is planned hotter than the target. */
  private Optional<TemperaturePoint> temperature(
      String field, @Nullable String text, double coldest) {
    return leaves
        .read(PATH + field, text, p -> p::parseTemperature)
        .flatMap(
            t ->
                problems.attempt(
                    PATH + field,
                    () -> {
                      Bounds.between(coldest, HeatingLimits.standard().target().celsius(), "°C")
                          .require(t.celsius(), "temperature");
                      return t;
                    }));
  }
}
