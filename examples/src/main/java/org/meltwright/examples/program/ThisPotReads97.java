// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.meltwright.safety.heating.HeatingAction;
import org.meltwright.safety.heating.HeatingReading;
import org.meltwright.safety.heating.HeatingReading.Place;
import org.meltwright.units.TemperaturePoint;

/** This pot reads 97 °C: what do I do now, and what later? */
public final class ThisPotReads97 {

  private ThisPotReads97() {}

  /**
   * Prints what to do.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    HeatingReading reading =
        HeatingReading.of(Place.LIQUID, TemperaturePoint.ofCelsius(97)).heldForMinutes(20);
    HeatingAction action = reading.action();

    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    for (Locale reader : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      out.println(action.level().severity().word(reader));
      out.println(action.atOnce(reader));
      out.println(action.later(reader));
    }
  }
}
