// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.source;

/** How a figure came to us: the second axis of evidence, strongest first. */
public enum Knowledge {
  /** Read in the source itself or a faithful copy of it. */
  READ,
  /** Read in another text that restates the source. */
  RESTATED,
  /** Worked out from a figure that was read. */
  DERIVED,
  /** Remembered; the source was not opened. */
  REMEMBERED
}
