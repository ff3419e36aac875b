// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.material.Material;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperaturePoint;

/**
 * The same plan said in another way.
 *
 * @param what how it is said
 * @param review its review
 */
record SaidOtherwise(String what, HeatingReview review) {

  /** A name without a meaning for any rule, for what was called otherwise before. */
  private static final String OTHER_NAME = "Nr. 7";

  static Stream<SaidOtherwise> of(Clauses plan) {
    Stream<Clauses> mixes =
        Stream.of(
            permuted(plan),
            eachPart(plan, SaidOtherwise::split),
            eachPart(plan, part -> part.replace("made:medium", "made:melange")));
    return Stream.concat(
        mixes.filter(other -> !other.equals(plan)).map(SaidOtherwise::said),
        Stream.of(renamed(plan)));
  }

  ReviewLaw.Comparison compare(HeatingReview of) {
    boolean same = words(review).equals(words(of));
    return new ReviewLaw.Comparison(same ? "" : "not the same", what, review);
  }

  private static SaidOtherwise said(Clauses plan) {
    return new SaidOtherwise(plan.toString(), plan.review());
  }

  private static Clauses permuted(Clauses plan) {
    List<String> parts = new ArrayList<>(parts(plan));
    Collections.reverse(parts);
    return mixed(plan, parts);
  }

  private static Clauses eachPart(Clauses plan, Function<String, String> change) {
    return mixed(plan, parts(plan).stream().map(change).toList());
  }

  private static List<String> parts(Clauses plan) {
    return List.of(plan.all().get(0).substring("mix ".length()).split(", "));
  }

  private static Clauses mixed(Clauses plan, List<String> parts) {
    return plan.replace(plan.all().get(0), "mix " + String.join(", ", parts));
  }

  /** A third and two thirds of the part. */
  private static String split(String part) {
    String[] words = part.split(" ");
    double third = Double.parseDouble(words[1]) / 3;
    return words[0] + " " + third + ", " + words[0] + " " + 2 * third;
  }

  private static SaidOtherwise renamed(Clauses clauses) {
    HeatingPlan plan = Plans.parse(clauses.toString());
    HeatingPlanBuilder renamed = plan.toBuilder();
    plan.heat().map(SaidOtherwise::renamed).ifPresent(renamed::heat);
    renamed.tools.replaceAll(SaidOtherwise::renamed);
    plan.vessel().map(SaidOtherwise::renamed).ifPresent(renamed::vessel);
    plan.thermometer().map(SaidOtherwise::renamed).ifPresent(renamed::thermometer);
    HeatingReview review = Plans.rules(clauses.toString()).review(renamed.build());
    return new SaidOtherwise("the same with other names of vessel and tools", review);
  }

  private static HeatSource renamed(HeatSource source) {
    HeatSource renamed = HeatSource.of(OTHER_NAME, source.kind());
    renamed = source.setPoint().map(renamed::withSetPoint).orElse(renamed);
    return source.overshoot().map(renamed::withOvershoot).orElse(renamed);
  }

  private static Vessel renamed(Vessel pot) {
    return new Vessel(
        OTHER_NAME,
        pot.material(),
        pot.lining(),
        pot.bottom(),
        pot.capacityCubicMetres(),
        pot.massKilograms());
  }

  private static Thermometer renamed(Thermometer probe) {
    return new Thermometer(OTHER_NAME, probe.place(), probe.interval(), probe.tolerance());
  }

  /** What a review says, whatever a recipe is called. */
  private static Set<String> words(HeatingReview review) {
    Set<String> words = new TreeSet<>();
    review.findings().forEach(f -> words.add("found " + f.ruleId() + details(f.details())));
    review
        .notAssessed()
        .forEach(n -> words.add("open " + n.property() + id(n.material()) + n.ruleIds()));
    review.notAsked().forEach(n -> words.add("not asked " + n.id() + n.ruleIds()));
    words.add("blocks " + review.isBlocked() + ", worst " + review.worstSeverity());
    return words;
  }

  private static Set<String> details(Map<String, Object> details) {
    return details.entrySet().stream()
        .map(each -> each.getKey() + "=" + plain(each.getValue()))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Numbers to a billionth: a sum in another order may end in another bit. */
  private static Object plain(Object value) {
    if (value instanceof TemperaturePoint point) {
      return Math.rint(point.celsius() * 1e9) / 1e9;
    } else if (value instanceof MassFraction share) {
      return Math.rint(share.value() * 1e9) / 1e9;
    } else if (value instanceof Optional<?> known) {
      return known.map(SaidOtherwise::plain).isPresent();
    } else if (value instanceof List<?> materials) {
      return materials.stream().map(SaidOtherwise::part).toList();
    }
    return value;
  }

  private static Object part(Object each) {
    return each instanceof Material material ? id(Optional.of(material)) : each;
  }

  private static String id(Optional<Material> material) {
    return material.map(Material::id).map(id -> id.replace("melange", "medium")).orElse("");
  }
}
