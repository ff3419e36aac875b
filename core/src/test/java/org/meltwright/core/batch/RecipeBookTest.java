// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.meltwright.core.laws.SampleMaterials;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

class RecipeBookTest {

  private static final QuantityParser PARSER = QuantityParser.localeFree();

  private static final RecipeDraft MEDIUM = draft("medium", part("resin", "1"), part("wax", "8"));

  @Test
  void of_draftsInAnyOrder_buildsTheirGraph() {
    RecipeDraft white = draft("cakes", part("medium", "80"), part("white", "20.0"));
    RecipeBook book = RecipeBook.of(List.of(white, MEDIUM), PARSER, RecipeBookTest::material);
    assertThat(book.recipes()).containsOnlyKeys("medium", "cakes");
    assertThat(book.find("cakes").orElseThrow().composition().massFractionValue(WAX))
        .isCloseTo(0.8 * 8 / 9, within(1e-15));
    assertThat(book.find("cakes").orElseThrow().parts().get(0).ingredient().recipe())
        .containsSame(book.find("medium").orElseThrow());
    assertThat(book.find("pink")).isEmpty();
  }

  @Test
  void of_recipeThatContainsItself_namesTheCircle() {
    RecipeDraft own = draft("own", part("own", "1"), part("wax", "1.0"));
    RecipeDraft a = draft("a", part("b", "1"));
    RecipeDraft b = draft("b", part("c", "1"));
    RecipeDraft c = draft("c", part("a", "1"), part("medium", "1"));
    RecipeDraft onTop = draft("on top", part("a", "1"));
    List<Problem> problems = problems(List.of(MEDIUM, own, onTop, a, b, c));
    assertThat(problems).extracting(Problem::code).containsOnly(BatchProblem.CIRCLE);
    assertThat(problems).extracting(Problem::found).containsExactly("own → own", "a → b → c → a");
    assertThat(problems.get(0).path()).isEqualTo("/1/parts");
  }

  @Test
  void of_circle_isToldWithAllOtherProblems() {
    List<Problem> problems =
        problems(
            List.of(
                draft("a", part("b", "1"), part("waxx", "1")),
                draft("b", part("a", "1"), part("wax", "1 kg")),
                draft("c", part("b", "1"), part("wax", "-1"))));
    assertThat(problems)
        .extracting(p -> p.path() + " " + p.code().id())
        .containsExactlyInAnyOrder(
            "/0/parts batch.circle",
            "/0/parts/1/of material.unknown",
            "/1/parts/1/parts number.malformed",
            "/2/parts/1/parts value.out-of-range");
  }

  @Test
  void of_manyMistakes_reportsAllOfThemWithTheirPlace() {
    List<Problem> problems =
        problems(
            Arrays.asList(
                draft(null, part("wax", "1")),
                draft("x", RecipeDraft.PartDraft.named("wax"), part("waxx", "1")),
                draft("x", part("wax", "1")),
                draft("y", part(null, "1"), null),
                draft("z", part("wax", "1").withShare("5 %")),
                draft("zero", part("wax", "0")),
                new RecipeDraft(null, "none", null, null),
                new RecipeDraft(null, "both", "1:8 resin:wax", List.of(part("wax", "1"))),
                new RecipeDraft(null, "ratio", "1:8", null),
                null));
    assertThat(problems)
        .extracting(p -> p.path() + " " + p.code().id())
        .containsExactlyInAnyOrder(
            "/0/name field.missing",
            "/1/parts/0 batch.amount-once",
            "/1/parts/1/of material.unknown",
            "/2/name batch.name-twice",
            "/3/parts/0/of field.missing",
            "/3/parts/1 entry.missing",
            "/4/parts/0 batch.amount-once",
            "/5 mixture.no-parts",
            "/6/parts field.missing",
            "/7 batch.ratio-or-parts",
            "/8/ratio ratio.bare",
            "/9 entry.missing");
  }

  @Test
  void of_ids_areWhatOtherRecipesName_andAreWrittenBack() {
    RecipeDraft medium = new RecipeDraft("m", "Medium", "1:8 resin:wax", null);
    RecipeDraft white = draft("White", part("m", "8"), part("white", "2"));
    RecipeBook book = RecipeBook.of(List.of(white, medium), PARSER, RecipeBookTest::material);
    assertThat(book.recipes()).containsOnlyKeys("m", "White");
    assertThat(book.toDrafts())
        .containsExactly(
            new RecipeDraft("m", "Medium", null, List.of(part("resin", "1"), part("wax", "8"))),
            white);
  }

