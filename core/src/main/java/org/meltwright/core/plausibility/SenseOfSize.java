// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.plausibility;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.units.Bilingual;

/**
 * Holds a figure against what is usual, so that a slip of the hand is asked about before the money
 * is spent. What is usual stands in a text file, each line with how it is known; an app may bring
 * its own.
 *
 * <p>For example, a price with its decimal sign lost, and a ratio read the wrong way:
 *
 * <pre>{@code
 * SenseOfSize sense = SenseOfSize.standard();
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Material damar = MaterialCatalogue.standard().require("damar");
 * sense.ofPrice(wax, UnitPrice.parse("1420 EUR/kg")).orElseThrow().meant().orElseThrow();
 * // 14.2 EUR/kg
 * Composition medium = Composition.ofParts(List.of(damar, wax), 7, 1);
 * sense.ofMedium(medium).orElseThrow().meant().orElseThrow();
 * // the ratio the other way round, 12.5 % resin
 * sense.of(SizeOf.FILM, millimetres(0.3)).isEmpty(); // true
 * }</pre>
 *
 * <p>No remark is no promise: it is only that nothing unusual was found. Two are equal if they hold
 * the same to be usual. Immutable and thread-safe.
 */
public final class SenseOfSize {

  static final String RESIN_SHARE = "resin-share";
  static final String PRICE = "price ";
  static final String BESIDE_OTHERS = "price-beside-others";

  private static final String RESOURCE = "usual-sizes.txt";

  private final Map<String, UsualSize> sizes;

  private static final class Standard {
    static final SenseOfSize SENSE = parse(text());

