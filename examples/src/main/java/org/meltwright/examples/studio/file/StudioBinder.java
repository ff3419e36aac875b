// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.equipment.BalanceDraft;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSourceDraft;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.MouldDraft;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.ThermometerDraft;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselDraft;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.examples.studio.day.Brushing;
import org.meltwright.examples.studio.day.ClassDay;
import org.meltwright.examples.studio.day.Job;
import org.meltwright.examples.studio.day.Known;
import org.meltwright.examples.studio.day.ShelfItem;
import org.meltwright.examples.studio.day.Studio;
import org.meltwright.examples.studio.file.StudioDraft.AboutDraft;
import org.meltwright.examples.studio.file.StudioDraft.ShelfDraft;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.Room;
import org.meltwright.safety.naming.HazardNames;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/** Makes a studio from its draft: texts become values, names become what they name. */
public final class StudioBinder {

  private static final BinaryOperator<ReadyMade> CHEAPER =
      BinaryOperator.minBy(Comparator.comparing(ReadyMade::landed));

  private final StudioDraft draft;
  private final MaterialCatalogue catalogue;
  private final FieldReader at;
  private final FieldReader about;
  private final StudioCurrency currency;
  private final Set<String> materials = new HashSet<>();

  /** What was found before, in the shape of the file, is told with the rest. */
  StudioBinder(StudioDraft draft, MaterialCatalogue catalogue, Problems problems) {
    this.draft = draft;
    this.catalogue = catalogue;
    AboutDraft stated = draft.studio();
    boolean decimalComma = stated != null && Boolean.TRUE.equals(stated.decimalComma());
    this.at =
        FieldReader.of(
            decimalComma ? QuantityParser.withDecimalComma() : QuantityParser.localeFree(),
            problems);
    at.value("studio", stated);
    this.about = stated == null ? at.field("studio").optional() : at.field("studio");
    this.currency =
        StudioCurrency.read(about, "currency", stated == null ? null : stated.currency());
  }

  /** Returns the studio, or throws all problems gathered. */
  Studio bind() {
    Entries<Balance> balances =
        Entries.read(
            at, "balances", draft.balances(), BalanceDraft::id, made((p, d) -> d.toBalance(p)));
    Entries<ShelfItem> shelf =
        Entries.read(at, "shelf", draft.shelf(), ShelfDraft::id, (e, d) -> item(e, d, balances));
    List<Leftover> leftovers = leftovers();
    WishBinder wishes = new WishBinder(shelf, balances.values(), byId(leftovers), currency);
    StudioRecipes book = new StudioRecipes(at, draft.recipes(), shelf, wishes);
    Map<String, Double> leftByName = byName(leftovers, book);
    Equipment equipment = equipment();
    List<Job> jobs = new JobBinder(shelf, book, equipment).jobs(at, draft.today());
    Optional<Studio.About> who = draft.studio() == null ? Optional.empty() : about(draft.studio());
    Studio.Place place = new Studio.Place(room().orElse(null), people().orElse(null));
    Map<String, ReadyMade> offers = offers(book);
    Optional<Known<Brushing>> brushing =
        new BrushingBinder(book).brushing(at.optional(), draft.brushing());
    Optional<ClassDay> classDay =
        new ClassBinder(book, equipment, currency)
            .classDay(
                at.optional(),
                draft.classDay(),
                who.map(Studio.About::town).orElse(""),
                place.room());
    return at.make(
        () ->
            new Studio(
                who.orElseThrow(),
                place,
                shelf.values(),
                balances.values(),
                new Studio.Recipes(book.unknownShares(), book.chosen(), leftByName),
                jobs,
                offers,
                new Studio.Plans(brushing.orElse(null), classDay.orElse(null))));
  }

  /** What is left of an earlier batch, and where that stands. */
  private record Leftover(FieldReader entry, @Nullable String id, double kilograms) {}

  private List<Leftover> leftovers() {
    List<Leftover> all = new ArrayList<>();
    Entries.eachAt(
        at.optional(),
        "leftovers",
        draft.leftovers(),
        (entry, d) ->
            entry
                .parse("mass", d.mass(), Bounds.amountOrNone(QuantityKind.MASS))
                .ifPresent(mass -> all.add(new Leftover(entry, d.recipe(), mass))));
    return all;
  }

  /** By the id of the recipe; of one id all together. */
  private static Map<String, Double> byId(List<Leftover> leftovers) {
    Map<String, Double> all = new LinkedHashMap<>();
    leftovers.forEach(l -> all.merge(String.valueOf(l.id()), l.kilograms(), Double::sum));
    return all;
  }

  private static Map<String, Double> byName(List<Leftover> leftovers, StudioRecipes book) {
    Map<String, Double> all = new HashMap<>();
    for (Leftover left : leftovers) {
      book.named(left.entry(), "recipe", left.id())
          .ifPresent(r -> all.merge(r.name(), left.kilograms(), Double::sum));
    }
    return all;
  }

