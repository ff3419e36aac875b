// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What is known of the hazards of one substance: categories, limits of its own, factors and
 * estimates, with the evidence that they rest on.
 *
 * <p>Harmonised entries come from {@link RuleSet#find}; a user's own data sheet is entered with
 * {@link #ofDataSheet}.
 *
 * <p>A heavy naphtha is taken at its worst unless the supplier states that it holds less than 0.1 %
 * of benzene (note P):
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * SubstanceHazards naphtha = rules.find("64742-48-9").orElseThrow();
 * naphtha.isClassifiedFor(HazardClass.CARCINOGENICITY); // true
 * naphtha.notes(); // [P]
 * naphtha.withConditionMet("P").categories(); // [aspiration 1 H304]
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class SubstanceHazards {

  private final String name;
  private final String germanName;
  private final List<String> casNumbers;
  private final String indexNumber;
  private final HazardEvidence evidence;
  private final Source source;
  private final Knowledge knowledge;
  private final String remark;
  private final List<HazardCategory> categories;
  private final List<SpecificLimit> specificLimits;
  private final double acuteFactor;
  private final double chronicFactor;
  private final Map<UptakeForm, Double> estimates;
  private final UptakeForm inhaledAs;
  private final boolean additive;
  private final Set<String> notes;
  private final List<String> supplements;
  private final String metal;
  private final double metalShare;
  private final Set<HazardClass> openClasses;

  /**
   * Starts a classification from the user's own data sheet or test.
   *
   * <p>What the sheet does not name is taken as not classified; name with {@link
   * SubstanceSheet#openFor} what the sheet says it does not know.
   *
   * @param name the name of the substance
   * @return a sheet to fill in
   */
  public static SubstanceSheet ofDataSheet(String name) {
    return new SubstanceSheet(name, HazardEvidence.DATA_SHEET);
  }

  /**
   * Returns a substance of which nothing is known.
   *
   * @param name the name of the substance
   * @return the substance; it leaves classes open
   */
  public static SubstanceHazards unknown(String name) {
    return new SubstanceSheet(name, HazardEvidence.NOT_LOOKED_UP).build();
  }

  /**
   * Returns a substance that the user holds to be in no class, such as water.
   *
   * @param name the name of the substance
   * @return the substance; the assumption stays visible
   */
  public static SubstanceHazards presumedNone(String name) {
    return new SubstanceSheet(name, HazardEvidence.PRESUMED_NONE).build();
  }

  static SubstanceSheet builder(String name, HazardEvidence evidence) {
    return new SubstanceSheet(name, evidence);
  }

  SubstanceHazards(SubstanceSheet b) {
    this.name = b.name;
    this.germanName = b.germanName;
    this.casNumbers = List.copyOf(b.casNumbers);
    this.indexNumber = b.indexNumber;
    this.evidence = b.evidence;
    this.source = b.source;
    this.knowledge = b.knowledge;
    this.remark = b.remark;
    this.categories = List.copyOf(b.categories);
    this.specificLimits = List.copyOf(b.specificLimits);
    this.acuteFactor = b.acuteFactor;
    this.chronicFactor = b.chronicFactor;
    this.estimates = Map.copyOf(b.estimates);
    this.inhaledAs = b.inhaledAs;
    this.additive = b.additive;
    this.notes = Set.copyOf(b.notes);
    this.supplements = List.copyOf(b.supplements);
    this.metal = b.metal;
    this.metalShare = b.metalShare;
    this.openClasses = Set.copyOf(b.openClasses);
  }

  /**
   * Returns the name.
   *
   * @return the name, in English for the tables here, else as the user gave it
   */
  public String name() {
    return name;
  }

  /**
   * Returns the German name.
   *
   * @return the name; empty if none is stated
   */
  public Optional<String> germanName() {
    return germanName.isEmpty() ? Optional.empty() : Optional.of(germanName);
  }

  /**
   * Returns the CAS registry numbers.
   *
   * @return the numbers with hyphens; empty if none is stated
   */
  public List<String> casNumbers() {
    return casNumbers;
  }

  /**
   * Returns the index number of the harmonised entry.
   *
   * @return for example "030-013-00-7"; empty if there is no entry
   */
  public Optional<String> indexNumber() {
    return indexNumber.isEmpty() ? Optional.empty() : Optional.of(indexNumber);
  }

  /**
   * Returns what the classification rests on.
   *
   * @return the evidence
   */
  public HazardEvidence evidence() {
    return evidence;
  }

  /**
   * Returns where the classification stands.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Returns how the classification came to us.
   *
   * @return the second axis of evidence
   */
  public Knowledge knowledge() {
    return knowledge;
  }

  /**
   * Returns what else a reader should know, such as an exclusion by name.
   *
   * @return a remark in English; empty if there is none
   */
  public String remark() {
    return remark;
  }

  /**
   * Returns the categories.
   *
   * @return the categories, in the order of the source; empty if there is none
   */
  public List<HazardCategory> categories() {
    return categories;
  }

  /**
   * Returns the concentration limits of its own.
   *
   * @return the limits; empty if the general ones hold
   */
  public List<SpecificLimit> specificLimits() {
    return specificLimits;
  }

  /**
   * Returns the M-factor for the short-term hazard to water.
   *
   * @return the factor; empty if none is stated
   */
  public OptionalDouble acuteFactor() {
    return acuteFactor > 0 ? OptionalDouble.of(acuteFactor) : OptionalDouble.empty();
  }

  /**
   * Returns the M-factor for the long-term hazard to water.
   *
   * @return the factor; empty if none is stated
   */
  public OptionalDouble chronicFactor() {
    return chronicFactor > 0 ? OptionalDouble.of(chronicFactor) : OptionalDouble.empty();
  }

  /**
   * Returns the acute toxicity estimate that is stated for a form of uptake.
   *
   * @param form the form
   * @return the estimate in the form's unit; empty if none is stated
   */
  public OptionalDouble estimate(UptakeForm form) {
    Double value = estimates.get(form);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /**
   * Returns the form in which it is inhaled.
   *
   * @return gas, vapour or dust
   */
  public UptakeForm inhaledAs() {
    return inhaledAs;
  }

  /**
   * Tells whether it adds up with others on skin and eye.
   *
   * @return false for acids, bases, inorganic salts, aldehydes, phenols and surfactants that were
   *     marked so
   */
  public boolean isAdditive() {
    return additive;
  }

  /**
   * Returns the notes of its entry.
   *
   * @return for example "1" for limits that count the metal; a star for acute toxicity limits that
   *     could not be carried over
   */
  public Set<String> notes() {
    return notes;
  }

  /**
   * Returns the supplements of its label.
   *
   * @return codes, for example "EUH066"
   */
  public List<String> supplements() {
    return supplements;
  }

  /**
   * Returns the metal that its limits count or that a supplement asks after.
   *
   * @return the symbol; empty if none is stated
   */
  public String metal() {
    return metal;
  }

  /**
   * Returns the share of that metal.
   *
   * @return the share by mass, from 0 to 1; empty if none is stated
   */
  public OptionalDouble metalShare() {
    return Double.isNaN(metalShare) ? OptionalDouble.empty() : OptionalDouble.of(metalShare);
  }

  /**
   * Tells whether nothing is known of it for a class.
   *
   * @param hazardClass the class
   * @return whether the class stays open
   */
  public boolean isOpenFor(HazardClass hazardClass) {
    if (evidence.isOpen() || openClasses.contains(hazardClass)) {
      return true;
    }
    return notes.contains("X") && !isClassifiedFor(hazardClass);
  }

  /**
   * Tells whether it is classified for a class.
   *
   * @param hazardClass the class
   * @return whether a category or a limit of its own names the class
   */
  public boolean isClassifiedFor(HazardClass hazardClass) {
    return categories.stream().anyMatch(c -> c.hazardClass() == hazardClass)
        || specificLimits.stream().anyMatch(l -> l.hazardClass() == hazardClass);
  }

  /**
   * Returns the classification without what a note's condition lifts.
   *
   * <p>Notes P (benzene below 0.1 %) lifts carcinogenicity and mutagenicity; notes N (full refining
   * history known, made from no carcinogen), L (less than 3 % DMSO extract) and M (less than 0.005
   * % benzo[a]pyrene) lift carcinogenicity. The supplier must state that the condition is met.
   *
   * @param note P, N, L or M
   * @return the lighter classification, as the user's own statement
   * @throws ProblemException if the entry does not carry the note or no condition lifts it
   */
  public SubstanceHazards withConditionMet(String note) {
    if (!notes.contains(note) || !Set.of("P", "N", "L", "M").contains(note)) {
      throw new ProblemException(Problem.of(HazardProblem.NOTE, note).with("name", name));
    }
    SubstanceSheet lighter = toSheet();
    lighter.categories.removeIf(c -> c.hazardClass() == HazardClass.CARCINOGENICITY);
    if (note.equals("P")) {
      lighter.categories.removeIf(c -> c.hazardClass() == HazardClass.MUTAGENICITY);
    }
    lighter.notes.remove(note);
    lighter.remark = "condition of note " + note + " met by the supplier's statement";
    return lighter.build();
  }

  SubstanceSheet toSheet() {
    SubstanceSheet b = new SubstanceSheet(name, evidence);
    b.casNumbers.addAll(casNumbers);
    b.germanName = germanName;
    b.indexNumber = indexNumber;
    b.source = source;
    b.knowledge = knowledge;
    b.remark = remark;
    b.categories.addAll(categories);
    b.specificLimits.addAll(specificLimits);
    b.acuteFactor = acuteFactor;
    b.chronicFactor = chronicFactor;
    b.estimates.putAll(estimates);
    b.inhaledAs = inhaledAs;
    b.additive = additive;
    b.notes.addAll(notes);
    b.supplements.addAll(supplements);
    b.metal = metal;
    b.metalShare = metalShare;
    b.openClasses.addAll(openClasses);
    return b;
  }

  /** Returns the key under which lines of the same substance are added. */
  String key() {
    return casNumbers.isEmpty() ? name.toLowerCase(Locale.ROOT) : casNumbers.get(0);
  }

  /** Tells whether another leads to the same answers. */
  boolean saysTheSameAs(SubstanceHazards other) {
    return this == other || says().equals(other.says());
  }

  private List<Object> says() {
    return List.of(
        evidence,
        categories,
        specificLimits,
        acuteFactor,
        chronicFactor,
        estimates,
        inhaledAs,
        additive,
        notes,
        supplements,
        metal,
        metalShare,
        openClasses);
  }

  List<Claim> claims(HazardClass hazardClass, String strand) {
    return categories.stream()
        .filter(c -> c.hazardClass() == hazardClass)
        .flatMap(c -> Claim.of(c).stream())
        .filter(c -> c.strand().equals(strand))
        .toList();
  }

  /** Returns the limits of its own for an effect; one that does not say which holds for all. */
  List<SpecificLimit> limits(HazardClass hazardClass, String strand) {
    return specificLimits.stream()
        .filter(l -> l.hazardClass() == hazardClass)
        .filter(l -> strand.isEmpty() || speaksOf(l, strand))
        .toList();
  }

  private static boolean speaksOf(SpecificLimit limit, String strand) {
    return Claim.strands(limit.category(), limit.statement()).stream()
        .anyMatch(pair -> pair[0].equals(strand) || pair[0].equals("U"));
  }

  /** Returns what adds up across substances although the class takes the highest share. */
  String additiveGroup() {
    if (notes.contains("11")) {
      return "boron compounds (note 11)";
    }
    return notes.contains("12") ? indexNumber + " (note 12)" : key();
  }

  @Override
  public String toString() {
    return name + " " + categories;
  }
}
