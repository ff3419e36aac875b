// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.CostProblem;
import org.meltwright.core.cost.Price;
import org.meltwright.examples.studio.StudioDraft.RoomDraft;
import org.meltwright.safety.heating.Room;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.UnitsProblem;
import org.meltwright.units.VolumeFraction;

/** The texts of a studio file as values; each problem is gathered at its path. */
final class Leaves {

  private static final double HOTTEST_CELSIUS = 400;

  private static final Bounds MOLTEN =
      Bounds.between(Costing.ROOM.celsius(), HOTTEST_CELSIUS, "°C");

  private static final Pattern MONEY = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,4})?) ?([A-Z]{3})");

  private final boolean decimalComma;
  private final boolean currencyKnown;
  private final QuantityParser parser;
  private final Problems problems;

  /** Reads texts; prices are held to the studio's currency where that is known. */
  Leaves(boolean decimalComma, boolean currencyKnown, Problems problems) {
    this.decimalComma = decimalComma;
    this.currencyKnown = currencyKnown;
    this.parser = decimalComma ? QuantityParser.withDecimalComma() : QuantityParser.localeFree();
    this.problems = problems;
  }

  /** Reads an amount above zero, in the SI unit of its kind. */
  <Q extends Quantity<Q>> Optional<Double> amount(
      String path, @Nullable String text, QuantityKind<Q> kind) {
    return problems.read(
        path, text, t -> Bounds.of(kind).require(kind.toSi(parser.parse(t, kind)), t, kind.id()));
  }

  /** Reads an amount that may be nothing, in the SI unit of its kind. */
  <Q extends Quantity<Q>> Optional<Double> amountOrNone(
      String path, @Nullable String text, QuantityKind<Q> kind) {
    return problems.read(
        path,
        text,
        t -> Bounds.of(kind).fromZero().require(kind.toSi(parser.parse(t, kind)), t, kind.id()));
  }

  /** Reads a room; one without extraction may say "0 m³" an hour. */
  Optional<Room> room(String path, @Nullable RoomDraft d) {
    if (d == null) {
      return Optional.empty();
    }
    Optional<Double> volume = amount(path + "/volume", d.volume(), QuantityKind.VOLUME);
    Optional<Double> extraction =
        amountOrNone(path + "/extractionPerHour", d.extractionPerHour(), QuantityKind.VOLUME);
    return volume.flatMap(v -> problems.attempt(path + "/volume", () -> room(v, extraction)));
  }

  private static Room room(double cubicMetres, Optional<Double> extraction) {
    Room room = Room.of(QuantityKind.VOLUME.ofSi(cubicMetres));
    return extraction.map(room::withExtractionCubicMetresPerHour).orElse(room);
  }

  <T> Optional<T> read(
      String path, @Nullable String text, Function<QuantityParser, Function<String, T>> reader) {
    return problems.read(path, text, t -> reader.apply(parser).apply(t));
  }

  /** Nothing of this trade is molten at room temperature, and no reading of it is above 400 °C. */
  Optional<TemperaturePoint> molten(String path, @Nullable String text) {
    return problems.read(
        path,
        text,
        t -> {
          TemperaturePoint reading = parser.parseTemperature(t);
          MOLTEN.require(reading.celsius(), t, "temperature");
          return reading;
        });
  }

  Optional<MassFraction> massFraction(String path, @Nullable String text) {
    return fraction(path, text, p -> p::parseMassFraction);
  }

  Optional<VolumeFraction> volumeFraction(String path, @Nullable String text) {
    return fraction(path, text, p -> p::parseVolumeFraction);
  }

  /** A share that lies outside is shown as it was written, its range in per cent. */
  private <T> Optional<T> fraction(
      String path, @Nullable String text, Function<QuantityParser, Function<String, T>> reader) {
    return problems.read(
        path,
        text,
        t -> {
          try {
            return reader.apply(parser).apply(t);
          } catch (ProblemException e) {
            throw new ProblemException(e.problems().stream().map(p -> inPercent(p, t)).toList());
          }
        });
  }

  private static Problem inPercent(Problem problem, String written) {
    return problem.code() == UnitsProblem.VALUE_OUT_OF_RANGE
        ? problem.with("found", written).with("low", "0 %").with("high", "100 %")
        : problem;
  }

  <E extends Enum<E>> Optional<E> word(String path, @Nullable String text, Class<E> type) {
    return problems.read(path, text, t -> Words.read(type, t));
  }

  /** Reads a price per package in the studio's currency. */
  Optional<Price> price(String path, @Nullable String text, CurrencyUnit currency) {
    return problems.read(
        path,
        text,
        t -> {
          Price price = parsePrice(t, withPoint(t, currency, StudioProblem.PRICE), currency);
          requireCurrency(price.currency(), currency, t);
          return price;
        });
  }

  /** A price that cannot be read is shown as it was written, with its own decimal mark. */
  private static Price parsePrice(String written, String withPoint, CurrencyUnit currency) {
    try {
      return Price.parse(withPoint);
    } catch (ProblemException e) {
      if (e.problems().stream().anyMatch(p -> p.code() == CostProblem.PRICE_TEXT)) {
        throw notMoney(StudioProblem.PRICE, written, currency);
      }
      throw e;
    }
  }

  private static ProblemException notMoney(
      StudioProblem code, String written, CurrencyUnit currency) {
    return new ProblemException(Problem.of(code, written).with("currency", currency.getCode()));
  }

  /** Reads money in the studio's currency. */
  Optional<Money> money(String path, @Nullable String text, CurrencyUnit currency) {
    return problems.read(
        path, text, t -> parseMoney(t, withPoint(t, currency, StudioProblem.MONEY), currency));
  }

  /** The text with a decimal point; where commas are declared, a point may be a thousands mark. */
  private String withPoint(String text, CurrencyUnit currency, StudioProblem code) {
    if (decimalComma && text.contains(".")) {
      throw notMoney(code, text, currency);
    }
    return decimalComma ? text.replace(',', '.') : text;
  }

  private Money parseMoney(String written, String withPoint, CurrencyUnit currency) {
    Matcher matcher = MONEY.matcher(withPoint);
    if (!matcher.matches()) {
      throw notMoney(StudioProblem.MONEY, written, currency);
    }
    requireCurrency(Currencies.read(matcher.group(2)), currency, written);
    return Money.of(
        currency, new java.math.BigDecimal(matcher.group(1)), java.math.RoundingMode.HALF_UP);
  }

  private void requireCurrency(CurrencyUnit found, CurrencyUnit wanted, String text) {
    if (currencyKnown && !found.equals(wanted)) {
      throw new ProblemException(
          Problem.of(StudioProblem.CURRENCY, text).with("currency", wanted.getCode()));
    }
  }
}
