// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.meltwright.core.material.MaterialProblem.CHECK;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** All that is stated of a material: a builder collects it, a material keeps a copy that stays. */
final class MaterialContent {

  final String id;
  final Map<IdentifierScheme, List<Sourced<String>>> identifiers =
      new EnumMap<>(IdentifierScheme.class);
  final Map<PropertyKey<?>, List<Sourced<?>>> figures = new LinkedHashMap<>();
  final Map<PropertyKey<?>, String> absences = new LinkedHashMap<>();
  List<String> otherNames = new ArrayList<>();
  List<Constituent> constituents = new ArrayList<>();
  List<Material> alternatives = new ArrayList<>();
  @Nullable String lot;
  @Nullable String englishName;
  @Nullable String germanName;
  @Nullable MaterialFamily family;
  @Nullable MaterialRole role;

  MaterialContent(String id) {
    this.id = id;
  }

  /** A copy to keep, with the figures that follow from what the material may be. */
  MaterialContent kept() {
    MaterialContent kept = withSingleFieldsOf(this);
    kept.otherNames = List.copyOf(otherNames);
    kept.constituents = List.copyOf(constituents);
    kept.alternatives = List.copyOf(alternatives);
    ListsByKey.copy(kept.identifiers, identifiers);
    ListsByKey.copy(kept.figures, figures);
    Envelope.add(kept.alternatives, kept.figures);
    kept.absences.putAll(absences);
    return kept;
  }

  /** A copy to change, without what follows from what the material may be. */
  MaterialContent changeable() {
    MaterialContent copy = withSingleFieldsOf(this);
    copy.otherNames.addAll(otherNames);
    copy.constituents.addAll(constituents);
    copy.alternatives.addAll(alternatives);
    identifiers.forEach((k, list) -> copy.identifiers.put(k, new ArrayList<>(list)));
    figures.forEach((k, list) -> copy.figures.put(k, new ArrayList<>(list)));
    copy.figures.values().removeIf(list -> list.size() == 1 && Envelope.made(list.get(0)));
    copy.absences.putAll(absences);
    return copy;
  }

  private static MaterialContent withSingleFieldsOf(MaterialContent other) {
    MaterialContent copy = new MaterialContent(other.id);
    copy.lot = other.lot;
    copy.englishName = other.englishName;
    copy.germanName = other.germanName;
    copy.family = other.family;
    copy.role = other.role;
    return copy;
  }

  /** Puts a figure that is there in front of the others of its property. */
  void prefer(PropertyKey<?> key, Sourced<?> figure) {
    List<Sourced<?>> order = new ArrayList<>(figures.getOrDefault(key, List.of()));
    order.remove(figure);
    order.add(0, figure.preferred("chosen by the caller"));
    figures.put(key, order);
  }

  /** The id, and the lot if one is named. */
  String key() {
    return lot == null ? id : id + " (lot " + lot + ")";
  }

  /** The properties that have a figure, in the order of all properties. */
  List<PropertyKey<?>> keys() {
    return PropertyKey.all().stream()
        .<PropertyKey<?>>map(k -> k)
        .filter(figures::containsKey)
        .toList();
  }

  Optional<String> absence(PropertyKey<?> key) {
    return figures.containsKey(key) ? Optional.empty() : Optional.ofNullable(absences.get(key));
  }

  ProblemException missing(MaterialProblem code, PropertyKey<?> key, String sourceId) {
    return new ProblemException(
        Problem.of(code, id)
            .with("property", key.inWords())
            .with("source", sourceId)
            .with("because", absence(key).map(CHECK::name).orElse(Bilingual.of(""))));
  }

  /** What was looked for in vain and found nowhere else. */
  Map<PropertyKey<?>, String> openAbsences() {
    Map<PropertyKey<?>, String> open = new LinkedHashMap<>(absences);
    open.keySet().removeAll(figures.keySet());
    return open;
  }

