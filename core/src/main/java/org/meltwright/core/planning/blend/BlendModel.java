// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.numeric.LinearAnswer;
import org.meltwright.core.numeric.LinearProgram;

/**
 * A blend as a linear programme: a column for each part, one for the size of the whole, and
 * helpers.
 *
 * <p>All wishes are sums over the parts, held against others, so only proportions count until one
 * row sets a size: either the blend is one kilogram, with its share of the stock one over its mass;
 * or it is as large as it is. A wish whose divisor is then a constant stands with its bound on the
 * right side, so that prices and their ranges are exact.
 */
final class BlendModel {

  /** What sets the size. */
  enum Size {
    KILOGRAM,
    WHOLE
  }

  private final Coefficients coefficients;

  /** Beside the largest factor of its row; far below what a certificate allows. */
  private static final double REMNANT = 1e-14;

  final List<BlendPart> parts;
  final List<Bounded> wishes;
  final List<BlendRow> rows = new ArrayList<>();
  private final Size size;
  private final boolean everyLot;
  private final boolean[] isAllowed;
  private final OptionalDouble exact;
  private final Map<Composition, Integer> changes = new HashMap<>();
  private final Map<Integer, Integer> elastics = new HashMap<>();
  private final List<double[]> changeRows = new ArrayList<>();
  private int columns;

  BlendModel(
      Coefficients coefficients,
      List<Bounded> wishes,
      List<Composition> recipes,
      boolean everyLot,
      Size size,
      boolean[] isAllowed) {
    this.coefficients = coefficients;
    this.parts = coefficients.parts();
    this.wishes = wishes;
    this.everyLot = everyLot;
    this.size = size;
    this.isAllowed = isAllowed;
    this.exact = exact(wishes);
    this.columns = parts.size() + 1;
    for (int w = 0; w < wishes.size(); w++) {
      if (!wishes.get(w).isHard()) {
        elastics.put(w, columns++);
      }
    }
    for (Composition recipe : recipes) {
      follow(recipe);
    }
    columns += 2; // how far a share lies above and below what is aimed at
    for (int w = 0; w < wishes.size(); w++) {
      add(w);
    }
  }

  private static OptionalDouble exact(List<Bounded> wishes) {
    for (Bounded wish : wishes) {
      if (wish.isHard() && isWholeAmount(wish) && wish.low() == wish.high()) {
        return OptionalDouble.of(wish.low());
      }
    }
    return OptionalDouble.empty();
  }

  static boolean isWholeAmount(Bounded wish) {
    return wish.figure() instanceof Figures.Amount amount
        && amount.part().equals(Figures.Amount.ALL);
  }

  /** Two columns for each material: how far its share lies above and below that of a recipe. */
  private void follow(Composition recipe) {
    if (changes.containsKey(recipe)) {
      return;
    }
    changes.put(recipe, columns);
    Set<Material> materials = new LinkedHashSet<>(recipe.materials());
    parts.forEach(p -> materials.addAll(p.composition().materials()));
    for (Material material : materials) {
      double wanted = share(recipe, material);
      double[] row = new double[columns + 2];
      for (int p = 0; p < parts.size(); p++) {
        row[p] = share(parts.get(p).composition(), material) - wanted;
      }
      row[columns] = -1;
      row[columns + 1] = 1;
      columns += 2;
      changeRows.add(row);
    }
  }

  private static double share(Composition mix, Material material) {
    int line = mix.materials().indexOf(material);
    return line < 0 ? 0 : mix.massFractionValue(line);
  }

  /** What a kind of divisor is in every answer; empty if that depends. */
  private OptionalDouble constant(Figure.Per per) {
    boolean isUnit = per == (size == Size.KILOGRAM ? Figure.Per.BLEND : Figure.Per.AMOUNT);
    if (per == Figure.Per.OTHER) {
      return OptionalDouble.empty();
    }
    if (isUnit) {
      return OptionalDouble.of(1);
    }
    return exact.isEmpty()
        ? exact
        : OptionalDouble.of(
            per == Figure.Per.BLEND ? exact.getAsDouble() : 1 / exact.getAsDouble());
  }

  private void add(int index) {
    Bounded wish = wishes.get(index);
    boolean isDefinition = isWholeAmount(wish) && wish.low() == wish.high() && isSizeSet(wish);
    if (isDefinition) {
      return;
    }
    boolean isBoth = wish.low() == wish.high() && !everyLot && wish.isHard();
    if (wish.hasLow()) {
      rows.add(row(index, false, isBoth));
    }
    if (wish.hasHigh() && !isBoth) {
      rows.add(row(index, true, false));
    }
  }

  /** The first exact amount is what a kilogram is a part of: no row of its own. */
  private boolean isSizeSet(Bounded wish) {
    return size == Size.KILOGRAM && wish.isHard() && wish.low() == exact.orElse(0);
  }

  private BlendRow row(int index, boolean isUpper, boolean isBoth) {
    Bounded wish = wishes.get(index);
    double bound = wish.bound(isUpper);
    OptionalDouble constant = constant(wish.figure().per());
    double[] factors = factors(wish.figure(), end(isUpper), bound, constant.isPresent());
    double right = constant.isPresent() ? bound * constant.getAsDouble() : 0;
    Integer elastic = elastics.get(index);
    if (elastic != null) {
      factors[elastic] = (isUpper ? -1 : 1) * weight(wish, bound) * constant.orElse(1);
    }
    return new BlendRow(
        wish, isUpper, isBoth, factors, right, constant.orElse(0), elastic == null ? -1 : elastic);
  }

