// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MassFraction;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.VolumeFraction;

/** A question made up by a seed: parts of three contents whose shares are ranges, and wishes. */
final class RandomBlend {

  static final int CONTENTS = 3;

  private static final List<Material> CONTENT =
      List.of(
          Material.builder("first").build(),
          Material.builder("second").build(),
          Material.builder("third").build(),
          Material.builder("rest").build());

  private final Random random;
  final List<BlendPart> parts = new ArrayList<>();
  final List<Wish> wishes = new ArrayList<>();

  /** Low and high end of each content of each part, of its acid value, and of the densities. */
  final double[][][] ranges;

  final double[][] acid;
  final double[][] density = new double[CONTENTS + 1][2];
  private final DensityBasis basis;

  RandomBlend(long seed, int mostParts, int mostWishes) {
    this(new Random(seed * 0x9E3779B97F4A7C15L), mostParts, mostWishes);
  }

  private RandomBlend(Random random, int mostParts, int mostWishes) {
    this(random, 3 + random.nextInt(mostParts - 2), 2 + random.nextInt(mostWishes - 1), true);
  }

  /** A question of just so many parts and wishes. */
  static RandomBlend of(long seed, int parts, int wishes) {
    return new RandomBlend(new Random(seed * 0x9E3779B97F4A7C15L), parts, wishes, false);
  }

  private RandomBlend(Random random, int count, int wished, boolean mayHaveAmounts) {
    this.random = random;
    this.ranges = new double[count][CONTENTS][2];
    this.acid = new double[count][2];
    DensityBasis stated = DensityBasis.SOLID;
    for (int k = 0; k <= CONTENTS; k++) {
      density[k][0] = 800 + random.nextInt(20) * 100;
      density[k][1] = density[k][0] + random.nextInt(3) * 20;
      stated =
          stated.with(
              CONTENT.get(k),
              new QuantityRange<>(QuantityKind.DENSITY, density[k][0], density[k][1]));
    }
    this.basis = stated;
    for (int p = 0; p < count; p++) {
      parts.add(part(p));
    }
    for (int w = 0; w < wished; w++) {
      wishes.add(wish(mayHaveAmounts));
    }
  }

  private BlendPart part(int p) {
    Material.Builder builder = Material.builder("part-" + p);
    double least = 1;
    double most = 1;
    for (int k = 0; k < CONTENTS; k++) {
      boolean isThere = random.nextInt(3) > 0;
      ranges[p][k][0] = isThere ? random.nextInt(25) / 100.0 : 0;
      ranges[p][k][1] = isThere ? ranges[p][k][0] + random.nextInt(8) / 100.0 : 0;
      least -= ranges[p][k][1];
      most -= ranges[p][k][0];
      builder.constituent(CONTENT.get(k), range(ranges[p][k][0], ranges[p][k][1]));
    }
    builder.constituent(CONTENT.get(CONTENTS), range(least, most));
    acid[p][0] = random.nextInt(30);
    acid[p][1] = acid[p][0] + random.nextInt(5);
    builder.figure(
        PropertyKey.ACID_VALUE,
        Sourced.of(
            new NumberRange(acid[p][0], acid[p][1], "mg KOH/g"), Source.USER, Knowledge.READ));
    BlendPart part =
        BlendPart.of(builder.build()).at(UnitPrice.parse(1 + random.nextInt(40) + " EUR/kg"));
    return random.nextInt(3) == 0
        ? part.withStock(QuantityKind.MASS.ofSi((1 + random.nextInt(9)) / 10.0))
        : part;
  }

  private static MassFractionRange range(double low, double high) {
    return new MassFractionRange(MassFraction.of(low), MassFraction.of(Math.max(low, high)));
  }

  static ShareOf content(int k) {
    Material counted = CONTENT.get(k);
    return ShareOf.ofConstituents(counted.id(), new Counted(counted));
  }

  private record Counted(Material counted) implements java.util.function.Predicate<Material> {
    @Override
    public boolean test(Material material) {
      return material.isSameMaterial(counted);
    }
  }

