// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.List;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/** What a blend found, told when somebody asks how it came about. */
final class BlendWorking {

  private static final Symbol WEIGHED = Symbol.beside(BlendTexts.class, "mass to weigh", "kg");
  private static final Symbol SHARE = Symbol.beside(BlendTexts.class, "share of the blend", "1");

  private BlendWorking() {}

  static List<Figure> lines(List<BlendLine> lines) {
    List<Bilingual> names =
        Explanation.lines(lines.stream().map(l -> Bilingual.of(l.part().name())).toList());
    List<Figure> found = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (lines.get(i).share() > 0) {
        found.add(Figure.of(WEIGHED.of(names.get(i)), lines.get(i).weighedKilograms()));
        found.add(Figure.of(SHARE.of(names.get(i)), lines.get(i).share()));
      }
    }
    return found;
  }
}
