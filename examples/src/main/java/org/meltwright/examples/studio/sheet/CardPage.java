// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.WeighingLine;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.examples.studio.day.BatchSheet;
import org.meltwright.examples.studio.day.Brushing;
import org.meltwright.examples.studio.day.Chosen;
import org.meltwright.examples.studio.day.Job;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.Known;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.day.Times;
import org.meltwright.examples.studio.day.Verdict;
import org.meltwright.examples.studio.page.Block;
import org.meltwright.examples.studio.page.Block.Blanks;
import org.meltwright.examples.studio.page.Block.Card;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Steps;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Block.Weight;
import org.meltwright.examples.studio.page.Block.Weights;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;

/**
 * The card of one recipe for the bench: what to weigh, what to do, what comes of it, the degrees
 * and minutes that decide, what to mind. A blocked recipe has its reason and no weights.
 */
final class CardPage {

  /** What is less than half a gram is no cake. */
  private static final double LEAST_PART_KILOGRAMS = 0.0005;

  private final JobSheet sheet;
  private final Page.Builder page;
  private final Say say;
  private final ReviewNotes notes;
  private final @Nullable Known<Brushing> brushing;

  /**
   * Makes the card of a job.
   *
   * @param sheet the job
   * @param day all jobs of the day: what is found of every pot is said in full beside the cards
   * @param page where sources are cited
   */
  CardPage(JobSheet sheet, Sheet day, Page.Builder page) {
    this.sheet = sheet;
    this.page = page;
    this.say = page.say();
    this.notes = new ReviewNotes(page);
    this.brushing = day.studio().plans().brushing();
  }

  /** The card; the same job has the same place in the list of the day. */
  Card card(int place, String running, EveryPot every) {
    List<Block> blocks =
        page.gather(
            () -> {
              if (sheet.isBlocked()) {
                blocked();
              } else {
                allowed();
                mind(every);
              }
            });
    return new Card(
        "card-" + place,
        sheet.name(),
        new Verdict(sheet, say).line(),
        running,
        sheet.isBlocked(),
        blocks);
  }

  private void blocked() {
    sheet.review().findings().forEach(f -> page.add(notes.notice(f, sheet.review())));
    List<String> reasons =
        sheet.review().findings().stream()
            .filter(f -> f.isBlocking())
            .map(f -> f.summary(say.locale()))
            .toList();
    page.add(
        new Notice(Tone.STOP, say.words("withheld.label"), say.words("withheld.recipe"), reasons));
    sheet.blockedRecipes().forEach(name -> page.add(needs(name)));
    sheet.review().notAssessed().forEach(n -> page.add(notes.notice(n)));
    sheet.pot().unknownShares().ifPresent(u -> page.add(u.notice(say)));
    List<Fact> facts = new ArrayList<>(notes.temperatures(sheet));
    facts.add(new Fact(say.words("card.all-amounts"), say.words("withheld")));
    page.add(new Facts(facts));
  }

  private void allowed() {
    sheet.blockedRecipes().forEach(name -> page.add(needs(name)));
    page.add(new Heading(3, say.words("card.weigh")));
    sheet.batch().ifPresent(this::batch);
    sheet.job().amount().reason().ifPresent(this::notKnown);
    page.add(new Heading(3, say.words("card.degrees")));
    List<Fact> facts = new ArrayList<>(notes.temperatures(sheet));
    sheet.batch().ifPresent(batch -> facts.addAll(times(batch.batch())));
    page.add(new Facts(facts));
  }

  private void batch(BatchSheet batch) {
    page.add(weights(batch.weighing()));
    sheet.chosen().ifPresent(this::chosen);
    page.add(new Blanks(say.all("card.weighed-by", "card.thermometer-by")));
    page.add(new Heading(3, say.words("card.steps")));
    page.add(new Steps(steps(batch)));
    batch.job().casting().ifPresent(cast -> cakes(batch, cast));
  }

  /** That the amounts were chosen, and where the reasons stand. */
  private void chosen(Chosen chosen) {
    chosen.saving(say).ifPresent(s -> page.add(new Paragraph(s)));
    page.add(new Paragraph(say.words("chosen.card", "recipe", sheet.name())));
  }

  private Notice needs(String recipe) {
    return new Notice(
        Tone.CARE,
        say.words("needs-blocked.label"),
        say.words("needs-blocked", "recipe", recipe),
        say.all("needs-blocked.remedy", "needs-blocked.cost"));
  }

