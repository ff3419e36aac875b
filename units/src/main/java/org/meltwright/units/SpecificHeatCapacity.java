// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Heat that warms a unit of mass by one kelvin; the SI unit is {@link
 * MetricUnits#JOULE_PER_KILOGRAM_KELVIN J/(kg K)}.
 */
public interface SpecificHeatCapacity extends Quantity<SpecificHeatCapacity> {}
