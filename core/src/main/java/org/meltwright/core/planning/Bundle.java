// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Packages for a part of the needs, with what they count towards free carriage. */
final class Bundle {

  private static final int NO_OFFER = -1;

  private final long cost;
  private final long mass;
  private final long[] values;
  private final int offer;
  private final @Nullable Bundle before;
  private final @Nullable Bundle joined;

  static Bundle empty(int suppliers) {
    return new Bundle(0, 0, new long[suppliers], NO_OFFER, null, null);
  }

  private Bundle(
      long cost,
      long mass,
      long[] values,
      int offer,
      @Nullable Bundle before,
      @Nullable Bundle joined) {
    this.cost = cost;
    this.mass = mass;
    this.values = values;
    this.offer = offer;
    this.before = before;
    this.joined = joined;
  }

  /** The sum of their prices. */
  long cost() {
    return cost;
  }

  /** The sum of their masses. */
  long mass() {
    return mass;
  }

  /** What they count for a supplier that asks for a value, at most what it asks. */
  long value(int k) {
    return values[k];
  }

  /** This bundle and one package more, which counts for one supplier or, with -1, for none. */
  Bundle plus(int newOffer, long price, long packageMass, int k, long value, long most) {
    long[] more = values;
    if (k >= 0) {
      more = values.clone();
      more[k] = Math.min(most, more[k] + value);
    }
    return new Bundle(cost + price, mass + packageMass, more, newOffer, this, null);
  }

  /** The packages of both. */
  Bundle join(Bundle other, long[] most) {
    long[] sums = new long[values.length];
    for (int k = 0; k < sums.length; k++) {
      sums[k] = Math.min(most[k], values[k] + other.values[k]);
    }
    return new Bundle(cost + other.cost, mass + other.mass, sums, NO_OFFER, this, other);
  }

  /** Adds the packages to a plan. */
  void addTo(int[] plan) {
    for (Bundle b = this; b != null; b = b.before) {
      if (b.offer != NO_OFFER) {
        plan[b.offer]++;
      }
      if (b.joined != null) {
        b.joined.addTo(plan);
      }
    }
  }

  /** Those that no other beats or equals in cost, then mass, and in every value. */
  static List<Bundle> undominated(List<Bundle> all) {
    if (all.size() < 2) {
      return all;
    }
    all.sort(Comparator.comparingLong(Bundle::cost).thenComparingLong(Bundle::mass));
    return switch (all.get(0).values.length) {
      case 0 -> List.of(all.get(0));
      case 1 -> undominatedInOne(all);
      case 2 -> undominatedInTwo(all);
      default -> undominatedInMany(all);
    };
  }

  private static List<Bundle> undominatedInOne(List<Bundle> sorted) {
    List<Bundle> kept = new ArrayList<>();
    long most = -1;
    for (Bundle candidate : sorted) {
      if (candidate.values[0] > most) {
        kept.add(candidate);
        most = candidate.values[0];
      }
    }
    return kept;
  }

  /** The stairs hold the largest second value for each first value or more. */
  private static List<Bundle> undominatedInTwo(List<Bundle> sorted) {
    List<Bundle> kept = new ArrayList<>();
    TreeMap<Long, Long> stairs = new TreeMap<>();
    for (Bundle candidate : sorted) {
      long first = candidate.values[0];
      long second = candidate.values[1];
      Map.Entry<Long, Long> above = stairs.ceilingEntry(first);
      if (above == null || above.getValue() < second) {
        kept.add(candidate);
        while (true) {
          Map.Entry<Long, Long> below = stairs.floorEntry(first);
          if (below == null || below.getValue() > second) {
            break;
          }
          stairs.remove(below.getKey());
        }
        stairs.put(first, second);
      }
    }
    return kept;
  }

  private static List<Bundle> undominatedInMany(List<Bundle> sorted) {
    List<Bundle> kept = new ArrayList<>();
    for (Bundle candidate : sorted) {
      if (kept.stream().noneMatch(k -> k.hasAllValuesOf(candidate))) {
        kept.add(candidate);
      }
    }
    return kept;
  }

  private boolean hasAllValuesOf(Bundle other) {
    for (int k = 0; k < values.length; k++) {
      if (values[k] < other.values[k]) {
        return false;
      }
    }
    return true;
  }
}
