// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/** What a material does in a mix. */
public enum MaterialRole {
  /** Makes up most of a mix and melts. */
  BASE,
  /** Hardens or toughens, dissolved in the base. */
  HARDENER,
  /** Softens or binds as an oil. */
  OIL,
  /** Gives colour. */
  COLOURANT,
  /** Gives body without colour. */
  FILLER,
  /** Is to evaporate. */
  CARRIER
}
