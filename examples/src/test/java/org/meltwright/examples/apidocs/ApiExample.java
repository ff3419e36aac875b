// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One code block of the API docs: preformatted code in a comment, without its stars.
 *
 * @param type the simple name of the file's type
 * @param line where the block starts in its file
 * @param code the code, without the stars of the comment
 */
record ApiExample(String type, int line, String code) {

  private static final Pattern BLOCK =
      Pattern.compile("<pre>\\{@code\\R(.*?)\\R\\s*\\*\\s*\\}</pre>", Pattern.DOTALL);

  private static final Pattern STAR = Pattern.compile("(?m)^\\s*\\* ?");

  private static final Pattern PUBLIC_TYPE =
      Pattern.compile(
          "(?m)^public (?:(?:static|abstract|final|sealed|non-sealed) )*"
              + "(?:class|interface|enum|record|@interface) ");

  /** The examples of one source file, in its order. */
  static List<ApiExample> of(Path file) {
    String text = read(file);
    List<ApiExample> found = new ArrayList<>();
    Matcher block = BLOCK.matcher(text);
    while (block.find()) {
      int line = (int) text.substring(0, block.start()).lines().count();
      found.add(new ApiExample(type(file), line, STAR.matcher(block.group(1)).replaceAll("")));
    }
    return found;
  }

  /** Whether a file declares a public type. */
  static boolean isPublic(Path file) {
    return PUBLIC_TYPE.matcher(read(file)).find();
  }

  static String type(Path file) {
    return file.getFileName().toString().replace(".java", "");
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The name of the class that runs it. */
  String className() {
    return type + "Example" + line;
  }

  @Override
  public String toString() {
    return type + ":" + line;
  }
}
