// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

/**
 * A volume that counts as a mass, such as a tube of 37 ml.
 *
 * @param written the text that states it
 * @param kilograms the mass that it counts as, in kg
 * @param kilogramsPerCubicMetre the density that it is counted with, in kg/m³
 * @param isStated whether the file states that density; if not, it is the low end of the
 *     catalogue's, so that no more is taken to be there than there is
 */
public record ByVolume(
    String written, double kilograms, double kilogramsPerCubicMetre, boolean isStated) {}
