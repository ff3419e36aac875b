// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.hazard.PigmentHazards;
import org.meltwright.safety.naming.NameSearch.Hit;
import org.meltwright.safety.naming.NamedHazard.Evidence;
import org.meltwright.safety.naming.NamedHazard.Standing;

/**
 * What the names and numbers of one thing tell together. A CAS number decides before a Colour Index
 * name, and both before a word; where the weaker says worse, the worse holds and it is said.
 */
final class Enquiry {

  private static final int LONGEST_SHOWN = 120;

  private final NameList list = NameList.standard();
  private final List<FoldedText> texts = new ArrayList<>();
  private final Set<String> cas = new LinkedHashSet<>();
  private final Set<String> colourIndexNames = new LinkedHashSet<>();
  private final Set<String> known = new LinkedHashSet<>();
  private final List<Stated> numbers = new ArrayList<>();
  private final Map<ListedHazard, NamedHazard> found = new LinkedHashMap<>();
  private boolean isPigment;

  /**
   * What a number says.
   *
   * @param number the CAS number or Colour Index name
   * @param evidence which of the two it is
   * @param is what it is
   * @param isListed whether the list names it; else it stands in the pigment table alone
   */
  private record Stated(String number, Evidence evidence, ListedHazard is, boolean isListed) {

    boolean isHazard() {
      return isListed && is.kind() != NameKind.FALSE_FRIEND;
    }
  }

  /** Adds a name, with the numbers that stand in it. */
  Enquiry name(String name) {
    FoldedText text = FoldedText.of(name);
    StatedNumbers stated = new StatedNumbers(text);
    texts.add(text);
    cas.addAll(stated.cas());
    colourIndexNames.addAll(stated.colourIndexNames());
    return this;
  }

  Enquiry cas(String number) {
    cas.add(number);
    return this;
  }

  Enquiry colourIndexName(String name) {
    colourIndexNames.add(name);
    return this;
  }

  /** Says of a number that nothing new is told by it. */
  Enquiry known(String number) {
    known.add(number);
    return this;
  }

  /** Says that the names are those of a pigment. */
  Enquiry pigment() {
    isPigment = true;
    return this;
  }

  /** The hazards told, the worst first. */
  List<NamedHazard> answer() {
    readNumbers();
    numbers.stream()
        .filter(s -> s.isHazard() && !known.contains(s.number()))
        .forEach(s -> add(byNumber(s)));
    texts.forEach(this::readWords);
    return found.values().stream().sorted(NamedHazard.WORST_FIRST).toList();
  }

  private void readNumbers() {
    for (String number : cas) {
      stated(number, Evidence.CAS, list::byCas, PigmentHazards::byCas).ifPresent(numbers::add);
    }
    List<Stated> byCas = List.copyOf(numbers);
    for (String name : colourIndexNames) {
      stated(
              name,
              Evidence.COLOUR_INDEX_NAME,
              list::byColourIndexName,
              PigmentHazards::byColourIndexName)
          .filter(s -> tellsMoreThan(byCas, s))
          .ifPresent(numbers::add);
    }
  }

  private static Optional<Stated> stated(
      String number,
      Evidence evidence,
      Function<String, Optional<ListedHazard>> list,
      Function<String, Optional<PigmentHazard>> table) {
    return list.apply(number)
        .map(hazard -> new Stated(number, evidence, hazard, true))
        .or(
            () ->
                table
                    .apply(number)
                    .map(p -> new Stated(number, evidence, ListedHazard.unlisted(p), false)));
  }

  /** A Colour Index name beside CAS numbers: only if it is not theirs and says worse. */
  private static boolean tellsMoreThan(List<Stated> byCas, Stated name) {
    return byCas.stream().noneMatch(s -> s.is().carries(name.number()))
        && byCas.stream().allMatch(s -> name.is().isStricterThan(s.is()));
  }

  private NamedHazard byNumber(Stated stated) {
    Optional<String> milder =
        numbers.stream()
            .filter(other -> stated.is().isStricterThan(other.is()))
            .map(Stated::number)
            .findFirst();
    return new NamedHazard(
        stated.is(), stated.number(), stated.number(), stated.evidence(), Standing.NAMED, milder);
  }

  private void readWords(FoldedText text) {
    for (Hit hit : NameSearch.in(text, list)) {
      if (!Absences.isSaidOf(text, hit.start(), hit.end())
          && !StatedNumbers.isDye(text, text.wordOf(hit.start()))) {
        readWord(
            hit.name().hazard(),
            hit.name().text(),
            shown(text.written(hit.start(), hit.end()), hit.name().text()),
            standing(text, hit));
      }
    }
    if (OldPigments.isOne(text, isPigment)) {
      String all = shown(text.written(0, text.length()), "…");
      readWord(list.require(OldPigments.ID), all, all, Standing.AMBIGUOUS);
    }
  }

  /** What was written, or the list's name where somebody put a page of blanks between the words. */
  private static String shown(String written, String listed) {
    return written.length() > LONGEST_SHOWN ? listed : written;
  }

