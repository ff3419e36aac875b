// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is brushed on which panel, as it was written.
 *
 * @param recipe the id of the recipe that is brushed
 * @param melts the temperatures of the melt to compare
 * @param panel what the panel is made of
 * @param thickness how thick the panel is
 * @param ground what lies on it, if anything
 * @param stroke how thick a stroke is, a range
 * @param air the temperature of the room
 * @param panels the temperatures of the panel to compare
 */
public record BrushingDraft(
    @Nullable String recipe,
    @Nullable List<@Nullable String> melts,
    @Nullable String panel,
    @Nullable String thickness,
    @Nullable GroundDraft ground,
    @Nullable String stroke,
    @Nullable String air,
    @Nullable List<@Nullable String> panels) {

  /**
   * A ground on a panel, such as gesso on wood.
   *
   * @param of what it is made of
   * @param thickness how thick it is
   */
  public record GroundDraft(@Nullable String of, @Nullable String thickness) {}
}
