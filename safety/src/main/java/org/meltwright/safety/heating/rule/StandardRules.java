// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.safety.heating.HeatingRule;

/**
 * All rules of this library.
 *
 * <p>An app asks the standard set for them:
 *
 * <pre>{@code
 * HeatingRules rules = HeatingRules.standard();
 * rules.find("hard-ceiling").get().info().severity(); // DANGER
 * rules.find("above-target").get().info().severity(); // CAUTION
 * }</pre>
 */
public final class StandardRules {

  private StandardRules() {}

  /**
   * Returns one of each rule.
   *
   * @return the rules
   */
  public static List<HeatingRule> all() {
    return List.of(
        new Darkening(),
        new AboveTarget(),
        new HardCeiling(),
        new Fume(),
        new FlashMargin(),
        new WarmPotFloor(),
        new HotPotFloor(),
        new EstimatedTemperature(),
        new MissingTemperature(),
        new OilPaintNoted(),
        new OilPaintSoft(),
        new OilPaintTooMuch(),
        new WaterInPot(),
        new Acrylic(),
        new Solvent(),
        new PlasticLinedCan(),
        new LowHeatWaxUnderFlame(),
        new VesselTooFull(),
        new VesselOverflows(),
        new ThermometerTolerance(),
        new CeilingWithinTolerance(),
        new WindowClosed(),
        new WindowMayBeClosed(),
        new ColderThanWindow(),
        new ResinDissolvesSlowly(),
        new ResinUnsuitable(),
        new MeltingOrder(),
        new BrittleResinShare(),
        new HardWaxShare(),
        new WetTools(),
        new WaterMixableOil(),
        new WaterMixableOilWithWater(),
        new Varnish(),
        new Alkyd(),
        new SolventThinnedWax(),
        new UnknownCrayons(),
        new BleachedWax(),
        new GlycerideWax(),
        new Lead(),
        new Arsenic(),
        new Mercury(),
        new PigmentMeltOnly(),
        new PigmentNoFlame(),
        new DryPowder(),
        new ToxicPowder(),
        new PlasticVessel(),
        new RoundBottom(),
        new UnknownCoating(),
        new NonStick(),
        new PaperOnFire(),
        new PaperAboveCeiling(),
        new OpenCoilOrGas(),
        new HeatGunOutlet(),
        new IronTooHot(),
        new HighHeatWaxUnderLowTools(),
        new LampDistance(),
        new FlameNearSolvent(),
        new FlameNearPaper(),
        new FlameNearPlastic(),
        new SolventNearHeat(),
        new MinorsWithFlame(),
        new MinorsHighHeat(),
        new MinorsDryPowder(),
        new MinorsConsent(),
        new MinorsAlone(),
        new ChildrenToxicPigment(),
        new ClassSize(),
        new Unattended(),
        new AirChanges(),
        new WaterNear(),
        new NoLidOrBlanket(),
        new WaterExtinguisher(),
        new OilyRags());
  }
}
