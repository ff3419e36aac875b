// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import static org.meltwright.core.thermal.heat.HeatSupply.CHECK;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.Drivers.Model;
import org.meltwright.core.explain.Drivers.Values;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Estimate;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;

/**
 * The heat that a mix and its vessel take up between two temperatures, as an estimate in four
 * parts: warming the solid, melting, warming the melt, warming the vessel.
 *
 * <p>Specific heats and heats of fusion are the materials' own ranges, or stated assumptions; the
 * melting range is that of the preferred figure. More of any input means more heat.
 *
 * <p>A kilogram of beeswax, and a steel pan of 800 g whose 490 J/(kg K) make 0.8 × 490 × 65 J:
 *
 * <pre>{@code
 * Mixture wax = Mixture.of(MaterialCatalogue.standard().require("beeswax"), kilograms(1));
 * Vessel pan =
 *     new Vessel("pan", VesselMaterial.STEEL, Lining.NONE, Vessel.Bottom.FLAT, 0.002, 0.8);
 * HeatDemand demand =
 *     HeatDemand.of(wax, ofCelsius(20), ofCelsius(85), HeatAssumptions.NONE).withVessel(pan);
 * demand.fusionHeat().centralSi(); // 172000 J
 * demand.vesselHeat().centralSi(); // 25480 J
 * demand.totalHeat().centralSi(); // 341530 J
 * demand.energyUse(0.4, 0.6).centralKilowattHours(); // 0.19 kWh
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class HeatDemand {

  private static final Symbol HEAT = symbol("heat", "J");
  private static final Symbol TIME = symbol("time to heat up", "s");
  private static final EstimateInput SUPPLY =
      EstimateInput.of(
          symbol("heat supply, from weakest to strongest", ""), 0, 1, Direction.LOWERS);

  private final Mixture mixture;
  private final TemperaturePoint from;
  private final TemperaturePoint to;
  private final HeatFigures figures;
  private final @Nullable EstimateInput vessel;
  private final List<Source> vesselSources;

  /**
   * Returns the heat that a mix takes up.
   *
   * @param mixture what is heated, and how much of it
   * @param from the first temperature
   * @param to the last temperature, not below the first
   * @param assumptions what to assume where a material states no figure
   * @return the demand, without a vessel
   * @throws ProblemException if a figure is missing and nothing is assumed for it, or the
   *     temperatures fall
   */
  public static HeatDemand of(
      Mixture mixture, TemperaturePoint from, TemperaturePoint to, HeatAssumptions assumptions) {
    requireOrder(from, to);
    return new HeatDemand(
        mixture, from, to, HeatFigures.of(mixture.composition(), assumptions), null, List.of());
  }

  /**
   * Returns the heat that a mix takes up, if its figures are known or assumed.
   *
   * @param mixture what is heated, and how much of it
   * @param from the first temperature
   * @param to the last temperature, not below the first
   * @param assumptions what to assume where a material states no figure
   * @return the demand, without a vessel; empty if a figure is missing and nothing is assumed for
   *     it, such as where a wax melts
   * @throws ProblemException if the temperatures fall
   */
  public static Optional<HeatDemand> find(
      Mixture mixture, TemperaturePoint from, TemperaturePoint to, HeatAssumptions assumptions) {
    requireOrder(from, to);
    return HeatFigures.find(mixture.composition(), assumptions)
        .map(figures -> new HeatDemand(mixture, from, to, figures, null, List.of()));
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ThermalProblem.class, name, unit);
  }

  private static void requireOrder(TemperaturePoint from, TemperaturePoint to) {
    if (to.isBelow(from)) {
      throw ThermalProblem.outOfOrder("from ≤ to", from.celsius(), to.celsius());
    }
  }

  private HeatDemand(
      Mixture mixture,
      TemperaturePoint from,
      TemperaturePoint to,
      HeatFigures figures,
      @Nullable EstimateInput vessel,
      List<Source> vesselSources) {
    this.mixture = mixture;
    this.from = from;
    this.to = to;
    this.figures = figures;
    this.vessel = vessel;
    this.vesselSources = vesselSources;
  }

  /**
   * Returns the demand with a vessel that is warmed too.
   *
   * @param heated the vessel; its material gives the specific heat
   * @return the new demand
   */
  public HeatDemand withVessel(Vessel heated) {
    return new HeatDemand(
        mixture, from, to, figures, VesselHeat.capacity(heated), List.of(VesselHeat.SOURCE));
  }

  /**
   * Returns the demand with a vessel whose heat capacity is known.
   *
   * @param joulesPerKelvin its heat capacity, in J/K, not negative
   * @return the new demand
   * @throws ProblemException if the capacity cannot be
   */
  public HeatDemand withVesselCapacity(double joulesPerKelvin) {
    CHECK.between(joulesPerKelvin, 0, 1e9, "heat capacity of the vessel in J/K");
    return new HeatDemand(
        mixture,
        from,
        to,
        figures,
        VesselHeat.capacity(joulesPerKelvin, joulesPerKelvin),
        List.of(Source.USER));
  }

  /**
   * Returns the heat that warms what is solid.
   *
   * @return the heat
   */
  public Estimate<Energy> solidHeat() {
    return energy(this::solid);
  }

  /**
   * Returns what the heat that warms what is solid hangs on.
   *
   * @return the drivers: specific heats and heats of fusion
   */
  public Drivers solidHeatDrivers() {
    return Drivers.of(HEAT, inputs(), this::solid);
  }

  private double solid(Values values) {
    return mixture.massKilograms() * figures.curve(values).solidJoulesPerKilogram(from, to);
  }

  /**
   * Returns the heat that melts.
   *
   * @return the heat
   */
  public Estimate<Energy> fusionHeat() {
    return energy(this::fusion);
  }

  /**
   * Returns what the heat that melts hangs on.
   *
   * @return the drivers: heats of fusion
   */
  public Drivers fusionHeatDrivers() {
    return Drivers.of(HEAT, inputs(), this::fusion);
  }

  private double fusion(Values values) {
    return mixture.massKilograms() * figures.curve(values).fusionJoulesPerKilogram(from, to);
  }

  /**
   * Returns the heat that warms the melt.
   *
   * @return the heat
   */
  public Estimate<Energy> meltHeat() {
    return energy(this::melt);
  }

  /**
   * Returns what the heat that warms the melt hangs on.
   *
   * @return the drivers: specific heats
   */
  public Drivers meltHeatDrivers() {
    return Drivers.of(HEAT, inputs(), this::melt);
  }

  private double melt(Values values) {
    return mixture.massKilograms() * figures.curve(values).meltJoulesPerKilogram(from, to);
  }

  /**
   * Returns the heat that warms the vessel.
   *
   * @return the heat; zero without a vessel
   */
  public Estimate<Energy> vesselHeat() {
    return energy(this::ofVessel);
  }

  /**
   * Returns what the heat that warms the vessel hangs on.
   *
   * @return the drivers: the heat capacity of the vessel
   */
  public Drivers vesselHeatDrivers() {
    return Drivers.of(HEAT, inputs(), this::ofVessel);
  }

  private double ofVessel(Values values) {
    return vesselCapacity(values) * to.minus(from).kelvin();
  }

  /**
   * Returns all the heat.
   *
   * @return the sum of the four parts
   */
  public Estimate<Energy> totalHeat() {
    return energy(this::total);
  }

  /**
   * Returns what all the heat hangs on.
   *
   * @return the drivers: specific heats, heats of fusion and the vessel
   */
  public Drivers totalHeatDrivers() {
    return Drivers.of(HEAT, inputs(), this::total);
  }

  private double total(Values values) {
    return mixture.massKilograms() * figures.curve(values).joulesPerKilogram(from, to)
        + ofVessel(values);
  }

  private static Estimate<Energy> energy(Model model) {
    return new Estimate<>(
        QuantityKind.ENERGY,
        model.of(EstimateInput::forLow),
        model.of(EstimateInput::central),
        model.of(EstimateInput::forHigh));
  }

  /**
   * Returns what is drawn from the meter.
   *
   * @param lowEfficiency the lowest share of the power that reaches the pot, above 0
   * @param highEfficiency the highest share, up to 1
   * @return the energy, least with the high efficiency
   * @throws ProblemException if a share cannot be
   */
  public EnergyUse energyUse(double lowEfficiency, double highEfficiency) {
    return EnergyUse.ofHeat(inputs(), this::total, lowEfficiency, highEfficiency);
  }

  /**
   * Returns how long it takes on a supply known between two ends.
   *
   * @param weak the weakest supply
   * @param central the supply at the middle
   * @param strong the strongest supply
   * @return the time; infinite where it never gets there
   */
  public Estimate<Time> timeOn(HeatSupply weak, HeatSupply central, HeatSupply strong) {
    return new Estimate<>(
        QuantityKind.TIME,
        time(EstimateInput::forLow, strong).seconds(),
        time(EstimateInput::central, central).seconds(),
        time(EstimateInput::forHigh, weak).seconds());
  }

  /**
   * Returns what the time on a supply known between two ends hangs on.
   *
   * @param weak the weakest supply
   * @param central the supply at the middle
   * @param strong the strongest supply
   * @return the drivers: specific heats, heats of fusion, the vessel, and the supply, from 0 for
   *     the weakest to 1 for the strongest
   */
  public Drivers timeOnDrivers(HeatSupply weak, HeatSupply central, HeatSupply strong) {
    List<EstimateInput> all = new ArrayList<>(inputs());
    all.add(SUPPLY);
    return Drivers.of(
        TIME,
        all,
        values ->
            time(values, HeatSupply.between(weak, central, strong, values.of(SUPPLY))).seconds());
  }

  /**
   * Returns how long it takes with every figure at the middle of its range, stage by stage.
   *
   * @param supply the supply
   * @return the time, or that it is never reached and why
   */
  public HeatUpTime centralTimeOn(HeatSupply supply) {
    return time(EstimateInput::central, supply);
  }

  /**
   * Returns the named inputs with their ranges.
   *
   * @return specific heats and heats of fusion, and the vessel
   */
  public List<EstimateInput> inputs() {
    List<EstimateInput> inputs = new ArrayList<>(figures.inputs());
    Optional.ofNullable(vessel).ifPresent(inputs::add);
    return List.copyOf(inputs);
  }

  /**
   * Returns what was assumed.
   *
   * @return material and property of each assumed figure
   */
  public List<String> assumed() {
    return figures.assumed();
  }

  /**
   * Returns what the figures rest on, those assumed too.
   *
   * @return the sources of the specific heats and heats of fusion, and of the vessel's
   */
  public List<Source> sources() {
    List<Source> sources = new ArrayList<>(figures.sources());
    sources.addAll(vesselSources);
    return List.copyOf(sources);
  }

  /**
   * Explains the demand.
   *
   * @return inputs, parts, assumptions and sources
   */
  public Explanation explanation() {
    Explanation.Builder text =
        HeatWorking.builder(
                "working.heat", Map.of("from", Bilingual.of(from), "to", Bilingual.of(to)))
            .stated(HeatWorking.MASS, mixture.massKilograms())
            .inputs(inputs())
            .method(HeatWorking.curve(this));
    HeatWorking.total(totalHeat(), text);
    assumed().forEach(a -> text.caution("working.assumed", Map.of("what", Bilingual.of(a))));
    sources().forEach(text::source);
    return text.build();
  }

  private double vesselCapacity(Values values) {
    return vessel == null ? 0 : values.of(vessel);
  }

  private HeatUpTime time(Values values, HeatSupply supply) {
    return HeatUpTime.of(
        figures.curve(values), mixture.massKilograms(), vesselCapacity(values), from, to, supply);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatDemand that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(mixture, from, to, figures.assumptions(), vessel, vesselSources);
  }

  @Override
  public String toString() {
    return "heat for " + mixture + " from " + from + " to " + to;
  }
}
