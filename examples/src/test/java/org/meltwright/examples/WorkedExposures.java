// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.meltwright.safety.exposure.Agent;
import org.meltwright.safety.exposure.BurnThresholds;
import org.meltwright.safety.exposure.CircuitLoad;
import org.meltwright.safety.exposure.CombinedExposure;
import org.meltwright.safety.exposure.DilutionVentilation;
import org.meltwright.safety.exposure.ExposureLimit;
import org.meltwright.safety.exposure.RoomAir;
import org.meltwright.safety.exposure.SkinDamage;
import org.meltwright.safety.exposure.WaxContact;
import org.meltwright.safety.hazard.HazardClass;
import org.meltwright.safety.hazard.HazardMixture;
import org.meltwright.safety.hazard.HazardMixtureBuilder;
import org.meltwright.safety.hazard.HazardReview;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.safety.hazard.SubstanceHazards;
import org.meltwright.safety.hazard.UptakeForm;
import org.meltwright.safety.hazard.Working;
import org.meltwright.units.TemperaturePoint;

/** What the names on the pages of exposure and hazard formulas compute. */
final class WorkedExposures {

  static final Map<String, ToDoubleFunction<double[]>> ALL = all();

  private static final LocalDate DAY = LocalDate.of(2026, 9, 1);
  private static final RuleSet RULES = RuleSet.clpOn(DAY);

  private WorkedExposures() {}

  private static Map<String, ToDoubleFunction<double[]>> all() {
    Map<String, ToDoubleFunction<double[]>> all = new LinkedHashMap<>();
    all.put("airFlow", x -> RoomAir.flowFor(x[0], x[1]));
    all.put("minutesToShare", x -> room(x).minutesToShareOfStart(x[3]));
    all.put("buildUp", x -> room(x).volumeFractionAfter(x[3], x[4]) * 1e6);
    all.put("minutesToPpm", x -> room(x).minutesToVolumeFraction(x[3], x[4] * 1e-6).orElseThrow());
    all.put("milligrams", x -> Agent.vapour("v", x[0]).milligramsPerCubicMetre(x[1]));
    all.put("vapourLitres", x -> Agent.vapour("v", x[0]).vapourLitres(x[1]));
    all.put("dilutionFlow", WorkedExposures::dilutionFlow);
    all.put("dilutionFlowAt", x -> dilution(x).flowCubicMetresPerHour(celsius(x[4])));
    all.put("sumOfShares", WorkedExposures::sumOfShares);
    all.put("eightHourAverage", x -> CombinedExposure.eightHourAverage(every(x, 0), every(x, 1)));
    all.put("mixtureLimit", x -> CombinedExposure.limitOfVapourMixture(every(x, 0), every(x, 1)));
    all.put("amperes", WorkedExposures::amperes);
    all.put(
        "watts", x -> CircuitLoad.of(x[0], 16, 1).withAmperes("d", x[1], true).nameplateWatts());
    all.put("metalBurnsFrom", WorkedExposures::metalBurnsFrom);
    all.put("skinSeconds", x -> seconds(x[0]));
    all.put("contactSeconds", WorkedExposures::contactSeconds);
    all.put("waxMeetsSkin", x -> WaxContact.lowerBoundWithFreezing(celsius(x[0])).celsius());
    all.put("skinIrritants", x -> working(irritants(x), HazardClass.SKIN, "2").value());
    all.put("acuteEstimate", x -> working(poison(x), HazardClass.ACUTE_ORAL, "oral").value());
    return all;
  }

  private static TemperaturePoint celsius(double value) {
    return TemperaturePoint.ofCelsius(value);
  }

  private static RoomAir room(double... x) {
    return RoomAir.ofAirChanges(x[0], x[1], x[2]);
  }

  private static ExposureLimit limit(double molarMass, double ppm) {
    return new ExposureLimit(
        Agent.vapour("v", molarMass),
        ppm,
        ExposureLimit.Unit.PPM,
        ExposureLimit.Averaging.EIGHT_HOURS,
        "invented",
        DAY);
  }

  /** Molar mass in g/mol, limit in ppm, evaporation in g/h, mixing factor. */
  private static double dilutionFlow(double... x) {
    return dilution(x).flowCubicMetresPerHour();
  }

  private static DilutionVentilation dilution(double... x) {
    return new DilutionVentilation(limit(x[0], x[1]), x[2], x[3]);
  }

  private static double sumOfShares(double... x) {
    List<CombinedExposure.Part> parts = new ArrayList<>();
    for (int i = 0; i < x.length; i += 2) {
      parts.add(new CombinedExposure.Part(limit(100, x[i + 1]), x[i]));
    }
    return CombinedExposure.of(parts).sumOfShares();
  }

  /** Every second argument, from a first one on. */
  private static List<Double> every(double[] x, int first) {
    List<Double> values = new ArrayList<>();
    for (int i = first; i < x.length; i += 2) {
      values.add(x[i]);
    }
    return values;
  }

  /** Volts, amperes, factor, then continuous loads in W. */
  private static double amperes(double... x) {
    CircuitLoad load = CircuitLoad.of(x[0], x[1], x[2]);
    for (int i = 3; i < x.length; i++) {
      load = load.with(new CircuitLoad.Device("device " + i, x[i], true));
    }
    return load.requiredAmperes();
  }

  private static double metalBurnsFrom(double... x) {
    return BurnThresholds.threshold(BurnThresholds.Surface.BARE_METAL, x[0]).low().celsius();
  }

  private static double seconds(double skin) {
    return SkinDamage.secondsAtConstant(celsius(skin), SkinDamage.Degree.SECOND);
  }

  private static double contactSeconds(double... x) {
    return SkinDamage.secondsOfContact(celsius(x[0]), SkinDamage.Degree.SECOND);
  }

  /** Shares in per cent of irritants to skin of category 2; the rest is harmless. */
  private static HazardMixture irritants(double... x) {
    HazardMixtureBuilder mixture = HazardMixture.builder(RULES);
    double rest = 100;
    for (double share : x) {
      mixture.substance(
          SubstanceHazards.builder("irritant " + rest).classified("Skin Irrit. 2 H315").build(),
          share);
      rest -= share;
    }
    return mixture.substance(SubstanceHazards.presumedNone("rest"), rest).build();
  }

  /** Share in per cent and estimate in mg/kg of what is swallowed; the rest is harmless. */
  private static HazardMixture poison(double... x) {
    HazardMixtureBuilder mixture = HazardMixture.builder(RULES);
    double rest = 100;
    for (int i = 0; i < x.length; i += 2) {
      mixture.substance(
          SubstanceHazards.builder("poison " + i).estimate(UptakeForm.ORAL, x[i + 1]).build(),
          x[i]);
      rest -= x[i];
    }
    return mixture.substance(SubstanceHazards.presumedNone("rest"), rest).build();
  }

  private static Working working(HazardMixture mixture, HazardClass hazardClass, String level) {
    return HazardReview.of(mixture, RULES).finding(hazardClass).workings().stream()
        .filter(w -> w.level().equals(level))
        .findFirst()
        .orElseThrow();
  }
}
