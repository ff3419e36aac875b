// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * Materials with sources, mixtures, batches, heat, cost and planning.
 *
 * <p>Knows no limit of its own and no craft: hot-wax painting, candles, balms and polishes are data
 * and arguments here.
 */
@org.jspecify.annotations.NullMarked
module org.meltwright.core {
  requires transitive org.joda.money;
  requires transitive org.meltwright.units;

  exports org.meltwright.core.batch;
  exports org.meltwright.core.cost;
  exports org.meltwright.core.equipment;
  exports org.meltwright.core.explain;
  exports org.meltwright.core.material;
  exports org.meltwright.core.mixture;
  exports org.meltwright.core.source;
}
