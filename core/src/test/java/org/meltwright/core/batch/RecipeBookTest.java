// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.WAX;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.meltwright.core.laws.SampleMaterials;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

class RecipeBookTest {

  private static final RecipeDraft MEDIUM =
      new RecipeDraft("medium", List.of(shelf("resin", 1.0), shelf("wax", 8.0)));

  @Test
  void of_draftsInAnyOrder_buildsTheirGraph() {
    RecipeDraft white = new RecipeDraft("white", List.of(made("medium", 80), shelf("white", 20.0)));
    RecipeBook book = RecipeBook.of(List.of(white, MEDIUM), RecipeBookTest::material);
    assertThat(book.recipes()).containsOnlyKeys("medium", "white");
    assertThat(book.find("white").orElseThrow().composition().massFractionValue(WAX))
        .isCloseTo(0.8 * 8 / 9, within(1e-15));
    assertThat(book.find("white").orElseThrow().parts().get(0).ingredient().recipe())
        .containsSame(book.find("medium").orElseThrow());
    assertThat(book.find("pink")).isEmpty();
  }

  @Test
  void of_recipeThatContainsItself_namesTheCircle() {
    RecipeDraft own = new RecipeDraft("own", List.of(made("own", 1), shelf("wax", 1.0)));
    RecipeDraft a = new RecipeDraft("a", List.of(made("b", 1)));
    RecipeDraft b = new RecipeDraft("b", List.of(made("c", 1)));
    RecipeDraft c = new RecipeDraft("c", List.of(made("a", 1), made("medium", 1)));
    RecipeDraft onTop = new RecipeDraft("on top", List.of(made("a", 1)));
    List<Problem> problems = problems(List.of(MEDIUM, own, onTop, a, b, c));
    assertThat(problems).extracting(Problem::code).containsOnly(BatchProblem.CIRCLE);
    assertThat(problems).extracting(Problem::found).containsExactly("own → own", "a → b → c → a");
    assertThat(problems.get(0).path()).isEqualTo("/1/parts");
  }

  @Test
  void of_manyMistakes_reportsAllOfThemWithTheirPlace() {
    List<Problem> problems =
        problems(
            List.of(
                new RecipeDraft(null, List.of(shelf("wax", 1.0))),
                new RecipeDraft("x", List.of(shelf("wax", null), shelf("waxx", 1.0))),
                new RecipeDraft("x", List.of(shelf("wax", 1.0))),
                new RecipeDraft("y", List.of(new RecipePartDraft(null, null, 1.0))),
                new RecipeDraft("z", List.of(made("nowhere", 1), shelf("wax", -1.0))),
                new RecipeDraft("zero", List.of(shelf("wax", 0.0))),
                new RecipeDraft("none", null),
                new RecipeDraft("nan", List.of(shelf("wax", Double.NaN)))));
    assertThat(problems)
        .extracting(p -> p.path() + " " + p.code().id())
        .containsExactlyInAnyOrder(
            "/0/name batch.name-missing",
            "/1/parts/0/parts batch.parts-missing",
            "/1/parts/1/material " + MaterialProblem.UNKNOWN.id(),
            "/2/name batch.name-twice",
            "/3/parts/0 batch.one-of-two",
            "/4/parts/0/recipe batch.unknown-recipe",
            "/4/parts/1/parts value.out-of-range",
            "/5 mixture.no-parts",
            "/6 batch.no-parts",
            "/7/parts/0/parts number.not-finite");
  }

  @Test
  @Timeout(10)
  void of_tenThousandLevels_overflowsNothing() {
    List<RecipeDraft> drafts =
        new ArrayList<>(List.of(new RecipeDraft("0", List.of(shelf("wax", 1.0)))));
    for (int i = 1; i < 10_000; i++) {
      drafts.add(new RecipeDraft("" + i, List.of(made("" + (i - 1), 1), made("" + (i - 1), 2))));
    }
    Collections.reverse(drafts);
    assertThat(RecipeBook.of(drafts, RecipeBookTest::material).recipes()).hasSize(10_000);
    drafts.add(new RecipeDraft("end", List.of(made("end", 1))));
    assertThat(problems(drafts)).hasSize(1);
  }

  private static List<Problem> problems(List<RecipeDraft> drafts) {
    return catchThrowableOfType(
            ProblemException.class, () -> RecipeBook.of(drafts, RecipeBookTest::material))
        .problems();
  }

  private static RecipePartDraft shelf(String material, Double parts) {
    return new RecipePartDraft(material, null, parts);
  }

  private static RecipePartDraft made(String recipe, double parts) {
    return new RecipePartDraft(null, recipe, parts);
  }

  private static Optional<Material> material(String id) {
    return SampleMaterials.all().stream().filter(m -> m.id().equals(id)).findFirst();
  }
}
