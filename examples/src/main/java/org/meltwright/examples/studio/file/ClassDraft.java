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
import org.meltwright.examples.studio.file.StudioDraft.RoomDraft;

/**
 * A class that is to be held, as it was written.
 *
 * @param title what it is called
 * @param date its day
 * @param place where it is held
 * @param room the room that it is held in
 * @param people who comes
 * @param hours how long the wax is kept hot
 * @param panels what each learner makes
 * @param paints what they work with
 * @param tools what else heats
 * @param circuits what hangs on which circuit
 * @param continuousShare the share of a rating that may run for hours
 * @param freight what carriage costs
 * @param fee what the fee has to cover
 */
public record ClassDraft(
    @NotBlank @Nullable String title,
    @NotBlank @Nullable String date,
    @Nullable String place,
    @Valid @Nullable RoomDraft room,
    @NotNull @Valid @Nullable ClassPeopleDraft people,
    @NotBlank @Nullable String hours,
    @NotNull @Valid @Nullable PanelsDraft panels,
    @NotEmpty @Nullable List<@NotNull @Valid PaintDraft> paints,
    @Nullable List<@NotBlank String> tools,
    @Nullable List<@NotNull @Valid CircuitDraft> circuits,
    @Nullable String continuousShare,
    @Valid @Nullable FreightDraft freight,
    @Valid @Nullable FeeDraft fee) {

  /**
   * Who comes.
   *
   * @param teachers how many teach or supervise
   * @param adults how many adults learn
   * @param minors how many under 18 learn
   * @param youngest the age of the youngest
   * @param potsHandledByAdults whether adults alone handle pots and palettes
   */
  public record ClassPeopleDraft(
      @NotNull @PositiveOrZero @Nullable Integer teachers,
      @NotNull @PositiveOrZero @Nullable Integer adults,
      @NotNull @PositiveOrZero @Nullable Integer minors,
      @Positive @Nullable Integer youngest,
      @Nullable Boolean potsHandledByAdults) {}

  /**
   * What each learner makes.
   *
   * @param perPerson how many panels
   * @param width how wide a panel is
   * @param height how high a panel is
   * @param layers how many layers
   * @param film how thick a layer is
   * @param loss the share that is scraped off or spilled
   * @param leftInTins what stays in the tins of each
   */
  public record PanelsDraft(
      @NotNull @Positive @Nullable Integer perPerson,
      @NotBlank @Nullable String width,
      @NotBlank @Nullable String height,
      @NotNull @Positive @Nullable Integer layers,
      @NotBlank @Nullable String film,
      @Nullable String loss,
      @Nullable String leftInTins) {}

  /**
   * A medium or colour that the class works with, and how it is kept hot there.
   *
   * @param recipe the id of the recipe
   * @param share its share of all that is used
   * @param rest whether it is all that the others leave
   * @param vessel the id of the vessel
   * @param fill how full it is at most
   * @param heatSource the id of what keeps it hot
   * @param thermometer the id of the thermometer
   * @param reading what the thermometer is to show
   */
  public record PaintDraft(
      @NotBlank @Nullable String recipe,
      @Nullable String share,
      @Nullable Boolean rest,
      @Nullable String vessel,
      @Nullable String fill,
      @Nullable String heatSource,
      @Nullable String thermometer,
      @Nullable String reading) {}

  /**
   * A circuit of the room.
   *
   * @param name where its sockets are
   * @param volts its voltage in V
   * @param amperes the rating of its breaker or fuse in A
   * @param sources the ids of what hangs on it, one for each piece
   * @param others the power of all else that hangs on it
   */
  public record CircuitDraft(
      @NotBlank @Nullable String name,
      @NotNull @Positive @Nullable Integer volts,
      @NotNull @Positive @Nullable Integer amperes,
      @NotEmpty @Nullable List<@NotBlank String> sources,
      @Nullable String others) {}

  /**
   * What carriage costs.
   *
   * @param perOrder what each order costs
   * @param freeFrom the value of goods from which nothing is charged
   */
  public record FreightDraft(@NotBlank @Nullable String perOrder, @Nullable String freeFrom) {}

  /**
   * What the fee has to cover beside what is bought.
   *
   * @param perPerson what each learner costs: panels, brushes
   * @param fixed what the class costs however many come
   * @param margin what is added to the cost
   * @param step what the fee is rounded up to a multiple of
   */
  public record FeeDraft(
      @NotBlank @Nullable String perPerson,
      @NotBlank @Nullable String fixed,
      @NotBlank @Nullable String margin,
      @NotBlank @Nullable String step) {}
}
