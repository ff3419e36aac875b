// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Heat flow through a surface per area and temperature difference; the SI unit is {@link
 * MetricUnits#WATT_PER_SQUARE_METRE_KELVIN W/(m² K)}.
 */
public interface HeatTransferCoefficient extends Quantity<HeatTransferCoefficient> {}
