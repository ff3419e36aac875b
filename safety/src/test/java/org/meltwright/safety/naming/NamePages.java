// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.meltwright.safety.hazard.DustClass;
import org.meltwright.safety.naming.ListedName.Language;
import org.meltwright.safety.naming.ListedName.Use;

/** Writes the reference page of the list of hazard names. */
final class NamePages {

  private static final String HEAD =
      """
      # Hazard names

      Names that tell a hazard, in English, German, French, Italian and Spanish: %d names of %d entries. `HazardNames` asks them of a material that is none of the
      catalogue's own, and the studio file of a name that the catalogue does not know. A name that is not here is not assessed; that is never a
      word of safety. The page is written from the data, and a test holds it to them.

      ## How a name is compared

      1. Case, accents, hyphens, blanks and apostrophes make no difference; ß is ss, ä is ae, and an ä typed as a is found too. Each word may
         have the endings of its language (*-s*, *-es*; *-e*, *-n*, *-en*, *-s* and the like; *-s*, *-x*). A shade or number behind a name
         changes nothing.
      2. A false friend is cut out as a whole word, never across a comma, and what is left is asked: *gebleicht* holds the German word of lead,
         *gebleichtes Wachs mit Bleiweiß* is lead all the same. The longest name at a place stands for those inside it: *Terpentinersatz*, not
         *Terpentin*; *baryte yellow* is a chromate although *baryte* is none.
      3. In German a word of hazard also counts as the first part of a word (*Bleiglasur*), never inside one. A name of six letters and more
         counts as a first part (*Mennigegrund*), that of a pigment of seven and more as a last part (*Naturzinnober*, but not *Minium* in
         *Aluminium*). Some words also count as a last part behind two letters and more (*Rotlack*, not *black*):
         %s.
      4. A bracket in a name below is a sense: the name is found with it, and bare as a name of several things.
      5. A CAS number decides before a Colour Index name, and both before a word, wherever they stand. Where the weaker says worse, the worse
         holds and the answer says so. A name of several things is the worst of them until one of the two says which; any Colour Index name
         settles it, a CAS number only if it is known here.
      6. *Hue*, *imitation*, *Ersatz*, *-ton*, *ton* and *replacement* beside a colour say that it is made of something else: it is asked for, and
         the word alone refuses nothing.
      7. *-free*, *-frei*, *sans*, *ohne*, *without*, *free of* and *frei von* directly at a word: nothing is told of that word, all else is.
      8. CAS numbers below are members of a group, never the identity of a name. They are not read backwards for lacquers, plastics, spray cans
         and drying oils; of a solvent they tell the kind.
      9. A pigment that a text calls old, or dates before 1970, and does not name is lead until it is known, unless it is blue, brown or
         black.
      10. *Essence* counts as the whole name only; *spirit*, *alcohol* and *alcool* as whole words; *Solvent Red 24* and the like are names of dyes.

      Heat and dust are own policy by what an entry holds, cautious where a name may be several things; of pigments they stand in the pigment
      table, with reason and source.

      """;

  private static final String SOURCES =
      """
      ## How the names are known

      Each name in `hazard-names.txt` says whether it was read in one of these sources, is remembered, or is common practice of the trade. CAS
      numbers were met beside their names in these sources or are remembered; a test checks their digits.

      """;

  private NamePages() {}

  static String page() {
    NameList list = NameList.standard();
    StringBuilder page = new StringBuilder();
    page.append(HEAD.formatted(list.names().size(), list.hazards().size(), lastParts(list)));
    for (NameKind kind : NameKind.values()) {
      page.append(section(list, kind));
    }
    return page.append(SOURCES).append(sources()).toString();
  }

  private static String lastParts(NameList list) {
    return list.names().stream()
        .filter(n -> n.use() == Use.LAST_PART)
        .map(n -> "*-" + n.text().toLowerCase(Locale.ROOT) + "*")
        .distinct()
        .sorted()
        .collect(Collectors.joining(", "));
  }

  private static String section(NameList list, NameKind kind) {
    String title = kind.id().substring(0, 1).toUpperCase(Locale.ROOT) + kind.id().substring(1);
    StringBuilder text = new StringBuilder("## " + title.replace('-', ' ') + "\n\n");
    text.append(
        "| entry | what it is | heat | dust | CAS, Colour Index | English | German | French | Italian | Spanish |\n");
    text.append("|---|---|---|---|---|---|---|---|---|---|\n");
    list.hazards().stream().filter(h -> h.kind() == kind).forEach(h -> text.append(row(list, h)));
    return text.append('\n').toString();
  }

  private static String row(NameList list, ListedHazard hazard) {
    List<String> cells = new ArrayList<>();
    cells.add("`" + hazard.id() + "`");
    cells.add(hazard.text(Locale.ENGLISH));
    cells.add(hazard.heatUse().id());
    cells.add(hazard.dust().map(DustClass::id).orElse("–"));
    List<String> numbers = new ArrayList<>(hazard.casNumbers());
    numbers.addAll(hazard.colourIndexNames());
    cells.add(String.join(", ", numbers));
    for (Language language : Language.values()) {
      cells.add(names(list, hazard, language));
    }
    return "| " + String.join(" | ", cells) + " |\n";
  }

  private static String names(NameList list, ListedHazard hazard, Language language) {
    return list.names().stream()
        .filter(n -> n.hazard().equals(hazard) && n.language() == language)
        .filter(n -> n.use() != Use.LAST_PART)
        .map(n -> n.use() == Use.ALONE ? n.text() + " (as the whole name)" : n.text())
        .collect(Collectors.joining("; "));
  }

  /** The blocks of sources in the file: id, title and year. */
  private static String sources() {
    List<String> lines = NameListReader.text().lines().toList();
    StringBuilder text = new StringBuilder("| source | title | year |\n|---|---|---|\n");
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith("source: ")) {
        text.append("| `").append(value(lines.get(i))).append("` | ");
        text.append(value(lines.get(i + 1))).append(" | ");
        text.append(value(lines.get(i + 2))).append(" |\n");
      }
    }
    return text.toString();
  }

  private static String value(String line) {
    return line.substring(line.indexOf(':') + 1).strip();
  }
}
