// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Energy per mass, such as a heat of fusion; the SI unit is {@link MetricUnits#JOULE_PER_KILOGRAM
 * J/kg}.
 */
public interface SpecificEnergy extends Quantity<SpecificEnergy> {}
