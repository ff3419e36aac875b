// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.lang.ref.WeakReference;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;
import org.meltwright.core.material.Material;

/**
 * The answers of the materials asked of late. A material is known by being the same object; none is
 * held, no more than a fixed number of answers is kept, and nobody waits: two that ask at once work
 * it out twice.
 */
final class AnswerCache {

  /** A power of two. */
  private static final int SLOTS = 512;

  private final AtomicReferenceArray<Slot> slots = new AtomicReferenceArray<>(SLOTS);

  private record Slot(WeakReference<Material> material, List<NamedHazard> answer) {}

  List<NamedHazard> get(Material material, Function<Material, List<NamedHazard>> work) {
    int place = System.identityHashCode(material) & (SLOTS - 1);
    Slot slot = slots.getAcquire(place);
    if (slot != null && slot.material().refersTo(material)) {
      return slot.answer();
    }
    List<NamedHazard> answer = work.apply(material);
    slots.setRelease(place, new Slot(new WeakReference<>(material), answer));
    return answer;
  }
}
