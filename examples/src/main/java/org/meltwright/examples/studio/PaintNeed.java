// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import org.meltwright.examples.studio.ClassDay.Paint;

/**
 * How much a class needs of a medium or colour; masses in kg, net.
 *
 * @param paint the paint
 * @param needed what the class needs
 * @param fromToday what today's jobs leave of it, at most what is needed
 */
record PaintNeed(Paint paint, double needed, double fromToday) {

  String name() {
    return paint.recipe().name();
  }

  /** What is still to be made. */
  double toMake() {
    return Math.max(0, needed - fromToday);
  }
}
