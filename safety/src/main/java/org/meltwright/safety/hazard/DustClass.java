// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * How carefully a dry pigment is handled as powder, strictest first.
 *
 * <p>The strictest of the pigments of a studio decides which mask hangs at the balance:
 *
 * <pre>{@code
 * DustClass strictest =
 *     List.of("ultramarine", "zinc-white", "cobalt-blue").stream()
 *         .map(id -> PigmentHazards.byId(id).orElseThrow().dust())
 *         .min(Comparator.naturalOrder())
 *         .orElseThrow(); // TOXIC_METAL
 * strictest.id(); // toxic-metal
 * }</pre>
 */
public enum DustClass {
  /** Not to be handled as powder in a studio. */
  REFUSE_POWDER("refuse-powder"),
  /** Holds a metal to be treated as toxic. */
  TOXIC_METAL("toxic-metal"),
  /** Harmful dust without such a metal. */
  HARMFUL("harmful"),
  /** A fine powder, as all dry pigments are. */
  FINE("fine");

  private final String id;

  DustClass(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return for example {@code toxic-metal}
   */
  public String id() {
    return id;
  }
}
