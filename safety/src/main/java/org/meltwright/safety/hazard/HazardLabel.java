// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.source.Knowledge;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Limit;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/**
 * The label of a mixture: what the law asks for, and what a careful maker prints on any cake.
 *
 * <p>A statement is printed finished or not at all: what is missing to finish it is a {@link
 * LabelGap}, and the label is incomplete.
 *
 * <p>A cake with a tenth of zinc white, of which the maker has stated nothing yet:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition cake =
 *     Composition.ofParts(
 *         List.of(shelf.require("beeswax"), shelf.require("zinc-white")), 90, 10);
 * HazardReview review = HazardReview.ofCake(cake, RuleSet.clpOn(LocalDate.of(2026, 6, 1)));
 * HazardLabel label = HazardLabel.of(review, LabelDetails.builder().build());
 * label.pictograms(); // [GHS09]
 * label.hazardStatements(); // [H411]
 * label.text("H411", Locale.ENGLISH); // Toxic to aquatic life with long lasting effects.
 * label.isComplete(); // false
 * label.text(Locale.ENGLISH); // THIS LABEL IS INCOMPLETE. To be completed:…
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class HazardLabel {

  private final HazardReview review;

  private final LabelDetails details;
  private final LabelElements elements;
  private final StatementFilling filling;
  private final List<Precaution> choice;

  /**
   * Returns the label of a reviewed mixture.
   *
   * @param review the classification
   * @param details what the maker states
   * @return the label
   * @throws ProblemException if the review follows rules that know no label
   */
  public static HazardLabel of(HazardReview review, LabelDetails details) {
    if (!review.rules().hasLabels()) {
      throw new ProblemException(
          Problem.of(HazardProblem.NO_LABEL_BY_THESE_RULES, review.rules().id()));
    }
    return new HazardLabel(review, details);
  }

  private HazardLabel(HazardReview review, LabelDetails details) {
    this.review = review;
    this.details = details;
    this.elements = LabelElements.of(review.categories(), review.rules());
    this.filling = new StatementFilling(review, details);
    this.choice =
        new PrecautionChoice(
                review.categories(), elements, noted(), details.isForThePublic(), mayBeBreathed())
            .choose();
  }

  private boolean mayBeBreathed() {
    return review.mixture().isBreathable();
  }

  /**
   * Statements that notes P and K ask for themselves, where the mixture is mainly that substance.
   */
  private Map<String, String> noted() {
    double from = review.rules().bound(Bound.CMR_OWN_NOTE_FROM_PER_CENT);
    Map<String, String> noted = new LinkedHashMap<>();
    review.mixture().ingredients().stream()
        .filter(i -> Limit.reaches(i.percent(), from))
        .flatMap(i -> ConditionNote.met(i.hazards()).stream())
        .forEach(
            note ->
                note.precautions().stream()
                    .filter(code -> details.isForThePublic() || !code.equals("P102"))
                    .forEach(code -> noted.putIfAbsent(code, note.name())));
    return noted;
  }

  /**
   * Returns the review.
   *
   * @return the classification behind the label
   */
  public HazardReview review() {
    return review;
  }

  /**
   * Returns the details.
   *
   * @return what the maker states
   */
  public LabelDetails details() {
    return details;
  }

  /**
   * Returns the pictograms.
   *
   * @return the pictograms after precedence, in the order of their codes
   */
  public List<Pictogram> pictograms() {
    boolean metalAlone =
        details.isForThePublic()
            && review.categories().stream()
                .filter(c -> elements.pictogram(c) == Pictogram.GHS05)
                .allMatch(c -> c.hazardClass() == HazardClass.METAL_CORROSION);
    return elements.pictograms().stream().filter(p -> p != Pictogram.GHS05 || !metalAlone).toList();
  }

  /**
   * Returns the signal word.
   *
   * @return the word; empty if no category asks for one
   */
  public Optional<ChemicalSignalWord> signalWord() {
    return elements.signalWord();
  }

  /**
   * Returns the codes of the hazard statements.
   *
   * @return H and EUH codes that follow from the classes
   */
  public List<String> hazardStatements() {
    return elements.hazardStatements();
  }

  /**
   * Returns the codes of the supplemental statements.
   *
   * @return EUH codes that follow from single ingredients; EUH210 for professionals only
   */
  public List<String> supplementalStatements() {
    boolean sheet =
        !details.isForThePublic()
            && review.categories().isEmpty()
            && !review.dataSheetAnnouncedFor().isEmpty();
    return Stream.concat(
            review.supplements().stream().map(SupplementalStatement::code),
            sheet ? Stream.of("EUH210") : Stream.empty())
        .toList();
  }

  /**
   * Returns the codes of the chosen precautionary statements that can be printed finished.
   *
   * @return normally no more than six codes; more where those that may never be cut are more
   */
  public List<String> precautionaryStatements() {
    return printed().filter(code -> filling.gap(code).isEmpty()).toList();
  }

  private Stream<String> printed() {
    return choice.stream().filter(p -> p.verdict().isPrinted()).map(Precaution::code);
  }

  /**
   * Returns what became of every precautionary statement that the classes offer, and why.
   *
   * @return those that are printed first, each in the order of their codes
   */
  public List<Precaution> precautions() {
    return choice;
  }

  /**
   * Returns why each precautionary statement stands on the label, and what was left out.
   *
   * @return the explanation, in English
   */
  public Explanation explanation() {
    Explanation.Builder text =
        Explanation.builder(HazardLabel.class, "working.label", Map.of())
            .conclusion("working.label.rule", Map.of());
    choice.forEach(p -> text.conclusion(Bilingual.of(r -> p.code() + ": " + p.reason(r))));
    if (printed().count() > PrecautionChoice.usualNumber(review.rules().day())) {
      text.caution(Bilingual.of(reader -> HazardTexts.label("precaution.more-than-six", reader)));
    }
    return text.source(review.rules().source("Articles 22 and 28", Knowledge.READ)).build();
  }

  /**
   * Returns what the pack for the public must have besides its label.
   *
   * @return the duties; empty for professionals, or if no class asks for one
   */
  public List<PackagingDuty> packaging() {
    return details.isForThePublic() ? PackagingDuty.of(review) : List.of();
  }

  /**
   * Returns all codes that the label prints.
   *
   * @return hazard, supplemental and precautionary statements, in this order
   */
  public List<String> statements() {
    return Stream.of(hazardStatements(), supplementalStatements(), precautionaryStatements())
        .flatMap(List::stream)
        .toList();
  }

  /**
   * Returns the finished text of a statement of this label.
   *
   * @param code the code, for example "H317"
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the text, without placeholder, ellipsis or open alternative
   */
  public String text(String code, Locale locale) {
    return filling.text(code, locale);
  }

  /** Whether it is handed over to be melted: advice on melting has no place on a liquid. */
  boolean mayBeMelted() {
    return review
        .mixture()
        .state()
        .filter(state -> state == PhysicalState.LIQUID || state == PhysicalState.GAS)
        .isEmpty();
  }

  /** The stated highest temperature, if the label may advise it. */
  Optional<TemperaturePoint> highestTemperature() {
    return details
        .maximumTemperature()
        .filter(t -> new HeatingAdvice(this).verdict() == HeatingAdvice.Verdict.NONE);
  }

  /** Whether rags with it may heat themselves. */
  boolean holdsDryingOil() {
    return review.mixture().ingredients().stream()
        .filter(i -> Limit.reaches(i.percent(), review.rules().bound(Bound.MAY_BURN_FROM_PER_CENT)))
        .flatMap(i -> Catalogued.of(i).stream())
        .anyMatch(m -> m.family() == MaterialFamily.DRYING_OIL);
  }

  /**
   * Returns what the label says at least while a class lacks its test: what an ingredient in the
   * class asks for by itself, if the whole does not print it already.
   *
   * @return codes; empty where no ingredient is in a class that is open for lack of a test
   */
  public List<String> untilTested() {
    return new UntilTested(review)
        .codes(details.isForThePublic()).stream()
            .filter(code -> !statements().contains(code))
            .filter(code -> filling.gap(code).isEmpty())
            .toList();
  }

  /**
   * Returns the words that keep carcinogens, mutagens and reprotoxicants of category 1 from the
   * public (REACH, Annex XVII, entries 28 to 30).
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the words of a label for professionals; empty for the public, whom a {@link
   *     LegalNotice} concerns, and for all other mixtures
   */
  public Optional<String> restriction(Locale locale) {
    return !details.isForThePublic() && review.notices().contains(LegalNotice.CMR_TO_THE_PUBLIC)
        ? Optional.of(HazardTexts.label("professional-users", locale))
        : Optional.empty();
  }

  /** The names that a German label prints in another language; none for an English one. */
  List<String> namesWithoutGerman(Locale locale) {
    return HazardTexts.isGerman(locale)
        ? review.mixture().ingredients().stream()
            .filter(i -> i.percent() > 0 && !i.hasGermanName())
            .map(i -> i.name(locale))
            .distinct()
            .toList()
        : List.of();
  }

  List<String> acuteUnknown(Locale locale) {
    return new UnknownShares(review.mixture(), review.rules()).acuteStatements(locale);
  }

  /**
   * Returns the ingredients that the label names, the gravest first.
   *
   * <p>All that lead to a class of which the highest share decides, and further sensitisers in
   * amounts that may set off an allergy; of classes that add up, those that lead to it alone, else
   * the fewest that together do, up to four names.
   *
   * @return the ingredients
   */
  public List<HazardIngredient> namedIngredients() {
    return new NamedIngredients(review).names();
  }

  /**
   * Returns what the label lacks.
   *
   * @return the gaps; empty if the label is complete
   */
  public List<LabelGap> gaps() {
    Set<LabelGap> gaps = EnumSet.noneOf(LabelGap.class);
    addIf(gaps, details.use().equals(Optional.of(ProductUse.ON_THE_SKIN)), LabelGap.OTHER_LAW);
    fieldGaps(gaps);
    Stream.concat(hazardStatements().stream(), printed())
        .flatMap(code -> filling.gap(code).stream())
        .forEach(gaps::add);
    boolean german = namedIngredients().stream().allMatch(HazardIngredient::hasGermanName);
    addIf(gaps, !german, LabelGap.INGREDIENT_NAME);
    addIf(gaps, !review.open().isEmpty(), LabelGap.CLASSIFICATION);
    addIf(
        gaps, new NamedIngredients(review).leavesAClassWithoutName(), LabelGap.INGREDIENT_OF_CLASS);
    addIf(gaps, !review.supplementsToCheck().isEmpty(), LabelGap.SUPPLEMENTS);
    return List.copyOf(gaps);
  }

  private void fieldGaps(Set<LabelGap> gaps) {
    LabelSupplier s = details.supplier();
    addIf(gaps, !details.productName().isComplete(), LabelGap.PRODUCT_NAME);
    addIf(gaps, details.massKilograms().isEmpty(), LabelGap.NOMINAL_MASS);
    addIf(gaps, s.name().isEmpty(), LabelGap.SUPPLIER_NAME);
    addIf(gaps, s.postalAddress().isEmpty(), LabelGap.SUPPLIER_ADDRESS);
    addIf(gaps, s.telephone().isEmpty(), LabelGap.SUPPLIER_TELEPHONE);
    addIf(gaps, details.batch().isEmpty(), LabelGap.BATCH);
    addIf(
        gaps,
        review.notices().contains(LegalNotice.NOTIFICATION) && details.ufi().isEmpty(),
        LabelGap.UFI);
    temperatureGaps(gaps);
  }

  private void temperatureGaps(Set<LabelGap> gaps) {
    boolean stated = details.maximumTemperature().isPresent();
    boolean allowed = new HeatingAdvice(this).verdict() == HeatingAdvice.Verdict.NONE;
    addIf(gaps, mayBeMelted() && !stated && allowed, LabelGap.MAXIMUM_TEMPERATURE);
    addIf(gaps, stated && !allowed, LabelGap.TEMPERATURE_TOO_HIGH);
  }

  private static void addIf(Set<LabelGap> gaps, boolean missing, LabelGap gap) {
    if (missing) {
      gaps.add(gap);
    }
  }

  /**
   * Tells whether nothing is missing.
   *
   * @return whether there is no gap
   */
  public boolean isComplete() {
    return gaps().isEmpty();
  }

  /**
   * Returns what this aid does not assess, as every label must list.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return a phrase each
   */
  public static List<String> notAssessed(Locale locale) {
    List<String> phrases = new ArrayList<>();
    for (int i = 1; i <= 9; i++) {
      phrases.add(HazardTexts.text("not-assessed." + i, locale));
    }
    return List.copyOf(phrases);
  }

  /** What it does not assess, without what the use of the product has settled. */
  List<String> notAssessedHere(Locale locale) {
    String cosmetics = HazardTexts.text("not-assessed.9", locale);
    return notAssessed(locale).stream()
        .filter(phrase -> details.use().isEmpty() || !phrase.equals(cosmetics))
        .toList();
  }

  /**
   * Returns the label as plain text.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the text, ending without a line break
   */
  public String text(Locale locale) {
    return new LabelText(this, locale).text();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HazardLabel that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(review, details);
  }

  @Override
  public String toString() {
    return "label of " + details + ": " + elements;
  }
}
