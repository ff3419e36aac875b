// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.Locale;

/**
 * What a number is, as a tree of what it hangs on.
 *
 * <p>A formula is one constant beside the type whose result it explains; explanation and page take
 * it from there. Immutable and thread-safe.
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
