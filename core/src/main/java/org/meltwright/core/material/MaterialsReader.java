// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
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

  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final Map<String, MaterialEntry> entries = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private String path = "";
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

  /** Reads one file to its end. */
  void read(String name, String text) {
    int number = 0;
    for (String line : (Iterable<String>) text.lines()::iterator) {
      path = "/" + name + "/" + ++number;
      String content = line.strip();
      if (!content.isEmpty() && content.charAt(0) != '#') {
        guarded(() -> line(content));
      }
    }
    guarded(this::close);
  }

  private void guarded(Runnable step) {
    try {
      step.run();
    } catch (ProblemException e) {
      problems.addAll(e.under(path).problems());
    }
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

  private void startMaterial(String id) {
    close();
    entry = new MaterialEntry(id, path);
    if (entries.putIfAbsent(id, entry) != null) {
      throw problem(MaterialProblem.TWICE, id);
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
    if (ended != null) {
      ended.addTo();
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
    switch (key) {
      case "en" -> material.english = value;
      case "de" -> material.german = value;
      case "also" -> words(value, ";").forEach(material.builder::otherName);
      case "family" -> material.family = Words.parse(MaterialFamily.class, value);
      case "role" -> material.role = Words.parse(MaterialRole.class, value);
      case "part" -> part(material, value);
      case "either" ->
          words(value, ",")
              .forEach(id -> material.alternatives.add(new MaterialEntry.Part(id, null, path)));
      case "unknown" -> absent(material, value);
      default -> sourced(material, key, value);
    }
  }

  private static List<String> words(String value, String separator) {
    List<String> words = new ArrayList<>();
    for (String word : value.split(separator, -1)) {
      words.add(word.strip());
    }
    return words;
  }

  private void part(MaterialEntry material, String value) {
    int comma = value.indexOf(',');
    if (comma < 1) {
      throw problem(MaterialProblem.LINE, "part: " + value);
    }
    MassFractionRange share = new FractionType().parse(value.substring(comma + 1).strip());
    material.parts.add(new MaterialEntry.Part(value.substring(0, comma).strip(), share, path));
  }

  private static void absent(MaterialEntry material, String value) {
    String[] fields = value.split(FIELD, 2);
    String reason = fields.length < 2 ? "" : fields[1].strip();
    material.builder.absent(property(fields[0].strip()), reason);
  }

  private static PropertyKey<?> property(String id) {
    return PropertyKey.find(id).orElseThrow(() -> problem(MaterialProblem.KEY, id));
  }

  private void sourced(MaterialEntry material, String key, String value) {
    Optional<IdentifierScheme> scheme = IdentifierScheme.find(key);
    if (scheme.isPresent()) {
      identifier(material, scheme.get(), value);
    } else {
      figure(material, property(key), value);
    }
  }

  private void identifier(MaterialEntry material, IdentifierScheme scheme, String line) {
    String[] fields = fields(scheme.id(), line);
    Sourced<String> sourced = sourced(scheme.require(fields[0]), fields);
    pending = new Pending<>(sourced, s -> material.builder.identifier(scheme, s));
  }

  private <V> void figure(MaterialEntry material, PropertyKey<V> key, String line) {
    String[] fields = fields(key.id(), line);
    Sourced<V> sourced = sourced(key.parse(fields[0]), fields);
    pending = new Pending<>(sourced, s -> material.builder.figure(key, s));
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

  private Source source(String citation) {
    int comma = citation.indexOf(',');
    String id = comma < 0 ? citation : citation.substring(0, comma);
    Source found = sources.get(id);
    if (found == null) {
      throw problem(MaterialProblem.SOURCE, id);
    }
    return comma < 0 ? found : found.at(citation.substring(comma + 1).strip());
  }

  /** A figure whose remarks may still follow. */
  private static final class Pending<V> {

    private final java.util.function.Consumer<Sourced<V>> target;
    private Sourced<V> sourced;

    Pending(Sourced<V> sourced, java.util.function.Consumer<Sourced<V>> target) {
      this.sourced = sourced;
      this.target = target;
    }

    void remark(String key, String text) {
      UnaryOperator<Sourced<V>> change =
          switch (key) {
            case "first" -> s -> s.preferred(text);
            case "barred" -> s -> s.barredFromRules(text);
            default -> s -> s.withNote(text);
          };
      sourced = change.apply(sourced);
    }

    void addTo() {
      target.accept(sourced);
    }
  }

  /** A source as its lines state it. */
  private static final class SourceLines {

    private final String id;
    private String title = "";
    private String edition = Source.NOT_STATED;
    private String year = Source.NOT_STATED;
    private SourceKind kind = SourceKind.WEB_PAGE;

    SourceLines(String id) {
      this.id = id;
      this.title = id;
    }

    void line(String key, String value) {
      switch (key) {
        case "title" -> title = value;
        case "edition" -> edition = value;
        case "year" -> year = value;
        case "kind" -> kind = Words.parse(SourceKind.class, value);
        default -> throw problem(MaterialProblem.KEY, key);
      }
    }

    Source build() {
      return new Source(id, title, edition, year, kind);
    }
  }
}
