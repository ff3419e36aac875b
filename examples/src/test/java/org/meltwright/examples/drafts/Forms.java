// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.drafts;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.BatchRecord;
import org.meltwright.core.batch.BatchRecordDraft;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.LossesDraft;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.RecipeBook;
import org.meltwright.core.batch.RecipeDraft;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.batch.StatedAmount;
import org.meltwright.core.batch.WeighedLine;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.PriceDraft;
import org.meltwright.core.cost.Rate;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.ReadyMadeDraft;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.cost.Vat;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.equipment.BalanceDraft;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSourceDraft;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.MouldDraft;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.ThermometerDraft;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselDraft;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.laws.MixtureArbitraries;
import org.meltwright.core.laws.SampleMaterials;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.CompositionDraft;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.MixtureDraft;
import org.meltwright.core.planning.ClassPlan;
import org.meltwright.core.planning.ClassPlanDraft;
import org.meltwright.core.planning.ColourShare;
import org.meltwright.core.planning.Coverage;
import org.meltwright.core.planning.CoverageDraft;
import org.meltwright.core.planning.Piece;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingPlanBuilder;
import org.meltwright.safety.heating.HeatingPlanDraft;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.PeopleDraft;
import org.meltwright.safety.heating.Room;
import org.meltwright.safety.heating.RoomDraft;
import org.meltwright.safety.heating.SurfaceMethod;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** The written forms of the library, each with random things. */
final class Forms {

  private Forms() {}

  static List<Form<?, ?>> all() {
    return List.of(
        new Form<>(VesselDraft.class, vessels(), Vessel::toDraft, VesselDraft::toVessel),
        new Form<>(BalanceDraft.class, balances(), Balance::toDraft, BalanceDraft::toBalance),
        new Form<>(MouldDraft.class, moulds(), Mould::toDraft, MouldDraft::toMould),
        new Form<>(
            ThermometerDraft.class,
            thermometers(),
            Thermometer::toDraft,
            ThermometerDraft::toThermometer),
        new Form<>(
            HeatSourceDraft.class, sources(), HeatSource::toDraft, HeatSourceDraft::toHeatSource),
        new Form<>(RoomDraft.class, rooms(), Room::toDraft, RoomDraft::toRoom),
        new Form<>(PeopleDraft.class, people(), People::toDraft, PeopleDraft::toPeople),
        new Form<>(PriceDraft.class, prices(), Price::toDraft, PriceDraft::toPrice),
        new Form<>(ReadyMadeDraft.class, offers(), ReadyMade::toDraft, ReadyMadeDraft::toReadyMade),
        new Form<>(
            LossesDraft.class,
            MixtureArbitraries.losses(),
            Losses::toDraft,
            (draft, parser) -> draft.toLosses(parser, Forms::material)),
        new Form<>(
            RecipeDraft.class,
            recipes(),
            Recipe::toDraft,
            (draft, parser) -> draft.toRecipe(parser, Forms::material)),
        new Form<>(
            CompositionDraft.class,
            MixtureArbitraries.compositions(MATERIALS),
            Composition::toDraft,
            (draft, parser) -> draft.toComposition(parser, Forms::material)),
        new Form<>(CoverageDraft.class, coverages(), Coverage::toDraft, CoverageDraft::toCoverage),
        new Form<>(
            ClassPlanDraft.class,
            classes(),
            ClassPlan::toDraft,
            (draft, parser) -> draft.toPlan(parser, Forms::material)),
        new Form<>(
            HeatingPlanDraft.class,
            plans(),
            HeatingPlan::toDraft,
            (draft, parser) -> draft.toPlan(parser, Forms::material)),
        new Form<>(
            MixtureDraft.class,
            mixtures(),
            Mixture::toDraft,
            (draft, parser) -> draft.toMixture(parser, Forms::material)),
        new Form<>(Book.class, books(), Book::of, Book::toBook),
        new Form<>(
            BatchRecordDraft.class,
            records(),
            BatchRecord::toDraft,
            (draft, parser) ->
                draft.toRecord(
                    parser,
                    name -> Optional.of(MEDIUM).filter(r -> r.name().equals(name)),
                    Forms::material)));
  }

  /** Names as people give them: any letters, blanks around them, quotes, no name alone. */
  private static Arbitrary<String> names() {
    return Arbitraries.oneOf(
        Arbitraries.of("pot", " pot 2 ", "Größe „L“", "1.5 l", "null", "a/b~c", "釜"),
        Arbitraries.strings().ofMinLength(1).ofMaxLength(20).filter(text -> !text.isBlank()));
  }

