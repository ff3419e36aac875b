// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What somebody states of materials: a value for a material whatever its lot, or for one lot of it.
 *
 * <p>A material is looked up by id and lot, never by its figures: a price of beeswax holds for the
 * catalogue's beeswax and for yours. The value of a lot goes before that of the material.
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * ByMaterial<String> shelves = ByMaterial.<String>none().with(wax, "A").with(wax.withLot("7"), "B");
 * shelves.find(wax.withLot("6")); // A
 * shelves.find(wax.withLot("7")); // B
 * shelves; // {beeswax-yellow=A, beeswax-yellow (lot 7)=B}
 * }</pre>
 *
 * <p>Two are equal if they hold equal values for the same ids and lots, whatever the order.
 * Immutable and thread-safe, if the values are.
 *
 * @param <V> what is stated
 */
public final class ByMaterial<V> {

  private static final Comparator<Material> ORDER =
      Comparator.comparing(Material::id).thenComparing(m -> m.lot().orElse(""));

  private record Entry<V>(Material material, V value) {

    boolean isFor(Material other) {
      return material.isMeantBy(other) && other.isMeantBy(material);
    }
  }

  /** In the order of id and lot. */
  private final List<Entry<V>> entries;

  /**
   * Returns no values.
   *
   * @param <V> what is stated
   * @return nothing stated yet
   */
  public static <V> ByMaterial<V> none() {
    return new ByMaterial<>(List.of());
  }

  /**
   * Returns the values of a map; its order makes no difference.
   *
   * @param <V> what is stated
   * @param values a value for each material or lot
   * @return the values
   * @throws ProblemException if two keys of one id and lot have different values: nothing tells
   *     which of them holds
   */
  public static <V> ByMaterial<V> of(Map<Material, V> values) {
    ByMaterial<V> all = none();
    List<Problem> twice = new ArrayList<>();
    for (Map.Entry<Material, V> each : values.entrySet()) {
      Material material = each.getKey();
      if (all.at(material).filter(known -> !known.equals(each.getValue())).isPresent()) {
        twice.add(Problem.of(MaterialProblem.STATED_TWICE, material.toString()));
      }
      all = all.with(material, each.getValue());
    }
    if (!twice.isEmpty()) {
      throw new ProblemException(twice.stream().distinct().toList());
    }
    return all;
  }

  private ByMaterial(List<Entry<V>> entries) {
    this.entries = entries;
  }

  /**
   * Returns a copy with a value for a material, in place of one for the same id and lot.
   *
   * @param material the material, with a lot if the value holds for that lot alone
   * @param value the value
   * @return the new values
   */
  public ByMaterial<V> with(Material material, V value) {
    List<Entry<V>> more = new ArrayList<>(entries);
    more.removeIf(e -> e.isFor(material));
    int place = 0;
    while (place < more.size() && ORDER.compare(more.get(place).material, material) < 0) {
      place++;
    }
    more.add(place, new Entry<>(material, value));
    return new ByMaterial<>(List.copyOf(more));
  }

  /**
   * Returns what holds for a material: what is stated of its lot, else of the material.
   *
   * @param material the material
   * @return the value; empty if nothing is stated
   */
  public Optional<V> find(Material material) {
    V general = null;
    for (Entry<V> entry : entries) {
      if (material.isMeantBy(entry.material)) {
        if (entry.material.lot().isPresent()) {
          return Optional.of(entry.value);
        }
        general = entry.value;
      }
    }
    return Optional.ofNullable(general);
  }

  /**
   * Returns all that is stated.
   *
   * @return an unmodifiable map in the order of id and lot; a material in it stands for its id and
   *     lot alone
   */
  public Map<Material, V> toMap() {
    Map<Material, V> all = new LinkedHashMap<>();
    entries.forEach(e -> all.put(e.material, e.value));
    return Collections.unmodifiableMap(all);
  }

  private Optional<V> at(Material material) {
    return entries.stream().filter(e -> e.isFor(material)).map(Entry::value).findFirst();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ByMaterial<?> that && toPairs().equals(that.toPairs());
  }

  @Override
  public int hashCode() {
    return toPairs().hashCode();
  }

  private List<Object> toPairs() {
    List<Object> pairs = new ArrayList<>();
    for (Entry<V> entry : entries) {
      pairs.add(entry.material.id());
      pairs.add(entry.material.lot());
      pairs.add(entry.value);
    }
    return pairs;
  }

  /**
   * Returns the values in the order of id and lot.
   *
   * @return for example "{damar=0.04}"
   */
  @Override
  public String toString() {
    StringJoiner text = new StringJoiner(", ", "{", "}");
    entries.forEach(e -> text.add(e.material + "=" + e.value));
    return text.toString();
  }
}
