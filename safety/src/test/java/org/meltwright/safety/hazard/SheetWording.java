// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Says what was read of a substance, for tables of cases. */
final class SheetWording {

  private SheetWording() {}

  static List<String> words(CopiedSheet.Line line) {
    SubstanceHazards s = line.hazards();
    List<String> words = new ArrayList<>();
    s.categories().forEach(c -> words.add(category(c)));
    s.specificLimits().forEach(l -> words.add("limit " + limit(l)));
    if (s.acuteFactor().isPresent() || s.chronicFactor().isPresent()) {
      words.add("M " + number(s.acuteFactor()) + "/" + number(s.chronicFactor()));
    }
    for (UptakeForm form : UptakeForm.values()) {
      s.estimate(form).ifPresent(v -> words.add("ate " + form.id() + " " + number(v)));
    }
    words.addAll(s.supplements());
    s.ecNumbers().forEach(number -> words.add("ec " + number));
    s.indexNumber().ifPresent(number -> words.add("entry " + number));
    s.classesByTest().forEach(c -> words.add(c.id() + " by test"));
    boolean open = Arrays.stream(HazardClass.values()).allMatch(s::isOpenFor);
    if (words.isEmpty() && !open) {
      words.add("none");
    }
    if (open) {
      words.add("open");
    }
    line.lowPercent()
        .ifPresent(low -> words.add("share " + number(low) + " to " + number(line.highPercent())));
    return words;
  }

  private static String category(HazardCategory c) {
    String details = c.details().isEmpty() ? "" : " (" + String.join(", ", c.details()) + ")";
    return c + details + (c.minimum() ? " *" : "");
  }

  private static String limit(SpecificLimit l) {
    String below =
        l.belowPercent().isPresent() ? " below " + number(l.belowPercent().getAsDouble()) : "";
    String category = HazardCategory.of(l.hazardClass(), l.category(), l.statement()).toString();
    return category + " from " + number(l.fromPercent()) + below;
  }

  private static String number(OptionalDouble value) {
    return value.isPresent() ? number(value.getAsDouble()) : "-";
  }

  private static String number(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }
}
