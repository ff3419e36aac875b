// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Whatever is pasted gives substances or problems, in a time that grows as its length. */
class CopiedSheetNoiseTest {

  private static final int LINES = Integer.getInteger("random.lines", 5_000);
  private static final long SEED = Long.getLong("random.seed", 20260501L);
  private static final String MARKS =
      " \t\n.,;:-–/()[]{}<>≤≥=*%|•+'\"\\$&#@~^_!?…\u00a0\u200b\ufeff\u0000";

  private final Random random = new Random(SEED);
  private final List<String> pieces = pieces();

  /** All spellings of the tests and of the word list, and the cells and words that they are of. */
  private static List<String> pieces() {
    List<String> all = new ArrayList<>();
    for (CopiedSheetTest.Spelling s : CopiedSheetTest.Spelling.all()) {
      all.add(s.text());
      all.addAll(List.of(s.text().split("[ ;,]", -1)));
    }
    SheetWords.rows()
        .forEach(
            row -> row.subList(2, row.size()).forEach(c -> all.addAll(TextTable.items(c, ";"))));
    return all;
  }

  private String line() {
    StringBuilder line = new StringBuilder();
    int parts = 1 + random.nextInt(8);
    for (int i = 0; i < parts; i++) {
      line.append(part()).append(random.nextInt(3) == 0 ? mark() : " ");
    }
    return random.nextInt(3) == 0 ? damaged(line) : line.toString();
  }

  private String part() {
    return switch (random.nextInt(6)) {
      case 0 -> String.valueOf(Math.rint(Math.exp(random.nextGaussian() * 4) * 1000) / 1000);
      case 1 -> new String(Character.toChars(random.nextInt(0x2fff) + 1));
      case 2 -> String.valueOf(random.nextInt()) + mark() + random.nextInt(100);
      default -> pieces.get(random.nextInt(pieces.size()));
    };
  }

  private char mark() {
    return MARKS.charAt(random.nextInt(MARKS.length()));
  }

  private String damaged(StringBuilder line) {
    int place = random.nextInt(line.length());
    switch (random.nextInt(3)) {
      case 0 -> line.deleteCharAt(place);
      case 1 -> line.insert(place, (char) random.nextInt(0x10000));
      default -> line.setCharAt(place, mark());
    }
    return line.toString();
  }

  @Test
  @Tag("random")
  void lineOfNoise_givesSubstancesOrProblemsAndNothingElse() {
    for (int i = 0; i < LINES; i++) {
      String line = line();
      try {
        check(CopiedSheet.read(line));
        checkBuilder(line);
      } catch (RuntimeException e) {
        fail("line " + i + " of seed " + SEED + ": " + line, e);
      }
    }
  }

  private static void check(CopiedSheet sheet) {
    for (Problem p : sheet.problems()) {
      assertThat(p.details()).containsKeys("line", "column");
      assertThat(p.inWords(Locale.ENGLISH)).doesNotContain("{line", "{column", "{found", "{pairs");
      assertThat(p.inWords(Locale.GERMAN)).doesNotContain("{line", "{column", "{found", "{pairs");
    }
    sheet.remarks().forEach(r -> assertThat(r.text(Locale.GERMAN)).isNotEmpty());
    boolean open = sheet.lines().stream().map(CopiedSheet.Line::hazards).anyMatch(s -> isOpen(s));
    assertThat(sheet.problems().isEmpty() || open)
        .as("what is not understood leaves a substance open: %s", sheet.problems())
        .isTrue();
  }

  /** All classes, save those few of which the text says that they are not reached. */
  private static boolean isOpen(SubstanceHazards s) {
    return Arrays.stream(HazardClass.values()).filter(s::isOpenFor).count() > 20;
  }

  private static void checkBuilder(String line) {
    try {
      SubstanceHazards.builder("substance").classified(line).build();
    } catch (ProblemException e) {
      assertThat(e.problems()).isNotEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Skin Sens. 1; H317 ",
        "Skin Sens. 1; H302 ",
        "Skin Sens ",
        "Skin, ",
        "H317 ",
        "aa1",
        "1.1",
        "1-1",
        "1(",
        "((((",
        "- ",
        "a\n",
        "acute toxicity oral ",
        "ATE oral 500 mg/kg ",
        "M = ",
        "< 2 % aromatics ",
        "8012-89-3 ",
        "8012-89-3 5 % ",
        "Kategorie ",
        "STOT RE 1 (lungs) H372 ",
        "P210 Keep away from heat "
      })
  void time_growsAsTheLength(String piece) {
    String text = piece.repeat(8_000 / piece.length());
    for (int i = 0; i < 3; i++) {
      CopiedSheet.read(text);
    }
    double once = nanoseconds(text);
    double eightfold = nanoseconds(text.repeat(8));
    for (int i = 0; i < 5 && eightfold / once >= 32; i++) {
      once = Math.min(once, nanoseconds(text));
      eightfold = Math.min(eightfold, nanoseconds(text.repeat(8)));
    }
    assertThat(eightfold / once).as("64 if it grew as the square").isLessThan(32);
  }

  /** The best of five, in time of this thread: what else runs on the machine does not count. */
  private static double nanoseconds(String text) {
    double best = Double.MAX_VALUE;
    for (int i = 0; i < 5; i++) {
      long start = ofThisThread();
      CopiedSheet.read(text);
      best = Math.min(best, (double) (ofThisThread() - start));
    }
    return Math.max(best, 2e6);
  }

  /** By reflection, since the module that holds the tests does not read its interface. */
  private static long ofThisThread() {
    try {
      Object threads =
          Class.forName("java.lang.management.ManagementFactory")
              .getMethod("getThreadMXBean")
              .invoke(null);
      return (long)
          Class.forName("java.lang.management.ThreadMXBean")
              .getMethod("getCurrentThreadCpuTime")
              .invoke(threads);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void textLongerThanASheet_isRefused() {
    assertThatThrownBy(() -> CopiedSheet.read("a ".repeat(CopiedSheet.LONGEST)))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(SheetProblem.TOO_LONG));
  }
}
