// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The abbreviated names of the law, each with the categories and statements that it may stand with.
 */
enum ClassName {
  ACUTE(
      "Acute Tox.",
      "",
      HazardClass.ACUTE_ORAL,
      HazardClass.ACUTE_DERMAL,
      HazardClass.ACUTE_INHALATION),
  SKIN_CORROSION("Skin Corr.", "H314", HazardClass.SKIN),
  SKIN_IRRITATION("Skin Irrit.", "H315", HazardClass.SKIN),
  EYE_DAMAGE("Eye Dam.", "H318", HazardClass.EYE),
  EYE_IRRITATION("Eye Irrit.", "H319", HazardClass.EYE),
  RESPIRATORY_SENSITISATION("Resp. Sens.", "", HazardClass.RESPIRATORY_SENSITISATION),
  SKIN_SENSITISATION("Skin Sens.", "", HazardClass.SKIN_SENSITISATION),
  MUTAGENICITY("Muta.", "", HazardClass.MUTAGENICITY),
  CARCINOGENICITY("Carc.", "", HazardClass.CARCINOGENICITY),
  REPRODUCTION("Repr.", "", HazardClass.REPRODUCTION),
  LACTATION("Lact.", "", HazardClass.LACTATION),
  STOT_SINGLE(
      "STOT SE",
      "",
      HazardClass.STOT_SINGLE,
      HazardClass.STOT_SINGLE_IRRITATION,
      HazardClass.STOT_SINGLE_NARCOSIS),
  STOT_REPEATED("STOT RE", "", HazardClass.STOT_REPEATED),
  ASPIRATION("Asp. Tox.", "", HazardClass.ASPIRATION),
  AQUATIC_ACUTE("Aquatic Acute", "", HazardClass.AQUATIC_ACUTE),
  AQUATIC_CHRONIC("Aquatic Chronic", "", HazardClass.AQUATIC_CHRONIC),
  OZONE("Ozone", "", HazardClass.OZONE),
  ENDOCRINE_HUMAN("ED HH", "", HazardClass.ENDOCRINE_HUMAN),
  ENDOCRINE_ENVIRONMENT("ED ENV", "", HazardClass.ENDOCRINE_ENVIRONMENT),
  PBT("PBT", "", HazardClass.PBT),
  VPVB("vPvB", "", HazardClass.VPVB),
  PMT("PMT", "", HazardClass.PMT),
  VPVM("vPvM", "", HazardClass.VPVM),
  FLAMMABLE_LIQUID("Flam. Liq.", "", HazardClass.FLAMMABLE_LIQUID),
  FLAMMABLE_SOLID("Flam. Sol.", "", HazardClass.FLAMMABLE_SOLID),
  OXIDISING_SOLID("Ox. Sol.", "", HazardClass.OXIDISING),
  OXIDISING_LIQUID("Ox. Liq.", "", HazardClass.OXIDISING),
  WATER_REACTIVE("Water-react.", "", HazardClass.WATER_REACTIVE),
  METAL_CORROSION("Met. Corr.", "", HazardClass.METAL_CORROSION),
  AEROSOL("Aerosol", "", HazardClass.AEROSOL);

  private final String printed;
  private final String statement;

  @SuppressWarnings("ImmutableEnumChecker") // a Set.of does not change
  private final Set<HazardClass> classes;

  ClassName(String printed, String statement, HazardClass... classes) {
    this.printed = printed;
    this.statement = statement;
    this.classes = Set.of(classes);
  }

  /** Finds a name, whatever its case. */
  static Optional<ClassName> find(String text) {
    return Stream.of(values()).filter(n -> n.printed.equalsIgnoreCase(text.strip())).findFirst();
  }

  /** The categories of each name, gathered once. */
  private static final class Gathered {
    static final Map<ClassName, List<HazardCategory>> CATEGORIES =
        Stream.of(values()).collect(Collectors.toUnmodifiableMap(n -> n, ClassName::gather));
  }

  /** All categories of the name, each with the statement without the letters of an effect. */
  List<HazardCategory> categories() {
    return Objects.requireNonNull(Gathered.CATEGORIES.get(this));
  }

  private List<HazardCategory> gather() {
    Stream<HazardCategory> european =
        LabelElements.all().stream()
            .filter(c -> classes.contains(c.hazardClass()))
            .filter(c -> statement.isEmpty() || statement.equals(c.statement()));
    Stream<HazardCategory> ofUnAlone =
        LabelElements.ofUnAlone().stream()
            .filter(c -> classes.contains(c.hazardClass()))
            .filter(c -> this != SKIN_CORROSION && this != EYE_DAMAGE);
    return Stream.concat(european, ofUnAlone).toList();
  }

  /** The class of a category with a statement; empty if they do not belong together. */
  Optional<HazardClass> hazardClass(Category category, String code) {
    return categories().stream()
        .filter(c -> c.category() == category)
        .filter(c -> Statements.isForm(code, c.statement()))
        .map(HazardCategory::hazardClass)
        .findFirst();
  }

  boolean isCalled(String name) {
    return printed.equals(name);
  }

  /**
   * The categories that a printed number may mean. Sheets from outside Europe write category 1
   * where the European law has 1A and 1B: it is read as 1A and marked.
   */
  List<HazardCategory> possible(String number) {
    Optional<Category> category = Category.find(number);
    if (category.isEmpty()) {
      return List.of();
    }
    boolean undivided =
        category.get() == Category.ONE && !hasCategory(Category.ONE) && hasCategory(Category.ONE_A);
    Category meant = undivided ? Category.ONE_A : category.get();
    return categories().stream()
        .filter(c -> c.category() == meant)
        .map(c -> undivided ? c.asUndivided() : c)
        .toList();
  }

  boolean hasCategory(Category category) {
    return categories().stream().anyMatch(c -> c.category() == category);
  }

  /** The statement and its forms with the letters of an effect, such as H360Df. */
  private static Set<String> forms(String statement) {
    return Statements.codes().stream()
        .filter(code -> Statements.isForm(code, statement))
        .collect(Collectors.toCollection(() -> new TreeSet<>(Set.of(statement))));
  }

  /** What may follow the name, for example "Carc. 1A (H350, H350i), 1B (H350, H350i), 2 (H351)". */
  String allowed() {
    return printed + " " + pairs(categories());
  }

  /** What a class knows, by all of its names. */
  static String allowed(HazardClass hazardClass) {
    return Arrays.stream(values())
        .filter(n -> n.classes.contains(hazardClass))
        .map(
            n ->
                n.printed
                    + " "
                    + pairs(
                        n.categories().stream()
                            .filter(c -> c.hazardClass() == hazardClass)
                            .toList()))
        .collect(Collectors.joining("; "));
  }

  private static String pairs(List<HazardCategory> categories) {
    Map<String, Set<String>> codes = new LinkedHashMap<>();
    for (HazardCategory c : categories) {
      codes.computeIfAbsent(c.category().id(), k -> new TreeSet<>()).addAll(forms(c.statement()));
    }
    return codes.entrySet().stream()
        .map(e -> (e.getKey() + " (" + String.join(", ", e.getValue()) + ")").trim())
        .collect(Collectors.joining(", "));
  }
}
