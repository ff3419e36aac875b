// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.meltwright.units.Limit;

/** What is said at least while a class is open for lack of a test that only the whole can give. */
final class UntilTested {

  private static final Set<HazardRemark> LACKING =
      EnumSet.of(
          HazardRemark.TEST_MISSING,
          HazardRemark.STATE_MISSING,
          HazardRemark.VISCOSITY_MISSING,
          HazardRemark.FLASH_POINT_MISSING,
          HazardRemark.MAY_BURN_AS_A_SOLID);

  private final HazardReview review;

  UntilTested(HazardReview review) {
    this.review = review;
  }

  /** The statements of the classes, and the precautions that they never do without. */
  List<String> codes(boolean forThePublic) {
    List<HazardCategory> presumed =
        review.open().stream()
            .filter(f -> f.remarks().stream().anyMatch(LACKING::contains))
            .flatMap(f -> gravest(f.hazardClass()).stream())
            .toList();
    LabelElements elements = LabelElements.of(presumed, review.rules());
    Stream<String> precautions =
        new PrecautionChoice(presumed, elements, Map.of(), forThePublic, false)
            .choose().stream()
                .filter(p -> p.verdict() == Precaution.Verdict.CORE && !p.askedBy().isEmpty())
                .map(Precaution::code)
                .filter(code -> !code.startsWith("P5"));
    Set<String> statements = new TreeSet<>(elements.hazardStatements());
    if (review.mixture().state().filter(UntilTested::isSolid).isPresent()) {
      statements.clear();
    }
    return Stream.concat(statements.stream(), precautions).toList();
  }

  private static boolean isSolid(PhysicalState state) {
    return state == PhysicalState.SOLID || state == PhysicalState.SOLID_AT_40;
  }

  private Optional<HazardCategory> gravest(HazardClass c) {
    double from = review.rules().bound(Bound.MAY_BURN_FROM_PER_CENT);
    List<HazardCategory> claimed =
        review.mixture().ingredients().stream()
            .filter(i -> Limit.reaches(i.percent(), from))
            .flatMap(i -> i.hazards().categories().stream())
            .filter(x -> x.hazardClass() == c)
            .toList();
    return LabelElements.all().stream()
        .filter(x -> x.hazardClass() == c)
        .filter(x -> claimed.stream().anyMatch(y -> y.category() == x.category()))
        .findFirst();
  }
}
