// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.examples.studio.day.BatchSheet;
import org.meltwright.examples.studio.day.ByVolume;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.Ledger;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.day.ShelfItem;
import org.meltwright.examples.studio.day.Verdict;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Fold;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;

/** What the day takes from the shelf and from itself, what is short of it, and what it costs. */
final class ShelfPage {

  private final Sheet sheet;
  private final Ledger ledger;
  private final Page.Builder page;
  private final Say say;

  ShelfPage(Sheet sheet, Page.Builder page) {
    this.sheet = sheet;
    this.ledger = new Ledger(sheet.jobs(), sheet.studio().recipes().leftovers());
    this.page = page;
    this.say = page.say();
  }

  /** What has to be got before anything is begun. */
  void addWhatIsShort() {
    sheet.studio().shelf().forEach(this::warnIfShort);
    ledger.taken().forEach(this::warnIfShort);
  }

  /** The day in tables, folded. */
  Fold fold() {
    return new Fold(
        say.words("shelf"),
        page.gather(
            () -> {
              page.add(glance());
              page.add(shelf());
              counted();
              ledger.uncounted().forEach(job -> page.add(uncounted(job)));
              madeAndTaken();
            }));
  }

  private Table glance() {
    List<List<String>> rows = new ArrayList<>();
    sheet.jobs().forEach(job -> rows.add(row(job)));
    return new Table(
        say.words("glance.caption"),
        say.all(
            "recipe",
            "glance.findings",
            "glance.pot",
            "glance.net",
            "glance.cakes",
            "glance.own",
            "cost.ready-made"),
        rows,
        false);
  }

  /** What the jobs that may be done take from the shelf, and what it lacks. */
  private Table shelf() {
    List<List<String>> rows = new ArrayList<>();
    for (ShelfItem item : sheet.studio().shelf()) {
      double interval = item.balance().intervalKilograms();
      double missing = ledger.missing(item);
      rows.add(
          List.of(
              item.material().name(say.locale()),
              say.grams(item.stockKilograms(), interval),
              say.grams(ledger.needed(item), interval),
              missing > 0
                  ? say.words("short-by", "mass", say.grams(missing, interval))
                  : say.grams(ledger.left(item), interval)));
    }
    return new Table(
        say.words("shelf.caption"),
        say.all("material", "shelf.there", "shelf.taken", "shelf.left"),
        rows,
        false);
  }

  /** Every volume says whose density it was counted with. */
  private void counted() {
    List<String> notes = new ArrayList<>();
    for (ShelfItem item : sheet.studio().shelf()) {
      item.byVolume().forEach(volume -> notes.add(counted(item, volume)));
    }
    if (!notes.isEmpty()) {
      page.add(new Bullets(notes));
    }
  }

  private String counted(ShelfItem item, ByVolume volume) {
    return say.words(
        volume.isStated() ? "counted" : "counted.low",
        "material",
        item.material(),
        "written",
        volume.written(),
        "mass",
        say.grams(volume.kilograms()),
        "density",
        say.significant(volume.kilogramsPerCubicMetre() / 1000) + " g/ml");
  }

  /** What today's recipes take from each other, and what of it is not made today. */
  private void madeAndTaken() {
    Map<String, Double> taken = ledger.taken();
    if (taken.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    taken.forEach((name, mass) -> rows.add(row(name, mass)));
    page.add(
        new Table(
            say.words("made.caption"),
            say.all("recipe", "shelf.there", "made.made", "shelf.taken", "shelf.left"),
            rows,
            false));
  }

  private List<String> row(String name, double taken) {
    if (isUncounted(name)) {
      String unknown = say.words(NotKnown.WORDS);
      return List.of(name, say.grams(ledger.there(name)), unknown, say.grams(taken), unknown);
    }
    double left = ledger.there(name) + ledger.made(name) - taken;
    return List.of(
        name,
        say.grams(ledger.there(name)),
        isBlocked(name) ? say.words("blocked") : say.grams(ledger.made(name)),
        say.grams(taken),
        left < 0 ? say.words("short-by", "mass", say.grams(-left)) : say.grams(left));
  }

  private boolean isUncounted(String recipe) {
    return ledger.uncounted().stream().anyMatch(job -> job.name().equals(recipe));
  }

  private boolean isBlocked(String recipe) {
    return sheet.jobs().stream().anyMatch(job -> job.blockedRecipes().contains(recipe));
  }

  private Notice uncounted(JobSheet job) {
    return new Notice(
        Tone.OPEN,
        say.words("not-known.label"),
        say.words("uncounted", "recipe", job.name()),
        say.all("uncounted.remedy"));
  }

  private void warnIfShort(ShelfItem item) {
    double missing = ledger.missing(item);
    if (missing > 0) {
      String mass = say.grams(missing, item.balance().intervalKilograms());
      page.add(
          isShort(
              say.words("short.there", "name", item.material(), "mass", mass),
              "short.there.remedy"));
    }
  }

  private void warnIfShort(String name, double taken) {
    double made = ledger.there(name) + ledger.made(name);
    if (made < taken && !isUncounted(name)) {
      page.add(
          isShort(
              say.words("short.made", "name", name, "mass", say.grams(taken - made)),
              isBlocked(name) ? "short.blocked.remedy" : "short.made.remedy"));
    }
  }

  private Notice isShort(String what, String remedy) {
    return new Notice(Tone.CARE, say.words("short"), what, say.all(remedy));
  }

  private List<String> row(JobSheet job) {
    List<String> cells = new ArrayList<>(List.of(job.name(), new Verdict(job, say).gravest()));
    cells.addAll(
        job.isBlocked()
            ? Collections.nCopies(4, say.words("withheld"))
            : job.batch()
                .map(this::amounts)
                .orElseGet(() -> Collections.nCopies(4, say.words(NotKnown.WORDS))));
    cells.add(
        Optional.ofNullable(sheet.studio().offers().get(job.job().recipeId()))
            .map(ReadyMade::landed)
            .map(say::perKilogram)
            .orElseGet(() -> say.words("glance.no-offer")));
    return cells;
  }

  private List<String> amounts(BatchSheet batch) {
    return List.of(
        say.grams(batch.weighing().printedTotalKilograms()),
        say.grams(batch.net().massKilograms()),
        batch
            .casting()
            .map(known -> known.said(say, c -> Long.toString(c.wholeCakes())))
            .orElseGet(() -> say.words("none")),
        batch.cost().said(say, c -> say.perKilogram(c.per(batch.batch().net().mass()))));
  }
}
