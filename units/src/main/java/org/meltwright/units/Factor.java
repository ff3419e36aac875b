// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

/** How numbers in a unit turn into numbers in the SI unit of its kind, and back. */
sealed interface Factor permits UnitDefinition, ForeignFactor {

  double toSi(double value);

  double fromSi(double si);
}
