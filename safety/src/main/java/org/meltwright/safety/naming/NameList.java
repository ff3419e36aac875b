// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.hazard.PigmentHazards;

/**
 * The list of hazard names, read when a name is first asked for that is none of the catalogue's.
 */
final class NameList {

  private final List<ListedHazard> hazards;
  private final List<ListedName> names;
  private final NameTree tree = new NameTree();
  private final NameTree lastParts = new NameTree();
  private final Map<String, ListedHazard> byId = new HashMap<>();
  private final Map<String, ListedHazard> byCas = new HashMap<>();
  private final Map<String, ListedHazard> byColourIndexName = new HashMap<>();

  /** Read on first use and kept. */
  private static final class Standard {
    static final NameList LIST = NameListReader.read();
  }

  static NameList standard() {
    return Standard.LIST;
  }

  NameList(List<ListedHazard> hazards, List<ListedName> names) {
    this.hazards = List.copyOf(hazards);
    this.names = List.copyOf(names);
    hazards.forEach(this::index);
    names.forEach(this::index);
  }

  /** By its numbers an ordinary pigment is told by the pigment table alone. */
  private void index(ListedHazard hazard) {
    byId.put(hazard.id(), hazard);
    if (hazard.kind() == NameKind.ORDINARY_PIGMENT) {
      return;
    }
    if (hazard.kind().isFoundByCas()) {
      hazard.casNumbers().forEach(cas -> byCas.putIfAbsent(cas, hazard));
    }
    hazard.colourIndexNames().forEach(name -> byColourIndexName.putIfAbsent(name, hazard));
  }

  private void index(ListedName name) {
    if (name.use() != ListedName.Use.LAST_PART) {
      addTo(tree, name);
    }
    if (name.isLastPart()) {
      addTo(lastParts, name);
    }
  }

  /** A bracket is a sense: the name is found with it, or bare where the list says so. */
  private static void addTo(NameTree tree, ListedName name) {
    tree.add(FoldedText.of(name.text()), name);
    String plain = withoutDots(name.text());
    if (!plain.equals(name.text())) {
      tree.add(FoldedText.of(plain), name);
    }
  }

  /** How a name looks to one who has no umlauts and types the letters below the dots. */
  private static String withoutDots(String text) {
    return text.replace('ä', 'a')
        .replace('ö', 'o')
        .replace('ü', 'u')
        .replace('Ä', 'A')
        .replace('Ö', 'O')
        .replace('Ü', 'U');
  }

  List<ListedHazard> hazards() {
    return hazards;
  }

  List<ListedName> names() {
    return names;
  }

  NameTree tree() {
    return tree;
  }

  NameTree lastParts() {
    return lastParts;
  }

  ListedHazard require(String id) {
    ListedHazard hazard = byId.get(id);
    if (hazard == null) {
      throw new IllegalStateException("the list of hazard names lacks " + id);
    }
    return hazard;
  }

  /** What a CAS number is; the pigment table prevails, for it takes the strictest of several. */
  Optional<ListedHazard> byCas(String number) {
    return PigmentHazards.byCas(number)
        .flatMap(this::ofPigment)
        .or(() -> Optional.ofNullable(byCas.get(number)));
  }

  /** What a Colour Index name is. */
  Optional<ListedHazard> byColourIndexName(String name) {
    return PigmentHazards.byColourIndexName(name)
        .flatMap(this::ofPigment)
        .or(() -> Optional.ofNullable(byColourIndexName.get(name)));
  }

  private Optional<ListedHazard> ofPigment(PigmentHazard pigment) {
    return Optional.ofNullable(byId.get(pigment.id()))
        .filter(hazard -> hazard.kind() != NameKind.ORDINARY_PIGMENT);
  }
}
