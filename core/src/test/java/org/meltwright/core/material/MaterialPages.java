// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.source.Sourced;

/** The reference pages on materials, written from the data. */
final class MaterialPages {

  private final MaterialCatalogue catalogue;

  MaterialPages(MaterialCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The number of figures by kind of source and by how they are known. */
  String counts() {
    Map<SourceKind, Map<Knowledge, Integer>> counts = new EnumMap<>(SourceKind.class);
    for (CatalogueFigure<?> figure : catalogue.figures()) {
      counts
          .computeIfAbsent(figure.sourced().source().kind(), k -> new EnumMap<>(Knowledge.class))
          .merge(figure.sourced().knowledge(), 1, Integer::sum);
    }
    List<String> lines = new ArrayList<>();
    lines.add(row("kind of source", "read", "restated", "derived", "from memory", "all"));
    lines.add("|---|--:|--:|--:|--:|--:|");
    counts.forEach((kind, row) -> lines.add(countRow(words(kind), row)));
    Map<Knowledge, Integer> totals = new EnumMap<>(Knowledge.class);
    counts.values().forEach(row -> row.forEach((k, n) -> totals.merge(k, n, Integer::sum)));
    lines.add(countRow("**all**", totals));
    lines.add("");
    lines.add(
        "%d materials, %d figures, %d identifiers, %d sources."
            .formatted(
                catalogue.all().size(),
                catalogue.figures().size(),
                identifiers(),
                catalogue.bibliography().size()));
    return String.join("\n", lines);
  }

  private static String countRow(String name, Map<Knowledge, Integer> row) {
    int all = row.values().stream().mapToInt(Integer::intValue).sum();
    return row(
        name,
        count(row, Knowledge.READ),
        count(row, Knowledge.RESTATED),
        count(row, Knowledge.DERIVED),
        count(row, Knowledge.REMEMBERED),
        Integer.toString(all));
  }

  private static String count(Map<Knowledge, Integer> row, Knowledge knowledge) {
    return Integer.toString(row.getOrDefault(knowledge, 0));
  }

  private int identifiers() {
    int count = 0;
    for (Material material : catalogue.all()) {
      for (IdentifierScheme scheme : IdentifierScheme.values()) {
        count += material.identifiers(scheme).size();
      }
    }
    return count;
  }

  /** All materials by family, each with a table of its figures. */
  String materials() {
    List<String> parts = new ArrayList<>();
    for (MaterialFamily family : MaterialFamily.values()) {
      List<Material> members = catalogue.byFamily(family);
      if (!members.isEmpty()) {
        parts.add("## Family: " + words(family));
        members.forEach(m -> parts.add(material(m)));
      }
    }
    return String.join("\n\n", parts);
  }

  private static String material(Material material) {
    List<String> lines = new ArrayList<>();
    lines.add("### " + material.name(Locale.ENGLISH) + " (`" + material.id() + "`)");
    lines.add("");
    lines.add("German: " + material.name(Locale.GERMAN) + ".");
    if (!material.otherNames().isEmpty()) {
      lines.add("Also: " + String.join("; ", material.otherNames()) + ".");
    }
    lines.add("Role: " + words(material.role()) + ".");
    identifiers(material).forEach(lines::add);
    if (!material.constituents().isEmpty()) {
      lines.add("Parts by mass: " + parts(material) + ".");
    }
    if (!material.alternatives().isEmpty()) {
      lines.add("One of: " + ids(material.alternatives()) + "; its figures span theirs.");
    }
    for (PropertyKey<?> key : material.absences()) {
      lines.add("Not known: " + words(key) + ". " + material.absence(key).orElse(""));
    }
    lines.add("");
    if (!material.properties().isEmpty()) {
      lines.add(row("property", "figure", "source", "known", "remarks"));
      lines.add("|---|---|---|---|---|");
      material.properties().forEach(key -> addRows(lines, material, key));
    }
    return String.join("\n", lines).stripTrailing();
  }

  private static List<String> identifiers(Material material) {
    List<String> lines = new ArrayList<>();
    for (IdentifierScheme scheme : IdentifierScheme.values()) {
      for (Sourced<String> identifier : material.identifiers(scheme)) {
        lines.add(
            label(scheme)
                + " "
                + identifier.value()
                + " ("
                + cited(identifier.source())
                + "; "
                + identifier.knowledge().inWords().english()
                + identifier.note().map(n -> "; " + n).orElse("")
                + ").");
      }
    }
    return lines;
  }

  private static String label(IdentifierScheme scheme) {
    return switch (scheme) {
      case CAS -> "CAS";
      case EC -> "EC";
      case COLOUR_INDEX_NAME -> "Colour Index name";
      case COLOUR_INDEX_NUMBER -> "Colour Index number";
    };
  }

  private static String parts(Material material) {
    return material.constituents().stream()
        .map(c -> "`" + c.material().id() + "` " + PropertyType.fraction().format(c.share()))
        .collect(Collectors.joining(", "));
  }

  private static String ids(List<Material> materials) {
    return materials.stream().map(m -> "`" + m.id() + "`").collect(Collectors.joining(", "));
  }

  private static <V> void addRows(List<String> lines, Material material, PropertyKey<V> key) {
    String name = words(key);
    for (Sourced<V> figure : material.figures(key)) {
      lines.add(
          row(
              name,
              shown(key.format(figure.value())),
              cited(figure.source()),
              figure.knowledge().inWords().english(),
              remarks(figure)));
      name = "";
    }
  }

  private static String shown(String text) {
    return text.replace(">= ", "≥ ").replaceAll("(?<=[0-9]) to (?=[-0-9])", "–");
  }

  private static String cited(Source source) {
    String place = source.locator().map(l -> ", " + l).orElse("");
    return "[" + source.id() + "](bibliography.md#" + source.id() + ")" + place;
  }

  private static String remarks(Sourced<?> figure) {
    List<String> remarks = new ArrayList<>();
    figure.preferredBecause().ifPresent(r -> remarks.add("*first:* " + r));
    figure.note().ifPresent(remarks::add);
    figure.barredBecause().ifPresent(r -> remarks.add("**not for rules:** " + r));
    return String.join("; ", remarks);
  }

  /** All sources by id, with the number of figures that lean on each and how each was seen. */
  String bibliography() {
    Map<String, Map<Knowledge, Integer>> uses = uses();
    List<String> lines = new ArrayList<>();
    lines.add(
        row(
            "id",
            "source",
            "edition",
            "year",
            "kind",
            "figures",
            "read",
            "restated",
            "derived",
            "from memory"));
    lines.add("|---|---|---|---|---|--:|--:|--:|--:|--:|");
    catalogue.bibliography().stream()
        .sorted(java.util.Comparator.comparing(Source::id))
        .forEach(s -> lines.add(sourceRow(s, uses.getOrDefault(s.id(), Map.of()))));
    return String.join("\n", lines);
  }

  private static String sourceRow(Source s, Map<Knowledge, Integer> uses) {
    return row(
        "<a id=\"" + s.id() + "\"></a>`" + s.id() + "`",
        s.title(),
        s.locator().orElse("not stated"),
        s.year().orElse("not stated"),
        words(s.kind()),
        Integer.toString(uses.values().stream().mapToInt(Integer::intValue).sum()),
        count(uses, Knowledge.READ),
        count(uses, Knowledge.RESTATED),
        count(uses, Knowledge.DERIVED),
        count(uses, Knowledge.REMEMBERED));
  }

  private Map<String, Map<Knowledge, Integer>> uses() {
    Map<String, Map<Knowledge, Integer>> uses = new TreeMap<>();
    catalogue.figures().forEach(f -> count(uses, f.sourced()));
    for (Material material : catalogue.all()) {
      for (IdentifierScheme scheme : IdentifierScheme.values()) {
        material.identifiers(scheme).forEach(i -> count(uses, i));
      }
    }
    return uses;
  }

  private static void count(Map<String, Map<Knowledge, Integer>> uses, Sourced<?> figure) {
    uses.computeIfAbsent(figure.source().id(), id -> new EnumMap<>(Knowledge.class))
        .merge(figure.knowledge(), 1, Integer::sum);
  }

  /** The words of the format: properties with the type of their value. */
  String properties() {
    return PropertyKey.all().stream()
        .map(key -> "`" + key.id() + "`")
        .collect(Collectors.joining(", "));
  }

  private static String row(String... cells) {
    return "| " + String.join(" | ", cells) + " |";
  }

  private static String words(Enum<?> constant) {
    return Words.of(constant).replace('-', ' ');
  }

  private static String words(PropertyKey<?> key) {
    return key.id().replace('-', ' ');
  }
}