  private static Standing standing(FoldedText text, Hit hit) {
    ListedHazard hazard = hit.name().hazard();
    boolean substitute =
        hit.name().isSubstitute() || Substitutes.isSaidOf(text, hit.start(), hit.end());
    if (substitute && hazard.isColour()) {
      return Standing.SUBSTITUTE;
    }
    return hazard.kind() == NameKind.AMBIGUOUS_NAME ? Standing.AMBIGUOUS : Standing.NAMED;
  }

  private void readWord(ListedHazard hazard, String listed, String written, Standing standing) {
    if (!isSettled(hazard, standing)) {
      add(new NamedHazard(hazard, listed, written, Evidence.WORD, standing, against(hazard)));
    }
  }

  /** Whether the numbers say what the word leaves open, or the same without being milder. */
  private boolean isSettled(ListedHazard word, Standing standing) {
    boolean open = standing != Standing.NAMED;
    return (open && word.isPowder() && !colourIndexNames.isEmpty())
        || numbers.stream()
            .map(Stated::is)
            .filter(number -> number.isPowder() == word.isPowder())
            .anyMatch(number -> open || settles(number, word));
  }

  private static boolean settles(ListedHazard number, ListedHazard word) {
    boolean sameElements = word.isWithoutElements() || number.holdsOneOf(word.alternatives());
    boolean sameKind =
        word.isPowder() || word.kind() == NameKind.GENERIC_WORD || word.kind() == number.kind();
    return sameElements
        && sameKind
        && (!word.isStricterThan(number)
            || (word.kind() == NameKind.GENERIC_WORD && !word.isWithoutElements()));
  }

  /** The number that says something milder of a colour than a word does. */
  private Optional<String> against(ListedHazard word) {
    if (!word.isPowder()) {
      return Optional.empty();
    }
    return numbers.stream()
        .filter(s -> s.is().isPowder() && word.isStricterThan(s.is()))
        .map(Stated::number)
        .findFirst()
        .or(() -> colourIndexNames.stream().filter(this::isUnknown).findFirst());
  }

  private boolean isUnknown(String colourIndexName) {
    return list.byColourIndexName(colourIndexName).isEmpty()
        && PigmentHazards.byColourIndexName(colourIndexName).isEmpty();
  }

  private void add(NamedHazard named) {
    found.merge(
        named.hazard(), named, (a, b) -> NamedHazard.WORST_FIRST.compare(a, b) <= 0 ? a : b);
  }

  /**
   * Words that say, directly at a name, that it is not in there: "-free", "-frei", "sans", "ohne".
   */
  private static final class Absences {

    private static final Set<String> FREE =
        Set.of("free", "frei", "freie", "freier", "freies", "freien", "freiem");
    private static final Set<String> BEFORE = Set.of("sans", "ohne", "without");
    private static final Set<String> OF = Set.of("of", "from", "von");
    private static final Set<String> AND = Set.of("und", "oder", "and", "or", "et", "ou");
    private static final int LONGEST_FREE = 6;

    /**
     * How many words a hanging hyphen may wait for its "-frei": "blei-, cobalt- und cadmiumfrei".
     */
    private static final int LONGEST_WAIT = 8;

    private Absences() {}

    /** Whether it is said of what stands from one letter to another. */
    static boolean isSaidOf(FoldedText text, int start, int end) {
      if (!text.isEnd(end)) {
        return FREE.contains(text.part(end, text.end(text.wordOf(end))));
      }
      int next = text.wordOf(end - 1) + 1;
      return (isFree(text, next) && isMeant(text, start, next))
          || (text.hangs(next) && comesFree(text, next))
          || isSaidBefore(text, text.wordOf(start));
    }

    /** With a hyphen always; with a blank only of one word, and not of what "free of" speaks of. */
    private static boolean isMeant(FoldedText text, int start, int free) {
      boolean oneWord = text.wordOf(start) == free - 1;
      boolean ofSomethingElse = text.isDirect(free + 1) && OF.contains(text.word(free + 1));
      return text.isHyphenated(free) || (oneWord && !ofSomethingElse);
    }

    private static boolean isFree(FoldedText text, int word) {
      return text.isDirect(word) && FREE.contains(text.word(word));
    }

    private static boolean isSaidBefore(FoldedText text, int first) {
      if (!text.isDirect(first)) {
        return false;
      }
      String before = text.word(first - 1);
      return BEFORE.contains(before)
          || (OF.contains(before) && text.isDirect(first - 1) && isFreeWord(text, first - 2));
    }

    private static boolean isFreeWord(FoldedText text, int word) {
      return FREE.contains(text.word(word));
    }

    private static boolean comesFree(FoldedText text, int from) {
      int last = Math.min(text.words(), from + LONGEST_WAIT);
      for (int word = from; word < last; word++) {
        if (endsFree(text.word(word)) || isFree(text, word + 1)) {
          return true;
        }
        if (!AND.contains(text.word(word)) && !text.hangs(word + 1)) {
          return false;
        }
      }
      return false;
    }

    private static boolean endsFree(String word) {
      for (int length = LONGEST_FREE; length >= 4; length--) {
        if (word.length() > length && FREE.contains(word.substring(word.length() - length))) {
          return true;
        }
      }
      return false;
    }
  }
}
