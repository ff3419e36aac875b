// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.util.Arrays;

/**
 * What a linear programme comes to, with the numbers that prove it.
 *
 * <p>The prices of the rows bound what is least from below, whatever x: that both meet is the
 * proof. Where nothing keeps all bounds, prices of rows show that no x can.
 *
 * <pre>{@code
 * var one = org.meltwright.core.numeric.LinearProgram.minimising(2, 3);
 * var answer = one.row(4, Double.POSITIVE_INFINITY, 1, 1).solve();
 * answer.kind(); // OPTIMAL
 * answer.price(0); // 2.0
 * answer.gap(); // 0.0
 * answer.range(0)[0]; // -4.0
 * }</pre>
 *
 * <p>Immutable, and compared by identity: it is looked into once, and thrown away.
 */
public final class LinearAnswer {

  /** The errors up to which an answer counts as proved, relative to the numbers they stand in. */
  public static final double PROVED = 1e-9;

  /** How a programme ends. */
  public enum Kind {
    /** The least, proved. */
    OPTIMAL,
    /** Nothing keeps all bounds, proved. */
    INFEASIBLE,
    /** It can be as low as you like. */
    UNBOUNDED,
    /** No proof came out, within the errors allowed. */
    UNDECIDED
  }

  private final Kind kind;
  private final Basis basis;
  private final double[] values;
  private final double[] prices;
  private final Proof proof;

  LinearAnswer(Kind kind, Basis basis, double[] values, double[] prices, Proof proof) {
    this.kind = kind;
    this.basis = basis;
    this.values = values;
    this.prices = prices;
    this.proof = proof;
  }

  /**
   * Returns how it ends.
   *
   * @return the kind
   */
  public Kind kind() {
    return kind;
  }

  /**
   * Returns one x.
   *
   * @param column its place, from zero
   * @return its value
   */
  public double value(int column) {
    return values[column];
  }

  /**
   * Returns all x.
   *
   * @return the values
   */
  public double[] values() {
    return values.clone();
  }

  /**
   * Returns what it comes to.
   *
   * @return c·x
   */
  public double objective() {
    return proof.objective;
  }

  /**
   * Returns by how much what is least changes for one more of a row's bound.
   *
   * @param row the place of the row, from zero
   * @return its price; zero for a row that does not bind. Where nothing keeps all bounds: its part
   *     in the proof of that
   */
  public double price(int row) {
    return prices[row];
  }

  /**
   * Returns by how much the bound that a row keeps may move, and the prices stay.
   *
   * @param row the place of a row that binds, from zero
   * @return how far down, zero or below, and how far up; both infinite for a row that does not bind
   */
  public double[] range(int row) {
    return basis.range(row);
  }

  /**
   * Tells whether an x stands at one of its bounds and would cost nothing to move from it.
   *
   * @param column its place, from zero
   * @return whether another answer may be as good
   */
  public boolean mayMove(int column) {
    return basis.mayMove(column, proof.reduced[column]);
  }

  /**
   * Tells whether what a row comes to stands at a bound and would cost nothing to move from it.
   *
   * @param row its place, from zero
   * @return whether another answer may be as good
   */
  public boolean mayMoveRow(int row) {
    return basis.mayMove(values.length + row, prices[row]);
  }

  /**
   * Returns how far the worst bound is missed.
   *
   * @return the miss, relative to the numbers that it stands in
   */
  public double primalError() {
    return proof.primal;
  }

  /**
   * Returns how far the worst price has the wrong sign.
   *
   * @return the miss, relative to the numbers that it stands in
   */
  public double dualError() {
    return proof.dual;
  }

  /**
   * Returns how far what it comes to lies above what the prices prove that it cannot be below.
   *
   * @return the gap, relative to the numbers that it stands in; zero or a hair beside it
   */
  public double gap() {
    return proof.gap;
  }

  Basis basis() {
    return basis;
  }

  @Override
  public String toString() {
    return kind + " " + Arrays.toString(values);
  }
}
