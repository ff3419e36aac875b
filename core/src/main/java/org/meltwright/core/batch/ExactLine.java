// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import org.meltwright.units.ScaleInterval;

/**
 * A line to be weighed out: its exact mass, and the interval of the balance it is weighed on.
 *
 * @param kilograms the exact mass in kg, at least 0
 * @param interval the interval of its balance
 */
record ExactLine(double kilograms, ScaleInterval interval) {}
