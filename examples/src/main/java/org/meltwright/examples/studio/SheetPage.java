// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.meltwright.core.batch.Casting;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.NotAsked;
import org.meltwright.safety.heating.Severity;
import org.meltwright.safety.heating.StandingAdvice;

/** The studio sheet as a page: the day at a glance, cautions, then a chapter for each job. */
final class SheetPage {

  private final Sheet sheet;
  private final Ledger ledger;
  private final Page.Builder page;

  /** Returns the page of a sheet. */
  static Page of(Sheet sheet) {
    return new SheetPage(sheet).page();
  }

  private SheetPage(Sheet sheet) {
    this.sheet = sheet;
    this.ledger = new Ledger(sheet.jobs());
    this.page =
        Page.builder(
            "Studio sheet: " + sheet.studio().about().name(),
            sheet.studio().about().town()
                + ". A plan worked out from the studio file; local codes, data sheets and licensed"
                + " practice come first.");
  }

  private Page page() {
    page.add(new Heading(2, "Today at a glance"));
    page.add(glance());
    page.add(shelf());
    ledger.uncounted().forEach(job -> page.add(uncounted(job)));
    sheet.studio().shelf().forEach(this::warnIfShort);
    madeAndTaken();
    page.add(new Heading(2, "Before the heat goes on"));
    page.add(new Bullets(advice()));
    page.add(new Paragraph(notAsked()));
    sheet.jobs().forEach(job -> new JobPage(job, page).add());
    Optional.ofNullable(sheet.studio().plans().brushing())
        .ifPresent(b -> BrushingPage.add(b, page));
    sheet.forClass().ifPresent(c -> new ClassPage(c, page).add());
    page.add(new Heading(2, "Figures that this sheet rests on"));
    Figures figures = new Figures();
    sheet.jobs().forEach(job -> figures.add(job.job().mix()));
    sheet.forClass().ifPresent(c -> c.paints().forEach(p -> figures.add(p.composition())));
    page.add(figures.table(page));
    return page.build();
  }

  private Table glance() {
    List<List<String>> rows = new ArrayList<>();
    sheet.jobs().forEach(job -> rows.add(row(job)));
    return new Table(
        "Own and ready-made per kilogram of net product.",
        List.of("Recipe", "findings", "in the pot", "net", "cakes", "own", "ready-made"),
        rows,
        false);
  }

