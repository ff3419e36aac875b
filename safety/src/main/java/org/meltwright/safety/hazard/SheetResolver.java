// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.meltwright.safety.hazard.CopiedSheet.Remark;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Makes categories, limits, factors and estimates of what an entry holds, or problems. */
final class SheetResolver {

  private final SheetEntry entry;
  private final SheetFindings findings;
  private final Map<HazardCategory, SheetClaim> categories = new LinkedHashMap<>();
  private final List<SpecificLimit> limits = new ArrayList<>();
  private final Set<HazardClass> open = EnumSet.noneOf(HazardClass.class);
  private final Set<HazardClass> byTest = EnumSet.noneOf(HazardClass.class);
  private final Set<HazardClass> none = EnumSet.noneOf(HazardClass.class);
  private final Set<String> statements = new LinkedHashSet<>();
  private boolean saysOther;
  private boolean flawed;

  SheetResolver(SheetEntry entry, SheetFindings findings) {
    this.entry = entry;
    this.findings = findings;
  }

  /** Whether the text names a class that is reached; others are then not reached. */
  boolean saysAnything() {
    return !categories.isEmpty() || !limits.isEmpty() || saysOther;
  }

  /** Leaves every class open, save those of which the text says that they are not reached. */
  void openAllBut(SubstanceSheet sheet) {
    EnumSet<HazardClass> all = EnumSet.allOf(HazardClass.class);
    if (!entry.isDoubted()) {
      all.removeAll(none);
    }
    sheet.notClassified().openFor(all.toArray(HazardClass[]::new));
  }

  boolean isFlawed() {
    return flawed;
  }

  private void problem(SheetProblem code, SheetToken first, SheetToken last) {
    flawed = true;
    findings.problem(code, first, last);
  }

  private void attempt(SheetToken first, Runnable step) {
    try {
      step.run();
    } catch (ProblemException e) {
      flawed = true;
      e.problems().forEach(p -> findings.problem(p, first));
    }
  }

  /** Adds what was read to a sheet. */
  void resolve(SubstanceSheet sheet) {
    entry.claims.stream().filter(c -> !c.codes.isEmpty()).forEach(this::resolve);
    entry.claims.stream().filter(c -> c.codes.isEmpty()).forEach(this::resolve);
    entry.alone.values().stream()
        .flatMap(List::stream)
        .filter(code -> !code.taken)
        .forEach(this::requireNamed);
    requireOneCategoryEach();
    categories.keySet().forEach(sheet::classified);
    limits.forEach(sheet::limit);
    sheet.openFor(open.toArray(HazardClass[]::new));
    byTest.forEach(sheet::inClassByTest);
    entry.supplements.forEach(s -> attempt(s, () -> sheet.supplements(s.text())));
    sheet.notes(String.join(" ", entry.notes));
    new SheetFactors(entry, findings).set(sheet).ifPresent(p -> flawed = true);
    entry.estimates.all().forEach(e -> attempt(e.estimate().first(), () -> estimate(e, sheet)));
  }

  // Classes

  private void resolve(SheetClaim claim) {
    if (claim.unknown || claim.none) {
      ofNothing(claim);
    } else if (claim.isPhysical()) {
      ofTest(claim);
    } else if (claim.possible().isEmpty()) {
      mismatch(claim, takeOfClaim(claim).orElse(claim.last()));
    } else {
      ofLaw(claim);
    }
  }

  private void ofNothing(SheetClaim claim) {
    claim.names().stream()
        .flatMap(n -> n.categories().stream())
        .map(HazardCategory::hazardClass)
        .filter(c -> claim.isOfRoute(c))
        .forEach((claim.unknown ? open : none)::add);
  }

  private void ofTest(SheetClaim claim) {
    saysOther = true;
    byTest.add(claim.meaning.physicalClass());
    claim.codes.forEach(code -> statements.add(code.text()));
    takeAlone(claim).forEach(code -> statements.add(code.text()));
    findings.remark(Remark.Kind.NOT_WORKED_OUT, claim.first, claim.last());
  }

  private void ofLaw(SheetClaim claim) {
    List<SheetToken> codes = claim.codes.isEmpty() ? takeAlone(claim) : claim.codes;
    for (SheetToken code : codes) {
      statements.add(code.text());
      claim.withStatement(code.text()).ifPresent(c -> take(claim, c));
    }
    if (codes.isEmpty()) {
      implied(claim);
    } else {
      routesWithoutCode(claim, codes);
    }
  }

  /** "Acute Tox. 3 (oral, dermal) H301" names a route whose statement it leaves out. */
  private void routesWithoutCode(SheetClaim claim, List<SheetToken> codes) {
    List<HazardClass> said =
        codes.stream()
            .flatMap(code -> claim.withStatement(code.text()).stream())
            .map(HazardCategory::hazardClass)
            .toList();
    if (!said.stream().allMatch(claim::isOfRoute)) {
      return;
    }
    List<HazardCategory> left =
        claim.possible().stream()
            .filter(c -> SheetClaim.isAcute(c.hazardClass()) && claim.namesRoute())
            .filter(c -> claim.isOfRoute(c.hazardClass()) && !said.contains(c.hazardClass()))
            .toList();
    if (!left.isEmpty()) {
      left.forEach(c -> take(claim, c));
      findings.remark(Remark.Kind.STATEMENT_IMPLIED, claim.first, claim.last());
    }
  }

