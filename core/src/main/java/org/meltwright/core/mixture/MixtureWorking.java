// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Formula;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;

/** The formulas of this package, loaded when somebody asks how a number came about. */
final class MixtureWorking {

  private static final Messages WORDS = Messages.beside(MixtureWorking.class);

  static final Symbol SHARE = symbol("share by mass", "1");
  static final Symbol DENSITY = symbol("density", "kg/m³");
  static final Symbol ABSORPTION = symbol("oil absorption in g per 100 g", "");
  static final Symbol OF_OIL = symbol("density of the oil of the test", "kg/m³");
  static final Symbol PIGMENT = symbol("volume of pigment in a kilogram", "m³/kg");
  static final Symbol BINDER = symbol("volume of binder in a kilogram", "m³/kg");
  static final Symbol CONCENTRATION = symbol("pigment volume concentration", "1");

  private static final Symbol VOIDS = symbol("volume of oil that fills the voids", "m³/kg");
  private static final Symbol CRITICAL = symbol("critical concentration", "1");
  private static final Symbol POT = symbol("mass of the pot", "kg").withSign("M");
  private static final Symbol PRESENT = symbol("share in the pot", "1").withSign("p");
  private static final Symbol TARGET = symbol("share that is wanted", "1").withSign("t");
  private static final Symbol IN_ADDITION = symbol("share in the addition", "1").withSign("q");
  private static final Symbol IN_TAKEN = symbol("share in what is taken out", "1").withSign("q");
  private static final Symbol HELD = symbol("mass that may leave", "kg").withSign("h");
  private static final Symbol ADDED = symbol("mass to add", "kg").withSign("a");
  private static final Symbol TAKEN = symbol("mass to take out", "kg").withSign("a");
  private static final Symbol RESULT = symbol("mass afterwards", "kg").withSign("R");
  private static final Symbol COUNTED =
      symbol("volume of it in a kilogram of the pot", "m³/kg").withSign("c");
  private static final Symbol OTHER =
      symbol("volume of the rest in a kilogram of the pot", "m³/kg").withSign("o");
  private static final Symbol COUNTED_ADDED =
      symbol("volume of it in a kilogram of the addition", "m³/kg").withSign("c′");
  private static final Symbol OTHER_ADDED =
      symbol("volume of the rest in a kilogram of the addition", "m³/kg").withSign("o′");
  private static final Symbol WANTED = symbol("share by volume that is wanted", "1").withSign("φ");

  static final Formula PIGMENT_VOLUME = new Formula(PIGMENT, SHARE.over(DENSITY));
  static final Formula BINDER_VOLUME = new Formula(BINDER, SHARE.over(DENSITY));
  static final Formula BY_VOLUME =
      new Formula(CONCENTRATION, sum(PIGMENT).over(sum(PIGMENT).plus(sum(BINDER))));
  static final Formula FILLS =
      new Formula(VOIDS, SHARE.times(ABSORPTION).over(Expr.of(100)).over(OF_OIL));
  static final Formula AT_MOST =
      new Formula(CRITICAL, sum(PIGMENT).over(sum(PIGMENT).plus(sum(VOIDS))));

  private static final Formula ADD =
      new Formula(ADDED, POT.times(PRESENT.minus(TARGET)).over(TARGET.minus(IN_ADDITION)));
  private static final Formula ADD_BY_VOLUME =
      new Formula(
          ADDED,
          POT.times(COUNTED.times(Expr.of(1).minus(WANTED)).minus(OTHER.times(WANTED)))
              .over(
                  OTHER_ADDED.times(WANTED).minus(COUNTED_ADDED.times(Expr.of(1).minus(WANTED)))));
  private static final Formula TAKE_OUT =
      new Formula(
          TAKEN,
          Expr.call(
              Expr.Function.MIN,
              POT.times(PRESENT.minus(TARGET)).over(IN_TAKEN.minus(TARGET)),
              HELD));
  private static final Formula WITH_ONE = new Formula(RESULT, POT.plus(ADDED));
  private static final Formula WITH_ALL = new Formula(RESULT, POT.plus(sum(ADDED)));
  private static final Formula WITHOUT = new Formula(RESULT, POT.minus(TAKEN));

