// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * Collects what is known of a substance, in the notation of safety data sheets; not thread-safe.
 *
 * <p>Started by {@link SubstanceHazards#builder}. What is not stated stays unstated; a class that
 * is not named is taken as not classified, and {@link #openFor} names what the sheet itself does
 * not know.
 *
 * <p>What a maker reads on the data sheet of a pigment, typed in as it stands there:
 *
 * <pre>{@code
 * SubstanceHazards sheet =
 *     SubstanceHazards.builder("Pigment red, coated")
 *         .classified("Skin Sens. 1 H317; Aquatic Chronic 3 H412")
 *         .limits("Skin Sens. 1 H317 0.5")
 *         .openFor(HazardClass.CARCINOGENICITY)
 *         .build();
 * sheet.categories(); // [skin-sensitisation 1 H317, aquatic-chronic 3 H412]
 * sheet.isOpenFor(HazardClass.CARCINOGENICITY); // true
 * SubstanceHazards.builder("x").classified("harmless"); // throws ProblemException
 * SubstanceHazards.builder("x").classified("Carc. 3 H351"); // throws ProblemException
 * }</pre>
 */
public final class SubstanceSheet {

  private static final double GAS_CONSTANT = 8.314462618;
  private static final double ROOM_KELVIN = 298.15;

  final String name;
  final SubstanceFacts facts;
  final List<String> casNumbers = new ArrayList<>();
  final List<String> ecNumbers = new ArrayList<>();
  @Nullable String germanName;
  Source source = Source.USER;
  Knowledge knowledge = Knowledge.READ;
  @Nullable String remark;

  SubstanceSheet(String name, HazardEvidence evidence) {
    this(name, new SubstanceFacts(evidence));
  }

  private SubstanceSheet(String name, SubstanceFacts facts) {
    this.name = name;
    this.facts = facts;
  }

  SubstanceSheet copy() {
    SubstanceSheet copy = new SubstanceSheet(name, facts.copy());
    copy.casNumbers.addAll(casNumbers);
    copy.ecNumbers.addAll(ecNumbers);
    copy.germanName = germanName;
    copy.source = source;
    copy.knowledge = knowledge;
    copy.remark = remark;
    return copy;
  }

  boolean saysCategoriesAlone() {
    return facts.areCategoriesAlone() && casNumbers.isEmpty() && ecNumbers.isEmpty();
  }

  /**
   * Adds a CAS registry number.
   *
   * @param number the number with hyphens
   * @return this sheet
   */
  public SubstanceSheet cas(String number) {
    casNumbers.add(number);
    return this;
  }

  /**
   * Adds an EC number; a sheet without a CAS number is compared with the harmonised entry by it.
   *
   * @param number the number with hyphens, for example "232-350-7"
   * @return this sheet
   * @throws ProblemException if it is not well formed or its check digit is wrong
   */
  public SubstanceSheet ec(String number) {
    ecNumbers.add(IdentifierScheme.EC.require(number));
    return this;
  }

  /**
   * Sets the German name.
   *
   * @param german the name as a German label prints it
   * @return this sheet
   */
  public SubstanceSheet germanName(String german) {
    germanName = german;
    return this;
  }

  /**
   * Adds what a data sheet says of the substance, as copied from its section 2 or 3: categories,
   * and with them limits, M-factors, estimates, notes and supplements, see {@link CopiedSheet}.
   *
   * <p>A single substance without its share; use {@link CopiedSheet#read} for several, and to see
   * what was read by a choice.
   *
   * @param text for example "Skin Sens. 1 H317; Repr. 2 H361f"; blank text adds nothing
   * @return this sheet
   * @throws ProblemException if anything in it is not understood, or is no category of its class;
   *     with all problems and their places
   */
  public SubstanceSheet classified(String text) {
    if (text.isBlank()) {
      return this;
    }
    SheetReader reader = new SheetReader(text, false);
    reader.into(this);
    reader.findings().throwIfAny();
    return this;
  }

  /**
   * Says that the sheet names no class: "not classified", in so many words.
   *
   * <p>A sheet on which nothing at all is said leaves every class open.
   *
   * @return this sheet
   */
  public SubstanceSheet notClassified() {
    facts.saysNone = true;
    return this;
  }

  /**
   * Adds a category.
   *
   * @param category the category
   * @return this sheet
   */
  public SubstanceSheet classified(HazardCategory category) {
    facts.categories.add(category);
    return this;
  }

  /**
   * Adds limits of its own.
   *
   * @param text limits between semicolons, for example "Carc. 1B H350 1; STOT SE 2 H371 3 to 10"
   * @return this sheet
   * @throws ProblemException if one cannot be read, is no category of its class, or lies outside 0
   *     to 100 %
   */
  public SubstanceSheet limits(String text) {
    TextTable.items(text, ";").forEach(item -> limit(SpecificLimit.parse(item)));
    return this;
  }

  /**
   * Adds a limit of its own.
   *
   * @param limit the limit
   * @return this sheet
   */
  public SubstanceSheet limit(SpecificLimit limit) {
    facts.specificLimits.add(limit);
    return this;
  }

  /**
   * Sets the M-factor for the short-term hazard to water.
   *
   * @param factor the factor, at least 1
   * @return this sheet
   * @throws ProblemException if it is below 1 or not a number
   */
  public SubstanceSheet acuteFactor(double factor) {
    facts.acuteFactor = requireFactor(factor);
    return this;
  }

  /**
   * Sets the M-factor for the long-term hazard to water.
   *
   * @param factor the factor, at least 1
   * @return this sheet
   * @throws ProblemException if it is below 1 or not a number
   */
  public SubstanceSheet chronicFactor(double factor) {
    facts.chronicFactor = requireFactor(factor);
    return this;
  }

  private double requireFactor(double factor) {
    return require(factor, factor >= 1 && factor < Double.POSITIVE_INFINITY, HazardProblem.FACTOR);
  }

  private double require(double value, boolean possible, HazardProblem problem) {
    if (possible) {
      return value;
    }
    throw new ProblemException(Problem.of(problem, Bilingual.of(value)).with("name", name));
  }

  /**
   * Sets an acute toxicity estimate, LD50 or LC50.
   *
   * @param form the form of uptake
   * @param value the estimate in the form's unit, above zero
   * @return this sheet
   * @throws ProblemException if the value is not above zero
   */
  public SubstanceSheet estimate(UptakeForm form, double value) {
    facts.estimates.put(
        form,
        require(value, value > 0 && value < Double.POSITIVE_INFINITY, HazardProblem.ESTIMATE));
    return form.isInhaled() ? inhaledAs(form) : this;
  }

  /**
   * Adds a form in which it is inhaled; without one, vapour and dust are both reckoned and the
   * worse is taken.
   *
   * @param form gas, vapour or dust; a solid, a powder or a pigment can only be dust
   * @return this sheet
   * @throws ProblemException if it is not a form of breathing in
   */
  public SubstanceSheet inhaledAs(UptakeForm form) {
    if (!form.isInhaled()) {
      throw HazardNotation.unreadable("inhaled as " + form.id());
    }
    facts.inhaledAs.add(form);
    return this;
  }

  /**
   * Sets how much of it the air can hold as vapour at 25 °C, from its vapour pressure.
   *
   * <p>By p M / (R T), in g/m³, which is mg/l. What cannot reach the estimate of its category as
   * vapour is inhaled as mist.
   *
   * @param pascals the vapour pressure at 25 °C, above zero
   * @param gramsPerMole the molar mass, above zero
   * @return this sheet
   * @throws ProblemException if one is not above zero
   */
  public SubstanceSheet vapourPressure(double pascals, double gramsPerMole) {
    return saturatedVapour(
        positive(pascals) * positive(gramsPerMole) / (GAS_CONSTANT * ROOM_KELVIN));
  }

  private double positive(double value) {
    return require(
        value, value > 0 && value < Double.POSITIVE_INFINITY, HazardProblem.VAPOUR_PRESSURE);
  }

  SubstanceSheet saturatedVapour(double milligramsPerLitre) {
    facts.saturatedVapour = milligramsPerLitre;
    return this;
  }

  /**
   * Says that it does not add up with others on skin and eye: acids, bases, inorganic salts,
   * aldehydes, phenols, surfactants.
   *
   * @return this sheet
   */
  public SubstanceSheet notAdditive() {
    facts.additive = false;
    return this;
  }

  /**
   * Says that the Union has set a limit for the air of workplaces for it: a data sheet is due on
   * request even where nothing is classified.
   *
   * @return this sheet
   */
  public SubstanceSheet unionWorkplaceLimit() {
    facts.workplaceLimit = true;
    return this;
  }

  /**
   * Sets the metal that note 1 counts, of unknown share: the whole compound is counted.
   *
   * @param symbol the symbol of the metal
   * @return this sheet
   */
  public SubstanceSheet metal(String symbol) {
    facts.metal = symbol;
    return this;
  }

  /**
   * Sets the metal that note 1 counts.
   *
   * @param symbol the symbol of the metal
   * @param share its share by mass, above 0, up to 1
   * @return this sheet
   * @throws ProblemException if the share lies outside
   */
  public SubstanceSheet metal(String symbol, double share) {
    facts.metalShare = require(share, share > 0 && share <= 1, HazardProblem.METAL_SHARE);
    return metal(symbol);
  }

  /**
   * Adds notes of the law.
   *
   * @param marks the notes between spaces, for example "A 1"
   * @return this sheet
   */
  public SubstanceSheet notes(String marks) {
    Stream.of(marks.split(" ", -1)).filter(m -> !m.isEmpty()).forEach(facts.notes::add);
    return this;
  }

  /**
   * Adds supplements of the label.
   *
   * @param codes the codes between commas, for example "EUH066"
   * @return this sheet
   * @throws ProblemException if the law has no such supplement
   */
  public SubstanceSheet supplements(String codes) {
    TextTable.items(codes, ",").stream()
        .map(Statements::requireSupplement)
        .forEach(facts.supplements::add);
    return this;
  }

  /**
   * Says that nothing is known for classes.
   *
   * @param hazardClasses the classes that stay open
   * @return this sheet
   */
  public SubstanceSheet openFor(HazardClass... hazardClasses) {
    facts.openClasses.addAll(List.of(hazardClasses));
    return this;
  }

  /**
   * Says that the substance is in a class that only a test can tell, whatever its kind: a mixture
   * with it is open for the class until it was tested.
   *
   * @param hazardClass the class, for example {@link HazardClass#ORGANIC_PEROXIDE}
   * @return this sheet
   * @throws ProblemException if the class is worked out from the ingredients
   */
  public SubstanceSheet inClassByTest(HazardClass hazardClass) {
    if (hazardClass.isComputed()) {
      throw new ProblemException(Problem.of(HazardProblem.NOT_FOR_TEST, hazardClass.id()));
    }
    facts.classesByTest.add(hazardClass);
    return this;
  }

  /**
   * Sets where the classification stands.
   *
   * @param where the source
   * @param how how it came to us
   * @return this sheet
   */
  public SubstanceSheet source(Source where, Knowledge how) {
    source = where;
    knowledge = how;
    return this;
  }

  /**
   * Sets a remark.
   *
   * @param text what else a reader should know
   * @return this sheet
   */
  public SubstanceSheet remark(String text) {
    remark = text;
    return this;
  }

  /**
   * Names the harmonised entry that it falls under: with notes 11 and 12 the law adds up what falls
   * under it.
   *
   * @param number the index number, for example "607-230-00-6"
   * @return this sheet
   */
  public SubstanceSheet entry(String number) {
    facts.indexNumber = number;
    return this;
  }

  /**
   * Returns what is known of the substance.
   *
   * <p>A class of which a data sheet states limits alone is one that the substance is in: the
   * gravest category with a limit is taken for it.
   *
   * @return what was collected so far
   */
  public SubstanceHazards build() {
    SubstanceSheet whole = copy();
    if (facts.evidence == HazardEvidence.DATA_SHEET) {
      whole.facts.addCategoriesOfLimits();
    }
    return new SubstanceHazards(whole);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SubstanceSheet that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(
        name, facts, facts.saysNone, casNumbers, ecNumbers, germanName, source, knowledge, remark);
  }

  @Override
  public String toString() {
    return name + ": " + facts.categories;
  }
}
