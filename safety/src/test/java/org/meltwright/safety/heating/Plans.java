// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * Plans written on one line, so that tables of cases can be read: "mix beeswax-yellow 8, damar 1;
 * plate 90 +10; liquid 88; pot steel none flat; full 50; torch".
 */
final class Plans {

  private static final Map<String, Kind> HEATS =
      Map.of(
          "plate", Kind.HOT_PLATE,
          "palette", Kind.HEATED_PALETTE,
          "cooker", Kind.SLOW_COOKER,
          "bath", Kind.WATER_BATH,
          "ring", Kind.OPEN_COIL_OR_GAS);

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

  private Plans() {}

  static HeatingReview review(String text) {
    return HeatingRules.standard().review(parse(text));
  }

  static HeatingPlan parse(String text) {
    HeatingPlan.Builder plan = null;
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

  static Composition mix(String text) {
    List<Material> materials = new ArrayList<>();
    List<Double> parts = new ArrayList<>();
    for (String part : text.split(",")) {
      String[] words = part.strip().split("\\s+");
      materials.add(material(words[0]));
      parts.add(words.length > 1 ? Double.parseDouble(words[1]) : 1);
    }
    return Composition.ofParts(
        materials, parts.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** A material of the catalogue, or one that the user states: "pigment:PG21", "own:cold-wax". */
  private static Material material(String text) {
    if (text.startsWith("own:")) {
      return Material.builder(text.substring(4)).build();
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

  private static void add(HeatingPlan.Builder plan, String word, String[] rest) {
    if (HEATS.containsKey(word)) {
      plan.heat(source(word, HEATS.get(word), rest));
    } else if (TOOLS.containsKey(word)) {
      plan.tool(source(word, TOOLS.get(word), rest));
    } else {
      addFact(plan, word, rest);
    }
  }

  private static void addFact(HeatingPlan.Builder plan, String word, String[] rest) {
    switch (word) {
      case "liquid" -> plan.liquidReading(point(rest[0]));
      case "surface" -> plan.surfaceReading(point(rest[0]));
      case "offset" -> plan.measuredOffset(kelvin(rest[0]));
      case "thermometer" -> plan.thermometer(thermometer(rest[0]));
      case "pot" -> plan.vessel(vessel(rest));
      case "full" -> plan.fillLevel(Double.parseDouble(rest[0]) / 100);
      case "hours" -> plan.hoursHeld(Double.parseDouble(rest[0]));
      case "room" -> plan.room(room(rest));
      case "people" -> plan.people(people(rest));
      default ->
          plan.circumstance(Circumstance.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')));
    }
  }

  private static HeatSource source(String name, Kind kind, String[] rest) {
    HeatSource source = HeatSource.of(name, kind);
    if (rest.length > 0) {
      source = source.withSetPoint(point(rest[0]));
    }
    return rest.length > 1 ? source.withOvershoot(kelvin(rest[1])) : source;
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
    return new Room(
        Double.parseDouble(words[0]), words.length > 1 ? Double.parseDouble(words[1]) : Double.NaN);
  }

  private static People people(String[] words) {
    People people =
        People.classOf(
            Integer.parseInt(words[0]), Integer.parseInt(words[1]), Integer.parseInt(words[2]));
    return words.length > 3 ? people.withYoungest(Integer.parseInt(words[3])) : people;
  }
}
