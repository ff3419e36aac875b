// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
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
import org.meltwright.examples.studio.file.BrushingDraft.GroundDraft;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.safety.heating.HeatingLimits;
import org.meltwright.units.FieldReader;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;

/** Makes what is brushed from its draft. */
final class BrushingBinder {

  private static final double COLDEST_CELSIUS = -20;
  private static final double MILLIMETRES = 1000;
  private static final Bounds STROKE = Bounds.between(0.001, 10, "mm");

  private final StudioRecipes book;

  BrushingBinder(StudioRecipes book) {
    this.book = book;
  }

  Optional<Known<Brushing>> brushing(FieldReader file, @Nullable BrushingDraft draft) {
    return draft == null ? Optional.empty() : brushed(file.field("brushing"), draft);
  }

  private Optional<Known<Brushing>> brushed(FieldReader at, BrushingDraft d) {
    Optional<Recipe> recipe = book.named(at, "recipe", d.recipe());
    BiFunction<QuantityParser, String, TemperaturePoint> melt = from(Costing.ROOM.celsius());
    BiFunction<QuantityParser, String, TemperaturePoint> cold = from(COLDEST_CELSIUS);
    List<TemperaturePoint> melts = at.each("melts", d.melts(), t -> melt.apply(at.parser(), t));
    List<TemperaturePoint> panels = at.each("panels", d.panels(), t -> cold.apply(at.parser(), t));
    Optional<PanelKind> kind = at.word("panel", d.panel(), PanelKind.class);
    Optional<QuantityRange<Length>> stroke = at.parse("stroke", d.stroke(), BrushingBinder::thin);
    Optional<PanelKind> ground = ground(at, d.ground());
    Optional<Panel> panel = panel(at, d, kind).flatMap(p -> onGround(at, d.ground(), ground, p));
    if (recipe.isEmpty()) {
      return Optional.empty();
    }
    String name = recipe.get().name();
    return at.attempt(
        () ->
            figures(recipe.get())
                .map(
                    f ->
                        new Brushing(
                            name,
                            f,
                            stroke.get(),
                            panel.get(),
                            kind.get(),
                            ground,
                            melts,
                            panels)));
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

  private Optional<Panel> panel(FieldReader at, BrushingDraft d, Optional<PanelKind> kind) {
    Optional<Double> thickness =
        at.parse("thickness", d.thickness(), Bounds.amount(QuantityKind.LENGTH));
    Optional<TemperaturePoint> air = at.parse("air", d.air(), from(COLDEST_CELSIUS));
    return kind.isEmpty() || thickness.isEmpty() || air.isEmpty()
        ? Optional.empty()
        : at.read("thickness", thickness.get(), t -> Panel.of(kind.get(), t, air.get()));
  }

  private static Optional<PanelKind> ground(FieldReader at, @Nullable GroundDraft d) {
    return d == null ? Optional.empty() : at.field("ground").word("of", d.of(), PanelKind.class);
  }

  private static Optional<Panel> onGround(
      FieldReader at, @Nullable GroundDraft d, Optional<PanelKind> ground, Panel panel) {
    if (d == null) {
      return Optional.of(panel);
    }
    FieldReader field = at.field("ground");
    Optional<Double> metres =
        field.parse("thickness", d.thickness(), Bounds.amount(QuantityKind.LENGTH));
    return ground.isEmpty() || metres.isEmpty()
        ? Optional.empty()
        : field.read("thickness", metres.get(), t -> panel.withGround(ground.get().substance(), t));
  }

  private static QuantityRange<Length> thin(QuantityParser parser, String text) {
    return requireThin(parser.parseRange(text, QuantityKind.LENGTH));
  }

  private static QuantityRange<Length> requireThin(QuantityRange<Length> stroke) {
    STROKE.require(stroke.lowSi() * MILLIMETRES, "thickness of a stroke");
    STROKE.require(stroke.highSi() * MILLIMETRES, "thickness of a stroke");
    return stroke;
  }

  /** Neither melt nor panel is planned hotter than the target. */
  private static BiFunction<QuantityParser, String, TemperaturePoint> from(double coldest) {
    Bounds bounds = Bounds.between(coldest, HeatingLimits.standard().target().celsius(), "°C");
    return (parser, text) -> {
      TemperaturePoint point = parser.parseTemperature(text);
      bounds.require(point.celsius(), "temperature");
      return point;
    };
  }
}
