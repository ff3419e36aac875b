// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;

/** What a fresh Java machine loads, and how long our initialisers take in it. */
class StartUpTest {

  /**
   * Ten times the goal of 20 ms: the figures measured stand in docs/reference/performance.md, and
   * this bound only has to catch an initialiser that reads files or the engine's table of units.
   */
  private static final double MOST_MILLISECONDS = 200;

  private static final List<String> OURS =
      List.of(
          "SiUnits",
          "QuantityKind",
          "MetricUnits",
          "UsCustomaryUnits",
          "ImperialUnits",
          "TemperatureScale",
          "ShareReader",
          "UnitsProblem",
          "QuantityFormatter",
          "QuantityParser");

  @Test
  void grams_and_celsius_alone_never_load_the_other_holders() throws Exception {
    List<String> output = run("-Xlog:class+load", GramsAndCelsiusOnly.class.getName());

    assertThat(output).contains("730 g", "0.73", "62–65 °C", "10.0 % by mass");
    assertThat(output)
        .anyMatch(line -> line.contains("org.meltwright.units.MetricUnits "))
        .noneMatch(line -> line.contains("org.meltwright.units.UsCustomaryUnits "))
        .noneMatch(line -> line.contains("org.meltwright.units.ImperialUnits "))
        .noneMatch(line -> line.contains("tech.units.indriya.unit.Units "))
        .noneMatch(line -> line.contains("org.hibernate."))
        .noneMatch(line -> line.contains("jakarta.validation."));
  }

  @Test
  void none_of_our_initialisers_takes_ten_times_its_20_milliseconds() throws Exception {
    Map<String, Double> best = new LinkedHashMap<>();
    for (int run = 0; run < 5; run++) {
      initialiserTimes().forEach((name, time) -> best.merge(name, time, Math::min));
    }

    assertThat(best).hasSize(OURS.size());
    assertThat(best).allSatisfy((name, time) -> assertThat(time).isLessThan(MOST_MILLISECONDS));
  }

  /** The machine that runs the tests is busy; the best of several runs is what the code needs. */
  private static Map<String, Double> initialiserTimes() throws Exception {
    List<String> arguments = new ArrayList<>(List.of(InitialiserTimes.class.getName()));
    OURS.forEach(name -> arguments.add("org.meltwright.units." + name));
    Map<String, Double> times = new LinkedHashMap<>();
    for (String line : run(arguments.toArray(String[]::new))) {
      int space = line.indexOf(' ');
      String name = line.substring(space + 1);
      if (name.startsWith("org.meltwright.")) {
        times.put(name, Double.valueOf(line.substring(0, space)));
      }
    }
    return times;
  }

  private static List<String> run(String... arguments) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Dfile.encoding=UTF-8", "-Dstdout.encoding=UTF-8", "-cp", classPath()));
    command.addAll(Arrays.asList(arguments));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(output).isZero();
    return output.lines().collect(Collectors.toList());
  }

  /** The jars that the module needs, found by a class in each. */
  private static String classPath() throws URISyntaxException, IOException, ClassNotFoundException {
    List<String> places = new ArrayList<>(List.of("target/test-classes"));
    for (Class<?> type :
        List.of(
            QuantityKind.class,
            Quantity.class,
            Quantities.class,
            Class.forName("tech.uom.lib.common.function.Nameable"))) {
      places.add(
          Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI()).toString());
    }
    return String.join(System.getProperty("path.separator"), places);
  }
}
