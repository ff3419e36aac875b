// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * The number of a hazard category within its class, the more severe before the milder.
 *
 * <p>A sheet names skin corrosion without its sub-category; a sub-category is graver:
 *
 * <pre>{@code
 * Category.of("1B"); // ONE_B
 * Category.of("1b").isOne(); // true
 * Category.TWO.isOne(); // false
 * Category.ONE_A.compareTo(Category.TWO) < 0; // true
 * Category.find("9").isEmpty(); // true
 * HazardCategory.parse("Lact. H362").category(); // ONLY
 * }</pre>
 */
public enum Category {
  /** Category 1A. */
  ONE_A("1A"),
  /** Category 1B. */
  ONE_B("1B"),
  /** Category 1C, which skin corrosion alone has. */
  ONE_C("1C"),
  /** Category 1 without a sub-category. */
  ONE("1"),
  /** What a class has that knows no numbers, such as lactation or PBT. */
  ONLY(""),
  /** Category 2A, which eye irritation has in the UN system. */
  TWO_A("2A"),
  /** Category 2. */
  TWO("2"),
  /** Category 2B, which eye irritation has in the UN system. */
  TWO_B("2B"),
  /** Category 3. */
  THREE("3"),
  /** Category 4. */
  FOUR("4"),
  /** Category 5, which acute toxicity has in the UN system. */
  FIVE("5");

  /** What a table writes for {@link #ONLY}. */
  private static final String WITHOUT_NUMBER = "only";

  private final String id;

  Category(String id) {
    this.id = id;
  }

  /**
   * Finds a category by what a data sheet prints.
   *
   * @param text for example "1B"; "only" or nothing for a class without numbers
   * @return the category; empty if no class has it
   */
  public static Optional<Category> find(String text) {
    String id = text.strip().equalsIgnoreCase(WITHOUT_NUMBER) ? "" : text.strip();
    return Stream.of(values()).filter(c -> c.id.equalsIgnoreCase(id)).findFirst();
  }

  /**
   * Returns a category by what a data sheet prints.
   *
   * @param text for example "1B"
   * @return the category
   * @throws org.meltwright.units.ProblemException if no class has it
   */
  public static Category of(String text) {
    return find(text).orElseThrow(() -> HazardNotation.unreadable("category " + text));
  }

  /**
   * Returns what a data sheet prints.
   *
   * @return for example "1B"; empty text for {@link #ONLY}
   */
  public String id() {
    return id;
  }

  /** What a table writes. */
  String key() {
    return this == ONLY ? WITHOUT_NUMBER : id;
  }

  /**
   * Tells whether it is category 1 or one of its sub-categories.
   *
   * @return whether it is 1, 1A, 1B or 1C
   */
  public boolean isOne() {
    return id.startsWith("1");
  }
}
