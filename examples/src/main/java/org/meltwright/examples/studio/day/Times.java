// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.core.thermal.heat.HeatSupply;
import org.meltwright.core.thermal.setting.CakeSetting;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.OpenTime;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.core.thermal.settling.MeltBath;
import org.meltwright.core.thermal.settling.StirringInterval;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.safety.heating.HeatingLimits;
import org.meltwright.units.Estimate;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/**
 * The times that decide at the bench: all is molten, stir again, the stroke drags, the cake is out.
 *
 * <p>What the file does not state is taken as said beside each of them, as common practice has it.
 */
public final class Times {

  /** Well ground clumps of pigment in m, and a medium's density and viscosity in SI units. */
  private static final QuantityRange<Length> CLUMPS =
      new QuantityRange<>(QuantityKind.LENGTH, 2e-6, 10e-6);

  private static final double LIGHTEST_MELT = 820;
  private static final double HEAVIEST_MELT = 850;
  private static final double THINNEST_MELT = 0.010;
  private static final double THICKEST_MELT = 0.030;

  /** What a brush takes from, in m, and the share of the colour that may be lost. */
  private static final double LAYER = 0.005;

  private static final double LOST = 0.1;

  /** How thick a cake is, as a share of the side of a cube that is as large. */
  private static final double FLATTEST = 0.35;

  private static final double THICKEST = 0.75;

  private final Job job;
  private final @Nullable Brushing brushing;
  private final List<Line> lines = new ArrayList<>();

  /**
   * A time, and what it rests on.
   *
   * @param name what it is until, by the key of its words
   * @param time the time
   * @param basis what was taken, and what to measure first
   */
  public record Line(String name, Known<Estimate<Time>> time, Phrase basis) {}

  /**
   * Returns the times of a job that may be done.
   *
   * @param job the job
   * @param batch what is in the pot, if it is known
   * @param pot the pot
   * @param brushing what is brushed on which panel
   * @return the times, in the order of the day
   */
  public static List<Line> of(
      Job job, Batch batch, PotSheet pot, @Nullable Known<Brushing> brushing) {
    Times times = new Times(job, brushing == null ? null : brushing.value().orElse(null));
    times.melted(batch);
    times.stir(pot.room().value());
    times.brushed();
    job.casting().ifPresent(times::set);
    return times.lines;
  }

  private Times(Job job, @Nullable Brushing brushing) {
    this.job = job;
    this.brushing = brushing;
  }

  private void add(
      String name, Optional<Estimate<Time>> time, Supplier<NotKnown> reason, Phrase basis) {
    lines.add(new Line(name, Known.of(time, reason), basis));
  }

  private NotKnown unknown(String name, Phrase why) {
    return new NotKnown(Phrase.of(name), why, Phrase.of("times.remedy"));
  }

  private TemperaturePoint hot() {
    return Optional.ofNullable(job.heating().reading()).orElse(HeatingLimits.standard().target());
  }

  /** At full power, of which 30 to 60 % reach the pot; a thermostat gives less. */
  private void melted(Batch batch) {
    Optional<Estimate<Time>> time =
        job.heating().source().powerWatts().stream()
            .boxed()
            .findFirst()
            .flatMap(watts -> melted(batch, watts));
    Phrase why =
        job.heating().source().powerWatts().isEmpty()
            ? Phrase.of("times.no-power", "source", job.heating().source().name())
            : NotKnown.whyNoClearPoint(job.mix());
    add("times.melted", time, () -> unknown("times.melted", why), Phrase.of("times.melted.basis"));
  }

  private Optional<Estimate<Time>> melted(Batch batch, double watts) {
    double middle = (Costing.LEAST_EFFICIENCY + Costing.MOST_EFFICIENCY) / 2;
    return HeatDemand.find(batch.charge(), Costing.ROOM, hot(), HeatAssumptions.TYPICAL)
        .map(heat -> heat.withVessel(job.heating().vessel()))
        .map(
            heat ->
                heat.timeOn(
                    HeatSupply.constantPower(watts * Costing.LEAST_EFFICIENCY),
                    HeatSupply.constantPower(watts * middle),
                    HeatSupply.constantPower(watts * Costing.MOST_EFFICIENCY)));
  }

