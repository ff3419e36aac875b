// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.meltwright.core.planning.Need;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.PaintNeed;
import org.meltwright.examples.studio.day.Provisions;

/** What the class of the demo uses, makes, buys and costs; its numbers are worked out anew here. */
class ClassProvisionsTest extends ClassOfTheDemo {

  private static PaintNeed paint(int index) {
    return provisions().paints().get(index);
  }

  private static Provisions provisions() {
    return sheet.provisions().value().orElseThrow();
  }

  /**
   * Arithmetic: 10 × 4 × 0.2 m × 0.2 m = 1.6 m². Wax 955, resin 1080 kg/m³, 8 : 0.96 after
   * insolubles: medium 967. White 8 % by volume of 4170: 1223. Blue with 10 % of paint (72 %
   * pigment of 2340, 28 % oil of 928): 1008. By 75, 15 and 10 % of mass 1003 kg/m³; ten films of
   * 150 µm, four fifths of what is used, are 3.008 kg; 10 × 60 g on top.
   */
  @Test
  void ten_learners_with_four_panels_of_ten_layers_need_3_61_kg() {
    double medium = 1 / (8 / 8.96 / 955 + 0.96 / 8.96 / 1080);
    double white = 0.92 * medium + 0.08 * 4170;
    double paint = 1 / (0.7215 / 2340 + 0.2785 / 928.5);
    double blue = 1 / (0.9 / medium + 0.1 / paint);
    double density = 1 / (0.75 / medium + 0.15 / white + 0.1 / blue);
    double expected = 1.6 * density * 10 * 150e-6 / 0.8 + 10 * 0.060;

    assertThat(provisions().plan().squareMetres()).isCloseTo(1.6, within(1e-12));
    assertThat(provisions().plan().totalKilograms()).isCloseTo(expected, within(0.002));
    assertThat(paint(0).needed()).isCloseTo(0.75 * expected, within(0.002));
    assertThat(paint(1).needed()).isCloseTo(0.10 * expected, within(0.001));
    assertThat(paint(2).needed()).isCloseTo(0.15 * expected, within(0.001));
  }

  /** Blue: 250 g medium and 27.8 g paint, 2 % film loss, leave 272.2 g. */
  @Test
  void what_today_leaves_is_taken_off() {
    assertThat(paint(1).fromToday()).isCloseTo(0.98 * (0.250 + 0.0278), within(1e-4));
    assertThat(paint(1).toMake()).isCloseTo(paint(1).needed() - 0.2722, within(1e-3));
  }

  /**
   * Arithmetic: medium is 8/9 of wax and 1/9 of resin, 4 % of which stay behind; white is 8 % by
   * volume of pigment, blue 10 % by mass of paint; 2 % of each pot stay on it as film.
   */
  @Test
  void the_shelf_has_to_give_the_medium_inside_the_colours_too() {
    double density = 1 / (8 / 8.96 / 955 + 0.96 / 8.96 / 1080);
    double pigment = 0.08 * 4170 / (0.92 * density + 0.08 * 4170);
    double blue = paint(1).toMake() / 0.98;
    double white = paint(2).toMake() / 0.98;
    double medium =
        (paint(0).toMake() + 0.9 * blue + (1 - pigment) * white) / (1 - 0.04 / 9 - 0.02);

    assertThat(need("Beeswax, yellow").neededKilograms()).isCloseTo(8 * medium / 9, within(1e-3));
    assertThat(need("Damar resin").neededKilograms()).isCloseTo(medium / 9, within(1e-3));
    assertThat(need("Oil paint, ultramarine").neededKilograms())
        .isCloseTo(0.1 * blue, within(1e-6));
    assertThat(need("Beeswax, yellow").stockKilograms()).isZero();
  }

  /** 700 g of wax are not there for today: they are bought besides. */
  @Test
  void what_today_lacks_is_bought_too() throws IOException {
    Provisions lacking =
        classOf(json.replace("\"stock\": \"730 g\"", "\"stock\": \"30 g\""))
            .provisions()
            .value()
            .orElseThrow();
    Need before = need("Beeswax, yellow");
    Need after =
        lacking.classNeeds().stream()
            .filter(n -> n.material().equals("Beeswax, yellow"))
            .findFirst()
            .orElseThrow();

    assertThat(after.missingKilograms() - before.missingKilograms()).isCloseTo(0.7, within(1e-6));
  }

  private static Need need(String material) {
    return provisions().classNeeds().stream()
        .filter(n -> n.material().equals(material))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Arithmetic: 2.55 kg wax in bags of 1 kg at 19.80, 90 g of missing resin at 9.75 for 250 g, 6.90
   * freight.
   */
  @Test
  void three_bags_of_wax_and_one_of_resin_are_bought_for_76_05() {
    assertThat(provisions().bought().value().orElseThrow())
        .hasToString("EUR 76.05"); // 59.40 + 9.75 + 6.90
    assertThat(provisions().toBuy().orElseThrow().isProvedOptimal()).isTrue();
    assertThat(run.out()).contains("3 × 1000.0 g for EUR 19.80", "1 × 250.0 g for EUR 9.75");
  }

  /** Arithmetic: (76.05 + 10 × 14 + 420) ÷ 10 = 63.61; × 1.2 = 76.33, up to 80; even at 8. */
  @Test
  void the_fee_covers_a_tenth_of_all_costs_with_a_fifth_on_top() {
    assertThat(run.out())
        .containsPattern("all costs, per head +EUR 63\\.6[01]")
        .containsPattern("fee, rounded up +EUR 80\\.00")
        .containsPattern("even at +8 who learn");
  }

  /** Today leaves some Medium 1:8, and only white, made of it, is in the class. */
  @Test
  void medium_left_today_is_not_made_again_inside_a_colour() throws IOException {
    ClassSheet colours = classOf(onlyWhite(json));
    Provisions makes = colours.provisions().value().orElseThrow();
    double medium = colours.ledger().left("Medium 1:8");
    double pigment = pigmentShare();
    double white = makes.paints().get(0).toMake() / 0.98;
    double pot = ((1 - pigment) * white - medium) / (1 - 0.04 / 9 - 0.02);

    assertThat(medium).isPositive();
    assertThat(makes.leftIntoPaints()).containsOnlyKeys("Medium 1:8");
    assertThat(makes.classNeeds().get(0).neededKilograms()).isCloseTo(8 * pot / 9, within(1e-3));
  }

  private static double pigmentShare() {
    double density = 1 / (8 / 8.96 / 955 + 0.96 / 8.96 / 1080);
    return 0.08 * 4170 / (0.92 * density + 0.08 * 4170);
  }

  private static String onlyWhite(String json) {
    return json.replaceFirst(
        "(?s)\"paints\": \\[\\s+\\{ \"recipe\": \"medium-8\".*?\\{ \"recipe\": \"white\","
            + " \"share\": \"15 %\"",
        "\"paints\": [ { \"recipe\": \"white\", \"share\": \"100 %\"");
  }

  @Test
  void loss_and_tins_that_are_not_stated_are_said_to_count_as_none() throws IOException {
    Run run = runOf(json.replace(", \"loss\": \"20 %\", \"leftInTins\": \"60 g\"", ""));

    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("what is scraped off is not stated and counted as none")
        .contains("what stays in their tins is not stated and counted as none");
  }
}
