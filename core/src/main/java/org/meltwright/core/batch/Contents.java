// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Bilingual;

/**
 * What is in a pot, and how much of each material in it has not been strained yet.
 *
 * <p>What stayed behind once does not stay behind again: each straining takes its share of what
 * came straight from the shelf, and leaves alone what an earlier one has cleaned.
 */
final class Contents {

  private final Composition composition;

  /** For each line of the composition, the part of its mass that was not strained: from 0 to 1. */
  private final double[] raw;

  static Contents of(Material material) {
    return new Contents(Composition.of(material), 1);
  }

  static Contents of(Ingredient ingredient) {
    return ingredient instanceof Ingredient.Made made
        ? made.recipe().orElseThrow().contents().strained(made.losses())
        : of(ingredient.material().orElseThrow());
  }

  /** Several in one pot, by mass; their order makes no difference, to the last bit. */
  static Contents blend(List<Contents> all, double... masses) {
    Composition whole = Composition.blend(all.stream().map(Contents::composition).toList(), masses);
    Map<Material, List<Lot>> lots = new HashMap<>();
    for (int i = 0; i < masses.length; i++) {
      all.get(i).addTo(lots, masses[i]);
    }
    return new Contents(
        whole,
        whole.materials().stream()
            .mapToDouble(m -> Lot.raw(requireNonNull(lots.get(m))))
            .toArray());
  }

  private void addTo(Map<Material, List<Lot>> lots, double kilograms) {
    for (int i = 0; i < raw.length; i++) {
      double mass = composition.massFractionValue(i) * kilograms;
      lots.computeIfAbsent(composition.materials().get(i), m -> new ArrayList<>())
          .add(new Lot(mass, mass * raw[i]));
    }
  }

  /** A mass of one material in one of several pots, and how much of it is raw. */
  private record Lot(double mass, double rawMass) {

    private static final Comparator<Lot> ORDER =
        Comparator.comparingDouble(Lot::mass).thenComparingDouble(Lot::rawMass);

    static double raw(List<Lot> lots) {
      double mass = lots.stream().sorted(ORDER).mapToDouble(Lot::mass).sum();
      double rawMass = lots.stream().sorted(ORDER).mapToDouble(Lot::rawMass).sum();
      return rawMass == mass ? 1 : rawMass / mass;
    }
  }

  private Contents(Composition composition, double... raw) {
    this.composition = composition;
    this.raw = raw;
  }

  Composition composition() {
    return composition;
  }

  /** The share of all that stays behind, from 0 to 1. */
  double insolublesShare(Losses losses) {
    return composition.mean(i -> behind(losses, i));
  }

  private double behind(Losses losses, int line) {
    return raw[line] * losses.insolublesValue(composition.materials().get(line));
  }

  /** Tells of each material that leaves something behind how much of it there is and stays. */
  void explain(Losses losses, Explanation.Builder text, Symbol content, Symbol behind) {
    List<Bilingual> names =
        Explanation.lines(
            composition.materials().stream().map(m -> Bilingual.of(m::name)).toList());
    for (int i = 0; i < raw.length; i++) {
      if (behind(losses, i) > 0) {
        text.given(content.of(names.get(i)), composition.massFractionValue(i))
            .given(behind.of(names.get(i)), behind(losses, i));
      }
    }
  }

  /** What is left when all that does not dissolve has been taken out. */
  Contents strained(Losses losses) {
    if (insolublesShare(losses) == 0) {
      return this;
    }
    double[] masses = new double[raw.length];
    Arrays.setAll(masses, i -> composition.massFractionValue(i) * (1 - behind(losses, i)));
    double[] left = new double[raw.length];
    Arrays.setAll(left, i -> behind(losses, i) > 0 ? 0 : raw[i]);
    return new Contents(composition.withParts(masses), left);
  }

  /** How much of each material is raw, whatever the order of the lines. */
  Map<Material, Double> rawShares() {
    Map<Material, Double> shares = new HashMap<>();
    IntStream.range(0, raw.length).forEach(i -> shares.put(composition.materials().get(i), raw[i]));
    return shares;
  }
}
