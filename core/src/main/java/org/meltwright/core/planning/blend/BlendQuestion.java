// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.mixture.ShareTarget;
import org.meltwright.core.planning.PlanningProblem;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.ScaleInterval;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * Which parts, and how much of each: what may go in, and what is wished for. The stock of a part is
 * a wish too, and hard.
 *
 * <p>For example, what two old media make at one part of resin in eight, as much as they can:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * List<Material> both = List.of(shelf.require("damar"), shelf.require("beeswax-yellow"));
 * List<BlendPart> parts =
 *     List.of(
 *         BlendPart.of("strong", Mixture.of(Composition.ofParts(both, 1, 6), grams(500))),
 *         BlendPart.of("weak", Mixture.of(Composition.ofParts(both, 1, 10), grams(300))));
 * Wish oneInEight = Wish.share(ShareOf.RESIN, Wish.percent(12.5, 12.5));
 * BlendQuestion question = BlendQuestion.of(parts, List.of(oneInEight));
 * BlendAnswer.Found used = question.mostOf("strong", "weak").require();
 * used.value(); // 0.7619 kg
 * used.line("weak").leftKilograms(); // 0.0381 kg
 * // what may not be mixed
 * question.with(Wish.useUp("weak")).mostOf("strong").sentences().size(); // 3
 * }</pre>
 *
 * <p>Figures of materials are ranges. A question takes the middle of each, unless it is {@linkplain
 * #forEveryLot for every lot}.
 *
 * <p>Immutable and thread-safe. The order of the parts and of the wishes makes no difference to
 * what is answered.
 */
public final class BlendQuestion {

  private final List<BlendPart> parts;

  /** What is looked up of the parts; no part of what the question is. */
  private final Coefficients coefficients;

  private final List<Wish> wishes;
  private final boolean everyLot;
  private final @Nullable Composition usual;
  private final @Nullable ScaleInterval interval;
  private final @Nullable WindowWish window;

  /**
   * Returns the question.
   *
   * @param parts what may go in, each name once
   * @param wishes what is wished for
   * @return the question
   * @throws ProblemException if there is no part, a name stands twice, a wish names no part, a
   *     stock or a figure is missing, or few parts are wished for out of more than twelve; all
   *     problems at once
   */
  public static BlendQuestion of(List<BlendPart> parts, List<Wish> wishes) {
    List<BlendPart> sorted = parts.stream().sorted(Comparator.comparing(BlendPart::name)).toList();
    Coefficients coefficients = new Coefficients(sorted);
    List<Wish> distinct = wishes.stream().distinct().toList();
    Problems problems = new Problems();
    problems.addAll(named(sorted));
    for (int w = 0; w < distinct.size(); w++) {
      WishCheck.check(distinct.get(w), coefficients, "/wishes/" + w, problems);
    }
    problems.throwIfAny();
    return new BlendQuestion(coefficients, distinct, false, null, null, null);
  }

  private static List<Problem> named(List<BlendPart> parts) {
    List<Problem> problems = new ArrayList<>();
    if (parts.isEmpty()) {
      problems.add(Problem.of(PlanningProblem.NO_SUCH_PART, "").under("/parts"));
    }
    Set<String> names = new HashSet<>();
    for (BlendPart part : parts) {
      if (!names.add(part.name())) {
        problems.add(Problem.of(PlanningProblem.TWICE, part.name()).under("/parts"));
      }
    }
    return problems;
  }

  private BlendQuestion(
      Coefficients coefficients,
      List<Wish> wishes,
      boolean everyLot,
      @Nullable Composition usual,
      @Nullable ScaleInterval interval,
      @Nullable WindowWish window) {
    this.coefficients = coefficients;
    this.parts = coefficients.parts();
    this.wishes = wishes;
    this.everyLot = everyLot;
    this.usual = usual;
    this.interval = interval;
    this.window = window;
  }

  /**
   * Returns a copy with one more wish.
   *
   * @param wish the wish
   * @return the new question
   * @throws ProblemException as {@link #of} does
   */
  public BlendQuestion with(Wish wish) {
    List<Wish> more = new ArrayList<>(wishes);
    more.add(wish);
    BlendQuestion checked = of(parts, more);
    return new BlendQuestion(
        checked.coefficients, checked.wishes, everyLot, usual, interval, window);
  }

  /**
   * Returns a copy whose answers keep the hard wishes, and the ranked ones that do not give way,
   * with every lot: each figure that is a range at its worse end for each wish.
   *
   * <p>The aim counts the middle of all figures. For sums and means by mass the worst end is exact.
   * A share of the volume and a ratio take a figure that stands above and below at one end, not at
   * both; where the share of a constituent is a range, all shares of its material still make up the
   * whole.
   *
   * @return the new question
   */
  public BlendQuestion forEveryLot() {
    return new BlendQuestion(coefficients, wishes, true, usual, interval, window);
  }

  /**
   * Returns a copy that knows the usual recipe: of several blends as good, the nearest to it is
   * shown.
   *
   * @param recipe the recipe, in materials
   * @return the new question
   */
  public BlendQuestion withUsual(Composition recipe) {
    return new BlendQuestion(coefficients, wishes, everyLot, recipe, interval, window);
  }

  /**
   * Returns a copy whose amounts are whole steps of a balance.
   *
   * @param scale the step
   * @return the new question
   */
  public BlendQuestion weighedTo(ScaleInterval scale) {
    return new BlendQuestion(coefficients, wishes, everyLot, usual, scale, window);
  }

  /**
   * Returns a copy that refuses a blend whose working window is closed: the share of its
   * highest-melting component is cut down by a further wish, and the question asked again.
   *
   * <p>The estimate of the window is no sum over the parts, so the cut is not proved the least. A
   * window that may be closed, or cannot be told, is left to whoever reads it.
   *
   * @param ceiling the highest temperature allowed
   * @param margin how far above its clear point the mix has to be
   * @param leastWidth the least room between the bounds
   * @return the new question
   */
  public BlendQuestion withWorkingWindow(
      TemperaturePoint ceiling, TemperatureDifference margin, TemperatureDifference leastWidth) {
    return new BlendQuestion(
        coefficients,
        wishes,
        everyLot,
        usual,
        interval,
        new WindowWish(ceiling, margin, leastWidth));
  }

  /**
   * Returns the blend of least cost a kilogram.
   *
   * @return the answer
   * @throws ProblemException if a part has no price, or the currencies differ
   */
  public BlendAnswer cheapest() {
    BlendAim aim = new BlendAim.LeastCost(currency());
    WishCheck.checkFigure(aim.figure(), coefficients, "/parts");
    return answer(aim);
  }

  private String currency() {
    for (BlendPart part : parts) {
      if (part.price().isPresent()) {
        return part.price().get().currency().getCode();
      }
    }
    return "";
  }

  /**
   * Returns the blend that changes a recipe least: half the sum of the differences of all shares.
   *
   * @param recipe the recipe, in materials
   * @return the answer
   */
  public BlendAnswer nearestTo(Composition recipe) {
    return answer(new BlendAim.LeastChange(recipe));
  }

  /**
   * Returns the blend that takes the most of some parts.
   *
   * @param names the names of the parts, such as all that is left over
   * @return the answer
   * @throws ProblemException if there is no such part, or nothing limits how much that would be
   */
  public BlendAnswer mostOf(String... names) {
    Problems problems = new Problems();
    for (String name : names) {
      WishCheck.checkPart(name, parts, "/most/" + name, problems);
    }
    problems.throwIfAny();
    return answer(new BlendAim.Most(Set.copyOf(Arrays.asList(names))));
  }

  /**
   * Returns the blend nearest to a share.
   *
   * @param target what is counted, and the share wanted
   * @return the answer
   * @throws ProblemException if a material is itself a mix of which the parts are not stated
   */
  public BlendAnswer closest(ShareTarget target) {
    return answer(new BlendAim.Closest(target));
  }

  private BlendAnswer answer(BlendAim aim) {
    BlendAnswer answer = window == null ? solved(aim, List.of()) : window.answer(this, aim);
    if (everyLot && answer instanceof BlendAnswer.Found found) {
      return found.beside(inTheMiddle().answer(aim));
    }
    return answer;
  }

  private BlendQuestion inTheMiddle() {
    return new BlendQuestion(coefficients, wishes, false, usual, interval, window);
  }

  /** The answer without a look at the window, with some wishes more. */
  BlendAnswer solved(BlendAim aim, List<Wish> cuts) {
    Set<Wish> all = new LinkedHashSet<>();
    for (BlendPart part : parts) {
      if (part.stockKilograms().isPresent()) {
        all.add(stock(part.name(), part.stockKilograms().getAsDouble()));
      }
    }
    for (Wish wish : wishes) {
      all.add(told(wish));
    }
    all.addAll(cuts);
    BlendSearch search = new BlendSearch(coefficients, everyLot);
    return new BlendSolver(search, List.copyOf(all), aim, usual).answer(everyLot, interval);
  }

  private static Wish stock(String part, double kilograms) {
    return new Bounded(new Figures.Amount(part), Double.NEGATIVE_INFINITY, kilograms, Bounded.HARD);
  }

  /** All that there is of a part is a number now. */
  private Wish told(Wish wish) {
    if (!(wish instanceof Bounded bounded) || bounded.low() != Bounded.ALL_OF_IT) {
      return wish;
    }
    String name = ((Figures.Amount) bounded.figure()).part();
    return parts.stream()
        .filter(p -> p.name().equals(name))
        .map(p -> (Wish) bounded.withLow(p.stockKilograms().orElse(0)))
        .findFirst()
        .orElse(wish);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BlendQuestion that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(parts, wishes, everyLot, usual, interval, window);
  }

  @Override
  public String toString() {
    return "a blend of " + parts + " with " + wishes + (everyLot ? " for every lot" : "");
  }

  /**
   * A working window that must not be closed.
   *
   * @param ceiling the highest temperature allowed
   * @param margin how far above its clear point the mix has to be
   * @param leastWidth the least room between the bounds
   */
  private record WindowWish(
      TemperaturePoint ceiling, TemperatureDifference margin, TemperatureDifference leastWidth) {

    private static final int MOST_CUTS = 12;
    private static final int HALVINGS = 30;

    /** Asks, looks at the window, cuts the highest-melting component down, and asks again. */
    BlendAnswer answer(BlendQuestion question, BlendAim aim) {
      List<Wish> cuts = new ArrayList<>();
      for (int i = 0; i < MOST_CUTS; i++) {
        BlendAnswer answer = question.solved(aim, cuts);
        if (!(answer instanceof BlendAnswer.Found found)) {
          return answer;
        }
        Composition mix = found.mixture().composition();
        Optional<WorkingWindow> window = window(mix);
        Optional<Material> highest = window.flatMap(WorkingWindow::highestMelting);
        if (window.isEmpty() || highest.isEmpty() || !isClosed(window.get())) {
          return found.within(window.orElse(null), cuts);
        }
        cuts.add(cut(mix, highest.get(), other(question, aim, cuts, mix, highest.get())));
      }
      return new BlendAnswer.Undecided();
    }

    private Optional<WorkingWindow> window(Composition mix) {
      return WorkingWindow.find(mix, ceiling, margin, leastWidth);
    }

    private static boolean isClosed(WorkingWindow window) {
      return window.state() == WorkingWindow.State.CLOSED;
    }

    /**
     * The largest share of a material at which the window opens, on the way from the blend to the
     * best one without it; where there is none without it, with all else in its proportions.
     */
    private Wish cut(Composition mix, Material highest, Optional<Composition> other) {
      double open = 0;
      double closed = 1;
      double there = mix.massFractionValue(highest);
      for (int i = 0; i < HALVINGS && other.isPresent(); i++) {
        double middle = (open + closed) / 2;
        Composition between = Composition.blend(List.of(mix, other.get()), middle, 1 - middle);
        if (window(between).filter(w -> !isClosed(w)).isPresent()) {
          open = middle;
        } else {
          closed = middle;
        }
      }
      return atMost(highest, Math.floor(open * there * 1e4) / 1e4);
    }

    private Optional<Composition> other(
        BlendQuestion question, BlendAim aim, List<Wish> cuts, Composition mix, Material highest) {
      List<Wish> more = new ArrayList<>(cuts);
      more.add(atMost(highest, 0));
      if (question.solved(aim, more) instanceof BlendAnswer.Found found) {
        return Optional.of(found.composition());
      }
      return mix.massFractionValue(highest) < 1
          ? Optional.of(mix.without(highest))
          : Optional.empty();
    }

    private static Wish atMost(Material material, double share) {
      return Wish.share(
          ShareOf.material(material),
          new MassFractionRange(MassFraction.ZERO, MassFraction.of(share)));
    }
  }
}
