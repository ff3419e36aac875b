// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;

class ContentsTest {

  private static final Predicate<Material> OIL = m -> m.family() == MaterialFamily.DRYING_OIL;

  private static Contents of(String mix) {
    return HeatingPlan.of(Plans.mix(mix)).contents();
  }

  private static List<String> ids(List<Material> materials) {
    return materials.stream().map(Material::id).toList();
  }

  @Test
  void materials_anyOrderAndOneOfNothing_areByIdWithoutIt() {
    assertThat(ids(of("damar 1, beeswax-yellow 8, carnauba 0").materials()))
        .containsExactly("beeswax-yellow", "damar");
    assertThat(ids(of("beeswax-yellow 8, carnauba 0, damar 1").materials()))
        .containsExactly("beeswax-yellow", "damar");
  }

  @Test
  void holding_constituent_namesWhatHoldsIt() {
    assertThat(ids(of("beeswax-yellow 9, oil-paint-titanium-white 1").holding(OIL)))
        .containsExactly("oil-paint-titanium-white");
    assertThat(of("beeswax-yellow 9, damar 1").holding(OIL)).isEmpty();
  }

  @Test
  void share_constituentStatedAsARange_isARange() {
    var oil = of("beeswax-yellow 9, oil-paint-titanium-white 1").share(OIL);
    var inPaint = of("oil-paint-titanium-white 1").share(OIL);
    assertThat(oil.low().value()).isLessThan(oil.high().value());
    assertThat(oil.low().value()).isCloseTo(inPaint.low().value() / 10, Offset.offset(1e-12));
    assertThat(oil.high().value()).isCloseTo(inPaint.high().value() / 10, Offset.offset(1e-12));
  }

  @Test
  void share_material_isItsShareWithoutWidth() {
    var damar = of("beeswax-yellow 9, damar 1").share(m -> m.id().equals("damar"));
    assertThat(damar.low()).isEqualTo(damar.high());
    assertThat(damar.high().percent()).isCloseTo(10, Offset.offset(1e-12));
  }
}