  private MixtureWorking() {}

  private static Expr sum(Symbol each) {
    return new Expr.Total(each, each);
  }

  static Explanation.Builder builder(String title, Map<String, Bilingual> values) {
    return Explanation.builder(MixtureWorking.class, title, values);
  }

  static Explanation of(Correction correction, Aim aim) {
    Explanation.Builder text =
        builder("working.correction", Map.of("what", aim.what()))
            .given(POT, correction.pot().massKilograms());
    if (correction.takenOut().isPresent()) {
      takeOut(correction, aim, text);
    } else if (aim.basis() == Aim.Basis.SEVERAL) {
      several(correction, aim, text);
    } else {
      add(correction, aim, text);
    }
    return text.build();
  }

  private static void add(Correction correction, Aim aim, Explanation.Builder text) {
    double added = correction.addedKilograms();
    Formula formula = aim.basis() == Aim.Basis.MASS ? byMass(aim, text) : byVolume(aim, text);
    if (added == 0) {
      text.given(ADDED, 0).conclusion("working.correction.met", Map.of());
    } else {
      text.step(formula, added)
          .conclusion(
              "working.correction.add",
              Map.of("name", name(correction.additions().get(0).composition())));
    }
    text.step(WITH_ONE, correction.result().massKilograms());
  }

  private static Formula byMass(Aim aim, Explanation.Builder text) {
    text.given(PRESENT, aim.pot().counted())
        .stated(TARGET, aim.wanted())
        .given(IN_ADDITION, aim.other().counted());
    return ADD;
  }

  private static Formula byVolume(Aim aim, Explanation.Builder text) {
    text.stated(WANTED, aim.wanted())
        .given(COUNTED, aim.pot().counted())
        .given(OTHER, aim.pot().other())
        .given(COUNTED_ADDED, aim.other().counted())
        .given(OTHER_ADDED, aim.other().other());
    return ADD_BY_VOLUME;
  }

  private static void takeOut(Correction correction, Aim aim, Explanation.Builder text) {
    Mixture taken = correction.takenOut().orElseThrow();
    text.given(PRESENT, aim.pot().counted())
        .stated(TARGET, aim.wanted())
        .given(IN_TAKEN, aim.other().counted())
        .given(HELD, correction.pot().massKilograms(taken.composition().materials().get(0)));
    if (taken.massKilograms() == 0) {
      text.given(TAKEN, 0).conclusion("working.correction.met", Map.of());
    } else {
      text.step(TAKE_OUT, taken.massKilograms())
          .conclusion("working.correction.take", Map.of("name", name(taken.composition())));
    }
    text.step(WITHOUT, correction.result().massKilograms());
  }

  /** Several shares are a system of equations; that each is met is its check. */
  private static void several(Correction correction, Aim aim, Explanation.Builder text) {
    List<Mixture> additions = correction.additions();
    List<Bilingual> names =
        Explanation.lines(additions.stream().map(a -> name(a.composition())).toList());
    List<Figure> found = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      found.add(Figure.of(ADDED.of(names.get(i)), additions.get(i).massKilograms()));
    }
    text.method(
            new Explanation.Method(
                WORDS.both("working.correction.system", Map.of()), found, reached(correction, aim)))
        .step(WITH_ALL, correction.result().massKilograms());
  }

  private static Bilingual reached(Correction correction, Aim aim) {
    return Bilingual.list(
        aim.targets().stream()
            .map(
                target ->
                    WORDS.both(
                        "working.correction.reached",
                        Map.of(
                            "what",
                            target.what().inWords(),
                            "wanted",
                            percent(target.share().value()),
                            "reached",
                            percent(target.what().valueIn(correction.result().composition())))))
            .toArray(Bilingual[]::new));
  }

  private static Bilingual percent(double share) {
    return Bilingual.of(Figure.of(SHARE, share)::number);
  }

  private static Bilingual name(Composition mix) {
    return Bilingual.of(
        reader ->
            mix.materials().stream().map(m -> m.name(reader)).collect(Collectors.joining(" + ")));
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(MixtureWorking.class, name, unit);
  }
}
