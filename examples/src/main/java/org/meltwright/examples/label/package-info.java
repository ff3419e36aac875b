// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * A hazard label as a page to print.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.label.LabelPage} — the label as one HTML file.
 *   <li>{@link org.meltwright.examples.label.PictogramDrawing} — the pictograms as SVG, drawn here.
 *   <li>{@link org.meltwright.examples.label.PrintLabel} — a program that writes one.
 * </ol>
 */
@NullMarked
package org.meltwright.examples.label;

import org.jspecify.annotations.NullMarked;
