// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.file.StudioFile;
import org.meltwright.examples.studio.page.Edition;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.page.TextPage;
import org.meltwright.examples.studio.sheet.SheetPage;

/** A small studio file, put together part by part; all of it is invented. */
final class StudioText {

  /** An English reader, on a day that does not change. */
  static final Edition EDITION = new Edition(Say.ENGLISH, LocalDate.of(2026, 12, 1), "studio.json");

  /** Cups of 30 ml, filled to 80 %. */
  static final String CAST = "\"cast\": { \"mould\": \"mini\", \"fill\": \"80 %\" }";

  static final String CAST_MEASURED =
      "\"cast\": { \"mould\": \"mini\", \"fill\": \"80 %\", \"meltDensity\": \"0.85 g/ml\" }";

  private final List<String> shelf = new ArrayList<>();
  private final List<String> recipes = new ArrayList<>();
  private final List<String> today = new ArrayList<>();
  private String plate = "\"kind\": \"hot-plate\", \"setPoint\": \"82 °C\", \"overshoot\": \"6 K\"";
  private String more = "";
  private String cup = "30 ml";
  private String reading = "80 °C";

  StudioText shelf(String id, String material) {
    return shelf(id, material, "\"packages\": [ \"20 EUR/1 kg\", \"9 EUR/250 g\" ]");
  }

  StudioText unpriced(String id, String material) {
    return shelf(id, material, "\"form\": \"a gift\"");
  }

  private StudioText shelf(String id, String material, String rest) {
    shelf.add(
        "{ \"id\": \"%s\", \"material\": \"%s\", \"stock\": \"2 kg\", \"balance\": \"fine\", %s }"
            .formatted(id, material, rest));
    return this;
  }

  /** A recipe of one part alone; its id is its name. */
  StudioText alone(String name, String part) {
    return recipe(name, "{ \"of\": \"%s\", \"rest\": true }".formatted(part));
  }

  /** A recipe of a share of one part, the rest another; its id is its name. */
  StudioText share(String name, String part, String share, String rest) {
    return recipe(
        name,
        "{ \"of\": \"%s\", \"share\": \"%s\" }, { \"of\": \"%s\", \"rest\": true }"
            .formatted(part, share, rest));
  }

  private StudioText recipe(String name, String parts) {
    recipes.add(
        "{ \"id\": \"%1$s\", \"name\": \"%1$s\", \"parts\": [ %2$s ] }".formatted(name, parts));
    return this;
  }

  /** A job that reads 80 °C in the wax. */
  StudioText job(String recipe, String make, String... more) {
    List<String> fields =
        new ArrayList<>(
            List.of(
                "\"recipe\": \"" + recipe + "\"",
                "\"make\": { " + make + " }",
                "\"vessel\": \"pot\", \"heatSource\": \"plate\", \"held\": \"1 h\"",
                "\"thermometer\": \"dip\", \"reading\": \"" + reading + "\""));
    fields.addAll(List.of(more));
    today.add("{ " + String.join(", ", fields) + " }");
    return this;
  }

  StudioText job(String recipe) {
    return job(recipe, "\"total\": \"300 g\"");
  }

  /** The volume of a cup of the mould. */
  StudioText moulds(String volume) {
    cup = volume;
    return this;
  }

  /** What is read in the wax of the jobs that follow. */
  StudioText reading(String temperature) {
    reading = temperature;
    return this;
  }

  /** What heats: kind, set point and overshoot, as far as stated. */
  StudioText plate(String fields) {
    plate = fields;
    return this;
  }

  StudioText brushing(String recipe) {
    more +=
        """
        , "brushing": { "recipe": "%s", "melts": [ "80 °C" ], "panel": "wood", "thickness": "10 mm",
          "stroke": "0.2 to 0.5 mm", "air": "20 °C", "panels": [ "20 °C", "40 °C" ] }
        """
            .formatted(recipe);
    return this;
  }

  /** A class of eight who work with recipes in equal shares; the first is the rest. */
  StudioText classDay(String... paints) {
    List<String> all = new ArrayList<>();
    for (String paint : paints) {
      String share =
          all.isEmpty() ? "\"rest\": true" : "\"share\": \"" + 100 / paints.length + " %\"";
      all.add(
          ("{ \"recipe\": \"%s\", %s, \"vessel\": \"pot\", \"fill\": \"50 %%\","
                  + " \"heatSource\": \"plate\", \"thermometer\": \"dip\", \"reading\": \"80 °C\" }")
              .formatted(paint, share));
    }
    more +=
        """
        , "classDay": { "title": "An afternoon", "date": "2026-12-05", "hours": "3 h",
          "people": { "teachers": 1, "adults": 8, "minors": 0 },
          "panels": { "perPerson": 4, "width": "20 cm", "height": "20 cm", "layers": 10,
            "film": "150 µm" },
          "paints": [ %s ],
          "fee": { "perPerson": "14 EUR", "fixed": "42 EUR", "margin": "20 %%", "step": "5 EUR" } }
        """
            .formatted(String.join(", ", all));
    return this;
  }

  String json() {
    return """
        { "studio": { "name": "Atelier", "town": "Niederlohbach", "currency": "EUR",
            "electricityPerKilowattHour": "0.34 EUR", "labourPerHour": "18.00 EUR" },
          "room": { "volume": "75 m³", "extractionPerHour": "750 m³" },
          "people": { "teachers": 1, "adults": 0, "minors": 0 },
          "balances": [ { "id": "fine", "capacity": "5 kg", "interval": "0.1 g" } ],
          "vessels": [ { "id": "pot", "material": "stainless-steel", "lining": "none",
            "bottom": "flat", "capacity": "2 l", "mass": "640 g" } ],
          "moulds": [ { "id": "mini", "material": "silicone", "cups": 24, "cup": "%s" } ],
          "thermometers": [ { "id": "dip", "place": "liquid", "interval": "0.5 K",
            "tolerance": "1 K" } ],
          "heatSources": [ { "id": "plate", %s } ],
          "shelf": [ %s ], "recipes": [ %s ], "today": [ %s ] %s }
        """
        .formatted(
            cup,
            plate,
            String.join(",\n", shelf),
            String.join(",\n", recipes),
            String.join(",\n", today),
            more);
  }

  Sheet sheet(MaterialCatalogue catalogue) throws IOException {
    return Sheet.of(
        StudioFile.read(
            new ByteArrayInputStream(json().getBytes(StandardCharsets.UTF_8)), catalogue),
        Say.ENGLISH);
  }

  /** The sheet as it is printed, each run of spaces one space. */
  static String print(Sheet sheet) {
    return TextPage.of(SheetPage.of(sheet, StudioText.EDITION)).replaceAll("\\s+", " ");
  }
}
