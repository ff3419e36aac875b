// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.meltwright.units.Bilingual;
import org.meltwright.units.DecimalSign;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.UnitsProblem;

/** Reads and writes money as people do: "12.50 EUR", "12,50 €", "€ 12.50", "1.49 EUR/100 g". */
final class MoneyText {

  private static final int LONGEST = 100;
  private static final int MOST_DIGITS = 12;
  private static final int THOUSANDS = 3;

  /** A currency in front of a number or behind it. */
  private static final Pattern MONEY =
      Pattern.compile(
          "(?:(?<before>[\\p{L}\\p{Sc}]+)[\\s\u00a0\u202f]*)?"
              + "(?<number>[+\u2212-]?\\d[^\\p{L}\\p{Sc}]*?)(?:[.,][-\u2013\u2014])?"
              + "(?:[\\s\u00a0\u202f]*(?<after>[\\p{L}\\p{Sc}]+))?");

  private static final Pattern PER =
      Pattern.compile(
          "(?<money>[^/]*?)(?: ?/ ?|[ \u00a0](?:per|pro|je|a|for|f\u00fcr)[ \u00a0])(?<mass>.+)");

  /** "25 kg for 89 EUR": a mass before its price. */
  private static final Pattern MASS_FIRST =
      Pattern.compile(
          "(?<mass>\\d[\\d.,'’]*\\s*[\\p{L}.]+)[ \u00a0](?:for|f\u00fcr)[ \u00a0](?<money>[^/]+)");

  private static final Pattern COUNTED =
      Pattern.compile("(?<count>\\d{1,4})\\s*[xX\u00d7*]\\s*(?<money>.+)");

  private static final Map<String, String> SIGNS =
      Map.of("\u20ac", "EUR", "euro", "EUR", "euros", "EUR", "\u00a3", "GBP", "us$", "USD");

  /** Signs of a hundredth. */
  private static final Map<String, String> HUNDREDTHS = Map.of("p", "GBP", "pence", "GBP");

  private static final String CENTS = "EUR, USD, CAD, AUD";

  /** Signs of several currencies. */
  private static final Map<String, String> SHARED =
      Map.of(
          "$",
          "USD, CAD, AUD",
          "\u00a5",
          "JPY, CNY",
          "kr",
          "DKK, NOK, SEK",
          "cent",
          CENTS,
          "cents",
          CENTS,
          "ct",
          CENTS);

  private MoneyText() {}

  /** Reads an amount with its currency, or so many times one, as in "3 x 4.99 EUR". */
  static BigMoney countedMoney(String text, QuantityParser parser) {
    Matcher m = COUNTED.matcher(text.strip());
    return text.length() <= LONGEST && m.matches()
        ? money(m.group("money"), parser).multipliedBy(Long.parseLong(m.group("count")))
        : money(text, parser);
  }

  /** Reads an amount with its currency; both have to be there. */
  static BigMoney money(String text, QuantityParser parser) {
    Matcher m = MONEY.matcher(text.strip());
    if (text.length() > LONGEST || !m.matches()) {
      throw unreadable(CostProblem.MONEY_TEXT, text, parser);
    }
    String before = m.group("before");
    String after = m.group("after");
    if ((before == null) == (after == null)) {
      throw unreadable(CostProblem.MONEY_TEXT, text, parser);
    }
    String word = before == null ? after : before;
    BigDecimal amount = amount(m.group("number").strip(), text, parser);
    String hundredth = HUNDREDTHS.get(word.toLowerCase(Locale.ROOT));
    return hundredth == null
        ? BigMoney.of(currency(word, text), amount)
        : BigMoney.of(CurrencyUnit.of(hundredth), amount.movePointLeft(2));
  }

  /** Reads money per mass; what is wrong with either names the whole text. */
  static UnitPrice price(String text, QuantityParser parser) {
    Matcher m = MASS_FIRST.matcher(text.strip());
    if (text.length() > LONGEST || !(m.matches() && isMoney(m.group("money"), parser))) {
      m = PER.matcher(text.strip());
    }
    if (text.length() > LONGEST || !m.matches()) {
      throw unreadable(CostProblem.PRICE_TEXT, text, parser);
    }
    return UnitPrice.of(
        money(m.group("money"), text, parser), mass(m.group("mass").strip(), text, parser));
  }