  /** The codes that stand elsewhere, as in a table whose columns were copied one by one. */
  private List<SheetToken> takeAlone(SheetClaim claim) {
    List<SheetToken> taken = new ArrayList<>();
    for (Map.Entry<String, List<LoneCode>> codes : entry.alone.entrySet()) {
      if (claim.mayHave(codes.getKey()) && claim.isOfRoute(codes.getKey())) {
        codes.getValue().stream().filter(c -> !c.taken).map(c -> take(c)).forEach(taken::add);
      }
    }
    return taken;
  }

  private static SheetToken take(LoneCode code) {
    code.taken = true;
    return code.code;
  }

  /** The last of the codes behind a class that has no such category. */
  private Optional<SheetToken> takeOfClaim(SheetClaim claim) {
    claim.notOwn.forEach(SheetResolver::take);
    return claim.notOwn.stream().map(c -> c.code).reduce((a, b) -> b);
  }

  /** Without a code the class and the category must leave only one, route by route. */
  private void implied(SheetClaim claim) {
    List<HazardCategory> possible =
        claim.possible().stream().filter(c -> claim.isOfRoute(c.hazardClass())).toList();
    long classes = possible.stream().map(HazardCategory::hazardClass).distinct().count();
    boolean routesSayIt = claim.namesRoute();
    if (possible.isEmpty() || (classes > 1 && !(routesSayIt && areAcute(possible)))) {
      problem(SheetProblem.STATEMENT_MISSING, claim.first, claim.last());
      return;
    }
    possible.forEach(c -> take(claim, c));
    findings.remark(Remark.Kind.STATEMENT_IMPLIED, claim.first, claim.last());
  }

  private static boolean areAcute(List<HazardCategory> all) {
    return all.stream().allMatch(c -> SheetClaim.isAcute(c.hazardClass()));
  }

  private void take(SheetClaim claim, HazardCategory bare) {
    statements.add(bare.statement());
    if (isOfUnAlone(bare)) {
      findings.remark(Remark.Kind.UN_CATEGORY, claim.first, claim.last());
    }
    if (!claim.isOfRoute(bare.hazardClass())) {
      problem(SheetProblem.ROUTE, claim.first, claim.last());
    }
    HazardCategory category = asClaimed(claim, bare);
    SheetRange limit = claim.limit;
    if (limit != null) {
      attempt(claim.first, () -> limits.add(limit(category, limit)));
    }
    boolean kept = limits.stream().anyMatch(l -> l.statement().equals(category.statement()));
    if (claim.limit == null || claim.limitApart || !kept) {
      categories.putIfAbsent(category, claim);
    }
  }

  private static HazardCategory asClaimed(SheetClaim claim, HazardCategory bare) {
    return new HazardCategory(
        bare.hazardClass(),
        bare.category(),
        bare.statement(),
        details(claim, bare.hazardClass()),
        claim.minimum,
        bare.undivided());
  }

  private static boolean isOfUnAlone(HazardCategory c) {
    return LabelElements.ofUnAlone().stream()
        .anyMatch(u -> u.hazardClass() == c.hazardClass() && u.category() == c.category());
  }

  private static List<String> details(SheetClaim claim, HazardClass hazardClass) {
    List<String> details = new ArrayList<>(claim.organs);
    claim.routes.stream()
        .filter(r -> !SheetClaim.isAcute(hazardClass) || isForm(hazardClass, r))
        .forEach(details::add);
    return details;
  }

  private static boolean isForm(HazardClass hazardClass, String route) {
    return hazardClass == HazardClass.ACUTE_INHALATION && UptakeForm.inhaled(route).isPresent();
  }

  private static SpecificLimit limit(HazardCategory c, SheetRange range) {
    boolean toTheEnd = range.high().isPresent() && range.high().getAsDouble() == 100;
    OptionalDouble below = toTheEnd ? OptionalDouble.empty() : range.high();
    return new SpecificLimit(
        c.hazardClass(), c.category(), c.statement(), range.lowPercent(), below);
  }

  private void mismatch(SheetClaim claim, SheetToken last) {
    flawed = true;
    String pairs = String.join("; ", claim.names().stream().map(ClassName::allowed).toList());
    Problem problem =
        Problem.of(HazardProblem.CATEGORY, findings.words(claim.first, last)).with("pairs", pairs);
    findings.problem(problem, claim.first);
  }

  /** A code that no class has claimed repeats one, or its class was not named. */
  private void requireNamed(LoneCode code) {
    boolean repeats =
        statements.stream().anyMatch(s -> s.equals(code.code.text()) || isBase(code, s));
    if (repeats) {
      return;
    }
    SheetClaim claim = code.claim;
    boolean ofClaim = claim != null && claim.codes.isEmpty() && !claim.isPhysical();
    if (claim != null && ofClaim) {
      mismatch(claim, code.code);
    } else {
      problem(SheetProblem.STATEMENT_ALONE, code.code, code.code);
    }
  }

