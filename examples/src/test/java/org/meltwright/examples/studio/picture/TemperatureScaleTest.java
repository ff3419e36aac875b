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
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.units.TemperaturePoint;

/** The temperatures of a day: each pot on a strip of its own, all on one scale. */
class TemperatureScaleTest {

  private static final String BEESWAX = "beeswax-yellow";
  private static final HeatingReview REVIEW = Pots.at(88, Pots.mix(BEESWAX, 8, "damar", 1));
  private static final WorkingWindow WINDOW = Pots.window(REVIEW);

  private final Picture picture = picture(REVIEW);
  private final Element svg = Samples.drawn(picture);

  private static Picture picture(HeatingReview... reviews) {
    return TemperatureScale.of(Say.ENGLISH, Pots.named(reviews));
  }

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

  /** The tip of a triangle is its last corner. */
  private static double tip(Element polygon) {
    String[] corners = polygon.attr("points").trim().split("[ ,]+", -1);
    return Double.parseDouble(corners[corners.length - 2]);
  }

  @Test
  void ceilings_stand_where_the_axis_says() {
    svg.select("line.target").forEach(l -> assertThat(celsius(x(l))).isCloseTo(90, within(0.01)));
    svg.select("line.hard").forEach(l -> assertThat(celsius(x(l))).isCloseTo(93.3, within(0.01)));

    assertThat(svg.select("line.target")).hasSize(2); // at its name and on the strip
  }

  @Test
  void a_pin_stands_at_the_wax_and_a_mark_at_the_floor_of_the_pot() {
    assertThat(svg.select("line.pin")).hasSize(1);
    assertThat(celsius(x(svg.selectFirst("line.pin")))).isCloseTo(88, within(0.01));
    assertThat(celsius(tip(svg.selectFirst("polygon.floor")))).isCloseTo(100, within(0.01));
  }

  @Test
  void each_pot_of_the_day_has_its_name_its_pin_and_its_words() {
    HeatingReview cooler = Pots.at(80, Pots.mix(BEESWAX, 8, "damar", 1));
    Picture day = picture(REVIEW, cooler);
    Elements pins = Samples.drawn(day).select("line.pin");

    assertThat(pins).hasSize(2);
    assertThat(x(pins.get(0))).isGreaterThan(x(pins.get(1)));
    assertThat(Samples.drawn(day).select("text.strong").eachText()).contains("pot 1", "pot 2");
    assertThat(day.alternative())
        .contains("pot 1: wax 88.0 °C, measured; floor of the pot up to 100.0 °C")
        .contains("pot 2: wax 80.0 °C, measured");
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

  /** The windows drawn on strips; the key, below the axis, has its own. */
  private static List<Element> windows(Picture picture) {
    Element drawn = Samples.drawn(picture);
    double axis = Samples.number(drawn.selectFirst("line.rule"), "y1");
    return drawn.select("rect.window, rect.doubtful").stream()
        .filter(r -> Samples.number(r, "y") < axis)
        .toList();
  }

  /** Arithmetic: gum turpentine flashes at 30.6 °C, less 50 K is -19.4 °C. */
  @Test
  void nothing_is_good_where_the_pot_may_not_go() {
    HeatingReview turpentine = Pots.at(80, Pots.mix(BEESWAX, 8, "gum-turpentine", 1));
    Picture blocked = picture(turpentine);

    assertThat(turpentine.isBlocked()).isTrue();
    assertThat(turpentine.workingCeiling().celsius()).isCloseTo(-19.4, within(1e-9));
    assertThat(windows(blocked)).isEmpty();
    assertThat(blocked.alternative()).contains("working window closed").doesNotContain("up to 90");
    assertThat(windows(picture)).hasSize(2);
  }

  /** An oil that flashes at 132 °C is kept below 82 °C; at 60 °C nothing blocks. */
  @Test
  void the_good_part_ends_50_k_below_the_lowest_flash_point() {
    HeatingReview review = Pots.at(60, Pots.withOilThatFlashesAt(132));
    Picture drawn = picture(review);
    Element good = windows(drawn).get(1);
    Elements ticks = Samples.drawn(drawn).select("line.tick");
    Elements numbers = Samples.drawn(drawn).select("text.soft");
    double low = Double.parseDouble(numbers.first().text());
    double high = Double.parseDouble(numbers.last().text());
    double perKelvin = (x(ticks.last()) - x(ticks.first())) / (high - low);

    assertThat(review.isBlocked()).isFalse();
    assertThat(review.workingCeiling().celsius()).isCloseTo(82, within(1e-9));
    assertThat(Samples.number(good, "x") + Samples.number(good, "width"))
        .isCloseTo((82 - low) * perKelvin, within(0.02));
  }

  @Test
  void a_pot_that_is_too_hot_has_no_good_part() {
    assertThat(windows(picture(Pots.at(97, Pots.mix(BEESWAX, 8, "damar", 1))))).isEmpty();
  }

  @Test
  void unstated_temperature_and_floor_are_unknown_and_not_left_out() {
    Picture unknown = picture(Pots.unstated(Pots.mix(BEESWAX, 1, "damar", 0)));

    assertThat(unknown.alternative()).contains("wax unknown", "floor of the pot unknown");
    assertThat(Samples.drawn(unknown).select("rect.unknown")).hasSize(1);
    assertThat(Samples.drawn(unknown).text()).contains("?");
  }

  @Test
  void floor_without_overshoot_is_at_least_the_set_point() {
    Picture open = picture(Pots.withoutOvershoot(82, Pots.mix(BEESWAX, 1, "damar", 0)));

    assertThat(open.alternative())
        .contains("floor of the pot at least 82.0 °C; how far it rises above is not known");
    assertThat(Samples.drawn(open).select("line.more, polygon.arrow")).hasSize(2);
    assertThat(svg.select("line.more")).isEmpty();
  }

  /** A mix of which nothing melts has no window to be drawn, and nothing that is good to work. */
  @Test
  void a_window_that_is_not_known_is_called_unknown_and_nothing_is_shaded() {
    HeatingReview review = Pots.at(80, Pots.mix("chalk", 1, "damar", 0));
    Picture none =
        TemperatureScale.of(Say.ENGLISH, List.of(new TemperatureScale.Pot("chalk", review, null)));

    Looks.arePicturesOfOurs(none);
    assertThat(none.alternative()).contains("wax 80.0 °C, measured", "working window unknown");
    assertThat(windows(none)).isEmpty();
  }

  @Test
  void without_pictures_nothing_is_said_again() {
    assertThat(picture.plain()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {76, 88, 93.3, 110, 170, 205, 400})
  void every_reading_is_drawn_on_or_pointed_at_from_the_scale(double celsius) {
    Picture any = picture(Pots.at(celsius, Pots.mix("carnauba", 3, "damar", 1)));

    Looks.arePicturesOfOurs(any);
    assertThat(any.alternative())
        .contains("wax " + Say.ENGLISH.celsius(TemperaturePoint.ofCelsius(celsius)));
    double pin = x(Samples.drawn(any).selectFirst("line.pin"));
    assertThat(pin).isBetween(Degrees.LEFT, Degrees.RIGHT);
  }
}
