// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Sourced;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;

/** The catalogue's figures that a sheet rests on, each with its source at the foot. */
final class Figures {

  private static final List<PropertyKey<?>> USED =
      List.of(
          PropertyKey.SOLID_DENSITY,
          PropertyKey.LIQUID_DENSITY,
          PropertyKey.MELTING_RANGE,
          PropertyKey.DISSOLVES_FROM,
          PropertyKey.FLASH_POINT,
          PropertyKey.SOLID_SPECIFIC_HEAT,
          PropertyKey.LIQUID_SPECIFIC_HEAT,
          PropertyKey.HEAT_OF_FUSION);

  private final Set<Material> materials = new LinkedHashSet<>();

  /** Adds the materials of a composition and what they are made of. */
  void add(Composition composition) {
    composition.materials().forEach(this::add);
  }

  private void add(Material material) {
    if (materials.add(material)) {
      material.constituents().forEach(c -> add(c.material()));
    }
  }

  /** Returns the table, and notes each source on the page. */
  Table table(Page.Builder page) {
    List<List<String>> rows = new ArrayList<>();
    for (Material material : materials) {
      for (PropertyKey<?> key : USED) {
        row(material, key, page, rows);
      }
      for (Constituent part : material.constituents()) {
        rows.add(constituent(material, part, page));
      }
    }
    return new Table(
        "The catalogue's first choice of each figure; estimates use the whole range.",
        List.of("Figure", "Value", "Known by", "Source"),
        rows,
        false);
  }

  private static <V> void row(
      Material material, PropertyKey<V> key, Page.Builder page, List<List<String>> rows) {
    if (material.family() == MaterialFamily.PIGMENT && key != PropertyKey.SOLID_DENSITY) {
      return; // it neither melts nor burns in a pot that is kept below its ceiling
    }
    material.find(key).ifPresent(figure -> rows.add(row(material, key, figure, page)));
  }

  private static <V> List<String> row(
      Material material, PropertyKey<V> key, Sourced<V> figure, Page.Builder page) {
    return List.of(
        material.name(Locale.ENGLISH) + ", " + key.id().replace('-', ' '),
        key.format(figure.value()),
        figure.knowledge().inWords().english(),
        page.cite(figure.source().citation()));
  }

  private static List<String> constituent(Material whole, Constituent part, Page.Builder page) {
    String sources =
        whole.figures(PropertyKey.OIL_CONTENT).stream()
            .map(figure -> page.cite(figure.source().citation()))
            .distinct()
            .collect(Collectors.joining(" "));
    return List.of(
        whole.name(Locale.ENGLISH) + ", share of " + part.material().name(Locale.ENGLISH),
        Say.percent(part.share().low().value())
            + " to "
            + Say.percent(part.share().high().value())
            + " by mass",
        Knowledge.DERIVED.inWords().english(),
        sources);
  }
}
