// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.meltwright.core.thermal.setting.Panel;
import org.meltwright.core.thermal.setting.PanelKind;
import org.meltwright.examples.Output;
import org.meltwright.units.TemperaturePoint;

class HowLongCanIBrushTest {

  @Test
  void prints_what_the_guide_shows() throws IOException {
    String guide = Files.readString(Path.of("../docs/guide/how-long-can-i-brush.md"));
    String output = Output.of(() -> HowLongCanIBrush.main(new String[0]));

    assertThat(guide.replace("\r", "")).contains(output.replace("\r", "").strip());
  }

  @Test
  void warmed_panel_gives_more_than_a_hotter_melt() {
    String output = Output.of(() -> HowLongCanIBrush.main(new String[0]));

    assertThat(seconds(output, "medium 75.0 °C, panel 40.0 °C"))
        .isGreaterThan(seconds(output, "medium 85.0 °C, panel 20.0 °C"));
    assertThat(output).contains("METAL: panel above 55.0 °C");
  }

  @Test
  void gessoed_panel_of_the_guide_is_of_wood_with_a_ground_on_it() {
    Panel gessoed =
        Panel.of(PanelKind.WOOD, 0.010, TemperaturePoint.ofCelsius(20))
            .withGround(PanelKind.PLASTER_GROUND.substance(), 0.0005);

    assertThat(gessoed.surface().effusivity() / gessoed.body().effusivity()).isBetween(2.8, 3.0);
  }

  private static int seconds(String output, String row) {
    Matcher matcher = Pattern.compile(row + ": drags after (\\d+) s").matcher(output);
    assertThat(matcher.find()).as(row).isTrue();
    return Integer.parseInt(matcher.group(1));
  }
}
