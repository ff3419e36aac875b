// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.meltwright.examples.studio.file.StudioProblem.CHECK;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.meltwright.examples.studio.file.StudioProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * The files that a run writes. All are worked out and all places looked at before the first is
 * written: none may be the studio file, or another of them. Not thread-safe.
 */
final class SheetFiles {

  private final Path studio;
  private final Map<Path, String> texts = new LinkedHashMap<>();

  /** Notes the studio file, which is never overwritten. */
  SheetFiles(Path studio) {
    this.studio = studio;
  }

  /** Plans a file. */
  void add(Path place, String text) {
    requireOther(place, studio, "the studio file itself");
    texts.keySet().forEach(other -> requireOther(place, other, "another page"));
    texts.put(place, text);
  }

  private static void requireOther(Path place, Path other, String what) {
    if (whole(place).equals(whole(other)) || isSame(place, other)) {
      throw unwritable(Bilingual.list(Bilingual.of(place.toString()), CHECK.name(what)));
    }
  }

  private static Path whole(Path place) {
    return place.toAbsolutePath().normalize();
  }

  private static boolean isSame(Path place, Path other) {
    try {
      return Files.exists(place) && Files.exists(other) && Files.isSameFile(place, other);
    } catch (IOException e) {
      return false; // the write itself will say that it cannot be reached
    }
  }

  private static ProblemException unwritable(Bilingual found) {
    return new ProblemException(Problem.of(StudioProblem.PAGE_UNWRITABLE, found));
  }

  private static ProblemException unwritable(Path place) {
    return unwritable(Bilingual.of(place.toString()));
  }

  /**
   * Writes all of them.
   *
   * @throws ProblemException if a place cannot be written
   */
  void write() {
    texts.keySet().forEach(SheetFiles::requireWritable);
    texts.forEach(SheetFiles::write);
  }

  private static void requireWritable(Path place) {
    Path folder = whole(place).getParent();
    boolean isWritable = Files.exists(place) ? isFile(place) : folder != null && isFolder(folder);
    if (!isWritable) {
      throw unwritable(place);
    }
  }

  private static boolean isFile(Path place) {
    return !Files.isDirectory(place) && Files.isWritable(place);
  }

  private static boolean isFolder(Path place) {
    return Files.isDirectory(place) && Files.isWritable(place);
  }

  private static void write(Path place, String text) {
    try {
      Files.writeString(place, text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw unwritable(place);
    }
  }

  /** Makes a folder where there is none. */
  static Path folder(Path folder) {
    try {
      return Files.createDirectories(folder);
    } catch (IOException e) {
      throw unwritable(folder);
    }
  }
}