  private Figure.End end(boolean isUpper) {
    return !everyLot ? Figure.End.MIDDLE : isUpper ? Figure.End.LARGEST : Figure.End.SMALLEST;
  }

  /** A miss of a ranked wish counts as a part of its bound. */
  static double weight(Bounded wish, double bound) {
    return Math.max(Math.abs(bound), wish.figure().isInverse() ? 0 : wish.figure().step().size());
  }

  double[] factors(Figure figure, Figure.End end, double bound, boolean isConstant) {
    double[] known =
        isConstant ? coefficients.over(figure, end) : coefficients.excess(figure, bound, end);
    double[] factors = Arrays.copyOf(known, columns);
    clear(factors);
    if (figure.per() == Figure.Per.AMOUNT && !isConstant) {
      factors[parts.size()] = -bound;
    }
    if (figure instanceof Figures.Change change) {
      fillChange(factors, change.recipe());
    }
    return factors;
  }

  /** What is left of a difference that is zero on paper is zero. */
  private static void clear(double... factors) {
    double most = 0;
    for (double factor : factors) {
      most = Math.max(most, Math.abs(factor));
    }
    for (int c = 0; c < factors.length; c++) {
      factors[c] = Math.abs(factors[c]) < REMNANT * most ? 0 : factors[c];
    }
  }

  private void fillChange(double[] factors, Composition recipe) {
    int first = changes.getOrDefault(recipe, 0);
    Set<Material> materials = new LinkedHashSet<>(recipe.materials());
    parts.forEach(p -> materials.addAll(p.composition().materials()));
    Arrays.fill(factors, first, first + 2 * materials.size(), 0.5);
  }

  /** The factors of what is least. */
  double[] objective(BlendAim aim) {
    double[] cost = new double[columns];
    if (aim instanceof BlendAim.Most most) {
      for (int p = 0; p < parts.size(); p++) {
        cost[p] = most.names().contains(parts.get(p).name()) ? -1 : 0;
      }
    } else if (aim instanceof BlendAim.Closest) {
      cost[columns - 2] = 1;
      cost[columns - 1] = 1;
    } else {
      double[] factors = factors(aim.figure(), Figure.End.MIDDLE, 0, true);
      System.arraycopy(factors, 0, cost, 0, columns);
    }
    return cost;
  }

  /** Starts a programme with all rows; the rows of the wishes come first, in their order. */
  LinearProgram program(double[] cost, @Nullable BlendAim aim) {
    LinearProgram program = LinearProgram.minimising(cost);
    for (BlendRow row : rows) {
      double least = row.isUpper() ? Double.NEGATIVE_INFINITY : row.right();
      double most = row.isUpper() || row.isBoth() ? row.right() : Double.POSITIVE_INFINITY;
      program.row(least, most, row.factors());
    }
    for (double[] row : changeRows) {
      program.row(0, 0, row);
    }
    if (aim instanceof BlendAim.Closest closest) {
      target(program, closest);
    } else {
      program.column(columns - 2, 0, 0).column(columns - 1, 0, 0);
    }
    for (int p = 0; p < parts.size(); p++) {
      program.column(p, 0, isAllowed[p] ? Double.POSITIVE_INFINITY : 0);
    }
    return sized(program);
  }

  private void target(LinearProgram program, BlendAim.Closest closest) {
    double wanted = closest.target().share().value();
    OptionalDouble constant = constant(Figure.Per.BLEND);
    double[] factors = factors(closest.figure(), Figure.End.MIDDLE, wanted, constant.isPresent());
    factors[columns - 2] = -1;
    factors[columns - 1] = 1;
    double right = wanted * constant.orElse(0);
    program.row(right, right, factors);
  }

  private LinearProgram sized(LinearProgram program) {
    int scale = parts.size();
    if (size == Size.WHOLE) {
      return program.column(scale, 1, 1);
    }
    boolean isUsed = false;
    for (BlendRow row : rows) {
      isUsed |= row.factors()[scale] != 0;
    }
    program.column(scale, 0, isUsed ? Double.POSITIVE_INFINITY : 0);
    double[] ones = new double[parts.size()];
    Arrays.fill(ones, 1);
    return program.row(1, 1, ones);
  }

  int columns() {
    return columns;
  }

  /** The helpers of the wishes of one rank. */
  List<Integer> elastics(int rank) {
    List<Integer> found = new ArrayList<>();
    for (int w = 0; w < wishes.size(); w++) {
      Integer column = elastics.get(w);
      if (column != null && wishes.get(w).place() == rank) {
        found.add(column);
      }
    }
    return found;
  }

  /** What goes in of each part, of one kilogram or of the whole. */
  double[] amounts(LinearAnswer answer) {
    return Arrays.copyOf(answer.values(), parts.size());
  }

  /** Which parts may go in. */
  boolean[] choice() {
    return isAllowed;
  }

  Size size() {
    return size;
  }
}
