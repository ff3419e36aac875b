// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.setting.NoFreezePanel;
import org.meltwright.core.thermal.setting.OpenTimeTable;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.picture.OpenTimeCurve;

/** The chapter on brushing: how long a stroke can be worked, and which panel forms no skin. */
final class BrushingPage {

  private static final Locale READER = Locale.ENGLISH;

  private final Brushing brushing;
  private final Page.Builder page;

  /** Adds the chapter; what is not known is said in its place. */
  static void add(Known<Brushing> brushing, Page.Builder page) {
    page.add(new Heading(2, "On the panel"));
    brushing.value().ifPresent(b -> new BrushingPage(b, page).add());
    brushing.reason().map(NotKnown::notice).ifPresent(page::add);
  }

  private BrushingPage(Brushing brushing, Page.Builder page) {
    this.brushing = brushing;
    this.page = page;
  }

  private void add() {
    OpenTimeTable table = brushing.table();
    page.add(openTimes(table));
    page.add(OpenTimeCurve.of(table).besideItsNumbers());
    measureFirst(table.rows().get(0).get(0).halfSetDrivers());
    page.add(panels());
    page.add(caution());
  }

  /** Of the first melt on the first panel; the order is much the same for all. */
  private void measureFirst(Drivers drivers) {
    MeasureFirst.fact(drivers).map(fact -> new Facts(List.of(fact))).ifPresent(page::add);
    MeasureFirst.picture(drivers).ifPresent(page::add);
  }

  private Table openTimes(OpenTimeTable table) {
    List<String> columns = new ArrayList<>(List.of("Melt"));
    table.panels().forEach(p -> columns.add("panel " + Say.celsius(p)));
    List<List<String>> rows = new ArrayList<>();
    for (int row = 0; row < table.melts().size(); row++) {
      rows.add(openTimes(table, row));
    }
    return new Table(strokes(), columns, rows, false);
  }

  private static List<String> openTimes(OpenTimeTable table, int row) {
    List<String> cells = new ArrayList<>(List.of(Say.celsius(table.melts().get(row))));
    for (int column = 0; column < table.panels().size(); column++) {
      cells.add(Say.time(table.halfSet(row, column)));
    }
    return cells;
  }

  private String strokes() {
    return brushing.recipe()
        + ", a stroke of "
        + millimetres(brushing.stroke().lowSi())
        + " to "
        + millimetres(brushing.stroke().highSi())
        + " mm on "
        + word(brushing.kind())
        + " of "
        + millimetres(brushing.panel().thicknessMetres())
        + " mm"
        + ground()
        + " in a still room of "
        + Say.celsius(brushing.air())
        + ": time until half of it is set and the brush drags, with its least and most "
        + sources()
        + ". The melt's temperature is that on contact: a brush brings it there 10 to 20 K below"
        + " the pot's "
        + page.cite(Source.COMMON_PRACTICE.citation())
        + ".";
  }

  private String ground() {
    Optional<PanelKind> kind = brushing.ground();
    return brushing
        .panel()
        .ground()
        .flatMap(g -> kind.map(k -> millimetres(g.thicknessMetres()) + " mm of " + word(k)))
        .map(laid -> " with " + laid)
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
    List<String> columns = new ArrayList<>(List.of("Panel"));
    brushing.melts().forEach(m -> columns.add("melt " + Say.celsius(m)));
    List<List<String>> rows = new ArrayList<>();
    for (PanelKind kind : brushing.kinds()) {
      List<String> cells = new ArrayList<>(List.of(word(kind)));
      brushing.melts().forEach(m -> cells.add(brushing.withoutSkin(kind, m).text(READER)));
      rows.add(cells);
    }
    return new Table(
        "The temperature of a panel on which no skin forms at once, up to "
            + Say.celsius(brushing.warmest())
            + ", the warmest that is compared.",
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
                "Taken from the range of natural waxes, since no source states it: "
                    + String.join(", ", brushing.figures().assumed())
                    + ".");
    return new Notice(Tone.CARE, "WARM PANELS", any.touchCaution(READER), assumed);
  }

  private static String millimetres(double metres) {
    return Say.significant(metres * 1000);
  }

  private static String word(PanelKind kind) {
    return Words.of(kind).replace('-', ' ');
  }
}
