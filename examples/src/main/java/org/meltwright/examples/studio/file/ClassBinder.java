// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.joda.money.CurrencyUnit;
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
import org.meltwright.examples.studio.file.ClassDraft.ClassPeopleDraft;
import org.meltwright.examples.studio.file.ClassDraft.FeeDraft;
import org.meltwright.examples.studio.file.ClassDraft.FreightDraft;
import org.meltwright.examples.studio.file.ClassDraft.PanelsDraft;
import org.meltwright.examples.studio.file.StudioBinder.Equipment;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.hazard.RuleSet;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.Room;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityKind;

/** Makes a class from its draft. */
final class ClassBinder {

  private static final String PATH = "/classDay";
  private static final double SECONDS_PER_HOUR = 3600;
  private static final double LONGEST_HOURS = 24;
  private static final double LEAST_PERCENT = 50;

  private final StudioRecipes book;
  private final Equipment equipment;
  private final CurrencyUnit currency;
  private final Leaves leaves;
  private final Problems problems;

  ClassBinder(
      StudioRecipes book,
      Equipment equipment,
      CurrencyUnit currency,
      Leaves leaves,
      Problems problems) {
    this.book = book;
    this.equipment = equipment;
    this.currency = currency;
    this.leaves = leaves;
    this.problems = problems;
  }

  /** Every text of a class is read, also when another one is wrong. */
  Optional<ClassDay> classDay(@Nullable ClassDraft d, String town, @Nullable Room studio) {
    if (d == null) {
      return Optional.empty();
    }
    Optional<LocalDate> date = problems.read(PATH + "/date", d.date(), ClassBinder::date);
    Optional<People> people = d.people() == null ? Optional.empty() : people(d.people());
    Optional<Double> hours = hours(d.hours());
    Optional<Panels> panels = d.panels() == null ? Optional.empty() : panels(d.panels());
    List<ClassDay.Paint> paints =
        new PaintBinder(book, equipment, leaves, problems).paints(PATH + "/paints", d.paints());
    Power power = power(d);
    Room room = leaves.room(PATH + "/room", d.room()).orElse(null);
    Terms terms = new Terms(freight(d.freight()).orElse(null), fee(d.fee()).orElse(null));
    String title = d.title();
    if (title == null
        || date.isEmpty()
        || people.isEmpty()
        || hours.isEmpty()
        || panels.isEmpty()
        || paints.isEmpty()) {
      return Optional.empty();
    }
    ClassDay.About about =
        d.place() == null || d.place().isBlank()
            ? new ClassDay.About(title, date.get(), town, d.room() == null ? studio : room)
            : new ClassDay.About(title, date.get(), d.place(), room);
    return Optional.of(
        new ClassDay(about, people.get(), hours.get(), panels.get(), paints, power, terms));
  }

  /** A day, and one that the hazard rules hold for. */
  private static LocalDate date(String text) {
    try {
      return RuleSet.clpOn(LocalDate.parse(text)).day();
    } catch (DateTimeException e) {
      throw new ProblemException(Problem.of(StudioProblem.DATE, text));
    }
  }

  private Optional<People> people(ClassPeopleDraft d) {
    Integer teachers = d.teachers();
    Integer adults = d.adults();
    Integer minors = d.minors();
    if (teachers == null || adults == null || minors == null) {
      return Optional.empty();
    }
    Integer youngest = d.youngest();
    return problems
        .attempt(PATH + "/people", () -> someone(People.classOf(teachers, adults, minors)))
        .map(p -> Boolean.TRUE.equals(d.potsHandledByAdults()) ? p.withPotHandledByAdults() : p)
        .flatMap(
            p ->
                youngest == null
                    ? Optional.of(p)
                    : problems.attempt(
                        PATH + "/people/youngest", () -> p.withYoungest(age(p, youngest))));
  }

  private static People someone(People people) {
    require(people.adults() + people.minors(), 1, 1000, "people", "number who learn");
    return people;
  }

  /** Where some are under 18, so is the youngest. */
  private static int age(People people, int years) {
    int oldest = people.minors() > 0 ? People.ADULT - 1 : 150;
    int least = people.minors() > 0 ? 1 : People.ADULT;
    return (int) require(years, least, oldest, "years", "age of the youngest");
  }

  private static double require(double value, double low, double high, String unit, String what) {
    return Bounds.between(low, high, unit).require(value, what);
  }

  private Optional<Double> hours(@Nullable String text) {
    return leaves
        .amount(PATH + "/hours", text, QuantityKind.TIME)
        .map(s -> s / SECONDS_PER_HOUR)
        .flatMap(
            h ->
                problems.attempt(
                    PATH + "/hours", () -> require(h, 0.01, LONGEST_HOURS, "h", "time")));
  }

