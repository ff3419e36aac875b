// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A mixture classified by a rule set: an answer for each class, and what it rests on.
 *
 * <p>A screening aid, not a legal classification: tests of the mixture and the suppliers' data
 * sheets come first, and local law decides. It never says "safe".
 *
 * <p>A cake of beeswax with a tenth of cadmium red, which is excluded by name from the entry of its
 * group: that is no word of safety, and every class stays open but the two that only liquids know.
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition cake =
 *     Composition.ofParts(
 *         List.of(shelf.require("beeswax"), shelf.require("cadmium-red")), 90, 10);
 * HazardReview review = HazardReview.ofCake(cake, RuleSet.clpOn(LocalDate.of(2026, 6, 1)));
 * review; // no class reached on the data given; 24 classes open
 * review.finding(HazardClass.CARCINOGENICITY).status(); // INSUFFICIENT_DATA
 * review.open().size(); // 24
 * review.notices(); // [CADMIUM_PAINT]
 * review.dusts().get(0).dust(); // TOXIC_METAL
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class HazardReview {

  private final HazardMixture mixture;
  private final RuleSet rules;
  private final List<HazardFinding> findings;
  private final List<SupplementalStatement> supplements;
  private final List<SupplementalStatement> toCheck;
  private final List<HazardIngredient> elicitors;
  private final List<HazardIngredient> announced;
  private final List<HazardIngredient> onRequest;
  private final List<LegalNotice> notices;
  private final List<Assumption> assumptions;

  /**
   * Classifies a mixture.
   *
   * @param mixture the mixture
   * @param rules the rules
   * @return the review
   * @throws ProblemException if the mixture was built with the rules of another day
   */
  public static HazardReview of(HazardMixture mixture, RuleSet rules) {
    if (!mixture.day().equals(rules.day())) {
      throw new ProblemException(
          Problem.of(HazardProblem.OTHER_DAY, mixture.day().toString())
              .with("day", rules.day().toString()));
    }
    return new HazardReview(mixture, rules);
  }

  /**
   * Classifies a cake of materials that is still solid at 40 °C, with what the tables hold of each.
   *
   * @param cake the shares by mass of what softens above 40 °C only; of a balm that may flow there
   *     state the viscosity to {@link HazardMixture#builder(Composition, RuleSet)}
   * @param rules the rules
   * @return the review
   */
  public static HazardReview ofCake(Composition cake, RuleSet rules) {
    return of(HazardMixture.builder(cake, rules).state(PhysicalState.SOLID_AT_40).build(), rules);
  }

  private HazardReview(HazardMixture mixture, RuleSet rules) {
    this.mixture = mixture;
    this.rules = rules;
    List<HazardFinding> answers = new Classifier(mixture, rules).findings();
    boolean classified =
        !mixture.tested().isEmpty() || answers.stream().anyMatch(HazardFinding::isClassified);
    Supplements s = new Supplements(mixture, rules, answers);
    DataSheetDuty duty = new DataSheetDuty(mixture, rules);
    boolean full = rules.hasLabels();
    this.supplements = full ? s.statements() : List.of();
    this.toCheck = full ? s.toCheck(supplements) : List.of();
    this.elicitors = full ? duty.elicitors() : List.of();
    this.announced = full && !classified ? duty.announced() : List.of();
    this.onRequest = full && !classified ? duty.onRequest() : List.of();
    this.notices = full ? s.notices() : List.of();
    this.assumptions = Assumptions.of(mixture, rules, !announced.isEmpty() || !onRequest.isEmpty());
    this.findings = answers.stream().map(f -> f.assuming(assumptions)).toList();
  }

  /**
   * Returns the mixture.
   *
   * @return the mixture
   */
  public HazardMixture mixture() {
    return mixture;
  }

  /**
   * Returns the rules.
   *
   * @return the rule set
   */
  public RuleSet rules() {
    return rules;
  }

  /**
   * Returns the answer of each class that the rules know.
   *
   * @return the findings, in the order of the classes
   */
  public List<HazardFinding> findings() {
    return findings;
  }

  /**
   * Returns the answer of one class.
   *
   * @param hazardClass the class
   * @return the finding
   * @throws ProblemException if the rules do not compute this class
   */
  public HazardFinding finding(HazardClass hazardClass) {
    return findings.stream()
        .filter(f -> f.hazardClass() == hazardClass)
        .findFirst()
        .orElseThrow(
            () ->
                new ProblemException(
                    Problem.of(HazardProblem.CLASS_NOT_COMPUTED, Bilingual.of(hazardClass::name))));
  }

  /**
   * Returns all categories reached, those from tests of the mixture included.
   *
   * @return the categories; empty if none is reached, which is not a word of safety
   */
  public List<HazardCategory> categories() {
    return Stream.concat(
            findings.stream().flatMap(f -> f.categories().stream()), mixture.tested().stream())
        .toList();
  }

  /**
   * Returns the classes that something is missing for.
   *
   * @return the findings with insufficient data, or with ingredients that could make them worse
   */
  public List<HazardFinding> open() {
    return findings.stream()
        .filter(f -> f.status() == HazardStatus.INSUFFICIENT_DATA || !f.open().isEmpty())
        .toList();
  }

  /**
   * Returns the statements that single ingredients add.
   *
   * @return the supplements, such as EUH208
   */
  public List<SupplementalStatement> supplements() {
    return supplements;
  }

  /**
   * Returns the statements of ingredients that may hold for the mixture too, such as EUH014 or
   * EUH031: the law gives no share, and its own test or evidence has to tell.
   *
   * @return what has to be looked into; state the answer with {@link
   *     HazardMixtureBuilder#supplement} or {@link HazardMixtureBuilder#withoutSupplement}
   */
  public List<SupplementalStatement> supplementsToCheck() {
    return toCheck;
  }

  /**
   * Returns the sensitisers that may set off an allergy at their share.
   *
   * @return the ingredients to be named on the label
   */
  public List<HazardIngredient> elicitors() {
    return elicitors;
  }

  /**
   * Returns the classes that these rules do not hold: they are not assessed, which is not "not
   * classified".
   *
   * @return the classes; empty for the European rules
   */
  public List<HazardClass> classesNotAssessed() {
    return Stream.of(HazardClass.values()).filter(c -> rules.rule(c).isEmpty()).toList();
  }

  /**
   * Returns for whom the label of a mixture in no class says that there is a data sheet (EUH210).
   *
   * <p>Not for the public. Each substance counts by itself, and nothing is added up (Annex II
   * 2.10).
   *
   * @return the ingredients; empty if none asks for it, or the mixture is in a class
   */
  public List<HazardIngredient> dataSheetAnnouncedFor() {
    return announced;
  }

  /**
   * Returns for whom a professional who asks must be given a data sheet of a mixture in no class.
   *
   * <p>Not the list of {@link #dataSheetAnnouncedFor()}: a substance with a Union limit for
   * workplaces counts at any share here, and category 1A of sensitisers from 0.1 % only (REACH,
   * Article 31(3)). Whether a substance is on the candidate list is not known here.
   *
   * @return the ingredients; empty if none asks for it, or the mixture is in a class
   */
  public List<HazardIngredient> dataSheetOnRequestFor() {
    return onRequest;
  }

  /**
   * Returns pointers to other law.
   *
   * @return the notices
   */
  public List<LegalNotice> notices() {
    return notices;
  }

  /**
   * Returns what was taken for granted.
   *
   * @return the assumptions
   */
  public List<Assumption> assumptions() {
    return assumptions;
  }

  /**
   * Returns the pigments whose dust asks for care.
   *
   * @return the pigments in the mixture, strictest first
   */
  public List<PigmentHazard> dusts() {
    return mixture.ingredients().stream()
        .filter(i -> i.percent() > 0)
        .flatMap(i -> i.pigment().stream())
        .distinct()
        .sorted(java.util.Comparator.comparing(PigmentHazard::dust))
        .toList();
  }

  /**
   * Returns the share of unknown acute toxicity by a route.
   *
   * @param form the form of uptake
   * @return the sum of those ingredients that are themselves there from 1 % on, in per cent
   */
  public double unknownAcutePercent(UptakeForm form) {
    return new UnknownShares(mixture, rules).acutePercent(form);
  }

  /**
   * Returns what a data sheet says of ingredients of which nothing is known; a label carries those
   * of acute toxicity if the mixture is in a class.
   *
   * @param locale the reader's language; German for {@code de}, else English
   * @return whole sentences; empty if there is nothing to say
   */
  public List<String> unknownStatements(Locale locale) {
    return new UnknownShares(mixture, rules).statements(locale);
  }

  /**
   * Explains all answers.
   *
   * @return one explanation a class that has any arithmetic, gap or remark
   */
  public List<Explanation> explanations() {
    return findings.stream()
        .filter(f -> !f.workings().isEmpty() || !f.open().isEmpty() || !f.remarks().isEmpty())
        .map(HazardFinding::explanation)
        .toList();
  }

  /**
   * Returns the review on one line, locale-free: the categories reached, and how many classes are
   * open.
   *
   * @return for example "skin-sensitisation 1 H317"; "no class reached on the data given; 24
   *     classes open" where nothing is reached and little is known
   */
  @Override
  public String toString() {
    String reached =
        categories().isEmpty()
            ? "no class reached on the data given"
            : categories().stream().map(HazardCategory::toString).collect(joining("; "));
    int open = open().size();
    int missing = classesNotAssessed().size();
    String assessed = missing == 0 ? reached : reached + "; " + missing + " classes not assessed";
    String answer = rules.mayHaveChanged() ? assessed + "; the rules may have changed" : assessed;
    return open == 0
        ? answer
        : answer + "; " + open + (open == 1 ? " class open" : " classes open");
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HazardReview that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(mixture, rules);
  }
}
