// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;
import java.util.Map;
import org.meltwright.units.Messages;

/** The one look-up of this package's own texts. */
final class HazardTexts {

  private static final Messages MESSAGES = Messages.beside(HazardTexts.class);

  private HazardTexts() {}

  static String remark(String key, Locale locale) {
    return MESSAGES.text("remark." + key, locale);
  }

  static String label(String key, Locale locale) {
    return MESSAGES.text("label." + key, locale);
  }

  static String label(String key, Locale locale, Map<String, String> values) {
    return MESSAGES.text("label." + key, locale, values);
  }

  static String text(String key, Locale locale) {
    return MESSAGES.text(key, locale);
  }

  static boolean isGerman(Locale locale) {
    return locale.getLanguage().equals(Locale.GERMAN.getLanguage());
  }
}
