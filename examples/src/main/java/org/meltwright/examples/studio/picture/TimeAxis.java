// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import javax.measure.quantity.Time;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.units.Estimate;

/**
 * An upright axis of times in even steps of about three, from a tenth of a second to a day.
 *
 * <p>What has no end stands on a line of its own at the top, what takes no time on one at the foot.
 */
final class TimeAxis {

  /** A line of the axis. */
  record Tick(String label, double below) {}

  static final double STEP = 26;

  private static final double[] TIMES = {
    0.1, 0.3, 1, 3, 10, 30, 60, 180, 600, 1800, 3600, 10800, 36000, 86400
  };

  private final int first;
  private final int last;
  private final boolean endless;
  private final boolean atOnce;

  static TimeAxis of(List<Estimate<Time>> estimates) {
    return new TimeAxis(
        estimates.stream()
            .flatMapToDouble(e -> DoubleStream.of(e.lowSi(), e.centralSi(), e.highSi()))
            .toArray());
  }

  private TimeAxis(double... seconds) {
    double least = within(seconds).min().orElse(1);
    double most = within(seconds).max().orElse(10);
    int low = TIMES.length - 2;
    while (low > 0 && TIMES[low] > least) {
      low--;
    }
    int high = low + 1;
    while (high < TIMES.length - 1 && TIMES[high] < most) {
      high++;
    }
    this.first = low;
    this.last = high;
    this.endless = DoubleStream.of(seconds).anyMatch(s -> s > TIMES[TIMES.length - 1]);
    this.atOnce = DoubleStream.of(seconds).anyMatch(s -> s < TIMES[0]);
  }

  private static DoubleStream within(double... seconds) {
    return DoubleStream.of(seconds).filter(s -> s >= TIMES[0] && s <= TIMES[TIMES.length - 1]);
  }

  /** Returns the lines from the top down. */
  List<Tick> ticks(Say say) {
    List<Tick> ticks = new ArrayList<>();
    if (endless) {
      ticks.add(new Tick(say.words("time.no-end"), 0));
    }
    for (int i = last; i >= first; i--) {
      ticks.add(new Tick(say.time(TIMES[i]), below(TIMES[i])));
    }
    if (atOnce) {
      ticks.add(new Tick(say.words("time.at-once"), height()));
    }
    return ticks;
  }

  double height() {
    return (last - first + (endless ? 1 : 0) + (atOnce ? 1 : 0)) * STEP;
  }

  /** Returns how far below the top of the axis a time stands; even in the logarithm of a step. */
  double below(double seconds) {
    if (seconds > TIMES[TIMES.length - 1]) {
      return 0;
    }
    if (seconds < TIMES[0]) {
      return height();
    }
    int i = first;
    while (i < last - 1 && seconds > TIMES[i + 1]) {
      i++;
    }
    double share = Math.log(seconds / TIMES[i]) / Math.log(TIMES[i + 1] / TIMES[i]);
    return (last - i - share + (endless ? 1 : 0)) * STEP;
  }
}
