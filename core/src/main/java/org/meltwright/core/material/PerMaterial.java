// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.function.Function;

/**
 * What follows from a material alone, worked out once for each material and kept with it, as {@link
 * ClassValue} does for classes: for what takes work and is asked of the same materials again and
 * again, such as whether a name holds a word.
 *
 * <p>For example:
 *
 * <pre>{@code
 * PerMaterial<Boolean> isWhite =
 *     PerMaterial.of(material -> material.name(Locale.ENGLISH).contains("white"));
 * isWhite.get(MaterialCatalogue.standard().require("zinc-white")); // true
 * isWhite.get(MaterialCatalogue.standard().require("ultramarine")); // false
 * }</pre>
 *
 * <p>What is kept goes when the material goes; make one instance, held in a constant, for each
 * thing that is asked. Thread-safe: two threads that ask at once may both work it out, and get one
 * answer.
 *
 * <p>Compared by identity: it is a memory, and what it remembers grows.
 *
 * @param <V> what is worked out: immutable, and the same whenever it is worked out
 */
public final class PerMaterial<V> {

  private final Function<Material, V> work;

  private PerMaterial(Function<Material, V> work) {
    this.work = work;
  }

  /**
   * Returns a thing to ask of materials.
   *
   * @param <V> what is worked out
   * @param work works it out; asks nothing but the material
   * @return the thing to ask
   */
  public static <V> PerMaterial<V> of(Function<Material, V> work) {
    return new PerMaterial<>(work);
  }

  /**
   * Returns what follows from a material.
   *
   * @param material the material
   * @return the answer, worked out when it is first asked of this material object
   */
  @SuppressWarnings("unchecked") // only this instance puts values under itself
  public V get(Material material) {
    Object known = material.workedOut.get(this);
    if (known == null) {
      V value = work.apply(material);
      Object first = material.workedOut.putIfAbsent(this, value);
      return first == null ? value : (V) first;
    }
    return (V) known;
  }
}
