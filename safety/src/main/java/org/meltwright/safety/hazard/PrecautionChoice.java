// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Chooses the precautionary statements of a label from all that its classes offer: a core that is
 * never cut, then one list that fills up to the usual number.
 */
final class PrecautionChoice {

  private static final List<List<String>> ROWS = TextTable.rows("precautions.txt");
  private static final List<List<String>> USUAL = rows("usual").toList();
  private static final List<List<String>> TREATMENTS = rows("treatment").toList();
  private static final List<Rule> CORE = rules("core");
  private static final List<Rule> FILL = rules("fill");
  private static final List<List<String>> BEATS = rows("beats").toList();
  private static final List<List<String>> ORDER = rows("order").toList();

  private final List<HazardCategory> categories;
  private final LabelElements elements;
  private final Map<String, String> notes;
  private final boolean forThePublic;
  private final boolean airborne;
  private final Map<String, Precaution> chosen = new LinkedHashMap<>();

  /** Who asks for which statements, and when. */
  private record Rule(
      String hazardClass, String categories, List<String> codes, String when, Days days) {

    private boolean speaksOf(HazardCategory c) {
      boolean ofClass = hazardClass.equals("any") || hazardClass.equals(c.hazardClass().id());
      return ofClass
          && (categories.equals("all")
              || TextTable.items(categories, ",").contains(c.category().id()));
    }
  }

  private static Stream<List<String>> rows(String kind) {
    return ROWS.stream().filter(r -> r.get(0).equals(kind));
  }

  private static List<Rule> rules(String kind) {
    return rows(kind)
        .map(
            r -> new Rule(r.get(1), r.get(2), TextTable.items(r.get(3), ","), r.get(4), Days.of(r)))
        .toList();
  }

  /**
   * Prepares a choice.
   *
   * @param categories the categories of the mixture
   * @param elements the tables that hold for them
   * @param notes statements that notes of single entries ask for, each with its note
   * @param forThePublic whether it goes to the public
   * @param airborne whether dust, spray or vapour can be breathed in
   */
  PrecautionChoice(
      List<HazardCategory> categories,
      LabelElements elements,
      Map<String, String> notes,
      boolean forThePublic,
      boolean airborne) {
    this.categories = categories;
    this.elements = elements;
    this.notes = notes;
    this.forThePublic = forThePublic;
    this.airborne = airborne;
  }

  /** All statements with what became of them, printed ones first, each in the order of the law. */
  List<Precaution> choose() {
    if (forThePublic && !categories.isEmpty()) {
      put(new Precaution("P102", Precaution.Verdict.PUBLIC, List.of(), Optional.empty()));
    }
    Map<String, List<HazardClass>> core = asked(CORE);
    core.forEach((code, by) -> put(new Precaution(code, Precaution.Verdict.CORE, by, none())));
    notes.forEach(
        (code, note) ->
            put(new Precaution(code, Precaution.Verdict.NOTE, List.of(), Optional.of(note))));
    dropBeaten(core);
    fill();
    rest();
    return chosen.values().stream()
        .sorted(
            Comparator.comparing((Precaution p) -> !p.verdict().isPrinted())
                .thenComparing(Precaution::code))
        .toList();
  }

  private static Optional<String> none() {
    return Optional.empty();
  }

  private void put(Precaution p) {
    chosen.putIfAbsent(p.code(), p);
  }

  private Map<String, List<HazardClass>> asked(List<Rule> rules) {
    Map<String, Set<HazardClass>> asked = new TreeMap<>();
    for (HazardCategory c : categories) {
      rules.stream()
          .filter(rule -> rule.days().holdOn(elements.day()))
          .filter(rule -> rule.speaksOf(c) && applies(rule.when()))
          .flatMap(rule -> rule.codes().stream())
          .filter(code -> elements.offered(c).contains(code))
          .forEach(
              code -> asked.computeIfAbsent(code, k -> new LinkedHashSet<>()).add(c.hazardClass()));
    }
    return asked.entrySet().stream()
        .collect(
            Collectors.toMap(
                Map.Entry::getKey, e -> List.copyOf(e.getValue()), (a, b) -> a, TreeMap::new));
  }

