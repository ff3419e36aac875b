// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.List;

/**
 * One effect that a substance is classified for, as the rules weigh it: statements on reproduction
 * fall into fertility, development and "not said which", each with a category and limit of its own.
 *
 * @param category the category of this effect
 * @param strand F, D or U for reproduction; empty for all others
 * @param statement the code of the statement
 * @param details routes and organs
 */
record Claim(String category, String strand, String statement, List<String> details) {

  static List<Claim> of(HazardCategory c) {
    if (c.hazardClass() != HazardClass.REPRODUCTION) {
      return List.of(new Claim(c.category(), "", c.statement(), c.details()));
    }
    List<Claim> claims = new ArrayList<>();
    for (String[] part : strands(c.category(), c.statement())) {
      claims.add(new Claim(part[1], part[0], c.statement(), c.details()));
    }
    return claims;
  }

  /** Returns pairs of strand and category: H360Df of category 1A is D in 1A and F in 2. */
  static List<String[]> strands(String category, String statement) {
    List<String[]> pairs = new ArrayList<>();
    for (char letter : statement.substring(4).toCharArray()) {
      String strand = String.valueOf(Character.toUpperCase(letter));
      pairs.add(new String[] {strand, Character.isUpperCase(letter) ? category : "2"});
    }
    return pairs.isEmpty() ? List.<String[]>of(new String[] {"U", category}) : pairs;
  }
}