  private Optional<Panels> panels(PanelsDraft d) {
    String path = PATH + "/panels";
    Optional<Double> width = leaves.amount(path + "/width", d.width(), QuantityKind.LENGTH);
    Optional<Double> height = leaves.amount(path + "/height", d.height(), QuantityKind.LENGTH);
    Optional<Double> film = leaves.amount(path + "/film", d.film(), QuantityKind.LENGTH);
    Optional<MassFraction> loss = leaves.massFraction(path + "/loss", d.loss());
    Optional<Double> tins =
        leaves.amountOrNone(path + "/leftInTins", d.leftInTins(), QuantityKind.MASS);
    Integer count = d.perPerson();
    Integer layers = d.layers();
    if (width.isEmpty() || height.isEmpty() || film.isEmpty() || count == null || layers == null) {
      return Optional.empty();
    }
    return Optional.of(
        new Panels(
            count,
            width.get(),
            height.get(),
            layers,
            film.get(),
            loss.orElse(null),
            optional(tins)));
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private Power power(ClassDraft d) {
    List<Circuit> circuits = new ArrayList<>();
    List<CircuitDraft> drafts = d.circuits() == null ? List.of() : d.circuits();
    Set<String> names = new HashSet<>();
    for (int i = 0; i < drafts.size(); i++) {
      if (drafts.get(i) != null) {
        onlyOnce(PATH + "/circuits/" + i + "/name", drafts.get(i).name(), names);
        circuit(PATH + "/circuits/" + i, drafts.get(i)).ifPresent(circuits::add);
      }
    }
    Optional<MassFraction> share =
        leaves
            .massFraction(PATH + "/continuousShare", d.continuousShare())
            .flatMap(s -> problems.attempt(PATH + "/continuousShare", () -> requireShare(s)));
    return new Power(sources(PATH + "/tools", d.tools()), circuits, share.orElse(null));
  }

  /** Two circuits of one name would be taken for one on the sheet. */
  private void onlyOnce(String path, @Nullable String name, Set<String> names) {
    if (name != null && !names.add(name)) {
      problems.add(Problem.of(StudioProblem.DOUBLE_ID, name).under(path));
    }
  }

  private static MassFraction requireShare(MassFraction share) {
    require(share.percent(), LEAST_PERCENT, 100, "%", "share of the rating");
    return share;
  }

  private Optional<Circuit> circuit(String path, CircuitDraft d) {
    List<HeatSource> sources = sources(path + "/sources", d.sources());
    Optional<Double> others = leaves.amountOrNone(path + "/others", d.others(), QuantityKind.POWER);
    Integer volts = d.volts();
    Integer amperes = d.amperes();
    String name = d.name();
    if (volts == null || amperes == null || name == null) {
      return Optional.empty();
    }
    problems.attempt(path + "/volts", () -> require(volts, 1, 1000, "V", "voltage"));
    problems.attempt(path + "/amperes", () -> require(amperes, 1, 1000, "A", "rating"));
    return Optional.of(new Circuit(name, volts, amperes, sources, optional(others)));
  }

  private List<HeatSource> sources(String path, @Nullable List<String> ids) {
    List<HeatSource> sources = new ArrayList<>();
    for (int i = 0; ids != null && i < ids.size(); i++) {
      equipment.heatSources().named(path + "/" + i, ids.get(i), problems).ifPresent(sources::add);
    }
    return sources;
  }

  private Optional<FreightTariff> freight(@Nullable FreightDraft d) {
    if (d == null) {
      return Optional.empty();
    }
    String path = PATH + "/freight";
    Optional<Money> order = leaves.money(path + "/perOrder", d.perOrder(), currency);
    Optional<Money> free = leaves.money(path + "/freeFrom", d.freeFrom(), currency);
    Optional<FreightTariff> tariff = order.map(FreightTariff::perOrder);
    return free.isEmpty() ? tariff : tariff.map(t -> t.withFreeFrom(free.get()));
  }

  private Optional<Fee> fee(@Nullable FeeDraft d) {
    if (d == null) {
      return Optional.empty();
    }
    String path = PATH + "/fee";
    Optional<Money> each = leaves.money(path + "/perPerson", d.perPerson(), currency);
    Optional<Money> fixed = leaves.money(path + "/fixed", d.fixed(), currency);
    Optional<Rate> margin =
        leaves
            .massFraction(path + "/margin", d.margin())
            .map(m -> Rate.ofPercent(Say.ENGLISH.decimals(m.value() * 100, 4)));
    Optional<Money> step =
        leaves
            .money(path + "/step", d.step(), currency)
            .flatMap(s -> problems.attempt(path + "/step", () -> aboveZero(s)));
    if (each.isEmpty() || fixed.isEmpty() || margin.isEmpty() || step.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Fee(each.get(), fixed.get(), margin.get(), step.get()));
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
