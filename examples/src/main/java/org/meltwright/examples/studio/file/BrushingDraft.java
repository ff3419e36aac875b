// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
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
    @NotBlank @Nullable String recipe,
    @NotEmpty @Nullable List<@NotBlank String> melts,
    @NotBlank @Nullable String panel,
    @NotBlank @Nullable String thickness,
    @Valid @Nullable GroundDraft ground,
    @NotBlank @Nullable String stroke,
    @NotBlank @Nullable String air,
    @NotEmpty @Nullable List<@NotBlank String> panels) {

  /**
   * A ground on a panel, such as gesso on wood.
   *
   * @param of what it is made of
   * @param thickness how thick it is
   */
  public record GroundDraft(@NotBlank @Nullable String of, @NotBlank @Nullable String thickness) {}
}
