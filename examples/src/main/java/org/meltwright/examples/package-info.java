// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Programs that answer one question each, and the studio sheet, the main job.
 *
 * <p>Each {@code main} runs in a test that checks what it prints.
 */
@NullMarked
package org.meltwright.examples;

import org.jspecify.annotations.NullMarked;