  /** Any number between two, large and small ones as often. */
  private static Arbitrary<Double> between(double low, double high) {
    return Arbitraries.oneOf(
        Arbitraries.of(low, high),
        Arbitraries.longs()
            .between(Double.doubleToLongBits(low), Double.doubleToLongBits(high))
            .map(Double::longBitsToDouble));
  }

  private static Arbitrary<Vessel> vessels() {
    return Combinators.combine(
            names(),
            Arbitraries.of(VesselMaterial.class),
            Arbitraries.of(Lining.class),
            Arbitraries.of(Vessel.Bottom.class),
            between(1e-9, 1e3),
            between(0, 1e6))
        .as(Vessel::new);
  }

  private static Arbitrary<Balance> balances() {
    return Combinators.combine(names(), between(1e-9, 1e6), between(1e-9, 1e6))
        .as((name, a, b) -> new Balance(name, Math.max(a, b), Math.min(a, b)));
  }

  private static Arbitrary<Mould> moulds() {
    return Combinators.combine(
            names(),
            Arbitraries.of(VesselMaterial.class),
            Arbitraries.integers().between(1, 1_000_000),
            between(1e-9, 1e3))
        .as(Mould::new);
  }

  private static Arbitrary<TemperatureDifference> differences(double low, double high) {
    return between(low, high).map(TemperatureDifference::ofKelvin);
  }

  private static Arbitrary<Thermometer> thermometers() {
    return Combinators.combine(
            names(),
            Arbitraries.of(Thermometer.Place.class),
            differences(1e-6, 1000),
            differences(0, 1000))
        .as(Thermometer::new);
  }

  private static Arbitrary<HeatSource> sources() {
    Arbitrary<TemperaturePoint> points = between(0, 2000).map(TemperaturePoint::ofCelsius);
    return Combinators.combine(
            names(),
            Arbitraries.of(HeatSource.Kind.class),
            points.optional(),
            differences(0, 1000).optional(),
            between(1e-3, 1e6).optional())
        .as(
            (name, kind, point, overshoot, watts) -> {
              HeatSource source = HeatSource.of(name, kind);
              if (kind.hasDegrees()) {
                source = point.map(source::withSetPoint).orElse(source);
                source = overshoot.map(source::withOvershoot).orElse(source);
              }
              return watts.map(source::withPowerWatts).orElse(source);
            });
  }

