// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Where a figure comes from and how well it is known.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.source.Source} — what a reader can look up.
 *   <li>{@link org.meltwright.core.source.SourceKind} and {@link
 *       org.meltwright.core.source.Knowledge} — the two axes of evidence.
 *   <li>{@link org.meltwright.core.source.Sourced} — a value together with them.
 * </ol>
 */
@NullMarked
package org.meltwright.core.source;

import org.jspecify.annotations.NullMarked;
