// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.meltwright.examples.studio.file.WishesDraft.LeftoverDraft;

/**
 * A studio file as it was written: every leaf is text, a whole number, a yes or no, or missing.
 *
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
    @NotNull @Valid @Nullable AboutDraft studio,
    @Valid @Nullable RoomDraft room,
    @Valid @Nullable PeopleDraft people,
    @NotEmpty @Nullable List<@NotNull @Valid ShelfDraft> shelf,
    @NotEmpty @Nullable List<@NotNull @Valid BalanceDraft> balances,
    @NotEmpty @Nullable List<@NotNull @Valid VesselDraft> vessels,
    @Nullable List<@NotNull @Valid MouldDraft> moulds,
    @Nullable List<@NotNull @Valid ThermometerDraft> thermometers,
    @NotEmpty @Nullable List<@NotNull @Valid HeatSourceDraft> heatSources,
    @Nullable List<@NotNull @Valid LeftoverDraft> leftovers,
    @NotEmpty @Nullable List<@NotNull @Valid RecipeDraft> recipes,
    @NotEmpty @Nullable List<@NotNull @Valid JobDraft> today,
    @Nullable List<@NotNull @Valid OfferDraft> readyMade,
    @Valid @Nullable BrushingDraft brushing,
    @Valid @Nullable ClassDraft classDay) {

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
      @NotBlank @Nullable String name,
      @NotBlank @Nullable String town,
      @NotBlank @Nullable String currency,
      @Nullable Boolean decimalComma,
      @Nullable String electricityPerKilowattHour,
      @Nullable String labourPerHour) {}

  /**
   * The room that is worked in.
   *
   * @param volume its volume
   * @param extractionPerHour the air that is drawn out of it in an hour, a volume
   */
  public record RoomDraft(@NotBlank @Nullable String volume, @Nullable String extractionPerHour) {}

  /**
   * Who works.
   *
   * @param teachers how many teach or supervise
   * @param adults how many other adults work
   * @param minors how many under 18 work
   */
  public record PeopleDraft(
      @NotNull @PositiveOrZero @Nullable Integer teachers,
      @NotNull @PositiveOrZero @Nullable Integer adults,
      @NotNull @PositiveOrZero @Nullable Integer minors) {}

  /**
   * A material on the shelf.
   *
   * @param id what this file calls it
   * @param material its id, name, CAS number or Colour Index name in the catalogue
   * @param form how it was bought
   * @param stock what is left of it
   * @param balance the balance it is weighed on
   * @param insolubles the share that stays behind when it is dissolved
   * @param packages the packages it is bought in, each as a price, such as "19.80 EUR/1 kg"; the
   *     first is the one on the shelf; without any its price is not known
   */
  public record ShelfDraft(
      @NotBlank @Nullable String id,
      @NotBlank @Nullable String material,
      @Nullable String form,
      @NotBlank @Nullable String stock,
      @NotBlank @Nullable String balance,
      @Nullable String insolubles,
      @Nullable List<@NotBlank String> packages) {}

  /**
   * A balance.
   *
   * @param id what this file calls it
   * @param capacity the most it carries
   * @param interval its scale interval
   */
  public record BalanceDraft(
      @NotBlank @Nullable String id,
      @NotBlank @Nullable String capacity,
      @NotBlank @Nullable String interval) {}

  /**
   * A vessel.
   *
   * @param id what this file calls it
   * @param material what it is made of
   * @param lining what its inside is coated with
   * @param bottom the shape of its bottom
   * @param capacity its volume up to the brim
   * @param mass its own mass
   */
  public record VesselDraft(
      @NotBlank @Nullable String id,
      @NotBlank @Nullable String material,
      @NotBlank @Nullable String lining,
      @NotBlank @Nullable String bottom,
      @NotBlank @Nullable String capacity,
      @NotBlank @Nullable String mass) {}

  /**
   * A mould.
   *
   * @param id what this file calls it
   * @param material what it is made of
   * @param cups how many cups it has
   * @param cup the volume of one cup up to the brim
   */
  public record MouldDraft(
      @NotBlank @Nullable String id,
      @NotBlank @Nullable String material,
      @NotNull @Positive @Nullable Integer cups,
      @NotBlank @Nullable String cup) {}

  /**
   * A thermometer.
   *
   * @param id what this file calls it
   * @param place where it measures
   * @param interval its scale interval
   * @param tolerance how far it may be off
   */
  public record ThermometerDraft(
      @NotBlank @Nullable String id,
      @NotBlank @Nullable String place,
      @NotBlank @Nullable String interval,
      @NotBlank @Nullable String tolerance) {}

  /**
   * A heat source.
   *
   * @param id what this file calls it
   * @param kind its kind
   * @param setPoint what its thermostat is set to
   * @param overshoot how far its surface rises above the set point
   * @param power its electrical power
   */
  public record HeatSourceDraft(
      @NotBlank @Nullable String id,
      @NotBlank @Nullable String kind,
      @Nullable String setPoint,
      @Nullable String overshoot,
      @Nullable String power) {}

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
      @NotBlank @Nullable String id,
      @NotBlank @Nullable String name,
      @Nullable String ratio,
      @Nullable List<@NotNull @Valid PartDraft> parts,
      @Valid @Nullable WishesDraft wishes) {}

  /**
   * A part of a recipe.
   *
   * @param of the id of a material on the shelf or of another recipe
   * @param share its share of the whole, by mass or by volume
   * @param rest whether it is all that the other parts leave
   */
  public record PartDraft(
      @NotBlank @Nullable String of, @Nullable String share, @Nullable Boolean rest) {}

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
      @NotBlank @Nullable String recipe,
      @Valid @Nullable MakeDraft make,
      @NotBlank @Nullable String vessel,
      @NotBlank @Nullable String heatSource,
      @Nullable String thermometer,
      @Nullable String reading,
      @Nullable String held,
      @Nullable String activeTime,
      @Nullable String filmLoss,
      @Nullable String filmLossAtLeast,
      @Valid @Nullable CastDraft cast) {}

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
      @Positive @Nullable Integer cakes) {}

  /**
   * How a batch is cast.
   *
   * @param mould the id of the mould
   * @param fill how full each cup is poured
   * @param meltDensity the density of the melt, if it was measured
   */
  public record CastDraft(
      @NotBlank @Nullable String mould,
      @NotBlank @Nullable String fill,
      @Nullable String meltDensity) {}

  /**
   * A ready-made offer.
   *
   * @param forRecipe the id of the recipe it stands against
   * @param price its price per package, such as "32.50 EUR/500 g", with freight, duty and tax
   */
  public record OfferDraft(
      @NotBlank @Nullable String forRecipe, @NotBlank @Nullable String price) {}
}
