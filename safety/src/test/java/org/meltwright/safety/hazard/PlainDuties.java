// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.meltwright.safety.hazard.PlainParts.NEVER;
import static org.meltwright.safety.hazard.PlainParts.ownLimit;
import static org.meltwright.safety.hazard.PlainParts.ownOfItsCategory;
import static org.meltwright.safety.hazard.PlainParts.reached;

import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.meltwright.safety.hazard.PlainMixture.Category;
import org.meltwright.safety.hazard.PlainMixture.Known;
import org.meltwright.safety.hazard.PlainParts.Part;

/**
 * Annex II 2.8 and 2.10, stated a second time: for whom a label says that it may set off an allergy
 * (EUH208), and for whom it says that there is a data sheet (EUH210).
 */
final class PlainDuties {

  private static final Set<String> SENSITISERS = Set.of("Skin Sens.", "Resp. Sens.");
  private static final Set<String> ALL = Set.of("1", "1A", "1B");

  /** Sensitisers have shares of their own; the others are neither health nor environment. */
  private static final Set<String> BY_OTHER_SHARES =
      Set.of(
          "Skin Sens.",
          "Resp. Sens.",
          "Flam. Liq.",
          "Flam. Sol.",
          "Ox. Sol.",
          "Ox. Liq.",
          "Water-react.",
          "Met. Corr.");

  private final PlainParts parts;
  private final boolean gas;

  PlainDuties(PlainParts parts, boolean gas) {
    this.parts = parts;
    this.gas = gas;
  }

  /** Table 3.4.6: one tenth of a limit of its own, else 0.01 % for category 1A and 0.1 %. */
  String elicitors() {
    return names(
        p -> SENSITISERS.stream().anyMatch(n -> reached(p.counted(), elicitation(p.known(), n))));
  }

  private static double elicitation(Known k, String name) {
    double own = ownLimit(k, Set.of(name), ALL);
    double general = !k.has(name) ? NEVER : k.has(name, "1A") ? 0.01 : 0.1;
    return Math.min(own / 10, ownOfItsCategory(k, Set.of(name)) ? NEVER : general);
  }

  /** Each substance on its own; nothing is added up. */
  String announced() {
    return names(p -> announces(p));
  }

  private boolean announces(Part p) {
    boolean sensitiser =
        SENSITISERS.stream().anyMatch(n -> reached(p.counted(), elicitation(p.known(), n)));
    boolean fromTenth =
        p.known().has("Carc.", "2")
            || p.known().has("Repr.")
            || p.known().has("Lact.")
            || p.known().has("ED HH", "2")
            || p.known().has("ED ENV", "2");
    boolean other =
        p.known().categories.stream()
                .map(Category::name)
                .anyMatch(n -> !BY_OTHER_SHARES.contains(n))
            || PlainAcute.isEstimated(p.known());
    return sensitiser
        || (fromTenth && reached(p.counted(), 0.1))
        || (other && reached(p.counted(), 1))
        || (p.known().workplaceLimit && reached(p.share(), gas ? 0.2 : 1));
  }

  private String names(Predicate<Part> which) {
    return parts.all().stream()
        .filter(which)
        .map(p -> p.known().id)
        .sorted()
        .collect(Collectors.joining(", "));
  }
}
