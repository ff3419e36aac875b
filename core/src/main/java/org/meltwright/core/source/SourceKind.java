// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.source;

/**
 * What kind of publication a figure stands in: the first axis of evidence, strongest first.
 *
 * <p>A pharmacopoeia outranks a page of the trade:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-bleached");
 * Source source = wax.require(PropertyKey.MELTING_RANGE).source();
 * source.kind(); // STANDARD
 * source.kind().compareTo(SourceKind.WEB_PAGE) < 0; // true
 * }</pre>
 */
public enum SourceKind {
  /** A measurement of one's own, on the material that lies on the bench. */
  OWN_MEASUREMENT,
  /** A published standard or pharmacopoeia. */
  STANDARD,
  /** A law, a regulation or an official list. */
  REGULATION,
  /** A handbook or textbook. */
  HANDBOOK,
  /** A paper in a journal. */
  PAPER,
  /** A record of a museum or a conservation database. */
  MUSEUM_RECORD,
  /** A supplier's data sheet or specification. */
  DATA_SHEET,
  /** An encyclopaedia or a web page. */
  WEB_PAGE,
  /** A rule of the trade that no publication measures. */
  COMMON_PRACTICE,
  /** Our own arithmetic on other figures. */
  CALCULATED
}
