// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.time.LocalDate;

/**
 * For whom, from what and on which day a sheet is written.
 *
 * @param say the reader's language
 * @param day the day it is written on
 * @param file the name of the studio file
 */
public record Edition(Say say, LocalDate day, String file) {}
