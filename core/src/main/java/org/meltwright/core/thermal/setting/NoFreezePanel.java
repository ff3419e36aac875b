// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.numeric.Texts;
import org.meltwright.units.Limit;
import org.meltwright.units.Messages;
import org.meltwright.units.TemperaturePoint;

/**
 * The temperature of a panel at which a melt forms no skin on contact.
 *
 * <p>Formula: Tp = Tm − (e of the melt/e of the panel)(T − Tm): where two half spaces meet at the
 * melting point, as in the exact solution where the crust stops growing.
 *
 * <p>Beyond a cap no temperature is given, only that it lies above: a panel that hot burns the
 * hand.
 *
 * <p>Melt of 85 °C that freezes at 63 °C, and no panel above 55 °C: on glass 63 − 593/1449 × 22 °C
 * will do, metal would have to be hotter than that.
 *
 * <pre>{@code
 * MeltSubstance wax =
 *     new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63));
 * TemperaturePoint hot = ofCelsius(85);
 * TemperaturePoint cap = ofCelsius(55);
 * NoFreezePanel glass = NoFreezePanel.of(wax, hot, PanelKind.GLASS.substance(), cap);
 * glass.text(Locale.ENGLISH); // 54.0 °C
 * NoFreezePanel metal = NoFreezePanel.of(wax, hot, PanelKind.METAL.substance(), cap);
 * metal.text(Locale.ENGLISH); // above 55.0 °C
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class NoFreezePanel {

  private final double ruleCelsius;
  private final TemperaturePoint cap;

  /**
   * Returns the temperature for a melt on a panel.
   *
   * @param melt the figures of the melt; its liquidus is the melting point here
   * @param temperature the temperature of the melt on contact
   * @param panel the figures of what it touches
   * @param cap the highest temperature that is of use: the warmest panel that you would have
   * @return the temperature, or that it lies above the cap
   */
  public static NoFreezePanel of(
      MeltSubstance melt, TemperaturePoint temperature, Substance panel, TemperaturePoint cap) {
    double melting = melt.heat().liquidusCelsius();
    double ratio = melt.liquid().effusivity() / panel.effusivity();
    double lead = temperature.celsius() - melting;
    return new NoFreezePanel(lead < 0 ? Double.POSITIVE_INFINITY : melting - ratio * lead, cap);
  }

  private NoFreezePanel(double ruleCelsius, TemperaturePoint cap) {
    this.ruleCelsius = ruleCelsius;
    this.cap = cap;
  }

  /** {@return the temperature; empty if it lies above the cap, or if no panel will do} */
  public Optional<TemperaturePoint> temperature() {
    return Limit.exceeds(ruleCelsius, cap.celsius())
        ? Optional.empty()
        : Optional.of(TemperaturePoint.ofCelsius(Math.max(-273.15, ruleCelsius)));
  }

  /** Returns what the rule gives, whatever the cap, in °C; infinite for a melt below its range. */
  double ruleCelsius() {
    return ruleCelsius;
  }

  /**
   * Returns the caution that belongs to every warmed panel.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the caution
   */
  public String touchCaution(Locale locale) {
    return Messages.beside(NoFreezePanel.class).text("no-freeze.touch", locale);
  }

  /**
   * Returns the answer on one line.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the temperature, that it lies above the cap, or that no panel will do since the melt
   *     freezes by itself
   */
  public String text(Locale locale) {
    return temperature().map(t -> Texts.celsius(t, locale)).orElseGet(() -> without(locale));
  }

  private String without(Locale locale) {
    String key = Double.isInfinite(ruleCelsius) ? "no-freeze.on-none" : "no-freeze.above";
    return Messages.beside(NoFreezePanel.class)
        .text(key, locale, Map.of("cap", Texts.celsius(cap, locale)));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof NoFreezePanel that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(ruleCelsius, cap);
  }

  @Override
  public String toString() {
    return "panel at " + ruleCelsius + " °C, at most " + cap;
  }
}
