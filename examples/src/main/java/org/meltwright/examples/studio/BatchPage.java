// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.batch.WeighingLine;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.cost.CostLine;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.mixture.VolumeView;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.picture.CostBars;
import org.meltwright.safety.heating.HeatingReview;

/** What is made in one job: weights, casting, cost; what is not known says so in its place. */
final class BatchPage {

  private static final Locale READER = Locale.ENGLISH;

  /** What is less than half a gram is no cake. */
  private static final double LEAST_PART_KILOGRAMS = 0.0005;

  private final JobSheet sheet;
  private final BatchSheet batch;
  private final Page.Builder page;

  BatchPage(JobSheet sheet, BatchSheet batch, Page.Builder page) {
    this.sheet = sheet;
    this.batch = batch;
    this.page = page;
  }

  void add() {
    weights();
    batch.job().casting().ifPresent(this::casting);
    page.add(new Heading(3, "Cost"));
    batch.cost().reason().map(NotKnown::notice).ifPresent(page::add);
    batch.cost().value().ifPresent(this::cost);
  }

  private void weights() {
    page.add(new Heading(3, "What to weigh"));
    page.add(weighingTable(batch.weighing()));
    page.add(new Bullets(order(batch.weighing())));
    page.add(shares());
    unknownVolumes().map(NotKnown::notice).ifPresent(page::add);
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

  private Table shares() {
    Composition before = batch.weighing().charge().composition();
    Composition after = batch.net().composition();
    Optional<VolumeView> beforeVolume = volumes(before);
    Optional<VolumeView> afterVolume = volumes(after);
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      rows.add(
          List.of(
              before.materials().get(i).name(READER),
              Say.percent(before.massFractionValue(i)),
              Say.percent(after.massFractionValue(i)),
              volume(beforeVolume, i),
              volume(afterVolume, i)));
    }
    return new Table(
        "Shares really reached with the printed weights; volumes are cold, of solid material.",
        List.of("Material", "mass, weighed", "mass, net", "volume, weighed", "volume, net"),
        rows,
        false);
  }

  private static Optional<VolumeView> volumes(Composition mix) {
    return DensityBasis.SOLID.findTable(mix.materials()).map(mix::volumeView);
  }

  private static String volume(Optional<VolumeView> volumes, int line) {
    return volumes.map(v -> Say.percent(v.volumeFractionValue(line))).orElse(NotKnown.WORDS);
  }

  private Optional<NotKnown> unknownVolumes() {
    List<Material> mix = batch.batch().charge().composition().materials();
    return DensityBasis.SOLID.unknown(mix).isEmpty()
        ? Optional.empty()
        : Optional.of(
            NotKnown.density(
                "The shares by volume",
                DensityBasis.SOLID,
                mix,
                "The weights do without. The supplier's data sheet may state a density."));
  }

  private List<Fact> losses() {
    List<Fact> facts = new ArrayList<>();
    Batch weighed = batch.weighing().asWeighed();
    facts.add(new Fact("insolubles left behind", Say.grams(weighed.insolublesKilograms())));
    facts.add(new Fact("film on pot and tools", Say.grams(weighed.filmKilograms())));
    facts.add(new Fact("net, after losses", Say.grams(batch.net().massKilograms())));
    Composition charge = weighed.charge().composition();
    MassFractionRange paint = charge.share(ShareOf.OIL_PAINT);
    if (paint.high().value() > 0) {
      facts.add(new Fact("oil paint in the mix, by mass", Say.percent(paint.high().value())));
      facts.add(new Fact("free oil in the mix, by mass", freeOil(charge)));
    }
    return facts;
  }

  private static String freeOil(Composition mix) {
    List<Material> unknown = ShareOf.FREE_OIL.unknown(mix.materials());
    return unknown.isEmpty()
        ? range(mix.share(ShareOf.FREE_OIL))
        : NotKnown.because(
            "what " + NotKnown.names(unknown) + " is made of is not stated; ask its maker");
  }

  private static String range(MassFractionRange range) {
    return Say.percent(range.low().value()) + " to " + Say.percent(range.high().value());
  }

