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
import org.jspecify.annotations.Nullable;
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

  /** Read once, when first asked: the file does not change. */
  private static final class Clp {
    static final RuleFile FILE = RuleFile.read(TextTable.text("clp-2026-05-01.txt"));
  }

  private final RuleFile.Head head;
  private final List<RuleRow> rows;
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
    return new RuleSet(Clp.FILE, requireClpDay(day), true);
  }

  /**
   * Guards a day that {@link #clpOn} is to be asked for later, without reading the rules.
   *
   * @param day the day
   * @return the day
   * @throws ProblemException if it is before {@link #FIRST_CLP_DAY}
   */
  public static LocalDate requireClpDay(LocalDate day) {
    if (day.isBefore(FIRST_CLP_DAY)) {
      throw new ProblemException(
          Problem.of(HazardProblem.DAY_TOO_EARLY, day.toString())
              .with("first", FIRST_CLP_DAY.toString()));
    }
    return day;
  }

  /**
   * Returns what the UN system (GHS) says otherwise than the European rules, as far as it is known
   * here: a screening without a label.
   *
   * <p>Acute toxicity with category 5, skin and eye with their milder categories, aspiration,
   * hazards to water and flammable liquids. A class that is not among them is not assessed.
   *
   * @param day the day on which the mixture is handed over
   * @return the rules; they know no harmonised entries
   */
  public static RuleSet unGhsOn(LocalDate day) {
    return new RuleSet(RuleFile.read(TextTable.text("un-ghs.txt")), day, false);
  }

  /**
   * Reads rules from a file of an app: a screening without a label and without harmonised entries.
   *
   * <p>The reference page on rule files says how one is written. A figure that holds on other days
   * only is left out; a line that cannot be used is never dropped in silence.
   *
   * @param text the file
   * @param day the day on which the mixture is handed over
   * @return the rules of that day
   * @throws ProblemException with every line that cannot be used, and what is missing
   */
  public static RuleSet read(String text, LocalDate day) {
    return new RuleSet(RuleFile.read(text), day, false);
  }

  RuleSet(RuleFile file, LocalDate day, boolean labels) {
    this.head = file.head();
    this.day = day;
    this.labels = labels;
    this.entries = labels ? HarmonisedEntries.on(day) : HarmonisedEntries.on(LocalDate.MIN);
    this.rows = file.rowsOn(day);
    rows.stream()
        .filter(r -> r.kind() == RuleRow.Kind.CLASS)
        .map(ClassRule::new)
        .forEach(this::put);
    rows.forEach(this::read);
  }

  private void put(ClassRule rule) {
    rules.put(rule.hazardClass(), rule);
  }

  private void read(RuleRow row) {
    switch (row.kind()) {
      case CLASS -> {}
      case ACUTE -> acuteLimits.add(AcuteLimit.of(row));
      case BOUND -> bounds.put(Bound.ofId(row.cell(0)), row.number(1));
      default -> rule(HazardClass.ofId(row.cell(0))).ifPresent(rule -> rule.add(row));
    }
  }

  /**
   * Returns the stable id of the rule set.
   *
   * @return for example {@code clp-2026-05-01}
   */
  public String id() {
    return head.id();
  }

  /**
   * Returns the title of the law.
   *
   * @return the title
   */
  public String title() {
    return head.title();
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
   * Returns the day up to which amendments were looked for.
   *
   * @return the last day for which the rules are held to be the law's
   */
  public LocalDate lookedUpTo() {
    return head.lookedUpTo();
  }

  /**
   * Tells whether the rules may have changed on the day that they were asked for.
   *
   * @return whether the day lies after {@link #lookedUpTo()}; the answer and the label then say so
   */
  public boolean mayHaveChanged() {
    return day.isAfter(lookedUpTo());
  }

  List<RuleRow> rows() {
    return rows;
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
    return Source.of(id(), title(), SourceKind.REGULATION)
        .at(paragraph + (knowledge == Knowledge.REMEMBERED ? ", remembered" : ""))
        .ofYear(String.valueOf(day.getYear()));
  }

  /**
   * Finds what the tables hold of a substance.
   *
   * @param number its CAS registry number, or its EC number; where several substances share an EC
   *     number, the gravest is taken
   * @return the entry or the absence of one; empty if the number was not looked up
   */
  public Optional<SubstanceHazards> find(String number) {
    return entries.find(number).or(() -> gravest(entries.ofEc(number)));
  }

  private static Optional<SubstanceHazards> gravest(Stream<SubstanceHazards> candidates) {
    return candidates.max(Comparator.comparingInt(RuleSet::gravity));
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
    Stream<Material> all = Stream.concat(Stream.of(material), material.alternatives().stream());
    return gravest(all.flatMap(this::candidates)).orElseGet(() -> notLookedUp(material));
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
    if (hasNote("11", s, entry) || entry.filter(entries::isOtherBoron).isPresent()) {
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

  /**
   * What the tables say of a substance by its numbers or else by its name: several entries where
   * its numbers speak of several.
   */
  List<SubstanceHazards> entriesFor(SubstanceHazards s) {
    List<SubstanceHazards> byNumber =
        Stream.of(
                s.casNumbers().stream().flatMap(cas -> entries.find(cas).stream()),
                s.ecNumbers().stream().flatMap(ec -> byEc(ec, s)),
                s.indexNumber().flatMap(entries::byIndex).stream())
            .flatMap(found -> found)
            .toList();
    return byNumber.isEmpty() ? entries.named(s.name()).stream().toList() : byNumber;
  }

  /** An EC number that goes with the CAS number of the sheet says no more than that. */
  private Stream<SubstanceHazards> byEc(String ec, SubstanceHazards s) {
    List<SubstanceHazards> all = entries.ofEc(ec).toList();
    boolean said = all.stream().anyMatch(e -> s.casNumbers().containsAll(e.casNumbers()));
    return said ? Stream.empty() : all.stream();
  }

  /**
   * The same substance with its CAS number, where its sheet has only an EC number that a single
   * entry prints: so it is added up with other lines of it, and known to lists that go by CAS.
   */
  SubstanceHazards identified(SubstanceHazards s) {
    List<SubstanceHazards> all = s.ecNumbers().stream().flatMap(entries::ofEc).toList();
    boolean one = all.stream().map(SubstanceHazards::indexNumber).distinct().count() == 1;
    return s.casNumbers().isEmpty() && one
        ? s.toBuilder().cas(all.get(0).casNumbers().get(0)).build()
        : s;
  }

  List<SubstanceHazards> entries() {
    return entries.all();
  }

  Optional<ClassRule> rule(HazardClass hazardClass) {
    return Optional.ofNullable(rules.get(hazardClass));
  }

  List<AcuteLimit> acuteLimits(UptakeForm form) {
    return acuteLimits.stream()
        .filter(l -> l.form() == form)
        .sorted(Comparator.comparingDouble(AcuteLimit::upTo))
        .toList();
  }

  /** Whether the rules hold a figure that not all have. */
  boolean has(Bound bound) {
    return bounds.containsKey(bound);
  }

  double bound(Bound bound) {
    return Objects.requireNonNull(bounds.get(bound), bound::id);
  }

  @Override
  public String toString() {
    return id() + " on " + day;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RuleSet that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(head, rows, day, labels);
  }
}
