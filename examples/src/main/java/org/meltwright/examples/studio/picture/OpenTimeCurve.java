// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.quantity.Time;
import org.meltwright.core.thermal.setting.OpenTimeTable;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Lettering;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.Svg;
import org.meltwright.units.Estimate;

/**
 * Open time against the temperature of the panel, with its band from low to high; a curve for each
 * temperature of the melt.
 */
public final class OpenTimeCurve {

  private static final double LEFT = 74;
  private static final double RIGHT = Paper.WIDTH - 18;
  private static final double KEY = 30;
  private static final double MARK = 3.4;

  private final Say say;
  private final OpenTimeTable table;
  private final List<Integer> columns;
  private final TimeAxis axis;
  private final Svg.Builder svg;
  private double y;

  /**
   * Draws a table of open times.
   *
   * @param say the reader's language
   * @param table the open times until a stroke drags
   * @return the picture
   * @throws IllegalArgumentException if the table is empty
   */
  public static Picture of(Say say, OpenTimeTable table) {
    if (table.melts().isEmpty() || table.panels().isEmpty()) {
      throw new IllegalArgumentException("no open time to draw");
    }
    OpenTimeCurve curve = new OpenTimeCurve(say, table);
    return new Picture(curve.draw(), curve.alternative());
  }

  private OpenTimeCurve(Say say, OpenTimeTable table) {
    this.say = say;
    this.table = table;
    this.columns =
        IntStream.range(0, table.panels().size())
            .boxed()
            .sorted(Comparator.comparing(table.panels()::get))
            .toList();
    this.axis = TimeAxis.of(estimates(table));
    this.svg =
        Svg.builder(say.words("open-time.title"), say.words("open-time.description"), Paper.WIDTH);
  }

  private static List<Estimate<Time>> estimates(OpenTimeTable table) {
    return IntStream.range(0, table.melts().size())
        .boxed()
        .flatMap(
            row ->
                IntStream.range(0, table.panels().size())
                    .mapToObj(column -> table.halfSet(row, column)))
        .toList();
  }

  private Svg draw() {
    y = Paper.heading(svg, say.words("open-time.heading")) + 4;
    key();
    y += 14;
    double top = y;
    grid(top);
    for (int row = 0; row < table.melts().size(); row++) {
      band(row, top);
    }
    for (int row = 0; row < table.melts().size(); row++) {
      curve(row, top);
    }
    panels(top + axis.height());
    return svg.build(y);
  }

  /** Which line and mark belongs to which melt. */
  private void key() {
    for (int row = 0; row < table.melts().size(); row++) {
      y += Lettering.LINE;
      svg.line(line(row), 0, y - 4, KEY, y - 4);
      mark(row, KEY / 2, y - 4);
      svg.text(
          "start",
          KEY + 8,
          y,
          say.words("open-time.melt", "melt", say.celsius(table.melts().get(row))));
    }
    y += Lettering.LINE;
    svg.rectangle("band", 0, y - 9, KEY, 10);
    svg.text("start", KEY + 8, y, say.words("open-time.band"));
  }

  private void grid(double top) {
    for (TimeAxis.Tick tick : axis.ticks(say)) {
      double at = top + tick.below();
      svg.line("grid", LEFT, at, RIGHT, at);
      svg.text("soft end", LEFT - 8, at + 4, tick.label());
    }
  }

  private void band(int row, double top) {
    List<Double> corners = new ArrayList<>();
    columns.forEach(c -> add(corners, c, top, table.halfSet(row, c).highSi()));
    for (int i = columns.size() - 1; i >= 0; i--) {
      add(corners, columns.get(i), top, table.halfSet(row, columns.get(i)).lowSi());
    }
    svg.polygon("band", corners);
  }

  private void curve(int row, double top) {
    List<Double> points = new ArrayList<>();
    columns.forEach(c -> add(points, c, top, table.halfSet(row, c).centralSi()));
    svg.polyline(line(row), points);
    for (int column : columns) {
      Estimate<Time> time = table.halfSet(row, column);
      double x = x(column);
      svg.line("whisker", x, top + axis.below(time.lowSi()), x, top + axis.below(time.highSi()));
      mark(row, x, top + axis.below(time.centralSi()));
    }
  }

  private void add(List<Double> points, int column, double top, double seconds) {
    points.add(x(column));
    points.add(top + axis.below(seconds));
  }

  private static String line(int row) {
    return "curve dash-" + row % 4;
  }

  private void mark(int row, double x, double at) {
    switch (row % 3) {
      case 0 -> svg.disc("mark", x, at, MARK);
      case 1 -> svg.rectangle("mark", x - MARK, at - MARK, 2 * MARK, 2 * MARK);
      default ->
          svg.polygon("mark", List.of(x - 4, at + MARK, x + 4.0, at + MARK, x, at - 1.3 * MARK));
    }
  }

  /** Panels of one temperature only stand in the middle. */
  private double x(int column) {
    double low = table.panels().get(columns.get(0)).celsius();
    double high = table.panels().get(columns.get(columns.size() - 1)).celsius();
    double share = high > low ? (table.panels().get(column).celsius() - low) / (high - low) : 0.5;
    return LEFT + 14 + share * (RIGHT - LEFT - 28);
  }

  /** The temperatures of the panels, as far as there is room for their numbers. */
  private void panels(double bottom) {
    double free = 0;
    for (int column : columns) {
      String label = say.degrees(table.panels().get(column));
      double half = Lettering.width(label) / 2 + 3;
      svg.line("tick", x(column), bottom, x(column), bottom + 4);
      if (x(column) - half >= free) {
        svg.text("soft middle", x(column), bottom + 17, label);
        free = x(column) + half;
      }
    }
    y = bottom + 17 + Lettering.LINE;
    svg.text("soft end", RIGHT, y, say.words("open-time.axis"));
    y += 5;
  }

  private String alternative() {
    return IntStream.range(0, table.melts().size())
        .mapToObj(this::sentence)
        .collect(Collectors.joining(" ", say.words("open-time.heading") + ". ", ""));
  }

  private String sentence(int row) {
    return say.words(
        "open-time.sentence",
        "melt",
        say.celsius(table.melts().get(row)),
        "panels",
        columns.stream().map(c -> words(row, c)).toList());
  }

  private String words(int row, int column) {
    return say.celsius(table.panels().get(column)) + " " + say.time(table.halfSet(row, column));
  }
}
