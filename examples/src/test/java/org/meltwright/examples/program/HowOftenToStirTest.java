// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.millimetres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.thermal.settling.MeltBath;
import org.meltwright.core.thermal.settling.StirringInterval;
import org.meltwright.examples.Output;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

class HowOftenToStirTest {

  @Test
  void prints_what_the_guide_shows() throws IOException {
    String guide = Files.readString(Path.of("../docs/guide/how-often-to-stir.md"));
    String output = Output.of(() -> HowOftenToStir.main(new String[0]));

    assertThat(guide.replace("\r", "")).contains(output.replace("\r", "").strip());
  }

  @Test
  void the_densest_of_equal_pieces_comes_first() {
    assertThat(Output.of(() -> HowOftenToStir.main(new String[0])).lines())
        .hasSize(4)
        .first(InstanceOfAssertFactories.STRING)
        .startsWith("Vermilion");
  }

  @Test
  void sizes_of_the_guide_are_of_the_tin_of_its_table() throws IOException {
    String guide = Files.readString(Path.of("../docs/guide/how-often-to-stir.md"));

    assertThat(ofOxide(1e-6).quiet().centralSi() / 60).isBetween(75.5, 76.5);
    assertThat(ofOxide(20e-6).quiet().centralSi()).isBetween(10.5, 11.5);
    assertThat(guide).contains("1 µm", "in 76 minutes", "clumps of 20 µm in eleven seconds");
  }

  @Test
  void interval_of_the_guide_is_about_two_minutes() {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    MeltBath tin = tin();
    StirringInterval interval =
        StirringInterval.of(
            catalogue.require("red-iron-oxide"),
            new QuantityRange<>(QuantityKind.LENGTH, 2e-6, 10e-6),
            VolumeFraction.ofPercent(2),
            tin,
            0.1);

    assertThat(interval.quiet().centralSi() / 60).isBetween(1.5, 3.0);
    assertThat(interval.neverSettles()).isFalse();
  }

  private static MeltBath tin() {
    return MeltBath.of(
        QuantityRange.of(QuantityKind.DENSITY, gramsPerMillilitre(0.82), gramsPerMillilitre(0.85)),
        new QuantityRange<>(QuantityKind.DYNAMIC_VISCOSITY, 0.010, 0.030),
        millimetres(30),
        millimetres(5),
        TemperaturePoint.ofCelsius(80));
  }

  private static StirringInterval ofOxide(double metres) {
    return StirringInterval.of(
        MaterialCatalogue.standard().require("red-iron-oxide"),
        new QuantityRange<>(QuantityKind.LENGTH, metres, metres),
        VolumeFraction.ofPercent(2),
        tin(),
        0.1);
  }
}
