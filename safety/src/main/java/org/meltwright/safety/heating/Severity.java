// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;
import org.meltwright.units.Messages;

/**
 * How badly a finding may end, in the words of the safety-sign standards (ANSI Z535.4, 2007, 4.14;
 * ISO 3864-2 knows the first three), worst first.
 *
 * <p>These are not the signal words of chemicals law, which grade something else: neither scale
 * turns into the other.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Severity.CAUTION.isAtLeast(Severity.NOTICE); // true
 * Severity.CAUTION.isAtLeast(Severity.DANGER); // false
 * Severity.CAUTION.word(Locale.GERMAN); // VORSICHT
 * }</pre>
 */
public enum Severity {
  /** Someone will be killed or badly hurt unless it is avoided. */
  DANGER("danger"),
  /** Someone could be killed or badly hurt. */
  WARNING("warning"),
  /** Someone could be hurt lightly or moderately. */
  CAUTION("caution"),
  /** About the work or the property, not about injury. */
  NOTICE("notice");

  private final String id;

  Severity(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case, for example {@code caution}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the word as a sign prints it.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "CAUTION", in German "VORSICHT"
   */
  public String word(Locale locale) {
    return Messages.beside(Severity.class).text("severity." + name(), locale);
  }

  /**
   * Tells whether this severity is at least as bad as another.
   *
   * @param other the other severity
   * @return whether this one is the same or worse
   */
  public boolean isAtLeast(Severity other) {
    return compareTo(other) <= 0;
  }
}
