// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.meltwright.units.Messages;
import org.meltwright.units.QuantityFormatter;

/** A tree on one line, with brackets where they are needed. */
final class ExprWriter {

  private static final Messages WORDS = Messages.beside(ExprWriter.class);

  /** How tightly a tree holds together: a looser one within a tighter one needs brackets. */
  private static final int SUM = 1;

  private static final int PRODUCT = 2;
  private static final int FACTOR = 3;
  private static final int ATOM = 4;

  private final Locale reader;
  private final Function<Symbol, String> leaf;
  private final Function<Expr.Total, List<ExprWriter>> lines;
  private final String sum;

  /** Writes symbols as they are told, and sums over lines as such. */
  ExprWriter(Locale reader, Function<Symbol, String> leaf) {
    this(reader, leaf, total -> List.of());
  }

  /** Writes the signs of symbols, for who reads formulas. */
  static String signs(Expr tree) {
    Function<Symbol, String> sign = Symbol::sign;
    return new ExprWriter(Locale.ENGLISH, sign, total -> List.of(), "Σ ").write(tree);
  }

  /** Writes a sum over lines line by line, each by a writer of its own. */
  ExprWriter(
      Locale reader, Function<Symbol, String> leaf, Function<Expr.Total, List<ExprWriter>> lines) {
    this(reader, leaf, lines, WORDS.text("formula.total", reader));
  }

  private ExprWriter(
      Locale reader,
      Function<Symbol, String> leaf,
      Function<Expr.Total, List<ExprWriter>> lines,
      String sum) {
    this.reader = reader;
    this.leaf = leaf;
    this.lines = lines;
    this.sum = sum;
  }

  String write(Expr tree) {
    if (tree instanceof Expr.Sum sum) {
      return joined(sum.terms(), " + ", SUM);
    }
    if (tree instanceof Expr.Difference d) {
      return within(d.from(), SUM) + " − " + within(d.taken(), PRODUCT);
    }
    if (tree instanceof Expr.Product product) {
      return joined(product.factors(), " × ", PRODUCT);
    }
    if (tree instanceof Expr.Quotient q) {
      return within(q.over(), PRODUCT) + " ÷ " + within(q.under(), FACTOR);
    }
    return tree instanceof Expr.Power p
        ? within(p.base(), ATOM) + "^" + within(p.exponent(), ATOM)
        : atom(tree);
  }

  private String atom(Expr tree) {
    if (tree instanceof Symbol symbol) {
      return leaf.apply(symbol);
    }
    if (tree instanceof Expr.Constant constant) {
      return QuantityFormatter.exact().withLocale(reader).format(constant.value());
    }
    if (tree instanceof Expr.Total total) {
      return total(total);
    }
    if (tree instanceof Expr.Choice c) {
      return choice(c);
    }
    Expr.Call call = (Expr.Call) tree;
    return word(call.function().name().toLowerCase(Locale.ROOT))
        + call.arguments().stream().map(this::write).collect(Collectors.joining("; ", "(", ")"));
  }

  private String choice(Expr.Choice c) {
    return "("
        + write(c.reached())
        + word("if")
        + write(c.left())
        + " ≥ "
        + write(c.right())
        + word("else")
        + write(c.below())
        + ")";
  }

  private String total(Expr.Total total) {
    List<ExprWriter> each = lines.apply(total);
    return each.isEmpty()
        ? sum + "(" + write(total.each()) + ")"
        : each.stream()
            .map(line -> line.within(total.each(), SUM))
            .collect(Collectors.joining(" + "));
  }

  private String joined(List<Expr> parts, String between, int bond) {
    return parts.stream().map(part -> within(part, bond)).collect(Collectors.joining(between));
  }

  private String within(Expr part, int bond) {
    String text = write(part);
    return bond(part) < bond || isLoose(part, text, bond) ? "(" + text + ")" : text;
  }

  /** A negative number beside a sign, and what has a blank under a power, need brackets. */
  private static boolean isLoose(Expr part, String text, int bond) {
    boolean isNegative = bond > SUM && text.startsWith("-");
    return isNegative || (bond == ATOM && part instanceof Symbol && text.contains(" "));
  }

  private int bond(Expr tree) {
    if (tree instanceof Expr.Total total) {
      return bond(total);
    }
    if (tree instanceof Expr.Sum || tree instanceof Expr.Difference) {
      return SUM;
    }
    if (tree instanceof Expr.Product || tree instanceof Expr.Quotient) {
      return PRODUCT;
    }
    return tree instanceof Expr.Power ? FACTOR : ATOM;
  }

  /** Written line by line it is a sum, and one line is what it adds. */
  private int bond(Expr.Total total) {
    int count = lines.apply(total).size();
    return count > 1 ? SUM : count == 1 ? bond(total.each()) : ATOM;
  }

  private String word(String key) {
    return WORDS.text("formula." + key, reader);
  }
}
