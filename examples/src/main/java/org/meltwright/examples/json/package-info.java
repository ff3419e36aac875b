// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * How an app takes JSON in: all problems at once, each with its path, nothing half-read; and how it
 * answers with the library's record forms.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.json.JsonTree} — text becomes a tree, within bounds.
 *   <li>{@link org.meltwright.examples.json.RecordShape} — the tree is held against a draft record.
 *   <li>{@link org.meltwright.examples.json.DraftReader} — both, then Bean Validation: a draft or
 *       problems.
 *   <li>{@link org.meltwright.examples.json.JsonEndpoint} — the same behind HTTP: a result or all
 *       problems go out.
 * </ol>
 */
@NullMarked
package org.meltwright.examples.json;

import org.jspecify.annotations.NullMarked;
