// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;

/** Mass per volume; the SI unit is {@link MetricUnits#KILOGRAM_PER_CUBIC_METRE kg/m³}. */
public interface Density extends Quantity<Density> {}
