// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.LinkedHashMap;
import java.util.Map;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;

/** A composition as parts by mass. */
final class Parts {

  private Parts() {}

  static Map<Material, Double> of(Composition composition) {
    Map<Material, Double> parts = new LinkedHashMap<>();
    for (int i = 0; i < composition.size(); i++) {
      parts.put(composition.materials().get(i), composition.massFractionValue(i));
    }
    return parts;
  }
}
