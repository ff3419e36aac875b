// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.HeatingProblem.CHECK;

import java.util.OptionalInt;

/**
 * Who works: how many teach, how many adults and how many under 18 learn, the age of the youngest,
 * and whether adults alone handle the pot. No names.
 *
 * <p>For example:
 *
 * <pre>{@code
 * People evening = People.classOf(1, 8, 2).withYoungest(15);
 * evening.hasMinors(); // true
 * evening.isClass(); // true
 * People.alone().youngest().isPresent(); // false
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param teachers how many teach or supervise
 * @param adults how many other adults work
 * @param minors how many under 18 work
 * @param youngest the age of the youngest in years; empty if not stated
 * @param potHandledByAdults whether it is stated that adults alone handle the pot, so that the
 *     limits of an age do not bind it
 */
public record People(
    int teachers, int adults, int minors, OptionalInt youngest, boolean potHandledByAdults) {

  /** From this age on a person counts as an adult, in years. */
  public static final int ADULT = 18;

  private static final int MOST = 10_000;

  /** Draws a problem if a number is negative or beyond all measure. */
  public People {
    checkedTeachers(teachers);
    checkedAdults(adults);
    checkedMinors(minors);
    youngest.ifPresent(People::checkedAge);
  }

  /**
   * Returns one adult alone.
   *
   * @return the people
   */
  public static People alone() {
    return classOf(0, 1, 0);
  }

  /**
   * Returns a class.
   *
   * @param teachers how many teach
   * @param adults how many adults learn
   * @param minors how many under 18 learn
   * @return the people
   */
  public static People classOf(int teachers, int adults, int minors) {
    return new People(teachers, adults, minors, OptionalInt.empty(), false);
  }

  /**
   * Tells whether anyone under 18 works.
   *
   * @return whether there are minors
   */
  public boolean hasMinors() {
    return minors > 0 || (youngest.isPresent() && youngest.getAsInt() < ADULT);
  }

  /**
   * Tells whether more than one person works.
   *
   * @return whether it is a class
   */
  public boolean isClass() {
    return teachers + adults + minors > 1;
  }

  /**
   * Returns a copy with the age of the youngest.
   *
   * @param years the age in years, not negative
   * @return the new people
   * @throws org.meltwright.units.ProblemException if it is negative or above 150
   */
  public People withYoungest(int years) {
    return new People(teachers, adults, minors, OptionalInt.of(years), potHandledByAdults);
  }

  /**
   * Returns a copy in which it is stated that adults alone handle the pot.
   *
   * @return the new people
   */
  public People withPotHandledByAdults() {
    return new People(teachers, adults, minors, youngest, true);
  }

  /** The limits that the age of the youngest sets to what they handle. */
  HeatingLimits limits() {
    return youngest.isPresent() && !potHandledByAdults
        ? HeatingLimits.forYoungest(youngest.getAsInt())
        : HeatingLimits.standard();
  }

  /**
   * Returns these people as they are written down.
   *
   * @return the draft, which reads back as equal people
   */
  public PeopleDraft toDraft() {
    return PeopleDraft.of(this);
  }

  static int checkedTeachers(int teachers) {
    return (int) CHECK.between(teachers, 0, MOST, "number of teachers");
  }

  static int checkedAdults(int adults) {
    return (int) CHECK.between(adults, 0, MOST, "number of adults");
  }

  static int checkedMinors(int minors) {
    return (int) CHECK.between(minors, 0, MOST, "number of minors");
  }

  static int checkedAge(int years) {
    return (int) CHECK.between(years, 0, 150, "age in years");
  }
}
