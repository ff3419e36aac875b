// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.drafts;

import java.util.function.BiFunction;
import java.util.function.Function;
import net.jqwik.api.Arbitrary;
import org.meltwright.units.QuantityParser;

/** A written form: its draft, things that are written in it, and the way there and back. */
record Form<T, D extends Record>(
    Class<D> type,
    Arbitrary<T> things,
    Function<T, D> write,
    BiFunction<D, QuantityParser, T> read) {

  T read(D draft) {
    return read.apply(draft, QuantityParser.localeFree());
  }

  /** A thing, written and read again. */
  Object again(Object thing) {
    return read(draft(thing));
  }

  @SuppressWarnings("unchecked") // the things are those of this form
  D draft(Object thing) {
    return write.apply((T) thing);
  }

  Object readAny(Record draft) {
    return read(type.cast(draft));
  }

  @Override
  public String toString() {
    return type.getSimpleName();
  }
}
