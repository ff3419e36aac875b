// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * Plans written on one line, so that tables of cases can be read: "mix beeswax-yellow 8, damar 1;
 * plate 90 +10; liquid 88; pot steel none flat; full 50; torch".
 */
final class Plans {

  private static final Map<String, Kind> HEATS =
      Map.ofEntries(
          entry("plate", Kind.HOT_PLATE),
          entry("palette", Kind.HEATED_PALETTE),
          entry("cooker", Kind.SLOW_COOKER),
          entry("bath", Kind.WATER_BATH),
          entry("ring", Kind.OPEN_COIL_OR_GAS),
          entry("numbers", Kind.RING_WITH_NUMBERS),
          entry("oven", Kind.OVEN),
          entry("microwave", Kind.MICROWAVE),
          entry("heat-torch", Kind.TORCH),
          entry("heat-gun", Kind.HEAT_GUN),
          entry("heat-lamp", Kind.LAMP));

  private static final Map<String, SurfaceMethod> METHODS =
      Map.of(
          "probe", SurfaceMethod.PROBE,
          "matt", SurfaceMethod.INFRARED_ON_MATT,
          "metal", SurfaceMethod.INFRARED_ON_BARE_METAL);

  private static final Map<String, Kind> TOOLS =
      Map.of(
          "iron",
          Kind.IRON,
          "gun",
          Kind.HEAT_GUN,
          "torch",
          Kind.TORCH,
          "lamp",
          Kind.LAMP,
          "ring-beside",
          Kind.OPEN_COIL_OR_GAS);

  private static final Map<String, HeatingRules> RULES = new ConcurrentHashMap<>();

  private static final Map<String, Material> MATERIALS = new ConcurrentHashMap<>();

  private Plans() {}

  static HeatingReview review(String text) {
    return rules(text).review(parse(text));
  }

  /** The standard rules, with the limits that a text tightens: "limits 80 85 100 60 8". */
  static HeatingRules rules(String text) {
    return Stream.of(text.split(";"))
        .map(String::strip)
        .filter(clause -> clause.startsWith("limits "))
        .map(clause -> RULES.computeIfAbsent(clause, Plans::tightened))
        .findFirst()
        .orElse(HeatingRules.standard());
  }

  private static HeatingRules tightened(String clause) {
    String[] words = clause.split("\\s+");
    HeatingLimits limits =
        HeatingLimits.standard()
            .withHardCeiling(point(words[2]))
            .withTarget(point(words[1]))
            .withFloorLimit(point(words[3]))
            .withFlashMargin(kelvin(words[4]))
            .withLeastWidth(kelvin(words[5]));
    return HeatingRules.standard().withLimits(limits, "house rule");
  }

  static HeatingPlan parse(String text) {
    HeatingPlanBuilder plan = null;
    for (String clause : text.split(";")) {
      if (clause.isBlank()) {
        continue;
      }
      String[] words = clause.strip().split("\\s+", 2);
      String rest = words.length > 1 ? words[1] : "";
      if (words[0].equals("mix")) {
        plan = HeatingPlan.builder(mix(rest));
      } else {
        add(plan, words[0], rest.isEmpty() ? new String[0] : rest.split("\\s+"));
      }
    }
    return plan.build();
  }

  private static final Pattern PART =
      Pattern.compile("(own:\"[^\"]*\"\\S*|[^\\s,]+)(?:\\s+([0-9.]+))?");

  static Composition mix(String text) {
    List<Material> materials = new ArrayList<>();
    List<Double> parts = new ArrayList<>();
    for (MatchResult part : PART.matcher(text).results().toList()) {
      materials.add(MATERIALS.computeIfAbsent(part.group(1), Plans::material));
      parts.add(part.group(2) == null ? 1 : Double.parseDouble(part.group(2)));
    }
    return Composition.ofParts(
        materials, parts.stream().mapToDouble(Double::doubleValue).toArray());
  }

  static boolean isHeat(String word) {
    return HEATS.containsKey(word);
  }

  static boolean isSource(String word) {
    return isHeat(word) || TOOLS.containsKey(word);
  }

  /** Wax and resin, 8 : 1, as a material of its own name. */
  private static Material medium(String name) {
    return Material.builder(name)
        .names(name, name)
        .constituent(material("beeswax-yellow"), MassFractionRange.of(MassFraction.of(8.0 / 9)))
        .constituent(material("damar"), MassFractionRange.of(MassFraction.of(1.0 / 9)))
        .build();
  }

  /**
   * A material of the catalogue, or one that the user states: "pigment:PG21", "own:cold-wax",
   * "made:medium". What stands behind an "@" is its flash point; with none it has no flash point at
   * all.
   */
  private static Material material(String text) {
    if (text.startsWith("own:\"")) {
      return stated(text.substring(5, text.indexOf('"', 5)), text.substring(text.indexOf('"', 5)));
    }
    int at = text.indexOf('@');
    if (at >= 0) {
      return Flash.of(material(text.substring(0, at)), text.substring(at + 1));
    }
    if (text.startsWith("own:")) {
      return Material.builder(text.substring(4)).build();
    } else if (text.startsWith("made:")) {
      return medium(text.substring(5));
    }
    if (!text.startsWith("pigment:")) {
      return MaterialCatalogue.standard().require(text);
    }
    String name = text.substring(8);
    Material.Builder pigment =
        Material.builder("pigment-" + name.toLowerCase(Locale.ROOT))
            .names(name, name)
            .family(MaterialFamily.PIGMENT, MaterialRole.COLOURANT);
    return (name.startsWith("P") ? pigment.colourIndexName(name) : pigment.cas(name)).build();
  }

