// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Tone;

/**
 * Something that a sheet cannot say for want of a figure; it stands where the figure would.
 *
 * @param what what is not known, such as "How full the pot is"
 * @param why whose figure is missing, and which
 * @param remedy what to do about it
 */
record NotKnown(String what, String why, String remedy) {

  /** What stands in the place of a value. */
  static final String WORDS = "not known";

  /** What needs the densities of a mix, some of which the catalogue does not hold. */
  static NotKnown density(String what, DensityBasis basis, List<Material> mix, String remedy) {
    Map<PropertyKey<?>, List<Material>> missing =
        basis.unknown(mix).stream()
            .collect(
                Collectors.groupingBy(basis::property, LinkedHashMap::new, Collectors.toList()));
    return new NotKnown(what, lacks(missing), remedy);
  }

  /** What needs the clear point of a mix that nobody can estimate. */
  static NotKnown clearPoint(String what, Composition mix, String remedy) {
    return new NotKnown(what, whyNoClearPoint(mix), remedy);
  }

  /** Why nobody can estimate the clear point of a mix. */
  static String whyNoClearPoint(Composition mix) {
    List<Material> unknown = MeltingReport.of(mix, Costing.ROOM).withoutEnd();
    return unknown.isEmpty()
        ? "nothing in it melts"
        : lacks(Map.of(PropertyKey.MELTING_RANGE, unknown));
  }

  /** What needs prices that the file does not state. */
  static NotKnown price(String what, List<Material> unpriced) {
    return new NotKnown(
        what,
        "no package of " + names(unpriced) + " is stated",
        "State its packages on the shelf, each with its price, such as \"19.80 EUR/1 kg\".");
  }

  private static String lacks(Map<PropertyKey<?>, List<Material>> missing) {
    return missing.entrySet().stream()
        .map(e -> e.getKey().id().replace('-', ' ') + " of " + names(e.getValue()))
        .collect(Collectors.joining(" and no ", "the catalogue holds no ", ""));
  }

  /** Names of materials, in a row. */
  static String names(List<Material> materials) {
    return materials.stream().map(m -> m.name(Locale.ENGLISH)).collect(Collectors.joining("; "));
  }

  /** The same with its reason, where there is room for it. */
  static String because(String why) {
    return WORDS + ": " + why;
  }

  String value() {
    return because(why);
  }

  /** All of it in a row, for a list of what is not known. */
  String text() {
    return what + ": " + why + ". " + remedy;
  }

  /** The same of one recipe among several. */
  NotKnown of(String recipe) {
    return new NotKnown(what + ", " + recipe, why, remedy);
  }

  Notice notice() {
    return new Notice(Tone.OPEN, "NOT KNOWN", what + ": " + why + ".", List.of(remedy));
  }
}
