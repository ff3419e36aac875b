// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Notice;
import org.meltwright.examples.studio.page.Block.Paragraph;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Block.Tone;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.picture.PurchaseBars;

/** The chapter of a class on the studio sheet: what to make, what to buy, cost per head. */
final class ClassPage {

  private static final Locale READER = Locale.ENGLISH;

  private static final List<Fact> NO_FEE = List.of(new Fact("fee, rounded up", NotKnown.WORDS));

  private final ClassSheet sheet;
  private final ClassDay day;
  private final Page.Builder page;

  ClassPage(ClassSheet sheet, Page.Builder page) {
    this.sheet = sheet;
    this.day = sheet.day();
    this.page = page;
  }

  void add() {
    page.add(new Heading(2, "The class: " + day.about().title()));
    page.add(new Facts(about()));
    page.add(
        new Paragraph(
            "What was found, and what could not be assessed, while the class is in the room stands on"
                + " the class sheet (--class-sheet FILE)."));
    if (sheet.isBlocked()) {
      page.add(withheld(sheet));
    } else {
      sheet.unknownShares().forEach(u -> page.add(u.notice()));
      sheet.provisions().reason().map(NotKnown::notice).ifPresent(page::add);
      sheet.provisions().value().ifPresent(this::provisions);
    }
  }

  private void provisions(Provisions provisions) {
    page.add(new Heading(3, "What to make"));
    page.add(toMake(provisions));
    page.add(new Heading(3, "What to buy"));
    buy(provisions);
    page.add(new Heading(3, "Cost per head"));
    cost(provisions);
  }

