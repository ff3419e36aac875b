// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * A working window that must not be closed.
 *
 * @param ceiling the highest temperature allowed
 * @param margin how far above its clear point the mix has to be
 * @param leastWidth the least room between the bounds
 */
record WindowWish(
    TemperaturePoint ceiling, TemperatureDifference margin, TemperatureDifference leastWidth) {

  private static final int MOST_CUTS = 12;
  private static final int HALVINGS = 30;

  /** Asks, looks at the window, cuts the highest-melting component down, and asks again. */
  BlendAnswer answer(BlendQuestion question, BlendAim aim) {
    List<Wish> cuts = new ArrayList<>();
    for (int i = 0; i < MOST_CUTS; i++) {
      BlendAnswer answer = question.solved(aim, cuts);
      if (!(answer instanceof BlendAnswer.Found found)) {
        return answer;
      }
      Composition mix = found.mixture().composition();
      Optional<WorkingWindow> window = window(mix);
      Optional<Material> highest = window.flatMap(WorkingWindow::highestMelting);
      if (window.isEmpty() || highest.isEmpty() || !isClosed(window.get())) {
        return found.within(window.orElse(null), cuts);
      }
      cuts.add(cut(mix, highest.get(), other(question, aim, cuts, mix, highest.get())));
    }
    return new BlendAnswer.Undecided();
  }

  private Optional<WorkingWindow> window(Composition mix) {
    return WorkingWindow.find(mix, ceiling, margin, leastWidth);
  }

  private static boolean isClosed(WorkingWindow window) {
    return window.state() == WorkingWindow.State.CLOSED;
  }

  /**
   * The largest share of a material at which the window opens, on the way from the blend to the
   * best one without it; where there is none without it, with all else in its proportions.
   */
  private Wish cut(Composition mix, Material highest, Optional<Composition> other) {
    double open = 0;
    double closed = 1;
    double there = mix.massFractionValue(highest);
    for (int i = 0; i < HALVINGS && other.isPresent(); i++) {
      double middle = (open + closed) / 2;
      Composition between = Composition.blend(List.of(mix, other.get()), middle, 1 - middle);
      if (window(between).filter(w -> !isClosed(w)).isPresent()) {
        open = middle;
      } else {
        closed = middle;
      }
    }
    return atMost(highest, Math.floor(open * there * 1e4) / 1e4);
  }

  private Optional<Composition> other(
      BlendQuestion question, BlendAim aim, List<Wish> cuts, Composition mix, Material highest) {
    List<Wish> more = new ArrayList<>(cuts);
    more.add(atMost(highest, 0));
    if (question.solved(aim, more) instanceof BlendAnswer.Found found) {
      return Optional.of(found.composition());
    }
    return mix.massFractionValue(highest) < 1
        ? Optional.of(mix.without(highest))
        : Optional.empty();
  }

  private static Wish atMost(Material material, double share) {
    return Wish.share(
        ShareOf.material(material),
        new MassFractionRange(MassFraction.ZERO, MassFraction.of(share)));
  }
}
