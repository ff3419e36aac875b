// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * What things are: materials, their properties as ranges, and where each figure comes from.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.material.MaterialCatalogue} — finds materials by name or number;
 *       a user's own file goes on top.
 *   <li>{@link org.meltwright.core.material.Material} — names, family, identifiers, constituents
 *       and figures.
 *   <li>{@link org.meltwright.core.material.PropertyKey} — asking for a density gives a density
 *       range: the key knows the type of its value.
 *   <li>{@link org.meltwright.core.material.PropertyRange} and {@link
 *       org.meltwright.core.material.DefinedTemperature} — a range with its state or its
 *       definition.
 *   <li>{@link org.meltwright.core.material.PerMaterial} — what follows from a material alone,
 *       worked out once.
 *   <li>{@link org.meltwright.core.material.ByMaterial} — what somebody states of materials or of
 *       their lots: prices, losses, densities.
 * </ol>
 *
 * <p>The data stand as plain text beside this package. Inside, {@code MaterialsReader} reads lines,
 * {@code PropertyType} reads values, and {@code Linker} puts materials in as parts of others.
 */
@NullMarked
package org.meltwright.core.material;

import org.jspecify.annotations.NullMarked;
