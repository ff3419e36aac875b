// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import java.util.Locale;

/**
 * What to weigh as plain data: any JSON library writes it.
 *
 * <pre>{@code
 * MaterialCatalogue catalogue = MaterialCatalogue.standard();
 * Recipe medium =
 *     Recipe.ofRatio(
 *         "medium",
 *         new MixingRatio(1, 8, "resin", "wax"),
 *         Map.of(
 *             "resin", catalogue.require("damar"), "wax", catalogue.require("beeswax-yellow")));
 * Batch batch = Batch.ofTotal(medium, grams(820), Losses.NONE);
 * Balance kitchen = Balance.of("kitchen balance", grams(5000), grams(1));
 *
 * WeighingSheetData data =
 *     WeighingSheetData.of(WeighingSheet.of(batch, List.of(kitchen)), Locale.ENGLISH);
 * data.lines().get(0).printedKilograms(); // 0.729
 * data.printedTotalKilograms(); // 0.820
 * }</pre>
 *
 * <p>Printed masses are those to show; all others are full numbers, for the reader to round.
 *
 * <p>Immutable and thread-safe.
 *
 * @param recipe the name of the recipe
 * @param lines the lines in the order of weighing, at least one
 * @param exactTotalKilograms the exact mass of all lines, in kg
 * @param printedTotalKilograms the sum of the printed masses, in kg
 * @param exactNetKilograms what the exact masses leave after losses, in kg
 */
public record WeighingSheetData(
    String recipe,
    List<Line> lines,
    double exactTotalKilograms,
    double printedTotalKilograms,
    double exactNetKilograms) {

  /**
   * One line to weigh.
   *
   * @param ingredient the id of the material, or the name of the recipe that makes it
   * @param name what it is called in the reader's language
   * @param exactKilograms the exact mass, in kg
   * @param printedKilograms what the balance is to show, in kg: whole steps of its interval, or the
   *     exact mass where all that is left is used up
   * @param balance what the studio calls the balance
   * @param intervalKilograms the scale interval of the balance, in kg, above zero
   * @param portions in how many weighings the balance can take it; 0 if nothing is weighed
   * @param belowInterval whether the balance cannot show it: the mass is less than one step
   * @param usedUp whether it is all that is left and goes in unweighed
   * @param addition the id of how it goes into the pot, for example {@code sprinkle}
   * @param additionText how it goes into the pot, one sentence
   */
  public record Line(
      String ingredient,
      String name,
      double exactKilograms,
      double printedKilograms,
      String balance,
      double intervalKilograms,
      long portions,
      boolean belowInterval,
      boolean usedUp,
      String addition,
      String additionText) {

    private static Line of(WeighingLine line, boolean usedUp, Locale locale) {
      return new Line(
          line.ingredient().name(),
          nameOf(line.ingredient(), locale),
          line.rounded().exactKilograms(),
          line.rounded().printedKilograms(),
          line.balance().name(),
          line.balance().intervalKilograms(),
          line.portions(),
          line.rounded().isBelowInterval(),
          usedUp,
          line.hint().id(),
          line.hint().text(locale));
    }

    private static String nameOf(Ingredient ingredient, Locale locale) {
      return ingredient.material().map(m -> m.name(locale)).orElse(ingredient.name());
    }
  }

  public WeighingSheetData {
    lines = List.copyOf(lines);
  }

  /**
   * Returns a sheet as data.
   *
   * @param sheet the sheet
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return its lines and totals
   */
  public static WeighingSheetData of(WeighingSheet sheet, Locale locale) {
    Batch batch = sheet.batch();
    return new WeighingSheetData(
        batch.recipe().name(),
        sheet.inOrder().stream()
            .map(
                l ->
                    Line.of(
                        l, batch.usedUp().filter(l.ingredient()::isMeantBy).isPresent(), locale))
            .toList(),
        sheet.exactTotalKilograms(),
        sheet.printedTotalKilograms(),
        batch.net().massKilograms());
  }
}