    private static String text() {
      try (InputStream in = SenseOfSize.class.getResourceAsStream(RESOURCE)) {
        return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * Returns the sense of size that comes with the library.
   *
   * @return what is usual in {@code docs/reference/usual-sizes.md}
   */
  public static SenseOfSize standard() {
    return Standard.SENSE;
  }

  /**
   * Reads what is usual from text, in place of what comes with the library.
   *
   * @param text lines of name, from, to, how many times outside without a word, and how it is
   *     known, with "|" between them; a name that has no line is not judged
   * @return the sense of size
   * @throws org.meltwright.units.ProblemException with a problem for each line that cannot be used,
   *     its path "/" and the number of the line
   */
  public static SenseOfSize parse(String text) {
    return new SenseOfSize(UsualSizeReader.read(text));
  }

  private SenseOfSize(Map<String, UsualSize> sizes) {
    this.sizes = sizes;
  }

  /**
   * Holds a size against what is usual.
   *
   * @param <Q> the kind of quantity
   * @param what what it is the size of
   * @param found the size
   * @return the remark; empty if the size is usual, or nobody said what is
   */
  public <Q extends Quantity<Q>> Optional<Remark> of(SizeOf<Q> what, Quantity<Q> found) {
    double si = what.kind().toSi(found);
    return unusual(what.id(), si)
        .map(usual -> Remark.of(what.id(), words(what.id(), Map.of()), si, usual, what::shown))
        .map(remark -> remark.with(Bilingual.of(found), remark.meant()));
  }

  /**
   * Holds a price against what a material of its kind costs.
   *
   * @param material what is bought
   * @param price the price
   * @return the remark; empty if the price is usual or zero, nobody said what is usual, or the
   *     price is not in euro
   */
  public Optional<Remark> ofPrice(Material material, UnitPrice price) {
    if (!price.currency().equals(CurrencyUnit.EUR)) {
      return Optional.empty();
    }
    double found = perKilogram(price);
    return names(material)
        .filter(sizes::containsKey)
        .findFirst()
        .flatMap(name -> unusual(name, found))
        .map(usual -> Remark.of("price", words("price", of(material)), found, usual, money(price)));
  }

  /** The names under which a price may be found, the closest first. */
  private static Stream<String> names(Material material) {
    String id = material.id();
    String family = material.family().name().toLowerCase(Locale.ROOT).replace('_', '-');
    Stream<String> ids = Stream.iterate(id, name -> name.contains("-"), SenseOfSize::shorter);
    return Stream.of(ids, Stream.of(id.replaceFirst("-.*", ""), family))
        .flatMap(name -> name)
        .map(PRICE::concat);
  }

  private static String shorter(String id) {
    return id.substring(0, id.lastIndexOf('-'));
  }

  /**
   * Holds a price against other offers of the same material.
   *
   * @param material what is bought
   * @param price the price
   * @param others the other prices; those in another currency are left out
   * @return the remark, if the price is far from all the others; empty if there is none to compare
   */
  public Optional<Remark> ofPriceBeside(
      Material material, UnitPrice price, List<UnitPrice> others) {
    DoubleSummaryStatistics beside =
        others.stream()
            .filter(other -> other.currency().equals(price.currency()))
            .mapToDouble(SenseOfSize::perKilogram)
            .filter(other -> other > 0)
            .summaryStatistics();
    double found = perKilogram(price);
    return Optional.ofNullable(sizes.get(BESIDE_OTHERS))
        .filter(rule -> beside.getCount() > 0)
        .map(rule -> rule.between(beside.getMin(), beside.getMax()))
        .filter(usual -> usual.isUnusual(found))
        .map(
            usual ->
                Remark.of(
                    BESIDE_OTHERS, words(BESIDE_OTHERS, of(material)), found, usual, money(price)));
  }

  /**
   * Holds the resin of a medium against what is usual. A resin that is the larger part was probably
   * a ratio read the wrong way.
   *
   * @param medium what was made or is to be made
   * @return the remark; empty if the share is usual, or there is no wax or no resin in it
   */
  public Optional<Remark> ofMedium(Composition medium) {
    double resin = medium.share(ShareOf.ofFamily(MaterialFamily.RESIN)).middle().value();
    double wax = medium.share(ShareOf.ofFamily(MaterialFamily.WAX)).middle().value();
    double share = resin / (resin + wax);
    return unusual(RESIN_SHARE, share)
        .filter(usual -> resin > 0 && wax > 0)
        .map(
            usual ->
                Remark.of(
                        RESIN_SHARE,
                        words(RESIN_SHARE, Map.of()),
                        share,
                        usual,
                        SenseOfSize::percent)
                    .with(percent(share), theOtherWay(usual, 1 - share)));
  }

  private static Optional<Bilingual> theOtherWay(UsualSize usual, double turned) {
    return turned >= usual.low() && turned <= usual.high()
        ? Optional.of(Remark.words("meant.other-way", Map.of("share", percent(turned))))
        : Optional.empty();
  }

  private Optional<UsualSize> unusual(String name, double found) {
    return Optional.ofNullable(sizes.get(name)).filter(usual -> usual.isUnusual(found));
  }

  private static double perKilogram(UnitPrice price) {
    return price.perKilogramRounded().getAmount().doubleValue();
  }

  private static DoubleFunction<Bilingual> money(UnitPrice price) {
    String perKilogram = " " + price.currency().getCode() + "/kg";
    return amount -> Bilingual.of(SizeOf.rounded(amount)).plus(perKilogram);
  }

  private static Bilingual percent(double share) {
    return Bilingual.of(SizeOf.rounded(share * 100)).plus(" %");
  }

  private static Bilingual words(String id, Map<String, Bilingual> values) {
    return Remark.words("size." + id, values);
  }

  private static Map<String, Bilingual> of(Material material) {
    return Map.of("material", Bilingual.of(reader -> material.name(reader)));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SenseOfSize that && sizes.equals(that.sizes);
  }

  @Override
  public int hashCode() {
    return sizes.hashCode();
  }

  /**
   * Returns what is judged.
   *
   * @return the number of usual sizes
   */
  @Override
  public String toString() {
    return sizes.size() + " usual sizes";
  }
}
