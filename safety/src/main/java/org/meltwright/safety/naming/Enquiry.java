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
}
