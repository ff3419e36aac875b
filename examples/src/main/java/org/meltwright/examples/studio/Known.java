// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

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
final class Known<T> {

  private final @Nullable T value;
  private final @Nullable NotKnown reason;

  static <T> Known<T> of(T value) {
    return new Known<>(value, null);
  }

  static <T> Known<T> not(NotKnown reason) {
    return new Known<>(null, reason);
  }

  /** What was found, or else the reason why it was not. */
  static <T> Known<T> of(Optional<T> value, Supplier<NotKnown> reason) {
    return value.map(Known::of).orElseGet(() -> not(reason.get()));
  }

  private Known(@Nullable T value, @Nullable NotKnown reason) {
    this.value = value;
    this.reason = reason;
  }

  Optional<T> value() {
    return Optional.ofNullable(value);
  }

  /** Why it is not known; empty if it is. */
  Optional<NotKnown> reason() {
    return Optional.ofNullable(reason);
  }

  /** What is worked out from it; not known for the same reason. */
  <R> Known<R> map(Function<T, R> step) {
    return new Known<>(value == null ? null : step.apply(value), reason);
  }

  /** Words for it; "not known" where it is not. */
  String said(Say say, Function<T, String> words) {
    return value().map(words).orElseGet(() -> say.words(NotKnown.WORDS));
  }

  /** Words for it; "not known", and why, where it is not. */
  String saidOrWhy(Say say, Function<T, String> words) {
    return value()
        .map(words)
        .or(() -> reason().map(r -> r.value(say)))
        .orElseGet(() -> say.words(NotKnown.WORDS));
  }
}
