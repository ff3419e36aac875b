// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.source;

import static org.meltwright.core.source.Source.CHECK;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A value together with where it comes from, how it is known, and whether a rule may use it.
 *
 * <p>For example, a figure that was measured, and the same with a doubt about it:
 *
 * <pre>{@code
 * Sourced<TemperaturePoint> flash =
 *     Sourced.of(ofCelsius(254), Source.USER, Knowledge.RESTATED)
 *         .withNote("by telephone; the method was not named");
 * flash.value(); // 254.0 °C
 * flash.isUsableForRules(); // true
 * flash.barredFromRules("a lower value is in print").isUsableForRules(); // false
 * }</pre>
 *
 * <p>Two are equal if value, source, knowledge, note and both reasons are. Immutable and
 * thread-safe if its value is.
 *
 * @param <V> the type of the value
 */
public final class Sourced<V> {

  private final V value;
  private final Source source;
  private final Knowledge knowledge;
  private final @Nullable String note;
  private final @Nullable String preferredBecause;
  private final @Nullable String barredBecause;

  /**
   * Returns a value with its source, usable for rules.
   *
   * @param <V> the type of the value
   * @param value the value
   * @param source where it comes from
   * @param knowledge how it came to us
   * @return the sourced value
   */
  public static <V> Sourced<V> of(V value, Source source, Knowledge knowledge) {
    return new Sourced<>(value, source, knowledge, null, null, null);
  }

  private Sourced(
      V value,
      Source source,
      Knowledge knowledge,
      @Nullable String note,
      @Nullable String preferredBecause,
      @Nullable String barredBecause) {
    this.value = value;
    this.source = source;
    this.knowledge = knowledge;
    this.note = note;
    this.preferredBecause = preferredBecause;
    this.barredBecause = barredBecause;
  }

  /** {@return the value} */
  public V value() {
    return value;
  }

  /**
   * Returns where the value comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Returns how the value came to us.
   *
   * @return the second axis of evidence; the first is {@link Source#kind()}
   */
  public Knowledge knowledge() {
    return knowledge;
  }

  /**
   * Returns what else a reader should know.
   *
   * @return a sentence; empty if there is no more to know
   */
  public Optional<String> note() {
    return Optional.ofNullable(note);
  }

  /**
   * Returns why this figure stands before others of the same property.
   *
   * @return the reason; empty if it does not stand first or has no rival
   */
  public Optional<String> preferredBecause() {
    return Optional.ofNullable(preferredBecause);
  }

  /**
   * Tells whether a rule may use the value.
   *
   * @return whether nothing bars it
   */
  public boolean isUsableForRules() {
    return barredBecause == null;
  }

  /**
   * Returns why no rule may use the value.
   *
   * @return the reason; empty if a rule may use it
   */
  public Optional<String> barredBecause() {
    return Optional.ofNullable(barredBecause);
  }

  /**
   * Returns a copy with a note.
   *
   * @param text what else a reader should know
   * @return the new sourced value
   */
  public Sourced<V> withNote(String text) {
    return new Sourced<>(value, source, knowledge, text, preferredBecause, barredBecause);
  }

  /**
   * Returns a copy that no rule may use.
   *
   * @param reason why not
   * @return the new sourced value
   * @throws org.meltwright.units.ProblemException if the reason is blank
   */
  public Sourced<V> barredFromRules(String reason) {
    CHECK.named(reason, "why no rule may use it");
    return new Sourced<>(value, source, knowledge, note, preferredBecause, reason);
  }

  /**
   * Returns a copy that says why it stands before others.
   *
   * @param reason why it is preferred
   * @return the new sourced value
   */
  public Sourced<V> preferred(String reason) {
    return new Sourced<>(value, source, knowledge, note, reason, barredBecause);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Sourced<?> that
        && value.equals(that.value)
        && source.equals(that.source)
        && knowledge == that.knowledge
        && Objects.equals(note, that.note)
        && Objects.equals(preferredBecause, that.preferredBecause)
        && Objects.equals(barredBecause, that.barredBecause);
  }

  @Override
  public int hashCode() {
    return value.hashCode() * 31 + source.id().hashCode();
  }

  @Override
  public String toString() {
    return value + " [" + source.citation() + "; " + knowledge + "]";
  }
}
