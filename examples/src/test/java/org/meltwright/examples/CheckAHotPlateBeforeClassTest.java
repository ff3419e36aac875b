// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.safety.heating.HeatingRules;

/** The output that {@code docs/guide/check-a-hot-plate-before-class.md} shows. */
class CheckAHotPlateBeforeClassTest {

  @Test
  void minor_in_the_class_blocks_the_torch_and_the_floor_is_a_caution() {
    assertThat(Output.of(() -> CheckAHotPlateBeforeClass.main(new String[0])).lines())
        .startsWith(
            "Do not start like this.",
            "DANGER: Someone under 18 works where a torch is used.",
            "CAUTION: The pot floor rises to 100.0 °C (212.0 °F), at or above 93.3 °C.",
            "NOTICE: The wax is at 88.0 °C (190.4 °F), above 85 °C.",
            "NOTICE: Someone under 18 works.")
        .contains(
            "not assessed: Damar resin burns, or may burn, and has no flash point that a rule may"
                + " use.")
        .last()
        .asString()
        .contains("Never use water");
  }

  @Test
  void a_rule_that_is_switched_off_stays_visible_with_its_reason() {
    HeatingRules ours =
        HeatingRules.standard().without("darkening", "We want the old ivory colour.");

    assertThat(ours.switchedOff()).containsEntry("darkening", "We want the old ivory colour.");
  }
}
