// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.examples.studio.day.ClassDay;
import org.meltwright.examples.studio.day.ClassDay.Circuit;
import org.meltwright.examples.studio.day.ClassDay.Fee;
import org.meltwright.examples.studio.day.ClassDay.Panels;
import org.meltwright.examples.studio.day.ClassDay.Power;
import org.meltwright.examples.studio.day.ClassDay.Terms;
import org.meltwright.examples.studio.file.ClassDraft.CircuitDraft;
import org.meltwright.examples.studio.file.ClassDraft.FeeDraft;
import org.meltwright.examples.studio.file.ClassDraft.FreightDraft;
import org.meltwright.examples.studio.file.ClassDraft.PanelsDraft;
import org.meltwright.examples.studio.file.StudioBinder.Equipment;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.Room;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/** Makes a class from its draft. */
final class ClassBinder {

  private static final double SECONDS_PER_HOUR = 3600;
  private static final double LONGEST_HOURS = 24;
  private static final double LEAST_PERCENT = 50;
  private static final int OLDEST = 150;

  private final StudioRecipes book;
  private final Equipment equipment;
  private final StudioCurrency currency;

  ClassBinder(StudioRecipes book, Equipment equipment, StudioCurrency currency) {
    this.book = book;
    this.equipment = equipment;
    this.currency = currency;
  }

  /** Every text of a class is read, also when another one is wrong. */
  Optional<ClassDay> classDay(
      FieldReader file, @Nullable ClassDraft draft, String town, @Nullable Room studio) {
    return draft == null
        ? Optional.empty()
        : classDay(file.field("classDay"), draft, new Here(town, studio));
  }

  /** Where a class is held that states no place. */
  private record Here(String town, @Nullable Room room) {}

  private Optional<ClassDay> classDay(FieldReader at, ClassDraft d, Here here) {
    FieldReader may = at.optional();
    Optional<String> title = at.value("title", d.title());
    Optional<LocalDate> date = at.read("date", d.date(), ClassBinder::date);
    Optional<People> people = at.read("people", d.people(), p -> someone(p.toPeople(at.parser())));
    Optional<Double> hours = at.parse("hours", d.hours(), ClassBinder::hours);
    Optional<Panels> panels =
        at.value("panels", d.panels()).flatMap(p -> panels(at.field("panels"), p));
    List<ClassDay.Paint> paints = new PaintBinder(book, equipment).paints(at, d.paints());
    Power power = power(may, d);
    Optional<Room> room = may.read("room", d.room(), r -> r.toRoom(at.parser()));
    Optional<FreightTariff> freight =
        d.freight() == null ? Optional.empty() : freight(at.field("freight"), d.freight());
    Optional<Fee> fee = d.fee() == null ? Optional.empty() : fee(at.field("fee"), d.fee());
    if (title.isEmpty() || date.isEmpty() || paints.isEmpty()) {
      return Optional.empty();
    }
    boolean isHere = d.place() == null || d.place().isBlank();
    Room there = d.room() == null && isHere ? here.room() : room.orElse(null);
    ClassDay.About about =
        new ClassDay.About(
            title.get(), date.get(), isHere ? here.town() : String.valueOf(d.place()), there);
    return at.attempt(
        () ->
            new ClassDay(
                about,
                people.get(),
                hours.get(),
                panels.get(),
                paints,
                power,
                new Terms(freight.orElse(null), fee.orElse(null))));
  }

  /** A day, and one that the hazard rules hold for. */
  private static LocalDate date(String text) {
    return RuleSet.requireClpDay(StudioBinder.day(text));
  }

  private static People someone(People people) {
    require(people.adults() + people.minors(), 1, 1000, "people", "number who learn");
    people.youngest().ifPresent(years -> requireAge(people, years));
    return people;
  }

  /** Where some are under 18, so is the youngest. */
  private static void requireAge(People people, int years) {
    int oldest = people.minors() > 0 ? People.ADULT - 1 : OLDEST;
    int least = people.minors() > 0 ? 1 : People.ADULT;
    try {
      require(years, least, oldest, "years", "age of the youngest");
    } catch (ProblemException e) {
      throw e.under("/youngest");
    }
  }

  private static double require(double value, double low, double high, String unit, String what) {
    return Bounds.between(low, high, unit).require(value, what);
  }

