// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.joda.money.Money;

/**
 * What remains of a material that is bought.
 *
 * <p>Immutable and thread-safe.
 *
 * @param material what it is
 * @param boughtKilograms the mass of all its packages, in kg
 * @param massKilograms what remains when the need is met, in kg
 * @param worth its part of what the packages of this material cost, without carriage
 */
public record LeftOver(
    String material, double boughtKilograms, double massKilograms, Money worth) {}
