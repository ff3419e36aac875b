// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.meltwright.units.ProblemException;

class ByMaterialTest {

  private static final Material WAX = Material.builder("wax").build();
  private static final Material OWN_WAX = Material.builder("wax").names("Own wax", "").build();
  private static final Material RESIN = Material.builder("resin").build();

  @Test
  void find_statedOfTheMaterial_holdsForEveryLotAndVersion() {
    ByMaterial<Integer> stated = ByMaterial.<Integer>none().with(WAX, 1);
    assertThat(stated.find(WAX)).hasValue(1);
    assertThat(stated.find(OWN_WAX)).hasValue(1);
    assertThat(stated.find(OWN_WAX.withLot("7"))).hasValue(1);
    assertThat(stated.find(RESIN)).isEmpty();
  }

  @Test
  void find_statedOfALot_goesBeforeTheMaterialAndHoldsForThatLotAlone() {
    ByMaterial<Integer> stated = ByMaterial.<Integer>none().with(WAX.withLot("7"), 7);
    assertThat(stated.find(OWN_WAX.withLot("7"))).hasValue(7);
    assertThat(stated.find(WAX)).isEmpty();
    assertThat(stated.find(WAX.withLot("8"))).isEmpty();
    assertThat(stated.with(WAX, 1).find(WAX.withLot("7"))).hasValue(7);
    assertThat(stated.with(WAX, 1).find(WAX.withLot("8"))).hasValue(1);
  }

  @Test
  void with_sameIdAndLot_replaces() {
    ByMaterial<Integer> stated = ByMaterial.<Integer>none().with(WAX, 1).with(OWN_WAX, 2);
    assertThat(stated.find(WAX)).hasValue(2);
    assertThat(stated).hasToString("{wax=2}");
  }

  @Test
  void of_map_ordersByIdAndLotWhateverTheMap() {
    Map<Material, Integer> map = Map.of(WAX.withLot("8"), 8, RESIN, 1, WAX, 0, WAX.withLot("7"), 7);
    ByMaterial<Integer> stated = ByMaterial.of(map);
    assertThat(stated).hasToString("{resin=1, wax=0, wax (lot 7)=7, wax (lot 8)=8}");
    ByMaterial<Integer> oneByOne =
        ByMaterial.<Integer>none()
            .with(WAX.withLot("7"), 7)
            .with(OWN_WAX, 0)
            .with(WAX.withLot("8"), 8)
            .with(RESIN, 1);
    assertThat(stated).isEqualTo(oneByOne).hasSameHashCodeAs(oneByOne);
    assertThat(stated).isNotEqualTo(oneByOne.with(RESIN, 2));
  }

  @Test
  void of_twoValuesForOneMaterial_isRefusedForNothingTellsWhichHolds() {
    assertThatThrownBy(() -> ByMaterial.of(Map.of(WAX, 1, OWN_WAX, 2)))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems()).hasSize(1);
              assertThat(e.problems().get(0).code()).isEqualTo(MaterialProblem.STATED_TWICE);
              assertThat(e.problems().get(0).found()).isEqualTo("wax");
            });
    assertThat(ByMaterial.of(Map.of(WAX, 1, OWN_WAX, 1)).find(WAX)).hasValue(1);
  }
}
