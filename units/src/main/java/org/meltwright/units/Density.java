// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Mass per volume; the SI unit is {@link MetricUnits#KILOGRAM_PER_CUBIC_METRE kg/m³}.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<Density> wax = gramsPerMillilitre(0.96);
 * QuantityKind.DENSITY.toSi(wax); // 960.0 kg/m³
 * QuantityParser.localeFree().parseDensity("0.96 kg/l"); // 0.96 kg/l
 * }</pre>
 */
public interface Density extends Quantity<Density> {}
