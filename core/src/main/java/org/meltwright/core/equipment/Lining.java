// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

/** What the inside of a vessel is coated with. */
public enum Lining {
  /** Bare: no coating. */
  NONE,
  /** Glass enamel. */
  ENAMEL,
  /** A plastic or lacquer film, as in food cans. */
  PLASTIC,
  /** A fluoropolymer non-stick coating. */
  NON_STICK,
  /** Not stated, or a coating of unknown kind. */
  UNKNOWN
}