  private boolean applies(String when) {
    return switch (when) {
      case "public" -> forThePublic;
      case "professional" -> !forThePublic;
      case "airborne" -> airborne;
      case "alone" -> categories.size() == 1;
      default -> true;
    };
  }

  /** What another says already; a class that cannot do without it keeps it. */
  private void dropBeaten(Map<String, List<HazardClass>> core) {
    for (List<String> row : onDay(BEATS).toList()) {
      Precaution beaten = chosen.get(row.get(2));
      boolean kept =
          core.getOrDefault(row.get(2), List.of()).stream()
              .anyMatch(c -> TextTable.items(row.get(3), ",").contains(c.id()));
      if (isPrinted(row.get(1)) && beaten != null && !kept) {
        chosen.put(row.get(2), beaten(row.get(2), beaten.askedBy(), row.get(1)));
      }
    }
  }

  private static Precaution beaten(String code, List<HazardClass> by, String winner) {
    return new Precaution(code, Precaution.Verdict.BEATEN, by, Optional.of(winner));
  }

  private boolean isPrinted(String code) {
    Precaution p = chosen.get(code);
    return p != null && p.verdict().isPrinted();
  }

  private long printed() {
    return chosen.values().stream().filter(p -> p.verdict().isPrinted()).count();
  }

  private void fill() {
    Map<String, List<HazardClass>> asked = asked(FILL);
    for (String code : order(onDay(ORDER))) {
      List<HazardClass> by = asked.get(code);
      if (by == null || chosen.containsKey(code)) {
        continue;
      }
      Optional<String> winner = winner(code);
      Precaution.Verdict verdict =
          printed() < usualNumber(elements.day())
              ? Precaution.Verdict.FILL
              : Precaution.Verdict.NO_ROOM;
      put(
          winner.isPresent()
              ? beaten(code, by, winner.orElseThrow())
              : new Precaution(code, verdict, by, none()));
    }
  }

  private Optional<String> winner(String code) {
    return onDay(BEATS)
        .filter(row -> row.get(2).equals(code) && isPrinted(row.get(1)))
        .map(row -> row.get(1))
        .findFirst();
  }

  /** What the classes offer beyond that is named too, with the reason why it is not printed. */
  private void rest() {
    Map<String, List<HazardClass>> offered = new TreeMap<>();
    for (HazardCategory c : categories) {
      for (String code : elements.offered(c)) {
        List<HazardClass> by = new ArrayList<>(offered.getOrDefault(code, List.of()));
        by.add(c.hazardClass());
        offered.put(code, by.stream().distinct().toList());
      }
    }
    offered.forEach((code, by) -> put(left(code, by)));
  }

  private Precaution left(String code, List<HazardClass> by) {
    if (onDay(TREATMENTS).anyMatch(row -> TextTable.items(row.get(1), ",").contains(code))) {
      return new Precaution(code, Precaution.Verdict.NEEDS_TREATMENT, by, none());
    }
    Optional<String> winner = winner(code);
    return winner.isPresent()
        ? beaten(code, by, winner.orElseThrow())
        : new Precaution(code, Precaution.Verdict.NOT_NEEDED, by, none());
  }

  /** Every statement that a rule of the choice names. */
  static Set<String> named() {
    return Stream.concat(CORE.stream(), FILL.stream())
        .flatMap(rule -> rule.codes().stream())
        .collect(Collectors.toSet());
  }

  static List<String> order() {
    return order(ORDER.stream());
  }

  private static List<String> order(Stream<List<String>> rows) {
    return rows.flatMap(r -> TextTable.items(r.get(1), ",").stream()).toList();
  }

  /** How many statements a label normally has at most. */
  static long usualNumber(LocalDate day) {
    return USUAL.stream()
        .filter(row -> Days.of(row).holdOn(day))
        .mapToLong(row -> Long.parseLong(row.get(1)))
        .findFirst()
        .orElse(Long.MAX_VALUE);
  }

  private Stream<List<String>> onDay(List<List<String>> rows) {
    return rows.stream().filter(row -> Days.of(row).holdOn(elements.day()));
  }

  /** The rows of the choice, for its page. */
  static List<List<String>> rows() {
    return ROWS;
  }
}
