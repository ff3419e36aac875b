// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.meltwright.core.laws.MixtureArbitraries;
import org.meltwright.core.laws.MixtureLaws;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;

/** How an app runs the laws on its own materials: here some of the catalogue. */
class OwnMaterialsProperties {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();

  @Provide
  Arbitrary<Composition> mixes() {
    return MixtureArbitraries.compositions(
        List.of(
            CATALOGUE.require("beeswax-yellow"),
            CATALOGUE.require("carnauba"),
            CATALOGUE.require("damar"),
            CATALOGUE.require("titanium-white-rutile")));
  }

  @Property
  void massToVolumeToMassReturnsWhatItWas(@ForAll("mixes") Composition mix) {
    MixtureLaws.massToVolumeToMassReturns(mix, DensityBasis.SOLID);
    MixtureLaws.massToVolumeToMassReturns(mix, DensityBasis.MELT);
  }

  @Property
  void blendingConservesTheMassOfEveryMaterial(
      @ForAll("mixes") Composition one, @ForAll("mixes") Composition other) {
    MixtureLaws.blendingConservesMass(List.of(new Mixture(one, 0.3), new Mixture(other, 0.5)));
  }
}
