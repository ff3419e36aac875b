// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Tables in the layouts that suppliers use are read as they say, or something is shown back: never
 * a class, a number or a share that belongs to another substance, in silence.
 */
@Tag("random")
class CopiedSheetLayoutsTest {

  private static final int TABLES = Integer.getInteger("random.tables", 1_000);
  private static final long SEED = Long.getLong("random.seed", 20260501L);

  private static final List<String> NUMBERS =
      List.of("8006-64-2", "1314-13-2", "8050-09-7", "67-64-1", "78-70-6", "5989-27-5");
  private static final List<String> NAMES =
      List.of(
          "Turpentine oil",
          "Zinkoxid",
          "Rosin; colophony",
          "Hydrocarbons, C9-C11, n-alkanes, <2% aromatics",
          "1,2-Benzisothiazol-3(2H)-on",
          "Xylene (mixture of isomers)");

  private final Random random = new Random(SEED);
  private final List<String> expected = new ArrayList<>();

  @Test
  void table_isReadAsItSays_orShownBack() {
    int read = 0;
    for (int i = 0; i < TABLES; i++) {
      expected.clear();
      String table = table();
      CopiedSheet sheet = CopiedSheet.read(table);
      List<String> lines = sheet.lines().stream().map(CopiedSheetLayoutsTest::words).toList();
      boolean asItSays = lines.equals(expected);
      assertThat(asItSays || !sheet.problems().isEmpty())
          .as("table %d of seed %d%n%s%nread as %s", i, SEED, table, lines)
          .isTrue();
      read += asItSays ? 1 : 0;
    }
    assertThat(read).as("of %d tables", TABLES).isGreaterThan(TABLES * 95 / 100);
  }

  private static String words(CopiedSheet.Line line) {
    return words(
        line.hazards().name(),
        String.join(",", line.hazards().casNumbers()),
        line.hazards().categories().stream()
            .map(HazardCategory::toString)
            .collect(Collectors.toSet()),
        line.lowPercent().orElse(-1),
        line.highPercent().orElse(-1));
  }

  private static String words(
      String name, String cas, Set<String> classes, double low, double high) {
    return String.join(
        " | ", name, cas, new TreeSet<>(classes).toString(), low + " to " + high + " %");
  }

  private String pick(String... all) {
    return all[random.nextInt(all.length)];
  }

  private String table() {
    String cell = pick("\t", " | ", "\n", "  ");
    String between = pick("; ", ", ", "\n", " ");
    String dash = pick(" - ", "-", " – ", " − ", " - < ", "-<", " to ", " bis ");
    int layout = random.nextInt(4);
    int first = random.nextInt(NAMES.size());
    StringBuilder table =
        new StringBuilder(pick("", "3.2 Mixtures\n", "Name\tCAS-No.\tConc. (%)\tClassification\n"));
    int substances = 1 + random.nextInt(3);
    for (int i = 0; i < substances; i++) {
      int place = (first + i) % NAMES.size();
      table.append(row(NAMES.get(place), NUMBERS.get(place), layout, cell, between, dash));
      table.append(pick("", "", "", "", "Page 2 of 12\n", "Seite 3/11\n"));
    }
    return table.toString();
  }

  private String row(
      String name, String cas, int layout, String cell, String between, String dash) {
    double low = List.of(0.1, 1.0, 2.5, 10.0).get(random.nextInt(4));
    double high = low + 5;
    Set<String> classes = new HashSet<>();
    String said = classes(between, classes);
    expected.add(words(name, cas, classes, low, high));
    String number = pick("", "CAS: ", "CAS-Nr.: ", "(CAS-No.) ", "CAS No ") + cas;
    String share = pick("", "≥ ") + written(low) + dash + written(high) + " %";
    return switch (layout) {
          case 0 -> String.join(cell, name, number, share, said);
          case 1 -> String.join(cell, name, number, said, share);
          case 2 -> String.join(cell, number, name, share, said);
          default -> name + " " + share + "\n" + number + " EC No: 200-578-6\n" + said;
        }
        + "\n";
  }

  private String written(double percent) {
    String text = String.valueOf(percent).replaceAll("\\.0$", "");
    return random.nextInt(3) == 0 ? text.replace('.', ',') : text;
  }

  /** One to four classes of different names, by the law's abbreviations. */
  private String classes(String between, Set<String> read) {
    List<HazardCategory> all = LabelElements.all();
    Set<HazardClass> named = new HashSet<>();
    List<String> said = new ArrayList<>();
    int most = 1 + random.nextInt(4);
    for (int i = 0; i < most; i++) {
      HazardCategory c = all.get(random.nextInt(all.size()));
      if (named.add(c.hazardClass())) {
        read.add(c.toString());
        said.add(said(c));
      }
    }
    return String.join(between, said);
  }

  private String said(HazardCategory c) {
    String name =
        SheetWords.rows().stream()
            .filter(row -> row.get(0).equals("class"))
            .map(row -> row.get(1))
            .filter(n -> ClassName.find(n).filter(x -> x.categories().contains(c)).isPresent())
            .findFirst()
            .orElseThrow();
    String category =
        c.category().id().isEmpty() ? "" : " " + pick("", "Cat. ") + c.category().id();
    return name + category + pick("; ", ", ", " - ", " – ", ": ", " ", "\t", "\n") + c.statement();
  }
}
