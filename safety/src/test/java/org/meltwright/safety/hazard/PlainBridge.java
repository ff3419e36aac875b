// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.meltwright.safety.hazard.PlainMixture.Category;
import org.meltwright.safety.hazard.PlainMixture.Facts;
import org.meltwright.safety.hazard.PlainMixture.Known;
import org.meltwright.safety.hazard.PlainMixture.Limit;
import org.meltwright.safety.hazard.PlainMixture.Line;
import org.meltwright.units.TemperaturePoint;

/** Carries plain mixtures to the library and its answers back. */
final class PlainBridge {

  private PlainBridge() {}

  /** The library's answers, in the words of {@link PlainRules}. */
  static Map<String, String> answers(PlainMixture mixture, RuleSet rules) {
    HazardReview review = HazardReview.of(mixture(mixture, rules), rules);
    Map<String, String> answers = new TreeMap<>();
    for (HazardFinding f : review.findings()) {
      answers.put(f.hazardClass().id(), answer(f));
    }
    answers.put("elicitors", names(review.elicitors()));
    answers.put("announced", names(review.dataSheetAnnouncedFor()));
    return answers;
  }

  private static String names(List<HazardIngredient> ingredients) {
    return ingredients.stream()
        .map(HazardIngredient::hazards)
        .map(s -> s.casNumbers().isEmpty() ? s.name() : "CAS " + s.casNumbers().get(0))
        .sorted()
        .collect(Collectors.joining(", "));
  }

  private static String answer(HazardFinding f) {
    return switch (f.status()) {
      case NOT_CLASSIFIED -> "-";
      case INSUFFICIENT_DATA -> "?";
      case CLASSIFIED -> {
        String number = f.category().orElseThrow().id();
        String category = number.isEmpty() ? "is" : number;
        String statement = f.categories().get(0).statement();
        boolean effect = f.hazardClass() == HazardClass.REPRODUCTION && statement.length() > 4;
        yield effect ? category + " " + statement : category;
      }
    };
  }

  static HazardMixture mixture(PlainMixture mixture, RuleSet rules) {
    HazardMixtureBuilder b = HazardMixture.builder(rules);
    for (Line line : mixture.lines()) {
      b.substance(substance(line.known(), rules), line.low(), line.high());
    }
    Facts f = mixture.facts();
    switch (f.state()) {
      case "liquid" -> b.state(PhysicalState.LIQUID);
      case "solid" -> b.state(f.solidAt40() ? PhysicalState.SOLID_AT_40 : PhysicalState.SOLID);
      case "gas" -> b.state(PhysicalState.GAS);
      default -> {}
    }
    if (f.viscosity() != null) {
      b.viscosityAt40(f.viscosity());
    }
    if (f.ph() != null) {
      b.ph(f.ph());
    }
    if (f.phLifted()) {
      b.reserve(1).phRefutedByTest();
    }
    if (f.flash() != null) {
      b.flashPoint(TemperaturePoint.ofCelsius(f.flash()));
    }
    if (f.boil() != null) {
      b.initialBoilingPoint(TemperaturePoint.ofCelsius(f.boil()));
    }
    return b.build();
  }

  private static SubstanceHazards substance(Known k, RuleSet rules) {
    if (k.unknown) {
      return SubstanceHazards.unknown(k.id);
    }
    if (!k.cas.isEmpty()) {
      return rules.find(k.cas).orElseThrow();
    }
    if (k.toString().equals("none")) {
      return SubstanceHazards.presumedNone(k.id);
    }
    SubstanceSheet sheet = SubstanceHazards.builder(k.id);
    for (Category c : k.categories) {
      sheet.classified((c.name() + " " + c.category()).strip() + " " + c.statement());
      if (!c.form().isEmpty()) {
        sheet.inhaledAs(UptakeForm.ofId(c.form()));
      }
    }
    k.limits.forEach(l -> sheet.limits(l.toString()));
    k.estimates.forEach((form, value) -> sheet.estimate(UptakeForm.ofId(form), value));
    if (k.acuteM != 1) {
      sheet.acuteFactor(k.acuteM);
    }
    if (k.chronicM != 1) {
      sheet.chronicFactor(k.chronicM);
    }
    if (!k.additive) {
      sheet.notAdditive();
    }
    if (k.metal != 1) {
      sheet.notes("1").metal("Zr", k.metal);
    }
    if (k.workplaceLimit) {
      sheet.unionWorkplaceLimit();
    }
    sheet.notes(String.join(" ", k.notes));
    k.open.forEach(id -> sheet.openFor(HazardClass.ofId(id)));
    return sheet.build();
  }

