// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.source;

import org.meltwright.units.Check;

/** The guards of this package. */
final class Checks {

  static final Check CHECK = Check.beside(Checks.class);

  private Checks() {}
}
