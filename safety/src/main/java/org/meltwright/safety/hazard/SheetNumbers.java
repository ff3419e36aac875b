// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.safety.hazard.SheetToken.Kind;
import org.meltwright.units.Problem;

/** The numbers of registers that a copied text gives a substance, each kind in its order. */
final class SheetNumbers {

  private final Map<Kind, List<SheetToken>> all = new EnumMap<>(Kind.class);

  boolean areNone() {
    return all.isEmpty();
  }

  boolean areNone(Kind kind) {
    return of(kind).isEmpty();
  }

  boolean hold(SheetToken number) {
    return of(number.kind()).stream().anyMatch(n -> n.text().equals(number.text()));
  }

  /** Adds a number, right or wrong: it says which substance is spoken of. */
  void add(SheetToken number) {
    all.computeIfAbsent(number.kind(), k -> new ArrayList<>()).add(number);
  }

  /** What is wrong with a number: its check digit, or that it can be none. */
  static Optional<Problem> problem(SheetToken number) {
    return scheme(number).filter(s -> !s.accepts(number.text())).map(s -> refused(s, number));
  }

  private static Problem refused(IdentifierScheme scheme, SheetToken number) {
    return Problem.of(MaterialProblem.IDENTIFIER, number.text()).with("scheme", scheme.id());
  }

  private static Optional<IdentifierScheme> scheme(SheetToken number) {
    return switch (number.kind()) {
      case CAS -> Optional.of(IdentifierScheme.CAS);
      case EC -> Optional.of(IdentifierScheme.EC);
      default -> Optional.empty();
    };
  }

  /** Whether a number stands behind the last of its kind, with nothing but commas between. */
  boolean goOnWith(List<SheetToken> tokens, int at) {
    int i = at - 1;
    while (i >= 0 && (tokens.get(i).is(Kind.COMMA) || tokens.get(i).is(Kind.SLASH))) {
      i--;
    }
    return i >= 0 && of(tokens.get(at).kind()).contains(tokens.get(i));
  }

  /** Adds the numbers whose check digits are right to a sheet. */
  void addTo(SubstanceSheet sheet) {
    right(Kind.CAS).forEach(sheet::cas);
    right(Kind.EC).forEach(sheet::ec);
    right(Kind.INDEX).findFirst().ifPresent(sheet::entry);
  }

  /** What to call a substance without a name: by its first number. */
  Optional<String> inPlaceOfName() {
    return right(Kind.CAS)
        .map(n -> "CAS " + n)
        .findFirst()
        .or(() -> right(Kind.EC).map(n -> "EC " + n).findFirst());
  }

  Optional<SheetToken> first() {
    return Stream.concat(of(Kind.CAS).stream(), of(Kind.EC).stream()).findFirst();
  }

  private Stream<String> right(Kind kind) {
    return of(kind).stream().filter(n -> problem(n).isEmpty()).map(SheetToken::text).distinct();
  }

  private List<SheetToken> of(Kind kind) {
    return all.getOrDefault(kind, List.of());
  }
}
