// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.thermal.melting.DissolvingBound;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingLimits;
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

  /** Arithmetic: gum turpentine flashes at 30.6 °C, less 50 K is -19.4 °C. */
  @Test
  void nothing_is_good_where_the_pot_may_not_go() {
    HeatingReview turpentine = Pots.at(80, Pots.mix(BEESWAX, 8, "gum-turpentine", 1));
    Picture blocked = TemperatureScale.of(turpentine, Pots.window(turpentine));

    assertThat(turpentine.isBlocked()).isTrue();
    assertThat(turpentine.workingCeiling().celsius()).isCloseTo(-19.4, within(1e-9));
    assertThat(Samples.drawn(blocked).select("rect.good, rect.window, rect.doubtful")).isEmpty();
    assertThat(blocked.alternative())
        .contains("Working window: closed", "stay below -19.4 °C")
        .doesNotContain("up to 90");
    assertThat(svg.select("rect.good")).hasSizeGreaterThan(3);
  }

  /** An oil that flashes at 132 °C is kept below 82 °C; at 60 °C nothing blocks. */
  @Test
  void the_good_part_ends_50_k_below_the_lowest_flash_point() {
    HeatingReview review = Pots.at(60, Pots.withOilThatFlashesAt(132));
    Element drawn = Samples.drawn(TemperatureScale.of(review, Pots.window(review)));
    double limit = x(drawn.select("line.hard").last());

    assertThat(review.isBlocked()).isFalse();
    assertThat(review.workingCeiling().celsius()).isCloseTo(82, within(1e-9));
    assertThat(drawn.select("rect.good, rect.window"))
        .hasSizeGreaterThan(3)
        .allSatisfy(
            good ->
                assertThat(Samples.number(good, "x") + Samples.number(good, "width"))
                    .isCloseTo(limit, within(0.02)));
  }

  @Test
  void a_pot_that_is_too_hot_has_no_good_part() {
    HeatingReview hot = Pots.at(97, Pots.mix(BEESWAX, 8, "damar", 1));

    assertThat(
            Samples.drawn(TemperatureScale.of(hot, Pots.window(hot)))
                .select("rect.good, rect.window"))
        .isEmpty();
  }

  @Test
  void ranges_of_melting_and_dissolving_are_bars_between_their_ends() {
    MeltingReport report = MeltingReport.of(REVIEW.plan().mix(), HeatingLimits.standard().target());
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
    HeatingReview review = Pots.at(88, Pots.withStuffOfUnknownFlashPoint());
    Picture picture = TemperatureScale.of(review, Pots.window(review));
    Element svg = Samples.drawn(picture);

    assertThat(svg.select("rect.unknown")).hasSize(1);
    assertThat(svg.text()).contains("Flash point unknown", "?");
    assertThat(picture.alternative()).contains("Flash point unknown: Own stuff");
  }

  @Test
  void known_flash_point_that_does_not_bind_is_no_temperature_to_stay_below() {
    TemperaturePoint lowest = REVIEW.lowestFlashPoint().orElseThrow();

    assertThat(picture.alternative())
        .contains(
            "Lowest flash point known: "
                + Say.celsius(lowest)
                + "; its margin begins at "
                + Say.celsius(TemperatureTable.STANDARD.flashLimit(lowest)))
        .doesNotContain("stay below");
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
        .contains("Floor of the pot: at least 82.0 °C; how far it rises above is not known");
  }

  /** A mix of which nothing melts has no window to be drawn, and nothing that is good to work. */
  @Test
  void a_window_that_is_not_known_is_a_question_mark_and_nothing_is_shaded() {
    HeatingReview review = Pots.at(80, Pots.mix("chalk", 1, "damar", 0));
    Picture none = TemperatureScale.of(review);

    Looks.arePicturesOfOurs(none);
    assertThat(none.alternative()).contains("Wax: 80.0 °C, measured", "Working window: unknown");
    assertThat(Samples.drawn(none).select("rect.good, rect.window, rect.doubtful")).isEmpty();
    assertThat(Samples.drawn(none).select("rect.unknown")).isNotEmpty();
  }

  @Test
  void without_pictures_only_figures_of_the_mix_are_said() {
    assertThat(picture.plain())
        .contains("Beeswax, yellow: melts 62 to 65 °C", "dissolves from", "flash point")
        .doesNotContain("Working window", "Target", "Floor");
  }

  @ParameterizedTest
  @ValueSource(doubles = {76, 88, 93.3, 110, 170, 205, 400})
  void every_reading_is_drawn_on_or_pointed_at_from_the_scale(double celsius) {
    HeatingReview review = Pots.at(celsius, Pots.mix("carnauba", 3, "damar", 1));
    Picture any = TemperatureScale.of(review, Pots.window(review));

    Looks.arePicturesOfOurs(any);
    assertThat(any.alternative()).contains("Wax: " + Say.celsius(at(celsius)));
    double pin = x(Samples.drawn(any).selectFirst("line.pin"));
    assertThat(pin).isBetween(Degrees.LEFT, Degrees.RIGHT);
  }

  private static TemperaturePoint at(double celsius) {
    return TemperaturePoint.ofCelsius(celsius);
  }
}
