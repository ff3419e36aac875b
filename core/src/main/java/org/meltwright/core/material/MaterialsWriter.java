// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Writes materials files, as {@link MaterialsReader} reads them; for one file. */
final class MaterialsWriter {

  private static final List<Source> KNOWN =
      List.of(Source.COMMON_PRACTICE, Source.CALCULATED, Source.USER);

  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final StringBuilder blocks = new StringBuilder();

  /** A writer that cites the sources of a bibliography. */
  MaterialsWriter(Map<String, Source> bibliography) {
    sources.putAll(bibliography);
    KNOWN.forEach(source -> sources.put(source.id(), source));
  }

  /** The file of all sources and materials. */
  String write(Iterable<Material> materials) {
    materials.forEach(material -> write(material.content().changeable()));
    StringBuilder text = new StringBuilder();
    sources.values().stream()
        .filter(source -> !KNOWN.contains(source))
        .forEach(source -> write(source, text));
    return text.append(blocks).toString();
  }

  private static void write(Source source, StringBuilder text) {
    line(text, "source", source.id());
    line(text, "  title", source.title());
    line(text, "  edition", source.locator().orElse(null));
    line(text, "  year", source.year().orElse(null));
    line(text, "  kind", Words.of(source.kind()));
    text.append('\n');
  }

  private static void line(StringBuilder text, String key, @Nullable String value) {
    if (value != null) {
      text.append(key).append(": ").append(value).append('\n');
    }
  }

  private void write(MaterialContent material) {
    line(blocks, "material", material.id + (material.lot == null ? "" : ", lot " + material.lot));
    line(blocks, "  en", material.englishName);
    line(blocks, "  de", material.germanName);
    if (!material.otherNames.isEmpty()) {
      line(blocks, "  also", String.join("; ", material.otherNames));
    }
    line(blocks, "  family", material.family == null ? null : Words.of(material.family));
    line(blocks, "  role", material.role == null ? null : Words.of(material.role));
    material.identifiers.forEach(
        (scheme, all) -> all.forEach(each -> sourced(scheme.id(), each.value(), each)));
    material.constituents.forEach(this::part);
    if (!material.alternatives.isEmpty()) {
      List<String> all = material.alternatives.stream().map(Material::toString).toList();
      line(blocks, "  either", String.join(", ", all));
    }
    material.keys().forEach(key -> figures(key, material));
    material.absences.forEach(
        (key, why) -> line(blocks, "  unknown", key.id() + (why.isEmpty() ? "" : " | " + why)));
    blocks.append('\n');
  }

  private void part(Constituent part) {
    String share = PropertyType.fraction().format(part.share());
    line(blocks, "  part", part.material() + ", " + share);
  }

  @SuppressWarnings("unchecked") // the figures of a property are of its type
  private <V> void figures(PropertyKey<V> key, MaterialContent material) {
    for (Sourced<?> each : Objects.requireNonNull(material.figures.get(key))) {
      sourced(key.id(), key.format((V) each.value()), each);
    }
  }

  private void sourced(String key, String value, Sourced<?> figure) {
    String cited = citation(figure.source());
    line(blocks, "  " + key, value + " | " + cited + " | " + Words.of(figure.knowledge()));
    line(blocks, "    first", figure.preferredBecause().orElse(null));
    line(blocks, "    note", figure.note().orElse(null));
    line(blocks, "    barred", figure.barredBecause().orElse(null));
  }

  /** The id of a source, and the place in it; a source that nobody listed is listed. */
  private String citation(Source source) {
    Source listed =
        sources.computeIfAbsent(
            source.id(),
            id -> new Source(id, source.title(), Optional.empty(), source.year(), source.kind()));
    if (source.equals(listed)) {
      return source.id();
    }
    String edition = listed.locator().map(known -> known + ", ").orElse("");
    String place = source.locator().orElse("");
    if (place.startsWith(edition)) {
      place = place.substring(edition.length());
    }
    if (!listed.at(place).equals(source)) {
      throw new ProblemException(Problem.of(MaterialProblem.REFERENCE_SHARED, source.id()));
    }
    return source.id() + ", " + place;
  }
}
