// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.meltwright.core.cost.BreakEven;
import org.meltwright.core.planning.ClassBudget;
import org.meltwright.core.planning.Need;
import org.meltwright.core.planning.PurchaseLine;
import org.meltwright.core.planning.PurchasePlan;
import org.meltwright.core.planning.SupplierOrder;
import org.meltwright.examples.studio.day.ClassDay;
import org.meltwright.examples.studio.day.ClassSheet;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.day.PaintNeed;
import org.meltwright.examples.studio.day.Provisions;
import org.meltwright.examples.studio.day.Verdict;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Fold;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.picture.PurchaseBars;
import org.meltwright.safety.heating.HeatingReview;

/** The chapter of a class on the studio sheet: what to make, what to buy, cost per head. */
final class ClassPage {

  private final ClassSheet sheet;
  private final ClassDay day;
  private final Page.Builder page;
  private final Say say;

  ClassPage(ClassSheet sheet, Page.Builder page) {
    this.sheet = sheet;
    this.day = sheet.day();
    this.page = page;
    this.say = page.say();
  }

  Fold fold() {
    return new Fold(say.words("class", "title", day.about().title()), page.gather(this::add));
  }

  private void add() {
    page.add(new Facts(about()));
    page.add(new Paragraph(say.words("class.see-sheet")));
    if (sheet.isBlocked()) {
      page.add(withheld(sheet, say));
    } else {
      sheet.unknownShares().forEach(u -> page.add(u.notice(say)));
      sheet.provisions().reason().ifPresent(r -> page.add(r.notice(say)));
      sheet.provisions().value().ifPresent(this::provisions);
    }
  }

  private void provisions(Provisions provisions) {
    page.add(new Heading(3, say.words("class.make")));
    page.add(toMake(provisions));
    page.add(new Heading(3, say.words("class.buy")));
    buy(provisions);
    page.add(new Heading(3, say.words("class.cost")));
    cost(provisions);
  }

