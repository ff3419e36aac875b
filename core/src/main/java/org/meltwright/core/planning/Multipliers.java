// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

/**
 * One choice of multipliers, and what it bounds: every package of a supplier that must reach a
 * value counts its price less the multiplier times what it counts towards that value, and the value
 * itself is paid for with the multiplier.
 *
 * <p>Multipliers are whole thousandths and all sums are scaled by a thousand, so they stay exact.
 */
final class Multipliers {

  static final int SCALE = 1000;

  private final int[] suppliers;
  private final long[] asked;
  private final int[] thousandths;
  private final long[] lowered;
  private final long[] perMaterial;
  private final long[] fromMaterial;

  /**
   * Keeps a solved choice.
   *
   * @param suppliers the suppliers that ask for a value
   * @param asked what each of them asks
   * @param thousandths the multiplier of each
   * @param lowered the lowered price of each offer, scaled
   * @param perMaterial the least sum of lowered prices that covers each material
   */
  Multipliers(
      int[] suppliers, long[] asked, int[] thousandths, long[] lowered, long[] perMaterial) {
    this.suppliers = suppliers;
    this.asked = asked;
    this.thousandths = thousandths;
    this.lowered = lowered;
    this.perMaterial = perMaterial;
    this.fromMaterial = new long[perMaterial.length + 1];
    for (int i = perMaterial.length - 1; i >= 0; i--) {
      fromMaterial[i] = fromMaterial[i + 1] + perMaterial[i];
    }
  }

  long[] lowered() {
    return lowered;
  }

  /** What all materials together cost at least, scaled. */
  long bound() {
    long sum = fromMaterial[0];
    for (int k = 0; k < suppliers.length; k++) {
      sum += thousandths[k] * asked[k];
    }
    return sum;
  }

  /** What the materials other than one cost at least at lowered prices. */
  long withoutMaterial(int i) {
    return fromMaterial[0] - perMaterial[i];
  }

  /** What a material and those after it cost at least at lowered prices. */
  long fromMaterial(int i) {
    return fromMaterial[i];
  }

  /** What a bundle comes to when the values it still lacks are paid for, scaled. */
  long of(Bundle bundle) {
    long sum = SCALE * bundle.cost();
    for (int k = 0; k < suppliers.length; k++) {
      sum += thousandths[k] * (asked[k] - bundle.value(k));
    }
    return sum;
  }
}
