// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.ArrayList;
import java.util.List;

/**
 * A term of a polynomial in the places of the inputs, from −1 to 1: Legendre's polynomial of one of
 * them, of order one to five, or the product of two of order one.
 *
 * @param input the place of the input in its list
 * @param order the order
 * @param other the place of the other input of a product, the same where there is none
 */
record Term(int input, int order, int other) {

  private static final int HIGHEST = 5;

  /** All terms of so many inputs, the plainest first. */
  static List<Term> all(int inputs) {
    List<Term> all = new ArrayList<>();
    for (int order = 1; order <= HIGHEST; order++) {
      for (int i = 0; i < inputs; i++) {
        all.add(new Term(i, order, i));
      }
    }
    for (int i = 0; i < inputs; i++) {
      for (int k = 0; k < i; k++) {
        all.add(new Term(i, 1, k));
      }
    }
    return all;
  }

  static Term linear(int input) {
    return new Term(input, 1, input);
  }

  /** How steep it is in the middle of the range, of order one. */
  double slope() {
    return Math.sqrt(3);
  }

  double at(double[] position) {
    return input == other ? legendre(position[input]) : 3 * position[input] * position[other];
  }

  /** Of mean square one over an even spread; by Bonnet's recursion. */
  private double legendre(double t) {
    double before = 1;
    double now = t;
    for (int n = 1; n < order; n++) {
      double next = ((2 * n + 1) * t * now - n * before) / (n + 1);
      before = now;
      now = next;
    }
    return Math.sqrt(2 * order + 1) * now;
  }
}
