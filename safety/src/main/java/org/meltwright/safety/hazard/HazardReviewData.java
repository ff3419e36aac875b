// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A classified mixture as plain data, in the reader's language: any JSON library writes it.
 *
 * <p>No category is no word of safety: show what is open and what is never assessed beside it.
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 11, 25));
 * HazardMixture mix =
 *     HazardMixture.builder(rules)
 *         .cas("8012-89-3", 70)
 *         .cas("1314-13-2", 30)
 *         .state(PhysicalState.SOLID)
 *         .build();
 *
 * HazardReviewData data = HazardReviewData.of(HazardReview.of(mix, rules), Locale.ENGLISH);
 * data.categories().get(0).statement(); // H400
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param rules the id of the rules
 * @param rulesTitle their title, in English
 * @param rulesDay the day that they are read for, for example "2026-11-25" (ISO 8601)
 * @param categories the categories reached, in the order of the classes, those from tests of the
 *     mixture last
 * @param open the classes that something is missing for
 * @param dusts the pigments whose dust asks for care, strictest first
 * @param dataSheetAnnouncedFor the names of ingredients for which the label for professionals says
 *     that there is a data sheet (EUH210)
 * @param dataSheetOnRequestFor the names of ingredients for which a data sheet is due to a
 *     professional who asks
 * @param unknown what a data sheet says of ingredients of which nothing is known
 * @param supplementsToCheck statements of ingredients that may hold for the mixture too
 * @param notices pointers to other law
 * @param assumptions what was taken for granted
 * @param notAssessed what this aid never assesses, a phrase each
 * @param screening what a classification of this kind is worth, one or two sentences
 * @param mayHaveChanged that the rules may have changed; absent within the days looked at
 */
public record HazardReviewData(
    String rules,
    String rulesTitle,
    String rulesDay,
    List<Category> categories,
    List<OpenClass> open,
    List<Dust> dusts,
    List<String> dataSheetAnnouncedFor,
    List<String> dataSheetOnRequestFor,
    List<String> unknown,
    List<Coded> supplementsToCheck,
    List<Coded> notices,
    List<Coded> assumptions,
    List<String> notAssessed,
    String screening,
    @Nullable String mayHaveChanged) {

  /**
   * A stable code with its text in the reader's language.
   *
   * @param code the code or id, for example "H410"
   * @param text the text
   */
  public record Coded(String code, String text) {}

  /**
   * A category that the mixture falls in.
   *
   * @param hazardClass the id of the class, for example {@code skin-sensitisation}
   * @param name the name of the class
   * @param category the category, for example "1B"
   * @param statement the code of its hazard statement; absent if the rules give none
   * @param minimum whether the law marks it as a minimum: better data may be stricter
   * @param source the paragraph of the law; absent if a test of the mixture decided
   */
  public record Category(
      String hazardClass,
      String name,
      @Nullable String category,
      @Nullable String statement,
      boolean minimum,
      @Nullable String source) {

    private static Category of(HazardCategory c, @Nullable String source, Locale locale) {
      return new Category(
          c.hazardClass().id(),
          c.hazardClass().name(locale),
          c.category() == org.meltwright.safety.hazard.Category.ONLY ? null : c.category().id(),
          c.statement().isEmpty() ? null : c.statement(),
          c.minimum(),
          source);
    }
  }

  /**
   * A class that something is missing for.
   *
   * @param hazardClass the id of the class
   * @param name the name of the class
   * @param insufficientData whether the class has no answer; else its answer may become worse
   * @param ingredients the names of the ingredients of which too little is known; may be empty
   * @param remarks what else is missing; may be empty
   */
  public record OpenClass(
      String hazardClass,
      String name,
      boolean insufficientData,
      List<String> ingredients,
      List<String> remarks) {

    public OpenClass {
      ingredients = List.copyOf(ingredients);
      remarks = List.copyOf(remarks);
    }

    private static OpenClass of(HazardFinding finding, Locale locale) {
      return new OpenClass(
          finding.hazardClass().id(),
          finding.hazardClass().name(locale),
          finding.status() == HazardStatus.INSUFFICIENT_DATA,
          finding.open().stream().map(i -> i.name(locale)).toList(),
          finding.remarks().stream().map(r -> r.text(locale)).toList());
    }
  }

  /**
   * A pigment whose dust asks for care.
   *
   * @param pigment the id of the pigment
   * @param name its name
   * @param dustClass the id of how carefully its powder is handled, for example {@code toxic-metal}
   * @param advice how to handle its dust, one or two sentences
   */
  public record Dust(String pigment, String name, String dustClass, String advice) {

    private static Dust of(PigmentHazard pigment, Locale locale) {
      return new Dust(
          pigment.id(), pigment.name(locale), pigment.dust().id(), pigment.dustAdvice(locale));
    }
  }

  public HazardReviewData {
    categories = List.copyOf(categories);
    open = List.copyOf(open);
    dusts = List.copyOf(dusts);
    dataSheetAnnouncedFor = List.copyOf(dataSheetAnnouncedFor);
    unknown = List.copyOf(unknown);
    dataSheetOnRequestFor = List.copyOf(dataSheetOnRequestFor);
    supplementsToCheck = List.copyOf(supplementsToCheck);
    notices = List.copyOf(notices);
    assumptions = List.copyOf(assumptions);
    notAssessed = List.copyOf(notAssessed);
  }

  /**
   * Returns a review as data.
   *
   * @param review the review
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return its categories, and what is open, assumed and never assessed
   */
  public static HazardReviewData of(HazardReview review, Locale locale) {
    return new HazardReviewData(
        review.rules().id(),
        review.rules().title(),
        review.rules().day().toString(),
        categories(review, locale),
        review.open().stream().map(f -> OpenClass.of(f, locale)).toList(),
        review.dusts().stream().map(p -> Dust.of(p, locale)).toList(),
        review.dataSheetAnnouncedFor().stream().map(i -> i.name(locale)).toList(),
        review.dataSheetOnRequestFor().stream().map(i -> i.name(locale)).toList(),
        review.unknownStatements(locale),
        review.supplementsToCheck().stream().map(s -> toCheck(s, locale)).toList(),
        review.notices().stream().map(n -> new Coded(n.id(), n.text(locale))).toList(),
        review.assumptions().stream().map(a -> new Coded(a.kind().id(), a.text(locale))).toList(),
        Stream.concat(
                review.classesNotAssessed().stream().map(c -> c.name(locale)),
                HazardLabel.notAssessed(locale).stream())
            .toList(),
        HazardTexts.label("screening", locale),
        HazardTexts.age(review.rules(), locale).orElse(null));
  }

  private static Coded toCheck(SupplementalStatement s, Locale locale) {
    return new Coded(
        s.code(),
        Statements.published(s.code(), locale)
            + " ("
            + HazardTexts.names(s.ingredients(), locale)
            + ")");
  }

  private static List<Category> categories(HazardReview review, Locale locale) {
    return Stream.concat(
            review.findings().stream()
                .flatMap(
                    f ->
                        f.categories().stream()
                            .map(c -> Category.of(c, f.rule().citation(), locale))),
            review.mixture().tested().stream().map(c -> Category.of(c, null, locale)))
        .toList();
  }
}
