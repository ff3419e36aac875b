// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.meltwright.units.MetricUnits.grams;

import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.units.DecimalSign;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

class UnitPriceTest {

  @ParameterizedTest
  @CsvSource({
    "12.50 EUR/kg, 12.50 EUR/kg, 12.50",
    "1.49 EUR/100 g, 1.49 EUR/100 g, 14.90",
    "14.90 EUR / 500g, 14.90 EUR/500 g, 29.80",
    "40.00 EUR/2.5 kg, 40.00 EUR/2.5 kg, 16.00",
    "10 EUR/300 g, 10 EUR/300 g, 33.33",
    "5.00 USD/lb, 5.00 USD/453.59237 g, 11.02",
    "1.00 GBP/oz, 1.00 GBP/28.349523125 g, 35.27",
    "0 EUR/kg, 0 EUR/kg, 0.00",
    "1500 JPY/kg, 1500 JPY/kg, 1500",
  })
  void parse_readsAndPrints(String text, String canonical, String perKilogram) {
    UnitPrice price = UnitPrice.parse(text);
    assertThat(price).hasToString(canonical);
    assertThat(UnitPrice.parse(price.toString())).isEqualTo(price);
    assertThat(price.perKilogramRounded().getAmount()).isEqualByComparingTo(perKilogram);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "''                  | cost.price.text",
        "12.50               | cost.price.text",
        "12.50/kg            | cost.price.text",
        "12,50 EUR/kg        | number.decimal-comma",
        "1,200 EUR/kg        | number.decimal-comma",
        "1.200 EUR/kg        | number.decimal-or-thousands",
        "-1 EUR/kg           | cost.amount.negative",
        "1 EUR/l             | quantity.wrong-kind",
        "1 EUR/              | cost.price.text",
        "1 EUR/kg x          | quantity.unknown-unit",
        "1.000.50 EUR/kg     | number.malformed",
        "1e3 EUR/kg          | cost.price.text",
        "EUR 1 EUR/kg        | cost.price.text",
        "12.50 $/kg          | cost.currency.ambiguous",
        "50 cents/100 g      | cost.currency.ambiguous",
        "3 x 5 EUR/kg        | cost.price.text",
        "4 x 250 g for €9.90 | cost.price.text",
        "25 l for 89 EUR     | quantity.wrong-kind",
        "12.50 XQQ/kg        | cost.currency.unknown",
        "1 EUR/0 g           | value.out-of-range",
        "1234567890123 EUR/kg | cost.price.text"
      })
  void parse_refusesWhatDoesNotFit_andNamesTheWholeText(String text, String code) {
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> UnitPrice.parse(text))
        .satisfies(e -> assertThat(e.problems().get(0).code().id()).isEqualTo(code));
  }

  @ParameterizedTest
  @CsvSource({
    "12.50 €/kg, 12.50 EUR/kg",
    "€ 12.50/kg, 12.50 EUR/kg",
    "€12.50/kg, 12.50 EUR/kg",
    "EUR 12.50/kg, 12.50 EUR/kg",
    "12.50 eur/kg, 12.50 EUR/kg",
    "12.50 euros per kilogram, 12.50 EUR/kg",
    "12.50 Euro pro Kilo, 12.50 EUR/kg",
    "12.50 Euro je kg, 12.50 EUR/kg",
    "£4.20/100 g, 4.20 GBP/100 g",
    "1 CHF / 1 kg, 1 CHF/kg",
    "7.20 EUR/2 kg 500 g, 7.20 EUR/2.5 kg",
    "1 200 EUR/kg, 1200 EUR/kg",
    "12.50 euros a kilo, 12.50 EUR/kg",
    "89 EUR for 25 kg, 89 EUR/25 kg",
    "25 kg for 89 EUR, 89 EUR/25 kg",
    "25 kg für €89, 89 EUR/25 kg",
    "50p/100 g, 0.50 GBP/100 g",
    "US$5/kg, 5 USD/kg",
    "0.125 EUR/g, 0.125 EUR/1 g"
  })
  void parse_readsWhatPeopleWrite(String text, String canonical) {
    assertThat(UnitPrice.parse(text)).hasToString(canonical);
  }

  @Test
  void parse_readsTheDecimalSignOfALocale() {
    QuantityParser german = QuantityParser.forLocale(Locale.GERMANY);

    assertThat(UnitPrice.parse("12,50 €/kg", german)).isEqualTo(UnitPrice.parse("12.50 EUR/kg"));
    assertThat(Price.parse("14,90 €/0,5 kg", german)).isEqualTo(Price.parse("14.90 EUR/500 g"));
    assertThat(ExactMoney.parse("18,05 €", german)).hasToString("18.05 EUR");
    assertThat(UnitPrice.parse("12.50 €/kg", german)).isEqualTo(UnitPrice.parse("12.50 EUR/kg"));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> UnitPrice.parse("12.50 €/kg", QuantityParser.withDecimalComma()))
        .satisfies(
            e -> {
              assertThat(e.problems().get(0).code().id()).isEqualTo("number.decimal-point");
              assertThat(e.problems().get(0).found()).isEqualTo("12.50 €/kg");
            });
    QuantityParser either = QuantityParser.of(DecimalSign.EITHER);
    assertThat(UnitPrice.parse("12,50 €/kg", either)).isEqualTo(UnitPrice.parse("12.50 EUR/kg"));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> UnitPrice.parse("1,200 €/kg", either))
        .withMessageContaining("may be 1.2 or 1200");
  }

  @ParameterizedTest
  @ValueSource(strings = {"19", "19 %", "19%", "19.00"})
  void rate_readsPerCent(String text) {
    assertThat(Rate.ofPercent(text)).isEqualTo(Rate.ofPercent("19"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "%", "nineteen", "19,5", "1/2", "-1"})
  void rate_thatIsNoNumber_isAProblemAndNoJdkException(String text) {
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> Rate.ofPercent(text));
  }

  @Test
  void parse_namesAnUnknownCurrency() {
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> UnitPrice.parse("1 XQQ/kg"))
        .withMessageContaining("XQQ");
  }

  @Test
  void parse_refusesAMassOfZero() {
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> UnitPrice.parse("1 EUR/0 g"));
  }

  @Test
  void equals_goesByTheExactPricePerKilogram() {
    assertThat(UnitPrice.parse("1.49 EUR/100 g")).isEqualTo(UnitPrice.parse("14.90 EUR/kg"));
    assertThat(UnitPrice.parse("1.49 EUR/100 g")).hasSameHashCodeAs(UnitPrice.parse("14.9 EUR/kg"));
    assertThat(UnitPrice.parse("10 EUR/300 g")).isNotEqualTo(UnitPrice.parse("33.33 EUR/kg"));
    assertThat(UnitPrice.parse("1 EUR/kg")).isNotEqualTo(UnitPrice.parse("1 USD/kg"));
  }

  @Test
  void cost_isExact() {
    assertThat(UnitPrice.parse("12.50 EUR/kg").cost(grams(730))).hasToString("9.125 EUR");
    ExactMoney third = UnitPrice.parse("10 EUR/300 g").cost(grams(100));
    assertThat(third).hasToString("10/3 EUR");
    assertThat(third.times(3)).isEqualTo(ExactMoney.of(Money.parse("EUR 10.00")));
  }

  @Test
  void perKilogramRounded_keepsTheCents() {
    UnitPrice price = UnitPrice.of(Money.parse("EUR 10.00"), grams(300));
    assertThat(price.perKilogramRounded()).hasToString("EUR 33.33");
  }

  @Test
  void compareTo_refusesTwoCurrencies() {
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> UnitPrice.parse("1 EUR/kg").compareTo(UnitPrice.parse("1 USD/kg")))
        .withMessageContaining("EUR")
        .withMessageContaining("USD");
  }

  @ParameterizedTest
  @EnumSource(CostProblem.class)
  void everyProblem_hasTextsInBothLanguages(CostProblem code) {
    for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      Problem problem = Problem.of(code, "x");
      assertThat(problem.what(locale)).isNotBlank();
      assertThat(problem.allowed(locale)).isNotBlank();
      assertThat(problem.remedy(locale)).isNotBlank();
    }
  }

  @Test
  void price_knowsItsTax() {
    Rate nineteen = Rate.ofPercent("19");
    Price gross = Price.parse("11.90 EUR/500 g").withVat(Vat.included(nineteen));
    assertThat(gross.net()).hasToString("10 EUR");
    assertThat(gross.borne()).hasToString("11.9 EUR");
    assertThat(gross.withVat(Vat.included(nineteen).recoverable()).borne()).hasToString("10 EUR");
    Price net = Price.of(Money.parse("EUR 10.00"), grams(500)).withVat(Vat.added(nineteen));
    assertThat(net.gross()).hasToString("11.9 EUR");
    assertThat(net.cost(grams(250))).hasToString("5.95 EUR");
    assertThat(net.unitPrice()).isEqualTo(UnitPrice.parse("20.00 EUR/kg"));
    assertThat(net.packageKilograms()).isEqualTo(0.5);
    assertThat(net.amount()).isEqualTo(Money.of(CurrencyUnit.EUR, 10));
    assertThat(net).hasToString("10.00 EUR/500 g");
    assertThat(net).isNotEqualTo(gross);
  }
}
