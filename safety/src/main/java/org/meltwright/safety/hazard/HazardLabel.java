// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

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

  /** Substances that make one of these classes are named on the label (Article 18). */
  private static final Set<HazardClass> NAMED_FOR =
      EnumSet.of(
          HazardClass.ACUTE_ORAL,
          HazardClass.ACUTE_DERMAL,
          HazardClass.ACUTE_INHALATION,
          HazardClass.SKIN,
          HazardClass.EYE,
          HazardClass.RESPIRATORY_SENSITISATION,
          HazardClass.SKIN_SENSITISATION,
          HazardClass.MUTAGENICITY,
          HazardClass.CARCINOGENICITY,
          HazardClass.REPRODUCTION,
          HazardClass.STOT_SINGLE,
          HazardClass.STOT_REPEATED,
          HazardClass.ASPIRATION);

  private final HazardReview review;
  private final LabelDetails details;
  private final LabelElements elements;
  private final StatementFilling filling;
  private final List<String> precautions;

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
    this.elements = LabelElements.of(review.categories());
    this.filling = new StatementFilling(review, details);
    this.precautions =
        PrecautionChoice.choose(elements.offeredPrecautions(), details.isForThePublic());
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
    return elements.pictograms();
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
            && !review.dataSheetOnRequestFor().isEmpty();
    return Stream.concat(
            review.supplements().stream().map(SupplementalStatement::code),
            sheet ? Stream.of("EUH210") : Stream.empty())
        .toList();
  }

  /**
   * Returns the codes of the chosen precautionary statements that can be printed finished.
   *
   * @return normally no more than six codes
   */
  public List<String> precautionaryStatements() {
    return precautions.stream().filter(code -> filling.gap(code).isEmpty()).toList();
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

  /**
   * Returns the ingredients that the label names.
   *
   * @return those that make a class that harms health, and sensitisers from their elicitation limit
   */
  public List<HazardIngredient> namedIngredients() {
    return Stream.concat(
            review.findings().stream()
                .filter(HazardLabel::isNamedFor)
                .flatMap(f -> f.contributors().stream()),
            review.elicitors().stream())
        .distinct()
        .toList();
  }

  /** Irritation of skin and eye alone asks for no name. */
  private static boolean isNamedFor(HazardFinding f) {
    boolean irritation =
        (f.hazardClass() == HazardClass.SKIN || f.hazardClass() == HazardClass.EYE)
            && !f.isCategoryOne();
    return NAMED_FOR.contains(f.hazardClass()) && !irritation;
  }

  /**
   * Returns what the label lacks.
   *
   * @return the gaps; empty if the label is complete
   */
  public List<LabelGap> gaps() {
    Set<LabelGap> gaps = EnumSet.noneOf(LabelGap.class);
    fieldGaps(gaps);
    Stream.concat(hazardStatements().stream(), precautions.stream())
        .flatMap(code -> filling.gap(code).stream())
        .forEach(gaps::add);
    boolean german = namedIngredients().stream().allMatch(HazardIngredient::hasGermanName);
    addIf(gaps, !german, LabelGap.INGREDIENT_NAME);
    addIf(gaps, !review.open().isEmpty(), LabelGap.CLASSIFICATION);
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
    addIf(gaps, details.maximumTemperature().isEmpty(), LabelGap.MAXIMUM_TEMPERATURE);
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
    for (int i = 1; i <= 8; i++) {
      phrases.add(HazardTexts.text("not-assessed." + i, locale));
    }
    return List.copyOf(phrases);
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
}
