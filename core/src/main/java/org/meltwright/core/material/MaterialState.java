// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/** The state that a figure holds for. */
public enum MaterialState {
  /** Solid, without air between pieces. */
  SOLID,
  /** Molten, or liquid at room temperature. */
  LIQUID,
  /** Loose bulk: pieces or powder with the air between them, as scooped. */
  BULK
}
