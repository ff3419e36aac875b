// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What is known of the hazards of one substance: categories, limits of its own, factors and
 * estimates, with the evidence that they rest on.
 *
 * <p>Harmonised entries come from {@link RuleSet#find}; a user's own data sheet is entered with
 * {@link #builder}.
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
 * <p>Two are equal if they have the same name and say the same. Immutable and thread-safe.
 */
public final class SubstanceHazards {

  private final SubstanceSheet sheet;

  /**
   * Starts a classification from the user's own data sheet or test.
   *
   * <p>What a sheet that names some class does not name is taken as not classified; name with
   * {@link SubstanceSheet#openFor} what the sheet says it does not know. A sheet on which nothing
   * is said of any class leaves all open; {@link SubstanceSheet#notClassified} says that it names
   * none.
   *
   * @param name the name of the substance
   * @return a sheet to fill in
   */
  public static SubstanceSheet builder(String name) {
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

  SubstanceHazards(SubstanceSheet sheet) {
    this.sheet = sheet.copy();
  }

  /**
   * Returns the name.
   *
   * @return the name, in English for the tables here, else as the user gave it
   */
  public String name() {
    return sheet.name;
  }

  /**
   * Returns the German name.
   *
   * @return the name; empty if none is stated
   */
  public Optional<String> germanName() {
    return Optional.ofNullable(sheet.germanName);
  }

  /**
   * Returns the CAS registry numbers.
   *
   * @return the numbers with hyphens; empty if none is stated
   */
  public List<String> casNumbers() {
    return Collections.unmodifiableList(sheet.casNumbers);
  }

  /**
   * Returns the EC numbers.
   *
   * @return the numbers with hyphens; empty if none is stated
   */
  public List<String> ecNumbers() {
    return Collections.unmodifiableList(sheet.ecNumbers);
  }

  /**
   * Returns the index number of the harmonised entry.
   *
   * @return for example "030-013-00-7"; empty if there is no entry
   */
  public Optional<String> indexNumber() {
    return Optional.ofNullable(sheet.facts.indexNumber);
  }

  /**
   * Returns what the classification rests on.
   *
   * @return the evidence
   */
  public HazardEvidence evidence() {
    return sheet.facts.evidence;
  }

  /**
   * Returns where the classification stands.
   *
   * @return the source
   */
  public Source source() {
    return sheet.source;
  }

  /**
   * Returns how the classification came to us.
   *
   * @return the second axis of evidence
   */
  public Knowledge knowledge() {
    return sheet.knowledge;
  }

  /**
   * Returns what else a reader should know, such as an exclusion by name.
   *
   * @return a remark in English; empty if there is none
   */
  public Optional<String> remark() {
    return Optional.ofNullable(sheet.remark);
  }

  /**
   * Returns the categories.
   *
   * @return the categories, in the order of the source; empty if there is none
   */
  public List<HazardCategory> categories() {
    return Collections.unmodifiableList(sheet.facts.categories);
  }

  /**
   * Returns the classes that it is in and that only a test of a mixture with it can tell.
   *
   * @return the classes whose kinds are not held here, such as organic peroxides; others stand
   *     among the categories
   */
  public Set<HazardClass> classesByTest() {
    return Collections.unmodifiableSet(sheet.facts.classesByTest);
  }

  /**
   * Returns the concentration limits of its own.
   *
   * @return the limits; empty if the general ones hold
   */
  public List<SpecificLimit> specificLimits() {
    return Collections.unmodifiableList(sheet.facts.specificLimits);
  }

  /**
   * Returns the M-factor for the short-term hazard to water.
   *
   * @return the factor, 1 or more; empty if none is stated
   */
  public OptionalDouble acuteFactor() {
    return optional(sheet.facts.acuteFactor);
  }

  /**
   * Returns the M-factor for the long-term hazard to water.
   *
   * @return the factor, 1 or more; empty if none is stated
   */
  public OptionalDouble chronicFactor() {
    return optional(sheet.facts.chronicFactor);
  }

  /**
   * Returns the acute toxicity estimate that is stated for a form of uptake.
   *
   * @param form the form
   * @return the estimate in the form's unit; empty if none is stated
   */
  public OptionalDouble estimate(UptakeForm form) {
    return optional(sheet.facts.estimates.get(form));
  }

  /**
   * Returns the forms in which it is inhaled.
   *
   * @return gas, vapour or dust; empty if none is stated
   */
  public Set<UptakeForm> inhaledAs() {
    return Collections.unmodifiableSet(sheet.facts.inhaledAs);
  }

  /**
   * Returns how much of it the air can hold as vapour at 25 °C.
   *
   * @return the content in mg per litre of air; empty if no vapour pressure is stated
   */
  public OptionalDouble saturatedVapourMilligramsPerLitre() {
    return optional(sheet.facts.saturatedVapour);
  }

  /**
   * Tells whether it adds up with others on skin and eye.
   *
   * @return false for acids, bases, inorganic salts, aldehydes, phenols and surfactants that were
   *     marked so
   */
  public boolean isAdditive() {
    return sheet.facts.additive;
  }

  /**
   * Tells whether the Union has set a limit for the air of workplaces for it.
   *
   * @return whether one is known here; false is not "there is none"
   */
  public boolean hasUnionWorkplaceLimit() {
    return sheet.facts.workplaceLimit;
  }

  /**
   * Returns the notes of its entry.
   *
   * @return for example "1" for limits that count the metal; a star for acute toxicity limits that
   *     could not be carried over
   */
  public Set<String> notes() {
    return Collections.unmodifiableSet(sheet.facts.notes);
  }

  /**
   * Returns the supplements of its label.
   *
   * @return codes, for example "EUH066"
   */
  public List<String> supplements() {
    return Collections.unmodifiableList(sheet.facts.supplements);
  }

  /**
   * Returns the metal that its limits count or that a supplement asks after.
   *
   * @return the symbol; empty if none is stated
   */
  public Optional<String> metal() {
    return Optional.ofNullable(sheet.facts.metal);
  }

  /**
   * Returns the share of that metal.
   *
   * @return the share by mass, above 0, up to 1; empty if none is stated
   */
  public OptionalDouble metalShare() {
    return optional(sheet.facts.metalShare);
  }

  private static OptionalDouble optional(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /**
   * Tells whether nothing is known of it for a class.
   *
   * @param hazardClass the class
   * @return whether the class stays open
   */
  public boolean isOpenFor(HazardClass hazardClass) {
    if (evidence().isOpen()
        || sheet.facts.isBlank()
        || sheet.facts.openClasses.contains(hazardClass)) {
      return true;
    }
    return sheet.facts.notes.contains("X") && !isClassifiedFor(hazardClass);
  }

  /**
   * Tells whether it is classified for a class.
   *
   * @param hazardClass the class
   * @return whether a category or a limit of its own names the class
   */
  public boolean isClassifiedFor(HazardClass hazardClass) {
    return sheet.facts.classesByTest.contains(hazardClass)
        || sheet.facts.categories.stream().anyMatch(c -> c.hazardClass() == hazardClass)
        || sheet.facts.specificLimits.stream().anyMatch(l -> l.hazardClass() == hazardClass);
  }

  /**
   * Returns the classification without what a note's condition lifts.
   *
   * <p>Notes P and J (benzene below 0.1 %) and K (butadiene below 0.1 %) lift carcinogenicity and
   * mutagenicity; notes N (full refining history known, made from no carcinogen), L (less than 3 %
   * DMSO extract) and M (less than 0.005 % benzo[a]pyrene) lift carcinogenicity. The supplier must
   * state that the condition is met. Notes P and K then ask for precautionary statements of their
   * own.
   *
   * @param note P, J, K, N, L or M
   * @return the lighter classification, as the user's own statement
   * @throws ProblemException if the entry does not carry the note or no condition lifts it
   */
  public SubstanceHazards withConditionMet(String note) {
    ConditionNote condition =
        ConditionNote.of(note)
            .filter(n -> sheet.facts.notes.contains(note))
            .orElseThrow(
                () ->
                    new ProblemException(
                        Problem.of(HazardProblem.NOTE, note).with("name", name())));
    SubstanceSheet lighter = toBuilder();
    lighter.facts.categories.removeIf(c -> condition.lifts(c.hazardClass()));
    lighter.facts.saysNone = true;
    lighter.facts.notes.remove(note);
    lighter.facts.notes.add(condition.metMark());
    lighter.remark = "condition of note " + note + " met by the supplier's statement";
    return lighter.build();
  }

  /**
   * Returns a sheet that says the same, to be changed.
   *
   * @return a new sheet
   */
  public SubstanceSheet toBuilder() {
    return sheet.copy();
  }

  /** Returns the key under which lines of the same substance are added. */
  String key() {
    return Stream.of(sheet.casNumbers, sheet.ecNumbers)
        .flatMap(List::stream)
        .findFirst()
        .orElseGet(() -> name().toLowerCase(Locale.ROOT));
  }

  /** Tells whether another leads to the same answers. */
  boolean saysTheSameAs(SubstanceHazards other) {
    return sheet.facts.equals(other.sheet.facts);
  }

  List<Claim> claims(HazardClass hazardClass, Effect effect) {
    return sheet.facts.categories.stream()
        .filter(c -> c.hazardClass() == hazardClass)
        .flatMap(c -> Claim.of(c).stream())
        .filter(c -> effect == Effect.WHOLE || c.effect() == effect)
        .toList();
  }

  /** Returns the limits of its own for an effect; one that does not say which holds for all. */
  List<SpecificLimit> limits(HazardClass hazardClass, Effect effect) {
    return sheet.facts.specificLimits.stream()
        .filter(l -> l.hazardClass() == hazardClass)
        .flatMap(l -> effect == Effect.WHOLE ? Stream.of(l) : ofEffect(l, effect).stream())
        .toList();
  }

  /** What a limit says of an effect: the small letter of H360Df is category 2 of fertility. */
  private static Optional<SpecificLimit> ofEffect(SpecificLimit limit, Effect effect) {
    Map<Effect, Category> effects = Effect.of(limit.category(), limit.statement());
    Category category = effects.getOrDefault(effect, effects.get(Effect.NOT_SAID));
    if (category == null) {
      return Optional.empty();
    }
    return Optional.of(
        category == limit.category() ? limit : limit.asSuspected("H361" + effect.letter(true)));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SubstanceHazards that
        && name().equals(that.name())
        && sheet.casNumbers.equals(that.sheet.casNumbers)
        && sheet.ecNumbers.equals(that.sheet.ecNumbers)
        && saysTheSameAs(that);
  }

  @Override
  public int hashCode() {
    return name().hashCode();
  }

  @Override
  public String toString() {
    String byTest =
        sheet.facts.classesByTest.isEmpty() ? "" : " by test " + ids(sheet.facts.classesByTest);
    return name() + " " + sheet.facts.categories + byTest;
  }

  private static List<String> ids(Set<HazardClass> classes) {
    return classes.stream().map(HazardClass::id).toList();
  }
}
