// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * What to weigh for a batch: each line to the interval of its own balance, the total within half
 * the coarsest interval of the exact one, and the shares that are really reached.
 *
 * <p>A line that uses up all that is left of something is not weighed: it stands as it is.
 *
 * <p>For example, 250 g of medium: the resin on the fine balance, the wax on the coarse one.
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
 * Balance fine = Balance.of("pocket balance", grams(200), grams(0.01));
 * Balance coarse = Balance.of("kitchen balance", kilograms(5), grams(1));
 * Batch batch = Batch.ofTotal(medium, grams(250), Losses.NONE);
 * WeighingSheet sheet = WeighingSheet.of(batch, List.of(fine, coarse));
 * sheet.lines().get(0).rounded().printedKilograms(); // 0.02778 kg
 * sheet.lines().get(1).rounded().printedKilograms(); // 0.222 kg
 * sheet.charge().composition().massFraction(resin).percent(); // 11.12 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class WeighingSheet {

  private final Batch batch;
  private final List<WeighingLine> lines;

  /**
   * Returns the sheet of a batch; each line goes to the finest balance that carries it, or in
   * portions to the one that carries most.
   *
   * @param batch the batch
   * @param balances the balances of the studio, at least one
   * @return the sheet
   * @throws ProblemException if there is no balance
   */
  public static WeighingSheet of(Batch batch, List<Balance> balances) {
    if (balances.isEmpty()) {
      throw new ProblemException(Problem.of(BatchProblem.NO_BALANCE, batch.recipe().name()));
    }
    return of(batch, line -> choose(line, balances));
  }

  /**
   * Returns the sheet of a batch, each line on a balance of your choice.
   *
   * @param batch the batch
   * @param balance gives the balance of a line
   * @return the sheet
   */
  public static WeighingSheet of(Batch batch, Function<BatchLine, Balance> balance) {
    return new WeighingSheet(batch, balance);
  }

  private static Balance choose(BatchLine line, List<Balance> balances) {
    return balances.stream()
        .filter(b -> b.capacityKilograms() >= line.massKilograms())
        .min(Comparator.comparingDouble(Balance::intervalKilograms))
        .orElseGet(
            () ->
                balances.stream()
                    .max(Comparator.comparingDouble(Balance::capacityKilograms))
                    .orElseThrow());
  }

  private WeighingSheet(Batch batch, Function<BatchLine, Balance> choice) {
    this.batch = batch;
    List<BatchLine> exact = batch.lines();
    List<Balance> balances = exact.stream().map(choice).toList();
    List<RoundedLine> rounded = rounded(batch, exact, balances);
    List<AdditionHint> hints = AdditionOrder.hints(exact);
    List<WeighingLine> all = new ArrayList<>();
    for (int i = 0; i < exact.size(); i++) {
      all.add(
          new WeighingLine(
              exact.get(i).ingredient(), balances.get(i), rounded.get(i), hints.get(i)));
    }
    this.lines = List.copyOf(all);
  }

  private static List<RoundedLine> rounded(
      Batch batch, List<BatchLine> exact, List<Balance> balances) {
    List<LineRounding.ExactLine> weighed = new ArrayList<>();
    for (int i = 0; i < exact.size(); i++) {
      if (!isUsedUp(batch, exact.get(i))) {
        weighed.add(
            new LineRounding.ExactLine(exact.get(i).massKilograms(), balances.get(i).interval()));
      }
    }
    var printed = LineRounding.of(weighed).iterator();
    List<RoundedLine> all = new ArrayList<>();
    for (int i = 0; i < exact.size(); i++) {
      double mass = exact.get(i).massKilograms();
      all.add(
          isUsedUp(batch, exact.get(i))
              ? new RoundedLine(mass, mass, balances.get(i).interval())
              : printed.next());
    }
    return all;
  }

  private static boolean isUsedUp(Batch batch, BatchLine line) {
    return batch.usedUp().filter(line.ingredient()::isMeantBy).isPresent();
  }

  /**
   * Returns the batch.
   *
   * @return what is weighed for
   */
  public Batch batch() {
    return batch;
  }

  /** {@return the lines, in the recipe's order} */
  public List<WeighingLine> lines() {
    return lines;
  }

  /**
   * Returns the lines as they go into the pot: what melts first and largest first, the hardest of
   * it with the first third of the largest; then what dissolves; last what is stirred in.
   *
   * @return the lines, in the order of weighing
   */
  public List<WeighingLine> inOrder() {
    return lines.stream()
        .sorted(
            Comparator.comparing(WeighingLine::hint)
                .thenComparing(l -> -l.rounded().exactKilograms()))
        .toList();
  }

  /**
   * Returns the lines that their balance cannot show, since they are less than one step: weigh them
   * on a finer balance, or make a larger batch.
   *
   * @return the lines; empty if every balance is fine enough
   */
  public List<WeighingLine> belowInterval() {
    return lines.stream().filter(l -> l.rounded().isBelowInterval()).toList();
  }

  /**
   * Returns the exact total.
   *
   * @return the mass in kg
   */
  public double exactTotalKilograms() {
    return batch.charge().massKilograms();
  }

  /**
   * Returns the total of the printed lines.
   *
   * @return the mass in kg, within half the coarsest interval of the exact total
   */
  public double printedTotalKilograms() {
    return lines.stream()
        .map(l -> BigDecimal.valueOf(l.rounded().printedKilograms()))
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .doubleValue();
  }

  /**
   * Returns the batch of the printed lines: the shares really reached, and what is lost of them.
   *
   * @return the batch as it is weighed
   * @throws ProblemException if every printed line is zero, or nothing is left of them
   */
  public Batch asWeighed() {
    List<RecipePart> parts =
        lines.stream()
            .map(l -> new RecipePart(l.ingredient(), l.rounded().printedKilograms()))
            .toList();
    Recipe weighed = Recipe.of(batch.recipe().name(), parts);
    return Batch.ofTotal(weighed, QuantityKind.MASS.ofSi(printedTotalKilograms()), batch.losses());
  }

  /**
   * Returns what is in the pot when the printed lines are weighed: the shares really reached.
   *
   * @return the charge, before losses
   * @throws ProblemException if every printed line is zero
   */
  public Mixture charge() {
    return asWeighed().charge();
  }

  /**
   * Returns what is left to cast when the printed lines are weighed.
   *
   * @return the net mixture, after losses
   * @throws ProblemException if nothing is left
   */
  public Mixture net() {
    return asWeighed().net();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof WeighingSheet that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(batch, lines);
  }

  @Override
  public String toString() {
    return "weighing sheet of " + lines.size() + " lines for " + batch;
  }
}
