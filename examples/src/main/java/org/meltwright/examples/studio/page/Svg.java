// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * A picture of lines, areas and words that an HTML page holds as one element.
 *
 * <p>It names no colour, no font and no file: each shape has a class, and the style of the page
 * says how it looks on a light screen, a dark one and paper. Lengths are in units of the picture;
 * the page scales it to its width. Immutable and thread-safe.
 */
public final class Svg {

  private final String title;
  private final String description;
  private final double width;
  private final double height;
  private final String shapes;

  private Svg(String title, String description, double width, double height, String shapes) {
    this.title = title;
    this.description = description;
    this.width = width;
    this.height = height;
    this.shapes = shapes;
  }

  /**
   * Starts a picture.
   *
   * @param title what it shows, a few words
   * @param description how it is drawn, for readers who cannot see it
   * @param width its width
   * @return a builder without a shape
   */
  public static Builder builder(String title, String description, double width) {
    return new Builder(title, description, width);
  }

  /**
   * Returns the element.
   *
   * @param id a name that no other picture on the page has
   * @return an {@code svg} element with title and description, without a line break
   */
  public String element(String id) {
    return "<svg role=\"img\" viewBox=\"0 0 %s %s\" aria-labelledby=\"%s-title %s-desc\">"
            .formatted(number(width), number(height), id, id)
        + "<title id=\"%s-title\">%s</title>".formatted(id, escape(title))
        + "<desc id=\"%s-desc\">%s</desc>".formatted(id, escape(description))
        + shapes
        + "</svg>";
  }

  private static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("no place in a picture: " + value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String escape(String text) {
    return HtmlPage.escape(text);
  }

  /** Collects shapes, the later over the earlier; not thread-safe. */
  public static final class Builder {

    private final String title;
    private final String description;
    private final double width;
    private final StringBuilder out = new StringBuilder();

    private Builder(String title, String description, double width) {
      this.title = title;
      this.description = description;
      this.width = width;
    }

    /**
     * Adds a rectangle.
     *
     * @param look its class
     * @param x left edge
     * @param y upper edge
     * @param w width
     * @param h height
     * @return this builder
     */
    public Builder rectangle(String look, double x, double y, double w, double h) {
      out.append("<rect").append(attribute("class", look));
      out.append(attribute("x", x)).append(attribute("y", y));
      out.append(attribute("width", w)).append(attribute("height", h)).append("/>");
      return this;
    }

    /**
     * Adds a straight line.
     *
     * @param look its class
     * @param x1 start
     * @param y1 start
     * @param x2 end
     * @param y2 end
     * @return this builder
     */
    public Builder line(String look, double x1, double y1, double x2, double y2) {
      out.append("<line").append(attribute("class", look));
      out.append(attribute("x1", x1)).append(attribute("y1", y1));
      out.append(attribute("x2", x2)).append(attribute("y2", y2)).append("/>");
      return this;
    }

    /**
     * Adds a line through several points.
     *
     * @param look its class
     * @param xy the points, x and y in turn
     * @return this builder
     */
    public Builder polyline(String look, List<Double> xy) {
      return through("polyline", look, xy);
    }

    /**
     * Adds an area between several points.
     *
     * @param look its class
     * @param xy its corners, x and y in turn
     * @return this builder
     */
    public Builder polygon(String look, List<Double> xy) {
      return through("polygon", look, xy);
    }

    private Builder through(String shape, String look, List<Double> xy) {
      out.append('<').append(shape).append(attribute("class", look)).append(" points=\"");
      for (int i = 0; i < xy.size(); i++) {
        out.append(i == 0 ? "" : i % 2 == 0 ? " " : ",").append(number(xy.get(i)));
      }
      out.append("\"/>");
      return this;
    }

    /**
     * Adds a disc.
     *
     * @param look its class
     * @param x its middle
     * @param y its middle
     * @param radius its radius
     * @return this builder
     */
    public Builder disc(String look, double x, double y, double radius) {
      out.append("<circle").append(attribute("class", look));
      out.append(attribute("cx", x)).append(attribute("cy", y));
      out.append(attribute("r", radius)).append("/>");
      return this;
    }

    /**
     * Adds rising strokes over a rectangle, cut at its edges, so that it is told from others
     * without its colour.
     *
     * @param look the class of the strokes
     * @param x left edge
     * @param y upper edge
     * @param w width
     * @param h height
     * @param step distance of the strokes
     * @return this builder
     */
    public Builder hatching(String look, double x, double y, double w, double h, double step) {
      StringBuilder strokes = new StringBuilder();
      for (double s = step; s < w + h; s += step) {
        double left = Math.max(0, s - h);
        double right = Math.min(w, s);
        strokes.append('M').append(number(x + left)).append(' ');
        strokes.append(number(y + Math.min(s, h))).append('L').append(number(x + right));
        strokes.append(' ').append(number(y + s - right));
      }
      if (strokes.length() > 0) {
        out.append("<path").append(attribute("class", look));
        out.append(attribute("d", strokes.toString())).append("/>");
      }
      return this;
    }

    /**
     * Adds words.
     *
     * @param look their class: {@code start}, {@code middle} or {@code end} tells where they stand
     *     to the point
     * @param x the point
     * @param y the line they stand on
     * @param text the words
     * @return this builder
     */
    public Builder text(String look, double x, double y, String text) {
      out.append("<text").append(attribute("class", look));
      out.append(attribute("x", x)).append(attribute("y", y)).append('>');
      out.append(escape(text)).append("</text>");
      return this;
    }

    /**
     * Returns the picture.
     *
     * @param height its height
     * @return the shapes so far
     */
    public Svg build(double height) {
      return new Svg(title, description, width, height, out.toString());
    }

    private static String attribute(String name, double value) {
      return attribute(name, number(value));
    }

    private static String attribute(String name, String value) {
      return " " + name + "=\"" + escape(value) + "\"";
    }
  }
}
