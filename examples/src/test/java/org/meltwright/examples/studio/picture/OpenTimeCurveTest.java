// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.meltwright.core.thermal.setting.OpenTimeTable;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.units.TemperaturePoint;

class OpenTimeCurveTest {

  private static final OpenTimeTable TABLE =
      Samples.openTimes(Samples.points(75, 85), Samples.points(40, 20, 55));

  @Test
  void panels_stand_from_cold_to_warm_at_even_distance_for_each_kelvin() {
    Elements ticks = Samples.drawn(OpenTimeCurve.of(Say.ENGLISH, TABLE)).select("line.tick");
    double at20 = Samples.number(ticks.get(0), "x1");
    double at40 = Samples.number(ticks.get(1), "x1");
    double at55 = Samples.number(ticks.get(2), "x1");

    assertThat((at55 - at40) / (at40 - at20))
        .as("%s, %s, %s", at20, at40, at55)
        .isCloseTo(15.0 / 20, within(1e-3));
  }

  @Test
  void whiskers_reach_from_the_low_to_the_high_estimate() {
    Element svg = Samples.drawn(OpenTimeCurve.of(Say.ENGLISH, TABLE));
    TimeAxis axis = TimeAxis.of(List.of(TABLE.halfSet(0, 1), TABLE.halfSet(1, 2)));
    Element whisker = svg.select("line.whisker").get(0);
    double drawn = Samples.number(whisker, "y1") - Samples.number(whisker, "y2");

    assertThat(drawn)
        .isCloseTo(
            axis.below(TABLE.halfSet(0, 1).lowSi()) - axis.below(TABLE.halfSet(0, 1).highSi()),
            within(0.02));
  }

  @Test
  void each_melt_has_a_line_of_its_own_style_and_a_band() {
    Element svg = Samples.drawn(OpenTimeCurve.of(Say.ENGLISH, TABLE));

    assertThat(svg.select("polyline").eachAttr("class"))
        .containsExactly("curve dash-0", "curve dash-1");
    assertThat(svg.select("polygon.band")).hasSize(2);
  }

  @Test
  void alternative_says_each_time_with_its_range() {
    Picture picture = OpenTimeCurve.of(Say.ENGLISH, TABLE);

    assertThat(picture.alternative())
        .contains("Time until a stroke drags. Melt at 75.0 °C: on a panel at 20.0 °C ")
        .contains("55.0 °C " + Say.ENGLISH.time(TABLE.halfSet(1, 2))) // two figures: it is rough
        .contains(" 58 s (15 s to ");
  }

  @Test
  void a_panel_so_warm_that_nothing_sets_has_no_end_and_says_so() {
    Picture picture =
        OpenTimeCurve.of(
            Say.ENGLISH,
            Samples.openTimes(
                Samples.points(85), Samples.points(20, 80), TemperaturePoint.ofCelsius(80)));

    assertThat(picture.alternative()).contains("no end");
    assertThat(Samples.drawn(picture).text()).contains("no end");
  }

  @Test
  void one_panel_only_is_drawn_too() {
    OpenTimeTable one = Samples.openTimes(Samples.points(85), Samples.points(20));

    assertThat(Samples.drawn(OpenTimeCurve.of(Say.ENGLISH, one)).select("circle")).hasSize(2);
  }

  @Test
  void no_panel_is_refused() {
    OpenTimeTable none = new OpenTimeTable(List.of(), List.of(), List.of());

    assertThatIllegalArgumentException().isThrownBy(() -> OpenTimeCurve.of(Say.ENGLISH, none));
  }
}
