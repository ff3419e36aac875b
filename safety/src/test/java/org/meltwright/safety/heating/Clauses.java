// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A plan as the clauses of its line in the grammar of {@link Plans}: what is left out, added or
 * changed is a clause more, less or other, and a law that fails prints a line to try again.
 *
 * @param all the clauses, the mix first
 */
record Clauses(List<String> all) {

  static Clauses of(String line) {
    return new Clauses(
        Stream.of(line.split(";")).map(String::strip).filter(c -> !c.isEmpty()).toList());
  }

  /** The review of the plan, in which no rule may fail. */
  HeatingReview review() {
    HeatingReview review = Plans.review(toString());
    for (NotAssessed open : review.notAssessed()) {
      if (open.property().equals("rule")) {
        throw new IllegalStateException(open + " of " + this);
      }
    }
    return review;
  }

  /** The plans that lack one clause or one part of the mix. */
  Stream<Clauses> smaller() {
    String mix = all.get(0);
    List<String> parts = List.of(mix.substring("mix ".length()).split(", "));
    Stream<Clauses> ofParts =
        parts.stream()
            .filter(part -> parts.size() > 1)
            .map(part -> parts.stream().filter(other -> !other.equals(part)).toList())
            .map(rest -> replace(mix, "mix " + String.join(", ", rest)));
    return Stream.concat(all.stream().skip(1).map(this::without), ofParts);
  }

  /** The clause that begins with a word. */
  Optional<String> find(String word) {
    return all.stream().filter(clause -> word(clause).equals(word)).findFirst();
  }

  static String word(String clause) {
    int space = clause.indexOf(' ');
    return space < 0 ? clause : clause.substring(0, space);
  }

  Clauses with(String clause) {
    List<String> more = new ArrayList<>(all);
    more.add(clause);
    return new Clauses(more);
  }

  Clauses without(String clause) {
    return change(clause, c -> "");
  }

  Clauses replace(String clause, String other) {
    return change(clause, c -> other);
  }

  private Clauses change(String clause, UnaryOperator<String> change) {
    return new Clauses(
        all.stream()
            .map(c -> c.equals(clause) ? change.apply(c) : c)
            .filter(c -> !c.isEmpty())
            .toList());
  }

  @Override
  public String toString() {
    return String.join("; ", all);
  }
}
