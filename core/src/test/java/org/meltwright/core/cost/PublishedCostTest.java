// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.kilograms;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.meltwright.core.source.Source;

/** Published examples, each named with its source in {@code published.txt}. */
class PublishedCostTest {

  private static final CurrencyUnit CURRENCY = CurrencyUnit.EUR;

  @ParameterizedTest(name = "{0} {1}")
  @CsvFileSource(resources = "published.txt", delimiter = '|', maxCharsPerColumn = 2000)
  void published(
      String id,
      String calculation,
      String inputs,
      String expected,
      String tolerance,
      String source,
      String note) {
    List<Double> results = results(calculation, new Inputs(inputs));
    List<Double> wanted =
        Stream.of(expected.split("; "))
            .flatMap(e -> Stream.of(e.substring(e.indexOf('=') + 1).split(" ")))
            .map(Double::valueOf)
            .toList();
    String[] tolerances = tolerance.split("; ", -1);
    assertThat(results).as(id).hasSameSizeAs(wanted);
    for (int i = 0; i < wanted.size(); i++) {
      double within = Double.parseDouble(tolerances[Math.min(i, tolerances.length - 1)]);
      assertThat(results.get(i))
          .as("%s, value %s of %s (%s; %s)", id, i + 1, expected, source, note)
          .isCloseTo(wanted.get(i), Offset.offset(within + 1e-12));
    }
  }

  private record Inputs(Map<String, String> values) {

    Inputs(String text) {
      this(
          Arrays.stream(text.split("; "))
              .collect(
                  Collectors.toMap(
                      e -> e.substring(0, e.indexOf('=')), e -> e.substring(e.indexOf('=') + 1))));
    }

    String text(String name) {
      return values.getOrDefault(name, "0");
    }

    BigDecimal number(String name) {
      return new BigDecimal(text(name));
    }

    BigMoney money(String name) {
      return BigMoney.of(CURRENCY, number(name));
    }

    List<BigDecimal> numbers(String name) {
      return Stream.of(text(name).split(" ")).map(BigDecimal::new).toList();
    }
  }

  private static List<Double> results(String calculation, Inputs in) {
    return switch (calculation) {
      case "make-or-buy" -> makeOrBuy(in);
      case "contribution" -> List.of(value(breakEven(in).contribution()));
      case "contribution-per-hour" ->
          List.of(value(breakEven(in).contribution().dividedBy(in.number("hours"))));
      case "delivered" -> delivered(in);
      case "labour-saving" -> labourSaving(in);
      case "sum" -> List.of(value(rollUp(in.numbers("amounts")).total()));
      case "break-even" ->
          List.of(
              breakEven(in).units(), value(breakEven(in).profit(in.number("at").longValueExact())));
      case "break-even-profit" -> profit(in);
      case "break-even-ratio" ->
          List.of(
              breakEven(in).units(),
              value(breakEven(in).sales()),
              breakEven(in).contributionRatio() * 100);
      case "margin-of-safety" ->
          List.of(
              breakEven(in).units(),
              value(breakEven(in).sales()),
              value(breakEven(in).marginOfSafety(in.number("at").longValueExact())));
      case "allocate" -> values(allocate(in.number("total"), in.numbers("weights")));
      case "allocate-two" -> allocateTwo(in);
      case "allocate-stock" -> stock(in);
      case "per-unit" ->
          List.of(
              value(
                  rollUp(List.of(in.number("total")))
                      .perPiece(in.number("units").longValueExact())));
      case "unit-price" -> unitPrice(in);
      case "discount" -> discount(in);
      case "landed" -> landed(in);
      case "shares" ->
          LargestRemainder.shares(
                  in.number("total").longValueExact(),
                  in.numbers("weights"),
                  in.number("least").longValueExact())
              .stream()
              .map(Long::doubleValue)
              .toList();
      default -> throw new IllegalArgumentException(calculation);
    };
  }

  private static double value(ExactMoney money) {
    return money.amount().toDouble();
  }

  private static double value(Money money) {
    return money.getAmount().doubleValue();
  }

  private static List<Double> values(List<Money> shares) {
    return shares.stream().map(PublishedCostTest::value).toList();
  }

  private static CostRollUp rollUp(List<BigDecimal> amounts) {
    return CostRollUp.of(
        "sum",
        amounts.stream()
            .map(a -> CostItem.of(CostKind.OTHER, "part", ExactMoney.of(BigMoney.of(CURRENCY, a))))
            .toList());
  }