  private static double hours(QuantityParser parser, String text) {
    double seconds = Bounds.amount(QuantityKind.TIME).apply(parser, text);
    return require(seconds / SECONDS_PER_HOUR, 0.01, LONGEST_HOURS, "h", "time");
  }

  private static Optional<Panels> panels(FieldReader at, PanelsDraft d) {
    FieldReader may = at.optional();
    Optional<Integer> each = at.read("perPerson", d.perPerson(), n -> Bounds.count(n, "panels"));
    Optional<Double> width = at.parse("width", d.width(), Bounds.amount(QuantityKind.LENGTH));
    Optional<Double> height = at.parse("height", d.height(), Bounds.amount(QuantityKind.LENGTH));
    Optional<Integer> layers = at.read("layers", d.layers(), n -> Bounds.count(n, "layers"));
    Optional<Double> film = at.parse("film", d.film(), Bounds.amount(QuantityKind.LENGTH));
    Optional<MassFraction> loss = may.parse("loss", d.loss(), QuantityParser::parseMassFraction);
    Optional<Double> tins =
        may.parse("leftInTins", d.leftInTins(), Bounds.amountOrNone(QuantityKind.MASS));
    return at.attempt(
        () ->
            new Panels(
                each.get(),
                width.get(),
                height.get(),
                layers.get(),
                film.get(),
                loss.orElse(null),
                optional(tins)));
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private Power power(FieldReader may, ClassDraft d) {
    List<Circuit> circuits = new ArrayList<>();
    Set<String> names = new HashSet<>();
    Entries.eachAt(
        may, "circuits", d.circuits(), (at, c) -> circuit(at, c, names).ifPresent(circuits::add));
    Optional<MassFraction> share =
        may.parse(
            "continuousShare", d.continuousShare(), (p, t) -> requireShare(p.parseMassFraction(t)));
    return new Power(
        equipment.heatSources().allNamed(may, "tools", d.tools()), circuits, share.orElse(null));
  }

  private static MassFraction requireShare(MassFraction share) {
    require(share.percent(), LEAST_PERCENT, 100, "%", "share of the rating");
    return share;
  }

  /** Two circuits of one name would be taken for one on the sheet. */
  private Optional<Circuit> circuit(FieldReader at, CircuitDraft d, Set<String> names) {
    Optional<String> name = at.read("name", d.name(), n -> Entries.onlyOnce(n, names));
    Optional<Integer> volts =
        at.read("volts", d.volts(), v -> (int) require(v, 1, 1000, "V", "voltage"));
    Optional<Integer> amperes =
        at.read("amperes", d.amperes(), a -> (int) require(a, 1, 1000, "A", "rating"));
    List<HeatSource> sources = equipment.heatSources().allNamed(at, "sources", d.sources());
    Optional<Double> others =
        at.optional().parse("others", d.others(), Bounds.amountOrNone(QuantityKind.POWER));
    return at.attempt(
        () -> new Circuit(name.get(), volts.get(), amperes.get(), sources, optional(others)));
  }

  private Optional<FreightTariff> freight(FieldReader at, FreightDraft d) {
    Optional<Money> order = at.parse("perOrder", d.perOrder(), currency::money);
    Optional<Money> free = at.optional().parse("freeFrom", d.freeFrom(), currency::money);
    Optional<FreightTariff> tariff = order.map(FreightTariff::perOrder);
    return free.isEmpty() ? tariff : tariff.map(t -> t.withFreeFrom(free.get()));
  }

  private Optional<Fee> fee(FieldReader at, FeeDraft d) {
    Optional<Money> each = at.parse("perPerson", d.perPerson(), currency::money);
    Optional<Money> fixed = at.parse("fixed", d.fixed(), currency::money);
    Optional<Rate> margin =
        at.parse("margin", d.margin(), QuantityParser::parseMassFraction)
            .map(m -> Rate.ofPercent(Say.ENGLISH.decimals(m.value() * 100, 4)));
    Optional<Money> step = at.parse("step", d.step(), (p, t) -> aboveZero(currency.money(p, t)));
    return at.attempt(() -> new Fee(each.get(), fixed.get(), margin.get(), step.get()));
  }

  private static Money aboveZero(Money step) {
    require(
        step.getAmount().doubleValue(),
        1e-4,
        1e9,
        step.getCurrencyUnit().getCode(),
        "step of a fee");
    return step;
  }
}
