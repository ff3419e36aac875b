// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Losses;
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
import org.meltwright.examples.studio.day.BatchSheet;
import org.meltwright.examples.studio.day.Chosen;
import org.meltwright.examples.studio.day.Costing;
import org.meltwright.examples.studio.day.JobSheet;
import org.meltwright.examples.studio.day.Known;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.page.Block.Bullets;
import org.meltwright.examples.studio.page.Block.Fact;
import org.meltwright.examples.studio.page.Block.Facts;
import org.meltwright.examples.studio.page.Block.Fold;
import org.meltwright.examples.studio.page.Block.Heading;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Block.Table;
import org.meltwright.examples.studio.page.Page;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.examples.studio.picture.CostBars;
import org.meltwright.examples.studio.picture.PotFacts;
import org.meltwright.safety.heating.HeatingReview;

/** What a card rests on: exact masses and shares, casting, what melts, cost; folded away. */
final class WorkingPage {

  private final JobSheet sheet;
  private final Page.Builder page;
  private final Say say;

  WorkingPage(JobSheet sheet, Page.Builder page) {
    this.sheet = sheet;
    this.page = page;
    this.say = page.say();
  }

  /** Of a blocked recipe only what its mix is like: any mass or money would tell the weights. */
  Fold fold() {
    String title = sheet.allowed().isPresent() ? "working" : "working.mix-alone";
    return new Fold(
        say.words(title, "recipe", sheet.name()),
        page.gather(
            () -> {
              sheet.allowed().ifPresent(this::shares);
              sheet.chosen().ifPresent(this::reasons);
              page.add(new Heading(3, say.words("working.mix")));
              page.add(new Facts(PotFacts.ofTheMix(say, sheet.review())));
              sheet.allowed().ifPresent(this::castingAndCost);
            }));
  }

  private void shares(BatchSheet batch) {
    page.add(new Heading(3, say.words("working.shares")));
    page.add(exact(batch.weighing()));
    page.add(sharesReached(batch));
    unknownVolumes(batch).ifPresent(u -> page.add(u.notice(say)));
    page.add(new Facts(losses(batch)));
  }

  private void reasons(Chosen chosen) {
    page.add(new Heading(3, say.words("chosen.why")));
    page.add(new Bullets(chosen.reasons(say)));
  }

  private void castingAndCost(BatchSheet batch) {
    batch
        .job()
        .casting()
        .ifPresent(
            cast -> {
              page.add(new Heading(3, say.words("working.casting")));
              page.add(new Facts(casting(batch)));
            });
    page.add(new Heading(3, say.words("working.cost")));
    batch.cost().reason().ifPresent(r -> page.add(r.notice(say)));
    batch.cost().value().ifPresent(cost -> cost(batch, cost));
  }

  private Table exact(WeighingSheet weighing) {
    List<List<String>> rows = new ArrayList<>();
    for (WeighingLine line : weighing.inOrder()) {
      double interval = line.balance().intervalKilograms();
      rows.add(
          List.of(
              name(line, say),
              say.grams(line.rounded().printedKilograms(), interval),
              say.grams(line.rounded().exactKilograms(), interval / 100)));
    }
    double finest = finest(weighing);
    rows.add(
        List.of(
            say.words("together"),
            say.grams(weighing.printedTotalKilograms(), finest),
            say.grams(weighing.exactTotalKilograms(), finest / 100)));
    return new Table(
        say.words("exact.caption"),
        say.all("ingredient", "exact.weigh", "exact.exact"),
        rows,
        true);
  }

  /** The smallest interval of the balances used. */
  static double finest(WeighingSheet weighing) {
    return weighing.lines().stream()
        .mapToDouble(line -> line.balance().intervalKilograms())
        .min()
        .orElseThrow();
  }

  static String name(WeighingLine line, Say say) {
    return line.ingredient()
        .material()
        .map(m -> m.name(say.locale()))
        .orElse(line.ingredient().name());
  }

