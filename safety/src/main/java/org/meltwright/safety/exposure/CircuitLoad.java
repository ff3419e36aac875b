// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Limit;
import org.meltwright.units.Messages;

/**
 * What hangs on one circuit: plates, guns, irons by their nameplates, held against the rating of
 * the circuit with the factor that the user's own code states for continuous loads.
 *
 * <p>A load counts as continuous as the code states it, mostly from three hours. A thermostat does
 * not lower the running current. For example, 1100 W and 300 W, both continuous, on 15 A at 120 V
 * with a factor of 1.25 need 14.6 A. Ask an electrician; local code decides.
 *
 * <p>In code:
 *
 * <pre>{@code
 * CircuitLoad table =
 *     CircuitLoad.of(120, 15, 1.25)
 *         .with(new CircuitLoad.Device("hot plate", 1100, true))
 *         .with(new CircuitLoad.Device("heat gun", 300, true));
 * table.nameplateAmperes(); // 11.67 A
 * table.requiredAmperes(); // 14.58 A
 * table.outcome(); // WITHIN_THE_NUMBERS_GIVEN
 * table.withAmperes("iron, 2.5 A on its plate", 2.5, true).outcome(); // ABOVE_CONTINUOUS
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class CircuitLoad {

  private final double volts;
  private final double ratedAmperes;
  private final double continuousFactor;
  private final List<Device> devices;

  /** What a load comes to. */
  public enum Outcome {
    /** The rating holds it, with the factor for continuous loads. */
    WITHIN_THE_NUMBERS_GIVEN,
    /** The nameplates that are known, with the factor for continuous loads, exceed the rating. */
    ABOVE_CONTINUOUS,
    /** The nameplates alone exceed the rating, whatever those not known would add. */
    ABOVE_RATING,
    /** The power of a device is not known, and what is known is not too much by itself. */
    NOT_KNOWN
  }

  /**
   * A device on the circuit.
   *
   * @param name what it is called
   * @param watts its nameplate power, in W, from 0 to 1e6; empty if it is not known
   * @param isContinuous whether it is a continuous load by the user's code
   */
  public record Device(String name, OptionalDouble watts, boolean isContinuous) {

    /** Draws a problem if the power is negative. */
    public Device {
      watts.ifPresent(known -> CHECK.between(known, 0, 1e6, "power in W"));
    }

    /**
     * Creates a device whose power is known.
     *
     * @param name what it is called
     * @param watts its nameplate power, in W, from 0 to 1e6
     * @param isContinuous whether it is a continuous load by the user's code
     */
    public Device(String name, double watts, boolean isContinuous) {
      this(name, OptionalDouble.of(watts), isContinuous);
    }

    /**
     * Returns a device whose nameplate nobody has read; it counts as unknown, not as nothing.
     *
     * @param name what it is called
     * @return the device, taken for a continuous load
     */
    public static Device ofUnknownPower(String name) {
      return new Device(name, OptionalDouble.empty(), true);
    }

    private double knownWatts() {
      return watts.orElse(0);
    }
  }

  /**
   * Returns a circuit with nothing on it.
   *
   * @param volts the voltage, in V, from 1 to 1000
   * @param ratedAmperes the rating of its breaker or fuse, in A, from 0.1 to 1000
   * @param continuousFactor the factor on continuous loads that the user's code states, from 1 to
   *     2; there is no default
   * @return the circuit
   * @throws org.meltwright.units.ProblemException if a number cannot be
   */
  public static CircuitLoad of(double volts, double ratedAmperes, double continuousFactor) {
    return new CircuitLoad(
        CHECK.between(volts, 1, 1000, "voltage in V"),
        CHECK.between(ratedAmperes, 0.1, 1000, "rating in A"),
        CHECK.between(continuousFactor, 1, 2, "factor on continuous loads"),
        List.of());
  }

  private CircuitLoad(
      double volts, double ratedAmperes, double continuousFactor, List<Device> devices) {
    this.volts = volts;
    this.ratedAmperes = ratedAmperes;
    this.continuousFactor = continuousFactor;
    this.devices = devices;
  }

  /** {@return the devices, in the order added} */
  public List<Device> devices() {
    return devices;
  }

  /**
   * Returns a circuit with one more device.
   *
   * @param device the device
   * @return the new circuit
   */
  public CircuitLoad with(Device device) {
    List<Device> more = new ArrayList<>(devices);
    more.add(device);
    return new CircuitLoad(volts, ratedAmperes, continuousFactor, List.copyOf(more));
  }

  /**
   * Returns a circuit with one more device whose nameplate states its current instead of its power.
   *
   * <p>For example, 6.3 A at 230 V are 1449 W.
   *
   * @param name what it is called
   * @param amperes its nameplate current, in A at the voltage of the circuit, from 0 to 1000
   * @param isContinuous whether it is a continuous load by the user's code
   * @return the new circuit
   * @throws org.meltwright.units.ProblemException if the current cannot be
   */
  public CircuitLoad withAmperes(String name, double amperes, boolean isContinuous) {
    CHECK.between(amperes, 0, 1000, "current in A");
    return with(new Device(name, amperes * volts, isContinuous));
  }

  /**
   * Returns the devices whose power is not known.
   *
   * @return the devices, in the order added; empty if all are known
   */
  public List<Device> unknown() {
    return devices.stream().filter(d -> d.watts().isEmpty()).toList();
  }

  /**
   * Returns the sum of the nameplates that are known.
   *
   * @return the power, in W; the least there is if a device is unknown
   */
  public double nameplateWatts() {
    return watts(device -> true);
  }

  /**
   * Returns the current of the nameplates that are known, without the factor.
   *
   * @return the current, in A; the least there is if a device is unknown
   */
  public double nameplateAmperes() {
    return nameplateWatts() / volts;
  }

  private double watts(Predicate<Device> which) {
    return devices.stream().filter(which).mapToDouble(Device::knownWatts).sum();
  }

  /**
   * Returns what the circuit must be rated for: the other loads and the continuous ones times the
   * factor.
   *
   * @return the current, in A; the least it is if a device is unknown
   */
  public double requiredAmperes() {
    double continuous = watts(Device::isContinuous);
    return (nameplateWatts() + (continuousFactor - 1) * continuous) / volts;
  }

  /**
   * Returns the power that the rating holds.
   *
   * @return voltage times rating, in W
   */
  public double ratedWatts() {
    return volts * ratedAmperes;
  }

  /**
   * Returns the continuous power that the rating holds with the factor.
   *
   * <p>For example, 1440 W on 15 A at 120 V with a factor of 1.25.
   *
   * @return the power, in W
   */
  public double continuousWatts() {
    return ratedWatts() / continuousFactor;
  }

  /**
   * Returns what the load comes to.
   *
   * @return the outcome
   */
  public Outcome outcome() {
    if (Limit.exceeds(nameplateWatts(), ratedWatts())) {
      return Outcome.ABOVE_RATING;
    } else if (Limit.exceeds(requiredAmperes(), ratedAmperes)) {
      return Outcome.ABOVE_CONTINUOUS;
    }
    return unknown().isEmpty() ? Outcome.WITHIN_THE_NUMBERS_GIVEN : Outcome.NOT_KNOWN;
  }

  /**
   * Returns the devices that one plug does not carry.
   *
   * @param plugAmperes what a plug is made for, in A, for example 13
   * @return the devices whose nameplate exceeds it; those of {@link #unknown} are not among them
   */
  public List<Device> abovePlug(double plugAmperes) {
    double limit = volts * CHECK.between(plugAmperes, 0.1, 1000, "plug in A");
    return devices.stream().filter(d -> Limit.exceeds(d.knownWatts(), limit)).toList();
  }

  /**
   * Says what the load comes to, and whom to ask.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return two or three sentences
   */
  public String text(Locale locale) {
    return outcomeText(locale) + " " + advice(locale);
  }

  /**
   * Says what the load comes to, for a place where {@link #advice} stands once for several
   * circuits.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or two sentences
   */
  public String outcomeText(Locale locale) {
    return Messages.beside(CircuitLoad.class).text("circuit." + outcome(), locale);
  }

  /**
   * Says how nameplates are added up, and whom to ask: it belongs to every load.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return two sentences
   */
  public static String advice(Locale locale) {
    return Messages.beside(CircuitLoad.class).text("circuit.ask", locale);
  }

  /**
   * Returns how the load came about.
   *
   * @return inputs, formula, result and whom to ask
   */
  public Explanation explanation() {
    List<Bilingual> names =
        Explanation.lines(devices.stream().map(d -> Bilingual.of(d.name())).toList());
    Explanation.Builder text =
        ExposureWorking.builder("working.circuit", Map.of())
            .stated(ExposureWorking.VOLTAGE, volts)
            .stated(ExposureWorking.RATING, ratedAmperes)
            .stated(ExposureWorking.CONTINUOUS, continuousFactor);
    for (int i = 0; i < devices.size(); i++) {
      explain(devices.get(i), names.get(i), text);
    }
    if (!devices.isEmpty()) {
      text.step(ExposureWorking.CIRCUIT, requiredAmperes());
    }
    return text.caution(Bilingual.of(this::text)).build();
  }

  /**
   * What is not known is told as such and counts as nothing, so that the current is a least one.
   */
  private void explain(Device device, Bilingual name, Explanation.Builder text) {
    text.stated(ExposureWorking.POWER.of(name), device.knownWatts())
        .given(ExposureWorking.FACTOR.of(name), device.isContinuous() ? continuousFactor : 1);
    if (device.watts().isEmpty()) {
      text.conclusion("working.circuit.not-known", Map.of("name", name));
    }
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CircuitLoad that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(volts, ratedAmperes, continuousFactor, devices);
  }

  @Override
  public String toString() {
    return devices.size() + " devices on " + ratedAmperes + " A at " + volts + " V";
  }
}
