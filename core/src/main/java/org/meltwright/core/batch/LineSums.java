// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.math.BigDecimal;
import java.util.List;

/** Sums of printed masses, without the noise of a sum of doubles. */
final class LineSums {

  private LineSums() {}

  static double sum(List<WeighingLine> lines) {
    return lines.stream()
        .map(l -> BigDecimal.valueOf(l.rounded().printedKilograms()))
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .doubleValue();
  }
}
