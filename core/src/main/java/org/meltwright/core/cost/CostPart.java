// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

/** A part of what an order costs, of which bases for duty and tax are made. */
public enum CostPart {
  /** The goods at their prices, without tax. */
  GOODS,
  /** Carriage. */
  FREIGHT,
  /** Insurance of the carriage. */
  INSURANCE,
  /** An addition to the customs value that some regimes prescribe for the tax base; never paid. */
  UPLIFT,
  /** Duty. */
  DUTY,
  /** What the carrier or agent asks for clearing the goods. */
  HANDLING,
  /** Tax on the purchase or the import. */
  TAX
}
