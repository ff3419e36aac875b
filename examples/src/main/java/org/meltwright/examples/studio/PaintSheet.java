// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import org.meltwright.core.mixture.Composition;
import org.meltwright.examples.studio.ClassDay.Paint;
import org.meltwright.safety.heating.HeatingReview;

/**
 * A medium or colour of a class, worked out; masses in kg, net.
 *
 * @param paint the paint
 * @param composition what it is made of, its insolubles left behind
 * @param needed what the class needs
 * @param fromToday what today's jobs leave of it, at most what is needed
 * @param review the review of how it is kept hot in class
 */
record PaintSheet(
    Paint paint, Composition composition, double needed, double fromToday, HeatingReview review) {

  String name() {
    return paint.recipe().name();
  }

  /** What is still to be made. */
  double toMake() {
    return Math.max(0, needed - fromToday);
  }
}
