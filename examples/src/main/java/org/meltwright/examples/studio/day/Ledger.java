// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.meltwright.core.batch.WeighingLine;

/**
 * What the day's jobs take and give; a blocked job neither takes nor gives, and one of unknown
 * amount is not counted.
 *
 * @param jobs the jobs of the day
 * @param leftovers what is left of earlier batches, by the name of the recipe, in kg
 */
public record Ledger(List<JobSheet> jobs, Map<String, Double> leftovers) {

  public Ledger {
    jobs = List.copyOf(jobs);
    leftovers = Map.copyOf(leftovers);
  }

  /**
   * Returns what a recipe gives today, net, in kg.
   *
   * @param recipe its name
   * @return the mass in kg; zero where none is made or it is not known
   */
  public double made(String recipe) {
    return open()
        .filter(batch -> batch.job().name().equals(recipe))
        .mapToDouble(batch -> batch.net().massKilograms())
        .sum();
  }

  /**
   * Returns what is there of a recipe from earlier batches, in kg.
   *
   * @param recipe its name
   * @return the mass in kg; zero where none is stated
   */
  public double there(String recipe) {
    return leftovers.getOrDefault(recipe, 0.0);
  }

  /**
   * Returns what the jobs take from each other and from what is left over.
   *
   * @return the masses in kg, by the name of the recipe
   */
  public Map<String, Double> taken() {
    Map<String, Double> taken = new TreeMap<>();
    open()
        .flatMap(batch -> batch.weighing().lines().stream())
        .forEach(
            line ->
                line.ingredient()
                    .recipe()
                    .ifPresent(
                        r ->
                            taken.merge(r.name(), line.rounded().printedKilograms(), Double::sum)));
    return taken;
  }

  /**
   * Returns what is left of a recipe at the end of the day.
   *
   * @param recipe its name
   * @return the mass in kg, never below zero
   */
  public double left(String recipe) {
    return Math.max(0, there(recipe) + made(recipe) - taken().getOrDefault(recipe, 0.0));
  }

  /**
   * Returns what the jobs take from the shelf.
   *
   * @param item what stands on the shelf
   * @return the mass in kg
   */
  public double needed(ShelfItem item) {
    return open()
        .flatMap(batch -> batch.weighing().lines().stream())
        .filter(line -> isFrom(item, line))
        .mapToDouble(line -> line.rounded().printedKilograms())
        .sum();
  }

  private static boolean isFrom(ShelfItem item, WeighingLine line) {
    return line.ingredient().material().filter(m -> m.isMeantBy(item.material())).isPresent();
  }

  /**
   * Returns what the shelf lacks for the jobs.
   *
   * @param item what stands on the shelf
   * @return the mass in kg; zero within half a step of its balance
   */
  public double missing(ShelfItem item) {
    double missing = needed(item) - item.stockKilograms();
    return missing > item.balance().intervalKilograms() / 2 ? missing : 0;
  }

  /**
   * Returns what is left on the shelf at the end of the day.
   *
   * @param item what stands on the shelf
   * @return the mass in kg, never below zero
   */
  public double left(ShelfItem item) {
    return Math.max(0, item.stockKilograms() - needed(item));
  }

  /**
   * Returns the jobs of which it is not known what they take and give.
   *
   * @return the jobs, blocked ones not among them
   */
  public List<JobSheet> uncounted() {
    return jobs.stream().filter(job -> !job.isBlocked() && job.batch().isEmpty()).toList();
  }

  private Stream<BatchSheet> open() {
    return jobs.stream().flatMap(job -> job.allowed().stream());
  }
}