  /** Compares all but constituents and alternatives, which are materials again. */
  boolean statesTheSameAs(MaterialContent that) {
    return id.equals(that.id)
        && Objects.equals(lot, that.lot)
        && Objects.equals(englishName, that.englishName)
        && Objects.equals(germanName, that.germanName)
        && family == that.family
        && role == that.role
        && otherNames.equals(that.otherNames)
        && identifiers.equals(that.identifiers)
        && figures.equals(that.figures)
        && openAbsences().equals(that.openAbsences());
  }

  /** The figures of a name that fits several materials: each spans those of all of them. */
  private static final class Envelope {

    private static final Source SOURCE = Source.CALCULATED.at("span of the materials it may be");

    private Envelope() {}

    /**
     * Adds a span for each property that has no figure of its own.
     *
     * <p>Without lambdas, as all that the standard catalogue runs through when it is first read.
     */
    static void add(List<Material> candidates, Map<PropertyKey<?>, List<Sourced<?>>> figures) {
      if (candidates.isEmpty()) {
        return;
      }
      for (PropertyKey<?> key : PropertyKey.all()) {
        Sourced<?> figure = figures.containsKey(key) ? null : span(key, candidates);
        if (figure != null) {
          figures.put(key, List.of(figure));
        }
      }
    }

    static boolean made(Sourced<?> figure) {
      return figure.source().equals(SOURCE);
    }

    /**
     * A word that warns counts even if one candidate alone has it; a number must be known of all.
     */
    private static <V> @Nullable Sourced<V> span(PropertyKey<V> key, List<Material> candidates) {
      List<Sourced<V>> known = new ArrayList<>();
      for (Material candidate : candidates) {
        List<Sourced<V>> figures = candidate.figures(key);
        known.addAll(figures.subList(0, Math.min(1, figures.size())));
      }
      boolean enough = key.isInWords() || known.size() == candidates.size();
      return known.isEmpty() || !enough ? null : span(key, known, names(candidates));
    }

    private static <V> Sourced<V> span(PropertyKey<V> key, List<Sourced<V>> known, String names) {
      V value = known.get(0).value();
      Knowledge weakest = Knowledge.DERIVED;
      String barred = "";
      for (Sourced<V> figure : known) {
        value = key.span(value, figure.value());
        weakest = figure.knowledge() == Knowledge.REMEMBERED ? figure.knowledge() : weakest;
        barred = figure.barredBecause().orElse(barred);
      }
      Sourced<V> figure = Sourced.of(value, SOURCE, weakest).withNote(names);
      return barred.isEmpty() ? figure : figure.barredFromRules(barred);
    }

    private static String names(List<Material> candidates) {
      List<String> ids = new ArrayList<>();
      for (Material candidate : candidates) {
        ids.add(candidate.id());
      }
      return String.join(" or ", ids);
    }
  }

  /**
   * Compares two materials by content, parts of parts included; for one comparison.
   *
   * <p>A pair that was found equal is not looked at again, so that parts that share their parts,
   * level upon level, cost a step each and no exponential time.
   */
  static final class SameContent {

    private final IdentityHashMap<Material, IdentityHashMap<Material, Boolean>> equal =
        new IdentityHashMap<>();

    @SuppressWarnings("ReferenceEquality") // what is one object has one content
    boolean of(Material one, Material other) {
      IdentityHashMap<Material, Boolean> known = equal.get(one);
      if (one == other || (known != null && known.containsKey(other))) {
        return true;
      }
      boolean same =
          one.content().statesTheSameAs(other.content())
              && parts(one.constituents(), other.constituents())
              && all(one.alternatives(), other.alternatives());
      if (same) {
        equal.computeIfAbsent(one, m -> new IdentityHashMap<>()).put(other, true);
      }
      return same;
    }

    private boolean parts(List<Constituent> some, List<Constituent> others) {
      for (int i = 0; i < some.size() && some.size() == others.size(); i++) {
        if (!some.get(i).share().equals(others.get(i).share())
            || !of(some.get(i).material(), others.get(i).material())) {
          return false;
        }
      }
      return some.size() == others.size();
    }

    private boolean all(List<Material> some, List<Material> others) {
      for (int i = 0; i < some.size() && some.size() == others.size(); i++) {
        if (!of(some.get(i), others.get(i))) {
          return false;
        }
      }
      return some.size() == others.size();
    }
  }
}
