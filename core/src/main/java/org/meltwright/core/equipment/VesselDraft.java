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
 * A {@link Vessel} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * VesselDraft draft =
 *     new VesselDraft("pot", "enamelled-steel", "enamel", "flat", "1.5 l", "600 g");
 * Vessel pot = draft.toVessel(QuantityParser.localeFree());
 * pot.capacityCubicMetres(); // 0.0015 m³
 * pot.toDraft().capacity(); // 1500 ml
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id what the studio calls it
 * @param material what it is made of, a word of {@link VesselMaterial}, such as "stainless-steel"
 * @param lining what its inside is coated with, a word of {@link Lining}
 * @param bottom the shape of its bottom, a word of {@link Vessel.Bottom}
 * @param capacity the volume up to the brim, above zero, such as "1.5 l"
 * @param mass its own mass, such as "600 g"
 */
public record VesselDraft(
    @Nullable String id,
    @Nullable String material,
    @Nullable String lining,
    @Nullable String bottom,
    @Nullable String capacity,
    @Nullable String mass) {

  static VesselDraft of(Vessel vessel) {
    QuantityFormatter exact = QuantityFormatter.exact();
    return new VesselDraft(
        vessel.name(),
        FieldReader.wordOf(vessel.material()),
        FieldReader.wordOf(vessel.lining()),
        FieldReader.wordOf(vessel.bottom()),
        exact.format(QuantityKind.VOLUME, vessel.capacityCubicMetres(), MetricUnits.MILLILITRE),
        exact.format(QuantityKind.MASS, vessel.massKilograms(), MetricUnits.GRAM));
  }

  /**
   * Returns the vessel.
   *
   * @param parser reads the quantities
   * @return the vessel
   * @throws ProblemException if a field is missing or wrong; it carries all problems found, each at
   *     its field
   */
  public Vessel toVessel(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    Optional<String> name = at.value("id", id);
    Optional<VesselMaterial> madeOf = at.word("material", material, VesselMaterial.class);
    Optional<Lining> inside = at.word("lining", lining, Lining.class);
    Optional<Vessel.Bottom> shape = at.word("bottom", bottom, Vessel.Bottom.class);
    Optional<Double> full =
        at.parse("capacity", capacity, (p, t) -> Vessel.checkedCapacity(p.parseVolume(t)));
    Optional<Double> own = at.parse("mass", mass, (p, t) -> Vessel.checkedMass(p.parseMass(t)));
    return at.make(
        () ->
            new Vessel(name.get(), madeOf.get(), inside.get(), shape.get(), full.get(), own.get()));
  }
}