  /** The substances of the tables, in plain words. */
  static List<Known> entries(RuleSet rules) {
    return rules.entries().stream()
        .flatMap(e -> e.casNumbers().stream().limit(1))
        .sorted()
        .map(cas -> known(rules.find(cas).orElseThrow(), cas))
        .toList();
  }

  private static Known known(SubstanceHazards s, String cas) {
    Known k = new Known();
    k.id = "CAS " + cas;
    k.cas = cas;
    k.workplaceLimit =
        WorkplaceLimits.has(new HazardIngredient(null, 1, s, null), LocalDate.of(2027, 2, 1));
    k.unknown = s.evidence().isOpen();
    for (HazardCategory c : s.categories()) {
      boolean inhaled = c.hazardClass() == HazardClass.ACUTE_INHALATION;
      k.categories.add(plain(c, inhaled ? form(s, c) : ""));
    }
    for (SpecificLimit l : s.specificLimits()) {
      Category c = plain(l.hazardClass(), l.category().id(), l.statement(), "");
      double below = l.belowPercent().orElse(Double.NaN);
      k.limits.add(new Limit(c.name(), c.category(), c.statement(), l.fromPercent(), below));
    }
    for (UptakeForm form : UptakeForm.values()) {
      s.estimate(form).ifPresent(value -> k.estimates.put(form.id(), value));
    }
    k.acuteM = s.acuteFactor().orElse(1);
    k.chronicM = s.chronicFactor().orElse(1);
    k.additive = s.isAdditive();
    k.metal = s.notes().contains("1") ? s.metalShare().orElse(1) : 1;
    k.notes.addAll(s.notes().stream().filter(n -> n.matches("11|12")).toList());
    k.entry = s.indexNumber().orElse("");
    if (k.entry.startsWith("005-") || k.entry.equals("056-005-00-3")) {
      k.notes.add("11");
    }
    if (s.notes().contains("X")) {
      openButForWhatIsNamed(k);
    }
    return k;
  }

  /** The id of the class of a category. */
  static String id(Category c) {
    return HazardCategory.parse(new Category(c.name(), c.category(), c.statement(), "").toString())
        .hazardClass()
        .id();
  }

  /** The form that the entry states, else the one in which it can be in the air. */
  private static String form(SubstanceHazards s, HazardCategory c) {
    if (!s.inhaledAs().isEmpty()) {
      return s.inhaledAs().iterator().next().id();
    }
    if (s.saturatedVapourMilligramsPerLitre().isEmpty()) {
      return "";
    }
    double held = s.saturatedVapourMilligramsPerLitre().getAsDouble();
    return PlainAcute.held(held, Integer.parseInt(c.category().id())) ? "vapour" : "dust";
  }

  private static void openButForWhatIsNamed(Known k) {
    for (HazardClass c : HazardClass.values()) {
      if (k.categories.stream().noneMatch(x -> id(x).equals(c.id()))) {
        k.open.add(c.id());
      }
    }
  }

  private static Category plain(HazardCategory c, String form) {
    return plain(c.hazardClass(), c.category().id(), c.statement(), form);
  }

