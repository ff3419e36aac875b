// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.material.Material;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.Room;

/**
 * A studio as its file describes it, with every name resolved.
 *
 * @param about who and where
 * @param place where it is and who works
 * @param shelf the materials at hand
 * @param balances the balances
 * @param recipes what is known of its recipes beside themselves
 * @param jobs what is to be made today
 * @param offers ready-made offers by recipe id
 * @param plans what is brushed, and the class that is to be held
 */
public record Studio(
    About about,
    Place place,
    List<ShelfItem> shelf,
    List<Balance> balances,
    Recipes recipes,
    List<Job> jobs,
    Map<String, ReadyMade> offers,
    Plans plans) {

  /**
   * Who and where.
   *
   * @param name the studio's name
   * @param town the town
   * @param currency the currency of all prices
   * @param perKilowattHour the price of a kilowatt hour; null if not stated
   * @param perHour the worth of an hour of work; null if not stated
   * @param date the day that the file is for; empty if not stated
   */
  public record About(
      String name,
      String town,
      CurrencyUnit currency,
      @Nullable Money perKilowattHour,
      @Nullable Money perHour,
      Optional<LocalDate> date) {}

  /**
   * Where it is and who works, as far as stated.
   *
   * @param room the room; null if not stated
   * @param people who works; null if not stated
   */
  public record Place(@Nullable Room room, @Nullable People people) {}

  /**
   * What is known of recipes beside themselves.
   *
   * @param unknownShares why the shares by mass of some are not known
   * @param chosen those that were found for wishes, by id
   * @param leftovers what is left of earlier batches, by the name of the recipe, in kg
   */
  public record Recipes(
      Map<Recipe, NotKnown> unknownShares,
      Map<String, Chosen> chosen,
      Map<String, Double> leftovers) {

    public Recipes {
      unknownShares = Map.copyOf(unknownShares);
      chosen = Map.copyOf(chosen);
      leftovers = Map.copyOf(leftovers);
    }
  }

  /**
   * What is planned beside the day's jobs, as far as stated.
   *
   * @param brushing what is brushed on which panel; null if not stated
   * @param classDay the class; null if none is held
   */
  public record Plans(@Nullable Known<Brushing> brushing, @Nullable ClassDay classDay) {}

  public Studio {
    shelf = List.copyOf(shelf);
    balances = List.copyOf(balances);
    jobs = List.copyOf(jobs);
    offers = Map.copyOf(offers);
  }

  /** The shelf item of a material. */
  Optional<ShelfItem> item(Material material) {
    return shelf.stream().filter(i -> i.material().isMeantBy(material)).findFirst();
  }

  /** What is weighed out comes from the shelf; what another recipe makes has no shelf item. */
  Optional<ShelfItem> item(Ingredient ingredient) {
    return ingredient.material().flatMap(this::item);
  }

  /** Why the shares by mass of a recipe are not known; empty if they are. */
  Optional<NotKnown> unknownShares(Recipe recipe) {
    return Optional.ofNullable(recipes.unknownShares.get(recipe));
  }

  /** The recipe with an id as it was found for wishes; empty if it was written down. */
  Optional<Chosen> chosen(String recipeId) {
    return Optional.ofNullable(recipes.chosen.get(recipeId));
  }

  /** What each item of the shelf leaves behind when it is dissolved. */
  Losses insolubles() {
    return ShelfItem.leftBehind(shelf);
  }

  /** A shelf item has its balance; what another recipe makes goes on the one that carries most. */
  Balance balance(Ingredient ingredient) {
    return item(ingredient).map(ShelfItem::balance).orElseGet(() -> largest(balances));
  }

  /**
   * Returns the balance that carries most.
   *
   * @param balances the balances, at least one
   * @return the one
   */
  public static Balance largest(List<Balance> balances) {
    return balances.stream()
        .max(Comparator.comparingDouble(Balance::capacityKilograms))
        .orElseThrow();
  }
}
