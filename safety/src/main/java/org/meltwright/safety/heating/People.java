// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.Checks.CHECK;

import java.util.OptionalInt;

/**
 * Who works: teachers, adults, minors, and the age of the youngest.
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
 * @param youngestAge the age of the youngest in years; 0 if not stated
 */
public record People(int teachers, int adults, int minors, int youngestAge) {

  /** From this age on a person counts as an adult, in years. */
  public static final int ADULT = 18;

  /**
   * Guards the numbers.
   *
   * @param teachers how many teach or supervise
   * @param adults how many other adults work
   * @param minors how many under 18 work
   * @param youngestAge the age of the youngest
   * @throws org.meltwright.units.ProblemException if a number is negative or beyond all measure
   */
  public People {
    CHECK.between(teachers, 0, 10_000, "number of teachers");
    CHECK.between(adults, 0, 10_000, "number of adults");
    CHECK.between(minors, 0, 10_000, "number of minors");
    CHECK.between(youngestAge, 0, 150, "age in years");
  }

  /**
   * Returns one adult alone.
   *
   * @return the people
   */
  public static People alone() {
    return new People(0, 1, 0, 0);
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
    return new People(teachers, adults, minors, 0);
  }

  /**
   * Returns the age of the youngest.
   *
   * @return the age in years; empty if it is not stated
   */
  public OptionalInt youngest() {
    return youngestAge == 0 ? OptionalInt.empty() : OptionalInt.of(youngestAge);
  }

  /**
   * Tells whether anyone under 18 works.
   *
   * @return whether there are minors
   */
  public boolean hasMinors() {
    return minors > 0 || (youngestAge > 0 && youngestAge < ADULT);
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
   * @param years the age in years, above zero
   * @return the new people
   * @throws org.meltwright.units.ProblemException if it is not above zero
   */
  public People withYoungest(int years) {
    CHECK.between(years, 1, 150, "age in years");
    return new People(teachers, adults, minors, years);
  }
}
