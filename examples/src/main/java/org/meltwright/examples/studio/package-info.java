// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/** The studio sheet: from a studio file to what to weigh, whether to heat, and what it costs. */
@NullMarked
package org.meltwright.examples.studio;

import org.jspecify.annotations.NullMarked;
