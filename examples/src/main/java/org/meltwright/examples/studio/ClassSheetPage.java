// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.meltwright.core.source.Source;
import org.meltwright.examples.studio.page.Block.Blanks;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Checklist;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Poster;
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
final class ClassSheetPage {

  private static final Set<StandingAdvice> OF_TOOLS_AND_RESIN =
      Set.of(StandingAdvice.RESIN, StandingAdvice.FLAME, StandingAdvice.LAMP);

  private static final Locale READER = Locale.ENGLISH;

  private final Sheet sheet;
  private final ClassSheet forClass;
  private final ClassDay day;
  private final Page.Builder page;

  /** Returns the page of a class. */
  static Page of(Sheet sheet, ClassSheet forClass) {
    return new ClassSheetPage(sheet, forClass).page();
  }

  private ClassSheetPage(Sheet sheet, ClassSheet forClass) {
    this.sheet = sheet;
    this.forClass = forClass;
    this.day = forClass.day();
    this.page =
        Page.builder("Class sheet: " + day.about().title(), StandingAdvice.FIRST.text(READER));
  }

  private Page page() {
    head();
    page.add(new Heading(2, "Risk assessment"));
    page.add(new RiskTable(sheet, forClass, page).grid());
    checklist();
    page.add(new Heading(2, "Circuit plan"));
    page.add(CircuitPlan.grid(forClass));
    page.add(new Paragraph(cited(CircuitLoad.advice(READER), Source.COMMON_PRACTICE)));
    page.add(new Heading(2, "Age limits"));
    page.add(new AgeLimits(forClass, page).grid());
    page.add(new Bullets(youngPeople()));
    page.add(new Heading(2, "Allergens"));
    Allergens allergens = new Allergens(forClass, page);
    page.add(allergens.grid());
    page.add(new Bullets(allergens.hiddenSensitisers()));
    page.add(new Checklist(askBeforehand()));
    emergency();
    return page.build();
  }

  private void head() {
    page.add(new Heading(2, day.about().date() + ", " + day.about().place()));
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("studio", sheet.studio().about().name()));
    facts.add(new Fact("people", ClassPage.people(day)));
    facts.add(new Fact("wax is hot for", Say.significant(day.hours()) + " h"));
    facts.add(new Fact("panels", day.learners() * day.panels().perPerson() + " in all"));
    page.add(new Facts(facts));
    if (forClass.isBlocked()) {
      page.add(ClassPage.withheld(forClass));
    }
    List<String> unknown = notKnown();
    if (!unknown.isEmpty()) {
      page.add(new Heading(2, "Not known"));
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
    return unknown.stream().map(NotKnown::text).distinct().toList();
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
    page.add(new Heading(2, "Set-up"));
    page.add(new Heading(3, "Before people come"));
    page.add(new Checklist(beforePeople()));
    page.add(new Heading(3, "Before the heat goes on"));
    page.add(new Checklist(beforeHeat()));
    page.add(new Heading(3, "While it is hot"));
    page.add(new Checklist(whileHot()));
    page.add(new Heading(3, "At the end"));
    page.add(new Checklist(atTheEnd()));
  }

  private List<String> beforePeople() {
    List<String> items = new ArrayList<>();
    items.add("Every row of the risk assessment is read, done and initialled.");
    items.addAll(paints());
    items.add(cited(StandingAdvice.AIR));
    items.add(cited(CircuitLoad.advice(READER), Source.COMMON_PRACTICE));
    forClass
        .circuits()
        .forEach(c -> items.add(c.circuit().name() + ": " + CircuitPlan.pieces(c) + "."));
    return items;
  }

  /** What is to be made, unless the class is not planned further. */
  private List<String> paints() {
    return forClass.isBlocked()
        ? List.of()
        : forClass.provisions().value().map(ClassSheetPage::ready).orElseGet(this::enough);
  }

  private static List<String> ready(Provisions provisions) {
    return provisions.paints().stream()
        .map(p -> p.name() + ": " + Say.grams(p.needed()) + " are ready, made before class.")
        .toList();
  }

  private List<String> enough() {
    return forClass.paints().stream()
        .map(p -> p.name() + ": enough is ready, made before class; how much is not known.")
        .toList();
  }

  private List<String> beforeHeat() {
    List<String> items = new ArrayList<>();
    items.add(cited(StandingAdvice.WITHIN_REACH));
    items.add(cited(StandingAdvice.DRY));
    items.add(cited(StandingAdvice.CLOTHING));
    items.add(cited(StandingAdvice.HAIR));
    if (forClass.isBlocked()) {
      items.add("Nothing is switched on: the class is blocked, and its settings are withheld.");
    } else {
      items.addAll(settings());
    }
    items.add("Everyone has read \"If it goes wrong\" below.");
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
              ? "heat source not stated"
              : source.name()
                  + source
                      .setPoint()
                      .map(t -> " set to " + Say.celsius(t))
                      .orElse(", set point not stated");
      String show =
          reading == null
              ? "; reading not stated"
              : "; the thermometer in the wax is to show "
                  + Say.temperature(reading)
                  + Readings.setAside(p.review())
                      .map(r -> "; the review goes by " + Readings.inItsPlace(p.review()))
                      .orElse("");
      settings.add(p.name() + ": " + set + show + ".");
    }
    return settings;
  }

  private List<String> whileHot() {
    List<String> items = new ArrayList<>();
    items.add(cited(StandingAdvice.ATTENDANCE));
    items.add(unattended());
    items.add(
        cited(
            "Looked at, and written down: the target is not above "
                + Say.temperature(limits().target())
                + ".",
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
    return cited(rule.text("rule.unattended.remedy", READER, Map.of()), rule.info().source());
  }

  private List<String> atTheEnd() {
    return List.of(
        "Everything that heats is switched off.",
        cited(StandingAdvice.OILY_RAGS),
        cited(StandingAdvice.KITCHEN));
  }

  private List<String> youngPeople() {
    return List.of(
        "Burn thresholds are of healthy adult skin; young skin may burn below them "
            + page.cite(RiskTable.BURNS)
            + ".",
        "Which work young people may do is decided by local law and by the school; ask before the"
            + " class.");
  }

  private static List<String> askBeforehand() {
    return List.of(
        "Everyone was asked beforehand about allergies and has read what is named above.",
        "The suppliers' safety data sheets are at hand.");
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
    page.add(new Heading(2, "If it goes wrong"));
    HeatingAction tooHot = tooHot();
    page.add(
        new Poster(
            List.of(
                cited(StandingAdvice.WAX_FIRE),
                cited(StandingAdvice.BURN),
                cited(StandingAdvice.EYE),
                cited(StandingAdvice.BURNING_CLOTHES),
                cited(
                    "From "
                        + Say.temperature(tooHot.reading().value())
                        + " on: "
                        + tooHot.atOnce(READER),
                    Source.COMMON_PRACTICE))));
    page.add(
        new Blanks(
            List.of(
                "Emergency number",
                "Address of this place",
                "Assembly point",
                "First aid kit and burn water",
                "Fitting lids, and extinguisher",
                "Main switch",
                "In charge, and signature")));
  }

  private String cited(StandingAdvice advice) {
    return cited(advice.text(READER), advice.source());
  }

  private String cited(String text, Source source) {
    return text + " " + page.cite(source.citation());
  }
}
