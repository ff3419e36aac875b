// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import static org.meltwright.units.MetricUnits.millilitres;
import static org.meltwright.units.MetricUnits.millimetres;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.plausibility.Remark;
import org.meltwright.core.plausibility.SenseOfSize;
import org.meltwright.core.plausibility.SizeOf;

/**
 * A figure of the file that is unusual, and whose it is. It blocks nothing, and that nothing is
 * unusual says nothing of safety.
 *
 * @param whose what it is a figure of, such as the name of a recipe
 * @param remark what is unusual, and what was probably meant
 */
public record Unusual(String whose, Remark remark) {

  /**
   * Returns what is unusual in a studio and in its class, in the order of the file.
   *
   * @param studio the studio
   * @return the remarks; empty if nothing unusual was found
   */
  public static List<Unusual> in(Studio studio) {
    Finder finder = new Finder();
    studio.shelf().forEach(finder::price);
    studio.jobs().forEach(finder::job);
    Optional.ofNullable(studio.plans().classDay()).ifPresent(finder::classDay);
    return finder.found.stream().distinct().toList();
  }

  private static final class Finder {

    private final SenseOfSize sense = SenseOfSize.standard();
    private final List<Unusual> found = new ArrayList<>();

    private void add(String whose, Optional<Remark> remark) {
      remark.ifPresent(r -> found.add(new Unusual(whose, r)));
    }

    /** A price is held against the other offers only where those are no slips themselves. */
    void price(ShelfItem item) {
      for (UnitPrice price : item.unitPrices()) {
        List<UnitPrice> others = new ArrayList<>(item.unitPrices());
        others.remove(price);
        others.removeIf(other -> sense.ofPrice(item.material(), other).isPresent());
        Optional<Remark> alone = sense.ofPrice(item.material(), price);
        add(
            item.id(),
            alone.isPresent() ? alone : sense.ofPriceBeside(item.material(), price, others));
      }
    }

    void job(Job job) {
      medium(job.recipe());
      job.amount()
          .value()
          .map(Batch::charge)
          .ifPresent(charge -> add(job.recipe().name(), sense.of(SizeOf.BATCH, charge.mass())));
      size(
          job.heating().vessel().name(),
          SizeOf.VESSEL,
          volume(job.heating().vessel().capacityCubicMetres()));
      job.casting()
          .ifPresent(
              cast -> size(cast.mould().name(), SizeOf.CUP, volume(cast.mould().cupCubicMetres())));
    }

    void classDay(ClassDay day) {
      size(day.about().title(), SizeOf.FILM, length(day.panels().film()));
      size(day.about().title(), SizeOf.PANEL_SIDE, length(day.panels().width()));
      size(day.about().title(), SizeOf.PANEL_SIDE, length(day.panels().height()));
      day.paints().forEach(paint -> medium(paint.recipe()));
    }

    /** What goes into other recipes is asked about once, where it is made. */
    private void medium(Recipe recipe) {
      if (recipe.parts().stream().allMatch(part -> part.ingredient().material().isPresent())) {
        add(recipe.name(), sense.ofMedium(recipe.composition()));
      }
    }

    private static Quantity<Volume> volume(double cubicMetres) {
      return millilitres(cubicMetres * 1e6);
    }

    private static Quantity<Length> length(double metres) {
      return millimetres(metres * 1e3);
    }

    private <Q extends Quantity<Q>> void size(String whose, SizeOf<Q> what, Quantity<Q> size) {
      add(whose, sense.of(what, size));
    }
  }
}
