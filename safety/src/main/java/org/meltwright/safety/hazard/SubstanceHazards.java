// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What is known of the hazards of one substance: categories, limits of its own, factors and
 * estimates, with the evidence that they rest on.
 *
 * <p>Harmonised entries come from {@link RuleSet#find}; a user's own data sheet is entered with
 * {@link #ofDataSheet}. Immutable and thread-safe.
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
   * <p>What the sheet does not name is taken as not classified; name with {@link Builder#openFor}
   * what the sheet says it does not know.
   *
   * @param name the name of the substance
   * @return a builder
   */
  public static Builder ofDataSheet(String name) {
    return new Builder(name, HazardEvidence.DATA_SHEET);
  }

  /**
   * Returns a substance of which nothing is known.
   *
   * @param name the name of the substance
   * @return the substance; it leaves classes open
   */
  public static SubstanceHazards unknown(String name) {
    return new Builder(name, HazardEvidence.NOT_LOOKED_UP).build();
  }

  /**
   * Returns a substance that the user holds to be in no class, such as water.
   *
   * @param name the name of the substance
   * @return the substance; the assumption stays visible
   */
  public static SubstanceHazards presumedNone(String name) {
    return new Builder(name, HazardEvidence.PRESUMED_NONE).build();
  }

  static Builder builder(String name, HazardEvidence evidence) {
    return new Builder(name, evidence);
  }

  private SubstanceHazards(Builder b) {
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
    Builder lighter = toBuilder();
    lighter.categories.removeIf(c -> c.hazardClass() == HazardClass.CARCINOGENICITY);
    if (note.equals("P")) {
      lighter.categories.removeIf(c -> c.hazardClass() == HazardClass.MUTAGENICITY);
    }
    lighter.notes.remove(note);
    lighter.remark = "condition of note " + note + " met by the supplier's statement";
    return lighter.build();
  }

  Builder toBuilder() {
    Builder b = new Builder(name, evidence);
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

  /** Collects what is known of a substance; not thread-safe. */
  public static final class Builder {

    private final String name;
    private final HazardEvidence evidence;
    private final List<String> casNumbers = new ArrayList<>();
    private final List<HazardCategory> categories = new ArrayList<>();
    private final List<SpecificLimit> specificLimits = new ArrayList<>();
    private final Map<UptakeForm, Double> estimates = new EnumMap<>(UptakeForm.class);
    private final Set<String> notes = new java.util.TreeSet<>();
    private final List<String> supplements = new ArrayList<>();
    private final Set<HazardClass> openClasses = EnumSet.noneOf(HazardClass.class);
    private String germanName = "";
    private String indexNumber = "";
    private Source source = Source.USER;
    private Knowledge knowledge = Knowledge.READ;
    private String remark = "";
    private double acuteFactor;
    private double chronicFactor;
    private UptakeForm inhaledAs = UptakeForm.DUST;
    private boolean additive = true;
    private String metal = "";
    private double metalShare = Double.NaN;

    private Builder(String name, HazardEvidence evidence) {
      this.name = name;
      this.evidence = evidence;
    }

    /**
     * Adds a CAS registry number.
     *
     * @param number the number with hyphens
     * @return this builder
     */
    public Builder cas(String number) {
      casNumbers.add(number);
      return this;
    }

    /**
     * Sets the German name.
     *
     * @param german the name as a German label prints it
     * @return this builder
     */
    public Builder germanName(String german) {
      germanName = german;
      return this;
    }

    /**
     * Adds categories in the notation of the law.
     *
     * @param text categories between semicolons, for example "Skin Sens. 1 H317; Repr. 2 H361f"
     * @return this builder
     * @throws ProblemException if one cannot be read
     */
    public Builder classified(String text) {
      TextTable.items(text, ";").forEach(item -> categories.add(HazardCategory.parse(item)));
      return this;
    }

    /**
     * Adds limits of its own.
     *
     * @param text limits between semicolons, for example "Carc. 1B H350 1; STOT SE 2 H371 3 to 10"
     * @return this builder
     * @throws ProblemException if one cannot be read
     */
    public Builder limits(String text) {
      TextTable.items(text, ";").forEach(item -> specificLimits.add(SpecificLimit.parse(item)));
      return this;
    }

    /**
     * Sets the M-factors.
     *
     * @param acute the factor for the short-term hazard, at least 1; 0 if none is stated
     * @param chronic the factor for the long-term hazard, at least 1; 0 if none is stated
     * @return this builder
     * @throws ProblemException if one is neither 0 nor at least 1
     */
    public Builder factors(double acute, double chronic) {
      acuteFactor = requireFactor(acute);
      chronicFactor = requireFactor(chronic);
      return this;
    }

    private static double requireFactor(double factor) {
      if (factor == 0 || (factor >= 1 && factor < Double.POSITIVE_INFINITY)) {
        return factor;
      }
      throw HazardNotation.unreadable("M-factor " + factor);
    }

    /**
     * Sets an acute toxicity estimate, LD50 or LC50.
     *
     * @param form the form of uptake
     * @param value the estimate in the form's unit, above zero
     * @return this builder
     * @throws ProblemException if the value is not above zero
     */
    public Builder estimate(UptakeForm form, double value) {
      if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
        throw HazardNotation.unreadable(form.id() + " " + value);
      }
      estimates.put(form, value);
      if (form.hazardClass() == HazardClass.ACUTE_INHALATION) {
        inhaledAs = form;
      }
      return this;
    }

    /**
     * Sets the form in which it is inhaled.
     *
     * @param form gas, vapour or dust
     * @return this builder
     */
    public Builder inhaledAs(UptakeForm form) {
      inhaledAs = form;
      return this;
    }

    /**
     * Says that it does not add up with others on skin and eye: acids, bases, inorganic salts,
     * aldehydes, phenols, surfactants.
     *
     * @return this builder
     */
    public Builder notAdditive() {
      additive = false;
      return this;
    }

    /**
     * Sets the metal that note 1 counts.
     *
     * @param symbol the symbol of the metal
     * @param share its share by mass, from 0 to 1
     * @return this builder
     */
    public Builder metal(String symbol, double share) {
      metal = symbol;
      metalShare = share;
      return this;
    }

    /**
     * Adds notes of the law.
     *
     * @param marks the notes between spaces, for example "A 1"
     * @return this builder
     */
    public Builder notes(String marks) {
      Stream.of(marks.split(" ", -1)).filter(m -> !m.isEmpty()).forEach(notes::add);
      return this;
    }

    /**
     * Adds supplements of the label.
     *
     * @param codes the codes between commas
     * @return this builder
     */
    public Builder supplements(String codes) {
      supplements.addAll(TextTable.items(codes, ","));
      return this;
    }

    /**
     * Says that nothing is known for classes.
     *
     * @param hazardClasses the classes that stay open
     * @return this builder
     */
    public Builder openFor(HazardClass... hazardClasses) {
      openClasses.addAll(List.of(hazardClasses));
      return this;
    }

    /**
     * Sets where the classification stands.
     *
     * @param where the source
     * @param how how it came to us
     * @return this builder
     */
    public Builder source(Source where, Knowledge how) {
      source = where;
      knowledge = how;
      return this;
    }

    /**
     * Sets a remark.
     *
     * @param text what else a reader should know
     * @return this builder
     */
    public Builder remark(String text) {
      remark = text;
      return this;
    }

    Builder index(String number) {
      indexNumber = number;
      return this;
    }

    /**
     * Returns what is known of the substance.
     *
     * @return what was collected so far
     */
    public SubstanceHazards build() {
      return new SubstanceHazards(this);
    }
  }
}
