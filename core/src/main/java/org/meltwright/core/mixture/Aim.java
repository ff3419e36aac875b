// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.List;
import org.meltwright.units.Bilingual;
import org.meltwright.units.VolumeFraction;

/**
 * What a correction was asked for, to tell how it came about.
 *
 * @param basis how many shares were asked for, and by what
 * @param what what the share is of
 * @param wanted the share
 * @param pot what the pot holds of it, and what else
 * @param other what is added or taken out holds of it, and what else
 * @param targets several shares at once
 */
record Aim(
    Basis basis,
    Bilingual what,
    double wanted,
    VolumeSplit pot,
    VolumeSplit other,
    List<ShareTarget> targets) {

  /** By what a share was asked for. */
  enum Basis {
    MASS,
    VOLUME,
    SEVERAL
  }

  private static final VolumeSplit NOTHING = new VolumeSplit(0, 0);

  static Aim byMass(ShareOf what, double wanted, double present, double other) {
    return new Aim(
        Basis.MASS,
        what.inWords(),
        wanted,
        new VolumeSplit(present, 1 - present),
        new VolumeSplit(other, 1 - other),
        List.of());
  }

  static Aim byVolume(ShareOf what, VolumeFraction wanted, VolumeSplit pot, VolumeSplit other) {
    return new Aim(Basis.VOLUME, what.inWords(), wanted.value(), pot, other, List.of());
  }

  static Aim of(List<ShareTarget> targets) {
    Bilingual all =
        Bilingual.list(targets.stream().map(t -> t.what().inWords()).toArray(Bilingual[]::new));
    return new Aim(Basis.SEVERAL, all, 0, NOTHING, NOTHING, List.copyOf(targets));
  }
}