  private void casting(Job.Cast cast) {
    page.add(new Heading(3, "Casting"));
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("mould", cast.mould().name() + ", " + cast.mould().cups() + " cups"));
    facts.addAll(casting().map(BatchPage::cakes).orElseGet(BatchPage::unknownCakes));
    casting().flatMap(c -> MeasureFirst.fact(c.cakeMassDrivers())).ifPresent(facts::add);
    facts.add(new Fact("room in the pot", sheet.pot().room().say(this::room)));
    sheet
        .pot()
        .room()
        .value()
        .flatMap(r -> MeasureFirst.fact(r.fillLevelDrivers()))
        .ifPresent(facts::add);
    page.add(new Facts(facts.stream().distinct().toList())); // cake and room may ask for the same
    batch.casting().flatMap(Known::reason).map(NotKnown::notice).ifPresent(page::add);
  }

  private Optional<Casting> casting() {
    return batch.casting().flatMap(Known::value);
  }

  private static List<Fact> cakes(Casting casting) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("whole cakes", Long.toString(casting.wholeCakes())));
    facts.add(new Fact("each cake", Say.estimate(casting.cakeMass(), 1000, "g")));
    double part = casting.partCakeKilograms();
    facts.add(
        new Fact("last part cake", part >= LEAST_PART_KILOGRAMS ? Say.grams(part, 0.001) : "none"));
    facts.add(new Fact("times the mould is filled", Long.toString(casting.pours())));
    facts.add(new Fact("melt poured, hot", Say.estimate(casting.hotVolume(), 1e6, "ml")));
    facts.add(
        new Fact(
            "volume lost in cooling",
            casting
                .shrinkage()
                .map(s -> Say.percent(s.low().value()) + " to " + Say.percent(s.high().value()))
                .orElse(NotKnown.WORDS)));
    return facts;
  }

  private static List<Fact> unknownCakes() {
    return Stream.of("whole cakes", "each cake", "times the mould is filled", "melt poured, hot")
        .map(name -> new Fact(name, NotKnown.WORDS))
        .toList();
  }

  private String room(VesselRoom room) {
    return "at most "
        + Say.decimals(room.highestFillLevel() * 100, 0)
        + " % full; the limit is "
        + Say.percent(HeatingReview.WORKING_FILL.value())
        + " "
        + page.cite(Source.COMMON_PRACTICE.citation());
  }

  private void cost(CostRollUp cost) {
    List<List<String>> rows = new ArrayList<>();
    cost.root().parts().forEach(line -> rows.addAll(rows("", line)));
    rows.add(List.of("Together", Say.grams(cost.root().massKilograms()), cost.total().toString()));
    page.add(
        new Table(
            "To the cent; the lines add up to the total." + electricity(),
            List.of("Cost of", "amount", "money"),
            rows,
            true));
    batch.electricity().flatMap(Known::reason).map(NotKnown::notice).ifPresent(page::add);
    batch
        .electricity()
        .flatMap(Known::value)
        .flatMap(heat -> MeasureFirst.fact(Costing.energyUse(heat).drivers()))
        .map(fact -> new Facts(List.of(fact)))
        .ifPresent(page::add);
    page.add(new Facts(comparison(cost)));
    page.add(bars(cost));
  }

  private Picture bars(CostRollUp cost) {
    List<ReadyMade> offers = batch.makeOrBuy().map(MakeOrBuy::offers).orElse(List.of());
    return CostBars.of(cost, batch.batch().net().mass(), offers).besideItsNumbers();
  }

  private String electricity() {
    return batch.electricity().flatMap(Known::value).map(this::electricity).orElse("");
  }

  private String electricity(HeatDemand heat) {
    String heats =
        heat.sources().stream().map(s -> page.cite(s.citation())).collect(Collectors.joining(" "));
    return " Electricity: heating up only, from 20 °C, 30 to 60 % of it reaching the pot "
        + page.cite(Source.COMMON_PRACTICE.citation())
        + "; specific heats and heats of fusion "
        + heats
        + ".";
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

  private List<Fact> comparison(CostRollUp cost) {
    UnitPrice own = cost.per(batch.batch().net().mass());
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("own, per kilogram net", Say.perKilogram(own)));
    casting().ifPresent(c -> facts.add(new Fact("own, per whole cake", perCake(own, c))));
    batch.makeOrBuy().ifPresent(m -> facts.addAll(against(m)));
    return facts;
  }

  private static String perCake(UnitPrice own, Casting casting) {
    return own.cost(casting.cake()).toMoney().toString();
  }

  private static List<Fact> against(MakeOrBuy comparison) {
    return List.of(
        new Fact("ready-made, per kilogram", Say.perKilogram(comparison.best().landed())),
        new Fact(
            "own is",
            Say.decimals(comparison.ownShareOfReadyMade() * 100, 0) + " % of ready-made"));
  }
}