  /** Only what holds a pigment or filler settles; the neediest counts. */
  private void stir(Optional<VesselRoom> room) {
    List<Material> powders = job.mix().materials().stream().flatMap(Times::powders).toList();
    if (powders.isEmpty()) {
      return;
    }
    double depth = depth(room);
    Optional<Estimate<Time>> time = neediest(powders, depth).map(StirringInterval::convecting);
    add(
        "times.stir",
        time,
        () -> unknown("times.stir", Phrase.of("times.no-density", "materials", powders)),
        Phrase.of("times.stir.basis", "depth", Math.round(depth * 1000)));
  }

  private static Stream<Material> powders(Material material) {
    boolean isPowder =
        material.family() == MaterialFamily.PIGMENT || material.family() == MaterialFamily.FILLER;
    return isPowder
        ? Stream.of(material)
        : material.constituents().stream().map(Constituent::material).flatMap(Times::powders);
  }

  /** The depth in a pot that is as wide as it is high. */
  private double depth(Optional<VesselRoom> room) {
    double capacity = job.heating().vessel().capacityCubicMetres();
    double fill = Math.min(1, room.map(VesselRoom::fillLevel).orElse(0.5));
    return Math.max(2 * LAYER, fill * Math.cbrt(4 * capacity / Math.PI));
  }

  private Optional<StirringInterval> neediest(List<Material> powders, double depth) {
    MeltBath bath =
        new MeltBath(
            new QuantityRange<>(QuantityKind.DENSITY, LIGHTEST_MELT, HEAVIEST_MELT),
            new QuantityRange<>(QuantityKind.DYNAMIC_VISCOSITY, THINNEST_MELT, THICKEST_MELT),
            depth,
            LAYER,
            hot());
    List<StirringInterval> each =
        powders.stream()
            .flatMap(
                p ->
                    worked(() -> StirringInterval.of(p, CLUMPS, VolumeFraction.ZERO, bath, LOST))
                        .stream())
            .toList();
    return StirringInterval.byNeed(each).stream().findFirst();
  }

  /** With the stroke and panel of the file, at the temperature of the room. */
  private void brushed() {
    if (brushing == null) {
      return;
    }
    Optional<Estimate<Time>> time =
        molten()
            .flatMap(
                f ->
                    worked(
                        () ->
                            OpenTime.of(
                                    new Film(f, brushing.stroke(), hot()),
                                    brushing.panel(),
                                    Surroundings.stillRoom(brushing.air()))
                                .halfSet()));
    add(
        "times.brush",
        time,
        () -> unknown("times.brush", whyNotMolten()),
        Phrase.of("times.brush.basis"));
  }

  private Optional<MeltFigures> figures() {
    return MeltFigures.find(job.mix(), MeltFigures.TYPICAL);
  }

  /** The figures of a melt that is read hotter than where it is all liquid. */
  private Optional<MeltFigures> molten() {
    return figures().filter(f -> hot().celsius() > f.central().heat().liquidusCelsius());
  }

  /** Without figures it has no melting point; with them it does not reach it. */
  private Phrase whyNotMolten() {
    return figures().isPresent()
        ? Phrase.of("times.not-molten")
        : NotKnown.whyNoClearPoint(job.mix());
  }

  private void set(Job.Cast cast) {
    double side = Math.cbrt(cast.mould().cupCubicMetres() * cast.fill().value());
    QuantityRange<Length> thickness =
        new QuantityRange<>(QuantityKind.LENGTH, FLATTEST * side, THICKEST * side);
    Optional<Estimate<Time>> time =
        molten()
            .flatMap(
                f ->
                    worked(
                        () ->
                            CakeSetting.of(
                                    f,
                                    thickness,
                                    hot(),
                                    Surroundings.stillRoom(Costing.ROOM),
                                    faces(cast.mould().material()))
                                .byConduction()));
    add(
        "times.mould",
        time,
        () -> unknown("times.mould", whyNotMolten()),
        Phrase.of(
            "times.mould.basis",
            "thin",
            Math.round(thickness.lowSi() * 1000),
            "thick",
            Math.round(thickness.highSi() * 1000)));
  }

  private static CakeSetting.Faces faces(VesselMaterial mould) {
    return switch (mould) {
      case STEEL, STAINLESS_STEEL, ALUMINIUM, COPPER -> CakeSetting.Faces.BOTH;
      default -> CakeSetting.Faces.TOP;
    };
  }

  /**
   * What the figures allow; temperatures out of order, such as of wax that is not molten, do not.
   */
  private static <T> Optional<T> worked(Supplier<T> work) {
    try {
      return Optional.of(work.get());
    } catch (ProblemException outOfOrder) {
      return Optional.empty();
    }
  }
}