  private List<Fact> about() {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            say.words("class.when"), say.day(day.about().date()) + ", " + day.about().place()));
    facts.add(new Fact(say.words("class.people"), people(day, say)));
    facts.add(new Fact(say.words("class.hours"), say.significant(day.hours()) + " h"));
    facts.add(new Fact(say.words("class.area"), say.significant(day.squareMetres()) + " m²"));
    sheet
        .paints()
        .forEach(
            p ->
                facts.add(
                    new Fact(
                        say.words("class.paint", "paint", p.name()),
                        new Verdict(p.review(), say).gravest())));
    return facts;
  }

  /** Who comes, in words. */
  static String people(ClassDay day, Say say) {
    List<String> parts = new ArrayList<>();
    parts.add(say.words("people.teachers", "count", day.people().teachers()));
    parts.add(say.count("people.adults", day.people().adults()));
    if (day.people().minors() > 0) {
      parts.add(say.words("people.minors", "count", day.people().minors()));
    }
    day.people().youngest().ifPresent(age -> parts.add(say.words("people.youngest", "age", age)));
    return String.join(", ", parts);
  }

  /** Why the class is not planned further. */
  static Notice withheld(ClassSheet sheet, Say say) {
    Stream<String> inClass =
        sheet.paints().stream()
            .flatMap(p -> blocking(p.review(), "withheld.in-class", p.name(), say));
    Stream<String> before =
        sheet.blockedJobs().stream()
            .flatMap(j -> blocking(j.review(), "withheld.made", j.name(), say));
    return new Notice(
        Tone.STOP,
        say.words("withheld.label"),
        say.words("withheld.class"),
        Stream.concat(inClass, before).distinct().toList());
  }

  private static Stream<String> blocking(HeatingReview review, String key, String name, Say say) {
    return review.findings().stream()
        .filter(f -> f.isBlocking())
        .map(f -> say.words(key, "name", name, "why", f.summary(say.locale())));
  }

  private Table toMake(Provisions provisions) {
    List<List<String>> rows = new ArrayList<>();
    List<PaintNeed> paints = provisions.paints();
    paints.forEach(paint -> rows.add(row(paint)));
    rows.add(
        List.of(
            say.words("together"),
            "",
            say.grams(provisions.plan().totalKilograms()),
            say.grams(sum(paints, PaintNeed::fromToday)),
            say.grams(sum(paints, PaintNeed::toMake))));
    return new Table(
        say.words(
            "make.caption", "count", day.learners(), "lost", lost(), "uncounted", uncounted()),
        say.all("make.paint", "make.share", "make.needed", "make.left", "make.to-make"),
        rows,
        true);
  }

  /** What is counted on top of the layers; what is not stated is counted as none, and said. */
  private String lost() {
    ClassDay.Panels panels = day.panels();
    return say.words(panels.loss() == null ? "make.no-loss" : "make.loss")
        + ", "
        + say.words(panels.leftInTinsKilograms().isEmpty() ? "make.no-tins" : "make.tins");
  }

  /** What is not known of today is counted as nothing, and said. */
  private String uncounted() {
    List<String> names = sheet.ledger().uncounted().stream().map(JobSheet::name).toList();
    return names.isEmpty() ? "" : say.words("make.uncounted", "recipes", String.join(", ", names));
  }

  private List<String> row(PaintNeed paint) {
    return List.of(
        paint.name(),
        say.percent(paint.paint().share().value()),
        say.grams(paint.needed()),
        say.grams(paint.fromToday()),
        say.grams(paint.toMake()));
  }

  private static double sum(List<PaintNeed> paints, ToDoubleFunction<PaintNeed> value) {
    return paints.stream().mapToDouble(value).sum();
  }

  private void buy(Provisions provisions) {
    provisions
        .leftIntoPaints()
        .forEach(
            (name, kilograms) ->
                page.add(
                    new Paragraph(
                        say.words(
                            "buy.from-today", "recipe", name, "mass", say.grams(kilograms)))));
    List<List<String>> rows = new ArrayList<>();
    for (Need need : provisions.classNeeds()) {
      rows.add(
          List.of(
              need.material(),
              say.grams(need.neededKilograms()),
              say.grams(need.stockKilograms()),
              say.grams(need.missingKilograms())));
    }
    page.add(
        new Table(
            say.words("buy.caption"),
            say.all("material", "buy.needed", "buy.there", "buy.missing"),
            rows,
            false));
    provisions.bought().reason().ifPresent(r -> page.add(r.notice(say)));
    provisions.toBuy().ifPresent(this::purchase);
    if (provisions.isNothingToBuy()) {
      page.add(new Paragraph(say.words("buy.nothing")));
    }
  }

  private void purchase(PurchasePlan plan) {
    String proof =
        plan.isProvedOptimal()
            ? say.words("purchase.proved")
            : say.words("purchase.unproved", "least", say.money(plan.lowerBound()));
    page.add(
        new Table(
            say.words("purchase.caption") + " " + proof,
            say.all("material", "purchase.packages", "cost.money"),
            packages(plan),
            true));
    page.add(new Facts(leftOver(plan)));
    page.add(PurchaseBars.of(say, plan).besideItsNumbers());
  }

  private List<List<String>> packages(PurchasePlan plan) {
    List<List<String>> rows = new ArrayList<>();
    for (PurchaseLine line : plan.lines()) {
      rows.add(
          List.of(
              line.offer().material(),
              line.count() + " × " + say.packed(line.offer().price()),
              say.money(line.amount())));
    }
    rows.add(List.of(say.words("purchase.carriage"), "", carriage(plan)));
    rows.add(List.of(say.words("together"), "", say.money(plan.total())));
    return rows;
  }

  private String carriage(PurchasePlan plan) {
    return day.money().freight() == null
        ? say.words("purchase.no-carriage")
        : say.money(
            Money.total(
                plan.total().getCurrencyUnit(),
                plan.orders().stream().map(SupplierOrder::freight).toList()));
  }

  private List<Fact> leftOver(PurchasePlan plan) {
    String left =
        plan.leftOver().stream()
            .map(l -> l.material() + " " + say.grams(l.massKilograms()))
            .collect(Collectors.joining(", "));
    return List.of(
        new Fact(
            say.words("purchase.left-over"),
            left.isEmpty() ? say.words("purchase.nothing") : left));
  }

  private void cost(Provisions provisions) {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            say.words("fee.bought"),
            provisions
                .bought()
                .said(say, b -> say.money(b.dividedBy(day.learners(), RoundingMode.HALF_UP)))));
    provisions
        .budget()
        .ifPresent(b -> facts.addAll(b.value().map(this::fee).orElseGet(this::none)));
    page.add(new Facts(facts));
    page.add(new Paragraph(say.words("fee.basis")));
  }

  private List<Fact> none() {
    return List.of(new Fact(say.words("fee.fee"), say.words(NotKnown.WORDS)));
  }

  private List<Fact> fee(ClassBudget budget) {
    ClassDay.Fee asked = day.fee().orElseThrow();
    Money fee = budget.fee(asked.margin(), asked.step());
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact(say.words("fee.costs"), say.money(budget.costPerStudent().toMoney())));
    facts.add(new Fact(say.words("fee.fee"), say.money(fee)));
    evenAt(budget, fee)
        .ifPresent(
            b ->
                facts.add(
                    new Fact(
                        say.words("fee.even-at"),
                        say.words("fee.learners", "count", b.wholeUnits()))));
    return facts;
  }

  /** Where a fee of nothing covers nothing, there is no such number. */
  private static Optional<BreakEven> evenAt(ClassBudget budget, Money fee) {
    return fee.getAmount().doubleValue()
            > budget.costOfOneMore().toMoney().getAmount().doubleValue()
        ? Optional.of(budget.breakEven(fee))
        : Optional.empty();
  }
}
