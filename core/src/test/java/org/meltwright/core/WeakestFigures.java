// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.meltwright.core.material.CatalogueFigure;
import org.meltwright.core.material.Combustibility;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.core.thermal.setting.Film;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.core.thermal.setting.OpenTime;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.core.thermal.setting.Surroundings;
import org.meltwright.core.thermal.settling.MeltBath;
import org.meltwright.core.thermal.settling.StirringInterval;
import org.meltwright.units.MaterialState;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/**
 * Figures that decide an answer and were not read, ranked by how much they move it: the answer is
 * worked out with the figure at the low and at the high end of all that is in print and usable.
 */
final class WeakestFigures {

  private static final double HARD_CEILING = 93.3;

  /** A figure, its two ends, and the answer at each. */
  record Weak(CatalogueFigure<?> figure, String span, String answer, double low, double high) {

    /** The difference of the answers by their middle, in per cent. */
    double percent() {
      return 100 * Math.abs(high - low) / (Math.abs(high + low) / 2);
    }
  }

  /** What a maker asks of one material. */
  private interface Answer {
    double of(Material material);
  }

  private static final Map<String, Answer> ANSWERS = new LinkedHashMap<>();

  static {
    ANSWERS.put("heat to bring 1 kg from 20 to 85 °C", WeakestFigures::heat);
    ANSWERS.put("room that 1 kg takes as a melt", WeakestFigures::room);
    ANSWERS.put("seconds until a stroke drags", WeakestFigures::openTime);
    ANSWERS.put("time between two stirrings", WeakestFigures::stirring);
    ANSWERS.put("time between two stirrings of oxide in it", WeakestFigures::standing);
    ANSWERS.put(
        "oil in the paint", m -> m.require(PropertyKey.OIL_CONTENT).value().middle().value());
    ANSWERS.put(
        "water in the paint", m -> m.require(PropertyKey.WATER_CONTENT).value().middle().value());
    ANSWERS.put(
        "dirt in the strainer", m -> m.require(PropertyKey.INSOLUBLES).value().middle().value());
    ANSWERS.put(
        "length that a casting loses",
        m -> m.require(PropertyKey.LINEAR_SHRINKAGE).value().middle());
    ANSWERS.put(
        "kelvins from the hard ceiling up to the flash point",
        m -> above(m, PropertyKey.FLASH_POINT));
    ANSWERS.put(
        "kelvins from the hard ceiling up to where its colour suffers",
        m -> above(m, PropertyKey.DECOMPOSITION_ONSET));
    ANSWERS.put("kelvins from all molten up to the hard ceiling", WeakestFigures::window);
  }

  private final MaterialCatalogue catalogue;

