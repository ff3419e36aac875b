// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.batch.WeighingLine;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.cost.CostLine;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.mixture.VolumeView;
import org.meltwright.core.source.Source;
import org.meltwright.examples.page.Block.Bullets;
import org.meltwright.examples.page.Block.Fact;
import org.meltwright.examples.page.Block.Facts;
import org.meltwright.examples.page.Block.Heading;
import org.meltwright.examples.page.Block.Notice;
import org.meltwright.examples.page.Block.Picture;
import org.meltwright.examples.page.Block.Table;
import org.meltwright.examples.page.Block.Tone;
import org.meltwright.examples.page.Page;
import org.meltwright.examples.page.Say;
import org.meltwright.examples.picture.CostBars;
import org.meltwright.safety.heating.HeatingReview;

/** The chapter of one job: review, weights, casting, cost; the review stands first. */
final class JobPage {

  private static final Locale READER = Locale.ENGLISH;

  /** What is less than half a gram is no cake. */
  private static final double LEAST_PART_KILOGRAMS = 0.0005;

  private final JobSheet sheet;
  private final Page.Builder page;

  JobPage(JobSheet sheet, Page.Builder page) {
    this.sheet = sheet;
    this.page = page;
  }

  void add() {
    page.add(new Heading(2, sheet.batch().recipe().name()));
    new ReviewPage(sheet, page).add();
    sheet.blockedRecipes().forEach(name -> page.add(needs(name)));
    if (sheet.isBlocked()) {
      page.add(withheld());
      costOfBlocked();
    } else {
      weights();
      sheet.casting().ifPresent(this::casting);
      cost();
    }
  }

  private static Notice needs(String recipe) {
    return new Notice(
        Tone.CARE,
        "NEEDS A BLOCKED RECIPE",
        recipe + " is blocked today, and this recipe calls for it.",
        List.of(
            "Use only what is at hand of it from an earlier batch; do not make it as planned.",
            "Its cost is counted here as that of its materials, without electricity and work."));
  }

  private Notice withheld() {
    List<String> reasons =
        sheet.review().findings().stream()
            .filter(f -> f.isBlocking())
            .map(f -> f.summary(READER))
            .toList();
    return new Notice(
        Tone.STOP,
        "WITHHELD",
        "Weights, casting and the parts of its cost are not shown for this recipe.",
        reasons);
  }

  private void weights() {
    page.add(new Heading(3, "What to weigh"));
    page.add(weighingTable(sheet.weighing()));
    page.add(new Bullets(order(sheet.weighing())));
    page.add(shares(sheet.weighing()));
    page.add(new Facts(losses()));
  }

  private static Table weighingTable(WeighingSheet weighing) {
    List<List<String>> rows = new ArrayList<>();
    weighing.inOrder().forEach(line -> rows.add(row(line)));
    double finest = finest(weighing);
    rows.add(
        List.of(
            "Together",
            Say.grams(weighing.printedTotalKilograms(), finest),
            Say.grams(weighing.exactTotalKilograms(), finest / 100),
            ""));
    return new Table(
        "In the order of weighing; each line to the scale interval of its balance.",
        List.of("Ingredient", "Weigh", "Exact", "Balance"),
        rows,
        true);
  }

  private static List<String> row(WeighingLine line) {
    double interval = line.balance().intervalKilograms();
    return List.of(
        name(line),
        Say.grams(line.rounded().printedKilograms(), interval),
        Say.grams(line.rounded().exactKilograms(), interval / 100),
        line.balance().name() + ", " + Say.interval(interval));
  }

  /** The smallest interval of the balances used. */
  private static double finest(WeighingSheet weighing) {
    return weighing.lines().stream()
        .mapToDouble(line -> line.balance().intervalKilograms())
        .min()
        .orElseThrow();
  }

  private static String name(WeighingLine line) {
    return line.ingredient().material().map(m -> m.name(READER)).orElse(line.ingredient().name());
  }

  private static List<String> order(WeighingSheet weighing) {
    List<String> steps = new ArrayList<>();
    for (WeighingLine line : weighing.inOrder()) {
      steps.add(name(line) + ": " + line.hint().text(READER));
      if (line.portions() > 1) {
        steps.add(name(line) + ": in " + line.portions() + " portions, its balance carries less");
      }
    }
    for (WeighingLine line : weighing.belowInterval()) {
      steps.add(name(line) + ": less than one step of its balance; use a finer one");
    }
    return steps;
  }

  private static Table shares(WeighingSheet weighing) {
    Composition before = weighing.charge().composition();
    Composition after = weighing.net().composition();
    VolumeView beforeVolume = before.volumeView(DensityBasis.SOLID);
    VolumeView afterVolume = after.volumeView(DensityBasis.SOLID);
    List<List<String>> rows = new ArrayList<>();
    for (Material material : before.materials()) {
      rows.add(
          List.of(
              material.name(READER),
              Say.percent(before.massFractionValue(material)),
              Say.percent(after.massFractionValue(material)),
              Say.percent(beforeVolume.volumeFraction(material).value()),
              Say.percent(afterVolume.volumeFraction(material).value())));
    }
    return new Table(
        "Shares really reached with the printed weights; volumes are cold, of solid material.",
        List.of("Material", "mass, weighed", "mass, net", "volume, weighed", "volume, net"),
        rows,
        false);
  }

