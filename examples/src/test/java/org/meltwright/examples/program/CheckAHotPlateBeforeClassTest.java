// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;
import org.meltwright.safety.heating.HeatingLimits;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.units.Bilingual;
import org.meltwright.units.TemperaturePoint;

/** The output that {@code docs/guide/check-a-hot-plate-before-class.md} shows. */
class CheckAHotPlateBeforeClassTest {

  @Test
  void minor_in_the_class_blocks_the_torch_and_the_floor_is_a_caution() {
    assertThat(Output.of(() -> CheckAHotPlateBeforeClass.main(new String[0])).lines())
        .startsWith(
            "Do not start like this.",
            "DANGER: Someone under 18 works where a torch, gas or an open coil is used.",
            "CAUTION: The pot floor rises to 100.0 °C (212.0 °F), at or above 93.3 °C.",
            "NOTICE: The wax is at 88.0 °C (190.4 °F), above 85 °C.")
        .contains("not assessed: The age of the youngest is not stated.")
        .last()
        .asString()
        .contains("Never water");
  }

  @Test
  void tightened_limits_stand_in_the_set_with_their_reason() {
    HeatingRules school =
        HeatingRules.standard()
            .withLimits(
                HeatingLimits.standard().withHardCeiling(TemperaturePoint.ofCelsius(80)),
                "House rule 3: low heat.");

    assertThat(school.limits().target()).isEqualTo(TemperaturePoint.ofCelsius(80));
    assertThat(school.limits().reasons(HeatingLimits.Figure.HARD_CEILING))
        .containsExactly(Bilingual.of("House rule 3: low heat."));
  }

  @Test
  void a_rule_that_is_switched_off_stays_visible_with_its_reason() {
    HeatingRules ours =
        HeatingRules.standard().without("darkening", "We want the old ivory colour.");

    assertThat(ours.switchedOff()).containsEntry("darkening", "We want the old ivory colour.");
  }
}
