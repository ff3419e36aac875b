// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.IdentityHashMap;
import java.util.List;

/**
 * Compares two materials by content, parts of parts included; for one comparison.
 *
 * <p>A pair that was found equal is not looked at again, so that parts that share their parts,
 * level upon level, cost a step each and no exponential time.
 */
final class SameContent {

  private final IdentityHashMap<Material, IdentityHashMap<Material, Boolean>> equal =
      new IdentityHashMap<>();

  @SuppressWarnings("ReferenceEquality") // what is one object has one content
  boolean of(Material one, Material other) {
    IdentityHashMap<Material, Boolean> known = equal.get(one);
    if (one == other || (known != null && known.containsKey(other))) {
      return true;
    }
    boolean same =
        one.content().statesTheSameAs(other.content())
            && parts(one.constituents(), other.constituents())
            && all(one.alternatives(), other.alternatives());
    if (same) {
      equal.computeIfAbsent(one, m -> new IdentityHashMap<>()).put(other, true);
    }
    return same;
  }

  private boolean parts(List<Constituent> some, List<Constituent> others) {
    for (int i = 0; i < some.size() && some.size() == others.size(); i++) {
      if (!some.get(i).share().equals(others.get(i).share())
          || !of(some.get(i).material(), others.get(i).material())) {
        return false;
      }
    }
    return some.size() == others.size();
  }

  private boolean all(List<Material> some, List<Material> others) {
    for (int i = 0; i < some.size() && some.size() == others.size(); i++) {
      if (!of(some.get(i), others.get(i))) {
        return false;
      }
    }
    return some.size() == others.size();
  }
}
