// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.plausibility;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.joda.money.CurrencyUnit;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/** Reads what is usual from lines of text; all that is wrong is told at once. */
final class UsualSizeReader {

  private static final Pattern BAR = Pattern.compile("\\s*\\|\\s*");
  private static final Pattern LINE_END = Pattern.compile("\\R");
  private static final int COLUMNS = 5;
  private static final Pattern TIMES = Pattern.compile(" times$");
  private static final QuantityParser PARSER = QuantityParser.localeFree();

  private final Map<String, UsualSize> sizes = new HashMap<>();
  private final Problems problems = new Problems();

  static Map<String, UsualSize> read(String text) {
    UsualSizeReader reader = new UsualSizeReader();
    int number = 0;
    for (String line : LINE_END.split(text, -1)) {
      reader.line(++number, line.strip());
    }
    reader.problems.throwIfAny();
    return Map.copyOf(reader.sizes);
  }

  private void line(int number, String line) {
    if (line.isEmpty() || line.startsWith("#")) {
      return;
    }
    try {
      String[] cells = BAR.split(line, -1);
      UsualSize size = size(cells);
      if (sizes.put(cells[0], size) != null) {
        throw new IllegalArgumentException(line);
      }
    } catch (ProblemException | IllegalArgumentException e) {
      problems.add(
          Problem.of(PlausibilityProblem.MALFORMED, line)
              .with("line", Integer.toString(number))
              .under("/" + number));
    }
  }

  private static UsualSize size(String[] cells) {
    if (cells.length != COLUMNS) {
      throw new IllegalArgumentException();
    }
    ToDoubleFunction<String> reader = number(cells[0]);
    UsualSize size =
        new UsualSize(
            reader.applyAsDouble(cells[1]),
            reader.applyAsDouble(cells[2]),
            PARSER.parseNumber(cells[3]).doubleValue(),
            knownBy(cells[4]));
    if (!(size.low() > 0 && size.low() <= size.high() && size.times() >= 1)) {
      throw new IllegalArgumentException();
    }
    return size;
  }

  private static String knownBy(String words) {
    String known = words.replace(' ', '-');
    if (Remark.MESSAGES.find("known." + known, Locale.ENGLISH).isEmpty()) {
      throw new IllegalArgumentException(words);
    }
    return known;
  }

  /** How the ends of a size are read, as plain numbers in its unit. */
  private static ToDoubleFunction<String> number(String name) {
    if (name.equals(SenseOfSize.BESIDE_OTHERS)) {
      return text -> PARSER.parseNumber(TIMES.matcher(text).replaceFirst("")).doubleValue();
    }
    if (name.equals(SenseOfSize.RESIN_SHARE)) {
      return text -> PARSER.parseMassFraction(text).value();
    }
    if (name.startsWith(SenseOfSize.PRICE)) {
      return UsualSizeReader::eurosPerKilogram;
    }
    return SizeOf.all().stream()
        .filter(size -> size.id().equals(name))
        .findFirst()
        .<ToDoubleFunction<String>>map(size -> text -> si(text, size.kind()))
        .orElseThrow(IllegalArgumentException::new);
  }

  private static <Q extends Quantity<Q>> double si(String text, QuantityKind<Q> kind) {
    return kind.toSi(PARSER.parse(text, kind));
  }

  private static double eurosPerKilogram(String text) {
    UnitPrice price = UnitPrice.parse(text);
    if (!price.currency().equals(CurrencyUnit.EUR)) {
      throw new IllegalArgumentException(text);
    }
    return price.perKilogramRounded().getAmount().doubleValue();
  }
}
