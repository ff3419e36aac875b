// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.Optional;
import org.meltwright.core.explain.Drivers;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.picture.DriverBars;

/** What to measure first, so that an estimate of the sheet gets narrower. */
final class MeasureFirst {

  private MeasureFirst() {}

  /** One line; none where nothing by itself decides anything worth the trouble. */
  static Optional<Fact> fact(Drivers drivers, Say say) {
    return drivers
        .measureFirst(say.locale())
        .map(words -> new Fact(say.words("measure-first"), words));
  }

  /** The inputs as bars; none where all of them are known. */
  static Optional<Picture> picture(Drivers drivers, Say say) {
    return drivers.ranked().isEmpty() ? Optional.empty() : Optional.of(DriverBars.of(drivers, say));
  }
}
