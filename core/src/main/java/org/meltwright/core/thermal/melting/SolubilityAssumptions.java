// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.ByMaterial;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Check;

/**
 * What an ideal-solubility estimate has to assume: molar masses, and a heat of fusion where a
 * material states none.
 *
 * <p>Natural waxes and resins are mixtures and have no molar mass of their own; these stand for
 * their main constituents. Every result lists the assumptions it used.
 *
 * <p>Stearic acid is a substance with a formula, C18H36O2, and the catalogue states its molar mass;
 * of carnauba wax an assumption stands in, until a better one is given:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * SolubilityAssumptions.TYPICAL.molarMass(shelf.require("stearic-acid")); // 0.28448 kg/mol
 * Material wax = shelf.require("carnauba");
 * SolubilityAssumptions.TYPICAL.molarMass(wax); // 0.747 kg/mol
 * SolubilityAssumptions own = SolubilityAssumptions.TYPICAL.withMolarMass(wax, 0.817);
 * own.molarMass(wax); // 0.817 kg/mol
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class SolubilityAssumptions {

  /**
   * The guards of this package: what they say stands in the bundle beside {@link ThermalProblem}.
   */
  static final Check CHECK = Check.beside(ThermalProblem.class);

  /**
   * Molar masses of typical constituents by their atomic weights, and 175 kJ/kg.
   *
   * <p>What melts: 0.747 kg/mol, half way between long-chain esters of 46 and 56 carbon atoms
   * (C46H92O2, 0.677; C56H112O2, 0.817). Resin: 0.443 kg/mol, a triterpenoid C30H50O2. Oil: 0.873
   * kg/mol, the triglyceride C57H92O6.
   */
  public static final SolubilityAssumptions TYPICAL =
      new SolubilityAssumptions(0.747, 0.443, 0.873, 175_000, ByMaterial.none());

  private static final double GRAMS_PER_KILOGRAM = 1000;

  private final double meltingMolarMass;
  private final double resinMolarMass;
  private final double oilMolarMass;
  private final double heatOfFusion;
  private final ByMaterial<Double> own;

  private SolubilityAssumptions(
      double meltingMolarMass,
      double resinMolarMass,
      double oilMolarMass,
      double heatOfFusion,
      ByMaterial<Double> own) {
    this.meltingMolarMass = meltingMolarMass;
    this.resinMolarMass = resinMolarMass;
    this.oilMolarMass = oilMolarMass;
    this.heatOfFusion = heatOfFusion;
    this.own = own;
  }

  /**
   * Returns a copy with a molar mass for one material.
   *
   * @param material the material, whatever its figures and its lot; that lot alone if it names one
   * @param kilogramsPerMole its molar mass, in kg/mol, from 0.001 to 100
   * @return the new assumptions
   * @throws org.meltwright.units.ProblemException if the molar mass cannot be
   */
  public SolubilityAssumptions withMolarMass(Material material, double kilogramsPerMole) {
    CHECK.between(kilogramsPerMole, 0.001, 100, "molar mass in kg/mol");
    return new SolubilityAssumptions(
        meltingMolarMass,
        resinMolarMass,
        oilMolarMass,
        heatOfFusion,
        own.with(material, kilogramsPerMole));
  }

  /**
   * Returns a copy with another heat of fusion for materials that state none.
   *
   * @param joulesPerKilogram the heat of fusion, in J/kg, from 1 kJ/kg to 1 MJ/kg
   * @return the new assumptions
   * @throws org.meltwright.units.ProblemException if the heat cannot be
   */
  public SolubilityAssumptions withHeatOfFusion(double joulesPerKilogram) {
    return new SolubilityAssumptions(
        meltingMolarMass,
        resinMolarMass,
        oilMolarMass,
        CHECK.between(joulesPerKilogram, 1e3, 1e6, "heat of fusion in J/kg"),
        own);
  }

  /**
   * Returns the molar mass that stands for a material: the one given here, else the middle of its
   * own figure, else that of its family.
   *
   * @param material the material
   * @return the molar mass, in kg/mol
   */
  public double molarMass(Material material) {
    Optional<Double> known =
        own.find(material)
            .or(
                () ->
                    material
                        .find(PropertyKey.MOLECULAR_WEIGHT)
                        .map(f -> f.value().middle() / GRAMS_PER_KILOGRAM));
    if (known.isPresent()) {
      return known.get();
    }
    return switch (material.family()) {
      case RESIN -> resinMolarMass;
      case DRYING_OIL -> oilMolarMass;
      default -> meltingMolarMass;
    };
  }

  /**
   * Returns the heat of fusion of a material: its own figure at mid-range, else the assumed one.
   *
   * @param material the material
   * @return the heat of fusion, in J/kg
   */
  public double heatOfFusion(Material material) {
    return material
        .find(PropertyKey.HEAT_OF_FUSION)
        .map(f -> f.value().range().middleSi())
        .orElse(heatOfFusion);
  }

  /** Tells whether a material becomes part of the melt: a pigment stays solid, some resins too. */
  static boolean joinsMelt(Material material) {
    return MeltingReport.melts(material)
        || (material.family() == MaterialFamily.RESIN && DissolvingBound.dissolves(material))
        || material.family() == MaterialFamily.DRYING_OIL;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SolubilityAssumptions that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(meltingMolarMass, resinMolarMass, oilMolarMass, heatOfFusion, own);
  }

  @Override
  public String toString() {
    return "molar masses "
        + meltingMolarMass
        + ", "
        + resinMolarMass
        + ", "
        + oilMolarMass
        + " kg/mol";
  }
}
