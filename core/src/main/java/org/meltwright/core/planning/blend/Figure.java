// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import org.meltwright.units.Bilingual;

/** What a wish bounds: a sum over the parts of a blend, divided by another such sum. */
interface Figure {

  /** Which end of its range each figure of a part is taken at. */
  enum End {
    SMALLEST,
    MIDDLE,
    LARGEST;

    End other() {
      return this == MIDDLE ? MIDDLE : this == SMALLEST ? LARGEST : SMALLEST;
    }

    double of(double low, double middle, double high) {
      return this == MIDDLE ? middle : this == SMALLEST ? low : high;
    }
  }

  /** What the sum is divided by. */
  enum Per {
    /** The mass of the blend: a share, or a mean by mass. */
    BLEND,
    /** Nothing: an amount in kg. */
    AMOUNT,
    /** Another sum over the parts. */
    OTHER
  }

  /** What a reader counts as one more of it, and the key of the texts that say so. */
  enum Step {
    POINT(0.01, "point"),
    TENTH(0.1, "tenth"),
    HUNDRED_GRAMS(0.1, "hundred-grams"),
    ONE(1, "one"),
    TEN_KILOGRAMS_PER_CUBIC_METRE(10, "ten-kg-m3");

    private final double size;
    private final String key;

    Step(double size, String key) {
      this.size = size;
      this.key = key;
    }

    /** How much it is, in the unit of the figure as it is told. */
    double size() {
      return size;
    }

    String key() {
      return key;
    }
  }

  /** What it is divided by: the mass of the blend, unless it says otherwise. */
  default Per per() {
    return Per.BLEND;
  }

  /** What a kilogram of a part adds above, where it is divided by the blend or by nothing. */
  double over(BlendPart part, End end);

  /**
   * What a kilogram of a part adds above, less the bound times what it adds below; figures that
   * stand in both move together.
   */
  default double excess(BlendPart part, double bound, End end) {
    return over(part, end) - (per() == Per.BLEND ? bound : 0);
  }

  /** What it is called, for the texts. */
  Bilingual name();

  /** A value of it, with its unit. */
  Bilingual inWords(double value);

  /** One step of it: one point of a share, unless it says otherwise. */
  default Step step() {
    return Step.POINT;
  }

  /** The value that lies some steps further, in the sense that a reader counts. */
  default double moved(double value, double steps) {
    return value + steps * step().size();
  }

  /** Whether the least value is what a reader calls the most. */
  default boolean isInverse() {
    return false;
  }
}
