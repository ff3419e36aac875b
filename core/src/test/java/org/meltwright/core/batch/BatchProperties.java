// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.millilitres;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.laws.MixtureArbitraries;
import org.meltwright.units.MassFraction;
import org.meltwright.units.VolumeFraction;

class BatchProperties {

  private static final List<Balance> BALANCES =
      List.of(
          Balance.of("kitchen", grams(5000), grams(1)), Balance.of("fine", grams(200), grams(0.1)));

  @Provide
  Arbitrary<Recipe> recipes() {
    return MixtureArbitraries.recipes();
  }

  @Property
  void printedTotalStaysWithinHalfTheCoarsestInterval(
      @ForAll("recipes") Recipe recipe, @ForAll @DoubleRange(min = 1, max = 20000) double total) {
    WeighingSheet sheet =
        WeighingSheet.of(Batch.ofTotal(recipe, grams(total), Losses.NONE), BALANCES);
    double coarsest =
        sheet.lines().stream().mapToDouble(l -> l.balance().intervalKilograms()).max().orElse(0);
    assertThat(sheet.printedTotalKilograms())
        .isCloseTo(sheet.exactTotalKilograms(), within(coarsest / 2 * (1 + 1e-6)));
  }

  @Property
  void aBatchForSomeCakesCastsThatMany(
      @ForAll("recipes") Recipe recipe,
      @ForAll @IntRange(min = 1, max = 500) int cakes,
      @ForAll @DoubleRange(min = 5, max = 300) double cup) {
    Mould mould = Mould.of("tin", VesselMaterial.STEEL, 12, millilitres(cup));
    VolumeFraction fill = VolumeFraction.ofPercent(80);
    Casting one = Casting.of(grams(1), mould, fill, gramsPerMillilitre(0.86));
    Losses losses = Losses.NONE.withFilm(grams(18), MassFraction.ofPercent(2));
    Batch batch = Batch.ofCakes(recipe, cakes, one.cake(), losses);
    Casting casting = Casting.of(batch.net().mass(), mould, fill, gramsPerMillilitre(0.86));
    assertThat(casting.wholeCakes()).isEqualTo(cakes);
    assertThat(casting.partCakeKilograms()).isCloseTo(0, within(1e-9));
  }
}
