// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.plausibility;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;

/**
 * That a figure is unusual, and what was probably meant. No problem, never blocking, and no word on
 * safety: what is dangerous is judged elsewhere, whether it is usual or not.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Remark remark = SenseOfSize.standard().of(SizeOf.FILM, millimetres(200)).orElseThrow();
 * remark.meant().orElseThrow(); // 200 µm
 * remark.text(Locale.ENGLISH);
 * // thickness of a layer: 200 mm. Usual is 0.1 mm to 1 mm (own policy). Was 200 µm meant?
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id what is unusual, such as "film"; stable
 * @param what the same in words
 * @param found the figure
 * @param usual what is usual
 * @param meant what was probably meant; empty if no likely slip leads to what is usual
 * @param knownBy how it is known what is usual
 */
public record Remark(
    String id,
    Bilingual what,
    Bilingual found,
    Bilingual usual,
    Optional<Bilingual> meant,
    Bilingual knownBy) {

  static final Messages MESSAGES = Messages.beside(Remark.class);

  /** A remark on a figure, with all numbers shown alike. */
  static Remark of(
      String id, Bilingual what, double found, UsualSize usual, DoubleFunction<Bilingual> shown) {
    return new Remark(
        id,
        what,
        shown.apply(found),
        Bilingual.range(shown.apply(usual.low()), shown.apply(usual.high())),
        usual.slip(found).map(slip -> shown.apply(found * slip)),
        words("known." + usual.knownBy(), Map.of()));
  }

  /** The same with what was found and meant in other words. */
  Remark with(Bilingual asFound, Optional<Bilingual> asMeant) {
    return new Remark(id, what, asFound, usual, asMeant, knownBy);
  }

  /** A text of the bundle in both languages. */
  static Bilingual words(String key, Map<String, Bilingual> values) {
    return Bilingual.of(reader -> MESSAGES.text(key, reader, in(reader, values)));
  }

  private static Map<String, String> in(Locale reader, Map<String, Bilingual> values) {
    Map<String, String> texts = new HashMap<>();
    values.forEach((name, value) -> texts.put(name, value.in(reader)));
    return texts;
  }

  /**
   * Returns the remark as a sentence or two.
   *
   * @param reader the language and notation
   * @return what, found, usual, and what was probably meant
   */
  public String text(Locale reader) {
    Map<String, Bilingual> values = new HashMap<>();
    values.put("what", what);
    values.put("found", found);
    values.put("usual", usual);
    values.put("source", knownBy);
    meant.ifPresent(likely -> values.put("meant", likely));
    String key = meant.isPresent() ? "remark.meant" : "remark";
    return MESSAGES.text(key, reader, in(reader, values));
  }
}
