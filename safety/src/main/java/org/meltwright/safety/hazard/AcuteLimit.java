// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/** One category of acute toxicity: up to which estimate, with which point estimate. */
record AcuteLimit(
    UptakeForm form, Category category, double upTo, double pointEstimate, double cutOffPercent) {

  static AcuteLimit of(RuleRow row) {
    return new AcuteLimit(
        UptakeForm.ofId(row.cell(0)),
        Category.of(row.cell(1)),
        row.number(2),
        row.number(3),
        row.number(4));
  }
}
