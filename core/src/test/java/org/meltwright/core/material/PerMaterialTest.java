// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What follows from a material is worked out once for each object, and kept with it. */
class PerMaterialTest {

  private final List<Material> asked = new ArrayList<>();
  private final PerMaterial<String> shouted =
      PerMaterial.of(
          material -> {
            asked.add(material);
            return material.id() + "!";
          });

  @Test
  void get_askedAgain_isNotWorkedOutAgain() {
    Material wax = Material.builder("wax").build();
    assertThat(shouted.get(wax)).isEqualTo("wax!").isSameAs(shouted.get(wax));
    assertThat(asked).hasSize(1);
  }

  @Test
  void get_ofAnotherObjectOfTheSameId_isWorkedOutForIt() {
    Material one = Material.builder("wax").build();
    Material other = Material.builder("wax").names("hard wax", "Hartwachs").build();
    PerMaterial<String> name = PerMaterial.of(m -> m.name(Locale.ENGLISH));
    assertThat(name.get(one)).isEqualTo("wax");
    assertThat(name.get(other)).isEqualTo("hard wax");
  }

  @Test
  void two_things_asked_of_one_material_are_kept_apart() {
    Material wax = Material.builder("wax").build();
    PerMaterial<Integer> length = PerMaterial.of(m -> shouted.get(m).length());
    assertThat(length.get(wax)).isEqualTo(4);
    assertThat(shouted.get(wax)).isEqualTo("wax!");
  }
}
