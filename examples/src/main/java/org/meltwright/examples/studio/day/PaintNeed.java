// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import org.meltwright.examples.studio.day.ClassDay.Paint;

/**
 * How much a class needs of a medium or colour; masses in kg, net.
 *
 * @param paint the paint
 * @param needed what the class needs
 * @param fromToday what today's jobs leave of it, at most what is needed
 */
public record PaintNeed(Paint paint, double needed, double fromToday) {

  /**
   * Returns whose need it is.
   *
   * @return the name of the recipe
   */
  public String name() {
    return paint.recipe().name();
  }

  /**
   * Returns what is still to be made.
   *
   * @return the mass in kg
   */
  public double toMake() {
    return Math.max(0, needed - fromToday);
  }
}
