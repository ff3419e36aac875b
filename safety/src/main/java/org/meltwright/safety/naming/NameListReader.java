// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.meltwright.safety.hazard.DustClass;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.hazard.PigmentHazards;
import org.meltwright.safety.naming.ListedName.Language;
import org.meltwright.safety.naming.ListedName.Use;
import org.meltwright.units.Bilingual;
import org.meltwright.units.TemperaturePoint;

/** Reads the list of hazard names; its form stands at the head of the file. */
final class NameListReader {

  private static final String FILE = "hazard-names.txt";

  private final List<ListedHazard> hazards = new ArrayList<>();
  private final List<ListedName> names = new ArrayList<>();

  /** The lines of the block that is being read, by their key. */
  private final Map<String, List<String>> block = new HashMap<>();

  static NameList read() {
    NameListReader reader = new NameListReader();
    text().lines().forEach(reader::line);
    reader.endBlock();
    return new NameList(reader.hazards, reader.names);
  }

  static String text() {
    try (InputStream in = NameListReader.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("the library lacks its data file " + FILE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void line(String line) {
    if (line.isBlank()) {
      endBlock();
    } else if (!line.startsWith("#")) {
      int colon = line.indexOf(':');
      block
          .computeIfAbsent(line.substring(0, colon).strip(), k -> new ArrayList<>())
          .add(line.substring(colon + 1).strip());
    }
  }

  private void endBlock() {
    if (block.containsKey("entry")) {
      ListedHazard hazard = hazard();
      hazards.add(hazard);
      for (Language language : Language.values()) {
        addNames(hazard, language, Use.ANYWHERE, language.id());
        addNames(hazard, language, Use.ALONE, language.id() + "-alone");
        addNames(hazard, language, Use.LAST_PART, language.id() + "-ends");
      }
    }
    block.clear();
  }

  private ListedHazard hazard() {
    return block.containsKey("table") ? ofTable() : ofBlock();
  }

  private ListedHazard ofTable() {
    PigmentHazard pigment = PigmentHazards.byId(one("entry")).orElseThrow();
    return ListedHazard.ofTable(pigment, kind(), words());
  }

  private ListedHazard ofBlock() {
    String dust = one("dust");
    return new ListedHazard(
        one("entry"),
        kind(),
        words(),
        alternatives(),
        items("cas", ","),
        items("colour-index", ","),
        of(HeatUse.values(), HeatUse::id, one("heat")),
        dust.equals("none")
            ? Optional.empty()
            : Optional.of(of(DustClass.values(), DustClass::id, dust)),
        items("flash", ",").stream().findFirst().map(NameListReader::celsius));
  }

  private static TemperaturePoint celsius(String text) {
    return TemperaturePoint.ofCelsius(Double.parseDouble(text.replace(" °C", "")));
  }

  private Bilingual words() {
    return new Bilingual(one("class-en"), one("class-de"));
  }

  private NameKind kind() {
    return of(NameKind.values(), NameKind::id, one("kind"));
  }

  private static <E> E of(E[] values, Function<E, String> id, String word) {
    for (E value : values) {
      if (id.apply(value).equals(word)) {
        return value;
      }
    }
    throw new IllegalStateException("unknown word in " + FILE + ": " + word);
  }

  private List<Set<String>> alternatives() {
    List<Set<String>> alternatives = new ArrayList<>();
    for (String alternative : items("holds", "/")) {
      alternatives.add(
          alternative.equals("-") ? Set.of() : new LinkedHashSet<>(split(alternative, ",")));
    }
    return alternatives;
  }

  private String one(String key) {
    List<String> lines = block.getOrDefault(key, List.of());
    if (lines.size() != 1) {
      throw new IllegalStateException(FILE + ": one line " + key + " in " + block.get("entry"));
    }
    return lines.get(0);
  }

  private List<String> items(String key, String separator) {
    return block.containsKey(key) ? split(one(key), separator) : List.of();
  }

  private static List<String> split(String text, String separator) {
    List<String> items = new ArrayList<>();
    for (String item : text.split(separator, -1)) {
      items.add(item.strip());
    }
    return items;
  }

  private void addNames(ListedHazard hazard, Language language, Use use, String key) {
    for (String line : block.getOrDefault(key, List.of())) {
      for (String name : split(line.substring(0, line.lastIndexOf('|')), ";")) {
        FoldedText folded = FoldedText.of(name);
        boolean substitute = use == Use.ANYWHERE && Substitutes.isSaidIn(folded);
        names.add(new ListedName(hazard, name, language, use, folded.length(), substitute));
      }
    }
  }
}
