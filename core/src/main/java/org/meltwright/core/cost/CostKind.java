// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

/** What money is spent on. */
public enum CostKind {
  /** What goes into the product. */
  MATERIAL,
  /** Heat and light. */
  ENERGY,
  /** Active working time. */
  LABOUR,
  /** The share of things that last. */
  EQUIPMENT,
  /** Anything else: packaging, room, freight. */
  OTHER,
  /** Lines added up under one name, such as a recipe within a recipe. */
  GROUP
}