  private static Category plain(HazardClass c, String category, String statement, String form) {
    String name =
        switch (c) {
          case ACUTE_ORAL, ACUTE_DERMAL, ACUTE_INHALATION -> "Acute Tox.";
          case SKIN -> statement.equals("H314") ? "Skin Corr." : "Skin Irrit.";
          case EYE -> statement.equals("H318") ? "Eye Dam." : "Eye Irrit.";
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
          case FLAMMABLE_LIQUID -> "Flam. Liq.";
          case FLAMMABLE_SOLID -> "Flam. Sol.";
          case OXIDISING -> "Ox. Sol.";
          case WATER_REACTIVE -> "Water-react.";
          case METAL_CORROSION -> "Met. Corr.";
          case AEROSOL -> "Aerosol";
          case EXPLOSIVE,
              DESENSITISED_EXPLOSIVE,
              FLAMMABLE_GAS,
              OXIDISING_GAS,
              GAS_UNDER_PRESSURE,
              CHEMICAL_UNDER_PRESSURE,
              SELF_REACTIVE,
              ORGANIC_PEROXIDE,
              PYROPHORIC,
              SELF_HEATING ->
              throw new IllegalArgumentException(c + " has no categories here");
        };
    return new Category(name, category, statement, form);
  }

  /** The mixture with one thing less, its share or its place given to what is in no class. */
  static List<PlainMixture> withLess(PlainMixture mixture) {
    List<PlainMixture> all = new ArrayList<>();
    withOneRest(mixture).ifPresent(all::add);
    for (int i = 0; i < mixture.lines().size(); i++) {
      Line line = mixture.lines().get(i);
      if (!line.known().toString().equals("none")) {
        all.add(with(mixture, i, new Known()));
        simpler(line.known())
            .forEach(k -> all.add(with(mixture, mixture.lines().indexOf(line), k)));
      }
    }
    Facts none = new Facts("", false, null, null, false, null, null);
    if (!mixture.facts().equals(none)) {
      all.add(new PlainMixture(none, mixture.lines()));
    }
    return all;
  }

  private static Optional<PlainMixture> withOneRest(PlainMixture mixture) {
    List<Line> rest =
        mixture.lines().stream().filter(l -> l.known().toString().equals("none")).toList();
    if (rest.size() < 2) {
      return Optional.empty();
    }
    List<Line> lines = new ArrayList<>(mixture.lines());
    lines.removeAll(rest);
    double low = rest.stream().mapToDouble(Line::low).sum();
    double high = rest.stream().mapToDouble(Line::high).sum();
    Known known = new Known();
    known.id = "rest";
    lines.add(
        new Line(Math.rint(low * 1e8) / 1e8, Math.min(100, Math.rint(high * 1e8) / 1e8), known));
    return Optional.of(new PlainMixture(mixture.facts(), List.copyOf(lines)));
  }

  private static PlainMixture with(PlainMixture mixture, int place, Known known) {
    String id = mixture.lines().get(place).known().id;
    Known named = known;
    named.id = id;
    List<Line> lines =
        mixture.lines().stream()
            .map(l -> l.known().id.equals(id) ? new Line(l.low(), l.high(), named) : l)
            .toList();
    return new PlainMixture(mixture.facts(), lines);
  }

  private static List<Known> simpler(Known k) {
    List<Known> all = new ArrayList<>();
    if (k.unknown || !k.cas.isEmpty()) {
      return all;
    }
    for (Category c : k.categories) {
      Known less = copy(k);
      less.categories.remove(c);
      all.add(less);
    }
    for (Limit l : k.limits) {
      Known less = copy(k);
      less.limits.remove(l);
      all.add(less);
    }
    for (String form : k.estimates.keySet()) {
      Known less = copy(k);
      less.estimates.remove(form);
      all.add(less);
    }
    Known plain = copy(k);
    plain.metal = 1;
    plain.workplaceLimit = false;
    plain.additive = true;
    plain.acuteM = 1;
    plain.chronicM = 1;
    plain.notes.clear();
    plain.open.clear();
    if (!plain.toString().equals(k.toString())) {
      all.add(plain);
    }
    return all.stream().filter(x -> !x.toString().equals("none")).collect(Collectors.toList());
  }

  private static Known copy(Known k) {
    Known c = new Known();
    c.id = k.id;
    c.categories.addAll(k.categories);
    c.limits.addAll(k.limits);
    c.estimates.putAll(k.estimates);
    c.acuteM = k.acuteM;
    c.chronicM = k.chronicM;
    c.additive = k.additive;
    c.metal = k.metal;
    c.workplaceLimit = k.workplaceLimit;
    c.notes.addAll(k.notes);
    c.entry = k.entry;
    c.open.addAll(k.open);
    return c;
  }
}