  /** What the jobs that may be done take from the shelf, and what it lacks. */
  private Table shelf() {
    List<List<String>> rows = new ArrayList<>();
    for (ShelfItem item : sheet.studio().shelf()) {
      double needed = ledger.needed(item);
      double missing = ledger.missing(item);
      double interval = item.balance().intervalKilograms();
      rows.add(
          List.of(
              item.material().name(Locale.ENGLISH),
              Say.grams(item.stockKilograms(), interval),
              Say.grams(needed, interval),
              missing > 0
                  ? "short by " + Say.grams(missing, interval)
                  : Say.grams(ledger.left(item), interval)));
    }
    return new Table(
        "The shelf: what is there, what today's recipes take, what is left.",
        List.of("Material", "there", "taken", "left"),
        rows,
        false);
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
            "What today's recipes take from each other, net.",
            List.of("Recipe", "made today", "taken", "left"),
            rows,
            false));
    taken.forEach(this::warnIfShort);
  }

  private List<String> row(String name, double taken) {
    if (isUncounted(name)) {
      return List.of(name, NotKnown.WORDS, Say.grams(taken), NotKnown.WORDS);
    }
    double left = ledger.made(name) - taken;
    return List.of(
        name,
        isBlocked(name) ? "BLOCKED" : Say.grams(ledger.made(name)),
        Say.grams(taken),
        left < 0 ? "short by " + Say.grams(-left) : Say.grams(left));
  }

  private boolean isUncounted(String recipe) {
    return ledger.uncounted().stream().anyMatch(job -> job.name().equals(recipe));
  }

  private static Notice uncounted(JobSheet job) {
    return new Notice(
        Tone.OPEN,
        "NOT KNOWN",
        "How much is made of " + job.name() + ": what it takes from the shelf is not counted here.",
        List.of("See its chapter for what is missing."));
  }

  private void warnIfShort(ShelfItem item) {
    double missing = ledger.missing(item);
    if (missing > 0) {
      page.add(
          new Notice(
              Tone.CARE,
              "SHORT",
              item.material().name(Locale.ENGLISH)
                  + ": today's recipes take "
                  + Say.grams(missing, item.balance().intervalKilograms())
                  + " more than is there.",
              List.of("Get the rest before you start, or make less.")));
    }
  }

  private boolean isBlocked(String recipe) {
    return sheet.jobs().stream().anyMatch(job -> job.blockedRecipes().contains(recipe));
  }

  private void warnIfShort(String name, double taken) {
    double made = ledger.made(name);
    if (made < taken && !isUncounted(name)) {
      page.add(
          new Notice(
              Tone.CARE,
              "SHORT",
              name + ": today's recipes take " + Say.grams(taken - made) + " more than is made.",
              List.of(
                  isBlocked(name)
                      ? "It is blocked today: do without. An earlier batch serves only if it is blocked"
                          + " for how it is heated, and not for what is in it."
                      : "Have the rest at hand from an earlier batch, or make more of it today.")));
    }
  }

  private List<String> row(JobSheet job) {
    List<String> cells = new ArrayList<>(List.of(job.name()));
    cells.add(job.isBlocked() ? "BLOCKED" : gravest(job));
    cells.addAll(
        job.isBlocked()
            ? Collections.nCopies(4, "withheld")
            : job.batch()
                .map(SheetPage::amounts)
                .orElseGet(() -> Collections.nCopies(4, NotKnown.WORDS)));
    cells.add(
        Optional.ofNullable(sheet.studio().offers().get(job.job().recipeId()))
            .map(offer -> Say.perKilogram(offer.landed()))
            .orElse("no offer"));
    return cells;
  }

  private static List<String> amounts(BatchSheet batch) {
    return List.of(
        Say.grams(batch.weighing().printedTotalKilograms()),
        Say.grams(batch.net().massKilograms()),
        batch.casting().map(c -> c.say(SheetPage::cakes)).orElse("none"),
        batch.cost().say(c -> Say.perKilogram(c.per(batch.batch().net().mass()))));
  }

  private static String cakes(Casting casting) {
    return Long.toString(casting.wholeCakes());
  }

  /** The gravest finding of a job; a pot of unknown fill ranks as a caution too. */
  private static String gravest(JobSheet job) {
    return gravest(job.review(), job.pot().room().reason().isPresent());
  }

  /** The gravest finding; what was not assessed ranks as a caution. */
  static String gravest(HeatingReview review) {
    return gravest(review, false);
  }

  private static String gravest(HeatingReview review, boolean isUnknown) {
    Optional<Severity> worst =
        review.findings().stream().map(Finding::severity).min(Comparator.naturalOrder());
    boolean open = isUnknown || !review.notAssessed().isEmpty();
    return worst
        .filter(s -> !open || s.isAtLeast(Severity.CAUTION))
        .map(s -> s.word(Locale.ENGLISH))
        .orElse(open ? "not assessed" : "none");
  }

  /** What nobody mentioned of any pot, in one line for all of them. */
  private String notAsked() {
    List<NotAsked> all =
        sheet.jobs().stream().flatMap(job -> job.review().notAsked().stream()).toList();
    return NotAsked.line(all, Locale.ENGLISH);
  }

  private List<String> advice() {
    return Arrays.stream(StandingAdvice.values())
        .map(a -> a.text(Locale.ENGLISH) + " " + page.cite(a.source().citation()))
        .toList();
  }
}
