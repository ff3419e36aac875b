// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.thermal.DissolvingBound;
import org.meltwright.core.thermal.MeltingReport;
import org.meltwright.core.thermal.WorkingWindow;
import org.meltwright.examples.page.Block.Picture;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

class TemperatureScaleTest {

  private static final String BEESWAX = "beeswax-yellow";
  private static final HeatingReview REVIEW = Pots.at(88, Pots.mix(BEESWAX, 8, "damar", 1));
  private static final WorkingWindow WINDOW = Pots.window(REVIEW);

  private final Picture picture = TemperatureScale.of(REVIEW, WINDOW);
  private final Element svg = Samples.drawn(picture);

  private static double x(Element line) {
    return Samples.number(line, "x1");
  }

  /** The temperature that a place stands for, read off the numbered ends of the axis. */
  private double celsius(double x) {
    Elements numbers = svg.select("text.soft");
    double low = Double.parseDouble(numbers.first().text());
    double high = Double.parseDouble(numbers.last().text());
    Elements ticks = svg.select("line.tick");
    return low + (x - x(ticks.first())) / (x(ticks.last()) - x(ticks.first())) * (high - low);
  }

  @Test
  void ceilings_stand_where_the_axis_says() {
    svg.select("line.target").forEach(l -> assertThat(celsius(x(l))).isCloseTo(90, within(0.01)));
    svg.select("line.hard").forEach(l -> assertThat(celsius(x(l))).isCloseTo(93.3, within(0.01)));

    assertThat(svg.select("line.target")).hasSizeGreaterThan(5);
  }

  @Test
  void pins_stand_at_the_wax_and_at_the_floor_of_the_pot() {
    assertThat(svg.select("line.pin").stream().map(l -> celsius(x(l))))
        .satisfiesExactly(
            wax -> assertThat(wax).isCloseTo(88, within(0.01)),
            floor -> assertThat(floor).isCloseTo(100, within(0.01)));
  }

  @Test
  void window_is_doubtful_between_its_two_lower_bounds_and_good_up_to_the_target() {
    Element doubtful = svg.selectFirst("rect.doubtful");
    Element good = svg.selectFirst("rect.window");
    double from = Samples.number(good, "x");

    assertThat(celsius(Samples.number(doubtful, "x")))
        .isCloseTo(WINDOW.lowerBound().low().celsius(), within(0.01));
    assertThat(celsius(from)).isCloseTo(WINDOW.lowerBound().high().celsius(), within(0.01));
    assertThat(celsius(from + Samples.number(good, "width"))).isCloseTo(90, within(0.01));
  }

  @Test
  void ranges_of_melting_and_dissolving_are_bars_between_their_ends() {
    MeltingReport report = MeltingReport.of(REVIEW.plan().mix(), TemperatureTable.TARGET);
    TemperatureRange melts = report.melting().get(0).endOfMelting().orElseThrow().value().range();
    TemperatureRange dissolves =
        report.dissolving().stream().findFirst().flatMap(DissolvingBound::shown).orElseThrow();
    Elements bars = svg.select("rect.range");

    for (int i = 0; i < 2; i++) {
      TemperatureRange range = List.of(melts, dissolves).get(i);
      double left = Samples.number(bars.get(i), "x");
      double right = left + Samples.number(bars.get(i), "width");
      assertThat(celsius(left)).as(range.toString()).isCloseTo(range.low().celsius(), within(0.01));
      assertThat(celsius(right)).as("%s", range).isCloseTo(range.high().celsius(), within(0.01));
    }
  }

  /** A resin dissolves in melt below the target; an arrow into the heat would mislead. */
  @Test
  void dissolving_is_drawn_up_to_the_target_and_not_beyond() {
    HeatingReview early = Pots.at(80, Pots.withResinThatDissolvesFrom(70, 78));
    Element drawn = Samples.drawn(TemperatureScale.of(early, Pots.window(early)));
    double target = x(drawn.selectFirst("line.target"));

    assertThat(drawn.select("line.more"))
        .isNotEmpty()
        .allSatisfy(l -> assertThat(Samples.number(l, "x2")).isLessThanOrEqualTo(target));
  }

  @Test
  void unknown_flash_point_is_drawn_as_unknown_and_named() {
    assertThat(svg.select("rect.unknown")).hasSize(1);
    assertThat(svg.text()).contains("Flash point unknown", "?");
    assertThat(picture.alternative()).contains("Flash point unknown: Damar resin");
  }

  @Test
  void known_flash_point_is_said_with_its_distance_of_50_k() {
    TemperaturePoint lowest = REVIEW.lowestFlashPoint().orElseThrow();

    assertThat(picture.alternative())
        .contains(
            "Lowest flash point known: "
                + Wording.celsius(lowest)
                + "; stay below "
                + Wording.celsius(lowest.minus(TemperatureTable.FLASH_MARGIN)));
  }

  @Test
  void unstated_temperature_and_floor_are_unknown_and_not_left_out() {
    HeatingReview nothing = Pots.unstated(Pots.mix(BEESWAX, 1, "damar", 0));
    Picture unknown = TemperatureScale.of(nothing, Pots.window(nothing));

    assertThat(unknown.alternative())
        .contains("Wax: unknown", "Floor of the pot: unknown")
        .doesNotContain("Damar");
    assertThat(Samples.drawn(unknown).select("rect.unknown")).hasSizeGreaterThanOrEqualTo(2);
  }

  @Test
  void floor_without_overshoot_is_at_least_the_set_point() {
    HeatingReview review = Pots.withoutOvershoot(82, Pots.mix(BEESWAX, 1, "damar", 0));

    assertThat(TemperatureScale.of(review, Pots.window(review)).alternative())
        .contains("Floor of the pot: at least 82 °C, how far above is unknown");
  }

  @Test
  void without_pictures_only_figures_of_the_mix_are_said() {
    assertThat(picture.plain())
        .contains("Beeswax, yellow: melts 62 to 65 °C", "dissolves from", "flash point")
        .doesNotContain("Working window", "Target", "Floor");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-20, 5, 60, 88, 93.3, 110, 170, 205, 400})
  void every_reading_is_drawn_on_or_pointed_at_from_the_scale(double celsius) {
    HeatingReview review = Pots.at(celsius, Pots.mix("carnauba", 3, "damar", 1));
    Picture any = TemperatureScale.of(review, Pots.window(review));

    Looks.arePicturesOfOurs(any);
    assertThat(any.alternative()).contains("Wax: " + Wording.celsius(at(celsius)));
    double pin = x(Samples.drawn(any).selectFirst("line.pin"));
    assertThat(pin).isBetween(Degrees.LEFT, Degrees.RIGHT);
  }

  private static TemperaturePoint at(double celsius) {
    return TemperaturePoint.ofCelsius(celsius);
  }
}
