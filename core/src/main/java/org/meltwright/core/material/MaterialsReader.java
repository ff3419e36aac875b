// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.meltwright.core.material.MaterialProblem.CHECK;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * Reads materials files: one "key: value" a line, blocks that start with {@code source:} or {@code
 * material:}, and lines that start with {@code #} left out.
 *
 * <p>All problems are collected; each has the path {@code /file/line}.
 */
final class MaterialsReader {

  private static final String FIELD = "\\|";
  private static final String END = "\0";
  private static final String LOT = ", lot ";

  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final Map<String, Source> cited = new HashMap<>();
  private final Map<String, MaterialEntry> entries = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private String file = "";
  private int line;
  private @Nullable SourceLines source;
  private @Nullable MaterialEntry entry;
  private @Nullable Pending<?> pending;

  /** A reader that knows the sources of a bibliography already. */
  MaterialsReader(Map<String, Source> known) {
    for (Source fixed : List.of(Source.COMMON_PRACTICE, Source.CALCULATED, Source.USER)) {
      sources.put(fixed.id(), fixed);
    }
    sources.putAll(known);
  }

  Map<String, Source> sources() {
    return sources;
  }

  Map<String, MaterialEntry> entries() {
    return entries;
  }

  List<Problem> problems() {
    return problems;
  }

  /**
   * Reads one file to its end.
   *
   * <p>Line by line from the bytes: most lines are plain ASCII, which a text with a few other
   * letters in it would make twice as wide and slow. A byte order mark in front is left out.
   */
  void read(String name, byte[] utf8) {
    file = name;
    line = 0;
    int start = startsWithMark(utf8) ? 3 : 0;
    for (int end = start; end <= utf8.length; end++) {
      if (end == utf8.length || utf8[end] == '\n') {
        line++;
        line(utf8, start, end);
        start = end + 1;
      }
    }
    guarded(END);
  }

  /** Makes no text of indents, empty lines and what is left out. */
  private void line(byte[] utf8, int start, int end) {
    int first = start;
    while (first < end && utf8[first] == ' ') {
      first++;
    }
    if (first < end && utf8[first] != '#') {
      guarded(new String(utf8, first, end - first, StandardCharsets.UTF_8).strip());
    }
  }

  private static boolean startsWithMark(byte[] utf8) {
    return utf8.length >= 3
        && utf8[0] == (byte) 0xEF
        && utf8[1] == (byte) 0xBB
        && utf8[2] == (byte) 0xBF;
  }

  /** Reads one line, or closes the last block, and keeps what goes wrong. */
  private void guarded(String content) {
    try {
      if (content.equals(END)) {
        close();
      } else if (!content.isEmpty() && content.charAt(0) != '#') {
        line(content);
      }
    } catch (ProblemException e) {
      problems.addAll(e.under(path()).problems());
    }
  }

  private String path() {
    return String.join("/", "", file, Integer.toString(line));
  }

  private static ProblemException problem(MaterialProblem code, String found) {
    return new ProblemException(Problem.of(code, found));
  }

  private void line(String content) {
    int colon = content.indexOf(':');
    if (colon < 1) {
      throw problem(MaterialProblem.LINE, content);
    }
    String key = content.substring(0, colon);
    String value = content.substring(colon + 1).strip();
    switch (key) {
      case "source" -> startSource(value);
      case "material" -> startMaterial(value);
      case "first", "note", "barred" -> remark(key, value);
      default -> inBlock(key, value);
    }
  }

  private void startSource(String id) {
    close();
    source = new SourceLines(id);
  }

  /** "beeswax-yellow", or "beeswax-yellow, lot 7" for what is known of one lot. */
  private void startMaterial(String value) {
    close();
    int lot = value.indexOf(LOT);
    entry = new MaterialEntry(lot < 0 ? value : value.substring(0, lot).strip(), path());
    if (lot >= 0) {
      String name = value.substring(lot + LOT.length()).strip();
      entry.builder.content.lot = CHECK.named(name, "lot", entry.id);
    }
    if (entries.putIfAbsent(entry.key(), entry) != null) {
      throw problem(MaterialProblem.TWICE, entry.key());
    }
  }

  /** Ends what is open: the last figure and the block around it. */
  private void close() {
    flush();
    entry = null;
    SourceLines ended = source;
    source = null;
    if (ended != null && sources.put(ended.id, ended.build()) != null) {
      throw problem(MaterialProblem.TWICE, ended.id);
    }
  }

  private void flush() {
    Pending<?> ended = pending;
    pending = null;
    if (ended != null && entry != null) {
      ended.addTo(entry.builder);
    }
  }

  private void remark(String key, String value) {
    Pending<?> figure = pending;
    if (figure == null) {
      throw problem(MaterialProblem.LINE, key + ": " + value);
    }
    figure.remark(key, value);
  }

  private void inBlock(String key, String value) {
    flush();
    if (source != null) {
      source.line(key, value);
    } else if (entry != null) {
      material(entry, key, value);
    } else {
      throw problem(MaterialProblem.LINE, key + ": " + value);
    }
  }

  private void material(MaterialEntry material, String key, String value) {
    MaterialContent stated = material.builder.content;
    switch (key) {
      case "en" -> stated.englishName = CHECK.named(value, "name", material.id);
      case "de" -> stated.germanName = value.isEmpty() ? null : value;
      case "also" -> names(material, value);
      case "family" -> stated.family = Words.parse(MaterialFamily.class, value);
      case "role" -> stated.role = Words.parse(MaterialRole.class, value);
      case "part" -> part(material, value);
      case "either" -> alternatives(material, value);
      case "unknown" -> absent(material, value);
      default -> sourced(key, value);
    }
  }

  private static void names(MaterialEntry material, String value) {
    for (String name : value.split(";", -1)) {
      material.builder.otherName(name.strip());
    }
  }

  private void alternatives(MaterialEntry material, String value) {
    for (String id : value.split(",", -1)) {
      material.alternatives.add(new MaterialEntry.Part(id.strip(), null, path()));
    }
  }

  private void part(MaterialEntry material, String value) {
    int comma = value.indexOf(',');
    if (comma < 1) {
      throw problem(MaterialProblem.LINE, "part: " + value);
    }
    MassFractionRange share = PropertyType.fraction().parse(value.substring(comma + 1).strip());
    material.parts.add(new MaterialEntry.Part(value.substring(0, comma).strip(), share, path()));
  }

  private static void absent(MaterialEntry material, String value) {
    String[] fields = value.split(FIELD, 2);
    String reason = fields.length < 2 ? "" : fields[1].strip();
    material.builder.absent(property(fields[0].strip()), reason);
  }

  private static PropertyKey<?> property(String id) {
    Optional<PropertyKey<?>> key = PropertyKey.find(id);
    if (key.isEmpty()) {
      throw problem(MaterialProblem.KEY, id);
    }
    return key.get();
  }

  private void sourced(String key, String value) {
    Optional<IdentifierScheme> scheme = IdentifierScheme.find(key);
    if (scheme.isPresent()) {
      identifier(scheme.get(), value);
    } else {
      figure(property(key), value);
    }
  }

  private void identifier(IdentifierScheme scheme, String line) {
    String[] fields = fields(scheme.id(), line);
    Sourced<String> sourced = sourced(scheme.require(fields[0]), fields);
    pending = new PendingIdentifier(scheme, sourced);
  }

  private <V> void figure(PropertyKey<V> key, String line) {
    String[] fields = fields(key.id(), line);
    Sourced<V> sourced = sourced(key.parse(fields[0]), fields);
    pending = new PendingFigure<>(key, sourced);
  }

  /** Value, source and knowledge: a figure without one of them is not shipped. */
  private static String[] fields(String key, String line) {
    String[] fields = line.split(FIELD, -1);
    if (fields.length != 3) {
      throw problem(MaterialProblem.FIGURE, key + ": " + line);
    }
    for (int i = 0; i < fields.length; i++) {
      fields[i] = fields[i].strip();
    }
    return fields;
  }

  private <V> Sourced<V> sourced(V value, String[] fields) {
    return Sourced.of(value, source(fields[1]), Words.parse(Knowledge.class, fields[2]));
  }

  /** A source, or a place in it; many figures cite the same one. */
  private Source source(String citation) {
    Source known = cited.get(citation);
    if (known == null) {
      int comma = citation.indexOf(',');
      String id = comma < 0 ? citation : citation.substring(0, comma);
      Source found = sources.get(id);
      if (found == null) {
        throw problem(MaterialProblem.SOURCE, id);
      }
      known = comma < 0 ? found : found.at(citation.substring(comma + 1).strip());
      cited.put(citation, known);
    }
    return known;
  }

  /** A figure or an identifier whose remarks may still follow. */
  private abstract static class Pending<V> {

    Sourced<V> sourced;

    Pending(Sourced<V> sourced) {
      this.sourced = sourced;
    }

    void remark(String key, String text) {
      sourced =
          switch (key) {
            case "first" -> sourced.preferred(text);
            case "barred" -> sourced.barredFromRules(text);
            default -> sourced.withNote(text);
          };
    }

    abstract void addTo(Material.Builder builder);
  }

  private static final class PendingFigure<V> extends Pending<V> {

    private final PropertyKey<V> key;

    PendingFigure(PropertyKey<V> key, Sourced<V> sourced) {
      super(sourced);
      this.key = key;
    }

    @Override
    void addTo(Material.Builder builder) {
      builder.figure(key, sourced);
    }
  }

  private static final class PendingIdentifier extends Pending<String> {

    private final IdentifierScheme scheme;

    PendingIdentifier(IdentifierScheme scheme, Sourced<String> sourced) {
      super(sourced);
      this.scheme = scheme;
    }

    @Override
    void addTo(Material.Builder builder) {
      builder.identifier(scheme, sourced);
    }
  }

  /** A source as its lines state it. */
  private static final class SourceLines {

    private final String id;
    private String title = "";
    private Optional<String> edition = Optional.empty();
    private Optional<String> year = Optional.empty();
    private SourceKind kind = SourceKind.WEB_PAGE;

    SourceLines(String id) {
      this.id = id;
      this.title = id;
    }

    void line(String key, String value) {
      switch (key) {
        case "title" -> title = value;
        case "edition" -> edition = Optional.of(value);
        case "year" -> year = Optional.of(value);
        case "kind" -> kind = Words.parse(SourceKind.class, value);
        default -> throw problem(MaterialProblem.KEY, key);
      }
    }

    Source build() {
      return new Source(id, title, edition, year, kind);
    }
  }
}
