// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.day.Times;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.units.Estimate;
import org.meltwright.units.TemperaturePoint;

/** The times on a card: what they are, and what stands in their place where they cannot be told. */
class TimesTest {

  private static final String PLATE =
      "\"kind\": \"hot-plate\", \"setPoint\": \"82 °C\", \"overshoot\": \"6 K\", \"power\": \"1000 W\"";

  private static StudioText wax() {
    return new StudioText()
        .shelf("wax", "beeswax-yellow")
        .shelf("ochre", "red-iron-oxide")
        .alone("plain", "wax")
        .share("red", "ochre", "10 %", "wax")
        .plate(PLATE);
  }

  private static List<Times.Line> times(StudioText studio) throws IOException {
    Sheet sheet = studio.sheet(MaterialCatalogue.standard());
    JobSheet job = sheet.jobs().get(0);
    return Times.of(
        job.job(), job.batch().orElseThrow().batch(), job.pot(), sheet.studio().plans().brushing());
  }

  private static Estimate<Time> time(StudioText studio, String name) throws IOException {
    return line(studio, name).time().value().orElseThrow();
  }

  private static Times.Line line(StudioText studio, String name) throws IOException {
    return times(studio).stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
  }

  /** Arithmetic: the heat of wax and pot from 20 to 80 °C over 30, 45 and 60 % of 1000 W. */
  @Test
  void a_pot_is_molten_at_the_earliest_after_its_heat_at_full_power() throws IOException {
    Sheet sheet = wax().job("plain").sheet(MaterialCatalogue.standard());
    JobSheet job = sheet.jobs().get(0);
    HeatDemand heat =
        HeatDemand.of(
                job.batch().orElseThrow().batch().charge(),
                TemperaturePoint.ofCelsius(20),
                TemperaturePoint.ofCelsius(80),
                HeatAssumptions.TYPICAL)
            .withVessel(job.job().heating().vessel());
    Estimate<Time> molten = time(wax().job("plain"), "times.melted");

    assertThat(molten.centralSi())
        .isCloseTo(heat.totalHeat().centralSi() / 450, within(1e-6 * molten.centralSi()));
    assertThat(molten.lowSi()).isLessThan(heat.totalHeat().centralSi() / 600);
    assertThat(molten.highSi()).isGreaterThan(heat.totalHeat().centralSi() / 300);
  }

  @Test
  void without_the_power_of_its_plate_nobody_knows_when_it_is_molten() throws IOException {
    StudioText studio = wax().plate(PLATE.replace(", \"power\": \"1000 W\"", "")).job("plain");

    assertThat(line(studio, "times.melted").time().saidOrWhy(Say.ENGLISH, t -> "known"))
        .isEqualTo("not known: the power of plate is not stated");
  }

  @Test
  void only_what_holds_a_powder_is_to_be_stirred_again() throws IOException {
    assertThat(times(wax().job("plain"))).extracting(Times.Line::name).doesNotContain("times.stir");
    assertThat(time(wax().job("red"), "times.stir").lowSi()).isPositive();
  }

  @Test
  void a_stroke_is_told_where_the_file_says_what_is_brushed() throws IOException {
    StudioText brushed = wax().job("plain").brushing("plain");

    assertThat(times(wax().job("plain")))
        .extracting(Times.Line::name)
        .doesNotContain("times.brush");
    assertThat(time(brushed, "times.brush").centralSi()).isBetween(1.0, 60.0);
  }

  /** A cake of eight times the volume is twice as thick: more than twice, less than four times. */
  @Test
  void a_thicker_cake_stays_longer_in_its_mould() throws IOException {
    Estimate<Time> small =
        time(wax().job("plain", "\"total\": \"300 g\"", StudioText.CAST), "times.mould");
    Estimate<Time> large =
        time(
            wax().moulds("240 ml").job("plain", "\"total\": \"300 g\"", StudioText.CAST),
            "times.mould");

    assertThat(large.centralSi() / small.centralSi()).isBetween(2.0, 4.0);
    assertThat(small.lowSi()).isLessThan(small.centralSi());
  }

  @Test
  void wax_that_is_read_too_cold_has_no_time_to_brush_or_set() throws IOException {
    StudioText cold =
        wax()
            .reading("45 °C")
            .job("plain", "\"total\": \"300 g\"", StudioText.CAST)
            .brushing("plain");
    for (String name : List.of("times.brush", "times.mould")) {
      assertThat(line(cold, name).time().saidOrWhy(Say.ENGLISH, t -> "known"))
          .isEqualTo("not known: the wax is not molten at what was read");
    }
  }
}
