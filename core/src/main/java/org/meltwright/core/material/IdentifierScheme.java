// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.Optional;
import java.util.regex.Pattern;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A scheme that gives materials numbers or names.
 *
 * <p>For example:
 *
 * <pre>{@code
 * IdentifierScheme.CAS.accepts("8012-89-3"); // true
 * IdentifierScheme.CAS.accepts("8012-98-3"); // false
 * IdentifierScheme.COLOUR_INDEX_NAME.require("PW6"); // PW6
 * IdentifierScheme.COLOUR_INDEX_NAME.require("white 6"); // throws ProblemException
 * }</pre>
 */
public enum IdentifierScheme {
  /** CAS registry number, with its check digit: "8012-89-3". */
  CAS("cas", "[1-9][0-9]{1,6}-[0-9]{2}-[0-9]"),
  /** EC number of the European inventories, with its check digit: "232-383-7". */
  EC("ec", "[1-9][0-9]{2}-[0-9]{3}-[0-9]"),
  /** Colour Index generic name: "PW6". */
  COLOUR_INDEX_NAME("colour-index-name", "[PN](W|Y|O|R|V|B|G|Br|Bk|M)[0-9]+(:[0-9]+)?"),
  /** Colour Index constitution number: "77891". */
  COLOUR_INDEX_NUMBER("colour-index-number", "[0-9]{5}(:[0-9]+)?");

  private final String id;
  private final Pattern form;

  IdentifierScheme(String id, String form) {
    this.id = id;
    this.form = Pattern.compile(form);
  }

  /**
   * Returns the word that a materials file writes.
   *
   * @return lower case, words joined by hyphens, for example {@code cas}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the scheme with an id.
   *
   * @param id the id, for example {@code cas}
   * @return the scheme; empty if there is none
   */
  public static Optional<IdentifierScheme> find(String id) {
    for (IdentifierScheme scheme : values()) {
      if (scheme.id.equals(id)) {
        return Optional.of(scheme);
      }
    }
    return Optional.empty();
  }

  /**
   * Tells whether a text is well formed in this scheme and has the right check digit.
   *
   * <p>For example, CAS 8012-89-3: 9×1 + 8×2 + 2×3 + 1×4 + 0×5 + 8×6 = 83, which ends in 3.
   *
   * @param text the number or name
   * @return whether it can be right
   */
  public boolean accepts(String text) {
    return form.matcher(text).matches()
        && (this != CAS || casCheck(text))
        && (this != EC || ecCheck(text));
  }

  /**
   * Guards a text of this scheme.
   *
   * @param text the number or name
   * @return the text
   * @throws ProblemException if it is not well formed or its check digit is wrong
   */
  public String require(String text) {
    if (accepts(text)) {
      return text;
    }
    throw new ProblemException(Problem.of(MaterialProblem.IDENTIFIER, text).with("scheme", id));
  }

  /** The digits before the last, counted from the right, weigh 1, 2, 3 …; modulo 10. */
  private static boolean casCheck(String text) {
    String digits = text.replace("-", "");
    int last = digits.length() - 1;
    int sum = 0;
    for (int i = 0; i < last; i++) {
      sum += (last - i) * (digits.charAt(i) - '0');
    }
    return sum % 10 == digits.charAt(last) - '0';
  }

  /** The first six digits, counted from the left, weigh 1 to 6; modulo 11. */
  private static boolean ecCheck(String text) {
    String digits = text.replace("-", "");
    int last = digits.length() - 1;
    int sum = 0;
    for (int i = 0; i < last; i++) {
      sum += (i + 1) * (digits.charAt(i) - '0');
    }
    return sum % 11 == digits.charAt(last) - '0';
  }
}
