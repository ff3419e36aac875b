// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.day.Studio;
import org.meltwright.examples.studio.day.Unusual;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Card;
import org.meltwright.examples.studio.page.Block.Checklist;
import org.meltwright.examples.studio.page.Block.Fold;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Link;
import org.meltwright.examples.studio.page.Block.Links;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Edition;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.picture.TemperatureScale;
import org.meltwright.safety.heating.Finding;
import org.meltwright.safety.heating.NotAsked;
import org.meltwright.safety.heating.StandingAdvice;

/**
 * The studio sheet as a page: what must not be done today, a card for each recipe, once for all
 * pots what is to be looked to, and folded away what all of it rests on.
 */
public final class SheetPage {

  /** What is to be ready before anything is switched on; the rest holds all day. */
  private static final Set<StandingAdvice> BEFORE_THE_HEAT =
      Set.of(
          StandingAdvice.WITHIN_REACH,
          StandingAdvice.DRY,
          StandingAdvice.CLOTHING,
          StandingAdvice.AIR,
          StandingAdvice.GROUP);

  private final Sheet sheet;
  private final Edition edition;
  private final Say say;
  private final Page.Builder page;
  private final EveryPot every;

  /**
   * Returns the page of a sheet.
   *
   * @param sheet the answers of the day
   * @param edition the day, the file and the language it is for
   * @return the page
   */
  public static Page of(Sheet sheet, Edition edition) {
    return new SheetPage(sheet, edition, "sheet.title").whole();
  }

  /**
   * Returns a page with the card of one job alone.
   *
   * @param sheet the answers of the day
   * @param edition the day, the file and the language it is for
   * @param place the place of the job in the day, from zero
   * @return the page
   */
  public static Page card(Sheet sheet, Edition edition, int place) {
    SheetPage alone = new SheetPage(sheet, edition, "sheet.card");
    alone.page.add(alone.card(place));
    return alone.page.build();
  }

  private SheetPage(Sheet sheet, Edition edition, String title) {
    this.sheet = sheet;
    this.edition = edition;
    this.say = edition.say();
    this.every = EveryPot.of(sheet);
    this.page =
        Page.builder(
            say,
            say.words(title, "day", say.day(edition.day()), "studio", about().name()),
            say.words("sheet.subtitle", "town", about().town(), "file", edition.file()));
  }

  private Studio.About about() {
    return sheet.studio().about();
  }

  private Page whole() {
    sheet.jobs().stream().filter(JobSheet::isBlocked).forEach(this::mustNot);
    sheet
        .forClass()
        .filter(ClassSheet::isBlocked)
        .ifPresent(c -> page.add(ClassPage.withheld(c, say)));
    Unusual.in(sheet.studio()).forEach(this::isUnusual);
    ShelfPage shelf = new ShelfPage(sheet, page);
    shelf.addWhatIsShort();
    page.add(links());
    for (int i = 0; i < sheet.jobs().size(); i++) {
      page.add(card(i));
    }
    forAllPots();
    sheet.jobs().forEach(job -> page.add(new WorkingPage(job, page).fold()));
    Optional.ofNullable(sheet.studio().plans().brushing())
        .ifPresent(b -> page.add(BrushingPage.fold(b, page)));
    sheet.forClass().ifPresent(c -> page.add(new ClassPage(c, page).fold()));
    page.add(shelf.fold());
    page.add(figures());
    return page.build();
  }

  /** What is blocked, with the reason, before anything else. */
  private void mustNot(JobSheet job) {
    for (Finding finding : job.review().findings()) {
      if (finding.isBlocking()) {
        page.add(
            new Notice(
                Tone.STOP,
                say.words("must-not.label"),
                say.words("must-not", "recipe", job.name(), "why", finding.summary(say.locale())),
                List.of(finding.remedy(say.locale()))));
      }
    }
  }

  /** Before the money is spent; a box of its own, for it is neither a warning nor a problem. */
  private void isUnusual(Unusual figure) {
    page.add(
        new Notice(
            Tone.NOTE,
            say.words("unusual.label"),
            say.words("unusual", "whose", figure.whose()),
            List.of(figure.remark().text(say.locale()))));
  }

  private Links links() {
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < sheet.jobs().size(); i++) {
      JobSheet job = sheet.jobs().get(i);
      String name = job.isBlocked() ? say.words("link.blocked", "recipe", job.name()) : job.name();
      links.add(new Link("card-" + (i + 1), name));
    }
    return new Links(links);
  }

  private Card card(int place) {
    String running =
        say.words(
            "running",
            "studio",
            about().name(),
            "day",
            say.day(edition.day()),
            "file",
            edition.file());
    return new CardPage(sheet.jobs().get(place), sheet, page).card(place + 1, running, every);
  }

  /** What is said once for all pots. */
  private void forAllPots() {
    page.add(new Heading(2, say.words("all-pots")));
    page.add(new Heading(3, say.words("all-pots.before")));
    page.add(new Checklist(advice(true)));
    sheet.jobs().stream()
        .filter(job -> !job.isBlocked())
        .findFirst()
        .ifPresent(any -> every.add(page, any.review()));
    if (!sheet.jobs().isEmpty()) {
      page.add(TemperatureScale.of(say, pots()));
    }
    page.add(new Heading(3, say.words("all-pots.always")));
    page.add(new Bullets(advice(false)));
    page.add(new Paragraph(notAsked()));
  }

  private List<TemperatureScale.Pot> pots() {
    return sheet.jobs().stream()
        .map(job -> new TemperatureScale.Pot(job.name(), job.review(), job.window().orElse(null)))
        .toList();
  }

  private List<String> advice(boolean isBeforeTheHeat) {
    return Arrays.stream(StandingAdvice.values())
        .filter(a -> BEFORE_THE_HEAT.contains(a) == isBeforeTheHeat)
        .map(a -> a.text(say.locale()) + " " + page.cite(a.source().citation()))
        .toList();
  }

  /** What nobody mentioned of any pot, in one line for all of them. */
  private String notAsked() {
    List<NotAsked> all =
        sheet.jobs().stream().flatMap(job -> job.review().notAsked().stream()).toList();
    return NotAsked.line(all, say.locale());
  }

  private Fold figures() {
    Figures figures = new Figures();
    sheet.jobs().forEach(job -> figures.add(job.job().mix()));
    sheet.forClass().ifPresent(c -> c.paints().forEach(p -> figures.add(p.composition())));
    return new Fold(say.words("figures"), List.of(figures.table(page)));
  }
}