  private Wish wish(boolean mayBeAnAmount) {
    int k = random.nextInt(CONTENTS);
    double at = (2 + random.nextInt(20)) / 100.0;
    return switch (random.nextInt(8)) {
      case 0 -> Wish.share(content(k), range(at, 1));
      case 1, 2 -> Wish.share(content(k), range(0, at));
      case 3 -> Wish.volumeShare(content(k), VolumeFraction.ZERO, VolumeFraction.of(at), basis);
      case 4 -> Wish.ratio(content(k), content((k + 1) % CONTENTS), 0, at * 10);
      case 5 -> Wish.figure(PropertyKey.ACID_VALUE, new NumberRange(0, at * 100, "mg KOH/g"));
      case 6 ->
          mayBeAnAmount
              ? Wish.amount(QuantityKind.MASS.ofSi((1 + random.nextInt(15)) / 10.0))
              : Wish.amountAtMost(QuantityKind.MASS.ofSi((1 + random.nextInt(15)) / 10.0));
      default ->
          Wish.shareOfPart(
              parts.get(random.nextInt(parts.size())).name(), range(at / 2, Math.min(1, 6 * at)));
    };
  }

  BlendQuestion question() {
    return BlendQuestion.of(parts, wishes);
  }

  /** One lot of everything: half of the figures at an end of their range, the others within. */
  Lot lot(Random lots) {
    Lot lot = new Lot();
    for (int p = 0; p < ranges.length; p++) {
      double rest = 1;
      for (int k = 0; k < CONTENTS; k++) {
        lot.content[p][k] = within(lots, ranges[p][k]);
        rest -= lot.content[p][k];
      }
      lot.content[p][CONTENTS] = rest;
      lot.acid[p] = within(lots, acid[p]);
    }
    for (int k = 0; k <= CONTENTS; k++) {
      lot.volume[k] = 1 / within(lots, density[k]);
    }
    return lot;
  }

  private static double within(Random lots, double... range) {
    double way = lots.nextBoolean() ? lots.nextInt(2) : lots.nextDouble();
    return range[0] + way * (range[1] - range[0]);
  }

  /** The figures of one lot, as plain numbers. */
  final class Lot {
    final double[][] content = new double[ranges.length][CONTENTS + 1];
    final double[] acid = new double[ranges.length];
    final double[] volume = new double[CONTENTS + 1];

    /** Whether amounts, in the order of the parts made up, keep a wish. */
    boolean keeps(Wish wish, double... kilograms) {
      Bounded bounded = (Bounded) wish;
      double found = figure(bounded.figure(), kilograms);
      double slack = 1e-7;
      return found >= bounded.low() - slack * Math.max(1, Math.abs(found))
          && found <= bounded.high() + slack * Math.max(1, Math.abs(found));
    }

    private double figure(Figure figure, double... x) {
      if (figure instanceof Figures.MassShare share) {
        return sum(of(share.what()), x) / total(x);
      }
      if (figure instanceof Figures.RatioOf ratio) {
        double under = sum(of(ratio.second()), x);
        double over = sum(of(ratio.first()), x);
        return over == 0 ? 0 : over / under;
      }
      if (figure instanceof Figures.VolumeShare share) {
        int k = of(share.what());
        double all = 0;
        for (int c = 0; c <= CONTENTS; c++) {
          all += sum(c, x) * volume[c];
        }
        return sum(k, x) * volume[k] / all;
      }
      if (figure instanceof Figures.Mean) {
        double sum = 0;
        for (int p = 0; p < x.length; p++) {
          sum += x[p] * acid[p];
        }
        return sum / total(x);
      }
      double sum = 0;
      for (int p = 0; p < x.length; p++) {
        sum += x[p] * figure.over(parts.get(p), Figure.End.MIDDLE);
      }
      return figure.per() == Figure.Per.BLEND ? sum / total(x) : sum;
    }

    private int of(ShareOf what) {
      for (int k = 0; k < CONTENTS; k++) {
        if (CONTENT.get(k).id().equals(what.name())) {
          return k;
        }
      }
      throw new IllegalArgumentException(what.name());
    }

    private double sum(int k, double... x) {
      double sum = 0;
      for (int p = 0; p < x.length; p++) {
        sum += x[p] * content[p][k];
      }
      return sum;
    }

    private static double total(double... x) {
      return java.util.Arrays.stream(x).sum();
    }
  }
}
