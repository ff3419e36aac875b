// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.meltwright.core.mixture.MixtureProblem.CHECK;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.ByMaterial;
import org.meltwright.core.material.Comparison;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.MaterialState;
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
 * {@link #find}, {@link #findTable} and {@link #unknown} ask first.
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
  private final ByMaterial<QuantityRange<Density>> stated;
  private final @Nullable TemperaturePoint temperature;
  private final @Nullable NumberRange expansionPerKelvin;
  private final boolean forRules;

  /**
   * Returns the basis of a state.
   *
   * @param state the state of matter
   * @return the basis, with the figures of the materials
   */
  public static DensityBasis of(MaterialState state) {
    return new DensityBasis(state, ByMaterial.none(), null, null, false);
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
    return new DensityBasis(
        MaterialState.LIQUID, ByMaterial.none(), temperature, expansionPerKelvin, false);
  }

  private DensityBasis(
      MaterialState state,
      ByMaterial<QuantityRange<Density>> stated,
      @Nullable TemperaturePoint temperature,
      @Nullable NumberRange expansionPerKelvin,
      boolean forRules) {
    this.state = state;
    this.stated = stated;
    this.temperature = temperature;
    this.expansionPerKelvin = expansionPerKelvin;
    this.forRules = forRules;
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
   * @param material the material, whatever its figures and its lot; that lot alone if it names one
   * @param density its density in this state
   * @return the new basis
   */
  public DensityBasis with(Material material, Quantity<Density> density) {
    return with(material, QuantityRange.of(QuantityKind.DENSITY, density, density));
  }

  /**
   * Returns a copy in which a material has a density of your own, used as it is.
   *
   * @param material the material, whatever its figures and its lot; that lot alone if it names one
   * @param density its density in this state, as a range
   * @return the new basis
   */
  public DensityBasis with(Material material, QuantityRange<Density> density) {
    return new DensityBasis(
        state, stated.with(material, density), temperature, expansionPerKelvin, forRules);
  }

  /**
   * Returns a copy for a rule: where a figure of one's own does not agree with the one in print,
   * the range spans both ({@link Comparison#forRules}), so that either end is that of the worse.
   *
   * @return the new basis
   */
  public DensityBasis forRules() {
    return new DensityBasis(state, stated, temperature, expansionPerKelvin, true);
  }

  /**
   * Tells whether a material counts in the melt with its solid density, for lack of a liquid one.
   *
   * @param material the material
   * @return whether it does not melt or dissolves, and no liquid density of it is known
   */
  public boolean countsAsSolid(Material material) {
    return state == MaterialState.LIQUID
        && stated.find(material).isEmpty()
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
    return new Known().require(material);
  }

  /**
   * Returns the density of a material, if it is known.
   *
   * @param material the material
   * @return its density in this state; empty where {@link #density} has a problem
   */
  public Optional<QuantityRange<Density>> find(Material material) {
    return new Known().find(material);
  }

  /**
   * Returns the materials whose density is not known, so that whoever needs it can name them.
   *
   * @param materials the materials
   * @return those without a density in this state, in their order; empty if all are known
   */
  public List<Material> unknown(List<Material> materials) {
    Known known = new Known();
    return materials.stream().filter(m -> known.find(m).isEmpty()).toList();
  }

  /**
   * Returns the property that holds the density of a material on this basis; for what is {@link
   * #unknown} the one to look for.
   *
   * @param material the material
   * @return bulk, liquid or solid density; solid for what keeps its volume in a melt unless its
   *     liquid density is known, liquid for what is liquid when cold unless its solid density is
   */
  public PropertyKey<PropertyRange<Density>> property(Material material) {
    Optional<PropertyKey<PropertyRange<Density>>> other = standIn(material);
    return other.isPresent() && material.find(key()).isEmpty() ? other.get() : key();
  }

  /** What serves where there is no figure of the state itself. */
  private Optional<PropertyKey<PropertyRange<Density>>> standIn(Material material) {
    if (state == MaterialState.LIQUID) {
      return keepsItsVolume(material) ? Optional.of(PropertyKey.SOLID_DENSITY) : Optional.empty();
    }
    return isLiquidWhenCold(material) ? Optional.of(PropertyKey.LIQUID_DENSITY) : Optional.empty();
  }

  private PropertyKey<PropertyRange<Density>> key() {
    return switch (state) {
      case SOLID -> PropertyKey.SOLID_DENSITY;
      case LIQUID -> PropertyKey.LIQUID_DENSITY;
      case BULK -> PropertyKey.BULK_DENSITY;
    };
  }

  /**
   * Returns what a volume of a composition weighs, by additive volumes.
   *
   * <p>For example, a litre of cold 1 : 8 medium, as sure as its densities are:
   *
   * <pre>{@code
   * MaterialCatalogue shelf = MaterialCatalogue.standard();
   * Material resin = shelf.require("damar");
   * Material wax = shelf.require("beeswax-yellow");
   * Composition medium = Composition.ofParts(List.of(resin, wax), 1, 8);
   * DensityBasis solid = DensityBasis.SOLID;
   * Estimate<Mass> litre = solid.mass(medium, litres(1));
   * litre.centralSi(); // 0.967 kg
   * litre.lowSi() < litre.highSi(); // true
   * Mixture.ofVolume(medium, litres(1), solid).massKilograms(); // 0.967 kg
   * }</pre>
   *
   * @param composition what the volume is of
   * @param volume the volume, measured in this state
   * @return the mass; the low one goes with the low densities
   * @throws org.meltwright.units.ProblemException if the volume is negative or not finite, or a
   *     density is missing; the problem names material and property
   */
  public Estimate<Mass> mass(Composition composition, Quantity<Volume> volume) {
    double cubicMetres = Amounts.requireVolume(volume);
    Estimate<Density> density = composition.density(this);
    return new Estimate<>(
        QuantityKind.MASS,
        cubicMetres * density.lowSi(),
        cubicMetres * density.centralSi(),
        cubicMetres * density.highSi());
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
    Known known = new Known();
    return tableOf(materials.stream().map(known::require).toList());
  }

  /**
   * Returns the densities of materials, if all of them are known.
   *
   * @param materials the materials
   * @return their densities, in this order; empty where {@link #table} has a problem, and {@link
   *     #unknown} names what is missing
   */
  public Optional<DensityTable> findTable(List<Material> materials) {
    Known known = new Known();
    List<QuantityRange<Density>> all =
        materials.stream().map(known::find).flatMap(Optional::stream).toList();
    return all.size() == materials.size() ? Optional.of(tableOf(all)) : Optional.empty();
  }

  private static DensityTable tableOf(List<QuantityRange<Density>> densities) {
    return DensityTable.of(
        densities.stream().mapToDouble(QuantityRange::lowSi).toArray(),
        densities.stream().mapToDouble(QuantityRange::highSi).toArray());
  }

  /** What was looked up in one question, each material once. */
  private final class Known {

    private final Map<Material, Optional<QuantityRange<Density>>> seen = new HashMap<>();

    QuantityRange<Density> require(Material material) {
      return find(material).orElseGet(() -> figureOf(lacking(material)));
    }

    private QuantityRange<Density> figureOf(Material material) {
      return material.require(property(material)).value().range();
    }

    /** What is to blame where there is no density: the material, or a part that it is made of. */
    private Material lacking(Material material) {
      return material.constituents().stream()
          .map(Constituent::material)
          .filter(part -> find(part).isEmpty())
          .findFirst()
          .map(this::lacking)
          .orElse(material);
    }

    Optional<QuantityRange<Density>> find(Material material) {
      Optional<QuantityRange<Density>> known = seen.get(material);
      if (known == null) {
        known = look(material);
        seen.put(material, known);
      }
      return known;
    }

    private Optional<QuantityRange<Density>> look(Material material) {
      return stated
          .find(material)
          .or(() -> figure(material).map(DensityBasis.this::atTemperature))
          .or(() -> ofParts(material.constituents()));
    }

    private Optional<QuantityRange<Density>> ofParts(List<Constituent> parts) {
      List<QuantityRange<Density>> densities =
          parts.stream().map(p -> find(p.material())).flatMap(Optional::stream).toList();
      return parts.isEmpty() || densities.size() < parts.size()
          ? Optional.empty()
          : Optional.of(additive(parts, densities));
    }
  }

  private Optional<PropertyRange<Density>> figure(Material material) {
    PropertyKey<PropertyRange<Density>> key = property(material);
    Optional<PropertyRange<Density>> worse =
        forRules ? Comparison.of(material, key).map(Comparison::forRules) : Optional.empty();
    return worse.or(() -> material.find(key).map(Sourced::value));
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
  private static QuantityRange<Density> additive(
      List<Constituent> parts, List<QuantityRange<Density>> densities) {
    DensityTable table = tableOf(densities);
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < parts.size(); i++) {
      for (double end :
          List.of(parts.get(i).share().low().value(), parts.get(i).share().high().value())) {
        double[] shares = withShare(Constituents.middles(parts), i, end);
        IntToDoubleFunction share = place -> shares[place];
        least = Math.min(least, VolumeView.density(shares.length, share, table::low));
        most = Math.max(most, VolumeView.density(shares.length, share, table::high));
      }
    }
    return new QuantityRange<>(QuantityKind.DENSITY, least, most);
  }

  /** Gives one part a share and lets the others make up the rest in their proportions. */
  private static double[] withShare(double[] shares, int index, double share) {
    double others = ExactSum.of(shares) - shares[index];
    double scale = others > 0 ? (1 - share) / others : 0;
    for (int i = 0; i < shares.length; i++) {
      shares[i] = i == index ? share : shares[i] * scale;
    }
    return Amounts.normalised(shares);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DensityBasis that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(state, stated, temperature, expansionPerKelvin, forRules);
  }

  @Override
  public String toString() {
    return "density by " + state;
  }
}
