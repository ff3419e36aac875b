// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import org.meltwright.units.Check;
import org.meltwright.units.ProblemCode;

/**
 * The problems of a studio file beyond its single values: names that lead nowhere, and the like.
 */
public enum StudioProblem implements ProblemCode {
  /** A name that no entry of the file has. */
  UNKNOWN_NAME("studio.unknown-name"),
  /** Two entries with one id. */
  DOUBLE_ID("studio.double-id"),
  /** A material that stands twice on the shelf. */
  DOUBLE_MATERIAL("studio.double-material"),
  /** None or several of fields of which exactly one is to be there. */
  ONE_OF("studio.one-of"),
  /** A recipe that contains itself. */
  RECIPE_IN_ITSELF("studio.recipe-in-itself"),
  /** Shares that leave nothing for the rest, or do not sum to one. */
  SHARES("studio.shares"),
  /** A price in another currency than the studio's. */
  CURRENCY("studio.currency"),
  /** A text that is no money. */
  MONEY("studio.money"),
  /** A text that is no price of a package. */
  PRICE("studio.price"),
  /** A code that no currency has. */
  UNKNOWN_CURRENCY("studio.unknown-currency"),
  /** A volume of a material whose density is not known. */
  DENSITY_NEEDED("studio.density-needed"),
  /** A mass that cannot be taken from the shelf. */
  MASS_NEEDED("studio.mass-needed"),
  /** A number of cakes without a mould. */
  CAST_NEEDED("studio.cast-needed"),
  /** A recipe of which nothing is said to be left over. */
  NOTHING_LEFT_OVER("studio.nothing-left-over"),
  /** Wishes of which nothing tells which of many blends is the best. */
  NO_AIM("studio.no-aim"),
  /** A text that is no day. */
  DATE("studio.date"),
  /** A class sheet was asked for, and the file has no class. */
  CLASS_MISSING("studio.class-missing"),
  /** The page cannot be written. */
  PAGE_UNWRITABLE("studio.page-unwritable");

  /** The guards of this package, and the German of what it says itself. */
  public static final Check CHECK = Check.beside(StudioProblem.class);

  private final String id;

  StudioProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
