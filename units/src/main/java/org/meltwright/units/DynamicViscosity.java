// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/** Resistance of a liquid to flow; the SI unit is {@link MetricUnits#PASCAL_SECOND Pa s}. */
public interface DynamicViscosity extends Quantity<DynamicViscosity> {}
