// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.meltwright.core.planning.Need;
import org.meltwright.examples.studio.day.Provisions;

class ClassProperties {

  private static Provisions classOf(int adults, int panels) throws IOException {
    String json =
        Files.readString(Run.STUDIOS.resolve("demo-studio.json"), StandardCharsets.UTF_8)
            .replace("\"adults\": 8", "\"adults\": " + adults)
            .replace("\"perPerson\": 4", "\"perPerson\": " + panels);
    return ClassOfTheDemo.classOf(json).provisions().value().orElseThrow();
  }

  @Property(tries = 30)
  void more_people_never_need_less_of_anything_and_never_pay_less(
      @ForAll @IntRange(min = 0, max = 40) int few,
      @ForAll @IntRange(min = 0, max = 20) int more,
      @ForAll @IntRange(min = 1, max = 6) int panels)
      throws IOException {
    Provisions small = classOf(few, panels);
    Provisions large = classOf(few + more, panels);

    assertThat(large.plan().totalKilograms()).isGreaterThanOrEqualTo(small.plan().totalKilograms());
    for (Need need : small.classNeeds()) {
      assertThat(needed(large, need.material()))
          .as(need.material())
          .isGreaterThanOrEqualTo(need.neededKilograms() - 1e-12);
    }
    assertThat(large.bought().value().orElseThrow())
        .isGreaterThanOrEqualTo(small.bought().value().orElseThrow());
  }

  private static double needed(Provisions sheet, String material) {
    return sheet.classNeeds().stream()
        .filter(n -> n.material().equals(material))
        .mapToDouble(Need::neededKilograms)
        .sum();
  }

  @Property(tries = 30)
  void what_is_bought_covers_what_is_missing(
      @ForAll @IntRange(min = 0, max = 60) int adults,
      @ForAll @IntRange(min = 1, max = 6) int panels)
      throws IOException {
    Provisions sheet = classOf(adults, panels);

    for (Need need : sheet.classNeeds()) {
      double bought =
          sheet.toBuy().stream()
              .flatMap(p -> p.lines().stream())
              .filter(l -> l.offer().material().equals(need.material()))
              .mapToDouble(l -> l.massKilograms())
              .sum();
      assertThat(bought)
          .as(adults + " adults, " + panels + " panels: " + need.material())
          .isGreaterThanOrEqualTo(need.missingKilograms() - 1e-9);
    }
  }
}
