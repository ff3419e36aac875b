// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Stream;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Bilingual;

/**
 * The one table of pigment hazards, read by the heating review and by the label.
 *
 * <p>A pigment that is not in it is not assessed; that is never a word of safety. Where a name, a
 * number or a Colour Index name fits several pigments, the strictest of them answers.
 *
 * <p>PBr7 names the siennas and the umbers, and umber holds manganese; a tube that says no more is
 * taken for umber. PY151 is not in the table, so it is not assessed:
 *
 * <pre>{@code
 * PigmentHazards.byColourIndexName("PBr7").orElseThrow().id(); // raw-umber
 * PigmentHazards.byCas("1309-37-1").orElseThrow().dust(); // FINE
 * Material tube = MaterialCatalogue.standard().require("cobalt-blue");
 * PigmentHazards.of(tube).orElseThrow().heatUse(); // FLAME_FREE
 * PigmentHazards.byColourIndexName("PY151").isEmpty(); // true
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class PigmentHazards {

  /** Strictest first: less heat, then more care with dust. */
  private static final Comparator<PigmentHazard> STRICTEST_FIRST =
      Comparator.comparing(PigmentHazard::heatUse).thenComparing(PigmentHazard::dust);

  private static final List<PigmentHazard> ALL = read();
  private static final Map<String, PigmentHazard> BY_ID = strictestBy(p -> List.of(p.id()));
  private static final Map<String, PigmentHazard> BY_CAS = strictestBy(PigmentHazard::casNumbers);
  private static final Map<String, PigmentHazard> BY_COLOUR_INDEX_NAME =
      strictestBy(PigmentHazard::colourIndexNames);

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
    return Optional.ofNullable(BY_ID.get(id));
  }

  /**
   * Finds a pigment by its CAS registry number.
   *
   * @param number the number with hyphens
   * @return the pigment, the strictest of several; empty if it is not in the table
   */
  public static Optional<PigmentHazard> byCas(String number) {
    return Optional.ofNullable(BY_CAS.get(number));
  }

  /**
   * Finds a pigment by its Colour Index generic name.
   *
   * @param name for example "PY35"; a suffix such as in "PB15:3" is understood
   * @return the pigment, the strictest of several; empty if it is not in the table
   */
  public static Optional<PigmentHazard> byColourIndexName(String name) {
    return Stream.of(name, base(name))
        .flatMap(n -> Optional.ofNullable(BY_COLOUR_INDEX_NAME.get(n)).stream())
        .min(STRICTEST_FIRST);
  }

  /**
   * Finds the pigment that a material is.
   *
   * <p>Asked are the material's id, its CAS numbers, and those of its Colour Index names that
   * neither of the pigments so found carries; the strictest prevails. An id that does not say which
   * compound it is, such as {@code cobalt-violet}, gives way to a number or Colour Index name of a
   * pigment of the same metal.
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
    Optional<PigmentHazard> own = byId(material.id());
    Optional<PigmentHazard> byCas =
        identifiers(material, IdentifierScheme.CAS)
            .flatMap(cas -> byCas(cas).stream())
            .min(STRICTEST_FIRST);
    Stream<PigmentHazard> byName =
        identifiers(material, IdentifierScheme.COLOUR_INDEX_NAME)
            .filter(name -> !carries(own, name) && !carries(byCas, name))
            .flatMap(name -> byColourIndexName(name).stream());
    Optional<PigmentHazard> numbered = Stream.concat(byCas.stream(), byName).min(STRICTEST_FIRST);
    return Stream.concat(own.filter(p -> !isSettled(p, numbered)).stream(), numbered.stream())
        .min(STRICTEST_FIRST);
  }

  private static Stream<String> identifiers(Material material, IdentifierScheme scheme) {
    return material.identifiers(scheme).stream().map(Sourced::value);
  }

  private static boolean carries(Optional<PigmentHazard> pigment, String colourIndexName) {
    return pigment.isPresent()
        && (pigment.get().colourIndexNames().contains(colourIndexName)
            || pigment.get().colourIndexNames().contains(base(colourIndexName)));
  }

  private static String base(String colourIndexName) {
    int colon = colourIndexName.indexOf(':');
    return colon < 0 ? colourIndexName : colourIndexName.substring(0, colon);
  }

  /** A row without numbers does not say which compound it is: one of the same metal says it. */
  private static boolean isSettled(PigmentHazard row, Optional<PigmentHazard> numbered) {
    return row.casNumbers().isEmpty()
        && row.colourIndexNames().isEmpty()
        && numbered.filter(p -> row.elements().stream().anyMatch(p::holds)).isPresent();
  }

  private static Map<String, PigmentHazard> strictestBy(
      Function<PigmentHazard, List<String>> keys) {
    Map<String, PigmentHazard> strictest = new HashMap<>();
    for (PigmentHazard pigment : ALL) {
      for (String key : keys.apply(pigment)) {
        strictest.merge(key, pigment, BinaryOperator.minBy(STRICTEST_FIRST));
      }
    }
    return strictest;
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
        row.get(1),
        row.get(2),
        HazardTexts.stated(row.get(3)),
        HazardTexts.stated(row.get(4)),
        SourceKind.valueOf(row.get(5)));
  }

  private static PigmentHazard pigment(List<String> row, Map<String, Source> sources) {
    return new PigmentHazard(
        row.get(0),
        new Bilingual(row.get(1), row.get(2)),
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
