// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import static org.meltwright.core.thermal.heat.HeatSupply.CHECK;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.numeric.Roots;
import org.meltwright.units.TemperaturePoint;

/**
 * The heat that a kilogram of a mix takes up against its temperature.
 *
 * <p>Formula, for each substance over its melting range: h = cs x + (cl − cs) x²/(2w) + L x/w, with
 * x = T − Ts and w = Tl − Ts; then + cl (T − Tl). A mix is the sum by mass.
 *
 * <p>Symbols: h heat [J/kg], cs and cl specific heat of solid and melt [J/(kg K)], L heat of fusion
 * [J/kg], Ts and Tl solidus and liquidus [°C].
 *
 * <p>Valid without heat of mixing. For example, with cs 2000, cl 2400, L 180 000 and a range of
 * 40–65 °C, a kilogram takes 323 000 J from 20 to 85 °C.
 *
 * <p>The same in code: 40 kJ to 40 °C, 55 kJ and the heat of fusion to 65 °C, 48 kJ from there.
 *
 * <pre>{@code
 * EnthalpyCurve wax = EnthalpyCurve.of(new MeltingHeat(2000, 2400, 180_000, 40, 65));
 * wax.joulesPerKilogram(ofCelsius(20), ofCelsius(85)); // 323000 J/kg
 * wax.fusionJoulesPerKilogram(ofCelsius(20), ofCelsius(85)); // 180000 J/kg
 * wax.temperature(ofCelsius(20), 323_000).celsius(); // 85.0 °C
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class EnthalpyCurve {

  /** How far shares written with many digits may be from a whole. */
  private static final double SLACK = 1e-9;

  private final MeltingHeat[] substances;
  private final double[] shares;

  /**
   * Returns the curve of one substance.
   *
   * @param substance its heat figures
   * @return the curve
   */
  public static EnthalpyCurve of(MeltingHeat substance) {
    return new EnthalpyCurve(new MeltingHeat[] {substance}, new double[] {1});
  }

  /**
   * Returns the curve of a mix.
   *
   * @param substances the heat figures of each substance
   * @param massFractions the share of each by mass, in the same order; together 1
   * @return the curve
   * @throws org.meltwright.units.ProblemException if the two lists differ in length, a share is not
   *     from 0 to 1, or they do not make a whole
   */
  public static EnthalpyCurve of(List<MeltingHeat> substances, double... massFractions) {
    int count = substances.size();
    CHECK.between(massFractions.length, count, count, "number of mass fractions");
    for (double share : massFractions) {
      CHECK.between(share, 0, 1, "mass fraction");
    }
    double sum = DoubleStream.of(massFractions).sum();
    CHECK.between(sum, 1 - SLACK, 1 + SLACK, "sum of mass fractions");
    return new EnthalpyCurve(substances.toArray(MeltingHeat[]::new), massFractions.clone());
  }

  private EnthalpyCurve(MeltingHeat[] substances, double[] shares) {
    this.substances = substances;
    this.shares = shares;
  }

  /**
   * Returns the heat that warms the solid, between two temperatures.
   *
   * @param from the first temperature
   * @param to the last temperature
   * @return the heat, in J/kg; negative when cooling
   */
  public double solidJoulesPerKilogram(TemperaturePoint from, TemperaturePoint to) {
    return sum((m, t) -> m.solidHeat(t), from.celsius(), to.celsius());
  }

  /**
   * Returns the heat that melts, between two temperatures.
   *
   * @param from the first temperature
   * @param to the last temperature
   * @return the heat, in J/kg; what melts at one temperature counts as molten at it
   */
  public double fusionJoulesPerKilogram(TemperaturePoint from, TemperaturePoint to) {
    return sum(MeltingHeat::fusionHeat, from.celsius(), to.celsius());
  }

  /**
   * Returns the heat that warms the melt, between two temperatures.
   *
   * @param from the first temperature
   * @param to the last temperature
   * @return the heat, in J/kg; negative when cooling
   */
  public double meltJoulesPerKilogram(TemperaturePoint from, TemperaturePoint to) {
    return sum(MeltingHeat::meltHeat, from.celsius(), to.celsius());
  }

  /**
   * Returns all the heat between two temperatures.
   *
   * @param from the first temperature
   * @param to the last temperature
   * @return the heat, in J/kg; negative when cooling
   */
  public double joulesPerKilogram(TemperaturePoint from, TemperaturePoint to) {
    return total(to.celsius()) - total(from.celsius());
  }

  /**
   * Returns the temperature that a heat leads to.
   *
   * @param from the first temperature
   * @param joulesPerKilogram the heat taken up since, in J/kg; negative for heat given off
   * @return the temperature, up to 2000 °C
   * @throws org.meltwright.units.ProblemException if the heat leads below absolute zero or above
   *     2000 °C
   */
  public TemperaturePoint temperature(TemperaturePoint from, double joulesPerKilogram) {
    double start = total(from.celsius());
    double low = -273.15;
    double high = 2000;
    CHECK.between(joulesPerKilogram, total(low) - start, total(high) - start, "heat in J/kg");
    return TemperaturePoint.ofCelsius(
        Roots.bisect(t -> total(t) - start - joulesPerKilogram, low, high));
  }

  /**
   * Returns how much of what melts is molten.
   *
   * @param temperature the temperature
   * @return the molten share by mass of what melts, from 0 to 1; 0 if nothing melts
   */
  public double liquidFraction(TemperaturePoint temperature) {
    double molten = 0;
    double all = 0;
    for (int i = 0; i < shares.length; i++) {
      if (substances[i].melts()) {
        molten += shares[i] * substances[i].liquidFraction(temperature.celsius());
        all += shares[i];
      }
    }
    return all == 0 ? 0 : molten / all;
  }

  /** Returns where the curve bends between two temperatures, both ends included, in order. */
  double[] bends(double from, double to) {
    return DoubleStream.concat(
            DoubleStream.of(from, to),
            Arrays.stream(substances)
                .filter(MeltingHeat::melts)
                .flatMapToDouble(m -> DoubleStream.of(m.solidusCelsius(), m.liquidusCelsius()))
                .filter(t -> t > from && t < to))
        .sorted()
        .distinct()
        .toArray();
  }

  /** Returns the heat per kelvin at a temperature, in the region that a probe lies in. */
  double capacity(double celsius, double probe) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += shares[i] * substances[i].capacity(celsius, probe);
    }
    return sum;
  }

  /** Returns the heat of fusion of what melts at just this temperature, in J/kg. */
  double latentAt(double celsius) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      MeltingHeat m = substances[i];
      if (m.solidusCelsius() == celsius && m.liquidusCelsius() == celsius) {
        sum += shares[i] * m.heatOfFusionJoulesPerKilogram();
      }
    }
    return sum;
  }

  /** Returns where the first substance begins to melt; infinite if nothing melts. */
  double solidus() {
    return Arrays.stream(substances)
        .filter(MeltingHeat::melts)
        .mapToDouble(MeltingHeat::solidusCelsius)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Returns where the last substance is molten; infinite if nothing melts. */
  double liquidus() {
    return Arrays.stream(substances)
        .filter(MeltingHeat::melts)
        .mapToDouble(MeltingHeat::liquidusCelsius)
        .max()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Tells whether a temperature lies above every melting range; true if nothing melts. */
  boolean isMoltenAbove(double celsius) {
    return Double.isInfinite(liquidus()) || celsius > liquidus();
  }

  private double total(double celsius) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      MeltingHeat m = substances[i];
      sum += shares[i] * (m.solidHeat(celsius) + m.fusionHeat(celsius) + m.meltHeat(celsius));
    }
    return sum;
  }

  private interface Part {
    double at(MeltingHeat substance, double celsius);
  }

  private double sum(Part part, double from, double to) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += shares[i] * (part.at(substances[i], to) - part.at(substances[i], from));
    }
    return sum;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof EnthalpyCurve that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(List.of(substances), DoubleStream.of(shares).boxed().toList());
  }

  @Override
  public String toString() {
    return "enthalpy of " + Arrays.toString(substances);
  }
}
