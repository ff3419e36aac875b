// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static java.util.stream.Collectors.joining;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Fills the places of statements from the mixture and from what the maker states. */
final class StatementFilling {

  private static final Set<String> ROUTES = Set.of("inhalation", "oral", "dermal");
  private static final Set<String> AIRBORNE = Set.of("P260", "P261");

  private final HazardReview review;
  private final LabelDetails details;

  StatementFilling(HazardReview review, LabelDetails details) {
    this.review = review;
    this.details = details;
  }

  static boolean isRoute(String detail) {
    return ROUTES.contains(detail);
  }

  /** What is missing to finish a statement. */
  Optional<LabelGap> gap(String code) {
    if (code.equals("P501")) {
      return missing(LabelGap.DISPOSAL, details.disposal());
    }
    if (code.equals("P370+P378")) {
      return missing(LabelGap.EXTINGUISHER, details.extinguisher());
    }
    if (AIRBORNE.contains(code) && review.mixture().state().isEmpty()) {
      return Optional.of(LabelGap.STATE);
    }
    boolean named = detailsOf(code).stream().allMatch(OrganNames::isNamed);
    return named ? Optional.empty() : Optional.of(LabelGap.ORGAN_NAME);
  }

  private static Optional<LabelGap> missing(LabelGap gap, BothLanguages stated) {
    return stated.isComplete() ? Optional.empty() : Optional.of(gap);
  }

  String text(String code, Locale locale) {
    String text = Statements.finished(code, locale, review.rules().day(), values(code, locale));
    return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(locale) + text.substring(1);
  }

  private Map<String, String> values(String code, Locale locale) {
    Map<String, String> values = new HashMap<>();
    values.put("disposal", details.disposal(locale).orElse(""));
    values.put("extinguisher", details.extinguisher(locale).orElse(""));
    values.put("gear", HazardTexts.label("gear." + gear(), locale));
    review
        .mixture()
        .state()
        .ifPresent(
            s -> values.put("airborne", HazardTexts.label("airborne." + s.airborne(), locale)));
    values.put("names", names(code, locale));
    values.put("organs", organs(code, locale));
    values.put("route", routes(code, locale));
    return values;
  }

  private String gear() {
    boolean eyes =
        review.categories().stream()
            .anyMatch(
                c ->
                    c.hazardClass() == HazardClass.EYE
                        || (c.hazardClass() == HazardClass.SKIN && c.category().isOne()));
    return eyes ? "gloves-and-eyes" : "gloves";
  }

  private String names(String code, Locale locale) {
    return review.supplements().stream()
        .filter(s -> s.code().equals(code))
        .flatMap(s -> s.ingredients().stream())
        .map(i -> i.name(locale))
        .distinct()
        .collect(joining(", "));
  }

  private String organs(String code, Locale locale) {
    String organs = named(code, locale, detail -> !ROUTES.contains(detail)).collect(joining(", "));
    return organs.isEmpty() ? "" : " (" + organs + ")";
  }

  private String routes(String code, Locale locale) {
    return named(code, locale, ROUTES::contains).map(r -> " " + r).collect(joining());
  }

  private Stream<String> named(
      String code, Locale locale, java.util.function.Predicate<String> kind) {
    return detailsOf(code).stream().filter(kind).map(d -> OrganNames.name(d, locale));
  }

  private List<String> detailsOf(String code) {
    return review.categories().stream()
        .filter(c -> c.statement().equals(code))
        .flatMap(c -> c.details().stream())
        .toList();
  }
}
