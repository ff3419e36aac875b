// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/**
 * Resistance of a liquid to flow; the SI unit is {@link MetricUnits#PASCAL_SECOND Pa s}.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<DynamicViscosity> melt = QuantityParser.localeFree().parseDynamicViscosity("12 cP");
 * QuantityKind.DYNAMIC_VISCOSITY.toSi(melt); // 0.012 Pa s
 * QuantityFormatter.exact().format(melt, MILLIPASCAL_SECOND); // 12 mPa s
 * }</pre>
 */
public interface DynamicViscosity extends Quantity<DynamicViscosity> {}