  private static Arbitrary<Room> rooms() {
    Arbitrary<OptionalDouble> air =
        between(0, 1e8)
            .optional()
            .map(a -> a.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    return Combinators.combine(between(1, 1e7), air).as(Room::new);
  }

  private static Arbitrary<People> people() {
    Arbitrary<Integer> number = Arbitraries.integers().between(0, 10_000);
    Arbitrary<OptionalInt> age =
        Arbitraries.integers()
            .between(0, 150)
            .optional()
            .map(a -> a.map(OptionalInt::of).orElse(OptionalInt.empty()));
    return Combinators.combine(number, number, number, age, Arbitraries.of(true, false))
        .as(People::new);
  }

  private static Arbitrary<BigMoney> money() {
    return Combinators.combine(
            Arbitraries.of("EUR", "GBP", "JPY", "USD", "KWD"),
            Arbitraries.longs().between(0, 999_999_999_999L),
            Arbitraries.integers().between(0, 12))
        .as((code, units, scale) -> BigMoney.ofScale(CurrencyUnit.of(code), units, scale));
  }

  private static Arbitrary<UnitPrice> unitPrices() {
    return Combinators.combine(money(), between(1e-9, 1e9).map(QuantityKind.MASS::ofSi))
        .as(UnitPrice::of);
  }

  private static Arbitrary<Price> prices() {
    Arbitrary<Rate> rates =
        Combinators.combine(
                Arbitraries.longs().between(0, 99_999), Arbitraries.integers().between(-2, 12))
            .as((units, scale) -> Rate.ofPercent(BigDecimal.valueOf(units, scale)));
    Arbitrary<Vat> taxes =
        Combinators.combine(Arbitraries.of(true, false), rates, Arbitraries.of(true, false))
            .as(Vat::new);
    return Combinators.combine(money(), between(1e-9, 1e9).map(QuantityKind.MASS::ofSi), taxes)
        .as((amount, mass, tax) -> Price.of(amount, mass).withVat(tax));
  }

  private static Arbitrary<ReadyMade> offers() {
    return Combinators.combine(names(), unitPrices()).as(ReadyMade::new);
  }

  private static final List<Material> MATERIALS =
      Stream.concat(
              SampleMaterials.all().stream(),
              Stream.of(SampleMaterials.WAX.withLot("7"), SampleMaterials.RESIN.withLot("7 a")))
          .toList();

  static Material material(String id) {
    return SampleMaterials.all().stream()
        .filter(material -> material.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new ProblemException(Problem.of(MaterialProblem.UNKNOWN, id)));
  }

  /** Two to four lines, of every way to state an amount. */
  private static Arbitrary<Recipe> recipes() {
    return Combinators.combine(
            names(),
            Arbitraries.of(MATERIALS).list().ofMinSize(2).ofMaxSize(4).uniqueElements(),
            Arbitraries.of(Stated.class),
            Arbitraries.doubles().between(1e-6, 0.2).ofScale(9).list().ofSize(4),
            Arbitraries.of(DensityBasis.SOLID, DensityBasis.MELT, OWN_DENSITY))
        .as(
            (name, materials, stated, numbers, basis) ->
                Recipe.of(
                    name,
                    IntStream.range(0, materials.size())
                        .mapToObj(
                            i ->
                                new RecipePart(
                                    Ingredient.of(materials.get(i)),
                                    stated.amount(i, materials.size(), numbers.get(i), basis)))
                        .toList()));
  }

  private static final DensityBasis OWN_DENSITY =
      DensityBasis.SOLID.with(SampleMaterials.WAX, QuantityKind.DENSITY.ofSi(876.5));

  /** The ways to state the amounts of one recipe. */
  private enum Stated {
    PARTS,
    VOLUME_PARTS,
    AMOUNTS,
    SHARES,
    UP_TO_MASS,
    UP_TO_VOLUME;

    StatedAmount amount(int line, int lines, double number, DensityBasis basis) {
      boolean isLast = line == lines - 1;
      boolean isFirst = line == 0;
      return switch (this) {
        case PARTS -> StatedAmount.parts(number);
        case VOLUME_PARTS -> StatedAmount.volumeParts(number, basis);
        case AMOUNTS -> isFirst ? mass(number) : volume(number, basis);
        case SHARES ->
            isLast
                ? StatedAmount.rest()
                : isFirst
                    ? StatedAmount.of(MassFraction.of(number))
                    : StatedAmount.of(VolumeFraction.of(number), basis);
        case UP_TO_MASS -> isLast ? StatedAmount.upTo(QuantityKind.MASS.ofSi(1)) : mass(number);
        case UP_TO_VOLUME ->
            isLast
                ? StatedAmount.upTo(QuantityKind.VOLUME.ofSi(0.01), basis)
                : isFirst
                    ? StatedAmount.inEach(QuantityKind.DENSITY.ofSi(number * 100), basis)
                    : mass(number);
      };
    }

    private static StatedAmount mass(double kilograms) {
      return StatedAmount.of(QuantityKind.MASS.ofSi(kilograms));
    }

    private static StatedAmount volume(double litres, DensityBasis basis) {
      return StatedAmount.of(QuantityKind.VOLUME.ofSi(litres / 1000), basis);
    }
  }

  /** Recipes of recipes, as one file would hold them. */
  public record Book(@Nullable List<RecipeDraft> recipes) {

    static Book of(RecipeBook book) {
      return new Book(book.toDrafts());
    }

    RecipeBook toBook(QuantityParser parser) {
      FieldReader at = FieldReader.of(parser);
      Optional<RecipeBook> book =
          at.read("recipes", recipes, all -> RecipeBook.of(all, parser, Forms::material));
      return at.make(book::get);
    }
  }

  private static Arbitrary<RecipeBook> books() {
    return Combinators.combine(MixtureArbitraries.recipes(), MixtureArbitraries.losses())
        .as(
            (recipe, losses) ->
                RecipeBook.of(
                    List.of(
                        Recipe.builder("strained")
                            .part(Ingredient.of(recipe, losses), 1)
                            .build())));
  }

  private static final Recipe MEDIUM =
      Recipe.builder("medium").part(SampleMaterials.RESIN, 1).part(SampleMaterials.WAX, 8).build();

  private static Arbitrary<BatchRecord> records() {
    Arbitrary<Instant> times =
        Arbitraries.longs().between(0, 4_000_000_000_000L).map(Instant::ofEpochMilli);
    Arbitrary<WeighedLine> lines =
        Combinators.combine(Arbitraries.of(MATERIALS), between(1e-9, 1e5), times)
            .as((material, kg, at) -> WeighedLine.of(material, QuantityKind.MASS.ofSi(kg), at));
    return Combinators.combine(
            names(),
            times,
            lines.list().ofMinSize(1).ofMaxSize(4),
            names().list().ofMaxSize(3),
            Arbitraries.strings().ofMaxLength(9))
        .as(
            (id, at, weighed, cakes, note) ->
                BatchRecord.of(id, MEDIUM, at, weighed).withCakes(cakes).withNote(note));
  }

  private static Arbitrary<Mixture> mixtures() {
    return Combinators.combine(
            MixtureArbitraries.compositions(MATERIALS), MixtureArbitraries.kilograms())
        .as(Mixture::new);
  }

  /** Of each thing that may be stated, half the plans state it. */
  private static Arbitrary<HeatingPlan> plans() {
    Arbitrary<HeatingPlanBuilder> bare =
        MixtureArbitraries.compositions(MATERIALS).map(HeatingPlan::builder);
    Arbitrary<Optional<Thermometer>> probes =
        thermometers().filter(t -> t.place() == Thermometer.Place.LIQUID).map(Optional::of);
    Arbitrary<Circumstance> circumstances = Arbitraries.of(Circumstance.class);
    Arbitrary<HeatingPlanBuilder> equipped =
        Combinators.combine(
                bare,
                sources().optional(0.5),
                sources().list().ofMaxSize(2),
                vessels().optional(0.5),
                probes,
                rooms().optional(0.5),
                people().optional(0.5))
            .as(
                (plan, heat, tools, vessel, probe, room, people) -> {
                  heat.ifPresent(plan::heat);
                  tools.forEach(plan::tool);
                  vessel.ifPresent(plan::vessel);
                  probe.ifPresent(plan::thermometer);
                  room.ifPresent(plan::room);
                  people.ifPresent(plan::people);
                  return plan;
                });
    Arbitrary<TemperaturePoint> readings = between(20, 200).map(TemperaturePoint::ofCelsius);
    return Combinators.combine(
            equipped,
            readings.optional(0.5),
            readings,
            Arbitraries.of(SurfaceMethod.class).optional(0.5),
            between(0, 2).optional(0.5),
            between(0, 1e5).optional(0.5),
            circumstances.set().ofMaxSize(3),
            circumstances.set().ofMaxSize(3))
        .as(
            (plan, liquid, surface, method, level, hours, stated, denied) -> {
              liquid.ifPresent(plan::liquidReading);
              method.ifPresent(how -> plan.surfaceReading(surface, how));
              level.ifPresent(plan::fillLevel);
              hours.ifPresent(plan::hoursHeld);
              stated.forEach(plan::circumstance);
              denied.forEach(plan::without);
              return plan.build();
            });
  }

  private static Arbitrary<Coverage> coverages() {
    return Combinators.combine(
            between(1e-9, 1),
            Arbitraries.integers().between(1, 1_000_000),
            between(1, 1e5),
            Arbitraries.oneOf(Arbitraries.of(0.0), between(1e-9, 0.99)),
            between(0, 1e6).optional(0.5),
            between(1e-6, 1).optional(0.5))
        .as(
            (film, layers, density, lost, drunk, solids) -> {
              Coverage coverage =
                  Coverage.of(
                          QuantityKind.LENGTH.ofSi(film),
                          layers,
                          QuantityKind.DENSITY.ofSi(density))
                      .withLoss(lost)
                      .withSolids(VolumeFraction.of(solids.orElse(1.0)));
              return drunk.isPresent()
                  ? coverage.withAbsorbentGround(
                      QuantityKind.MASS.ofSi(drunk.get()), QuantityKind.AREA.ofSi(1))
                  : coverage;
            });
  }

  private static Arbitrary<ClassPlan> classes() {
    Arbitrary<Piece> pieces =
        Combinators.combine(Arbitraries.integers().between(1, 1_000_000), between(1e-9, 1e6))
            .as(Piece::new);
    Arbitrary<ColourShare> colours =
        Combinators.combine(
                names(),
                between(0, 0.3).map(MassFraction::of),
                MixtureArbitraries.compositions(MATERIALS))
            .as(ColourShare::new);
    return Combinators.combine(
            Arbitraries.integers().between(1, 1_000_000),
            pieces.list().ofMinSize(1).ofMaxSize(3),
            coverages(),
            between(0, 1e3),
            between(0, 10),
            colours.list().ofMaxSize(3))
        .as(
            (people, made, coverage, left, spare, coloured) ->
                ClassPlan.of(people, made, coverage)
                    .withLeftInTins(QuantityKind.MASS.ofSi(left))
                    .withSpare(spare)
                    .withColours(coloured));
  }
}
