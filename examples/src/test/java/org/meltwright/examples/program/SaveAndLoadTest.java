// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

class SaveAndLoadTest {

  @Test
  void main_typedFile_isSavedInItsCanonicalForm_andLoadedAsTheSame() {
    String printed = Output.of(() -> SaveAndLoad.main(new String[0]));
    assertThat(printed)
        .contains("\"capacity\":\"1500 ml\"")
        .contains("{\"of\":\"medium\",\"share\":\"90 % by mass\"}")
        .contains("the same: true")
        .contains("/pot/capacity: The number has no unit.")
        .contains("/recipes/0/parts/0/of: No material is called \"dammar resn\".");
  }
}
