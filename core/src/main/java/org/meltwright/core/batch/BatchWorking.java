// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import java.util.Map;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Expr.Function;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class BatchWorking {

  private static final int WHOLE = 16;

  static final Symbol MELT_VOLUME = symbol("volume of the melt", "m³").withSign("V");
  static final Symbol CAPACITY = symbol("capacity to the brim", "m³").withSign("C");
  static final Symbol FILL_LEVEL = symbol("fill level", "1").withSign("φ");
  static final Symbol NET = symbol("net mass", "kg").withSign("N");
  static final Symbol CUP = symbol("volume of a cup", "m³").withSign("V");
  static final Symbol MELT_DENSITY = symbol("density of the melt", "kg/m³").withSign("ρ");

  private static final Symbol CAKE = symbol("mass of a cake", "kg").withSign("m");
  private static final Symbol CAKE_COUNT =
      symbol("whole cakes", "").withDigits(WHOLE).withSign("n");
  private static final Symbol PART_CAKE = symbol("mass of the part cake", "kg").withSign("r");
  private static final Symbol POT = symbol("mass in the pot", "kg");
  private static final Symbol LINE = symbol("mass to weigh", "kg");
  private static final Symbol LINE_SHARE = symbol("share of the recipe", "1");
  private static final Symbol BEHIND = symbol("share that stays behind", "1");
  private static final Symbol CONTENT = symbol("share of the mix", "1");
  private static final Symbol INSOLUBLES = symbol("insolubles", "kg");
  private static final Symbol STRAINING = symbol("straining loss", "kg");
  private static final Symbol STRAINED = symbol("share lost in straining", "1");
  private static final Symbol FILM = symbol("film loss", "kg");
  private static final Symbol LEAST_FILM = symbol("least film loss", "kg");
  private static final Symbol FILM_SHARE = symbol("film loss as a share", "1");

  static final Formula FILL = new Formula(FILL_LEVEL, MELT_VOLUME.over(CAPACITY));

  static final Formula CAKES = new Formula(CAKE, CUP.times(FILL_LEVEL).times(MELT_DENSITY));

  /** The little that is added holds rounding off: 3 cakes less a billionth are three. */
  static final Formula WHOLE_CAKES =
      new Formula(
          CAKE_COUNT, Expr.call(Function.FLOOR, NET.over(CAKE).plus(Expr.of(Casting.NOTHING))));

  static final Formula PART_CAKES = new Formula(PART_CAKE, partCake());

  private static final Formula WEIGH = new Formula(LINE, LINE_SHARE.times(POT));
  private static final Formula STAYS_BEHIND =
      new Formula(INSOLUBLES, POT.times(new Expr.Total(BEHIND, CONTENT.times(BEHIND))));
  private static final Formula STRAIN = new Formula(STRAINING, STRAINED.times(POT));
  private static final Formula FILM_LOSS =
      new Formula(FILM, Expr.call(Function.MAX, LEAST_FILM, FILM_SHARE.times(POT)));
  private static final Formula NET_MASS =
      new Formula(NET, POT.minus(INSOLUBLES).minus(STRAINING).minus(FILM));

  private BatchWorking() {}

  private static Expr partCake() {
    Expr rest = NET.minus(CAKE_COUNT.times(CAKE));
    return new Expr.Choice(rest, Expr.of(Casting.NOTHING).times(CAKE), rest, Expr.of(0));
  }

  static Explanation.Builder builder(String title, Bilingual name) {
    return Explanation.builder(BatchWorking.class, title, Map.of("name", name));
  }

  static Explanation of(Batch batch) {
    double pot = batch.charge().massKilograms();
    Explanation.Builder text = builder("working.batch", Bilingual.of(batch.recipe().name()));
    weigh(batch, text.given(POT, pot));
    insolubles(batch, text);
    batch.losses().explain(text, STRAINED, LEAST_FILM, FILM_SHARE);
    return text.step(STRAIN, batch.strainingKilograms())
        .step(FILM_LOSS, batch.filmKilograms())
        .step(NET_MASS, batch.net().massKilograms())
        .build();
  }

  private static void weigh(Batch batch, Explanation.Builder text) {
    List<BatchLine> lines = batch.lines();
    List<Bilingual> names =
        Explanation.lines(lines.stream().map(line -> line.ingredient().inWords()).toList());
    double[] shares = batch.recipe().lineShares();
    for (int i = 0; i < shares.length; i++) {
      text.given(LINE_SHARE.of(names.get(i)), shares[i]);
      text.step(WEIGH, names.get(i), lines.get(i).massKilograms());
    }
  }

  private static void insolubles(Batch batch, Explanation.Builder text) {
    Contents contents = batch.recipe().contents();
    if (batch.insolublesKilograms() == 0) {
      text.given(INSOLUBLES, 0);
      return;
    }
    contents.explain(batch.losses(), text, CONTENT, BEHIND);
    text.step(STAYS_BEHIND, Figure.of(INSOLUBLES, batch.insolublesKilograms()));
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(BatchWorking.class, name, unit);
  }
}
