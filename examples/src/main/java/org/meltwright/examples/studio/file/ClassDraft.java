// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.heating.PeopleDraft;
import org.meltwright.safety.heating.RoomDraft;

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
    @Nullable String title,
    @Nullable String date,
    @Nullable String place,
    @Nullable RoomDraft room,
    @Nullable PeopleDraft people,
    @Nullable String hours,
    @Nullable PanelsDraft panels,
    @Nullable List<@Nullable PaintDraft> paints,
    @Nullable List<@Nullable String> tools,
    @Nullable List<@Nullable CircuitDraft> circuits,
    @Nullable String continuousShare,
    @Nullable FreightDraft freight,
    @Nullable FeeDraft fee) {

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
      @Nullable Integer perPerson,
      @Nullable String width,
      @Nullable String height,
      @Nullable Integer layers,
      @Nullable String film,
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
      @Nullable String recipe,
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
      @Nullable String name,
      @Nullable Integer volts,
      @Nullable Integer amperes,
      @Nullable List<@Nullable String> sources,
      @Nullable String others) {}

  /**
   * What carriage costs.
   *
   * @param perOrder what each order costs
   * @param freeFrom the value of goods from which nothing is charged
   */
  public record FreightDraft(@Nullable String perOrder, @Nullable String freeFrom) {}

  /**
   * What the fee has to cover beside what is bought.
   *
   * @param perPerson what each learner costs: panels, brushes
   * @param fixed what the class costs however many come
   * @param margin what is added to the cost
   * @param step what the fee is rounded up to a multiple of
   */
  public record FeeDraft(
      @Nullable String perPerson,
      @Nullable String fixed,
      @Nullable String margin,
      @Nullable String step) {}
}
