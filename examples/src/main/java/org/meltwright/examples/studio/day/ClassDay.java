// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.planning.Piece;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.Room;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/**
 * A class that is to be held.
 *
 * @param about what, when and where
 * @param people who comes
 * @param hours how long the wax is kept hot, in h
 * @param panels what each learner makes
 * @param paints what they work with
 * @param power what heats, and on which circuit
 * @param money what carriage costs and the fee covers
 */
public record ClassDay(
    About about,
    People people,
    double hours,
    Panels panels,
    List<Paint> paints,
    Power power,
    Terms money) {

  /** Copies the list. */
  public ClassDay {
    paints = List.copyOf(paints);
  }

  /**
   * What, when and where.
   *
   * @param title what it is called
   * @param date its day
   * @param place where it is held
   * @param room the room there; null if not stated
   */
  public record About(String title, LocalDate date, String place, @Nullable Room room) {}

  /**
   * What each learner makes; lengths in m.
   *
   * @param perPerson how many panels
   * @param width how wide
   * @param height how high
   * @param layers how many layers
   * @param film how thick a layer is
   * @param loss the share that is scraped off or spilled; null if not stated
   * @param leftInTinsKilograms what stays in the tins of each, in kg; empty if not stated
   */
  public record Panels(
      int perPerson,
      double width,
      double height,
      int layers,
      double film,
      @Nullable MassFraction loss,
      OptionalDouble leftInTinsKilograms) {

    Piece piece() {
      return new Piece(perPerson, width * height);
    }
  }

  /**
   * A medium or colour, and how it is kept hot, as far as stated.
   *
   * @param recipe the recipe as written
   * @param share its share of all that is used, by mass
   * @param vessel the vessel
   * @param fill how full it is at most, hot
   * @param source what keeps it hot
   * @param thermometer the thermometer
   * @param reading what it is to show
   */
  public record Paint(
      Recipe recipe,
      MassFraction share,
      @Nullable Vessel vessel,
      @Nullable VolumeFraction fill,
      @Nullable HeatSource source,
      @Nullable Thermometer thermometer,
      @Nullable TemperaturePoint reading) {}

  /**
   * What heats, and on which circuit.
   *
   * @param tools what heats beside the pots
   * @param circuits the circuits
   * @param continuousShare the share of a rating that may run for hours; null if not stated
   */
  public record Power(
      List<HeatSource> tools, List<Circuit> circuits, @Nullable MassFraction continuousShare) {

    /** Copies the lists. */
    public Power {
      tools = List.copyOf(tools);
      circuits = List.copyOf(circuits);
    }
  }

  /**
   * A circuit of the room.
   *
   * @param name where its sockets are
   * @param volts its voltage in V
   * @param amperes its rating in A
   * @param sources what hangs on it, one for each piece
   * @param otherWatts the power of all else on it, in W; empty if not stated
   */
  public record Circuit(
      String name, int volts, int amperes, List<HeatSource> sources, OptionalDouble otherWatts) {

    /** Copies the list. */
    public Circuit {
      sources = List.copyOf(sources);
    }
  }

  /**
   * What carriage costs and the fee covers.
   *
   * @param freight carriage; null if not stated
   * @param fee the fee; null if not stated
   */
  public record Terms(@Nullable FreightTariff freight, @Nullable Fee fee) {}

  /**
   * What the fee has to cover beside what is bought.
   *
   * @param perPerson what each learner costs
   * @param fixed what the class costs however many come
   * @param margin what is added
   * @param step what the fee is rounded up to a multiple of
   */
  public record Fee(Money perPerson, Money fixed, Rate margin, Money step) {}

  /**
   * Returns how many learn; those who teach make no panels.
   *
   * @return how many
   */
  public int learners() {
    return people.adults() + people.minors();
  }

  /**
   * Returns what all panels of all who learn have together.
   *
   * @return the area in m²
   */
  public double squareMetres() {
    return learners() * panels.piece().totalSquareMetres();
  }

  /**
   * Returns what the fee has to cover.
   *
   * @return it; empty if no fee is to be worked out
   */
  public Optional<Fee> fee() {
    return Optional.ofNullable(money.fee());
  }
}
