// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.meltwright.units.Limit;

/**
 * What the pack of a mixture for the public must have besides its label.
 *
 * <p>A lye for the public needs both:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture lye =
 *     HazardMixture.builder(rules)
 *         .cas("1310-73-2", 4)
 *         .restNotClassified()
 *         .state(PhysicalState.LIQUID)
 *         .build();
 * HazardLabel label =
 *     HazardLabel.of(HazardReview.of(lye, rules), LabelDetails.builder().build());
 * label.packaging(); // [CHILD_RESISTANT_CLOSURE, TACTILE_WARNING]
 * }</pre>
 *
 * <p>By a table that is remembered, not read: compare Annex II, Part 3. Whether a pack is exempt,
 * as an aerosol is, is not known here.
 */
public enum PackagingDuty {
  /** A closure that children cannot open (Annex II 3.1). */
  CHILD_RESISTANT_CLOSURE("child-resistant-closure"),
  /** A raised triangle that the blind can feel (Annex II 3.2). */
  TACTILE_WARNING("tactile-warning");

  private static final List<List<String>> ROWS = TextTable.rows("packaging.txt");

  private final String id;

  PackagingDuty(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return for example {@code tactile-warning}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the duty for the reader.
   *
   * @param locale the reader's language; German for {@code de}, else English
   * @return a whole sentence
   */
  public String text(Locale locale) {
    return HazardTexts.text("packaging." + id, locale);
  }

  static List<PackagingDuty> of(HazardReview review) {
    return Stream.of(values())
        .filter(duty -> ROWS.stream().anyMatch(row -> duty.isDue(row, review)))
        .toList();
  }

  private boolean isDue(List<String> row, HazardReview review) {
    if (!row.get(0).equals(id) || !Days.of(row).holdOn(review.rules().day())) {
      return false;
    }
    return row.get(1).equals("content")
        ? review.mixture().ingredients().stream().anyMatch(i -> isContent(row, i))
        : review.categories().stream().anyMatch(c -> isOf(row, c));
  }

  private static boolean isContent(List<String> row, HazardIngredient i) {
    return i.hazards().casNumbers().contains(row.get(2))
        && Limit.reaches(i.percent(), Double.parseDouble(row.get(3)));
  }

  private static boolean isOf(List<String> row, HazardCategory c) {
    boolean category =
        row.get(2).equals("all") || TextTable.items(row.get(2), ",").contains(c.category().id());
    return row.get(1).equals(c.hazardClass().id()) && category;
  }
}
