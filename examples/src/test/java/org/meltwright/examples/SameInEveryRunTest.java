// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.grams;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.cost.BatchPrices;
import org.meltwright.core.cost.ImportRegime;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.ByMaterial;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.planning.FlatDuty;
import org.meltwright.core.source.Source;
import org.meltwright.examples.studio.StudioSheet;
import org.meltwright.units.MassFraction;

/**
 * What a program prints is the same in every run: the maps and sets of {@code Map.of} and {@code
 * Set.of} are walked in another order in each virtual machine, and nobody must see it.
 */
class SameInEveryRunTest {

  private static final int RUNS = 3;

  @TempDir private Path folder;

  @Test
  void programs_and_the_studio_sheet_print_the_same_in_every_virtual_machine() throws Exception {
    String first = run();
    assertThat(first).contains("a walk that differs: ", "Batch of medium", "</html>");
    for (int i = 1; i < RUNS; i++) {
      assertThat(withoutTheWalk(run())).isEqualTo(withoutTheWalk(first));
    }
  }

  private static List<String> withoutTheWalk(String text) {
    return text.lines().filter(line -> !line.startsWith("a walk that differs: ")).toList();
  }

  private String run() throws Exception {
    Path page = folder.resolve("page.html");
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Everything.class.getName(),
            "--page",
            page.toString(),
            Path.of("src", "main", "studio", "demo-studio.json").toString());
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    Process process = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isZero();
    return printed + Files.readString(page);
  }

  /** Prints what goes by maps and sets, what each program prints, and the studio sheet. */
  static final class Everything {

    private Everything() {}

    public static void main(String[] arguments) throws Exception {
      System.setOut(new PrintStream(System.out, true, StandardCharsets.UTF_8));
      System.out.println("a walk that differs: " + Map.of("a", 1, "b", 2, "c", 3, "d", 4));
      maps();
      for (Class<?> program : programs()) {
        program.getMethod("main", String[].class).invoke(null, (Object) new String[0]);
      }
      StudioSheet.main(arguments);
    }

    /** The programs of one question each; the service would wait for questions. */
    private static List<Class<?>> programs() throws IOException {
      Path sources = Path.of("src", "main", "java", "org", "meltwright", "examples", "program");
      try (var files = Files.list(sources)) {
        return files
            .map(file -> file.getFileName().toString())
            .filter(name -> name.endsWith(".java"))
            .map(name -> name.replace(".java", ""))
            .filter(name -> !name.equals("package-info") && !name.equals("SmallService"))
            .sorted()
            .<Class<?>>map(Everything::program)
            .toList();
      }
    }

    private static Class<?> program(String name) {
      try {
        return Class.forName("org.meltwright.examples.program." + name);
      } catch (ClassNotFoundException e) {
        throw new IllegalStateException(e);
      }
    }

    private static void maps() {
      MaterialCatalogue shelf = MaterialCatalogue.standard();
      Map<Material, UnitPrice> prices = new HashMap<>();
      for (Material each : shelf.all()) {
        prices.put(each, UnitPrice.parse("20 EUR/kg"));
        prices.put(each.withLot("7"), UnitPrice.parse("25 EUR/kg"));
      }
      System.out.println(prices.keySet());
      System.out.println(ByMaterial.of(Map.copyOf(prices)));
      List<Material> some = shelf.all().subList(0, 9);
      Recipe.Builder recipe = Recipe.builder("of everything");
      Losses losses = Losses.NONE;
      for (Material each : some) {
        recipe.part(each, 1).part(each.withLot("7"), 0.1);
        losses = losses.withInsolubles(each, MassFraction.ofPercent(1));
      }
      Batch batch = Batch.ofTotal(recipe.build(), grams(1000), losses);
      System.out.println(batch.losses() + " " + batch + " " + batch.net().composition());
      System.out.println(BatchPrices.of(Map.copyOf(prices)).cost(batch).parts());
      System.out.println(
          FlatDuty.of(
              Money.parse("EUR 3"),
              some.stream().map(Material::id).collect(Collectors.toSet()).toArray(String[]::new)));
      System.out.println(
          ImportRegime.onDeliveredValue("regime", Rate.ofPercent("19"), Source.USER));
    }
  }
}
