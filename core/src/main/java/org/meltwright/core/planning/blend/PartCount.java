// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import org.meltwright.core.planning.PlanningProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A number of parts at most.
 *
 * @param most the number
 */
record PartCount(int most) implements Wish {

  @Override
  public Wish ranked(int rank) {
    throw new ProblemException(Problem.of(PlanningProblem.NOT_RANKED, Integer.toString(rank)));
  }

  @Override
  public OptionalInt rank() {
    return OptionalInt.empty();
  }

  @Override
  public Bilingual inWords() {
    return Bilingual.of(reader -> text(reader));
  }

  private String text(Locale reader) {
    return Messages.beside(PartCount.class)
        .text("wish.parts", reader, Map.of("high", Integer.toString(most)));
  }

  @Override
  public String toString() {
    return inWords().toString();
  }
}
