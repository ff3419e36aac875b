// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.HashMap;
import java.util.Map;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;

/** Sentences of this package, with places filled in both languages. */
final class BlendTexts {

  private static final Messages TEXTS = Messages.beside(BlendTexts.class);

  private BlendTexts() {}

  /** A text; each name of a place is followed by what stands there, a {@link Bilingual}. */
  static Bilingual text(String key, Object... places) {
    return Bilingual.of(
        reader -> {
          Map<String, String> values = new HashMap<>();
          for (int i = 0; i < places.length; i += 2) {
            values.put((String) places[i], ((Bilingual) places[i + 1]).in(reader));
          }
          return TEXTS.text(key, reader, values);
        });
  }
}
