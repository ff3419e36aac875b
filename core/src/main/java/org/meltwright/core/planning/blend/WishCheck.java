// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.List;
import java.util.Optional;
import org.meltwright.core.planning.PlanningProblem;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;

/** Whether a wish can be asked of some parts. */
final class WishCheck {

  private WishCheck() {}

  static void check(Wish wish, Coefficients coefficients, String path, Problems problems) {
    List<BlendPart> parts = coefficients.parts();
    if (wish instanceof PartCount) {
      if (parts.size() > Wish.MOST_CANDIDATES) {
        problems.add(
            Problem.of(PlanningProblem.TOO_MANY_CANDIDATES, Integer.toString(parts.size()))
                .under(path));
      }
      return;
    }
    Bounded bounded = (Bounded) wish;
    partOf(bounded.figure()).ifPresent(name -> checkPart(name, parts, path, problems));
    if (bounded.low() == Bounded.ALL_OF_IT) {
      checkStock(((Figures.Amount) bounded.figure()).part(), parts, path, problems);
    }
    double bound = bounded.hasHigh() ? bounded.high() : bounded.low();
    if (!isKnown(bounded.figure(), bound, coefficients)) {
      tellUnknown(bounded.figure(), parts, path, problems);
    }
  }

  /** Whether a figure of all parts is known; all that is not is told. */
  static void checkFigure(Figure figure, Coefficients coefficients, String path) {
    if (!isKnown(figure, 1, coefficients)) {
      Problems problems = new Problems();
      tellUnknown(figure, coefficients.parts(), path, problems);
      problems.throwIfAny();
    }
  }

  /** Looks all figures up; what is found is kept for the search. */
  private static boolean isKnown(Figure figure, double bound, Coefficients coefficients) {
    try {
      if (figure.per() == Figure.Per.OTHER) {
        coefficients.excess(figure, bound, Figure.End.MIDDLE);
      } else {
        coefficients.over(figure, Figure.End.MIDDLE);
      }
      return true;
    } catch (ProblemException e) {
      return false;
    }
  }

  private static void tellUnknown(
      Figure figure, List<BlendPart> parts, String path, Problems problems) {
    for (BlendPart part : parts) {
      problems.attempt(path + "/" + part.name(), () -> figure.excess(part, 1, Figure.End.MIDDLE));
    }
  }

  private static Optional<String> partOf(Figure figure) {
    if (figure instanceof Figures.PartShare share) {
      return Optional.of(share.part());
    }
    return figure instanceof Figures.Amount amount && !amount.part().equals(Figures.Amount.ALL)
        ? Optional.of(amount.part())
        : Optional.empty();
  }

  static void checkPart(String name, List<BlendPart> parts, String path, Problems problems) {
    if (parts.stream().noneMatch(p -> p.name().equals(name))) {
      problems.add(Problem.of(PlanningProblem.NO_SUCH_PART, name).under(path));
    }
  }

  private static void checkStock(
      String name, List<BlendPart> parts, String path, Problems problems) {
    if (parts.stream().anyMatch(p -> p.name().equals(name) && p.stockKilograms().isEmpty())) {
      problems.add(Problem.of(PlanningProblem.NO_STOCK, name).under(path));
    }
  }
}
