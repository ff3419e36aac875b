// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import static org.meltwright.core.thermal.TestMaterials.BEESWAX;
import static org.meltwright.core.thermal.TestMaterials.CARNAUBA;
import static org.meltwright.core.thermal.TestMaterials.DAMAR;
import static org.meltwright.core.thermal.TestMaterials.IRON_OXIDE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.joda.money.Money;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostKind;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.heat.EnergyUse;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.core.thermal.heat.HeatSupply;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.core.thermal.setting.CakeSetting;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.MeltSubstance;
import org.meltwright.core.thermal.setting.OpenTime;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.core.thermal.settling.MeltBath;
import org.meltwright.core.thermal.settling.StirringInterval;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MaterialState;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;
import org.meltwright.units.VolumeFraction;

/**
 * Every estimate of the library on one task: its drivers, its own three numbers, and how it is
 * worked out anew with one input known, by the doors that anybody has.
 *
 * @param name what is estimated
 * @param drivers the drivers as the result tells them
 * @param numbers low, central and high as the result tells them, worked out anew with what is known
 * @param freezes whether each evaluation follows the heat through a film, which takes a while
 */
record Estimated(
    String name,
    Drivers drivers,
    Function<Optional<EstimateInput>, double[]> numbers,
    boolean freezes) {

  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);
  private static final TemperaturePoint HOT = TemperaturePoint.ofCelsius(85);
  private static final Vessel POT =
      new Vessel("pot", VesselMaterial.STEEL, Lining.NONE, Vessel.Bottom.FLAT, 0.002, 0.8);
  private static final Mould TIN =
      Mould.of("tin", VesselMaterial.STEEL, 12, QuantityKind.VOLUME.ofSi(1e-4));
  private static final Estimate<Density> MELT = new Estimate<>(QuantityKind.DENSITY, 830, 842, 861);
  private static final Estimate<Density> COLD = new Estimate<>(QuantityKind.DENSITY, 950, 963, 975);

  @Override
  public String toString() {
    return name;
  }

  static List<Estimated> all() {
    List<Estimated> all = new ArrayList<>();
    all.addAll(mixtures());
    all.addAll(casts());
    all.addAll(heats());
    all.addAll(setting());
    all.addAll(settling());
    all.add(window());
    all.add(saving());
    return all;
  }

  private static double[] of(Estimate<?> e) {
    return new double[] {e.lowSi(), e.centralSi(), e.highSi()};
  }

  /** The value of an input: its central one if it is the one that is known, else its own. */
  private static double end(Optional<EstimateInput> known, String name, double otherwise) {
    return known
        .filter(k -> k.symbol().toString().equals(name))
        .map(EstimateInput::central)
        .orElse(otherwise);
  }

  // --- mixtures: densities, volumes, shares

  private static Composition mix(Optional<EstimateInput> known) {
    return Composition.ofParts(
        Stream.of(BEESWAX, CARNAUBA, DAMAR, IRON_OXIDE).map(m -> pinned(m, known)).toList(),
        80,
        6,
        10,
        4);
  }

  /** A material of which a figure is known better. */
  private static Material pinned(Material material, Optional<EstimateInput> known) {
    Material pinned = material;
    if (known.isPresent()) {
      EstimateInput k = known.get();
      pinned = pinned(pinned, k, PropertyKey.SOLID_DENSITY, "density", QuantityKind.DENSITY);
      pinned =
          pinned(
              pinned,
              k,
              PropertyKey.SOLID_SPECIFIC_HEAT,
              "specific heat, solid",
              QuantityKind.SPECIFIC_HEAT_CAPACITY);
      pinned =
          pinned(
              pinned,
              k,
              PropertyKey.LIQUID_SPECIFIC_HEAT,
              "specific heat, melt",
              QuantityKind.SPECIFIC_HEAT_CAPACITY);
      pinned =
          pinned(
              pinned,
              k,
              PropertyKey.HEAT_OF_FUSION,
              "heat of fusion",
              QuantityKind.SPECIFIC_ENERGY);
      pinned = molten(pinned, k);
    }
    return pinned;
  }

  private static <Q extends Quantity<Q>> Material pinned(
      Material material,
      EstimateInput known,
      PropertyKey<PropertyRange<Q>> key,
      String name,
      QuantityKind<Q> kind) {
    if (!isOf(known, name, material)) {
      return material;
    }
    MaterialState state =
        key.equals(PropertyKey.LIQUID_SPECIFIC_HEAT) ? MaterialState.LIQUID : MaterialState.SOLID;
    PropertyRange<Q> exact =
        PropertyRange.of(new QuantityRange<>(kind, known.central(), known.central()), state);
    return material.withFirst(key, Sourced.of(exact, Source.USER, Knowledge.READ));
  }

  private static Material molten(Material material, EstimateInput known) {
    if (!isOf(known, "melting range", material)) {
      return material;
    }
    DefinedTemperature exact =
        new DefinedTemperature(
            TemperatureRange.ofCelsius(known.central(), known.central()),
            material.require(PropertyKey.MELTING_RANGE).value().definition());
    return material.withFirst(
        PropertyKey.MELTING_RANGE, Sourced.of(exact, Source.USER, Knowledge.READ));
  }

  private static boolean isOf(EstimateInput known, String name, Material material) {
    return known.symbol().toString().equals(name + " (" + material.name(Locale.ENGLISH) + ")");
  }

  private static List<Estimated> mixtures() {
    DensityBasis solid = DensityBasis.SOLID.with(CARNAUBA, QuantityKind.DENSITY.ofSi(995));
    Mixture pot = new Mixture(mix(Optional.empty()), 1.2);
    return List.of(
        new Estimated(
            "density of a mix",
            pot.composition().volumeView(solid).densityDrivers(),
            k -> of(mix(k).density(solid)),
            false),
        new Estimated(
            "volume of a mix",
            pot.volumeDrivers(solid),
            k -> of(new Mixture(mix(k), 1.2).volume(solid)),
            false),
        new Estimated(
            "free oil",
            ShareOf.FREE_OIL.driversIn(colour(Optional.empty())),
            k -> share(colour(k).share(ShareOf.FREE_OIL), k),
            false));
  }

  private static Composition colour(Optional<EstimateInput> known) {
    Material oil =
        Material.builder("oil")
            .names("oil", "Öl")
            .family(MaterialFamily.DRYING_OIL, MaterialRole.OIL)
            .build();
    return Composition.ofPercents(
        List.of(paint("white", 18, 30, oil, known), paint("blue", 35, 48, oil, known), BEESWAX),
        12,
        9,
        79);
  }

  private static Material paint(
      String name, double low, double high, Material oil, Optional<EstimateInput> known) {
    String part = "part by mass (oil / " + name + ")";
    double from = end(known, part, low / 100);
    double to = end(known, part, high / 100);
    return Material.builder(name)
        .names(name, name)
        .family(MaterialFamily.OIL_PAINT, MaterialRole.OIL)
        .constituent(oil, shares(from, to))
        .constituent(IRON_OXIDE, shares(1 - to, 1 - from))
        .build();
  }

  private static MassFractionRange shares(double low, double high) {
    return new MassFractionRange(MassFraction.of(low), MassFraction.of(high));
  }

  /** The central share has every constituent at its middle. */
  private static double[] share(MassFractionRange range, Optional<EstimateInput> known) {
    double central = 0.12 * 0.24 + 0.09 * 0.415;
    return new double[] {range.low().value(), central, range.high().value()};
  }

  // --- casting

  private static Casting cast(Optional<EstimateInput> known) {
    return Casting.of(
        QuantityKind.MASS.ofSi(0.8),
        TIN,
        VolumeFraction.ofPercent(80),
        known(MELT, "density of the melt", known),
        known(COLD, "density of the cold cake", known));
  }

  private static Estimate<Density> known(
      Estimate<Density> estimate, String name, Optional<EstimateInput> known) {
    return new Estimate<>(
        QuantityKind.DENSITY,
        end(known, name, estimate.lowSi()),
        estimate.centralSi(),
        end(known, name, estimate.highSi()));
  }

  private static List<Estimated> casts() {
    Casting plain = cast(Optional.empty());
    VesselRoom room = new VesselRoom(POT, plain.hotVolume());
    return List.of(
        new Estimated("cake", plain.cakeMassDrivers(), k -> of(cast(k).cakeMass()), false),
        new Estimated("poured", plain.hotVolumeDrivers(), k -> of(cast(k).hotVolume()), false),
        new Estimated(
            "cold cake",
            plain.coldCakeDrivers().orElseThrow(),
            k -> of(cast(k).coldCake().orElseThrow()),
            false),
        new Estimated(
            "shrinkage",
            plain.shrinkageDrivers().orElseThrow(),
            k -> {
              var s = cast(k).shrinkage().orElseThrow();
              return new double[] {s.low().value(), s.central().value(), s.high().value()};
            },
            false),
        new Estimated("fill level", room.fillLevelDrivers(), Estimated::levels, false));
  }

  private static double[] levels(Optional<EstimateInput> known) {
    Estimate<?> poured = cast(Optional.empty()).hotVolume();
    String name = "volume of the melt";
    return new double[] {
      POT.fillLevel(end(known, name, poured.lowSi())),
      POT.fillLevel(poured.centralSi()),
      POT.fillLevel(end(known, name, poured.highSi()))
    };
  }

  // --- heat

  private static HeatDemand heat(Optional<EstimateInput> known) {
    HeatDemand demand =
        HeatDemand.of(new Mixture(mix(known), 1.6), ROOM, HOT, HeatAssumptions.TYPICAL);
    return known.filter(k -> k.symbol().toString().startsWith("heat capacity")).isPresent()
        ? demand.withVesselCapacity(known.get().central())
        : demand.withVessel(POT);
  }

  private static List<Estimated> heats() {
    HeatDemand plain = heat(Optional.empty());
    HeatSupply weak = HeatSupply.constantPower(150).withLoss(1.4, ROOM);
    HeatSupply middle = HeatSupply.constantPower(220).withLoss(1.2, ROOM);
    HeatSupply strong = HeatSupply.constantPower(280).withLoss(1.0, ROOM);
    return List.of(
        new Estimated("solid", plain.solidHeatDrivers(), k -> of(heat(k).solidHeat()), false),
        new Estimated("fusion", plain.fusionHeatDrivers(), k -> of(heat(k).fusionHeat()), false),
        new Estimated("melt", plain.meltHeatDrivers(), k -> of(heat(k).meltHeat()), false),
        new Estimated("vessel", plain.vesselHeatDrivers(), k -> of(heat(k).vesselHeat()), false),
        new Estimated("all heat", plain.totalHeatDrivers(), k -> of(heat(k).totalHeat()), false),
        new Estimated(
            "time to heat up",
            plain.timeOnDrivers(weak, middle, strong),
            k ->
                isNamed(k, "heat supply")
                    ? of(heat(k).timeOn(middle, middle, middle))
                    : of(heat(k).timeOn(weak, middle, strong)),
            false),
        new Estimated("energy", use(Optional.empty()).drivers(), k -> of(use(k).energy()), false));
  }

  private static boolean isNamed(Optional<EstimateInput> known, String start) {
    return known.filter(k -> k.symbol().toString().startsWith(start)).isPresent();
  }

  /** Melting it and holding it on one plate: its efficiency enters twice. */
  private static EnergyUse use(Optional<EstimateInput> known) {
    double low = end(known, "efficiency", 0.3);
    double high = end(known, "efficiency", 0.6);
    return heat(known)
        .energyUse(low, high)
        .plus(EnergyUse.ofHolding(1.2, HOT, ROOM, 7200, low, high));
  }

  // --- setting

  private static MeltFigures figures(Optional<EstimateInput> known) {
    double[] low = MeltFigures.TYPICAL.inputs().stream().mapToDouble(EstimateInput::low).toArray();
    double[] high =
        MeltFigures.TYPICAL.inputs().stream().mapToDouble(EstimateInput::high).toArray();
    for (int i = 0; i < low.length; i++) {
      String name = MeltFigures.TYPICAL.inputs().get(i).symbol().toString();
      low[i] = end(known, name, low[i]);
      high[i] = end(known, name, high[i]);
    }
    return MeltFigures.between(substance(low), substance(high));
  }

  private static MeltSubstance substance(double[] v) {
    return new MeltSubstance(v[0], v[1], v[2], new MeltingHeat(v[3], v[4], v[5], v[6], v[7]));
  }

  private static Surroundings air(Optional<EstimateInput> known) {
    String name = "heat transfer to the air";
    return new Surroundings(ROOM, end(known, name, 8), end(known, name, 12));
  }

  private static OpenTime stroke(PanelKind kind, double panel, Optional<EstimateInput> known) {
    Panel on = Panel.of(kind, 0.010, TemperaturePoint.ofCelsius(panel));
    String name = "thickness of the film";
    return OpenTime.of(
        Film.of(
            figures(known),
            end(known, name, 2e-4),
            end(known, name, 5e-4),
            TemperaturePoint.ofCelsius(75)),
        isNamed(known, "conductivity of the panel") ? on.withSpread(0) : on,
        air(known));
  }

  private static CakeSetting cake(Optional<EstimateInput> known) {
    String name = "thickness of the cake";
    return CakeSetting.of(
        figures(known),
        new QuantityRange<>(QuantityKind.LENGTH, end(known, name, 0.020), end(known, name, 0.030)),
        TemperaturePoint.ofCelsius(75),
        air(known),
        CakeSetting.Faces.BOTH);
  }

  private static List<Estimated> setting() {
    Optional<EstimateInput> none = Optional.empty();
    return List.of(
        new Estimated(
            "half set on wood",
            stroke(PanelKind.WOOD, 20, none).halfSetDrivers(),
            k -> of(stroke(PanelKind.WOOD, 20, k).halfSet()),
            true),
        new Estimated(
            "fully set on a warm ground",
            stroke(PanelKind.PLASTER_GROUND, 40, none).fullySetDrivers(),
            k -> of(stroke(PanelKind.PLASTER_GROUND, 40, k).fullySet()),
            true),
        new Estimated(
            "cake, by conduction",
            cake(none).byConductionDrivers(),
            k -> of(cake(k).byConduction()),
            true),
        new Estimated(
            "cake, by Plank", cake(none).byPlankDrivers(), k -> of(cake(k).byPlank()), false));
  }

  // --- settling

  private static StirringInterval stirring(Optional<EstimateInput> known) {
    return StirringInterval.of(
        IRON_OXIDE.withFirst(
            PropertyKey.SOLID_DENSITY,
            Sourced.of(
                PropertyRange.of(
                    between(QuantityKind.DENSITY, known, "density of the particles", 5100, 5250),
                    MaterialState.SOLID),
                Source.USER,
                Knowledge.READ)),
        between(QuantityKind.LENGTH, known, "diameter of the pieces", 2e-6, 20e-6),
        VolumeFraction.ofPercent(2),
        MeltBath.of(
            between(QuantityKind.DENSITY, known, "density of the melt", 820, 850),
            between(QuantityKind.DYNAMIC_VISCOSITY, known, "viscosity of the melt", 0.010, 0.030),
            QuantityKind.LENGTH.ofSi(0.05),
            QuantityKind.LENGTH.ofSi(0.005),
            TemperaturePoint.ofCelsius(80)),
        0.1);
  }

  private static <Q extends Quantity<Q>> QuantityRange<Q> between(
      QuantityKind<Q> kind, Optional<EstimateInput> known, String name, double low, double high) {
    return new QuantityRange<>(kind, end(known, name, low), end(known, name, high));
  }

  private static List<Estimated> settling() {
    StirringInterval plain = stirring(Optional.empty());
    return List.of(
        new Estimated("quiet pot", plain.quietDrivers(), k -> of(stirring(k).quiet()), false),
        new Estimated(
            "mixed pot", plain.convectingDrivers(), k -> of(stirring(k).convecting()), false));
  }

  // --- window and cost

  private static WorkingWindow window(Optional<EstimateInput> known) {
    return WorkingWindow.of(
        Composition.ofParts(Stream.of(BEESWAX, CARNAUBA).map(m -> pinned(m, known)).toList(), 9, 1),
        TemperaturePoint.ofCelsius(90),
        TemperatureDifference.ofKelvin(10),
        TemperatureDifference.ofKelvin(5));
  }

  /** How far from ideal a mix is stands behind no door; half way is half way between the ends. */
  private static Estimated window() {
    return new Estimated(
        "clear point",
        window(Optional.empty()).clearPointDrivers(),
        k -> {
          TemperatureRange clear = window(k).clearPoint();
          double low = clear.low().celsius();
          double high = clear.high().celsius();
          if (isNamed(k, "how far")) {
            double idealOfHighs = idealOfHighs();
            return new double[] {
              low + (80 - low) / 2, central(), idealOfHighs + (high - idealOfHighs) / 2
            };
          }
          return new double[] {low, central(), high};
        },
        false);
  }

  private static double central() {
    return window(Optional.empty()).centralLowerBound().celsius() - 10;
  }

  /** The ideal liquidus where both waxes melt at the high ends of their ranges. */
  private static double idealOfHighs() {
    Material beeswax = molten(BEESWAX, at(BEESWAX, 65));
    Material carnauba = molten(CARNAUBA, at(CARNAUBA, 86));
    return WorkingWindow.of(
            Composition.ofParts(List.of(beeswax, carnauba), 9, 1),
            TemperaturePoint.ofCelsius(90),
            TemperatureDifference.ofKelvin(10),
            TemperatureDifference.ofKelvin(5))
        .clearPoint()
        .low()
        .celsius();
  }

  private static EstimateInput at(Material material, double celsius) {
    return EstimateInput.of(
        Symbol.beside(
            Estimated.class, "melting range (" + material.name(Locale.ENGLISH) + ")", "°C"),
        celsius,
        celsius,
        EstimateInput.Direction.RAISES);
  }

  /** 20 EUR of wax and 5 EUR of work for 0.8 kg, against 60 EUR a kilogram; each off by a tenth. */
  private static Estimated saving() {
    CostRollUp batch =
        CostRollUp.of(
            "batch",
            List.of(
                CostItem.of(CostKind.MATERIAL, "wax", ExactMoney.of(Money.parse("EUR 20"))),
                CostItem.of(CostKind.LABOUR, "work", ExactMoney.of(Money.parse("EUR 5")))));
    MakeOrBuy choice =
        MakeOrBuy.of(
            batch,
            QuantityKind.MASS.ofSi(0.8),
            List.of(ReadyMade.of("cakes", Money.parse("EUR 30"), QuantityKind.MASS.ofSi(0.5))));
    return new Estimated(
        "saving",
        choice.savingDrivers(Rate.ofPercent("10")),
        k -> {
          double low = end(k, "cakes", 54) - end(k, "wax", 27.5) - end(k, "work", 6.875);
          double high = end(k, "cakes", 66) - end(k, "wax", 22.5) - end(k, "work", 5.625);
          return new double[] {low, 60 - 25 - 6.25, high};
        },
        false);
  }
}
