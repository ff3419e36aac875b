// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.RecipeBook;
import org.meltwright.core.batch.RecipeDraft;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselDraft;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.units.FieldReader;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;
import tools.jackson.databind.json.JsonMapper;

/** Save and load. */
public final class SaveAndLoad {

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .changeDefaultPropertyInclusion(
              all -> all.withValueInclusion(JsonInclude.Include.NON_NULL))
          .build();

  private SaveAndLoad() {}

  /**
   * What an app keeps in its file: drafts put together.
   *
   * @param pot the pot
   * @param recipes the recipes
   */
  public record ShelfDraft(@Nullable VesselDraft pot, @Nullable List<RecipeDraft> recipes) {

    /**
     * Returns what the file holds.
     *
     * @param parser reads the quantities
     * @return the shelf
     * @throws ProblemException with all problems, each at its place in the file
     */
    public Shelf toShelf(QuantityParser parser) {
      FieldReader at = FieldReader.of(parser);
      var vessel = at.read("pot", pot, draft -> draft.toVessel(parser));
      var book =
          at.read(
              "recipes",
              recipes,
              all -> RecipeBook.of(all, parser, MaterialCatalogue.standard()::require));
      return at.make(() -> new Shelf(vessel.get(), book.get()));
    }
  }

  /**
   * What the app works with.
   *
   * @param pot the pot
   * @param recipes the recipes
   */
  public record Shelf(Vessel pot, RecipeBook recipes) {

    /**
     * Returns this shelf as it is written down.
     *
     * @return the draft
     */
    public ShelfDraft toDraft() {
      return new ShelfDraft(pot.toDraft(), recipes.toDrafts());
    }
  }

  /**
   * Prints a file that was typed, as it is saved, and what is wrong with another.
   *
   * @param args none
   */
  public static void main(String[] args) {
    ShelfDraft typed =
        new ShelfDraft(
            new VesselDraft("pot", "enamelled-steel", "enamel", "flat", "1,5 l", "600 g"),
            List.of(
                new RecipeDraft("medium", "Medium", "1:8 damar:beeswax-yellow", null),
                new RecipeDraft(
                    null,
                    "white cakes",
                    null,
                    List.of(
                        RecipeDraft.PartDraft.named("medium").withShare("90 %"),
                        RecipeDraft.PartDraft.named("titanium-white-rutile").withShare("10 %")))));
    Shelf shelf = typed.toShelf(QuantityParser.withDecimalComma());

    String saved = JSON.writeValueAsString(shelf.toDraft());
    System.out.println(saved);
    Shelf loaded = JSON.readValue(saved, ShelfDraft.class).toShelf(QuantityParser.localeFree());
    System.out.println("the same: " + loaded.equals(shelf));

    String damaged =
        saved.replace("1500 ml", "1500").replace("\"of\":\"damar", "\"of\":\"dammar resn");
    try {
      JSON.readValue(damaged, ShelfDraft.class).toShelf(QuantityParser.localeFree());
    } catch (ProblemException e) {
      e.problems().forEach(p -> System.out.println(p.path() + ": " + p.what(Locale.ENGLISH)));
    }
  }
}