  private static List<Double> makeOrBuy(Inputs in) {
    BigDecimal units = in.number("units");
    CostRollUp own = rollUp(in.numbers("parts").stream().map(p -> p.multiply(units)).toList());
    MakeOrBuy choice =
        MakeOrBuy.of(
            own,
            kilograms(units.doubleValue()),
            List.of(new ReadyMade("offer", UnitPrice.perKilogram(in.money("offer")))));
    ExactMoney bought = choice.best().landed().cost(kilograms(units.doubleValue()));
    return List.of(
        value(own.total()),
        value(bought),
        value(choice.savingPerYear(kilograms(units.doubleValue()))));
  }

  private static BreakEven breakEven(Inputs in) {
    return BreakEven.of(in.money("fixed"), in.money("price"), in.money("unit"));
  }

  private static List<Double> profit(Inputs in) {
    long units = breakEven(in).wholeUnitsFor(ExactMoney.of(in.money("profit")));
    return List.of((double) units, value(ExactMoney.of(in.money("price")).times(units)));
  }

  private static List<Double> delivered(Inputs in) {
    FreightTariff tariff = FreightTariff.free(CURRENCY).withPerKilogram(in.money("perkg"));
    ExactMoney goods = ExactMoney.of(in.money("goods"));
    return List.of(value(goods.plus(tariff.cost(goods, in.number("kilograms")))));
  }

  private static List<Double> labourSaving(Inputs in) {
    CostItem first = labour(in.numbers("first"));
    CostItem second = labour(in.numbers("second"));
    return List.of(value(first.cost().minus(second.cost()).times(in.number("times"))));
  }

  private static CostItem labour(List<BigDecimal> hoursAndRates) {
    List<CostItem> items = new ArrayList<>();
    for (int i = 0; i < hoursAndRates.size(); i += 2) {
      BigMoney rate = BigMoney.of(CURRENCY, hoursAndRates.get(i + 1));
      items.add(CostItem.counted(CostKind.LABOUR, "hours", rate, hoursAndRates.get(i)));
    }
    return CostItem.group("labour", items);
  }

  private static List<Money> allocate(BigDecimal total, List<BigDecimal> weights) {
    return LargestRemainder.allocate(Money.of(CURRENCY, total), weights);
  }

  private static List<Double> allocateTwo(Inputs in) {
    List<BigDecimal> first = in.numbers("first");
    List<BigDecimal> second = in.numbers("second");
    List<Money> a = allocate(first.get(0), first.subList(1, 3));
    List<Money> b = allocate(second.get(0), second.subList(1, 3));
    return values(List.of(a.get(0).plus(b.get(0)), a.get(1).plus(b.get(1))));
  }

  private static List<Double> stock(Inputs in) {
    ExactMoney each = rollUp(in.numbers("amounts")).perPiece(in.number("units").longValueExact());
    return List.of(
        value(each), value(each.times(in.number("used"))), value(each.times(in.number("left"))));
  }

  private static List<Double> unitPrice(Inputs in) {
    String text = in.text("amount") + " USD/" + in.text("mass") + " " + in.text("unit");
    UnitPrice one = UnitPrice.parse("1 USD/" + in.text("per"));
    return List.of(UnitPrice.parse(text).dividedBy(one));
  }

  private static List<Double> discount(Inputs in) {
    ExactMoney amount = ExactMoney.of(in.money("amount"));
    ExactMoney discount = Rate.ofPercent(in.number("percent")).of(amount);
    return List.of(value(discount), value(amount.minus(discount)));
  }

  private static List<Double> landed(Inputs in) {
    String[] words = in.text("lines").split(" ", -1);
    List<OrderLine> lines = new ArrayList<>();
    List<Duty> duties = new ArrayList<>();
    for (int i = 0; i < words.length; i += 3) {
      Price price = Price.of(BigMoney.of(CURRENCY, new BigDecimal(words[i + 1])), kilograms(1));
      lines.add(OrderLine.of(words[i], words[i], price, 1));
      duties.add(Duty.percent(words[i], Rate.ofPercent(words[i + 2])));
    }
    ImportRegime regime =
        ImportRegime.of(
                "as stated",
                parts(in.text("dutybase")),
                parts(in.text("taxbase")),
                Rate.ofPercent(in.number("tax")),
                Source.USER)
            .withUplift(Rate.ofPercent(in.number("uplift")));
    LandedCost cost =
        PurchaseOrder.of(lines, CURRENCY, LocalDate.of(2026, 1, 1))
            .withFreight(FreightTariff.perOrder(in.money("freight")), Vat.NONE)
            .withInsurance(Rate.ofPercent(in.number("insurance")))
            .withImport(regime, duties)
            .landed();
    Money duty = cost.total(CostPart.DUTY);
    Money tax = cost.total(CostPart.TAX);
    return List.of(value(duty), value(cost.taxBase()), value(tax), value(duty.plus(tax)));
  }

  private static Set<CostPart> parts(String names) {
    return Stream.of(names.split(" ")).map(CostPart::valueOf).collect(Collectors.toSet());
  }
}
