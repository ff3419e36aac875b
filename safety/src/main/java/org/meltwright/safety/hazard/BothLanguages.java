// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;
import java.util.Optional;

/** One statement of the maker in the two languages of a label. */
record BothLanguages(String english, String german) {

  static final BothLanguages UNSTATED = new BothLanguages("", "");

  Optional<String> in(Locale reader) {
    return HazardTexts.stated(HazardTexts.isGerman(reader) ? german : english);
  }

  boolean isComplete() {
    return !english.isBlank() && !german.isBlank();
  }
}
