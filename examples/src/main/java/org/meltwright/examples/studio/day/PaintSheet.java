// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import org.meltwright.core.mixture.Composition;
import org.meltwright.examples.studio.day.ClassDay.Paint;
import org.meltwright.safety.heating.HeatingReview;

/**
 * A medium or colour of a class: what is in it, and whether it may be kept hot as planned.
 *
 * @param paint the paint
 * @param composition what it is made of, its insolubles left behind
 * @param review the review of how it is kept hot in class
 */
public record PaintSheet(Paint paint, Composition composition, HeatingReview review) {

  /**
   * Returns which paint it is.
   *
   * @return the name of the recipe
   */
  public String name() {
    return paint.recipe().name();
  }
}
