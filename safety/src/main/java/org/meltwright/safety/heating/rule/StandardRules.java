// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.stream.Stream;
import org.meltwright.safety.heating.HeatingRule;

/**
 * All rules of this library, topic by topic.
 *
 * <p>An app asks the standard set for them:
 *
 * <pre>{@code
 * HeatingRules rules = HeatingRules.standard();
 * rules.find("hard-ceiling").get().info().severity(); // DANGER
 * rules.find("above-target").get().info().severity(); // CAUTION
 * }</pre>
 */
public final class StandardRules {

  private StandardRules() {}

  /**
   * Returns the rules.
   *
   * @return one of each, in the order of topics
   */
  public static List<HeatingRule> all() {
    return Stream.of(
            TemperatureRules.ALL,
            WorkingRules.ALL,
            MixRules.ALL,
            PigmentRules.ALL,
            VesselRules.ALL,
            ToolRules.ALL,
            PlaceRules.ALL)
        .flatMap(List::stream)
        .toList();
  }
}
