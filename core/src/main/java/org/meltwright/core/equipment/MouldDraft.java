// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * A {@link Mould} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Mould tin =
 *     new MouldDraft("muffin tin", "steel", 12, "103.5 ml").toMould(QuantityParser.localeFree());
 * tin.cups() * tin.cupCubicMetres() * 1e6; // 1242 ml
 * tin.toDraft().cup(); // 103.5 ml
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id what the studio calls it
 * @param material what it is made of, a word of {@link VesselMaterial}, such as "silicone"
 * @param cups how many cups it has, at least 1
 * @param cup the volume of one cup up to the brim, above zero, such as "103.5 ml"
 */
public record MouldDraft(
    @Nullable String id, @Nullable String material, @Nullable Integer cups, @Nullable String cup) {

  static MouldDraft of(Mould mould) {
    return new MouldDraft(
        mould.name(),
        FieldReader.wordOf(mould.material()),
        mould.cups(),
        QuantityFormatter.exact()
            .format(QuantityKind.VOLUME, mould.cupCubicMetres(), MetricUnits.MILLILITRE));
  }

  /**
   * Returns the mould.
   *
   * @param parser reads the quantity
   * @return the mould
   * @throws ProblemException if a field is missing or wrong; it carries all problems found, each at
   *     its field
   */
  public Mould toMould(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    Optional<String> name = at.value("id", id);
    Optional<VesselMaterial> madeOf = at.word("material", material, VesselMaterial.class);
    Optional<Integer> number = at.read("cups", cups, Mould::checkedCups);
    Optional<Double> volume = at.parse("cup", cup, (p, t) -> Mould.checkedCup(p.parseVolume(t)));
    return at.make(() -> new Mould(name.get(), madeOf.get(), number.get(), volume.get()));
  }
}
