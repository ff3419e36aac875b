// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.units.Problems;

/**
 * The day's work, worked out: a sheet for each job, and one for the class.
 *
 * @param studio the studio
 * @param jobs the jobs, in the order of the file
 * @param classSheet the class; null if none is held
 * @param say the language of what is charged and bought
 */
public record Sheet(Studio studio, List<JobSheet> jobs, @Nullable ClassSheet classSheet, Say say) {

  public Sheet {
    jobs = List.copyOf(jobs);
  }

  /**
   * Works out the day.
   *
   * @param studio the studio
   * @param say the language of what is charged and bought
   * @return the sheet
   * @throws org.meltwright.units.ProblemException with all problems, if a figure is missing
   */
  public static Sheet of(Studio studio, Say say) {
    Problems problems = new Problems();
    List<JobSheet> jobs = jobs(studio, problems, say);
    problems.throwIfAny();
    Optional<ClassSheet> classSheet =
        Optional.ofNullable(studio.plans().classDay())
            .flatMap(
                day -> problems.attempt("/classDay", () -> ClassSheet.of(day, studio, jobs, say)));
    problems.throwIfAny();
    return new Sheet(studio, jobs, classSheet.orElse(null), say);
  }

  /** All pots are reviewed first: what is blocked makes nothing for the others. */
  private static List<JobSheet> jobs(Studio studio, Problems problems, Say say) {
    Map<String, PotSheet> pots = new LinkedHashMap<>();
    for (int i = 0; i < studio.jobs().size(); i++) {
      String path = "/today/" + i;
      Job job = studio.jobs().get(i);
      problems.attempt(path, () -> new PotSheet(job, studio)).ifPresent(pot -> pots.put(path, pot));
    }
    Costing costing = new Costing(studio, List.copyOf(pots.values()), say);
    List<JobSheet> jobs = new ArrayList<>();
    pots.forEach(
        (path, pot) ->
            problems.attempt(path, () -> new JobSheet(pot, studio, costing)).ifPresent(jobs::add));
    return jobs;
  }

  /**
   * Returns the answers for the class.
   *
   * @return the answers; empty if no class is held
   */
  public Optional<ClassSheet> forClass() {
    return Optional.ofNullable(classSheet);
  }

  /**
   * Returns whether a job or the class may not be done as planned.
   *
   * @return whether one may not
   */
  public boolean isBlocked() {
    return jobs.stream().anyMatch(JobSheet::isBlocked)
        || forClass().filter(ClassSheet::isBlocked).isPresent();
  }
}
