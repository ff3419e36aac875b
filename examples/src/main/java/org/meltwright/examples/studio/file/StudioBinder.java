// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.examples.studio.day.Brushing;
import org.meltwright.examples.studio.day.ClassDay;
import org.meltwright.examples.studio.day.Job;
import org.meltwright.examples.studio.day.Known;
import org.meltwright.examples.studio.day.ShelfItem;
import org.meltwright.examples.studio.day.Studio;
import org.meltwright.examples.studio.file.StudioDraft.AboutDraft;
import org.meltwright.examples.studio.file.StudioDraft.BalanceDraft;
import org.meltwright.examples.studio.file.StudioDraft.HeatSourceDraft;
import org.meltwright.examples.studio.file.StudioDraft.MouldDraft;
import org.meltwright.examples.studio.file.StudioDraft.OfferDraft;
import org.meltwright.examples.studio.file.StudioDraft.PeopleDraft;
import org.meltwright.examples.studio.file.StudioDraft.ShelfDraft;
import org.meltwright.examples.studio.file.StudioDraft.ThermometerDraft;
import org.meltwright.examples.studio.file.StudioDraft.VesselDraft;
import org.meltwright.examples.studio.file.WishesDraft.LeftoverDraft;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.naming.HazardNames;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityKind;

/** Makes a studio from its draft: texts become values, names become what they name. */
public final class StudioBinder {

  private final StudioDraft draft;
  private final MaterialCatalogue catalogue;
  private final Problems problems;
  private final Leaves leaves;
  private final CurrencyUnit currency;

  StudioBinder(StudioDraft draft, MaterialCatalogue catalogue, Problems problems) {
    this.draft = draft;
    this.catalogue = catalogue;
    this.problems = problems;
    AboutDraft about = draft.studio();
    Optional<CurrencyUnit> stated =
        problems.read(
            "/studio/currency", about == null ? null : about.currency(), Currencies::read);
    boolean decimalComma = about != null && Boolean.TRUE.equals(about.decimalComma());
    this.leaves = new Leaves(decimalComma, stated.isPresent(), problems);
    this.currency = stated.orElse(CurrencyUnit.EUR);
  }

  /** Returns the studio, or throws all problems gathered. */
  Studio bind() {
    Entries<Balance> balances =
        Entries.read("/balances", draft.balances(), BalanceDraft::id, this::balance, problems);
    Entries<ShelfItem> shelf =
        Entries.read(
            "/shelf", draft.shelf(), ShelfDraft::id, (p, d) -> item(p, d, balances), problems);
    eachMaterialOnce(shelf);
    Map<String, Double> leftovers = leftovers();
    WishBinder wishes =
        new WishBinder(shelf, balances.values(), leftovers, currency, leaves, problems);
    StudioRecipes book = new StudioRecipes(draft.recipes(), shelf, wishes, leaves, problems);
    Map<String, Double> leftByName = byName(leftovers, book);
    Equipment equipment = equipment();
    List<Job> jobs = new JobBinder(shelf, book, equipment, leaves, problems).jobs(draft.today());
    Optional<Studio.About> about = about(draft.studio());
    Studio.Place place =
        new Studio.Place(leaves.room("/room", draft.room()).orElse(null), people(draft.people()));
    Map<String, ReadyMade> offers = offers(book);
    String town = about.map(Studio.About::town).orElse("");
    Optional<Known<Brushing>> brushing =
        new BrushingBinder(book, leaves, problems).brushing(draft.brushing());
    Optional<ClassDay> classDay =
        new ClassBinder(book, equipment, currency, leaves, problems)
            .classDay(draft.classDay(), town, place.room());
    problems.throwIfAny();
    return new Studio(
        about.orElseThrow(),
        place,
        shelf.values(),
        balances.values(),
        new Studio.Recipes(book.unknownShares(), book.chosen(), leftByName),
        jobs,
        offers,
        new Studio.Plans(brushing.orElse(null), classDay.orElse(null)));
  }

  /** Price, stock and balance are found by material, so two entries of one would be mixed up. */
  private void eachMaterialOnce(Entries<ShelfItem> shelf) {
    Set<String> seen = new HashSet<>();
    List<ShelfDraft> drafts = draft.shelf() == null ? List.of() : draft.shelf();
    for (int i = 0; i < drafts.size(); i++) {
      ShelfDraft d = drafts.get(i);
      String id = d == null ? null : d.id();
      Optional<ShelfItem> item = id == null ? Optional.empty() : shelf.get(id);
      if (item.isPresent() && !seen.add(item.get().material().id())) {
        problems.add(
            Problem.of(StudioProblem.DOUBLE_MATERIAL, item.get().material().id())
                .under("/shelf/" + i + "/material"));
      }
    }
  }

