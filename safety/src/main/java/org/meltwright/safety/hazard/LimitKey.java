// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/** What a general limit of a class speaks of: an ingredient of a category, and what it leads to. */
record LimitKey(Kind kind, Category of, Category reached) {

  /** What a limit is for. */
  enum Kind {
    /** From this share on an ingredient of one category takes the mixture to another. */
    LIMIT,
    /** The same in a gas. */
    LIMIT_GAS,
    /** The same for what does not add up with others. */
    NON_ADDITIVE,
    /** Below this share an ingredient is not counted. */
    CUT_OFF,
    /** From this share on an allergy may be set off. */
    ELICITATION,
    /** From this share on the label of what is not classified says that there is a data sheet. */
    EUH210,
    /** From this share on a data sheet is due to a professional who asks. */
    ON_REQUEST
  }
}
