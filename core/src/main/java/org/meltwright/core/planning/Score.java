// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

/** What a plan is judged by, the first before the second. */
record Score(long first, long second) implements Comparable<Score> {

  static final Score WORST = new Score(Long.MAX_VALUE, Long.MAX_VALUE);

  @Override
  public int compareTo(Score other) {
    int byFirst = Long.compare(first, other.first);
    return byFirst != 0 ? byFirst : Long.compare(second, other.second);
  }
}