  private Optional<Room> room() {
    return at.optional().read("room", draft.room(), d -> d.toRoom(at.parser()));
  }

  private Optional<People> people() {
    return at.optional().read("people", draft.people(), d -> d.toPeople(at.parser()));
  }

  /** What stands in the studio, by id. */
  record Equipment(
      Entries<Vessel> vessels,
      Entries<Mould> moulds,
      Entries<Thermometer> thermometers,
      Entries<HeatSource> heatSources) {}

  private Equipment equipment() {
    FieldReader may = at.optional();
    return new Equipment(
        Entries.read(
            at, "vessels", draft.vessels(), VesselDraft::id, made((p, d) -> d.toVessel(p))),
        Entries.read(may, "moulds", draft.moulds(), MouldDraft::id, made((p, d) -> d.toMould(p))),
        Entries.read(
            may,
            "thermometers",
            draft.thermometers(),
            ThermometerDraft::id,
            made((p, d) -> d.toThermometer(p))),
        Entries.read(
            at,
            "heatSources",
            draft.heatSources(),
            HeatSourceDraft::id,
            made((p, d) -> d.toHeatSource(p))));
  }

  /** Reads what the library has a draft of. */
  private static <D, T> BiFunction<FieldReader, D, Optional<T>> made(
      BiFunction<QuantityParser, D, T> maker) {
    return (entry, d) ->
        entry.problems().attempt(entry.path(), () -> maker.apply(entry.parser(), d));
  }

  private Optional<Studio.About> about(AboutDraft d) {
    Optional<LocalDate> date = at.optional().read("date", draft.date(), StudioBinder::day);
    Optional<String> name = about.value("name", d.name());
    Optional<String> town = about.value("town", d.town());
    FieldReader may = about.optional();
    Optional<Money> perKilowattHour =
        may.parse("electricityPerKilowattHour", d.electricityPerKilowattHour(), currency::money);
    Optional<Money> perHour = may.parse("labourPerHour", d.labourPerHour(), currency::money);
    return about.attempt(
        () ->
            new Studio.About(
                name.get(),
                town.get(),
                currency.unit(),
                perKilowattHour.orElse(null),
                perHour.orElse(null),
                date));
  }

  /** Reads a day of the calendar. */
  static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new ProblemException(Problem.of(StudioProblem.DATE, text));
    }
  }

  private Optional<ShelfItem> item(FieldReader entry, ShelfDraft d, Entries<Balance> balances) {
    FieldReader may = entry.optional();
    Optional<String> id = entry.value("id", d.id());
    Optional<Material> material = entry.read("material", d.material(), this::onlyOnce);
    Optional<Double> density =
        may.parse("density", d.density(), Bounds.amount(QuantityKind.DENSITY));
    Optional<Balance> balance = balances.named(entry, "balance", d.balance());
    Optional<MassFraction> leftBehind =
        may.parse("insolubles", d.insolubles(), QuantityParser::parseMassFraction);
    String form = d.form() == null ? "" : d.form();
    if (material.isEmpty()) {
      return Optional.empty();
    }
    PackReader pack = new PackReader(currency, material.get(), density);
    Optional<Double> stock = entry.parse("stock", d.stock(), pack::stock);
    List<Price> packages =
        may.each("packages", d.packages(), text -> pack.price(entry.parser(), text));
    return stock.isEmpty() || balance.isEmpty() || id.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ShelfItem(
                id.get(),
                material.get(),
                form,
                stock.get(),
                balance.get(),
                leftBehind,
                packages,
                pack.byVolume()));
  }

  /** Price, stock and balance are found by material, so two entries of one would be mixed up. */
  private Material onlyOnce(String name) {
    Material material = HazardNames.require(catalogue, name);
    if (!materials.add(material.id())) {
      throw new ProblemException(Problem.of(StudioProblem.DOUBLE_MATERIAL, material.id()));
    }
    return material;
  }

  private Map<String, ReadyMade> offers(StudioRecipes book) {
    Map<String, ReadyMade> offers = new HashMap<>();
    Entries.eachAt(
        at.optional(),
        "readyMade",
        draft.readyMade(),
        (entry, d) -> {
          book.named(entry, "forRecipe", d.forRecipe());
          entry
              .parse("price", d.price(), (p, t) -> aboveZero(currency.price(p, t)))
              .ifPresent(
                  price -> offers.merge(String.valueOf(d.forRecipe()), offer(price), CHEAPER));
        });
    return offers;
  }

  private static ReadyMade offer(Price price) {
    return new ReadyMade("ready-made", price.unitPrice());
  }

  private static Price aboveZero(Price price) {
    Bounds.between(1e-4, 1e12, price.currency().getCode())
        .require(price.amount().getAmount().doubleValue(), "price to compare with");
    return price;
  }
}
