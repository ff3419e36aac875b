// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.minutes;

import java.util.List;
import org.joda.money.Money;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.CostTreeData;
import org.meltwright.core.cost.UnitPrice;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Answers: how do I get results out as JSON, and read them again? All prices are invented. */
public final class ResultsAsJson {

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private ResultsAsJson() {}

  /**
   * Prints the cost of a batch as JSON, and its total as read from that.
   *
   * @param args none
   */
  public static void main(String[] args) {
    UnitPrice wax = UnitPrice.parse("12.50 EUR/kg");
    UnitPrice resin = UnitPrice.parse("31.90 EUR/kg");
    CostRollUp cost =
        CostRollUp.of(
            "medium",
            List.of(
                CostItem.material("wax", grams(730), wax),
                CostItem.material("resin", grams(91.25), resin),
                CostItem.labour("stirring", minutes(20), Money.parse("EUR 20.00"))));

    String json = JSON.writeValueAsString(CostTreeData.of(cost));
    System.out.println(json);

    CostTreeData read = JSON.readValue(json, CostTreeData.class);
    System.out.println(read.amount().amount() + " " + read.amount().currency());
  }
}
