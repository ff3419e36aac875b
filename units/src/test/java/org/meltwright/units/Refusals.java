// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.api.Assertions;

/** What a test asks of a refusal. */
final class Refusals {

  private Refusals() {}

  /** The one problem of what cannot be read. */
  static Problem problemOf(Runnable reading) {
    ProblemException refused =
        Assertions.catchThrowableOfType(ProblemException.class, reading::run);
    assertThat(refused).as("refused").isNotNull();
    assertThat(refused.problems()).hasSize(1);
    return refused.problems().get(0);
  }
}