  private Table sharesReached(BatchSheet batch) {
    Composition before = batch.weighing().charge().composition();
    Composition after = batch.net().composition();
    Optional<VolumeView> beforeVolume = volumes(before);
    Optional<VolumeView> afterVolume = volumes(after);
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      rows.add(
          List.of(
              before.materials().get(i).name(say.locale()),
              say.percent(before.massFractionValue(i)),
              say.percent(after.massFractionValue(i)),
              volume(beforeVolume, i),
              volume(afterVolume, i)));
    }
    return new Table(
        say.words("shares.caption"),
        say.all(
            "material",
            "shares.mass-weighed",
            "shares.mass-net",
            "shares.volume-weighed",
            "shares.volume-net"),
        rows,
        false);
  }

  private static Optional<VolumeView> volumes(Composition mix) {
    return DensityBasis.SOLID.findTable(mix.materials()).map(mix::volumeView);
  }

  private String volume(Optional<VolumeView> volumes, int line) {
    return volumes
        .map(v -> say.percent(v.volumeFractionValue(line)))
        .orElseGet(() -> say.words(NotKnown.WORDS));
  }

  private static Optional<NotKnown> unknownVolumes(BatchSheet batch) {
    List<Material> mix = batch.batch().charge().composition().materials();
    return DensityBasis.SOLID.unknown(mix).isEmpty()
        ? Optional.empty()
        : Optional.of(
            NotKnown.density(
                Phrase.of("not-known.volumes"),
                DensityBasis.SOLID,
                mix,
                Phrase.of("not-known.volumes.remedy")));
  }

  private List<Fact> losses(BatchSheet batch) {
    List<Fact> facts = new ArrayList<>();
    Batch weighed = batch.weighing().asWeighed();
    facts.add(new Fact(say.words("losses.insolubles"), say.grams(weighed.insolublesKilograms())));
    facts.add(new Fact(say.words("losses.film"), film(batch.job().losses(), weighed)));
    facts.add(new Fact(say.words("losses.net"), say.grams(batch.net().massKilograms())));
    Composition charge = weighed.charge().composition();
    MassFractionRange paint = charge.share(ShareOf.OIL_PAINT);
    if (paint.high().value() > 0) {
      facts.add(new Fact(say.words("losses.oil-paint"), say.percent(paint.high().value())));
      facts.add(new Fact(say.words("losses.free-oil"), freeOil(charge)));
    }
    return facts;
  }

  private String film(Losses losses, Batch weighed) {
    return losses.filmKilograms(1) == 0
        ? say.words("losses.no-film")
        : say.grams(weighed.filmKilograms());
  }

  private String freeOil(Composition mix) {
    List<Material> unknown = ShareOf.FREE_OIL.unknown(mix.materials());
    return unknown.isEmpty()
        ? range(mix.share(ShareOf.FREE_OIL))
        : NotKnown.because(Phrase.of("not-known.made-of", "materials", unknown), say);
  }

  private String range(MassFractionRange range) {
    return say.span(say.percent(range.low().value()), say.percent(range.high().value()));
  }

  private List<Fact> casting(BatchSheet batch) {
    List<Fact> facts =
        new ArrayList<>(
            casted(batch).map(this::casting).orElseGet(() -> unknown(say, "casting.hot-volume")));
    casted(batch).flatMap(c -> MeasureFirst.fact(c.cakeMassDrivers(), say)).ifPresent(facts::add);
    facts.add(new Fact(say.words("casting.room"), sheet.pot().room().said(say, this::room)));
    sheet
        .pot()
        .room()
        .value()
        .flatMap(r -> MeasureFirst.fact(r.fillLevelDrivers(), say))
        .ifPresent(facts::add);
    return facts.stream().distinct().toList(); // cake and room may ask for the same
  }

  private static Optional<Casting> casted(BatchSheet batch) {
    return batch.casting().flatMap(Known::value);
  }

  private List<Fact> casting(Casting casting) {
    return List.of(
        new Fact(say.words("casting.hot-volume"), say.estimate(casting.hotVolume(), 1e6, "ml")),
        new Fact(
            say.words("casting.shrinkage"),
            casting
                .shrinkage()
                .map(s -> say.span(say.percent(s.low().value()), say.percent(s.high().value())))
                .orElseGet(() -> say.words(NotKnown.WORDS))));
  }

  static List<Fact> unknown(Say say, String... names) {
    return Stream.of(names)
        .map(name -> new Fact(say.words(name), say.words(NotKnown.WORDS)))
        .toList();
  }

  private String room(VesselRoom room) {
    return say.words(
            "casting.room.said",
            "fill",
            say.decimals(room.highestFillLevel() * 100, 0),
            "limit",
            say.percent(HeatingReview.WORKING_FILL.value()))
        + " "
        + page.cite(Source.COMMON_PRACTICE.citation());
  }

  private void cost(BatchSheet batch, CostRollUp cost) {
    List<List<String>> rows = new ArrayList<>();
    cost.root().parts().forEach(line -> rows.addAll(rows("", line)));
    rows.add(
        List.of(
            say.words("together"),
            say.grams(cost.root().massKilograms()),
            say.money(cost.total())));
    page.add(
        new Table(
            say.words("cost.caption") + electricity(batch),
            say.all("cost.of", "cost.amount", "cost.money"),
            rows,
            true));
    batch.electricity().flatMap(Known::reason).ifPresent(r -> page.add(r.notice(say)));
    batch
        .electricity()
        .flatMap(Known::value)
        .flatMap(heat -> MeasureFirst.fact(Costing.energyUse(heat).drivers(), say))
        .map(fact -> new Facts(List.of(fact)))
        .ifPresent(page::add);
    page.add(new Facts(comparison(batch, cost)));
    page.add(bars(batch, cost));
  }

  private Picture bars(BatchSheet batch, CostRollUp cost) {
    List<ReadyMade> offers =
        batch.makeOrBuy().map(MakeOrBuy::offers).orElse(List.of()).stream()
            .map(offer -> new ReadyMade(say.words("cost.ready-made"), offer.landed()))
            .toList();
    return CostBars.of(say, cost, batch.batch().net().mass(), offers).besideItsNumbers();
  }

  private String electricity(BatchSheet batch) {
    return batch.electricity().flatMap(Known::value).map(this::electricity).orElse("");
  }

  private String electricity(HeatDemand heat) {
    String heats =
        heat.sources().stream().map(s -> page.cite(s.citation())).collect(Collectors.joining(" "));
    return " "
        + say.words(
            "cost.electricity.basis",
            "practice",
            page.cite(Source.COMMON_PRACTICE.citation()),
            "heats",
            heats);
  }

  private List<List<String>> rows(String indent, CostLine line) {
    List<List<String>> rows = new ArrayList<>();
    String amount = line.massKilograms() > 0 ? say.grams(line.massKilograms()) : "";
    if (line.isLeaf()) {
      rows.add(List.of(indent + line.label(), amount, say.money(line.amount())));
    } else if (sheet.blockedRecipes().contains(line.label())) {
      String blocked = say.words("cost.blocked", "recipe", line.label());
      rows.add(List.of(indent + blocked, "", say.money(line.amount())));
    } else {
      rows.add(List.of(indent + say.words("cost.made", "recipe", line.label()), amount, ""));
      line.parts().forEach(part -> rows.addAll(rows(indent + "· ", part)));
    }
    return rows;
  }

  private List<Fact> comparison(BatchSheet batch, CostRollUp cost) {
    UnitPrice own = cost.per(batch.batch().net().mass());
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact(say.words("cost.own"), say.perKilogram(own)));
    casted(batch)
        .ifPresent(
            c ->
                facts.add(
                    new Fact(say.words("cost.per-cake"), say.money(own.cost(c.cake()).toMoney()))));
    batch.makeOrBuy().ifPresent(m -> facts.addAll(against(m)));
    return facts;
  }

  private List<Fact> against(MakeOrBuy comparison) {
    return List.of(
        new Fact(say.words("cost.offer"), say.perKilogram(comparison.best().landed())),
        new Fact(
            say.words("cost.share"),
            say.words(
                "cost.share.said",
                "percent",
                say.decimals(comparison.ownShareOfReadyMade() * 100, 0))));
  }
}
