// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.kilograms;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.RecipeBook;
import org.meltwright.core.batch.RecipeDraft;
import org.meltwright.core.laws.MixtureArbitraries;
import org.meltwright.core.laws.MixtureLaws;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.QuantityParser;

/** Test an app's own recipe book with the published laws: here a medium and what is made of it. */
class OwnRecipeBookProperties {

  private static final RecipeBook BOOK =
      RecipeBook.of(
          List.of(
              draft("medium", part("damar", "1"), part("beeswax-yellow", "8")),
              draft("harder", part("medium", "95"), part("carnauba", "5")),
              draft("white", part("medium", "8"), part("titanium-white-rutile", "2"))),
          QuantityParser.localeFree(),
          MaterialCatalogue.standard()::require);

  private static RecipeDraft draft(String name, RecipeDraft.PartDraft... parts) {
    return new RecipeDraft(null, name, null, List.of(parts));
  }

  private static RecipeDraft.PartDraft part(String of, String parts) {
    return RecipeDraft.PartDraft.named(of).withParts(parts);
  }

  @Provide
  Arbitrary<Recipe> recipes() {
    return Arbitraries.of(BOOK.recipes().values());
  }

  @Provide
  Arbitrary<Mixture> pots() {
    return recipes()
        .flatMap(r -> MixtureArbitraries.kilograms().map(kg -> new Mixture(r.composition(), kg)));
  }

  @Provide
  Arbitrary<Losses> losses() {
    return MixtureArbitraries.losses();
  }

  @Property
  void sharesOfEveryRecipeSumToOne(@ForAll("recipes") Recipe recipe) {
    MixtureLaws.sharesSumToOne(recipe.composition());
  }

  @Property
  void everyRecipeComesBackFromItsVolumes(@ForAll("recipes") Recipe recipe) {
    MixtureLaws.massToVolumeToMassReturns(recipe.composition(), DensityBasis.SOLID);
    MixtureLaws.massToVolumeToMassReturns(recipe.composition(), DensityBasis.MELT);
  }

  @Property
  void everyBatchAddsUpAndLeadsBackFromItsNetAmount(
      @ForAll("recipes") Recipe recipe, @ForAll("losses") Losses losses) {
    Batch batch = Batch.ofTotal(recipe, kilograms(1000), losses);
    MixtureLaws.batchAddsUp(batch);
    MixtureLaws.netLeadsBackToTheCharge(batch);
  }

  @Property
  void meltingPotsTogetherConservesEveryMaterial(
      @ForAll("pots") Mixture one, @ForAll("pots") Mixture other) {
    MixtureLaws.blendingConservesMass(List.of(one, other));
    MixtureLaws.orderOfBlendingDoesNotMatter(List.of(one, other));
  }

  @Property
  void moreWaxNeverLowersItsShare(@ForAll("pots") Mixture pot) {
    MixtureLaws.addingNeverLowersAShare(
        pot, MaterialCatalogue.standard().require("beeswax-yellow"), pot.massKilograms());
  }

  @Example
  void harderMediumHoldsFivePerCentOfHardWaxAndOneInNineOfTheRestAsResin() {
    Composition harder = BOOK.find("harder").orElseThrow().composition();

    assertThat(share(harder, "carnauba")).isCloseTo(0.05, within(1e-12));
    assertThat(share(harder, "damar")).isCloseTo(0.95 / 9, within(1e-12));
  }

  private static double share(Composition mix, String material) {
    return mix.massFractionValue(MaterialCatalogue.standard().require(material));
  }
}