  /** What is left of earlier batches, by the id of the recipe; of one id all together. */
  private Map<String, Double> leftovers() {
    Map<String, Double> all = new LinkedHashMap<>();
    List<LeftoverDraft> drafts = draft.leftovers() == null ? List.of() : draft.leftovers();
    for (int i = 0; i < drafts.size(); i++) {
      LeftoverDraft d = drafts.get(i);
      String id = d == null ? null : d.recipe();
      String path = "/leftovers/" + i + "/mass";
      if (d != null && id != null) {
        leaves
            .amountOrNone(path, d.mass(), QuantityKind.MASS)
            .ifPresent(mass -> all.merge(id, mass, Double::sum));
      }
    }
    return all;
  }

  private Map<String, Double> byName(Map<String, Double> leftovers, StudioRecipes book) {
    Map<String, Double> all = new HashMap<>();
    List<LeftoverDraft> drafts = draft.leftovers() == null ? List.of() : draft.leftovers();
    for (int i = 0; i < drafts.size(); i++) {
      String id = drafts.get(i) == null ? null : drafts.get(i).recipe();
      book.named("/leftovers/" + i + "/recipe", id)
          .ifPresent(r -> all.put(r.name(), leftovers.getOrDefault(String.valueOf(id), 0.0)));
    }
    return all;
  }

  private @Nullable People people(@Nullable PeopleDraft d) {
    Integer teachers = d == null ? null : d.teachers();
    Integer adults = d == null ? null : d.adults();
    Integer minors = d == null ? null : d.minors();
    return teachers == null || adults == null || minors == null
        ? null
        : problems.attempt("/people", () -> People.classOf(teachers, adults, minors)).orElse(null);
  }

  /** What stands in the studio, by id. */
  record Equipment(
      Entries<Vessel> vessels,
      Entries<Mould> moulds,
      Entries<Thermometer> thermometers,
      Entries<HeatSource> heatSources) {}

  private Equipment equipment() {
    return new Equipment(
        Entries.read("/vessels", draft.vessels(), VesselDraft::id, this::vessel, problems),
        Entries.read("/moulds", draft.moulds(), MouldDraft::id, this::mould, problems),
        Entries.read(
            "/thermometers",
            draft.thermometers(),
            ThermometerDraft::id,
            this::thermometer,
            problems),
        Entries.read(
            "/heatSources", draft.heatSources(), HeatSourceDraft::id, this::source, problems));
  }

  private Optional<Studio.About> about(@Nullable AboutDraft about) {
    if (about == null || about.name() == null || about.town() == null) {
      return Optional.empty();
    }
    return Optional.of(
        new Studio.About(
            about.name(),
            about.town(),
            currency,
            leaves
                .money(
                    "/studio/electricityPerKilowattHour",
                    about.electricityPerKilowattHour(),
                    currency)
                .orElse(null),
            leaves.money("/studio/labourPerHour", about.labourPerHour(), currency).orElse(null)));
  }

  private Optional<Balance> balance(String path, BalanceDraft d) {
    Optional<Double> capacity = leaves.amount(path + "/capacity", d.capacity(), QuantityKind.MASS);
    Optional<Double> interval = leaves.amount(path + "/interval", d.interval(), QuantityKind.MASS);
    if (capacity.isEmpty() || interval.isEmpty()) {
      return Optional.empty();
    }
    return problems.attempt(path, () -> new Balance(name(d.id()), capacity.get(), interval.get()));
  }

  private Optional<ShelfItem> item(String path, ShelfDraft d, Entries<Balance> balances) {
    Optional<Material> material =
        problems.read(
            path + "/material", d.material(), name -> HazardNames.require(catalogue, name));
    Optional<Double> stock = leaves.amount(path + "/stock", d.stock(), QuantityKind.MASS);
    Optional<Balance> balance = balances.named(path + "/balance", d.balance(), problems);
    Optional<MassFraction> insolubles = leaves.massFraction(path + "/insolubles", d.insolubles());
    List<Price> packages = packages(path + "/packages", d.packages());
    if (material.isEmpty() || stock.isEmpty() || balance.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ShelfItem(
            name(d.id()),
            material.get(),
            name(d.form()),
            stock.get(),
            balance.get(),
            insolubles,
            packages));
  }

