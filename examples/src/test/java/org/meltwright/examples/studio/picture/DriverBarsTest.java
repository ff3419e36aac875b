// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import net.jqwik.api.constraints.Whitespace;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Say;

class DriverBarsTest {

  private static final EstimateInput DEPTH = input("depth", "m", 0.020, 0.030);
  private static final EstimateInput DENSITY = input("density", "kg/m³", 820, 850);

  /** 0.06 m² of it: 0.984 to 1.53 kg; the depth alone makes 0.502 kg of that, the density 0.045. */
  private static final Drivers MASS =
      Drivers.of(
          Symbol.beside(DriverBarsTest.class, "mass", "kg"),
          List.of(DENSITY, DEPTH),
          v -> 0.06 * v.of(DEPTH) * v.of(DENSITY));

  private static EstimateInput input(String name, String unit, double low, double high) {
    return EstimateInput.of(
        Symbol.beside(DriverBarsTest.class, name, unit), low, high, Direction.RAISES);
  }

  @Test
  void the_text_says_what_the_bars_show() {
    assertThat(DriverBars.of(MASS, Say.ENGLISH).alternative())
        .isEqualTo(
            "What decides the mass, all inputs at their worse ends 0.984 to 1.53 kg. By how much"
                + " the range would be narrower if one were known: depth (20 to 30 mm) 92 %, known"
                + " it leaves 1.23 to 1.28 kg; density (820 to 850 kg/m³) 8 %, known it leaves 1"
                + " to 1.5 kg. These shares do not add up to 100 %.");
  }

  @Test
  void bars_are_as_long_as_their_shares_the_longest_first() {
    Element svg = Samples.drawn(DriverBars.of(MASS, Say.in(Locale.GERMAN)));
    List<Double> widths =
        svg.select("rect.needed").stream().map(bar -> Samples.number(bar, "width")).toList();

    assertThat(widths).hasSize(2);
    assertThat(widths.get(0) / Paper.WIDTH).isCloseTo(MASS.ranked().get(0).shrink(), within(1e-3));
    assertThat(widths.get(1) / Paper.WIDTH).isCloseTo(MASS.ranked().get(1).shrink(), within(1e-3));
    assertThat(svg.text()).contains("Was bestimmt", "nicht 100 %");
  }

  @Property(tries = 40)
  void labels_keep_clear_of_each_other(
      @ForAll @Size(min = 1, max = 9)
          List<@AlphaChars @Whitespace @StringLength(min = 1, max = 60) String> names,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double size) {
    List<EstimateInput> inputs =
        IntStream.range(0, names.size())
            .mapToObj(i -> input(names.get(i) + " " + i, "s", size, size * (i + 2)))
            .toList();
    Drivers sum =
        Drivers.of(
            Symbol.beside(DriverBarsTest.class, "sum", "s"),
            inputs,
            v -> inputs.stream().mapToDouble(v::of).sum());

    for (Locale reader : List.of(Locale.ENGLISH, Locale.GERMAN)) {
      Picture picture = DriverBars.of(sum, Say.in(reader));
      Looks.arePicturesOfOurs(picture);
    }
  }
}
