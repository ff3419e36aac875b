// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.meltwright.core.thermal.heat.EnthalpyCurve;
import org.meltwright.core.thermal.heat.HeatSupply;
import org.meltwright.core.thermal.heat.HeatUpTime;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.core.thermal.melting.GlassTransition;
import org.meltwright.core.thermal.melting.IdealSolubility;
import org.meltwright.core.thermal.settling.Settling;
import org.meltwright.core.thermal.settling.SuspensionViscosity;
import org.meltwright.core.thermal.settling.ViscosityCurve;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Holds the formulas against cases whose inputs and answers others published. */
class PublishedCasesTest {

  /** The named numbers of a case. */
  private record Given(Map<String, Double> values) {

    static Given parse(String inputs) {
      return new Given(
          Arrays.stream(inputs.split(";"))
              .map(pair -> pair.split("="))
              .collect(Collectors.toMap(p -> p[0].strip(), p -> Double.valueOf(p[1]))));
    }

    double of(String name) {
      Double value = values.get(name);
      assertThat(value).as("input %s of %s", name, values).isNotNull();
      return value;
    }

    TemperaturePoint point(String name) {
      return TemperaturePoint.ofCelsius(of(name));
    }

    VolumeFraction share(String name) {
      return VolumeFraction.of(of(name));
    }

    MeltingHeat heat() {
      return new MeltingHeat(of("cs"), of("cl"), of("L"), of("Ts"), of("Tl"));
    }

    Substance substance() {
      return new Substance(of("k"), of("rho"), of("c"));
    }

    MeltSubstance melt() {
      return new MeltSubstance(
          of("ks"),
          of("kl"),
          of("rho"),
          new MeltingHeat(of("cs"), of("cl"), of("L"), of("Tm"), of("Tm")));
    }

    MeltSubstance plankMelt() {
      return new MeltSubstance(
          of("k"),
          of("k"),
          of("rho"),
          new MeltingHeat(2000, of("cl"), of("L"), of("Tm"), of("Tm")));
    }

    /** Gravity is a constant of ours; a case with another one scales the excess density. */
    double excess() {
      return of("drho") * values.getOrDefault("g", Settling.GRAVITY) / Settling.GRAVITY;
    }

    double stokes() {
      return Settling.stokesVelocity(of("d"), excess(), of("mu"));
    }
  }

