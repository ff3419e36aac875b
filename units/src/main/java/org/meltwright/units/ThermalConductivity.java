// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Heat flow through a material per length and temperature difference; the SI unit is {@link
 * MetricUnits#WATT_PER_METRE_KELVIN W/(m K)}.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<ThermalConductivity> wax =
 *     QuantityParser.localeFree().parseThermalConductivity("0.25 W/(m K)");
 * // through 0.01 m² of a crust 5 mm thick, 20 K warmer below than above
 * double watts = QuantityKind.THERMAL_CONDUCTIVITY.toSi(wax) * 0.01 * 20 / 0.005; // 10.00 W
 * }</pre>
 */
public interface ThermalConductivity extends Quantity<ThermalConductivity> {}
