// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;

/**
 * The one table of pigment hazards, read by the heating review and by the label.
 *
 * <p>A pigment that is not in it is not assessed; that is never a word of safety. Where a name, a
 * number or a Colour Index name fits several pigments, the strictest of them answers.
 *
 * <p>PBr7 names the siennas and the umbers, and umber holds manganese; a tube that says no more is
 * taken for umber. PY150 is not in the table, so it is not assessed:
 *
 * <pre>{@code
 * PigmentHazards.byColourIndexName("PBr7").orElseThrow().id(); // raw-umber
 * PigmentHazards.byCas("1309-37-1").orElseThrow().dust(); // FINE
 * Material tube = MaterialCatalogue.standard().require("cobalt-blue");
 * PigmentHazards.of(tube).orElseThrow().heatUse(); // FLAME_FREE
 * PigmentHazards.byColourIndexName("PY150").isEmpty(); // true
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class PigmentHazards {

  private static final List<PigmentHazard> ALL = read();

  /** Strictest first: less heat, then more care with dust. */
  private static final Comparator<PigmentHazard> STRICTEST_FIRST =
      Comparator.comparing(PigmentHazard::heatUse).thenComparing(PigmentHazard::dust);

  private PigmentHazards() {}

  /**
   * Returns the whole table.
   *
   * @return an unmodifiable list
   */
  public static List<PigmentHazard> all() {
    return ALL;
  }

  /**
   * Finds a pigment by its id.
   *
   * @param id the stable id, for example {@code cadmium-red}
   * @return the pigment; empty if it is not in the table
   */
  public static Optional<PigmentHazard> byId(String id) {
    return ALL.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /**
   * Finds a pigment by its CAS registry number.
   *
   * @param number the number with hyphens
   * @return the pigment, the strictest of several; empty if it is not in the table
   */
  public static Optional<PigmentHazard> byCas(String number) {
    return ALL.stream().filter(p -> p.casNumbers().contains(number)).min(STRICTEST_FIRST);
  }

  /**
   * Finds a pigment by its Colour Index generic name.
   *
   * @param name for example "PY35"; a suffix such as in "PB15:3" is understood
   * @return the pigment, the strictest of several; empty if it is not in the table
   */
  public static Optional<PigmentHazard> byColourIndexName(String name) {
    String base = name.contains(":") ? name.substring(0, name.indexOf(':')) : name;
    return ALL.stream()
        .filter(p -> p.colourIndexNames().contains(name) || p.colourIndexNames().contains(base))
        .min(STRICTEST_FIRST);
  }

  /**
   * Finds the pigment that a material is.
   *
   * <p>Asked in this order: the material's id, its CAS numbers, its Colour Index names. A CAS
   * number that the table knows under another id than the material's own prevails if it is
   * stricter.
   *
   * @param material the material; one that may be several, or that has several numbers or names, is
   *     taken at the strictest
   * @return the pigment; empty if it is not in the table
   */
  public static Optional<PigmentHazard> of(Material material) {
    return Stream.concat(Stream.of(material), material.alternatives().stream())
        .flatMap(m -> ofOne(m).stream())
        .min(STRICTEST_FIRST);
  }

  private static Optional<PigmentHazard> ofOne(Material material) {
    Stream<PigmentHazard> byNumber =
        material.identifiers(IdentifierScheme.CAS).stream()
            .flatMap(cas -> byCas(cas.value()).stream());
    Optional<PigmentHazard> found =
        Stream.concat(byId(material.id()).stream(), byNumber).min(STRICTEST_FIRST);
    return found.or(
        () ->
            material.identifiers(IdentifierScheme.COLOUR_INDEX_NAME).stream()
                .flatMap(name -> byColourIndexName(name.value()).stream())
                .min(STRICTEST_FIRST));
  }

  private static List<PigmentHazard> read() {
    Map<String, Source> sources = new HashMap<>();
    Stream.Builder<PigmentHazard> pigments = Stream.builder();
    for (List<String> row : TextTable.rows("pigment-hazards.txt")) {
      if (row.get(0).equals("source")) {
        sources.put(row.get(1), source(row));
      } else {
        pigments.add(pigment(row, sources));
      }
    }
    return pigments.build().toList();
  }

  private static Source source(List<String> row) {
    return new Source(
        row.get(1), row.get(2), row.get(3), row.get(4), SourceKind.valueOf(row.get(5)));
  }

  private static PigmentHazard pigment(List<String> row, Map<String, Source> sources) {
    return new PigmentHazard(
        row.get(0),
        row.get(1),
        row.get(2),
        TextTable.items(row.get(3), ","),
        TextTable.items(row.get(4), ","),
        TextTable.items(row.get(5), ","),
        heatUse(row.get(6)),
        dust(row.get(7)),
        row.get(8),
        Objects.requireNonNull(sources.get(row.get(9)), row.get(9)),
        Knowledge.valueOf(row.get(10)));
  }

  private static HeatUse heatUse(String id) {
    return Stream.of(HeatUse.values()).filter(h -> h.id().equals(id)).findFirst().orElseThrow();
  }

  private static DustClass dust(String id) {
    return Stream.of(DustClass.values()).filter(d -> d.id().equals(id)).findFirst().orElseThrow();
  }
}
