// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.label;

import java.util.Locale;
import org.meltwright.safety.hazard.Pictogram;

/**
 * Hazard pictograms as SVG: a black symbol on white in a red frame, a square set on one of its
 * points.
 *
 * <p>Drawn here to the description of the symbols in Regulation (EC) No 1272/2008, Annex V. Whoever
 * prints a label for sale checks them against the official artwork.
 */
public final class PictogramDrawing {

  private PictogramDrawing() {}

  /**
   * Returns a pictogram as an SVG element with its name for readers who cannot see it.
   *
   * @param pictogram the pictogram
   * @param locale the language of the name
   * @return the element, 100 by 100 units, to be scaled by its style
   */
  public static String svg(Pictogram pictogram, Locale locale) {
    return "<svg class=\"pictogram\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\""
        + " role=\"img\"><title>"
        + pictogram
        + ": "
        + pictogram.symbol(locale)
        + "</title><path fill=\"#fff\" stroke=\"#e30613\" stroke-width=\"6\""
        + " stroke-linejoin=\"miter\" d=\"M50 5 95 50 50 95 5 50Z\"/>"
        + "<g fill=\"#000\" stroke=\"none\">"
        + symbol(pictogram)
        + "</g></svg>";
  }

  private static String symbol(Pictogram pictogram) {
    return switch (pictogram) {
      case GHS01 -> bomb();
      case GHS02 -> flame(50, 26) + line(34, 70, 66, 70);
      case GHS03 -> flame(50, 18) + ring(50, 60, 11) + line(38, 76, 62, 76);
      case GHS04 -> scaled(0.84, cylinder());
      case GHS05 -> scaled(0.88, corrosion());
      case GHS06 -> scaled(0.78, skull());
      case GHS07 -> "<path d=\"M45 24h10l-2.5 34h-5Z\"/><circle cx=\"50\" cy=\"69\" r=\"5.5\"/>";
      case GHS08 -> scaled(0.84, bust());
      case GHS09 -> treeAndFish();
    };
  }

  /** Draws a symbol smaller about the middle, so that it keeps clear of the frame. */
  private static String scaled(double factor, String symbol) {
    return "<g transform=\"translate(50 50) scale(%s) translate(-50 -50)\">%s</g>"
        .formatted(factor, symbol);
  }

  /** A flame of three tongues, its tip at the given point, about 38 units high. */
  private static String flame(double x, double y) {
    return "<path transform=\"translate(%s %s)\" d=\"%s\"/>"
        .formatted(
            x,
            y,
            "M0 0C2 9 13 13 13 26 13 34 7 39 0 39-8 39-14 33-14 25-14 18-9 15-8 8-4 11-3 15-4 19"
                + " 1 14 2 7 0 0ZM0 35C4 35 7 32 7 28 7 24 3 22 2 17-1 20 0 23-3 26-5 24-5 22-5 20"
                + "-8 24-8 35 0 35Z");
  }

  private static String line(double x1, double y1, double x2, double y2) {
    return "<path stroke=\"#000\" stroke-width=\"4\" d=\"M%s %sL%s %s\"/>"
        .formatted(x1, y1, x2, y2);
  }

  private static String ring(double x, double y, double radius) {
    return "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"none\" stroke=\"#000\" stroke-width=\"4.5\"/>"
        .formatted(x, y, radius);
  }

  private static String bomb() {
    return "<circle cx=\"50\" cy=\"58\" r=\"12\"/>"
        + "<path d=\"M47 45 50 22 53 45ZM59 48 75 35 63 53ZM62 60 80 60 62 65ZM41 48 25 35 37 53Z"
        + "M38 60 20 60 38 65ZM43 70 37 80 48 72ZM57 70 63 80 52 72Z\"/>";
  }

  private static String cylinder() {
    return "<path transform=\"rotate(-20 50 50)\""
        + " d=\"M24 44h40q8 0 8 6t-8 6H24ZM73 47h7v6h-7ZM80 44h3v12h-3Z\"/>";
  }

  /** Two tilted vessels drip on a bar and on a hand. */
  private static String corrosion() {
    return "<path d=\"M20 38 42 30 44 35 22 43ZM80 38 58 30 56 35 78 43Z\"/>"
        + "<path d=\"M38 40q3 5 0 7-3-2 0-7ZM38 50q3 5 0 7-3-2 0-7ZM62 40q3 5 0 7-3-2 0-7Z"
        + "M62 50q3 5 0 7-3-2 0-7Z\"/>"
        + "<path d=\"M22 60h10l3 4h5l3-4h5v6H22Z\"/>"
        + "<path d=\"M52 64q6-4 9-3l3 4 5-4q6 1 10 3l-4 6H58q-5-1-6-6Z\"/>";
  }

  /** A skull over two crossed bones. */
  private static String skull() {
    return "<path fill-rule=\"evenodd\" d=\"M50 20c12 0 18 8 18 17 0 6-3 10-7 12v8H39v-8c-4-2-7-6-7-12"
        + " 0-9 6-17 18-17ZM43 34a5 5 0 1 0 .1 0ZM57 34a5 5 0 1 0 .1 0ZM50 44l-3 6h6Z\"/>"
        + "<path stroke=\"#000\" stroke-width=\"5\" stroke-linecap=\"round\""
        + " d=\"M31 62 69 78M69 62 31 78\"/>"
        + "<circle cx=\"30\" cy=\"60\" r=\"3.5\"/><circle cx=\"70\" cy=\"60\" r=\"3.5\"/>"
        + "<circle cx=\"30\" cy=\"80\" r=\"3.5\"/><circle cx=\"70\" cy=\"80\" r=\"3.5\"/>";
  }

  /** Head and shoulders with a white star that bursts over the chest. */
  private static String bust() {
    return "<circle cx=\"50\" cy=\"27\" r=\"9\"/><path d=\"M44 36h12v5l15 6v22L50 88 29 69V47l15-6Z\"/>"
        + "<path fill=\"#fff\" d=\"M50 42 53 54 63 48 57 58 68 62 57 65 62 75 53 69 50 80 47 69 38 75"
        + " 43 65 32 62 43 58 37 48 47 54Z\"/>";
  }

  /** A bare tree and a fish that floats on its back. */
  private static String treeAndFish() {
    return "<path stroke=\"#000\" stroke-width=\"3\" fill=\"none\" stroke-linecap=\"round\""
        + " d=\"M44 66V34M44 48 33 38M44 44 54 34M44 56 35 50M44 34 39 25M44 34 49 26M30 66h30\"/>"
        + "<path transform=\"translate(-3 14) scale(0.8)\" fill-rule=\"evenodd\" d=\"M48 72c8-9 20-9 27-1l6-5v13l-6-5c-7 7-19 7-27-2Z"
        + "M56 70a2 2 0 1 0 .1 0Z\"/>";
  }
}