  private List<Price> packages(String path, @Nullable List<String> texts) {
    List<Price> prices = new ArrayList<>();
    for (int i = 0; texts != null && i < texts.size(); i++) {
      leaves.price(path + "/" + i, texts.get(i), currency).ifPresent(prices::add);
    }
    return prices;
  }

  private Optional<Vessel> vessel(String path, VesselDraft d) {
    var material = leaves.word(path + "/material", d.material(), VesselMaterial.class);
    var lining = leaves.word(path + "/lining", d.lining(), Lining.class);
    var bottom = leaves.word(path + "/bottom", d.bottom(), Vessel.Bottom.class);
    var capacity = leaves.amount(path + "/capacity", d.capacity(), QuantityKind.VOLUME);
    var mass = leaves.amount(path + "/mass", d.mass(), QuantityKind.MASS);
    if (material.isEmpty()
        || lining.isEmpty()
        || bottom.isEmpty()
        || capacity.isEmpty()
        || mass.isEmpty()) {
      return Optional.empty();
    }
    return problems.attempt(
        path,
        () ->
            new Vessel(
                name(d.id()),
                material.get(),
                lining.get(),
                bottom.get(),
                capacity.get(),
                mass.get()));
  }

  private Optional<Mould> mould(String path, MouldDraft d) {
    var material = leaves.word(path + "/material", d.material(), VesselMaterial.class);
    var cup = leaves.amount(path + "/cup", d.cup(), QuantityKind.VOLUME);
    Integer cups = d.cups();
    if (material.isEmpty() || cup.isEmpty() || cups == null) {
      return Optional.empty();
    }
    return problems.attempt(path, () -> new Mould(name(d.id()), material.get(), cups, cup.get()));
  }

  private Optional<Thermometer> thermometer(String path, ThermometerDraft d) {
    var place = leaves.word(path + "/place", d.place(), Thermometer.Place.class);
    var interval =
        leaves.read(path + "/interval", d.interval(), p -> p::parseTemperatureDifference);
    var tolerance =
        leaves.read(path + "/tolerance", d.tolerance(), p -> p::parseTemperatureDifference);
    if (place.isEmpty() || interval.isEmpty() || tolerance.isEmpty()) {
      return Optional.empty();
    }
    return problems.attempt(
        path, () -> new Thermometer(name(d.id()), place.get(), interval.get(), tolerance.get()));
  }

  private Optional<HeatSource> source(String path, HeatSourceDraft d) {
    var kind = leaves.word(path + "/kind", d.kind(), HeatSource.Kind.class);
    var point = leaves.read(path + "/setPoint", d.setPoint(), p -> p::parseTemperature);
    var overshoot =
        leaves.read(path + "/overshoot", d.overshoot(), p -> p::parseTemperatureDifference);
    var power = leaves.amount(path + "/power", d.power(), QuantityKind.POWER);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return problems.attempt(
        path,
        () -> {
          HeatSource source = HeatSource.of(name(d.id()), kind.get());
          source = point.map(source::withSetPoint).orElse(source);
          source = overshoot.map(source::withOvershoot).orElse(source);
          return power.map(source::withPowerWatts).orElse(source);
        });
  }

  private Map<String, ReadyMade> offers(StudioRecipes book) {
    Map<String, ReadyMade> offers = new HashMap<>();
    List<OfferDraft> drafts = draft.readyMade() == null ? List.of() : draft.readyMade();
    for (int i = 0; i < drafts.size(); i++) {
      offer("/readyMade/" + i, drafts.get(i), book, offers);
    }
    return offers;
  }

  private void offer(
      String path, @Nullable OfferDraft d, StudioRecipes book, Map<String, ReadyMade> offers) {
    if (d == null) {
      return;
    }
    Optional<Price> price =
        leaves
            .price(path + "/price", d.price(), currency)
            .flatMap(p -> problems.attempt(path + "/price", () -> aboveZero(p)));
    String id = d.forRecipe();
    if (id != null && !book.contains(id)) {
      problems.add(
          Problem.of(StudioProblem.UNKNOWN_NAME, id)
              .with("names", String.join(", ", book.ids()))
              .under(path + "/forRecipe"));
    }
    if (id != null && price.isPresent()) {
      offers.merge(
          id,
          new ReadyMade("ready-made", price.get().unitPrice()),
          BinaryOperator.minBy(Comparator.comparing(ReadyMade::landed)));
    }
  }

  private static Price aboveZero(Price price) {
    Bounds.between(1e-4, 1e12, price.currency().getCode())
        .require(price.amount().getAmount().doubleValue(), "price to compare with");
    return price;
  }

  private static String name(@Nullable String text) {
    return text == null ? "" : text;
  }
}
