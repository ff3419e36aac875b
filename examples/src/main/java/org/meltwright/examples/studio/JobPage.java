// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.List;
import java.util.Locale;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Page;

/** The chapter of one job: review, weights, casting, cost; the review stands first. */
final class JobPage {

  private static final Locale READER = Locale.ENGLISH;

  private final JobSheet sheet;
  private final Page.Builder page;

  JobPage(JobSheet sheet, Page.Builder page) {
    this.sheet = sheet;
    this.page = page;
  }

  void add() {
    page.add(new Heading(2, sheet.name()));
    new ReviewPage(sheet, page).add();
    sheet.blockedRecipes().forEach(name -> page.add(needs(name)));
    if (sheet.isBlocked()) {
      page.add(withheld());
      costOfBlocked();
    } else {
      sheet.batch().ifPresent(batch -> new BatchPage(sheet, batch, page).add());
      sheet.job().amount().reason().ifPresent(this::notKnown);
    }
  }

  private static Notice needs(String recipe) {
    return new Notice(
        Tone.CARE,
        "NEEDS A BLOCKED RECIPE",
        recipe + " is blocked today, and this recipe calls for it.",
        List.of(
            "Do not make it as planned. What is left of an earlier batch serves only if it is blocked"
                + " for how it is heated, and not for what is in it.",
            "Its cost is counted here as that of its materials, without electricity and work."));
  }

  private Notice withheld() {
    List<String> reasons =
        sheet.review().findings().stream()
            .filter(f -> f.isBlocking())
            .map(f -> f.summary(READER))
            .toList();
    return new Notice(
        Tone.STOP, "WITHHELD", "Weights, casting and cost are not shown for this recipe.", reasons);
  }

  /** Any of its money tells the weights as soon as a price is known, the total too. */
  private void costOfBlocked() {
    page.add(new Heading(3, "Cost"));
    page.add(new Facts(List.of(new Fact("total, lines and cost per kilogram", "withheld"))));
  }

  /** What was said of the shares beside the review is not said again. */
  private void notKnown(NotKnown amount) {
    page.add(new Heading(3, "What to weigh"));
    if (sheet.pot().unknownShares().isEmpty()) {
      page.add(amount.notice());
    }
    page.add(new Facts(List.of(new Fact("weights, cakes and cost", amount.value()))));
  }
}
