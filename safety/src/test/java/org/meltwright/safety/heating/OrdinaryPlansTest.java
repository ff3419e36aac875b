// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Some sixty ordinary plans, each with all that the review finds. */
class OrdinaryPlansTest {

  record OrdinaryPlan(String plan, String words, String findings) {

    static OrdinaryPlan parse(String line) {
      String[] cells = line.split(" \\|", -1);
      return new OrdinaryPlan(cells[0].strip(), cells[1].strip(), cells[2].strip());
    }

    @Override
    public String toString() {
      return words;
    }
  }

  static List<OrdinaryPlan> plans() {
    return RuleCase.lines("ordinary-plans.txt").stream().map(OrdinaryPlan::parse).toList();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void plan_has_these_findings(OrdinaryPlan ordinary) {
    HeatingReview review = Plans.review(ordinary.plan());
    String found = review.findings().stream().map(Finding::ruleId).collect(Collectors.joining(" "));
    assertThat((review.isBlocked() ? "blocks " : "") + found).isEqualTo(ordinary.findings());
  }
}
