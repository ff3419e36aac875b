// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/**
 * Whether a material may go into a hot melt, the one that warns first.
 *
 * <p>For example:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * shelf.require("copal-hard").require(PropertyKey.USE_IN_HOT_MELT).value(); // REFUSE
 * PropertyKey.USE_IN_HOT_MELT.parse("fit"); // FIT
 * PropertyKey.USE_IN_HOT_MELT.parse("refused"); // throws ProblemException
 * }</pre>
 */
public enum HotMeltUse {
  /** It may not: it thins, hardens or does not dissolve. */
  REFUSE,
  /** It may, with care. */
  CAUTION,
  /** It may. */
  FIT
}
