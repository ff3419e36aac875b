// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.Set;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.ShareTarget;
import org.meltwright.units.Bilingual;

/** What is to be least. */
sealed interface BlendAim {

  /** The key of its texts. */
  String key();

  /** The figure that is least, or of which the distance is. */
  Figure figure();

  /** What one of it is worth, in words. */
  default Bilingual inWords(double value) {
    return figure().inWords(value);
  }

  /** The least cost of a kilogram. */
  record LeastCost(String currency) implements BlendAim {
    @Override
    public String key() {
      return "cost";
    }

    @Override
    public Figure figure() {
      return new Figures.Cost(currency);
    }
  }

  /** The least change of a recipe. */
  record LeastChange(Composition recipe) implements BlendAim {
    @Override
    public String key() {
      return "change";
    }

    @Override
    public Figure figure() {
      return new Figures.Change(recipe);
    }
  }

  /** The most of some parts. */
  record Most(Set<String> names) implements BlendAim {
    @Override
    public String key() {
      return "most";
    }

    @Override
    public Figure figure() {
      return new Figures.Amount(Figures.Amount.ALL);
    }
  }

  /** The least distance from a share. */
  record Closest(ShareTarget target) implements BlendAim {
    @Override
    public String key() {
      return "closest";
    }

    @Override
    public Figure figure() {
      return new Figures.MassShare(target.what());
    }
  }
}
