// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.meltwright.core.source.Source;
import org.meltwright.examples.studio.day.ClassDay;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.day.PaintSheet;
import org.meltwright.examples.studio.day.Provisions;
import org.meltwright.examples.studio.day.Sheet;
import org.meltwright.examples.studio.page.Block.Blanks;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Checklist;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Poster;
import org.meltwright.examples.studio.page.Edition;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.exposure.CircuitLoad;
import org.meltwright.safety.heating.HeatingAction;
import org.meltwright.safety.heating.HeatingLimits;
import org.meltwright.safety.heating.HeatingReading;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.safety.heating.StandingAdvice;

/** The class sheet: for the wall, two pages of paper, to be ticked and filled in by hand. */
public final class ClassSheetPage {

  private static final Set<StandingAdvice> OF_TOOLS_AND_RESIN =
      Set.of(StandingAdvice.RESIN, StandingAdvice.FLAME, StandingAdvice.LAMP);

  private final Sheet sheet;
  private final ClassSheet forClass;
  private final ClassDay day;
  private final Page.Builder page;
  private final Say say;

  /**
   * Returns the page of a class.
   *
   * @param sheet the answers of the day
   * @param forClass the answers for the class
   * @param edition the day, the file and the language it is for
   * @return the page
   */
  public static Page of(Sheet sheet, ClassSheet forClass, Edition edition) {
    return new ClassSheetPage(sheet, forClass, edition).page();
  }

  private ClassSheetPage(Sheet sheet, ClassSheet forClass, Edition edition) {
    this.say = edition.say();
    this.sheet = sheet;
    this.forClass = forClass;
    this.day = forClass.day();
    this.page =
        Page.builder(
            say,
            say.words("class-sheet.title", "title", day.about().title()),
            StandingAdvice.FIRST.text(say.locale()));
  }

  private Page page() {
    head();
    emergency();
    page.add(new Heading(2, say.words("risk")));
    page.add(new RiskTable(sheet, forClass, page).grid());
    checklist();
    page.add(new Heading(2, say.words("circuit.plan")));
    page.add(new CircuitPlan(forClass, say).grid());
    page.add(new Heading(2, say.words("age")));
    new AgeLimits(forClass, page).addTo();
    page.add(new Bullets(youngPeople()));
    page.add(new Heading(2, say.words("allergens")));
    Allergens allergens = new Allergens(forClass, page);
    page.add(allergens.grid());
    page.add(new Bullets(allergens.hiddenSensitisers()));
    page.add(new Checklist(say.all("allergens.asked", "allergens.sheets")));
    return page.build();
  }

