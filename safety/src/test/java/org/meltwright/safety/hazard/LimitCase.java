// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * One ingredient at, just below or just above a limit, and what the tables of the law lead to:
 * worked out from the rows of the rule file alone, not by the library's ladders.
 */
record LimitCase(
    String kind,
    String limit,
    SubstanceHazards substance,
    double percent,
    PhysicalState state,
    HazardClass hazardClass,
    Optional<Category> expected) {

  static final RuleSet RULES = RuleSet.clpOn(LocalDate.of(2026, 5, 1));
  static final double STEP = 1e-6;

  static List<LimitCase> all() {
    return Stream.of(
            general(RuleRow.Kind.LIMIT, PhysicalState.LIQUID),
            general(RuleRow.Kind.LIMIT_GAS, PhysicalState.GAS),
            general(RuleRow.Kind.NON_ADDITIVE, PhysicalState.LIQUID),
            ownLimits(),
            factors(),
            estimates())
        .flatMap(List::stream)
        .toList();
  }

  static Stream<RuleRow> rows(RuleRow.Kind kind) {
    return RULES.rows().stream().filter(r -> r.kind() == kind);
  }

  private static List<Double> around(double limit) {
    return Stream.of(limit * (1 - STEP), limit, limit * (1 + STEP)).filter(p -> p <= 100).toList();
  }

  private static List<LimitCase> general(RuleRow.Kind kind, PhysicalState state) {
    List<LimitCase> cases = new ArrayList<>();
    for (RuleRow row : rows(kind).toList()) {
      HazardClass c = HazardClass.ofId(row.cell(0));
      Category of = row.limitKey().of();
      SubstanceSheet sheet = sheet(c, of);
      SubstanceHazards s =
          kind == RuleRow.Kind.NON_ADDITIVE ? sheet.notAdditive().build() : sheet.build();
      for (double percent : around(Double.parseDouble(row.lastCell()))) {
        Optional<Category> expected = reached(kind, c, of, percent, level -> 1);
        cases.add(new LimitCase(kind.id(), name(row), s, percent, state, c, expected));
      }
    }
    return cases;
  }

  private static String name(RuleRow row) {
    return String.join(" | ", row.cells());
  }

  /** The most severe category whose limit, over its factor, a share reaches. */
  private static Optional<Category> reached(
      RuleRow.Kind kind,
      HazardClass c,
      Category of,
      double percent,
      ToDoubleFunction<Category> factor) {
    List<Category> levels = RULES.rule(c).orElseThrow().levels();
    return rows(kind)
        .filter(r -> r.cell(0).equals(c.id()) && r.limitKey().of() == of)
        .filter(
            r ->
                Double.parseDouble(r.lastCell()) / factor.applyAsDouble(r.limitKey().reached())
                    <= percent * (1 + 1e-9))
        .map(r -> r.limitKey().reached())
        .min(Comparator.comparingInt(levels::indexOf));
  }

  /** A limit of its own, a tenth of the general one and, where it fits, twice that. */
  private static List<LimitCase> ownLimits() {
    List<LimitCase> cases = new ArrayList<>();
    for (RuleRow row : rows(RuleRow.Kind.LIMIT).toList()) {
      HazardClass c = HazardClass.ofId(row.cell(0));
      Category of = row.limitKey().of();
      if (of != row.limitKey().reached() || !holdsAlone(c, of)) {
        continue;
      }
      double general = Double.parseDouble(row.lastCell());
      for (double own : new double[] {general / 10, general * 2}) {
        SubstanceHazards s =
            sheet(c, of)
                .limits(notation(c, of) + " " + java.math.BigDecimal.valueOf(own).toPlainString())
                .build();
        for (double percent : around(own)) {
          Optional<Category> expected = percent >= own ? Optional.of(of) : Optional.empty();
          cases.add(
              new LimitCase("own limit", name(row), s, percent, PhysicalState.LIQUID, c, expected));
        }
      }
    }
    return cases;
  }

  /** Classes in which nothing milder waits below the category's own limit. */
  private static boolean holdsAlone(HazardClass c, Category of) {
    return switch (c) {
      case SKIN, EYE -> of == Category.TWO;
      case AQUATIC_ACUTE, AQUATIC_CHRONIC -> false;
      default -> true;
    };
  }

  private static List<LimitCase> factors() {
    List<LimitCase> cases = new ArrayList<>();
    for (RuleRow row : rows(RuleRow.Kind.LIMIT).toList()) {
      HazardClass c = HazardClass.ofId(row.cell(0));
      boolean ofWater = c == HazardClass.AQUATIC_ACUTE || c == HazardClass.AQUATIC_CHRONIC;
      if (!ofWater || row.limitKey().of() != Category.ONE) {
        continue;
      }
      for (double m : new double[] {10, 100, 1000}) {
        SubstanceHazards s = sheet(c, Category.ONE).acuteFactor(m).chronicFactor(m).build();
        ToDoubleFunction<Category> factor = level -> level == Category.FOUR ? 1 : m;
        double limit =
            Double.parseDouble(row.lastCell()) / factor.applyAsDouble(row.limitKey().reached());
        for (double percent : around(limit)) {
          Optional<Category> expected =
              reached(RuleRow.Kind.LIMIT, c, Category.ONE, percent, factor);
          cases.add(
              new LimitCase("M " + m, name(row), s, percent, PhysicalState.LIQUID, c, expected));
        }
      }
    }
    return cases;
  }

  /** The share from which one ingredient of a category takes the mixture to each category. */
  private static List<LimitCase> estimates() {
    List<LimitCase> cases = new ArrayList<>();
    for (RuleRow of : rows(RuleRow.Kind.ACUTE).toList()) {
      UptakeForm form = UptakeForm.ofId(of.cell(0));
      SubstanceHazards s = ofForm(form, Category.of(of.cell(1)));
      for (RuleRow bound : rows(RuleRow.Kind.ACUTE).toList()) {
        double share = 100 * of.number(3) / bound.number(2);
        if (bound.cell(0).equals(of.cell(0)) && share <= 100) {
          for (double percent : around(share)) {
            cases.add(
                new LimitCase(
                    "estimate",
                    form.id() + " | " + of.cell(1) + " | " + bound.cell(1),
                    s,
                    percent,
                    PhysicalState.LIQUID,
                    form.hazardClass(),
                    byFormula(form, of, percent)));
          }
        }
      }
    }
    return cases;
  }

  private static SubstanceHazards ofForm(UptakeForm form, Category category) {
    SubstanceSheet sheet =
        SubstanceHazards.builder("poison").classified(notation(form.hazardClass(), category));
    return form.isInhaled() ? sheet.inhaledAs(form).build() : sheet.build();
  }

  private static Optional<Category> byFormula(UptakeForm form, RuleRow of, double percent) {
    if (percent * (1 + 1e-9) < of.number(4)) {
      return Optional.empty();
    }
    double estimate = 100 / (percent / of.number(3));
    return rows(RuleRow.Kind.ACUTE)
        .filter(r -> r.cell(0).equals(form.id()))
        .filter(r -> estimate <= r.number(2) * (1 + 1e-9))
        .min(Comparator.comparingDouble(r -> r.number(2)))
        .map(r -> Category.of(r.cell(1)));
  }

  static SubstanceSheet sheet(HazardClass c, Category category) {
    return SubstanceHazards.builder("substance")
        .classified(notation(c, category))
        .acuteFactor(1)
        .chronicFactor(1);
  }

  static String notation(HazardClass c, Category category) {
    String statement = LabelElements.statement(c, category);
    String name =
        switch (c) {
          case ACUTE_ORAL, ACUTE_DERMAL, ACUTE_INHALATION -> "Acute Tox.";
          case SKIN -> category == Category.TWO ? "Skin Irrit." : "Skin Corr.";
          case EYE -> category == Category.TWO ? "Eye Irrit." : "Eye Dam.";
          case RESPIRATORY_SENSITISATION -> "Resp. Sens.";
          case SKIN_SENSITISATION -> "Skin Sens.";
          case MUTAGENICITY -> "Muta.";
          case CARCINOGENICITY -> "Carc.";
          case REPRODUCTION -> "Repr.";
          case LACTATION -> "Lact.";
          case STOT_SINGLE, STOT_SINGLE_IRRITATION, STOT_SINGLE_NARCOSIS -> "STOT SE";
          case STOT_REPEATED -> "STOT RE";
          case ASPIRATION -> "Asp. Tox.";
          case AQUATIC_ACUTE -> "Aquatic Acute";
          case AQUATIC_CHRONIC -> "Aquatic Chronic";
          case OZONE -> "Ozone";
          case ENDOCRINE_HUMAN -> "ED HH";
          case ENDOCRINE_ENVIRONMENT -> "ED ENV";
          case PBT -> "PBT";
          case VPVB -> "vPvB";
          case PMT -> "PMT";
          case VPVM -> "vPvM";
          default -> throw new IllegalArgumentException(c.id());
        };
    return (name + " " + category.id()).strip() + " " + statement;
  }

  static HazardReview review(SubstanceHazards s, double percent, PhysicalState state) {
    HazardMixtureBuilder b =
        HazardMixture.builder(RULES).substance(s, percent).restNotClassified().state(state);
    if (state == PhysicalState.LIQUID) {
      b.viscosityAt40(1);
    }
    return HazardReview.of(b.build(), RULES);
  }

  Optional<Category> found() {
    return review(substance, percent, state).finding(hazardClass).category();
  }

  @Override
  public String toString() {
    return kind + " " + hazardClass.id() + " " + limit + " at " + percent + " %";
  }
}
