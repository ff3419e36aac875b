// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.meltwright.core.source.Source;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;

/** An explanation as lines of text. */
final class ExplanationWriter {

  private static final Messages WORDS = Messages.beside(ExplanationWriter.class);

  private final Explanation explanation;
  private final Locale reader;
  private final Map<Symbol, Figure> known = new HashMap<>();
  private final List<String> lines = new ArrayList<>();

  ExplanationWriter(Explanation explanation, Locale reader) {
    this.explanation = explanation;
    this.reader = reader;
    explanation.figures().forEach(figure -> known.put(figure.symbol(), figure));
    lines.add(explanation.title().in(reader));
  }

  String full() {
    explanation.givens().forEach(this::given);
    explanation.methods().forEach(this::method);
    explanation.steps().forEach(this::step);
    said();
    explanation.sources().forEach(s -> line("source", s.citation()));
    return String.join("\n", lines);
  }

  String brief() {
    explanation.methods().forEach(m -> m.found().forEach(f -> plain(f.text(reader))));
    explanation.steps().forEach(s -> plain(s.result().text(reader)));
    said();
    return String.join("\n", lines);
  }

  private void said() {
    explanation.conclusions().forEach(c -> plain(c.in(reader)));
    explanation.cautions().forEach(c -> line("caution", c.in(reader)));
  }

  private void given(Explanation.Given given) {
    line("given", given.figure().text(reader) + origin(given).map(o -> " (" + o + ")").orElse(""));
    given.working().ifPresent(w -> w.text(reader).lines().forEach(l -> plain("  " + l)));
  }

  private Optional<String> origin(Explanation.Given given) {
    return given.working().isPresent()
        ? Optional.of(word("worked-out"))
        : given.source().map(s -> s.equals(Source.USER) ? word("stated") : s.citation());
  }

  private void method(Explanation.Method method) {
    line("method", method.says().in(reader));
    method.found().forEach(f -> plain("  " + f.text(reader)));
    line("checked", method.check().in(reader));
  }

  private void step(Explanation.Step step) {
    Formula formula = step.formula();
    plain(step.result().symbol().name().in(reader) + " = " + formula.tree().text(reader));
    plain("  = " + numbers(step.line()).write(formula.tree()));
    plain("  = " + step.result().number(reader));
  }

  private ExprWriter numbers(Optional<Bilingual> line) {
    return new ExprWriter(reader, symbol -> number(symbol, line), total -> each(total.over()));
  }

  private List<ExprWriter> each(Symbol over) {
    return explanation.figures().stream()
        .map(Figure::symbol)
        .filter(over::isOneOf)
        .distinct()
        .map(one -> numbers(one.whose()))
        .toList();
  }

  private String number(Symbol symbol, Optional<Bilingual> line) {
    return line.map(symbol::of)
        .map(known::get)
        .or(() -> Optional.ofNullable(known.get(symbol)))
        .orElseThrow(() -> new NoSuchElementException(symbol + " is not known"))
        .number(reader);
  }

  private void line(String key, String text) {
    plain(word(key) + ": " + text);
  }

  private void plain(String text) {
    lines.add("  " + text);
  }

  private String word(String key) {
    return WORDS.text("explanation." + key, reader);
  }
}
