// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.units.ProblemException;

/**
 * Collects what is known of a substance, in the notation of safety data sheets; not thread-safe.
 *
 * <p>Started by {@link SubstanceHazards#ofDataSheet}.
 *
 * <p>What a maker reads on the data sheet of a pigment, typed in as it stands there:
 *
 * <pre>{@code
 * SubstanceHazards sheet =
 *     SubstanceHazards.ofDataSheet("Pigment red, coated")
 *         .classified("Skin Sens. 1 H317; Aquatic Chronic 3 H412")
 *         .limits("Skin Sens. 1 H317 0.5")
 *         .openFor(HazardClass.CARCINOGENICITY)
 *         .build();
 * sheet.categories(); // [skin-sensitisation 1 H317, aquatic-chronic 3 H412]
 * sheet.isOpenFor(HazardClass.CARCINOGENICITY); // true
 * SubstanceHazards.ofDataSheet("x").classified("harmless"); // throws ProblemException
 * SubstanceHazards.ofDataSheet("x").classified("Carc. 3 H351"); // throws ProblemException
 * }</pre>
 */
public final class SubstanceSheet {

  final String name;
  final HazardEvidence evidence;
  final List<String> casNumbers = new ArrayList<>();
  final List<HazardCategory> categories = new ArrayList<>();
  final List<SpecificLimit> specificLimits = new ArrayList<>();
  final Map<UptakeForm, Double> estimates = new EnumMap<>(UptakeForm.class);
  final Set<String> notes = new TreeSet<>();
  final List<String> supplements = new ArrayList<>();
  final Set<HazardClass> openClasses = EnumSet.noneOf(HazardClass.class);
  String germanName = "";
  String indexNumber = "";
  Source source = Source.USER;
  Knowledge knowledge = Knowledge.READ;
  String remark = "";
  double acuteFactor;
  double chronicFactor;
  UptakeForm inhaledAs = UptakeForm.DUST;
  boolean additive = true;
  String metal = "";
  double metalShare = Double.NaN;

  SubstanceSheet(String name, HazardEvidence evidence) {
    this.name = name;
    this.evidence = evidence;
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
   * Adds categories in the notation of the law.
   *
   * @param text categories between semicolons, for example "Skin Sens. 1 H317; Repr. 2 H361f"
   * @return this sheet
   * @throws ProblemException if one cannot be read, or is no category of its class, see {@link
   *     HazardCategory#parse}
   */
  public SubstanceSheet classified(String text) {
    TextTable.items(text, ";").forEach(item -> categories.add(HazardCategory.parse(item)));
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
    TextTable.items(text, ";").forEach(item -> specificLimits.add(SpecificLimit.parse(item)));
    return this;
  }

  /**
   * Sets the M-factors.
   *
   * @param acute the factor for the short-term hazard, at least 1; 0 if none is stated
   * @param chronic the factor for the long-term hazard, at least 1; 0 if none is stated
   * @return this sheet
   * @throws ProblemException if one is neither 0 nor at least 1
   */
  public SubstanceSheet factors(double acute, double chronic) {
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
   * @return this sheet
   * @throws ProblemException if the value is not above zero
   */
  public SubstanceSheet estimate(UptakeForm form, double value) {
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
   * @return this sheet
   * @throws ProblemException if it is not a form of breathing in
   */
  public SubstanceSheet inhaledAs(UptakeForm form) {
    if (form.hazardClass() != HazardClass.ACUTE_INHALATION) {
      throw HazardNotation.unreadable("inhaled as " + form.id());
    }
    inhaledAs = form;
    return this;
  }

  /**
   * Says that it does not add up with others on skin and eye: acids, bases, inorganic salts,
   * aldehydes, phenols, surfactants.
   *
   * @return this sheet
   */
  public SubstanceSheet notAdditive() {
    additive = false;
    return this;
  }

  /**
   * Sets the metal that note 1 counts.
   *
   * @param symbol the symbol of the metal
   * @param share its share by mass, above 0, up to 1; not a number if it is not known
   * @return this sheet
   * @throws ProblemException if the share lies outside
   */
  public SubstanceSheet metal(String symbol, double share) {
    if (share <= 0 || share > 1) {
      throw HazardNotation.unreadable(symbol + " " + share);
    }
    metal = symbol;
    metalShare = share;
    return this;
  }

  /**
   * Adds notes of the law.
   *
   * @param marks the notes between spaces, for example "A 1"
   * @return this sheet
   */
  public SubstanceSheet notes(String marks) {
    Stream.of(marks.split(" ", -1)).filter(m -> !m.isEmpty()).forEach(notes::add);
    return this;
  }

  /**
   * Adds supplements of the label.
   *
   * @param codes the codes between commas
   * @return this sheet
   */
  public SubstanceSheet supplements(String codes) {
    supplements.addAll(TextTable.items(codes, ","));
    return this;
  }

  /**
   * Says that nothing is known for classes.
   *
   * @param hazardClasses the classes that stay open
   * @return this sheet
   */
  public SubstanceSheet openFor(HazardClass... hazardClasses) {
    openClasses.addAll(List.of(hazardClasses));
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

  SubstanceSheet index(String number) {
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
