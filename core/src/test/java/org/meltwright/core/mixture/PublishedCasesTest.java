// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.withDensity;
import static org.meltwright.units.MetricUnits.kilograms;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.cases.CaseFile;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.material.Material;
import org.meltwright.core.planning.blend.BlendLine;
import org.meltwright.core.planning.blend.BlendPart;
import org.meltwright.core.planning.blend.BlendQuestion;
import org.meltwright.core.planning.blend.Wish;
import org.meltwright.units.MassFraction;

/** Worked examples of others, from the data file beside this class; each row names its source. */
class PublishedCasesTest {

  private static final Material FIRST = withDensity("first", 1000);
  private static final Material SECOND = withDensity("second", 1000);
  private static final Material REST = withDensity("rest", 1000);

  static Stream<Arguments> cases() {
    return CaseFile.read(PublishedCasesTest.class, "published-cases.txt").stream()
        .map(
            f ->
                Arguments.of(
                    f.get(0) + " [" + f.get(5) + "]", f.get(1), f.get(2), f.get(3), f.get(4)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void case_published_comesOut(
      String name, String operation, String inputs, String expected, double tolerance) {
    Map<String, Double> named =
        switch (operation) {
          case "pot" -> pot(inputs);
          case "reach" -> reach(inputs);
          case "leave" -> leave(inputs);
          default -> Map.of();
        };
    if (!named.isEmpty()) {
      for (String each : expected.split(";", -1)) {
        String[] pair = each.strip().split("=", -1);
        assertThat(named.get(pair[0]))
            .as("%s of %s", pair[0], name)
            .isCloseTo(Double.parseDouble(pair[1]), within(tolerance));
      }
      return;
    }
    double[] results = list(operation, inputs);
    assertThat(results).as(name).containsExactly(CaseFile.numbers(expected), within(tolerance));
  }

  @Test
  void cases_file_holdsManySources() {
    assertThat(cases().count()).isGreaterThan(70);
  }

  private static double[] list(String operation, String inputs) {
    return switch (operation) {
      case "blend" -> blend(inputs);
      case "known" -> known(inputs);
      case "two" -> two(inputs);
      case "shares" -> shares(inputs);
      case "density" -> new double[] {density(inputs, false)};
      case "bulk" -> new double[] {density(inputs, true)};
      case "apportion" -> apportion(inputs);
      default -> throw new IllegalArgumentException(operation);
    };
  }

  private static Mixture amount(double mass, double percent) {
    return Mixture.of(of(percent), kilograms(mass));
  }

  private static Composition of(double percent) {
    return Composition.ofParts(List.of(FIRST, REST), percent, 100 - percent);
  }

  private static Map<String, Double> pot(String steps) {
    Mixture pot = null;
    for (String step : steps.split("\\s+", -1)) {
      String[] parts = step.substring(1).split("@", -1);
      double mass = Double.parseDouble(parts[0]);
      if (step.startsWith("+")) {
        Mixture added = amount(mass, Double.parseDouble(parts[1]));
        pot = pot == null ? added : pot.plus(added);
      } else if (parts.length == 1) {
        pot = pot.minus(kilograms(mass));
      } else {
        double share = Double.parseDouble(parts[1]) / 100;
        pot = pot.minus(FIRST, kilograms(mass * share));
        pot = share < 1 ? pot.minus(REST, kilograms(mass * (1 - share))) : pot;
      }
    }
    double share = pot.composition().massFractionValue(FIRST);
    return Map.of("mass", pot.massKilograms(), "share", share * 100, "ratio", share / (1 - share));
  }

  private static Map<String, Double> reach(String inputs) {
    String[] words = inputs.split("\\s+", -1);
    String[] pot = words[0].split("@", -1);
    Correction correction =
        Correction.toShare(
            amount(Double.parseDouble(pot[0]), Double.parseDouble(pot[1])),
            ShareOf.material(FIRST),
            MassFraction.ofPercent(Double.parseDouble(words[4])),
            of(Double.parseDouble(words[2])));
    return Map.of(
        "added", correction.addedKilograms(), "product", correction.result().massKilograms());
  }

  private static Map<String, Double> leave(String inputs) {
    String[] words = inputs.split("\\s+", -1);
    String[] pot = words[0].split("@", -1);
    Correction correction =
        Correction.byDraining(
            amount(Double.parseDouble(pot[0]), Double.parseDouble(pot[1])),
            ShareOf.material(FIRST),
            MassFraction.ofPercent(Double.parseDouble(words[3])),
            words[1].equals("first") ? FIRST : REST);
    return Map.of(
        "taken", correction.takenOutKilograms(), "left", correction.result().massKilograms());
  }

  private static double[] blend(String inputs) {
    String[] sides = inputs.split("->", -1);
    String[] target = sides[1].strip().split(" of ", -1);
    return made(
        components(sides[0]),
        OptionalInt.empty(),
        Double.parseDouble(target[1]),
        share(FIRST, Double.parseDouble(target[0])));
  }

  private static double[] known(String inputs) {
    String[] sides = inputs.split("->", -1);
    String[] target = sides[1].strip().split(" with ", -1);
    String[] amount = target[1].split(":", -1);
    double[] masses =
        made(
            components(sides[0]),
            OptionalInt.of(Integer.parseInt(amount[0])),
            Double.parseDouble(amount[1]),
            share(FIRST, Double.parseDouble(target[0])));
    double[] withTotal = Arrays.copyOf(masses, masses.length + 1);
    withTotal[masses.length] = Arrays.stream(masses).sum();
    return withTotal;
  }

  private static double[] two(String inputs) {
    String[] sides = inputs.split("->", -1);
    String[] target = sides[1].strip().split(" of ", -1);
    double[] wanted = CaseFile.numbers(target[0].replace('/', ' '));
    List<Composition> components = new ArrayList<>();
    for (String each : sides[0].strip().split("\\s+", -1)) {
      double[] shares = CaseFile.numbers(each.replace('/', ' '));
      components.add(
          Composition.ofParts(
              List.of(FIRST, SECOND, REST), shares[0], shares[1], 100 - shares[0] - shares[1]));
    }
    return made(
        components,
        OptionalInt.empty(),
        Double.parseDouble(target[1]),
        share(FIRST, wanted[0]),
        share(SECOND, wanted[1]));
  }

  private static Wish share(Material material, double percent) {
    return Wish.share(ShareOf.material(material), Wish.percent(percent, percent));
  }

  /** The masses of components that keep wishes; the mass of one is known, or of the whole. */
  private static double[] made(
      List<Composition> components, OptionalInt known, double kilograms, Wish... shares) {
    List<BlendPart> parts = new ArrayList<>();
    for (int c = 0; c < components.size(); c++) {
      BlendPart part = BlendPart.of("" + c, components.get(c));
      parts.add(known.orElse(-1) == c ? part.withStock(kilograms(kilograms)) : part);
    }
    List<Wish> wishes = new ArrayList<>(List.of(shares));
    wishes.add(
        known.isPresent() ? Wish.useUp("" + known.getAsInt()) : Wish.amount(kilograms(kilograms)));
    return BlendQuestion.of(parts, wishes).nearestTo(components.get(0)).require().lines().stream()
        .mapToDouble(BlendLine::kilograms)
        .toArray();
  }

  private static List<Composition> components(String percents) {
    return Arrays.stream(CaseFile.numbers(percents)).mapToObj(PublishedCasesTest::of).toList();
  }

  private static double[] masses(List<Mixture> mixtures) {
    return mixtures.stream().mapToDouble(Mixture::massKilograms).toArray();
  }

  private static double[] shares(String inputs) {
    double[] parts = CaseFile.numbers(inputs);
    List<Material> materials = materials(parts, parts);
    Composition mix = Composition.ofParts(materials, parts);
    return materials.stream().mapToDouble(m -> mix.massFraction(m).percent()).toArray();
  }

  private static double density(String inputs, boolean byVolume) {
    double[] numbers = CaseFile.numbers(inputs.replace('@', ' '));
    double[] parts = new double[numbers.length / 2];
    double[] densities = new double[parts.length];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = numbers[2 * i];
      densities[i] = numbers[2 * i + 1];
    }
    List<Material> materials = materials(parts, densities);
    Composition mix =
        byVolume
            ? Composition.ofVolumeParts(DensityBasis.SOLID, materials, parts)
            : Composition.ofParts(materials, parts);
    return mix.density(DensityBasis.SOLID).centralSi();
  }

  private static double[] apportion(String inputs) {
    String[] sides = inputs.split("->", -1);
    double[] parts = CaseFile.numbers(sides[0]);
    List<Material> materials = materials(parts, parts);
    Recipe.Builder recipe = Recipe.builder("shares");
    for (int i = 0; i < parts.length; i++) {
      recipe.part(materials.get(i), parts[i]);
    }
    Batch batch =
        Batch.ofTotal(recipe.build(), kilograms(Double.parseDouble(sides[1].strip())), Losses.NONE);
    return WeighingSheet.of(batch, List.of(Balance.of("b", kilograms(1000), kilograms(1))))
        .lines()
        .stream()
        .mapToDouble(l -> l.rounded().printedKilograms())
        .toArray();
  }

  private static List<Material> materials(double[] parts, double[] densities) {
    List<Material> materials = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      materials.add(withDensity("m" + i, densities[i]));
    }
    return materials;
  }
}
