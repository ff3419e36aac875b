// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Energy per mass, such as a heat of fusion; the SI unit is {@link MetricUnits#JOULE_PER_KILOGRAM
 * J/kg}.
 *
 * <p>For example:
 *
 * <pre>{@code
 * QuantityParser parser = QuantityParser.localeFree();
 * Quantity<SpecificEnergy> fusion = parser.parseSpecificEnergy("177 kJ/kg");
 * // to melt 0.5 kg that is already as warm as its melting point
 * double joules = QuantityKind.SPECIFIC_ENERGY.toSi(fusion) * 0.5; // 88500.0 J
 * }</pre>
 */
public interface SpecificEnergy extends Quantity<SpecificEnergy> {}
