// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.hazard.SheetWords.Meaning;
import org.meltwright.safety.hazard.SheetWords.Sort;

/** What a sheet says of one class, as it is being read: name, category, routes, codes, limit. */
final class SheetClaim {

  private static final Set<ClassName> ORGANS =
      EnumSet.of(ClassName.STOT_SINGLE, ClassName.STOT_REPEATED);

  /** What all aerosols say beside the statement of their category. */
  private static final String PRESSURE = "H229";

  private static final Map<String, HazardClass> ROUTES =
      Map.of(
          "oral", HazardClass.ACUTE_ORAL,
          "dermal", HazardClass.ACUTE_DERMAL,
          "inhalation", HazardClass.ACUTE_INHALATION,
          "vapour", HazardClass.ACUTE_INHALATION,
          "dust", HazardClass.ACUTE_INHALATION,
          "gas", HazardClass.ACUTE_INHALATION);

  private static final Set<HazardClass> ACUTE =
      EnumSet.of(HazardClass.ACUTE_ORAL, HazardClass.ACUTE_DERMAL, HazardClass.ACUTE_INHALATION);

  final SheetToken first;
  private final SheetToken nameEnd;
  final Meaning meaning;
  final Set<String> routes = new LinkedHashSet<>();
  final List<String> organs = new ArrayList<>();
  final List<SheetToken> codes = new ArrayList<>();

  /** Codes behind it that are not of its class. */
  final List<LoneCode> notOwn = new ArrayList<>();

  private final List<ClassName> names;
  private List<HazardCategory> possible;
  private @Nullable SheetToken category;
  @Nullable SheetRange limit;
  boolean minimum;

  /** The sheet says that nothing is known of the class. */
  boolean unknown;

  /** The sheet says that the class is not reached. */
  boolean none;

  /** The limit stands in a place of its own, below the category. */
  boolean limitApart;

  SheetClaim(SheetToken first, SheetToken nameEnd, Meaning meaning) {
    this.first = first;
    this.nameEnd = nameEnd;
    this.meaning = meaning;
    this.names = names(meaning);
    meaning.route().ifPresent(routes::add);
    this.possible = possible("");
  }

  boolean isPhysical() {
    return meaning.sort() == Sort.PHYSICAL;
  }

  /** The names of the law that it may stand for; none where only a test of the mixture tells. */
  List<ClassName> names() {
    return names;
  }

  private static List<ClassName> names(Meaning meaning) {
    return meaning.sort() == Sort.PHYSICAL
        ? List.of()
        : meaning.names().stream().map(name -> ClassName.find(name).orElseThrow()).toList();
  }

  boolean namesOrgans() {
    return names().stream().anyMatch(ORGANS::contains);
  }

  /** The number as printed; empty text where none is. */
  String number() {
    return category == null ? "" : category.text();
  }

  boolean lacksCategory() {
    return category == null && !unknown && !none;
  }

  /** The categories that name and number may mean. */
  List<HazardCategory> possible() {
    return possible;
  }

  private List<HazardCategory> possible(String number) {
    return names.stream().flatMap(n -> n.possible(number).stream()).toList();
  }

  boolean hasCategory() {
    return category != null;
  }

  void category(SheetToken token) {
    category = token;
    possible = possible(token.text());
    saysMore();
  }

  void code(SheetToken token) {
    codes.add(token);
    saysMore();
  }

  /** "n.a." before a category or a code was an empty cell. */
  private void saysMore() {
    unknown = false;
    none = false;
  }

  /** Whether a statement is one of the class, whatever the category. */
  boolean mayHave(String code) {
    return isPhysical() ? List.of(meaning.target().split(" ", -1)).contains(code) : isOfLaw(code);
  }

  private boolean isOfLaw(String code) {
    if (code.equals(PRESSURE) && names.contains(ClassName.AEROSOL)) {
      return true;
    }
    List<HazardCategory> all =
        category == null
            ? names().stream().flatMap(n -> n.categories().stream()).toList()
            : possible();
    return all.stream().anyMatch(c -> Statements.isForm(code, c.statement()));
  }

  /** The category that a statement of the class means. */
  Optional<HazardCategory> withStatement(String code) {
    return possible.stream()
        .filter(c -> Statements.isForm(code, c.statement()))
        .findFirst()
        .map(c -> c.withStatement(code));
  }

  boolean namesRoute() {
    return ROUTES.keySet().stream().anyMatch(routes::contains);
  }

  static boolean isAcute(HazardClass hazardClass) {
    return ACUTE.contains(hazardClass);
  }

  /** Whether the routes that stand with a class of acute toxicity allow for one of its three. */
  boolean isOfRoute(HazardClass hazardClass) {
    return !isAcute(hazardClass)
        || routes.isEmpty()
        || routes.stream().anyMatch(r -> ROUTES.get(r) == hazardClass);
  }

  boolean isOfRoute(String code) {
    return isPhysical() || withStatement(code).filter(c -> isOfRoute(c.hazardClass())).isPresent();
  }

  /** "Acute Tox. 4 (oral), Acute Tox. 4 (dermal); H302, H312": not all are of the last. */
  boolean leaves(String code, List<SheetClaim> others) {
    return !isOfRoute(code)
        && others.stream()
            .filter(c -> c.codes.isEmpty() && c.namesRoute())
            .anyMatch(c -> c.mayHave(code) && c.isOfRoute(code));
  }

  /** The token with which it ends. */
  SheetToken last() {
    return !codes.isEmpty() ? codes.get(codes.size() - 1) : category != null ? category : nameEnd;
  }
}
