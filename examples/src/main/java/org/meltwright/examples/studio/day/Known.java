// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.meltwright.examples.studio.page.Say;

/**
 * Something worked out, or why it is not known.
 *
 * @param <T> what is worked out
 */
public final class Known<T> {

  private final @Nullable T value;
  private final @Nullable NotKnown reason;

  /**
   * Returns what is known.
   *
   * @param value what it is
   * @param <T> its type
   * @return the answer
   */
  public static <T> Known<T> of(T value) {
    return new Known<>(value, null);
  }

  /**
   * Returns what is not known.
   *
   * @param reason why
   * @param <T> the type it would have
   * @return the answer
   */
  public static <T> Known<T> not(NotKnown reason) {
    return new Known<>(null, reason);
  }

  /**
   * Returns what was found, or else the reason why it was not.
   *
   * @param value what was found
   * @param reason why it was not
   * @param <T> its type
   * @return the answer
   */
  public static <T> Known<T> of(Optional<T> value, Supplier<NotKnown> reason) {
    return value.map(Known::of).orElseGet(() -> not(reason.get()));
  }

  private Known(@Nullable T value, @Nullable NotKnown reason) {
    this.value = value;
    this.reason = reason;
  }

  /**
   * Returns what it is.
   *
   * @return the value; empty if it is not known
   */
  public Optional<T> value() {
    return Optional.ofNullable(value);
  }

  /**
   * Returns why it is not known.
   *
   * @return the reason; empty if it is known
   */
  public Optional<NotKnown> reason() {
    return Optional.ofNullable(reason);
  }

  /**
   * Returns what is worked out from it; not known for the same reason.
   *
   * @param step how it is worked out
   * @param <R> the type of the result
   * @return the answer
   */
  public <R> Known<R> map(Function<T, R> step) {
    return new Known<>(value == null ? null : step.apply(value), reason);
  }

  /**
   * Returns words for it; "not known" where it is not.
   *
   * @param say the language
   * @param words the words for a value
   * @return the words
   */
  public String said(Say say, Function<T, String> words) {
    return value().map(words).orElseGet(() -> say.words(NotKnown.WORDS));
  }

  /**
   * Returns words for it; "not known", and why, where it is not.
   *
   * @param say the language
   * @param words the words for a value
   * @return the words
   */
  public String saidOrWhy(Say say, Function<T, String> words) {
    return value()
        .map(words)
        .or(() -> reason().map(r -> r.value(say)))
        .orElseGet(() -> say.words(NotKnown.WORDS));
  }
}
