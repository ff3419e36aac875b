// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/** The answer for one hazard class. */
public enum HazardStatus {
  /** The mixture falls in a category of the class. */
  CLASSIFIED,
  /** No limit is reached on what is known of all relevant ingredients. */
  NOT_CLASSIFIED,
  /** Something is missing that could change the answer; never read as "not hazardous". */
  INSUFFICIENT_DATA
}
