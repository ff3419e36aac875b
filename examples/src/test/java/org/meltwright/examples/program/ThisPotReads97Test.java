// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.meltwright.examples.Output;

/** The output that {@code docs/guide/this-pot-reads-97.md} shows. */
class ThisPotReads97Test {

  @Test
  void heat_goes_off_now_and_the_thermostat_down_by_seven_kelvin_later() {
    assertThat(Output.of(() -> ThisPotReads97.main(new String[0])).lines())
        .containsExactly(
            "DANGER",
            "The wax is at 97.0 °C (206.6 °F), at or above the hard ceiling of 93.3 °C. Heat off,"
                + " and leave the pot where it is. Do not stir. Lid to hand. Ventilate, and keep it"
                + " in view until it is below 90.0 °C.",
            "Set the thermostat lower by at least 7.0 K before heating again. Measure the overshoot"
                + " of the plate, check the thermometer in boiling water (wipe the probe dry before"
                + " it goes back into wax), and note the overheating in the batch record. Add these 20 minutes to the time above 85 °C.",
            "GEFAHR",
            "Das Wachs hat 97,0 °C (206,6 °F), an oder über der harten Grenze von 93,3 °C. Heizung"
                + " aus, den Topf stehen lassen. Nicht rühren. Deckel bereit. Lüften und im Blick"
                + " behalten, bis es unter 90,0 °C ist.",
            "Den Thermostat um mindestens 7,0 K niedriger stellen, bevor wieder geheizt wird. Das"
                + " Überschwingen der Platte messen, das Thermometer in kochendem Wasser prüfen (den"
                + " Fühler trocken wischen, bevor er wieder ins Wachs kommt) und die Überhitzung im Chargenprotokoll vermerken. Diese 20 Minuten zur Zeit über 85"
                + " °C hinzuzählen.");
  }
}
