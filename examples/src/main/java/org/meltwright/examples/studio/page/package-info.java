// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * A page for people, once as plain text and once as a self-contained HTML file.
 *
 * <ol>
 *   <li>{@link org.meltwright.examples.studio.page.Page} — what is said: cards, headings, facts,
 *       tables, findings, sources.
 *   <li>{@link org.meltwright.examples.studio.page.Say} — in which language and notation; its words
 *       are one file for each language.
 *   <li>{@link org.meltwright.examples.studio.page.TextPage} and {@link
 *       org.meltwright.examples.studio.page.HtmlPage} — how it looks in a terminal and in a
 *       browser.
 * </ol>
 */
@NullMarked
package org.meltwright.examples.studio.page;

import org.jspecify.annotations.NullMarked;
