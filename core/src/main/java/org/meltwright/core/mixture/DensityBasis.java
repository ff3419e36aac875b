// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.meltwright.core.mixture.MixtureProblem.CHECK;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.MaterialState;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.units.Density;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;

/**
 * The state of matter that volumes are counted in, and where the densities come from.
 *
 * <ul>
 *   <li>{@link #SOLID}: cold and without air. What is liquid when cold (oils, carriers) counts with
 *       its liquid density.
 *   <li>{@link #MELT}: molten. What does not melt there (colourants, fillers) and what dissolves
 *       (hardeners) counts with its solid density where no liquid density is known; {@link
 *       #countsAsSolid} tells which.
 *   <li>{@link #BULK}: loose, as scooped, with the air between the pieces.
 * </ul>
 *
 * <p>A material without a figure of its own whose constituents are stated gets its density from
 * them. Any other missing density is a problem that names material and property; none is guessed.
 *
 * <p>For example, a wax of 850 kg/m³ at 65 °C, 20 K hotter, that expands by 8.5e-4 of its volume
 * per kelvin:
 *
 * <pre>{@code
 * PropertyRange<Density> at65 = PropertyKey.LIQUID_DENSITY.parse("0.85 g/ml at 65 °C");
 * Material wax =
 *     Material.builder("our-wax")
 *         .figure(PropertyKey.LIQUID_DENSITY, Sourced.of(at65, Source.USER, Knowledge.READ))
 *         .build();
 * NumberRange expansion = new NumberRange(8.5e-4, 8.5e-4, "1/K");
 * DensityBasis.meltAt(ofCelsius(85), expansion).density(wax).middleSi(); // 835.79 kg/m³
 * DensityBasis.MELT.with(wax, gramsPerMillilitre(0.84)).density(wax).middleSi(); // 840 kg/m³
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class DensityBasis {

  /** Cold and without air. */
  public static final DensityBasis SOLID = of(MaterialState.SOLID);

  /** Molten, at the temperature that each figure was measured at. */
  public static final DensityBasis MELT = of(MaterialState.LIQUID);

  /** Loose, with the air between the pieces. */
  public static final DensityBasis BULK = of(MaterialState.BULK);

  private static final double LARGEST_EXPANSION = 0.002;
  private static final String EXPANSION = "volume expansion in 1/K";

  private final MaterialState state;
  private final Map<Material, QuantityRange<Density>> stated;
  private final @Nullable TemperaturePoint temperature;
  private final @Nullable NumberRange expansionPerKelvin;

  /**
   * Returns the basis of a state.
   *
   * @param state the state of matter
   * @return the basis, with the figures of the materials
   */
  public static DensityBasis of(MaterialState state) {
    return new DensityBasis(state, Map.of(), null, null);
  }

  /**
   * Returns the basis of a melt at a temperature: ρ(T) = ρ₀/(1 + β (T − T₀)).
   *
   * <p>Figures of liquids whose own temperature T₀ is stated are carried to T; all others stand as
   * they are. For example, 850 kg/m³ at 65 °C with β = 8.5e-4 is 835.79 kg/m³ at 85 °C.
   *
   * @param temperature the temperature of the melt
   * @param expansionPerKelvin the volume expansion β of the liquids in 1/K, as a range within 0 to
   *     0.002: so no density turns negative, however far it is carried
   * @return the basis
   * @throws org.meltwright.units.ProblemException if the expansion lies outside
   */
  public static DensityBasis meltAt(TemperaturePoint temperature, NumberRange expansionPerKelvin) {
    CHECK.between(expansionPerKelvin.low(), 0, LARGEST_EXPANSION, EXPANSION);
    CHECK.between(expansionPerKelvin.high(), 0, LARGEST_EXPANSION, EXPANSION);
    return new DensityBasis(MaterialState.LIQUID, Map.of(), temperature, expansionPerKelvin);
  }

  private DensityBasis(
      MaterialState state,
      Map<Material, QuantityRange<Density>> stated,
      @Nullable TemperaturePoint temperature,
      @Nullable NumberRange expansionPerKelvin) {
    this.state = state;
    this.stated = stated;
    this.temperature = temperature;
    this.expansionPerKelvin = expansionPerKelvin;
  }

  /**
   * Returns the state of matter.
   *
   * @return the state
   */
  public MaterialState state() {
    return state;
  }

  /**
   * Returns a copy in which a material has a density of your own, used as it is.
   *
   * @param material the material
   * @param density its density in this state
   * @return the new basis
   */
  public DensityBasis with(Material material, Quantity<Density> density) {
    return with(material, QuantityRange.of(QuantityKind.DENSITY, density, density));
  }

  /**
   * Returns a copy in which a material has a density of your own, used as it is.
   *
   * @param material the material
   * @param density its density in this state, as a range
   * @return the new basis
   */
  public DensityBasis with(Material material, QuantityRange<Density> density) {
    Map<Material, QuantityRange<Density>> more = new HashMap<>(stated);
    more.put(material, density);
    return new DensityBasis(state, Map.copyOf(more), temperature, expansionPerKelvin);
  }

  /**
   * Tells whether a material counts in the melt with its solid density, for lack of a liquid one.
   *
   * @param material the material
   * @return whether it does not melt or dissolves, and no liquid density of it is known
   */
  public boolean countsAsSolid(Material material) {
    return state == MaterialState.LIQUID
        && !stated.containsKey(material)
        && keepsItsVolume(material)
        && material.find(PropertyKey.LIQUID_DENSITY).isEmpty()
        && material.find(PropertyKey.SOLID_DENSITY).isPresent();
  }

  /**
   * Returns the density of a material.
   *
   * @param material the material
   * @return its density in this state
   * @throws org.meltwright.units.ProblemException if it is missing; the problem names material and
   *     property
   */
  public QuantityRange<Density> density(Material material) {
    return density(material, new HashMap<>());
  }

  /**
   * Returns the densities of materials, looked up for calculations in a loop.
   *
   * @param materials the materials
   * @return their densities, in this order
   * @throws org.meltwright.units.ProblemException if one is missing; the problem names material and
   *     property
   */
  public DensityTable table(List<Material> materials) {
    double[] low = new double[materials.size()];
    double[] high = new double[materials.size()];
    Map<Material, QuantityRange<Density>> seen = new HashMap<>();
    for (int i = 0; i < low.length; i++) {
      QuantityRange<Density> density = density(materials.get(i), seen);
      low[i] = density.lowSi();
      high[i] = density.highSi();
    }
    return DensityTable.of(low, high);
  }

  private QuantityRange<Density> density(
      Material material, Map<Material, QuantityRange<Density>> seen) {
    QuantityRange<Density> known = stated.getOrDefault(material, seen.get(material));
    if (known != null) {
      return known;
    }
    Optional<PropertyRange<Density>> figure = figure(material);
    QuantityRange<Density> result;
    if (figure.isPresent()) {
      result = atTemperature(figure.get());
    } else if (material.constituents().isEmpty()) {
      result = material.require(key()).value().range();
    } else {
      result = ofConstituents(material, seen);
    }
    seen.put(material, result);
    return result;
  }

  private PropertyKey<PropertyRange<Density>> key() {
    return switch (state) {
      case SOLID -> PropertyKey.SOLID_DENSITY;
      case LIQUID -> PropertyKey.LIQUID_DENSITY;
      case BULK -> PropertyKey.BULK_DENSITY;
    };
  }

  private Optional<PropertyRange<Density>> figure(Material material) {
    Optional<PropertyRange<Density>> own = find(material, key());
    if (own.isPresent()) {
      return own;
    }
    if (state == MaterialState.LIQUID) {
      return keepsItsVolume(material)
          ? find(material, PropertyKey.SOLID_DENSITY)
          : Optional.empty();
    }
    return isLiquidWhenCold(material)
        ? find(material, PropertyKey.LIQUID_DENSITY)
        : Optional.empty();
  }

  private static Optional<PropertyRange<Density>> find(
      Material material, PropertyKey<PropertyRange<Density>> key) {
    return material.find(key).map(org.meltwright.core.source.Sourced::value);
  }

  private static boolean keepsItsVolume(Material material) {
    return switch (material.role()) {
      case COLOURANT, FILLER, HARDENER -> true;
      case BASE, OIL, CARRIER -> false;
    };
  }

  private static boolean isLiquidWhenCold(Material material) {
    return material.role() == MaterialRole.OIL || material.role() == MaterialRole.CARRIER;
  }

  private QuantityRange<Density> atTemperature(PropertyRange<Density> figure) {
    TemperaturePoint target = temperature;
    NumberRange expansion = expansionPerKelvin;
    if (target == null
        || expansion == null
        || figure.state() != MaterialState.LIQUID
        || figure.at().isEmpty()) {
      return figure.range();
    }
    double kelvin = target.minus(figure.at().get().middle()).kelvin();
    double least = 1 + Math.min(expansion.low() * kelvin, expansion.high() * kelvin);
    double most = 1 + Math.max(expansion.low() * kelvin, expansion.high() * kelvin);
    return new QuantityRange<>(
        QuantityKind.DENSITY, figure.range().lowSi() / most, figure.range().highSi() / least);
  }

  /** Additive volumes with the middle shares, and the widest range that the shares allow. */
  private QuantityRange<Density> ofConstituents(
      Material material, Map<Material, QuantityRange<Density>> seen) {
    var parts = material.constituents();
    double[] low = new double[parts.size()];
    double[] high = new double[parts.size()];
    for (int i = 0; i < low.length; i++) {
      QuantityRange<Density> density = density(parts.get(i).material(), seen);
      low[i] = density.lowSi();
      high[i] = density.highSi();
    }
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < low.length; i++) {
      for (double end :
          List.of(parts.get(i).share().low().value(), parts.get(i).share().high().value())) {
        double[] shares = withShare(Constituents.middles(parts), i, end);
        least = Math.min(least, additive(shares, low));
        most = Math.max(most, additive(shares, high));
      }
    }
    return new QuantityRange<>(QuantityKind.DENSITY, least, most);
  }

  /** Gives one part a share and lets the others make up the rest in their proportions. */
  private static double[] withShare(double[] shares, int index, double share) {
    double others = Amounts.sum(shares) - shares[index];
    double scale = others > 0 ? (1 - share) / others : 0;
    for (int i = 0; i < shares.length; i++) {
      shares[i] = i == index ? share : shares[i] * scale;
    }
    return Amounts.normalised(shares);
  }

  private static double additive(double[] shares, double[] densities) {
    double volume = 0;
    for (int i = 0; i < shares.length; i++) {
      volume += shares[i] / densities[i];
    }
    return 1 / volume;
  }
}
