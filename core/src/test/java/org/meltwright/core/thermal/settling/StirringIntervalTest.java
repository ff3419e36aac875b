// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.settling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.thermal.TestMaterials;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

class StirringIntervalTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();
  private static final MeltBath POT =
      TestMaterials.pot(820, 820, 0.012, 0.012, 0.05, 0.005, TemperaturePoint.ofCelsius(80));

  private static StirringInterval interval(Material material, double low, double high) {
    return StirringInterval.of(
        material,
        new QuantityRange<>(QuantityKind.LENGTH, low, high),
        VolumeFraction.ZERO,
        POT,
        0.1);
  }

  @Test
  void pieces_decide_more_than_density() {
    Material oxide = CATALOGUE.require("red-iron-oxide");
    double fine = interval(oxide, 1e-6, 1e-6).quiet().centralSi();
    double clumped = interval(oxide, 20e-6, 20e-6).quiet().centralSi();

    assertThat(fine / 60).isCloseTo(43, within(2.0));
    assertThat(clumped).isCloseTo(6.4, within(0.3));
  }

  @Test
  void byNeed_puts_the_heaviest_of_equal_pieces_first() {
    StirringInterval white = interval(CATALOGUE.require("titanium-white-rutile"), 2e-6, 2e-6);
    StirringInterval oxide = interval(CATALOGUE.require("red-iron-oxide"), 2e-6, 2e-6);
    StirringInterval blue = interval(CATALOGUE.require("ultramarine-blue"), 2e-6, 2e-6);

    assertThat(StirringInterval.byNeed(List.of(blue, white, oxide)))
        .containsExactly(oxide, white, blue);
  }

  @Test
  void very_small_pieces_never_settle() {
    Material white = CATALOGUE.require("titanium-white-rutile");

    assertThat(interval(white, 5e-9, 1e-8).neverSettles()).isTrue();
    assertThat(interval(white, 1e-6, 2e-6).neverSettles()).isFalse();
    assertThat(interval(white, 5e-9, 1e-8).explanation().text(Locale.ENGLISH))
        .contains("do not settle");
  }

  @Test
  void quietLoss_adds_up_size_classes_and_stops_at_all_of_them() {
    double[] shares = {0.5, 0.3, 0.2};
    double[] velocities = {1e-6, 1e-5, 1e-4};

    assertThat(Settling.quietLoss(shares, velocities, 0.005, 100))
        .isCloseTo(0.5 * 0.02 + 0.3 * 0.2 + 0.2, within(1e-12));
    assertThat(Settling.quietLoss(shares, velocities, 0.005, 1e6)).isEqualTo(1);
  }

  @Test
  void explanation_gives_both_pots() {
    assertThat(
            interval(CATALOGUE.require("red-iron-oxide"), 1e-6, 2e-6)
                .explanation()
                .text(Locale.ENGLISH))
        .contains("time between two stirrings, quiet (central) = ")
        .contains("time between two stirrings, mixed (central) = ")
        .contains(" mm/h\n");
  }
}
