// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One of the programmes of {@code programmes.txt}, whose head explains the form. */
final class PublishedProgramme {

  final String name;
  final double published;
  final double tolerance;
  private final double sign;
  private final Map<String, double[]> rows = new LinkedHashMap<>();
  private final List<String[]> columns = new ArrayList<>();

  private PublishedProgramme(String line) {
    String[] parts = line.substring("programme ".length()).split(" \\| ", -1);
    String[] within = parts[3].split(" ", -1);
    this.name = parts[0];
    this.sign = parts[1].equals("greatest") ? -1 : 1;
    this.published = Double.parseDouble(parts[2]);
    this.tolerance =
        Double.parseDouble(within[0]) * (within[1].equals("rel") ? Math.abs(published) : 1);
  }

  static List<PublishedProgramme> all() {
    List<PublishedProgramme> all = new ArrayList<>();
    for (String line : lines()) {
      String[] words = line.split(" ", -1);
      if (line.startsWith("programme ")) {
        all.add(new PublishedProgramme(line));
      } else if (line.startsWith("row ")) {
        last(all).rows.put(words[1], new double[] {bound(words[2], -1), bound(words[3], 1)});
      } else if (line.startsWith("column ")) {
        last(all).columns.add(words);
      }
    }
    return all;
  }

  private static PublishedProgramme last(List<PublishedProgramme> all) {
    return all.get(all.size() - 1);
  }

  private static List<String> lines() {
    try (var file = PublishedProgramme.class.getResourceAsStream("programmes.txt")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double bound(String word, int sign) {
    return word.equals("-") ? sign * Double.POSITIVE_INFINITY : Double.parseDouble(word);
  }

  LinearProgram programme() {
    double[] cost = columns.stream().mapToDouble(c -> sign * Double.parseDouble(c[2])).toArray();
    LinearProgram programme = LinearProgram.minimising(cost);
    Map<String, double[]> factors = new HashMap<>();
    rows.keySet().forEach(row -> factors.put(row, new double[cost.length]));
    for (int c = 0; c < cost.length; c++) {
      String[] words = columns.get(c);
      programme.column(c, bound(words[3], -1), bound(words[4], 1));
      for (int w = 5; w < words.length; w++) {
        String[] factor = words[w].split("=", -1);
        factors.get(factor[0])[c] = Double.parseDouble(factor[1]);
      }
    }
    rows.forEach((row, bounds) -> programme.row(bounds[0], bounds[1], factors.get(row)));
    return programme;
  }

  double value(LinearAnswer answer) {
    return sign * answer.objective();
  }

  @Override
  public String toString() {
    return name;
  }
}
