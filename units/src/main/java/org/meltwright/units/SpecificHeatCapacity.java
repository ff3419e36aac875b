// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Heat that warms a unit of mass by one kelvin; the SI unit is {@link
 * MetricUnits#JOULE_PER_KILOGRAM_KELVIN J/(kg K)}.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<SpecificHeatCapacity> melt =
 *     QuantityParser.localeFree().parseSpecificHeatCapacity("2.5 kJ/(kg K)");
 * // to warm 0.8 kg of it by 10 K
 * double joules = QuantityKind.SPECIFIC_HEAT_CAPACITY.toSi(melt) * 0.8 * 10; // 20000.0 J
 * }</pre>
 */
public interface SpecificHeatCapacity extends Quantity<SpecificHeatCapacity> {}
