// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Materials with sources, mixtures, batches, heat, cost and planning.
 *
 * <p>Knows no limit of its own and no craft: hot-wax painting, candles, balms and polishes are data
 * and arguments here.
 *
 * <ol>
 *   <li>{@link org.meltwright.core.source}, {@link org.meltwright.core.explain} — where a figure
 *       comes from, and how a result came about.
 *   <li>{@link org.meltwright.core.material}, {@link org.meltwright.core.mixture} — what things
 *       are, and what is in the pot.
 *   <li>{@link org.meltwright.core.equipment}, {@link org.meltwright.core.batch} — what stands in
 *       the studio; what to weigh and to cast.
 *   <li>{@link org.meltwright.core.thermal} — how hot ({@code melting}), how long ({@code heat}),
 *       how soon it sets ({@code setting}), how often to stir ({@code settling}).
 *   <li>{@link org.meltwright.core.measurement} — figures of one's own, and how sure they are.
 *   <li>{@link org.meltwright.core.cost}, {@link org.meltwright.core.planning} — what it costs, and
 *       what to buy.
 *   <li>{@link org.meltwright.core.plausibility} — whether a hand slipped.
 * </ol>
 */
@org.jspecify.annotations.NullMarked
module org.meltwright.core {
  requires transitive org.joda.money;
  requires transitive org.meltwright.units;
  requires org.apache.commons.numbers.gamma;

  exports org.meltwright.core.batch;
  exports org.meltwright.core.cost;
  exports org.meltwright.core.equipment;
  exports org.meltwright.core.explain;
  exports org.meltwright.core.material;
  exports org.meltwright.core.measurement;
  exports org.meltwright.core.mixture;
  exports org.meltwright.core.planning;
  exports org.meltwright.core.planning.blend;
  exports org.meltwright.core.plausibility;
  exports org.meltwright.core.source;
  exports org.meltwright.core.thermal;
  exports org.meltwright.core.thermal.heat;
  exports org.meltwright.core.thermal.melting;
  exports org.meltwright.core.thermal.setting;
  exports org.meltwright.core.thermal.settling;

  // drafts are read and written by JSON libraries
  opens org.meltwright.core.batch;
  opens org.meltwright.core.cost;
  opens org.meltwright.core.equipment;
  opens org.meltwright.core.mixture;
  opens org.meltwright.core.planning;

  // the one look-up of texts reads the bundles that stand beside the problem codes
  opens org.meltwright.core.explain to
      org.meltwright.units;
  opens org.meltwright.core.material to
      org.meltwright.units;
  opens org.meltwright.core.measurement to
      org.meltwright.units;
  opens org.meltwright.core.planning.blend to
      org.meltwright.units;
  opens org.meltwright.core.plausibility to
      org.meltwright.units;
  opens org.meltwright.core.source to
      org.meltwright.units;
  opens org.meltwright.core.thermal to
      org.meltwright.units;
  opens org.meltwright.core.thermal.heat to
      org.meltwright.units;
  opens org.meltwright.core.thermal.melting to
      org.meltwright.units;
  opens org.meltwright.core.thermal.setting to
      org.meltwright.units;
}
