// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * The rules and harmonised entries of one law on one day.
 *
 * <p>The European rules are held from 2026-05-01 on; an earlier day is refused, because an answer
 * for it would be "no entry" where there was one.
 *
 * <p>The law asked by CAS number, on a day that it is held for and on one that it is not:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * rules.find("1314-13-2"); // zinc oxide [aquatic-acute 1 H400, aquatic-chronic 1 H410]
 * rules.find("8006-40-4").orElseThrow().evidence(); // PRESUMED_NONE
 * rules.find("12345-67-8").isEmpty(); // true
 * RuleSet.clpOn(LocalDate.of(2026, 4, 30)); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class RuleSet {

  /** The first day that the European tables here hold for. */
  public static final LocalDate FIRST_CLP_DAY = LocalDate.of(2026, 5, 1);

  private final String id;
  private final String title;
  private final LocalDate day;
  private final HarmonisedEntries entries;
  private final Map<HazardClass, ClassRule> rules = new EnumMap<>(HazardClass.class);
  private final List<AcuteLimit> acuteLimits = new ArrayList<>();
  private final Map<Bound, Double> bounds = new EnumMap<>(Bound.class);
  private final boolean labels;

  /**
   * Returns the European rules (CLP) on a day.
   *
   * @param day the day on which the mixture is handed over
   * @return the rules with the entries that apply on that day
   * @throws ProblemException if the day is before {@link #FIRST_CLP_DAY}
   */
  public static RuleSet clpOn(LocalDate day) {
    if (day.isBefore(FIRST_CLP_DAY)) {
      throw new ProblemException(
          Problem.of(HazardProblem.DAY_TOO_EARLY, day.toString())
              .with("first", FIRST_CLP_DAY.toString()));
    }
    return new RuleSet("clp-2026-05-01.txt", day, true);
  }

  /**
   * Returns the acute toxicity rules of the UN system (GHS) with category 5: a classification only,
   * no label.
   *
   * @return the rules; they know no harmonised entries
   */
  public static RuleSet unGhsAcuteToxicity() {
    return new RuleSet("un-ghs-acute-toxicity.txt", FIRST_CLP_DAY, false);
  }

  private RuleSet(String file, LocalDate day, boolean labels) {
    List<List<String>> rows = TextTable.rows(file);
    this.id = rows.get(0).get(1);
    this.title = rows.get(0).get(2);
    this.day = day;
    this.labels = labels;
    this.entries = labels ? HarmonisedEntries.on(day) : HarmonisedEntries.on(LocalDate.MIN);
    rows.forEach(this::read);
  }

  private void read(List<String> row) {
    switch (row.get(0)) {
      case "rule-set" -> {}
      case "class" -> rules.put(HazardClass.ofId(row.get(1)), new ClassRule(row));
      case "acute" -> acuteLimits.add(AcuteLimit.of(row));
      case "bound" -> bounds.put(Bound.ofId(row.get(1)), Double.parseDouble(row.get(2)));
      default -> rule(HazardClass.ofId(row.get(1))).orElseThrow().add(row);
    }
  }

  /**
   * Returns the stable id of the rule set.
   *
   * @return for example {@code clp-2026-05-01}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the title of the law.
   *
   * @return the title
   */
  public String title() {
    return title;
  }

  /**
   * Returns the day that it was asked for.
   *
   * @return the day
   */
  public LocalDate day() {
    return day;
  }

  /**
   * Tells whether a label can be written by it.
   *
   * @return whether it can
   */
  public boolean hasLabels() {
    return labels;
  }

  /**
   * Returns the law as a source.
   *
   * @param paragraph where in it
   * @param knowledge how the paragraph came to us
   * @return the source
   */
  Source source(String paragraph, Knowledge knowledge) {
    return new Source(
        id,
        title,
        paragraph + (knowledge == Knowledge.REMEMBERED ? ", remembered" : ""),
        String.valueOf(day.getYear()),
        SourceKind.REGULATION);
  }

  /**
   * Finds what the tables hold of a substance.
   *
   * @param cas its CAS registry number
   * @return the entry or the absence of one; empty if the number was not looked up
   */
  public Optional<SubstanceHazards> find(String cas) {
    return entries.find(cas);
  }

  /**
   * Returns what the tables hold of a material.
   *
   * <p>Asked by CAS number; without one, by id and Colour Index name. What may be one of several
   * takes the worse: a cadmium yellow without a number is taken for pure cadmium sulphide.
   *
   * @param material the material
   * @return the entry, the absence of one, or "not looked up"
   */
  public SubstanceHazards of(Material material) {
    return Stream.concat(Stream.of(material), material.alternatives().stream())
        .flatMap(this::candidates)
        .max(Comparator.comparingInt(RuleSet::gravity))
        .orElseGet(() -> notLookedUp(material));
  }

  private Stream<SubstanceHazards> candidates(Material material) {
    List<Sourced<String>> numbers = material.identifiers(IdentifierScheme.CAS);
    return numbers.isEmpty()
        ? byNames(material)
        : numbers.stream().map(cas -> find(cas.value()).orElseGet(() -> notLookedUp(material)));
  }

  private Stream<SubstanceHazards> byNames(Material material) {
    Stream<SubstanceHazards> byColourIndex =
        material.identifiers(IdentifierScheme.COLOUR_INDEX_NAME).stream()
            .flatMap(n -> entries.alias(n.value()).stream());
    Stream<SubstanceHazards> byPigment =
        PigmentHazards.of(material).stream()
            .flatMap(p -> p.casNumbers().stream())
            .flatMap(cas -> find(cas).stream());
    return Stream.of(entries.alias(material.id()).stream(), byColourIndex, byPigment)
        .flatMap(s -> s);
  }

  /** Orders candidates: more categories are graver, then "nothing known", then "presumed none". */
  private static int gravity(SubstanceHazards s) {
    return s.categories().size() * 2 + (s.evidence().isOpen() ? 1 : 0);
  }

  private static SubstanceHazards notLookedUp(Material material) {
    SubstanceSheet b = new SubstanceSheet(material.id(), HazardEvidence.NOT_LOOKED_UP);
    material.cas().ifPresent(b::cas);
    return b.build();
  }

  /**
   * What adds up across substances although the class takes the highest share: boron compounds
   * (note 11), and what falls under one entry with note 12, however that is known.
   */
  String additiveGroup(SubstanceHazards s) {
    Optional<SubstanceHazards> entry = entries.entryOf(s);
    if (hasNote("11", s, entry)) {
      return "boron compounds (note 11)";
    }
    return hasNote("12", s, entry)
        ? entry.flatMap(SubstanceHazards::indexNumber).orElse("") + " (note 12)"
        : s.key();
  }

  private static boolean hasNote(
      String note, SubstanceHazards s, Optional<SubstanceHazards> entry) {
    return s.notes().contains(note) || entry.filter(e -> e.notes().contains(note)).isPresent();
  }

  List<SubstanceHazards> entries() {
    return entries.all();
  }

  Optional<ClassRule> rule(HazardClass hazardClass) {
    return Optional.ofNullable(rules.get(hazardClass));
  }

  List<AcuteLimit> acuteLimits(UptakeForm form) {
    return acuteLimits.stream().filter(l -> l.form() == form).toList();
  }

  double bound(Bound bound) {
    return Objects.requireNonNull(bounds.get(bound), bound::id);
  }

  @Override
  public String toString() {
    return id + " on " + day;
  }
}