  private List<Fact> about() {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("when and where", day.about().date() + ", " + day.about().place()));
    facts.add(new Fact("people", people(day)));
    facts.add(new Fact("wax is hot for", Say.significant(day.hours()) + " h"));
    facts.add(new Fact("to be painted", Say.significant(day.squareMetres()) + " m²"));
    sheet
        .paints()
        .forEach(p -> facts.add(new Fact(p.name() + ", in class", SheetPage.gravest(p.review()))));
    return facts;
  }

  /** Who comes, in words. */
  static String people(ClassDay day) {
    String minors =
        day.people().minors() == 0 ? "" : ", " + day.people().minors() + " under 18 learning";
    String youngest =
        day.people().youngest().isEmpty()
            ? ""
            : ", the youngest " + day.people().youngest().getAsInt();
    return day.people().teachers()
        + " teaching, "
        + day.people().adults()
        + " adults learning"
        + minors
        + youngest;
  }

  /** Why the class is not planned further. */
  static Notice withheld(ClassSheet sheet) {
    Stream<String> inClass =
        sheet.paints().stream()
            .flatMap(
                p ->
                    p.review().findings().stream()
                        .filter(f -> f.isBlocking())
                        .map(f -> p.name() + ", in class: " + f.summary(READER)));
    Stream<String> before =
        sheet.blockedJobs().stream()
            .flatMap(
                j ->
                    j.review().findings().stream()
                        .filter(f -> f.isBlocking())
                        .map(f -> j.name() + ", made: " + f.summary(READER)));
    return new Notice(
        Tone.STOP,
        "WITHHELD",
        "What to make and buy is not shown: the class must not be held as planned.",
        Stream.concat(inClass, before).distinct().toList());
  }

  private Table toMake(Provisions provisions) {
    List<List<String>> rows = new ArrayList<>();
    List<PaintNeed> paints = provisions.paints();
    paints.forEach(paint -> rows.add(row(paint)));
    rows.add(
        List.of(
            "Together",
            "",
            Say.grams(provisions.plan().totalKilograms()),
            Say.grams(sum(paints, PaintNeed::fromToday)),
            Say.grams(sum(paints, PaintNeed::toMake))));
    return new Table(
        "For "
            + day.learners()
            + " who learn, net, "
            + lost()
            + "; \"left\" is what today's recipes leave"
            + uncounted()
            + ".",
        List.of("Medium or colour", "share", "needed", "left", "still to make"),
        rows,
        true);
  }

  /** What is counted on top of the layers; what is not stated is counted as none, and said. */
  private String lost() {
    ClassDay.Panels panels = day.panels();
    return (panels.loss() == null
            ? "what is scraped off is not stated and counted as none, "
            : "with what is scraped off, ")
        + (panels.leftInTinsKilograms().isEmpty()
            ? "what stays in their tins is not stated and counted as none"
            : "with what stays in their tins");
  }

  /** What is not known of today is counted as nothing, and said. */
  private String uncounted() {
    List<String> names = sheet.ledger().uncounted().stream().map(JobSheet::name).toList();
    return names.isEmpty()
        ? ""
        : ", of " + String.join(", ", names) + " not known and counted as none";
  }

  private static List<String> row(PaintNeed paint) {
    return List.of(
        paint.name(),
        Say.percent(paint.paint().share().value()),
        Say.grams(paint.needed()),
        Say.grams(paint.fromToday()),
        Say.grams(paint.toMake()));
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
                        "Of today's "
                            + name
                            + " "
                            + Say.grams(kilograms)
                            + " are left for what is still to make; they are not made or bought"
                            + " again.")));
    List<List<String>> rows = new ArrayList<>();
    for (Need need : provisions.classNeeds()) {
      rows.add(
          List.of(
              need.material(),
              Say.grams(need.neededKilograms()),
              Say.grams(need.stockKilograms()),
              Say.grams(need.missingKilograms())));
    }
    page.add(
        new Table(
            "Materials of what is still to make, with insolubles and the film that today's jobs state,"
                + " and what the shelf lacks for today; \"there\" is what today's recipes leave.",
            List.of("Material", "needed", "there", "missing"),
            rows,
            false));
    provisions.bought().reason().map(NotKnown::notice).ifPresent(page::add);
    provisions.toBuy().ifPresent(this::purchase);
    if (provisions.isNothingToBuy()) {
      page.add(new Paragraph("Nothing has to be bought."));
    }
  }

  private void purchase(PurchasePlan plan) {
    String proof =
        plan.isProvedOptimal()
            ? "No cheaper choice of these packages covers it."
            : "The search ended early; none can cost less than " + plan.lowerBound() + ".";
    page.add(
        new Table(
            "Whole packages of the shelf's prices. " + proof,
            List.of("Material", "packages", "money"),
            packages(plan),
            true));
    page.add(new Facts(leftOver(plan)));
    page.add(PurchaseBars.of(plan).besideItsNumbers());
  }

  private List<List<String>> packages(PurchasePlan plan) {
    List<List<String>> rows = new ArrayList<>();
    for (PurchaseLine line : plan.lines()) {
      rows.add(
          List.of(
              line.offer().material(),
              line.count() + " × " + line.offer().price(),
              line.amount().toString()));
    }
    rows.add(List.of("Carriage", "", carriage(plan)));
    rows.add(List.of("Together", "", plan.total().toString()));
    return rows;
  }

  private String carriage(PurchasePlan plan) {
    return day.money().freight() == null
        ? "not stated, not counted"
        : Money.total(
                plan.total().getCurrencyUnit(),
                plan.orders().stream().map(SupplierOrder::freight).toList())
            .toString();
  }

  private List<Fact> leftOver(PurchasePlan plan) {
    String left =
        plan.leftOver().stream()
            .map(l -> l.material() + " " + Say.grams(l.massKilograms()))
            .collect(Collectors.joining(", "));
    return List.of(new Fact("left over of it", left.isEmpty() ? "nothing" : left));
  }

  private void cost(Provisions provisions) {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            "bought, per head",
            provisions
                .bought()
                .say(b -> b.dividedBy(day.learners(), RoundingMode.HALF_UP).toString())));
    provisions.budget().ifPresent(b -> facts.addAll(b.value().map(this::fee).orElse(NO_FEE)));
    page.add(new Facts(facts));
    page.add(
        new Paragraph(
            "Materials count as what is paid for packages and carriage; what the shelf holds"
                + " already and electricity are not counted again."));
  }

  private List<Fact> fee(ClassBudget budget) {
    ClassDay.Fee asked = day.fee().orElseThrow();
    Money fee = budget.fee(asked.margin(), asked.step());
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("all costs, per head", budget.costPerStudent().toMoney().toString()));
    facts.add(new Fact("fee, rounded up", fee.toString()));
    evenAt(budget, fee)
        .ifPresent(b -> facts.add(new Fact("even at", b.wholeUnits() + " who learn")));
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
