// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Heat flow through a material per length and temperature difference; the SI unit is {@link
 * MetricUnits#WATT_PER_METRE_KELVIN W/(m K)}.
 */
public interface ThermalConductivity extends Quantity<ThermalConductivity> {}
