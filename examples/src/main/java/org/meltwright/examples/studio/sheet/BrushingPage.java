// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.setting.NoFreezePanel;
import org.meltwright.core.thermal.setting.OpenTimeTable;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.examples.studio.day.Brushing;
import org.meltwright.examples.studio.day.Known;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Fold;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.picture.OpenTimeCurve;

/** The chapter on brushing: how long a stroke can be worked, and which panel forms no skin. */
final class BrushingPage {

  private final Brushing brushing;
  private final Page.Builder page;
  private final Say say;

  /** Returns the chapter, folded; what is not known is said in its place. */
  static Fold fold(Known<Brushing> brushing, Page.Builder page) {
    return new Fold(
        page.say().words("panel"),
        page.gather(
            () -> {
              brushing.value().ifPresent(b -> new BrushingPage(b, page).add());
              brushing.reason().ifPresent(r -> page.add(r.notice(page.say())));
            }));
  }

  private BrushingPage(Brushing brushing, Page.Builder page) {
    this.brushing = brushing;
    this.page = page;
    this.say = page.say();
  }

  private void add() {
    OpenTimeTable table = brushing.table();
    page.add(openTimes(table));
    page.add(OpenTimeCurve.of(say, table).besideItsNumbers());
    measureFirst(table.rows().get(0).get(0).halfSetDrivers());
    page.add(panels());
    page.add(caution());
  }

  /** Of the first melt on the first panel; the order is much the same for all. */
  private void measureFirst(Drivers drivers) {
    MeasureFirst.fact(drivers, say).map(fact -> new Facts(List.of(fact))).ifPresent(page::add);
    MeasureFirst.picture(drivers, say).ifPresent(page::add);
  }

  private Table openTimes(OpenTimeTable table) {
    List<String> columns = new ArrayList<>(List.of(say.words("panel.melt")));
    table.panels().forEach(p -> columns.add(say.words("panel.at", "panel", say.celsius(p))));
    List<List<String>> rows = new ArrayList<>();
    for (int row = 0; row < table.melts().size(); row++) {
      rows.add(openTimes(table, row));
    }
    return new Table(strokes(), columns, rows, false);
  }

  private List<String> openTimes(OpenTimeTable table, int row) {
    List<String> cells = new ArrayList<>(List.of(say.celsius(table.melts().get(row))));
    for (int column = 0; column < table.panels().size(); column++) {
      cells.add(say.time(table.halfSet(row, column)));
    }
    return cells;
  }

  private String strokes() {
    return say.words(
        "panel.strokes",
        "recipe",
        brushing.recipe(),
        "stroke",
        say.span(millimetres(brushing.stroke().lowSi()), millimetres(brushing.stroke().highSi())),
        "kind",
        say.word(brushing.kind()),
        "thickness",
        millimetres(brushing.panel().thicknessMetres()),
        "ground",
        ground(),
        "air",
        say.celsius(brushing.air()),
        "practice",
        page.cite(Source.COMMON_PRACTICE.citation()),
        "sources",
        sources());
  }

  private String ground() {
    Optional<PanelKind> kind = brushing.ground();
    return brushing
        .panel()
        .ground()
        .flatMap(
            laid ->
                kind.map(
                    k ->
                        say.words(
                            "panel.ground",
                            "thickness",
                            millimetres(laid.thicknessMetres()),
                            "kind",
                            say.word(k))))
        .map(laid -> " " + laid)
        .orElse("");
  }

  private String sources() {
    String read =
        brushing.figures().sources().stream()
            .map(s -> page.cite(s.citation()))
            .distinct()
            .collect(Collectors.joining(" "));
    return read + " " + page.cite(Source.CALCULATED.citation());
  }

  private Table panels() {
    List<String> columns = new ArrayList<>(List.of(say.words("panel.panel")));
    brushing.melts().forEach(m -> columns.add(say.words("panel.melt-at", "melt", say.celsius(m))));
    List<List<String>> rows = new ArrayList<>();
    for (PanelKind kind : brushing.kinds()) {
      List<String> cells = new ArrayList<>(List.of(say.word(kind)));
      brushing.melts().forEach(m -> cells.add(brushing.withoutSkin(kind, m).text(say.locale())));
      rows.add(cells);
    }
    return new Table(
        say.words("panel.no-skin", "warmest", say.celsius(brushing.warmest())),
        columns,
        rows,
        false);
  }

  private Notice caution() {
    NoFreezePanel any = brushing.withoutSkin(brushing.kind(), brushing.melts().get(0));
    List<String> assumed =
        brushing.figures().assumed().isEmpty()
            ? List.of()
            : List.of(
                say.words(
                    "panel.assumed", "figures", String.join(", ", brushing.figures().assumed())));
    return new Notice(Tone.CARE, say.words("panel.label"), any.touchCaution(say.locale()), assumed);
  }

  private String millimetres(double metres) {
    return say.significant(metres * 1000);
  }
}
