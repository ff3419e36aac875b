// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.examples.studio.page.Say;

/**
 * Something that a sheet cannot say for want of a figure; it stands where the figure would.
 *
 * @param what what is not known, such as "How full the pot is"
 * @param why whose figure is missing, and which
 * @param remedy what to do about it
 */
public record NotKnown(Phrase what, Phrase why, Phrase remedy) {

  /** The key of what stands in the place of a value. */
  public static final String WORDS = "not-known";

  /**
   * Returns what needs the densities of a mix, some of which the catalogue does not hold.
   *
   * @param what what is not known
   * @param basis whose densities
   * @param mix the materials of the mix
   * @param remedy what to do about it
   * @return what is not known
   */
  public static NotKnown density(
      Phrase what, DensityBasis basis, List<Material> mix, Phrase remedy) {
    Map<PropertyKey<?>, List<Material>> missing =
        basis.unknown(mix).stream()
            .collect(
                Collectors.groupingBy(basis::property, LinkedHashMap::new, Collectors.toList()));
    return new NotKnown(what, lacks(missing), remedy);
  }

  /**
   * Returns what needs the clear point of a mix that nobody can estimate.
   *
   * @param what what is not known
   * @param mix the mix
   * @param remedy what to do about it
   * @return what is not known
   */
  public static NotKnown clearPoint(Phrase what, Composition mix, Phrase remedy) {
    return new NotKnown(what, whyNoClearPoint(mix), remedy);
  }

  /**
   * Returns why nobody can estimate the clear point of a mix.
   *
   * @param mix the mix
   * @return the reason
   */
  public static Phrase whyNoClearPoint(Composition mix) {
    List<Material> unknown = MeltingReport.of(mix, Costing.ROOM).withoutEnd();
    return unknown.isEmpty()
        ? Phrase.of("not-known.nothing-melts")
        : lacks(Map.of(PropertyKey.MELTING_RANGE, unknown));
  }

  /**
   * Returns what needs prices that the file does not state.
   *
   * @param what what is not known
   * @param unpriced the materials without a price
   * @return what is not known
   */
  public static NotKnown price(Phrase what, List<Material> unpriced) {
    return new NotKnown(
        what,
        Phrase.of("not-known.price", "materials", unpriced),
        Phrase.of("not-known.price.remedy"));
  }

  /** Two properties at most: a density is one of the melt or of the solid. */
  private static Phrase lacks(Map<PropertyKey<?>, List<Material>> missing) {
    List<Phrase> each =
        missing.entrySet().stream()
            .map(
                e ->
                    Phrase.of(
                        "not-known.figure", "property", e.getKey(), "materials", e.getValue()))
            .toList();
    return each.size() == 1
        ? Phrase.of("not-known.lacks", "figure", each.get(0))
        : Phrase.of("not-known.lacks-two", "first", each.get(0), "second", each.get(1));
  }

  /**
   * Returns what stands in the place of a value, with the reason.
   *
   * @param why the reason
   * @param say the language
   * @return the words
   */
  public static String because(Phrase why, Say say) {
    return say.words("not-known.because", "why", why);
  }

  /**
   * Returns what stands in the place of the value, with the reason.
   *
   * @param say the language
   * @return the words
   */
  public String value(Say say) {
    return because(why, say);
  }

  /**
   * Returns all of it in a row, for a list of what is not known.
   *
   * @param say the language
   * @return the words
   */
  public String text(Say say) {
    return say.words("not-known.text", "what", what, "why", why, "remedy", remedy);
  }

  /**
   * Returns the same of one recipe among several.
   *
   * @param recipe its name
   * @return what is not known of it
   */
  public NotKnown of(String recipe) {
    return new NotKnown(Phrase.of("not-known.of", "what", what, "recipe", recipe), why, remedy);
  }

  /**
   * Returns all of it as a box of a page.
   *
   * @param say the language
   * @return the box
   */
  public Notice notice(Say say) {
    return new Notice(
        Tone.OPEN,
        say.words("not-known.label"),
        say.words("not-known.title", "what", what, "why", why),
        List.of(say.words(remedy)));
  }
}
