// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.source.Source;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;

/**
 * The answer for one hazard class: status, categories, paragraph, arithmetic, and what is open.
 *
 * <p>Ten per cent of zinc white: ten times that reach the 25 % of category 2, the long-term hazard
 * to water.
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition cake =
 *     Composition.ofParts(
 *         List.of(shelf.require("beeswax"), shelf.require("zinc-white")), 90, 10);
 * HazardReview review = HazardReview.ofCake(cake, RuleSet.clpOn(LocalDate.of(2026, 6, 1)));
 * HazardFinding water = review.finding(HazardClass.AQUATIC_CHRONIC);
 * water.isClassified(); // true
 * water.categories(); // [aquatic-chronic 2 H411]
 * water.contributors(); // [10.0 % Zinc white]
 * water.explanation().title(); // Hazard to water, long-term: category 2 (H411)
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param hazardClass the class
 * @param status the answer
 * @param categories the categories reached, empty unless classified
 * @param rule the paragraph of the law
 * @param workings the arithmetic; empty if there was nothing to add up
 * @param open ingredients of which too little is known for this class, or that are in it where only
 *     a test can tell whether the mixture is
 * @param remarks what else decided, as stable keys of the message bundle, for example
 *     "viscosity-missing"
 * @param assumptions what was taken for granted for it
 */
public record HazardFinding(
    HazardClass hazardClass,
    HazardStatus status,
    List<HazardCategory> categories,
    Source rule,
    List<Working> workings,
    List<HazardIngredient> open,
    List<HazardRemark> remarks,
    List<Assumption> assumptions) {

  private static final Messages WORDS = Messages.beside(HazardFinding.class);

  public HazardFinding {
    categories = List.copyOf(categories);
    workings = List.copyOf(workings);
    open = List.copyOf(open);
    remarks = List.copyOf(remarks);
    assumptions = List.copyOf(assumptions);
  }

  HazardFinding(
      HazardClass hazardClass,
      HazardStatus status,
      List<HazardCategory> categories,
      Source rule,
      List<Working> workings,
      List<HazardIngredient> open,
      List<HazardRemark> remarks) {
    this(hazardClass, status, categories, rule, workings, open, remarks, List.of());
  }

  /** The same answer with what was taken for granted for it. */
  HazardFinding assuming(List<Assumption> all) {
    return new HazardFinding(
        hazardClass,
        status,
        categories,
        rule,
        workings,
        open,
        remarks,
        all.stream().filter(this::restsOn).toList());
  }

  private boolean restsOn(Assumption a) {
    return switch (a.kind()) {
      case REST_NOT_CLASSIFIED, PRESUMED_NONE -> true;
      case FORM_NOT_STATED -> hazardClass == HazardClass.ACUTE_INHALATION;
      case MISSING_FACTOR ->
          hazardClass == HazardClass.AQUATIC_ACUTE || hazardClass == HazardClass.AQUATIC_CHRONIC;
      case WORKPLACE_LIMIT_REMEMBERED -> false;
      default -> a.ingredients().stream().anyMatch(contributors()::contains);
    };
  }

  /**
   * Tells whether the mixture falls in the class.
   *
   * @return whether it is classified
   */
  public boolean isClassified() {
    return status == HazardStatus.CLASSIFIED;
  }

  /**
   * Returns the most severe category reached.
   *
   * @return the category, for example "1B"; empty text if not classified
   */
  public Optional<Category> category() {
    return categories.stream().map(HazardCategory::category).findFirst();
  }

  boolean isCategoryOne() {
    return category().filter(Category::isOne).isPresent();
  }

  /**
   * Returns the ingredients that made the class.
   *
   * @return the contributing ingredients; empty unless classified
   */
  public List<HazardIngredient> contributors() {
    return isClassified()
        ? workings.stream()
            .flatMap(w -> w.contributions().stream())
            .map(Contribution::ingredient)
            .distinct()
            .toList()
        : List.of();
  }

  /**
   * Explains the answer.
   *
   * @return inputs, arithmetic, warnings and the paragraph, in English
   */
  public Explanation explanation() {
    Explanation.Builder text =
        Explanation.builder(
            HazardFinding.class,
            "working.finding",
            Map.of(
                "class", Bilingual.of(hazardClass::name), "outcome", Bilingual.of(this::outcome)));
    HazardArithmetic.describe(workings, text);
    assumptions.forEach(a -> text.conclusion(Bilingual.of(a::text)));
    remarks.forEach(r -> text.caution(Bilingual.of(r::text)));
    if (!open.isEmpty()) {
      boolean untested = remarks.contains(HazardRemark.TEST_MISSING);
      text.caution(
          untested ? "working.finding.in-class" : "working.finding.nothing-known",
          Map.of("names", Bilingual.of(reader -> names(open, reader))));
    }
    contributors().forEach(i -> text.source(i.hazards().source()));
    return text.source(rule).build();
  }

  private String outcome(Locale reader) {
    return status == HazardStatus.CLASSIFIED
        ? categories.stream()
            .map(
                c ->
                    WORDS.text(
                        "working.finding.category",
                        reader,
                        Map.of("id", c.category().id(), "statement", c.statement())))
            .collect(Collectors.joining(", "))
        : WORDS.text("working.finding." + status, reader);
  }

  private static String names(List<HazardIngredient> ingredients, Locale reader) {
    return ingredients.stream().map(i -> i.name(reader)).collect(Collectors.joining(", "));
  }
}
