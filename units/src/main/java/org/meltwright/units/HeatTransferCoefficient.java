// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Heat flow through a surface per area and temperature difference; the SI unit is {@link
 * MetricUnits#WATT_PER_SQUARE_METRE_KELVIN W/(m² K)}.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<HeatTransferCoefficient> sides =
 *     QuantityParser.localeFree().parseHeatTransferCoefficient("10 W/(m² K)");
 * // a pot of 0.05 m² that is 65 K above the room
 * double watts = QuantityKind.HEAT_TRANSFER_COEFFICIENT.toSi(sides) * 0.05 * 65; // 32.50 W
 * }</pre>
 */
public interface HeatTransferCoefficient extends Quantity<HeatTransferCoefficient> {}
