// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
public final class Figures {

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

  private static final Pattern SPAN = Pattern.compile("(\\S+) to (\\S+)");

  /** How a temperature was measured, at the end of its figure. */
  private static final Pattern MEASURED = Pattern.compile(", ([a-z]+(?:-[a-z]+)*)$");

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
        page.say().words("figures.caption"),
        page.say().all("figures.figure", "figures.value", "figures.known-by", "figures.source"),
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
        material.name(page.say().locale()) + ", " + page.say().property(key),
        written(key.format(figure.value()), page.say()),
        page.say().in(figure.knowledge().inWords()),
        page.cite(figure.source().citation()));
  }

  /** What a materials file writes, in the reader's notation. */
  private static String written(String figure, Say say) {
    String spans =
        SPAN.matcher(figure)
            .replaceAll(m -> Matcher.quoteReplacement(say.span(m.group(1), m.group(2))));
    return say.numbers(
        MEASURED
            .matcher(spans)
            .replaceAll(
                m ->
                    Matcher.quoteReplacement(
                        ", " + say.words("temperature-definition." + m.group(1))))
            .replace(" at ", " " + say.words("figures.at") + " "));
  }

  private static List<String> constituent(Material whole, Constituent part, Page.Builder page) {
    Say say = page.say();
    String sources =
        whole.figures(PropertyKey.OIL_CONTENT).stream()
            .map(figure -> page.cite(figure.source().citation()))
            .distinct()
            .collect(Collectors.joining(" "));
    return List.of(
        say.words("figures.share", "whole", whole, "part", part.material()),
        say.words(
            "figures.by-mass",
            "low",
            say.percent(part.share().low().value()),
            "high",
            say.percent(part.share().high().value())),
        say.in(Knowledge.DERIVED.inWords()),
        sources);
  }
}
