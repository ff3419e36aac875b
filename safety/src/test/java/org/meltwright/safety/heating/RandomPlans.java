// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/** Plans of every kind, half of their temperatures near a limit. */
final class RandomPlans {

  private static final List<String> MATERIALS =
      List.of(
          "beeswax-yellow",
          "beeswax-yellow",
          "beeswax-bleached",
          "paraffin",
          "microcrystalline",
          "soy-wax",
          "carnauba",
          "damar",
          "colophony",
          "copal-hard",
          "linseed-oil",
          "oil-paint",
          "oil-paint-ultramarine",
          "oil-paint-lead-white",
          "oil-paint-water-mixable",
          "titanium-white-rutile",
          "cadmium-red",
          "prussian-blue",
          "pigment-unspecified",
          "pigment:PG21",
          "gum-turpentine",
          "water",
          "own:something",
          "own:something-else@75",
          "own:damar-varnish",
          "made:medium");

  private static final List<String> HEATS =
      List.of(
          "plate",
          "plate",
          "plate",
          "palette",
          "palette",
          "cooker",
          "bath",
          "ring",
          "numbers",
          "heat-torch",
          "heat-gun",
          "heat-lamp");

  private static final double[] EDGES = {
    30, 40, 45, 52, 62, 72, 75, 80, 85, 90, 93.3, 96, 100, 110, 154, 187, 204, 245
  };

  private static final List<String> POTS =
      List.of(
          "pot stainless_steel none flat",
          "pot steel unknown round",
          "pot unknown none unknown",
          "pot aluminium non-stick flat",
          "pot enamelled_steel enamel flat",
          "pot steel plastic flat",
          "pot plastic none flat",
          "pot paper none flat");

  static final List<String> TOOLS =
      List.of(
          "iron 75 +5",
          "iron 105",
          "iron",
          "gun 300 +20",
          "gun 120",
          "gun",
          "torch",
          "lamp",
          "ring-beside");

  private static final List<String> PEOPLE =
      List.of(
          "people 0 1 0",
          "people 1 12 0",
          "people 0 14 0",
          "people 1 0 6",
          "people 1 0 6 2",
          "people 1 1 9 5",
          "people 0 0 2 11",
          "people 1 0 3 13",
          "people 1 0 3 13 adults",
          "people 1 1 1 2 adults",
          "people 1 8 1 17",
          "people 1 8 0 40");

  private final Random random;

  RandomPlans(long seed) {
    this.random = new Random(seed);
  }

  Clauses next() {
    List<String> clauses = new ArrayList<>(List.of(mix()));
    sometimes(0.9, () -> clauses.add(heat()));
    sometimes(0.5, () -> clauses.add("liquid " + celsius()));
    sometimes(
        0.4, () -> clauses.add("surface " + celsius() + any("", " probe", " matt", " metal")));
    sometimes(0.2, () -> clauses.add("offset " + any("-20", "-9", "-4", "0", "6")));
    sometimes(0.4, () -> clauses.add("thermometer " + any("0", "0.5", "1", "2")));
    sometimes(0.5, () -> clauses.add(any(POTS)));
    sometimes(0.4, () -> clauses.add("full " + any("50", "66", "70", "101")));
    sometimes(0.3, () -> clauses.add("hours " + any("0", "3", "24")));
    sometimes(0.4, () -> clauses.add("room 60" + any("", " 100", " 700")));
    sometimes(0.5, () -> clauses.add(any(PEOPLE)));
    clauses.addAll(some(TOOLS, 3));
    clauses.addAll(some(circumstances(), 4));
    sometimes(0.3, () -> clauses.add("no-others"));
    sometimes(0.2, () -> clauses.add(any("limits 80 85 100 60 8", "limits 70 70 110 140 15")));
    return new Clauses(clauses);
  }

  static List<String> circumstances() {
    return Stream.of(Circumstance.values()).map(Circumstance::id).toList();
  }

  private String mix() {
    Set<String> materials = new LinkedHashSet<>();
    int size = 1 + random.nextInt(4);
    while (materials.size() < size) {
      materials.add(any(MATERIALS));
    }
    return "mix "
        + String.join(
            ", ", materials.stream().map(m -> m + " " + any("1", "2", "8", "0.5")).toList());
  }

  private String heat() {
    String heat = any(HEATS);
    if (heat.equals("numbers") || random.nextInt(6) == 0) {
      return heat;
    }
    return heat + " " + celsius() + any("", " +0", " +5", " +14");
  }

  private String celsius() {
    double celsius =
        random.nextBoolean()
            ? EDGES[random.nextInt(EDGES.length)] + (random.nextInt(3) - 1) * 0.1
            : 20 + 120 * random.nextDouble();
    return Double.toString(Math.rint(celsius * 10) / 10);
  }

  private void sometimes(double share, Runnable then) {
    if (random.nextDouble() < share) {
      then.run();
    }
  }

  private Set<String> some(List<String> from, int atMost) {
    Set<String> some = new LinkedHashSet<>();
    for (int i = random.nextInt(atMost + 1); i > 0; i--) {
      some.add(any(from));
    }
    return some;
  }

  private String any(String... of) {
    return of[random.nextInt(of.length)];
  }

  private String any(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }
}
