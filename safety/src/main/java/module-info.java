// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Heating review, exposure arithmetic and hazard classification of studio-made mixtures.
 *
 * <p>A screening aid: local codes, data sheets and licensed practice come first, and what is not
 * known is never called safe.
 *
 * <ol>
 *   <li>{@link org.meltwright.safety.heating} — may this be heated, here, with that?
 *   <li>{@link org.meltwright.safety.hazard} — the hazards of the mixture, and its label.
 *   <li>{@link org.meltwright.safety.naming} — what a name gives away.
 *   <li>{@link org.meltwright.safety.exposure} — air, burns, circuits.
 * </ol>
 */
@org.jspecify.annotations.NullMarked
module org.meltwright.safety {
  requires transitive org.meltwright.core;
  requires org.apache.commons.numbers.gamma;

  exports org.meltwright.safety.exposure;
  exports org.meltwright.safety.hazard;
  exports org.meltwright.safety.heating;
  exports org.meltwright.safety.naming;

  // drafts are read and written by JSON libraries
  opens org.meltwright.safety.heating;

  // the one look-up of texts reads the bundles that stand beside problem codes and rules
  opens org.meltwright.safety.exposure to
      org.meltwright.units;
  opens org.meltwright.safety.hazard to
      org.meltwright.units;
  opens org.meltwright.safety.heating.rule to
      org.meltwright.units;
  opens org.meltwright.safety.naming to
      org.meltwright.units;
}