  private List<Fact> losses() {
    List<Fact> facts = new ArrayList<>();
    Losses losses = sheet.batch().losses();
    Mixture weighed = sheet.weighing().charge();
    double pot = weighed.massKilograms();
    double insolubles = pot * losses.insolublesShare(weighed.composition());
    facts.add(new Fact("insolubles left behind", Say.grams(insolubles)));
    facts.add(new Fact("film on pot and tools", Say.grams(losses.filmKilograms(pot))));
    facts.add(new Fact("net, after losses", Say.grams(sheet.net().massKilograms())));
    Composition charge = weighed.composition();
    MassFractionRange paint = charge.share(ShareOf.OIL_PAINT);
    if (paint.high().value() > 0) {
      facts.add(new Fact("oil paint in the mix, by mass", Say.percent(paint.high().value())));
      facts.add(new Fact("free oil in the mix, by mass", range(charge.share(ShareOf.FREE_OIL))));
    }
    return facts;
  }

  private static String range(MassFractionRange range) {
    return Say.percent(range.low().value()) + " to " + Say.percent(range.high().value());
  }

  private void casting(Casting casting) {
    page.add(new Heading(3, "Casting"));
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("mould", casting.mould().name() + ", " + casting.mould().cups() + " cups"));
    facts.add(new Fact("whole cakes", Long.toString(casting.wholeCakes())));
    facts.add(new Fact("each cake", Say.estimate(casting.cakeMass(), 1000, "g")));
    double part = casting.partCakeKilograms();
    facts.add(
        new Fact("last part cake", part >= LEAST_PART_KILOGRAMS ? Say.grams(part, 0.001) : "none"));
    facts.add(new Fact("times the mould is filled", Long.toString(casting.pours())));
    facts.add(new Fact("melt poured, hot", Say.estimate(casting.hotVolume(), 1e6, "ml")));
    casting
        .shrinkage()
        .ifPresent(
            s ->
                facts.add(
                    new Fact(
                        "volume lost in cooling",
                        Say.percent(s.low().value()) + " to " + Say.percent(s.high().value()))));
    facts.add(new Fact("room in the pot", room(sheet.room())));
    page.add(new Facts(facts));
  }

  private String room(VesselRoom room) {
    return "at most "
        + Say.decimals(room.highestFillLevel() * 100, 0)
        + " % full; the limit is "
        + Say.percent(HeatingReview.WORKING_FILL.value())
        + " "
        + page.cite(Source.COMMON_PRACTICE.citation());
  }

  private void cost() {
    page.add(new Heading(3, "Cost"));
    List<List<String>> rows = new ArrayList<>();
    sheet.cost().root().parts().forEach(line -> rows.addAll(rows("", line)));
    rows.add(
        List.of(
            "Together",
            Say.grams(sheet.cost().root().massKilograms()),
            sheet.cost().total().toString()));
    page.add(
        new Table(
            "To the cent; the lines add up to the total." + electricity(),
            List.of("Cost of", "amount", "money"),
            rows,
            true));
    page.add(new Facts(comparison()));
    page.add(bars());
  }

  private Picture bars() {
    List<ReadyMade> offers = sheet.makeOrBuy().map(MakeOrBuy::offers).orElse(List.of());
    return CostBars.of(sheet.cost(), sheet.batch().net().mass(), offers).besideItsNumbers();
  }

  private String electricity() {
    if (sheet.electricitySources().isEmpty()) {
      return "";
    }
    String heats =
        sheet.electricitySources().stream()
            .map(s -> page.cite(s.citation()))
            .collect(Collectors.joining(" "));
    return " Electricity: heating up only, from 20 °C, 30 to 60 % of it reaching the pot "
        + page.cite(Source.COMMON_PRACTICE.citation())
        + "; specific heats and heats of fusion "
        + heats
        + ".";
  }

  /** Money for a line or for a kilogram would tell the weights as soon as a price is known. */
  private void costOfBlocked() {
    page.add(new Heading(3, "Cost"));
    page.add(
        new Facts(
            List.of(
                new Fact("together", sheet.cost().total().toString()),
                new Fact("amounts, lines and cost per kilogram", "withheld"))));
  }

  private List<List<String>> rows(String indent, CostLine line) {
    List<List<String>> rows = new ArrayList<>();
    String amount = line.massKilograms() > 0 ? Say.grams(line.massKilograms()) : "";
    if (line.isLeaf()) {
      rows.add(List.of(indent + line.label(), amount, line.amount().toString()));
    } else if (sheet.blockedRecipes().contains(line.label())) {
      rows.add(List.of(indent + line.label() + ", blocked today", "", line.amount().toString()));
    } else {
      rows.add(List.of(indent + line.label() + ", made here:", amount, ""));
      line.parts().forEach(part -> rows.addAll(rows(indent + "· ", part)));
    }
    return rows;
  }

  private List<Fact> comparison() {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            "own, per kilogram net",
            Say.perKilogram(sheet.cost().per(sheet.batch().net().mass()))));
    sheet.casting().ifPresent(c -> facts.add(new Fact("own, per whole cake", perCake(c))));
    sheet.makeOrBuy().ifPresent(m -> facts.addAll(against(m)));
    return facts;
  }

  private String perCake(Casting casting) {
    return sheet.cost().per(sheet.batch().net().mass()).cost(casting.cake()).toMoney().toString();
  }

  private static List<Fact> against(MakeOrBuy comparison) {
    return List.of(
        new Fact("ready-made, per kilogram", Say.perKilogram(comparison.best().landed())),
        new Fact(
            "own is",
            Say.decimals(comparison.ownShareOfReadyMade() * 100, 0) + " % of ready-made"));
  }
}