  /** H360 on the label beside H360D of the class. */
  private static boolean isBase(LoneCode code, String statement) {
    return Statements.isForm(statement, code.code.text());
  }

  private void requireOneCategoryEach() {
    Map<HazardClass, HazardCategory> first = new LinkedHashMap<>();
    categories.forEach(
        (c, claim) -> {
          HazardCategory other = first.putIfAbsent(c.hazardClass(), c);
          if (other != null && other.category() != c.category()) {
            problem(SheetProblem.TWO_CATEGORIES, claim.first, claim.last());
          }
        });
  }

  // Estimates

  private void estimate(SheetEstimates.Placed e, SubstanceSheet sheet) {
    Optional<UptakeForm> form = form(e);
    if (form.isEmpty()) {
      problem(SheetProblem.ESTIMATE_WITHOUT_ROUTE, e.estimate().first(), e.estimate().last());
      return;
    }
    Optional<HazardCategory> category = category(form.get().hazardClass());
    boolean fits = category.map(c -> fits(form.get(), c, e.estimate().value())).orElse(true);
    boolean thousands =
        !fits
            && e.estimate().mayBeThousands()
            && fits(form.get(), category.get(), 1000 * e.estimate().value());
    sheet.estimate(form.get(), e.estimate().value() * (thousands ? 1000 : 1));
    if (thousands) {
      findings.remark(Remark.Kind.THOUSANDS, e.estimate().first(), e.estimate().last());
    } else if (!fits) {
      problem(SheetProblem.ESTIMATE_AGAINST_CATEGORY, e.estimate().first(), e.estimate().last());
    }
  }

  private Optional<HazardCategory> category(HazardClass hazardClass) {
    return categories.keySet().stream().filter(c -> c.hazardClass() == hazardClass).findFirst();
  }

  private Optional<UptakeForm> form(SheetEstimates.Placed e) {
    return switch (e.estimate().unit()) {
      case PER_MILLION -> Optional.of(UptakeForm.GAS);
      case PER_KILOGRAM -> dose(e);
      case PER_LITRE -> air(e);
    };
  }

  private Optional<UptakeForm> dose(SheetEstimates.Placed e) {
    List<UptakeForm> said =
        forms(e).stream().filter(f -> f == UptakeForm.ORAL || f == UptakeForm.DERMAL).toList();
    if (said.isEmpty()) {
      said =
          List.of(UptakeForm.ORAL, UptakeForm.DERMAL).stream()
              .filter(f -> category(f.hazardClass()).isPresent())
              .toList();
    }
    return said.size() == 1 ? Optional.of(said.get(0)) : Optional.empty();
  }

  private Optional<UptakeForm> air(SheetEstimates.Placed e) {
    List<UptakeForm> said =
        forms(e).stream().filter(f -> f == UptakeForm.VAPOUR || f == UptakeForm.DUST).toList();
    if (said.isEmpty()) {
      said =
          List.of(UptakeForm.VAPOUR, UptakeForm.DUST).stream()
              .filter(
                  f ->
                      category(f.hazardClass())
                          .filter(c -> fits(f, c, e.estimate().value()))
                          .isPresent())
              .toList();
    }
    return said.size() == 1 ? Optional.of(said.get(0)) : Optional.empty();
  }

  /** What stands beside the number, else with the class behind which it stands. */
  private List<UptakeForm> forms(SheetEstimates.Placed e) {
    List<UptakeForm> own = forms(e.routes());
    if (!own.isEmpty() || e.claim() == null) {
      return own;
    }
    List<UptakeForm> ofClaim = new ArrayList<>(forms(e.claim().routes));
    categories.forEach(
        (c, claim) -> {
          if (claim == e.claim()) {
            UptakeForm.of(c.hazardClass()).filter(f -> !f.isInhaled()).forEach(ofClaim::add);
          }
        });
    return ofClaim.stream().distinct().toList();
  }

  private static List<UptakeForm> forms(Set<String> routes) {
    return java.util.Arrays.stream(UptakeForm.values())
        .filter(f -> routes.contains(f.id()))
        .toList();
  }

  /** The bounds of the categories of acute toxicity, read when a sheet first states an estimate. */
  private static final class Bounds {
    static final RuleSet RULES = RuleSet.clpOn(RuleSet.FIRST_CLP_DAY);
  }

  private static boolean fits(UptakeForm form, HazardCategory c, double value) {
    List<AcuteLimit> all = Bounds.RULES.acuteLimits(form);
    boolean converted =
        all.stream().anyMatch(l -> l.category() == c.category() && l.pointEstimate() == value);
    if (converted) {
      return true;
    }
    return all.stream()
        .filter(l -> value <= l.upTo())
        .findFirst()
        .map(l -> l.category() == c.category())
        .orElse(!all.stream().anyMatch(l -> l.category() == c.category()));
  }
}