  /** The melt of the cases of a film on a panel. */
  private static final MeltSubstance WAX =
      new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63));

  private static final Map<String, ToDoubleFunction<Given>> FORMULAS =
      Map.ofEntries(
          entry(
              "total-heat",
              g ->
                  g.of("m")
                      * EnthalpyCurve.of(g.heat()).joulesPerKilogram(g.point("T0"), g.point("T1"))),
          entry(
              "temperature-of-heat",
              g -> EnthalpyCurve.of(g.heat()).temperature(g.point("T0"), g.of("h")).celsius()),
          entry("sensible-time", g -> sensible(g, power(g))),
          entry("plateau-time", g -> plateau(g, power(g))),
          entry("resting-point", g -> power(g).restingPoint().orElseThrow().celsius()),
          entry("plate-sensible-time", g -> sensible(g, plate(g))),
          entry("plate-plateau-time", g -> plateau(g, plate(g))),
          entry(
              "lumped-temperature",
              g ->
                  g.of("Ta")
                      + (g.of("Ti") - g.of("Ta"))
                          * Conduction.lumped(g.of("t"), timeConstant(g), ballBiot(g))),
          entry(
              "lumped-time",
              g ->
                  Conduction.lumpedSeconds(
                      (g.of("T") - g.of("Ta")) / (g.of("Ti") - g.of("Ta")),
                      timeConstant(g),
                      ballBiot(g))),
          entry(
              "lumped-log-time",
              g ->
                  Conduction.lumpedSeconds(
                      (g.of("T2") - g.of("Ta")) / (g.of("T1") - g.of("Ta")), g.of("tau"), 0)),
          entry("slab-centre", g -> Conduction.slabCentre(g.of("Bi"), g.of("Fo"))),
          entry(
              "half-space",
              g ->
                  g.of("Tw")
                      + (g.of("Ti") - g.of("Tw"))
                          * Conduction.halfSpace(g.of("x"), g.of("alpha"), g.of("t"))),
          entry(
              "half-space-in-air",
              g ->
                  g.of("Ta")
                      + (g.of("Ti") - g.of("Ta"))
                          * Conduction.halfSpaceInAir(
                              g.of("x"), g.of("alpha"), g.of("t"), g.of("h") / g.of("k"))),
          entry("one-phase-lambda", g -> ExactFreezing.onePhaseLambda(g.of("St"))),
          entry("supercooled-lambda", g -> ExactFreezing.supercooledLambda(g.of("St"))),
          entry(
              "front",
              g ->
                  new ExactFreezing(
                          ExactFreezing.onePhaseLambda(g.of("St")), 0, g.substance().diffusivity())
                      .crustMetres(g.of("t"))),
          entry("wall-lambda", g -> wall(g).lambda()),
          entry("wall-front", g -> wall(g).crustMetres(g.of("t"))),
          entry("plank-slab", g -> plank(g, Plank.Shape.SLAB)),
          entry("plank-cylinder", g -> plank(g, Plank.Shape.CYLINDER)),
          entry("plank-sphere", g -> plank(g, Plank.Shape.SPHERE)),
          entry(
              "plank-slab-poured",
              g ->
                  Plank.seconds(
                      g.plankMelt(),
                      Plank.Shape.SLAB,
                      g.of("a"),
                      g.of("h"),
                      g.of("Ta"),
                      g.of("Ti"))),
          entry(
              "plank-crust",
              g -> Plank.crustMetres(g.plankMelt(), g.of("h"), g.of("Ta"), g.of("t"))),
          entry("effusivity", g -> g.substance().effusivity()),
          entry(
              "contact-temperature",
              g -> WAX.liquid().contactCelsius(g.of("T"), g.substance(), g.of("Tp"))),
          entry(
              "no-freeze-panel",
              g ->
                  NoFreezePanel.of(
                          WAX, g.point("T"), g.substance(), TemperaturePoint.ofCelsius(100))
                      .ruleCelsius()),
          entry("panel-lambda", g -> panel(g).lambda()),
          entry("panel-interface", g -> panel(g).interfaceCelsius()),
          entry("panel-crust", g -> panel(g).crustMetres(g.of("t"))),
          entry("stokes", Given::stokes),
          entry("stokes-diameter", g -> Settling.stokesDiameter(g.of("v"), g.excess(), g.of("mu"))),
          entry(
              "terminal",
              g -> Settling.terminalVelocity(g.of("d"), g.excess(), g.of("rhof"), g.of("mu"))),
          entry("hindrance", g -> Settling.hindrance(g.share("phi"), g.of("n"))),
          entry("hindered", g -> g.stokes() * Settling.hindrance(g.share("phi"), g.of("n"))),
          entry(
              "viscosity",
              g ->
                  ViscosityCurve.of(
                          g.of("A"), g.of("B"), g.of("T0"), TemperaturePoint.ofCelsius(20))
                      .pascalSeconds(g.point("T"))),
          entry("andrade-slope", g -> andrade(g).slopeKelvin()),
          entry("andrade", g -> andrade(g).pascalSeconds(g.point("T"))),
          entry("dilute-factor", g -> SuspensionViscosity.dilute(g.share("phi"))),
          entry(
              "concentrated-factor",
              g -> SuspensionViscosity.concentrated(g.share("phi"), g.share("phim"), g.of("eta"))),
          entry("quiet-time", g -> Settling.quietSeconds(g.of("x"), g.of("delta"), g.stokes())),
          entry("mixed-time", g -> Settling.convectingSeconds(g.of("x"), g.of("h"), g.of("v"))),
          entry(
              "peclet",
              g -> Settling.peclet(g.of("d"), g.stokes(), g.of("h"), g.of("mu"), g.point("T"))),
          entry(
              "suspended-diameter",
              g -> Settling.suspendedDiameter(g.of("drho"), g.of("h"), g.point("T"))),
          entry("diffusing-diameter", g -> Settling.diffusingDiameter(g.of("drho"), g.point("T"))),
          entry(
              "mole-fraction", g -> IdealSolubility.moleFraction(g.of("H"), g.of("Tm"), g.of("T"))),
          entry("eutectic", PublishedCasesTest::eutectic),
          entry(
              "eutectic-fraction",
              g -> IdealSolubility.moleFraction(g.of("H1"), g.of("T1"), eutectic(g))),
          entry("liquidus-by-mass", PublishedCasesTest::liquidusByMass),
          entry("fox", g -> GlassTransition.foxKelvin(g.of("w"), g.of("T1"), g.of("T2"))),
          entry(
              "gordon-taylor",
              g ->
                  GlassTransition.gordonTaylorKelvin(
                      g.of("w"), g.of("T1"), g.of("T2"), g.of("k"))));

  private static HeatSupply power(Given g) {
    return HeatSupply.constantPower(g.of("P")).withLoss(g.of("UA"), g.point("Ta"));
  }

  private static HeatSupply plate(Given g) {
    return HeatSupply.thermostatPlate(g.point("Tp"), g.of("UA"));
  }

  private static double sensible(Given g, HeatSupply supply) {
    return HeatUpTime.of(
            EnthalpyCurve.of(MeltingHeat.withoutMelting(g.of("C"))),
            1,
            0,
            g.point("T1"),
            g.point("T2"),
            supply)
        .seconds();
  }

  private static double plateau(Given g, HeatSupply supply) {
    double melting = g.of("Tm");
    HeatUpTime time =
        HeatUpTime.of(
            EnthalpyCurve.of(new MeltingHeat(2000, 2000, g.of("mL"), melting, melting)),
            1,
            0,
            TemperaturePoint.ofCelsius(melting - 1),
            TemperaturePoint.ofCelsius(melting),
            supply);
    return ((HeatUpTime.Reached) time).meltingSeconds();
  }

  private static double timeConstant(Given g) {
    return g.of("rho") * g.of("c") * g.of("r") / 3 / g.of("h");
  }

  private static double ballBiot(Given g) {
    return Conduction.biot(g.of("h"), g.of("r") / 3, g.of("k"));
  }

  private static ExactFreezing wall(Given g) {
    return ExactFreezing.onWall(g.melt(), g.of("Ti"), g.of("Tw"));
  }

  private static ExactFreezing panel(Given g) {
    return ExactFreezing.onPanel(WAX, g.of("T"), g.substance(), g.of("Tp"));
  }

  private static double plank(Given g, Plank.Shape shape) {
    return Plank.seconds(g.plankMelt(), shape, g.of("a"), g.of("h"), g.of("Ta"));
  }

  private static ViscosityCurve andrade(Given g) {
    return ViscosityCurve.through(
        g.point("T1"), g.of("mu1"), g.point("T2"), g.of("mu2"), g.point("T1"));
  }

  private static double eutectic(Given g) {
    return IdealSolubility.eutecticKelvin(g.of("H1"), g.of("T1"), g.of("H2"), g.of("T2"));
  }

  private static double liquidusByMass(Given g) {
    double first = g.of("w") / g.of("M1");
    double x = first / (first + (1 - g.of("w")) / g.of("M2"));
    return IdealSolubility.liquidusKelvin(x, g.of("L") * g.of("M1"), g.of("Tm")) - 273.15;
  }

  @ParameterizedTest(name = "{0}: {1} ({2})")
  @CsvFileSource(resources = "published-cases.csv", useHeadersInDisplayName = true)
  void published_case_is_met(
      String topic,
      String formula,
      String inputs,
      String expected,
      String tolerance,
      String kind,
      String source) {
    assertThat(topic).isIn("heat", "cooling", "stroke", "settling", "melting");
    ToDoubleFunction<Given> function = FORMULAS.get(formula);
    assertThat(function).as(formula).isNotNull();
    assertThat(source).isNotBlank();
    double value = Double.parseDouble(expected);
    double slack = Double.parseDouble(tolerance) * (kind.equals("rel") ? Math.abs(value) : 1);
    assertThat(function.applyAsDouble(Given.parse(inputs)))
        .as("%s with %s, source: %s", formula, inputs, source)
        .isCloseTo(value, within(slack));
  }
}
