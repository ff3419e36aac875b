// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What amounts are packed in, where they are counted: "2 packs of 500 g", "2 Packungen à 500 g".
 *
 * <p>Only these words are read, for others may be numbers or units themselves, such as a dozen.
 */
final class Packs {

  private static final Pattern OF =
      Pattern.compile(
          "(?iu)(?:packs?|packets?|packages?|bags?|blocks?|bars?|box(?:es)?|tins?|cans?|jars?"
              + "|tubes?|bottles?|cakes?|pieces?"
              + "|Packung(?:en)?|Päckchen|Pakete?|Beutel|Block|Blöcke|Riegel|Dosen?|Tuben?"
              + "|Flaschen?|Glas|Gläser|Kuchen|Stück|Sack|Säcke|Eimer)"
              + "\\s+(?:of|at|à|a|@|zu|zu je|mit|mit je|je)\\s+(?=\\d)");

  private Packs() {}

  /** Where the amount of one of them begins; -1 if no such words stand here. */
  static int behind(String text, int from, int to) {
    if (from >= to || !Character.isLetter(text.charAt(from))) {
      return -1;
    }
    Matcher packs = OF.matcher(text).region(from, to);
    return packs.lookingAt() ? packs.end() : -1;
  }
}