  WeakestFigures(MaterialCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** All of them, what moves its answer most first. */
  List<Weak> all() {
    List<Weak> found = new ArrayList<>();
    for (CatalogueFigure<?> figure : catalogue.figures()) {
      boolean weak = figure.rank() == 1 && figure.sourced().knowledge() != Knowledge.READ;
      if (weak && figure.sourced().isUsableForRules()) {
        ends(figure).ifPresent(ends -> found.addAll(moved(figure, ends)));
      }
    }
    found.sort(
        Comparator.comparingDouble(Weak::percent)
            .reversed()
            .thenComparing(w -> w.figure().toString())
            .thenComparing(Weak::answer));
    return found;
  }

  private List<Weak> moved(CatalogueFigure<?> figure, List<String> ends) {
    List<Weak> moved = new ArrayList<>();
    ANSWERS.forEach(
        (name, answer) -> {
          OptionalDouble low = answer(figure, ends.get(0), answer);
          OptionalDouble high = answer(figure, ends.get(1), answer);
          if (low.isPresent() && high.isPresent() && low.getAsDouble() != high.getAsDouble()) {
            String span = ends.get(0) + " … " + ends.get(1);
            moved.add(new Weak(figure, span, name, low.getAsDouble(), high.getAsDouble()));
          }
        });
    return moved;
  }

  private OptionalDouble answer(CatalogueFigure<?> figure, String end, Answer answer) {
    try {
      double found = answer.of(with(figure.material(), figure.key(), end));
      return Double.isFinite(found) ? OptionalDouble.of(found) : OptionalDouble.empty();
    } catch (org.meltwright.units.ProblemException notForThisMaterial) {
      return OptionalDouble.empty();
    }
  }

  private <V> Material with(Material material, PropertyKey<V> key, String end) {
    Sourced<V> one = Sourced.of(key.parse(end), Source.USER, Knowledge.READ);
    Material own = Material.builder(material.id()).figure(key, one).build();
    return catalogue.with(own).require(material.id());
  }

  /**
   * The lowest and the highest that is in print, usable and comparable; empty where there is one.
   */
  private static <V> Optional<List<String>> ends(CatalogueFigure<V> figure) {
    List<String> texts = new ArrayList<>();
    for (Sourced<V> usable : figure.material().usableFigures(figure.key())) {
      String text = figure.key().format(usable.value());
      if (isComparable(what(figure.text()), what(text))) {
        texts.add(text.replaceAll("^(\\S+) to \\S+", "$1"));
        texts.add(text.replaceAll("^\\S+ to (\\S+)", "$1"));
      }
    }
    texts.removeIf(t -> !t.matches("[0-9.]+( .*)?"));
    Comparator<String> byNumber = Comparator.comparingDouble(WeakestFigures::number);
    Optional<String> low = texts.stream().min(byNumber);
    return low.map(l -> List.of(l, texts.stream().max(byNumber).orElseThrow()))
        .filter(pair -> number(pair.get(0)) != number(pair.get(1)));
  }

  private static double number(String text) {
    return Double.parseDouble(text.split(" ", 2)[0]);
  }

  /** The temperature or the definition of a figure; empty where it states none. */
  private static String what(String text) {
    String stated = text.replaceAll("^.*?(?: at |, |$)", "");
    return stated.equals("not-stated") ? "" : stated;
  }

  /** A viscosity at 80 °C and one at 100 °C do not compare, nor a drop point and a peak. */
  private static boolean isComparable(String first, String other) {
    return first.equals(other) || first.isEmpty() || other.isEmpty();
  }

  private static boolean isWax(Material m) {
    return m.family() == MaterialFamily.WAX;
  }

  private static double heat(Material m) {
    Mixture one = Mixture.of(m, MetricUnits.kilograms(1));
    return isWax(m)
        ? HeatDemand.of(one, celsius(20), celsius(85), HeatAssumptions.TYPICAL)
            .totalHeat()
            .centralSi()
        : Double.NaN;
  }

  private static double room(Material m) {
    return isWax(m) ? 1 / Composition.of(m).density(MaterialState.LIQUID).centralSi() : Double.NaN;
  }

  private static double openTime(Material m) {
    if (!isWax(m) || m.role() != MaterialRole.BASE) {
      return Double.NaN;
    }
    MeltFigures melt = MeltFigures.of(Composition.of(m), MeltFigures.TYPICAL);
    return OpenTime.of(
            Film.of(melt, 3e-4, 4e-4, celsius(75)),
            Panel.of(PanelKind.WOOD, 0.010, celsius(20)),
            Surroundings.stillRoom(celsius(20)))
        .halfSet()
        .centralSi();
  }

  private static double stirring(Material m) {
    boolean settles = m.family() == MaterialFamily.PIGMENT || m.family() == MaterialFamily.FILLER;
    return settles ? quiet(m, 0.012) : Double.NaN;
  }

  private static double standing(Material m) {
    var viscosity = m.require(PropertyKey.VISCOSITY).value().range();
    Material oxide = MaterialCatalogue.standard().require("red-iron-oxide");
    return isWax(m) ? quiet(oxide, viscosity.middleSi()) : Double.NaN;
  }

  private static double quiet(Material particles, double viscosity) {
    MeltBath pot =
        MeltBath.of(
            new QuantityRange<>(QuantityKind.DENSITY, 835, 835),
            new QuantityRange<>(QuantityKind.DYNAMIC_VISCOSITY, viscosity, viscosity),
            MetricUnits.millimetres(50),
            MetricUnits.millimetres(5),
            celsius(80));
    var pieces = new QuantityRange<>(QuantityKind.LENGTH, 20e-6, 20e-6);
    return StirringInterval.of(particles, pieces, VolumeFraction.ZERO, pot, 0.1)
        .quiet()
        .centralSi();
  }

  private static double above(Material m, PropertyKey<DefinedTemperature> key) {
    boolean burns =
        m.find(PropertyKey.COMBUSTIBILITY)
            .filter(c -> c.value() == Combustibility.BURNS)
            .isPresent();
    double low = m.require(key).value().range().low().celsius();
    boolean inHotMelt = m.find(PropertyKey.USE_IN_HOT_MELT).isEmpty();
    return inHotMelt && (burns || key != PropertyKey.FLASH_POINT) ? low - HARD_CEILING : Double.NaN;
  }

  private static double window(Material m) {
    double molten = m.require(PropertyKey.MELTING_RANGE).value().range().high().celsius();
    return isWax(m) ? HARD_CEILING - molten : Double.NaN;
  }

  private static TemperaturePoint celsius(double value) {
    return TemperaturePoint.ofCelsius(value);
  }

  /** The list as a table of a page. */
  String table(int most) {
    List<String> lines = new ArrayList<>();
    lines.add("| material | property | ends | known | answer that it moves | by |");
    lines.add("|---|---|---|---|---|--:|");
    all().stream().limit(most).forEach(w -> lines.add(row(w)));
    return String.join("\n", lines);
  }

  private static String row(Weak w) {
    Material material = w.figure().material();
    return "| %s | %s | %s | %s | %s | %s %% |"
        .formatted(
            material.name(Locale.ENGLISH),
            w.figure().key().id().replace('-', ' '),
            w.span().replace(", not-stated", ""),
            w.figure().sourced().knowledge().inWords().english(),
            w.answer(),
            new BigDecimal(w.percent()).round(new MathContext(2)).toPlainString());
  }
}