  /** What was said of the shares beside the review is not said again. */
  private void notKnown(NotKnown amount) {
    if (sheet.pot().unknownShares().isEmpty()) {
      page.add(amount.notice(say));
    }
    page.add(new Facts(List.of(new Fact(say.words("card.all-amounts"), amount.value(say)))));
  }

  private Weights weights(WeighingSheet weighing) {
    List<Weight> lines = new ArrayList<>();
    for (WeighingLine line : weighing.inOrder()) {
      double interval = line.balance().intervalKilograms();
      lines.add(
          new Weight(
              name(line),
              say.grams(line.rounded().printedKilograms(), interval),
              line.balance().name() + ", " + say.interval(interval)));
    }
    double finest = WorkingPage.finest(weighing);
    return new Weights(lines, say.grams(weighing.printedTotalKilograms(), finest));
  }

  private String name(WeighingLine line) {
    return WorkingPage.name(line, say);
  }

  /** How each goes into the pot, then what is poured. */
  private List<String> steps(BatchSheet batch) {
    List<String> steps = new ArrayList<>();
    for (WeighingLine line : batch.weighing().inOrder()) {
      steps.add(step(line, line.hint().text(say.locale())));
      if (line.portions() > 1) {
        steps.add(step(line, say.words("step.portions", "count", line.portions())));
      }
    }
    for (WeighingLine line : batch.weighing().belowInterval()) {
      steps.add(step(line, say.words("step.finer-balance")));
    }
    batch
        .job()
        .casting()
        .ifPresent(
            cast ->
                steps.add(
                    say.words(
                        "step.pour",
                        "mould",
                        cast.mould().name(),
                        "fill",
                        say.percent(cast.fill().value()))));
    return steps;
  }

  private String step(WeighingLine line, String what) {
    return say.words("step", "name", name(line), "what", what);
  }

  private void cakes(BatchSheet batch, Job.Cast cast) {
    page.add(new Heading(3, say.words("card.cakes")));
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            say.words("cakes.mould"),
            say.words("cakes.cups", "mould", cast.mould().name(), "count", cast.mould().cups())));
    facts.addAll(
        batch
            .casting()
            .flatMap(Known::value)
            .map(this::cakes)
            .orElseGet(() -> WorkingPage.unknown(say, "cakes.whole", "cakes.each", "cakes.pours")));
    page.add(new Facts(facts));
    batch.casting().flatMap(Known::reason).ifPresent(r -> page.add(r.notice(say)));
  }

  private List<Fact> cakes(Casting casting) {
    double part = casting.partCakeKilograms();
    return List.of(
        new Fact(say.words("cakes.whole"), Long.toString(casting.wholeCakes())),
        new Fact(say.words("cakes.each"), say.estimate(casting.cakeMass(), 1000, "g")),
        new Fact(
            say.words("cakes.part"),
            part >= LEAST_PART_KILOGRAMS ? say.grams(part, 0.001) : say.words("none")),
        new Fact(say.words("cakes.pours"), Long.toString(casting.pours())));
  }

  private List<Fact> times(Batch batch) {
    return Times.of(sheet.job(), batch, sheet.pot(), brushing).stream()
        .map(
            line ->
                new Fact(
                    say.words(line.name()),
                    line.time()
                        .saidOrWhy(
                            say,
                            t ->
                                say.words(
                                    "times.said", "time", say.time(t), "basis", line.basis()))))
        .toList();
  }

  /** What is found of every pot of the day is named here and said in full once. */
  private void mind(EveryPot every) {
    page.add(new Heading(3, say.words("card.mind")));
    if (sheet.review().findings().isEmpty() && sheet.review().notAssessed().isEmpty()) {
      page.add(new Paragraph(say.words("card.mind.nothing")));
    }
    sheet.review().findings().stream()
        .filter(f -> !every.holds(f))
        .forEach(f -> page.add(notes.notice(f, sheet.review())));
    sheet.review().notAssessed().stream()
        .filter(n -> !every.holds(n))
        .forEach(n -> page.add(notes.notice(n)));
    sheet.pot().unknownShares().ifPresent(u -> page.add(u.notice(say)));
    unknownRoom().ifPresent(u -> page.add(u.notice(say)));
    every.line(say).ifPresent(page::add);
  }

  /** What cannot be weighed needs no advice on how to fill the pot. */
  private Optional<NotKnown> unknownRoom() {
    return sheet.allowed().flatMap(batch -> sheet.pot().room().reason());
  }
}
