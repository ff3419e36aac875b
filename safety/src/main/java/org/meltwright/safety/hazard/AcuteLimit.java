// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;

/** One category of acute toxicity: up to which estimate, with which point estimate. */
record AcuteLimit(
    UptakeForm form, Category category, double upTo, double pointEstimate, double cutOffPercent) {

  static AcuteLimit of(List<String> row) {
    return new AcuteLimit(
        UptakeForm.ofId(row.get(1)),
        Category.of(row.get(2)),
        Double.parseDouble(row.get(3)),
        Double.parseDouble(row.get(4)),
        Double.parseDouble(row.get(5)));
  }
}
