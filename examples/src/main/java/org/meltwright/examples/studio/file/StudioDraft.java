// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.RecipeDraft.PartDraft;
import org.meltwright.core.equipment.BalanceDraft;
import org.meltwright.core.equipment.HeatSourceDraft;
import org.meltwright.core.equipment.MouldDraft;
import org.meltwright.core.equipment.ThermometerDraft;
import org.meltwright.core.equipment.VesselDraft;
import org.meltwright.examples.studio.file.WishesDraft.LeftoverDraft;
import org.meltwright.safety.heating.PeopleDraft;
import org.meltwright.safety.heating.RoomDraft;

/**
 * A studio file as it was written: every leaf is text, a whole number, a yes or no, or missing.
 *
 * @param date the day that the sheet is for, ISO 8601, such as "2026-12-05"
 * @param studio who and where
 * @param room the room that is worked in
 * @param people who works
 * @param shelf the materials at hand
 * @param balances the balances
 * @param vessels the pots and tins
 * @param moulds the moulds
 * @param thermometers the thermometers
 * @param heatSources the plates and other heat sources
 * @param leftovers what is left of earlier batches
 * @param recipes the recipes
 * @param today what is to be made today, in order
 * @param readyMade ready-made offers to compare with
 * @param brushing what is brushed on which panel
 * @param classDay a class that is to be held
 */
public record StudioDraft(
    @Nullable String date,
    @Nullable AboutDraft studio,
    @Nullable RoomDraft room,
    @Nullable PeopleDraft people,
    @Nullable List<@Nullable ShelfDraft> shelf,
    @Nullable List<@Nullable BalanceDraft> balances,
    @Nullable List<@Nullable VesselDraft> vessels,
    @Nullable List<@Nullable MouldDraft> moulds,
    @Nullable List<@Nullable ThermometerDraft> thermometers,
    @Nullable List<@Nullable HeatSourceDraft> heatSources,
    @Nullable List<@Nullable LeftoverDraft> leftovers,
    @Nullable List<@Nullable RecipeDraft> recipes,
    @Nullable List<@Nullable JobDraft> today,
    @Nullable List<@Nullable OfferDraft> readyMade,
    @Nullable BrushingDraft brushing,
    @Nullable ClassDraft classDay) {

  /**
   * Who and where.
   *
   * @param name the studio's name
   * @param town the town
   * @param currency the currency of all prices, ISO 4217
   * @param decimalComma whether numbers in this file are written with a decimal comma
   * @param electricityPerKilowattHour the price of a kilowatt hour, such as "0.34 EUR"
   * @param labourPerHour the worth of an hour of work, such as "18.00 EUR"
   */
  public record AboutDraft(
      @Nullable String name,
      @Nullable String town,
      @Nullable String currency,
      @Nullable Boolean decimalComma,
      @Nullable String electricityPerKilowattHour,
      @Nullable String labourPerHour) {}

  /**
   * A material on the shelf.
   *
   * @param id what this file calls it
   * @param material its id, name, CAS number or Colour Index name in the catalogue
   * @param form how it was bought
   * @param stock what is left of it
   * @param density what a volume of it weighs, as it stands on the shelf
   * @param balance the balance it is weighed on
   * @param insolubles the share that stays behind when it is dissolved
   * @param packages the packages it is bought in, each as a price, such as "19.80 EUR/1 kg"; the
   *     first is the one on the shelf; without any its price is not known
   */
  public record ShelfDraft(
      @Nullable String id,
      @Nullable String material,
      @Nullable String form,
      @Nullable String stock,
      @Nullable String density,
      @Nullable String balance,
      @Nullable String insolubles,
      @Nullable List<@Nullable String> packages) {}

  /**
   * A recipe: a mixing ratio, parts, or wishes for one that is to be found.
   *
   * @param id what this file calls it
   * @param name its name on the sheet
   * @param ratio a mixing ratio whose sides are ids of the shelf
   * @param parts the parts
   * @param wishes what is wished of a recipe that is to be found
   */
  public record RecipeDraft(
      @Nullable String id,
      @Nullable String name,
      @Nullable String ratio,
      @Nullable List<@Nullable PartDraft> parts,
      @Nullable WishesDraft wishes) {}

  /**
   * Something to make today.
   *
   * @param recipe the id of the recipe
   * @param make how much of it; may be left out where the recipe is one of wishes, which say it
   * @param vessel the id of the vessel it is melted in
   * @param heatSource the id of what heats it
   * @param thermometer the id of the thermometer
   * @param reading what the thermometer shows when all is molten
   * @param held how long it is kept molten
   * @param activeTime how long someone works on it
   * @param filmLoss the share of the pot's content that stays on pot and tools
   * @param filmLossAtLeast the least that stays on pot and tools
   * @param cast how it is cast
   */
  public record JobDraft(
      @Nullable String recipe,
      @Nullable MakeDraft make,
      @Nullable String vessel,
      @Nullable String heatSource,
      @Nullable String thermometer,
      @Nullable String reading,
      @Nullable String held,
      @Nullable String activeTime,
      @Nullable String filmLoss,
      @Nullable String filmLossAtLeast,
      @Nullable CastDraft cast) {}

  /**
   * How much to make: exactly one of these is known.
   *
   * @param ingredient the id of a part whose mass is known
   * @param mass that mass; all that is left of it if missing
   * @param total the mass in the pot
   * @param net the mass wanted after losses
   * @param cakes the number of cakes wanted
   */
  public record MakeDraft(
      @Nullable String ingredient,
      @Nullable String mass,
      @Nullable String total,
      @Nullable String net,
      @Nullable Integer cakes) {}

  /**
   * How a batch is cast.
   *
   * @param mould the id of the mould
   * @param fill how full each cup is poured
   * @param meltDensity the density of the melt, if it was measured
   */
  public record CastDraft(
      @Nullable String mould, @Nullable String fill, @Nullable String meltDensity) {}

  /**
   * A ready-made offer.
   *
   * @param forRecipe the id of the recipe it stands against
   * @param price its price per package, such as "32.50 EUR/500 g", with freight, duty and tax
   */
  public record OfferDraft(@Nullable String forRecipe, @Nullable String price) {}
}