  private static final Map<String, MaterialFamily> FAMILIES =
      Map.of(
          "pigment", MaterialFamily.PIGMENT,
          "paint", MaterialFamily.OIL_PAINT,
          "solvent", MaterialFamily.SOLVENT,
          "wax", MaterialFamily.WAX,
          "resin", MaterialFamily.RESIN,
          "fragrance", MaterialFamily.FRAGRANCE);

  /** A name as a jar carries it, and what else is said: own:"Mennige"/pigment/cas=1314-41-6. */
  private static Material stated(String name, String facts) {
    Material.Builder own = Material.builder("own-" + name.toLowerCase(Locale.ROOT));
    own.names(name, name);
    for (String fact : facts.substring(1).split("/")) {
      String[] words = fact.split("=");
      switch (words[0]) {
        case "" -> {}
        case "cas" -> own.cas(words[1]);
        case "ci" -> own.colourIndexName(words[1]);
        case "flash" -> own.figure(PropertyKey.FLASH_POINT, flash(words[1]));
        case "water" -> own.figure(PropertyKey.WATER_CONTENT, water(words[1]));
        default ->
            own.family(FAMILIES.getOrDefault(words[0], MaterialFamily.OTHER), MaterialRole.BASE);
      }
    }
    return own.build();
  }

  private static Sourced<MassFractionRange> water(String percent) {
    return Sourced.of(PropertyKey.WATER_CONTENT.parse(percent + " %"), Source.USER, Knowledge.READ);
  }

  private static Sourced<DefinedTemperature> flash(String celsius) {
    return Sourced.of(
        PropertyKey.FLASH_POINT.parse(celsius + " °C, flash-closed-cup"),
        Source.USER,
        Knowledge.READ);
  }

  private static void add(HeatingPlanBuilder plan, String word, String[] rest) {
    if (HEATS.containsKey(word)) {
      plan.heat(source(word, HEATS.get(word), rest));
    } else if (TOOLS.containsKey(word)) {
      plan.tool(source(word, TOOLS.get(word), rest));
    } else {
      addFact(plan, word, rest);
    }
  }

  private static void addFact(HeatingPlanBuilder plan, String word, String[] rest) {
    switch (word) {
      case "liquid" -> plan.liquidReading(point(rest[0]));
      case "surface" -> surface(plan, rest);
      case "offset" -> plan.measuredOffset(kelvin(rest[0]));
      case "thermometer" -> plan.thermometer(thermometer(rest[0]));
      case "pot" -> plan.vessel(vessel(rest));
      case "full" -> plan.fillLevel(Double.parseDouble(rest[0]) / 100);
      case "hours" -> plan.hoursHeld(Double.parseDouble(rest[0]));
      case "room" -> plan.room(room(rest));
      case "people" -> plan.people(people(rest));
      case "no" -> plan.without(circumstance(rest[0]));
      case "no-others" -> plan.withoutOthers();
      case "limits" -> {} // of the rules, not of the plan
      default -> plan.circumstance(circumstance(word));
    }
  }

  private static Circumstance circumstance(String word) {
    return Circumstance.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  private static void surface(HeatingPlanBuilder plan, String[] rest) {
    if (rest.length > 1) {
      plan.surfaceReading(point(rest[0]), METHODS.get(rest[1]));
    } else {
      plan.surfaceReading(point(rest[0]));
    }
  }

  private static HeatSource source(String name, Kind kind, String[] rest) {
    HeatSource source = HeatSource.of(name, kind);
    for (String word : rest) {
      source =
          word.startsWith("+")
              ? source.withOvershoot(kelvin(word))
              : source.withSetPoint(point(word));
    }
    return source;
  }

  static TemperaturePoint point(String text) {
    return text.endsWith("F")
        ? TemperaturePoint.ofFahrenheit(Double.parseDouble(text.substring(0, text.length() - 1)))
        : TemperaturePoint.ofCelsius(Double.parseDouble(text));
  }

  private static TemperatureDifference kelvin(String text) {
    return TemperatureDifference.ofKelvin(Double.parseDouble(text));
  }

  private static Thermometer thermometer(String tolerance) {
    return new Thermometer("dip", Thermometer.Place.LIQUID, kelvin("1"), kelvin(tolerance));
  }

  private static Vessel vessel(String[] words) {
    Quantity<Mass> mass = MetricUnits.grams(300);
    return Vessel.of(
        "pot",
        VesselMaterial.valueOf(words[0].toUpperCase(Locale.ROOT).replace('-', '_')),
        Lining.valueOf(words[1].toUpperCase(Locale.ROOT).replace('-', '_')),
        Vessel.Bottom.valueOf(words[2].toUpperCase(Locale.ROOT)),
        MetricUnits.millilitres(1000),
        mass);
  }

  private static Room room(String[] words) {
    Room room = Room.of(QuantityKind.VOLUME.ofSi(Double.parseDouble(words[0])));
    return words.length > 1
        ? room.withExtractionCubicMetresPerHour(Double.parseDouble(words[1]))
        : room;
  }

  private static People people(String[] words) {
    People people =
        People.classOf(
            Integer.parseInt(words[0]), Integer.parseInt(words[1]), Integer.parseInt(words[2]));
    People aged = words.length > 3 ? people.withYoungest(Integer.parseInt(words[3])) : people;
    return words.length > 4 ? aged.withPotHandledByAdults() : aged;
  }
}