  private static boolean isMoney(String text, QuantityParser parser) {
    try {
      return money(text, parser).isPositiveOrZero();
    } catch (ProblemException noMoney) {
      return false;
    }
  }

  private static BigMoney money(String money, String text, QuantityParser parser) {
    try {
      return money(money, parser);
    } catch (ProblemException e) {
      boolean unread = e.problems().get(0).code() == CostProblem.MONEY_TEXT;
      throw unread ? unreadable(CostProblem.PRICE_TEXT, text, parser) : within(e, text);
    }
  }

  /** A unit alone is one of it; a mass in parts, such as "1 lb 4 oz", is none of a price. */
  private static Quantity<Mass> mass(String mass, String text, QuantityParser parser) {
    boolean counted = Character.isDigit(mass.charAt(0));
    try {
      return parser.parseMass(counted ? mass : "1 " + mass);
    } catch (ProblemException e) {
      throw within(e, text);
    }
  }

  private static BigDecimal amount(String number, String text, QuantityParser parser) {
    BigDecimal amount;
    try {
      amount = parser.parseNumber(number);
    } catch (ProblemException e) {
      throw within(e, text);
    }
    if (mayBeThousands(amount)) {
      throw thousands(amount, text);
    }
    boolean plain = amount.precision() - amount.scale() <= MOST_DIGITS && amount.scale() >= 0;
    if (!plain || amount.scale() > MOST_DIGITS) {
      throw unreadable(CostProblem.MONEY_TEXT, text, parser);
    }
    return amount;
  }

  /** "1.234 EUR": no price has tenths of a cent, but many have thousands. */
  private static ProblemException thousands(BigDecimal amount, String text) {
    return new ProblemException(
        Problem.of(UnitsProblem.DECIMAL_OR_THOUSANDS, shown(text))
            .with("number", shown(text))
            .with("decimal", Bilingual.of(amount.doubleValue()))
            .with("thousands", Bilingual.of(amount.movePointRight(THOUSANDS).doubleValue())));
  }

  /** The digits of an amount; three behind the point might be read as thousands, so a zero more. */
  static String digits(BigDecimal amount) {
    return (mayBeThousands(amount) ? amount.setScale(THOUSANDS + 1) : amount).toPlainString();
  }

  private static boolean mayBeThousands(BigDecimal amount) {
    return amount.scale() == THOUSANDS && amount.abs().compareTo(BigDecimal.ONE) >= 0;
  }

  private static ProblemException within(ProblemException problem, String text) {
    return new ProblemException(
        problem.problems().stream().map(p -> p.with("found", shown(text))).toList());
  }

  private static CurrencyUnit currency(String word, String text) {
    String lower = word.toLowerCase(Locale.ROOT);
    String shared = SHARED.get(lower);
    if (shared != null) {
      throw new ProblemException(
          Problem.of(CostProblem.CURRENCY_AMBIGUOUS, shown(text))
              .with("sign", word)
              .with("choices", shared));
    }
    try {
      return CurrencyUnit.of(SIGNS.getOrDefault(lower, word.toUpperCase(Locale.ROOT)));
    } catch (IllegalCurrencyException unknown) {
      throw CostProblem.exception(CostProblem.CURRENCY_UNKNOWN, shown(word));
    }
  }

  /** With an example in the notation that the parser reads. */
  private static ProblemException unreadable(CostProblem code, String text, QuantityParser parser) {
    boolean comma = parser.decimalSign() == DecimalSign.COMMA;
    return new ProblemException(Problem.of(code, shown(text)).with("sign", comma ? "," : "."));
  }

  private static String shown(String text) {
    return text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
  }

  /** Money as it prints, with the decimal sign of each language. */
  static Bilingual inWords(Object money) {
    String english = money.toString();
    return new Bilingual(english, english.replace('.', ','));
  }
}
