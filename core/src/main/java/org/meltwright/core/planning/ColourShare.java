// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MassFraction;

/**
 * The part of all paint that has one colour.
 *
 * <p>Immutable and thread-safe.
 *
 * @param name what the colour is called
 * @param share its share of the mass of all paint
 * @param composition what it is made of
 */
public record ColourShare(String name, MassFraction share, Composition composition) {}
