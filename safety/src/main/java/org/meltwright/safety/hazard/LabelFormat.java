// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static java.util.stream.Collectors.joining;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * How large a label and its writing have to be, by the size of the pack and the day.
 *
 * <p>A tin of 100 ml today; the height of letters is law from 2028 on, unless that day moves again:
 *
 * <pre>{@code
 * LabelFormat tin = LabelFormat.on(LocalDate.of(2026, 11, 30), 0.1);
 * tin.widthMillimetres().orElseThrow(); // 52 mm
 * tin.heightMillimetres().orElseThrow(); // 74 mm
 * tin.letterMillimetres().isEmpty(); // true
 * LabelFormat.on(LocalDate.of(2028, 1, 1), 0.1).letterMillimetres().orElseThrow(); // 1.2 mm
 * LabelFormat.on(LocalDate.of(2026, 11, 30), 0); // throws ProblemException
 * }</pre>
 *
 * <p>The sizes are asked "if possible" by the law; each pictogram covers at least one fifteenth of
 * the least area of the label, and at least 1 cm². Relief for packs of 125 ml and less is not
 * computed here.
 *
 * <p>Immutable and thread-safe.
 *
 * @param widthMillimetres the width that the label has if possible; empty above the table's packs
 * @param heightMillimetres the height that the label has if possible
 * @param pictogramMillimetres the side that each pictogram has if possible
 * @param leastPictogramMillimetres the side below which no pictogram may go
 * @param letterMillimetres the least height of a small x; empty while no law states one
 */
public record LabelFormat(
    OptionalDouble widthMillimetres,
    OptionalDouble heightMillimetres,
    OptionalDouble pictogramMillimetres,
    OptionalDouble leastPictogramMillimetres,
    OptionalDouble letterMillimetres) {

  private static final List<List<String>> ROWS = TextTable.rows("label-format.txt");

  /**
   * Returns the format for a pack.
   *
   * @param day the day on which the pack is handed over
   * @param packLitres the content of the pack in litres, above 0
   * @return the format of that day
   * @throws ProblemException if the content is not above 0
   */
  public static LabelFormat on(LocalDate day, double packLitres) {
    if (!(packLitres > 0 && packLitres < Double.POSITIVE_INFINITY)) {
      throw new ProblemException(
          Problem.of(HazardProblem.PACK, Bilingual.of(packLitres).plus(" l")));
    }
    Optional<List<String>> size = row("size", day, packLitres);
    return new LabelFormat(
        cell(size, 2),
        cell(size, 3),
        cell(size, 4),
        cell(size, 5),
        cell(row("text", day, packLitres), 2));
  }

  /**
   * Returns the sizes in a few words.
   *
   * @return for example "label 52 x 74 mm, pictograms 16 mm, at least 10 mm"
   */
  @Override
  public String toString() {
    String label =
        millimetres("label ", widthMillimetres).replace(" mm", "")
            + millimetres(" x ", heightMillimetres);
    return Stream.of(
            label,
            millimetres("pictograms ", pictogramMillimetres),
            millimetres("at least ", leastPictogramMillimetres),
            millimetres("letters ", letterMillimetres))
        .filter(words -> !words.isEmpty())
        .collect(joining(", "));
  }

  private static String millimetres(String what, OptionalDouble value) {
    return value.isPresent()
        ? what + HazardTexts.shown(value.getAsDouble(), Locale.ENGLISH) + " mm"
        : "";
  }

  private static Optional<List<String>> row(String kind, LocalDate day, double packLitres) {
    return ROWS.stream()
        .filter(r -> r.get(0).equals(kind))
        .filter(r -> packLitres <= Double.parseDouble(r.get(1)))
        .filter(r -> Days.of(r).holdOn(day))
        .findFirst();
  }

  private static OptionalDouble cell(Optional<List<String>> row, int index) {
    return row.map(r -> OptionalDouble.of(Double.parseDouble(r.get(index))))
        .orElse(OptionalDouble.empty());
  }
}
