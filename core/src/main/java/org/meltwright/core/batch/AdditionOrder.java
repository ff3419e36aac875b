// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.units.TemperaturePoint;

/** The order in which lines go into a pot, by what they do in the mix; common practice. */
final class AdditionOrder {

  /** A part that melts this much above the largest counts as harder than it. */
  private static final double HARDER_BY_KELVIN = 5;

  private AdditionOrder() {}

  static List<AdditionHint> hints(List<BatchLine> lines) {
    int largest = largestThatMelts(lines);
    int hardest = hardest(lines, largest);
    List<AdditionHint> hints = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (i == largest) {
        hints.add(AdditionHint.FIRST);
      } else if (i == hardest) {
        hints.add(AdditionHint.WITH_FIRST_THIRD);
      } else {
        hints.add(byRole(role(lines.get(i))));
      }
    }
    return hints;
  }

  private static AdditionHint byRole(MaterialRole role) {
    return switch (role) {
      case BASE -> AdditionHint.THEN;
      case HARDENER -> AdditionHint.SPRINKLE;
      case OIL, COLOURANT, FILLER, CARRIER -> AdditionHint.STIR_IN;
    };
  }

  private static int largestThatMelts(List<BatchLine> lines) {
    int largest = -1;
    double most = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (role(lines.get(i)) == MaterialRole.BASE && lines.get(i).massKilograms() > most) {
        largest = i;
        most = lines.get(i).massKilograms();
      }
    }
    return largest;
  }

  private static int hardest(List<BatchLine> lines, int largest) {
    Optional<TemperaturePoint> base = largest < 0 ? Optional.empty() : top(lines.get(largest));
    if (base.isEmpty()) {
      return -1;
    }
    int hardest = -1;
    double limit = base.get().kelvin() + HARDER_BY_KELVIN;
    for (int i = 0; i < lines.size(); i++) {
      Optional<TemperaturePoint> top = top(lines.get(i));
      if (role(lines.get(i)) == MaterialRole.BASE
          && top.isPresent()
          && top.get().kelvin() > limit) {
        hardest = i;
        limit = top.get().kelvin();
      }
    }
    return hardest;
  }

  /** What a sub-recipe makes melts, as a base does. */
  private static MaterialRole role(BatchLine line) {
    return line.ingredient().material().map(m -> m.role()).orElse(MaterialRole.BASE);
  }

  private static Optional<TemperaturePoint> top(BatchLine line) {
    return line.ingredient()
        .material()
        .flatMap(m -> m.find(PropertyKey.MELTING_RANGE))
        .map(f -> f.value().range().high());
  }
}
