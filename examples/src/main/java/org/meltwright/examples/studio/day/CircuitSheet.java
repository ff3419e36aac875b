// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.examples.studio.day.ClassDay.Circuit;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.exposure.CircuitLoad;
import org.meltwright.safety.exposure.CircuitLoad.Device;
import org.meltwright.safety.exposure.CircuitLoad.Outcome;
import org.meltwright.units.MassFraction;

/**
 * The load on one circuit, every piece taken as continuous.
 *
 * @param circuit the circuit
 * @param load the load, devices of unknown power among it
 * @param isShareStated whether the share that may run for hours is known
 */
public record CircuitSheet(Circuit circuit, CircuitLoad load, boolean isShareStated) {

  /** Works out a circuit; without a share for continuous loads the rating itself is taken. */
  static CircuitSheet of(Circuit circuit, @Nullable MassFraction share, Say say) {
    double factor = share == null ? 1 : 1 / share.value();
    CircuitLoad load = CircuitLoad.of(circuit.volts(), circuit.amperes(), factor);
    for (HeatSource source : circuit.sources()) {
      load = load.with(device(source.name(), source.powerWatts()));
    }
    load = load.with(device(say.words("circuit.all-else"), circuit.otherWatts()));
    return new CircuitSheet(circuit, load, share != null);
  }

  private static Device device(String name, OptionalDouble watts) {
    return watts.isPresent()
        ? new Device(name, watts.getAsDouble(), true)
        : Device.ofUnknownPower(name);
  }

  /** Whether the rating, or the share of it for hours, is exceeded by what is known alone. */
  boolean isTooMuch() {
    return load.outcome() == Outcome.ABOVE_RATING || load.outcome() == Outcome.ABOVE_CONTINUOUS;
  }

  /**
   * Returns whether the power of all that hangs on it is known.
   *
   * @return whether it is
   */
  public boolean isPowerKnown() {
    return load.unknown().isEmpty();
  }

  /**
   * Returns the verdict; what is unknown is never within.
   *
   * @param say the language
   * @return the verdict
   */
  public String verdict(Say say) {
    String said =
        isTooMuch() || isWhole()
            ? load.outcomeText(say.locale())
            : say.words("not-assessed.label") + ".";
    return isWhole() ? said : said + " " + say.words("circuit.not-stated", "open", open(say));
  }

  /**
   * Returns the verdict in a word or two.
   *
   * @param say the language
   * @return the words
   */
  public String word(Say say) {
    if (isTooMuch()) {
      return say.words("circuit.too-much");
    }
    return say.words(isWhole() ? "circuit.within" : "not-assessed.label");
  }

  private boolean isWhole() {
    return isPowerKnown() && isShareStated;
  }

  private String open(Say say) {
    List<String> open = new ArrayList<>();
    load.unknown().stream()
        .map(d -> say.words("circuit.power-of", "name", d.name()))
        .distinct()
        .forEach(open::add);
    if (!isShareStated) {
      open.add(say.words("circuit.share"));
    }
    return String.join(", ", open);
  }
}
