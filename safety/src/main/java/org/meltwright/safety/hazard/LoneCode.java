// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import org.jspecify.annotations.Nullable;

/** A code that is not of the class behind which it stands, until a class takes it. */
final class LoneCode {

  final SheetToken code;
  final @Nullable SheetClaim claim;
  boolean taken;

  LoneCode(SheetToken code, @Nullable SheetClaim claim) {
    this.code = code;
    this.claim = claim;
  }
}