  @Test
  void of_everyWayToStateAnAmount_isReadAndWrittenBack() {
    RecipeDraft.PartDraft wax = RecipeDraft.PartDraft.named("wax");
    List<RecipeDraft.PartDraft> lines =
        List.of(
            amount("white", "40 g"),
            amount("oil", "60 ml"),
            new RecipeDraft.PartDraft(
                "resin", null, null, null, null, "0.25 g/ml", null, null, "solid", null),
            new RecipeDraft.PartDraft(
                "wax", null, null, null, null, null, "1 l", null, null, null));
    Recipe recipe =
        new RecipeDraft(null, "r", null, lines).toRecipe(PARSER, RecipeBookTest::material);
    assertThat(recipe.toDraft().parts())
        .extracting(p -> "" + p.amount() + p.inEach() + p.upTo() + p.state())
        .containsExactly(
            "40 gnullnullnull",
            "60 mlnullnullsolid",
            "null0.25 g/mlnullsolid",
            "nullnull1000 mlsolid");
    RecipeDraft shares = draft("s", wax.withShare("10 % by volume"), rest("resin"));
    assertThat(shares.toRecipe(PARSER, RecipeBookTest::material).toDraft().parts())
        .extracting(p -> p.share() + " " + p.state() + " " + p.rest())
        .containsExactly("10 % by volume solid null", "null null true");
  }

  private static RecipeDraft.PartDraft amount(String of, String amount) {
    return new RecipeDraft.PartDraft(of, null, null, null, amount, null, null, null, null, null);
  }

  private static RecipeDraft.PartDraft rest(String of) {
    return new RecipeDraft.PartDraft(of, null, null, null, null, null, null, true, null, null);
  }

  @Test
  void toDrafts_whatIsStrainedInMaking_isKept() {
    Losses dirt = Losses.NONE.withInsolubles(SampleMaterials.RESIN, MassFraction.ofPercent(4));
    Recipe medium = Recipe.builder("medium").part(SampleMaterials.RESIN, 1).part(WAX, 8).build();
    Recipe cakes = Recipe.builder("cakes").part(Ingredient.of(medium, dirt), 1).build();
    RecipeBook book = RecipeBook.of(List.of(cakes));
    RecipeBook again = RecipeBook.of(book.toDrafts(), PARSER, RecipeBookTest::material);
    assertThat(again).isEqualTo(book);
    assertThat(again.find("cakes").orElseThrow().parts().get(0).ingredient().losses())
        .isEqualTo(dirt);
  }

  @Test
  void toDrafts_twoMaterialsOfOneIdAndLot_areAProblem() {
    Material other = SampleMaterials.withDensity("wax", 900);
    Recipe both = Recipe.builder("both").part(WAX, 1).part(other, 1).build();
    Problem problem = catchThrowableOfType(ProblemException.class, both::toDraft).problems().get(0);
    assertThat(problem.code()).isEqualTo(MaterialProblem.REFERENCE_SHARED);
    assertThat(problem.found()).isEqualTo("wax");
  }

  @Test
  void of_twoRecipesOfOneName_isAProblem() {
    Recipe one = Recipe.builder("medium").part(WAX, 1).build();
    Recipe other = Recipe.builder("medium").part(SampleMaterials.RESIN, 1).build();
    assertThat(
            catchThrowableOfType(ProblemException.class, () -> RecipeBook.of(List.of(one, other)))
                .problems())
        .extracting(Problem::code)
        .containsExactly(BatchProblem.NAME_TWICE);
  }

  @Test
  void toDraft_volumesWithDensitiesOfOnesOwn_arePartsByMass() {
    DensityBasis own = DensityBasis.SOLID.with(WAX, gramsPerMillilitre(0.9));
    Recipe recipe =
        Recipe.of(
            "own",
            List.of(
                new RecipePart(Ingredient.of(WAX), StatedAmount.volumeParts(3, own)),
                new RecipePart(
                    Ingredient.of(SampleMaterials.RESIN), StatedAmount.volumeParts(1, own))));
    assertThat(recipe.toDraft().toRecipe(PARSER, RecipeBookTest::material)).isEqualTo(recipe);
    assertThat(recipe.toDraft().parts()).noneMatch(part -> part.parts() == null);
  }

  @Test
  @Timeout(10)
  void of_tenThousandLevels_overflowsNothing() {
    List<RecipeDraft> drafts = new ArrayList<>(List.of(draft("0", part("wax", "1"))));
    for (int i = 1; i < 10_000; i++) {
      drafts.add(draft("" + i, part("" + (i - 1), "1"), part("" + (i - 1), "2")));
    }
    Collections.reverse(drafts);
    assertThat(RecipeBook.of(drafts, PARSER, RecipeBookTest::material).recipes()).hasSize(10_000);
    drafts.add(draft("end", part("end", "1")));
    assertThat(problems(drafts)).hasSize(1);
  }

  private static List<Problem> problems(List<RecipeDraft> drafts) {
    return catchThrowableOfType(
            ProblemException.class, () -> RecipeBook.of(drafts, PARSER, RecipeBookTest::material))
        .problems();
  }

  private static RecipeDraft draft(String name, RecipeDraft.PartDraft... parts) {
    return new RecipeDraft(null, name, null, Arrays.asList(parts));
  }

  private static RecipeDraft.PartDraft part(String of, String parts) {
    return RecipeDraft.PartDraft.named(of).withParts(parts);
  }

  private static Material material(String id) {
    return SampleMaterials.all().stream()
        .filter(m -> m.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new ProblemException(Problem.of(MaterialProblem.UNKNOWN, id)));
  }
}
