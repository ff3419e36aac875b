// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A formula as a tree: {@link Symbol}s and numbers at its leaves.
 *
 * <p>A tree says how a number comes about and is never worked out by this library: the number is
 * the one that the result kept. Whoever wants to can work it out anew. For example:
 *
 * <pre>{@code
 * Symbol area = Symbol.beside(Expr.class, "area", "m²");
 * Symbol film = Symbol.beside(Expr.class, "film", "m");
 * area.times(film.plus(Expr.of(0.001))).text(Locale.ENGLISH); // area × (film + 0.001)
 * }</pre>
 *
 * <p>All trees are immutable and thread-safe.
 */
public sealed interface Expr
    permits Symbol,
        Expr.Constant,
        Expr.Sum,
        Expr.Difference,
        Expr.Product,
        Expr.Quotient,
        Expr.Power,
        Expr.Call,
        Expr.Total,
        Expr.Choice {

  /** What a {@link Call} does with its arguments. */
  enum Function {
    /** The exponential function of one number. */
    EXP,
    /** The natural logarithm of one number. */
    LOG,
    /** The square root of one number. */
    ROOT,
    /** The error function of one number. */
    ERF,
    /** The least of all. */
    MIN,
    /** The greatest of all. */
    MAX,
    /** The first, rounded to the nearest multiple of the second; a half goes either way. */
    ROUND,
    /** The least whole number that is not below the one given. */
    CEILING,
    /** The greatest whole number that is not above the one given. */
    FLOOR
  }

  /**
   * A number that is the same in each case, in the unit that the symbols around it ask for.
   * Immutable and thread-safe.
   *
   * @param value the number
   */
  record Constant(double value) implements Expr {}

  /**
   * A sum. Immutable and thread-safe.
   *
   * @param terms what is added, two or more
   */
  record Sum(List<Expr> terms) implements Expr {

    public Sum {
      terms = List.copyOf(terms);
    }
  }

  /**
   * A difference. Immutable and thread-safe.
   *
   * @param from what is taken from
   * @param taken what is taken away
   */
  record Difference(Expr from, Expr taken) implements Expr {}

  /**
   * A product. Immutable and thread-safe.
   *
   * @param factors what is multiplied, two or more
   */
  record Product(List<Expr> factors) implements Expr {

    public Product {
      factors = List.copyOf(factors);
    }
  }

  /**
   * A quotient. Immutable and thread-safe.
   *
   * @param over what is divided
   * @param under what it is divided by
   */
  record Quotient(Expr over, Expr under) implements Expr {}

  /**
   * A power. Immutable and thread-safe.
   *
   * @param base what is raised
   * @param exponent to which power
   */
  record Power(Expr base, Expr exponent) implements Expr {}

  /**
   * A function of one number or several. Immutable and thread-safe.
   *
   * @param function the function
   * @param arguments what it is of
   */
  record Call(Function function, List<Expr> arguments) implements Expr {

    public Call {
      arguments = List.copyOf(arguments);
    }
  }

  /**
   * A sum over lines: over all things of which {@code over} is known. Immutable and thread-safe.
   *
   * @param over what each line has; {@link Symbol#of} names the line
   * @param each what is added for each line; a symbol that the line has not is the same for all
   */
  record Total(Symbol over, Expr each) implements Expr {}

  /**
   * One of two, by a condition. Immutable and thread-safe.
   *
   * @param left what is compared
   * @param right what it is compared with
   * @param reached what holds where the left one is at least the right one
   * @param below what holds where it is below it
   */
  record Choice(Expr left, Expr right, Expr reached, Expr below) implements Expr {}

  /**
   * Returns a number that is the same in each case.
   *
   * @param value the number
   * @return the leaf
   */
  static Expr of(double value) {
    return new Constant(value);
  }

  /**
   * Returns a function of one number or several.
   *
   * @param function the function
   * @param arguments what it is of
   * @return the tree
   */
  static Expr call(Function function, Expr... arguments) {
    return new Call(function, List.of(arguments));
  }

  /**
   * Returns the sum with another tree; the terms of a sum stay in one row.
   *
   * @param other what is added
   * @return the sum
   */
  default Expr plus(Expr other) {
    return this instanceof Sum sum
        ? new Sum(Stream.concat(sum.terms.stream(), Stream.of(other)).toList())
        : new Sum(List.of(this, other));
  }

  /**
   * Returns the difference to another tree.
   *
   * @param other what is taken away
   * @return the difference
   */
  default Expr minus(Expr other) {
    return new Difference(this, other);
  }

  /**
   * Returns the product with another tree; the factors of a product stay in one row.
   *
   * @param other the factor
   * @return the product
   */
  default Expr times(Expr other) {
    return this instanceof Product product
        ? new Product(Stream.concat(product.factors.stream(), Stream.of(other)).toList())
        : new Product(List.of(this, other));
  }

  /**
   * Returns the quotient by another tree.
   *
   * @param other what it is divided by
   * @return the quotient
   */
  default Expr over(Expr other) {
    return new Quotient(this, other);
  }

  /**
   * Returns a power.
   *
   * @param exponent to which power
   * @return the power
   */
  default Expr power(double exponent) {
    return new Power(this, of(exponent));
  }

  /**
   * Returns the tree with the names of its symbols.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return for example "area × (film + 0.001)"
   */
  default String text(Locale reader) {
    return new ExprWriter(reader, symbol -> symbol.name().in(reader)).write(this);
  }
}
