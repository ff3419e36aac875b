// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.io.IOException;
import java.io.InputStream;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.examples.json.DraftReader;
import org.meltwright.examples.json.DraftReader.Reading;
import org.meltwright.examples.studio.day.Studio;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;

/** Reads a studio file: text, tree, draft, checked draft, studio; all problems at once. */
public final class StudioFile {

  private StudioFile() {}

  /**
   * Reads a studio.
   *
   * @param in the file, JSON in UTF-8
   * @return the studio
   * @throws ProblemException with all problems, if there is one
   * @throws IOException if the file cannot be read
   */
  public static Studio read(InputStream in) throws IOException {
    return read(in, MaterialCatalogue.standard());
  }

  /**
   * Reads a studio whose materials are those of another catalogue.
   *
   * @param in the text, JSON in UTF-8
   * @param catalogue the materials that it may name
   * @return the studio
   * @throws ProblemException with all problems, if there is one
   * @throws IOException if the file cannot be read
   */
  public static Studio read(InputStream in, MaterialCatalogue catalogue) throws IOException {
    Reading<StudioDraft> reading = DraftReader.of(StudioDraft.class).read(in);
    Problems problems = new Problems();
    problems.addAll(reading.problems());
    return new StudioBinder(reading.draft(), catalogue, problems).bind();
  }
}