  private void head() {
    page.add(new Heading(2, say.day(day.about().date()) + ", " + day.about().place()));
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact(say.words("class-sheet.studio"), sheet.studio().about().name()));
    facts.add(new Fact(say.words("class.people"), ClassPage.people(day, say)));
    facts.add(new Fact(say.words("class.hours"), say.significant(day.hours()) + " h"));
    facts.add(
        new Fact(
            say.words("class-sheet.panels"),
            say.words("class-sheet.in-all", "count", day.learners() * day.panels().perPerson())));
    page.add(new Facts(facts));
    if (forClass.isBlocked()) {
      page.add(ClassPage.withheld(forClass, say));
    }
    List<String> unknown = notKnown();
    if (!unknown.isEmpty()) {
      page.add(new Heading(2, say.words("class-sheet.not-known")));
      page.add(new Bullets(unknown));
    }
  }

  /** What is not known of the class, and of the pots that are heated before it. */
  private List<String> notKnown() {
    List<NotKnown> unknown = new ArrayList<>(forClass.unknownShares());
    if (!forClass.isBlocked()) {
      forClass.provisions().reason().ifPresent(unknown::add);
      forClass.provisions().value().flatMap(p -> p.bought().reason()).ifPresent(unknown::add);
    }
    sheet.jobs().stream().filter(job -> !job.isBlocked()).forEach(job -> unknown.addAll(of(job)));
    return unknown.stream().map(u -> u.text(say)).distinct().toList();
  }

  private static List<NotKnown> of(JobSheet job) {
    Optional<NotKnown> shares = job.pot().unknownShares();
    Optional<NotKnown> room = job.batch().flatMap(batch -> job.pot().room().reason());
    return Stream.of(shares, job.job().amount().reason(), room)
        .flatMap(Optional::stream)
        .map(u -> shares.filter(u::equals).orElseGet(() -> u.of(job.name())))
        .toList();
  }

  private void checklist() {
    page.add(new Heading(2, say.words("setup")));
    page.add(new Heading(3, say.words("setup.before-people")));
    page.add(new Checklist(beforePeople()));
    page.add(new Heading(3, say.words("all-pots.before")));
    page.add(new Checklist(beforeHeat()));
    page.add(new Heading(3, say.words("setup.while-hot")));
    page.add(new Checklist(whileHot()));
    page.add(new Heading(3, say.words("setup.end")));
    page.add(new Checklist(atTheEnd()));
  }

  private List<String> beforePeople() {
    List<String> items = new ArrayList<>();
    items.add(say.words("setup.initialled"));
    items.addAll(paints());
    items.add(cited(StandingAdvice.AIR));
    items.add(cited(CircuitLoad.advice(say.locale()), Source.COMMON_PRACTICE));
    forClass
        .circuits()
        .forEach(
            c ->
                items.add(
                    say.words(
                        "setup.circuit",
                        "name",
                        c.circuit().name(),
                        "pieces",
                        new CircuitPlan(forClass, say).pieces(c))));
    return items;
  }

  /** What is to be made, unless the class is not planned further. */
  private List<String> paints() {
    return forClass.isBlocked()
        ? List.of()
        : forClass.provisions().value().map(this::ready).orElseGet(this::enough);
  }

  private List<String> ready(Provisions provisions) {
    return provisions.paints().stream()
        .map(p -> say.words("setup.ready", "paint", p.name(), "mass", say.grams(p.needed())))
        .toList();
  }

  private List<String> enough() {
    return forClass.paints().stream()
        .map(p -> say.words("setup.enough", "paint", p.name()))
        .toList();
  }

  private List<String> beforeHeat() {
    List<String> items = new ArrayList<>();
    items.add(cited(StandingAdvice.WITHIN_REACH));
    items.add(cited(StandingAdvice.DRY));
    items.add(cited(StandingAdvice.CLOTHING));
    items.add(cited(StandingAdvice.HAIR));
    if (forClass.isBlocked()) {
      items.add(say.words("setup.blocked"));
    } else {
      items.addAll(settings());
    }
    items.add(say.words("setup.read"));
    return items;
  }

  /** What each heat source of the class is set to, and what the thermometer is to show. */
  private Set<String> settings() {
    Set<String> settings = new LinkedHashSet<>();
    for (PaintSheet p : forClass.paints()) {
      var source = p.paint().source();
      var reading = p.paint().reading();
      String set =
          source == null
              ? say.words("setting.no-source")
              : source
                  .setPoint()
                  .map(
                      t ->
                          say.words(
                              "setting.set", "source", source.name(), "point", say.celsius(t)))
                  .orElseGet(() -> say.words("setting.no-point", "source", source.name()));
      String show =
          reading == null
              ? say.words("setting.no-reading")
              : say.words("setting.show", "reading", say.temperature(reading))
                  + ReviewNotes.setAside(p.review()).map(r -> setAside(p)).orElse("");
      settings.add(say.words("setting", "paint", p.name(), "set", set, "show", show));
    }
    return settings;
  }

  private String setAside(PaintSheet paint) {
    return "; " + say.words("setting.instead", "what", ReviewNotes.inItsPlace(paint.review(), say));
  }

  private List<String> whileHot() {
    List<String> items = new ArrayList<>();
    items.add(cited(StandingAdvice.ATTENDANCE));
    items.add(unattended());
    items.add(
        cited(
            say.words("setup.look", "target", say.temperature(limits().target())),
            Source.COMMON_PRACTICE));
    items.add(cited(StandingAdvice.FUME));
    items.add(cited(StandingAdvice.GROUP));
    forClass.paints().stream()
        .flatMap(paint -> paint.review().standingAdvice().stream())
        .filter(OF_TOOLS_AND_RESIN::contains)
        .distinct()
        .forEach(advice -> items.add(cited(advice)));
    return items;
  }

  private String unattended() {
    HeatingRule rule = HeatingRules.standard().find("unattended").orElseThrow();
    return cited(rule.text("rule.unattended.remedy", say.locale(), Map.of()), rule.info().source());
  }

  private List<String> atTheEnd() {
    return List.of(
        say.words("setup.off"), cited(StandingAdvice.OILY_RAGS), cited(StandingAdvice.KITCHEN));
  }

  private List<String> youngPeople() {
    return List.of(
        say.words("age.burns", "source", page.cite(say.words("risk.burns.source"))),
        say.words("age.law"));
  }

  /** The stricter of what holds for each pot of the class. */
  private HeatingLimits limits() {
    return forClass.paints().stream()
        .map(paint -> paint.review().limits())
        .reduce(HeatingLimits.standard(), HeatingLimits::tightened);
  }

  /** What the hard ceiling calls for in the worst of the pots. */
  private HeatingAction tooHot() {
    HeatingReading ceiling = HeatingReading.of(HeatingReading.Place.LIQUID, limits().hardCeiling());
    return forClass.paints().stream()
        .map(paint -> ceiling.action(limits(), paint.composition()))
        .min(Comparator.comparing(HeatingAction::level))
        .orElseGet(ceiling::action);
  }

  private void emergency() {
    page.add(new Heading(2, say.words("emergency")));
    HeatingAction tooHot = tooHot();
    page.add(
        new Poster(
            List.of(
                cited(StandingAdvice.WAX_FIRE),
                cited(StandingAdvice.BURN),
                cited(StandingAdvice.EYE),
                cited(StandingAdvice.BURNING_CLOTHES),
                cited(
                    say.words(
                        "emergency.from",
                        "ceiling",
                        say.temperature(tooHot.reading().value()),
                        "action",
                        tooHot.atOnce(say.locale())),
                    Source.COMMON_PRACTICE))));
    page.add(
        new Blanks(
            say.all(
                "emergency.number",
                "emergency.address",
                "emergency.assembly",
                "emergency.first-aid",
                "emergency.lids",
                "emergency.switch",
                "emergency.in-charge")));
  }

  private String cited(StandingAdvice advice) {
    return cited(advice.text(say.locale()), advice.source());
  }

  private String cited(String text, Source source) {
    return text + " " + page.cite(source.citation());
  }
}
