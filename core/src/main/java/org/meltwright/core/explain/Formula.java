// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.Locale;

/**
 * What a number is, as a tree of what it hangs on.
 *
 * <p>A formula is one constant beside the type whose result it explains; explanation and page take
 * it from there. For example:
 *
 * <pre>{@code
 * Symbol area = Symbol.beside(Formula.class, "area", "m²").withSign("A");
 * Symbol film = Symbol.beside(Formula.class, "film", "m").withSign("f");
 * Symbol volume = Symbol.beside(Formula.class, "volume", "m³").withSign("V");
 * Formula spread = new Formula(volume, area.times(film));
 * spread.text(Locale.ENGLISH); // volume = area × film
 * spread.signs(); // V = A × f
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param result what it gives
 * @param tree how
 */
public record Formula(Symbol result, Expr tree) {

  /**
   * Returns the formula with the names of its symbols.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return for example "mass = area × film × density"
   */
  public String text(Locale reader) {
    return result.name().in(reader) + " = " + tree.text(reader);
  }

  /**
   * Returns the formula with the signs of its symbols.
   *
   * @return for example "m = A × f × ρ"
   */
  public String signs() {
    return result.sign() + " = " + ExprWriter.signs(tree);
  }

  @Override
  public String toString() {
    return text(Locale.ENGLISH);
  }
}
