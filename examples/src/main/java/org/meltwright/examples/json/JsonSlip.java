// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;

/**
 * Why a text is not JSON, in the words of who typed it: a comment, a curly quotation mark, a comma
 * too many.
 */
final class JsonSlip {

  private static final String CURLY =
      "\u201c\u201d\u201e\u201f\u00ab\u00bb\u2018\u2019\u201a\u201b";
  private static final Pattern WORD = Pattern.compile("[\\p{L}_$][\\p{L}\\p{N}_.$-]*");

  /** A word that was read to its end, and is none of those that JSON has. */
  private static final Pattern WORD_BEFORE =
      Pattern.compile("[:\\[,]\\s*(?!true\\b|false\\b|null\\b)(-?" + WORD + ")\\s*$");

  private final String text;
  private final int line;
  private final int column;
  private final int place;

  private JsonSlip(String text, int place) {
    this.text = text;
    this.place = place;
    this.line = lineOf(text, place);
    this.column = place - text.lastIndexOf('\n', place - 1);
  }

  /** Tells why a text could not be read past a place: a line and a byte of it, both from one. */
  static Problem at(byte[] bytes, int line, int column) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    if (text.isBlank()) {
      return Problem.of(JsonProblem.EMPTY, "");
    }
    return isUtf8(bytes)
        ? new JsonSlip(text, place(text, charactersBefore(bytes, line, column))).problem()
        : broken(text);
  }

  /** Tells that more stands at a place where the text should have ended. */
  static Problem after(byte[] bytes, int line, int column) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    int place = charactersBefore(bytes, line, column);
    return new JsonSlip(text, place).told(JsonProblem.SYNTAX, text.substring(place).strip());
  }

  private static Problem broken(String text) {
    int line = lineOf(text, text.indexOf('\ufffd'));
    String written = text.lines().skip(line - 1L).findFirst().orElse("");
    return placed(Problem.of(JsonProblem.ENCODING, RecordShape.shown(written.strip())), line, 1);
  }

  private static int charactersBefore(byte[] bytes, int line, int column) {
    int start = 0;
    for (int left = line - 1; left > 0 && start < bytes.length; start++) {
      left -= bytes[start] == '\n' ? 1 : 0;
    }
    int end = Math.min(start + Math.max(1, column) - 1, bytes.length);
    return new String(bytes, 0, end, StandardCharsets.UTF_8).length();
  }

  /** What reads the text stops behind a sign of several bytes. */
  private static int place(String text, int read) {
    return read > 0 && CURLY.indexOf(text.charAt(read - 1)) >= 0 ? read - 1 : read;
  }

  private static int lineOf(String text, int place) {
    return (int) text.substring(0, place).chars().filter(c -> c == '\n').count() + 1;
  }

  private static boolean isUtf8(byte[] bytes) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  private Problem problem() {
    String rest = text.substring(place);
    if (rest.isBlank()) {
      return told(JsonProblem.ENDS_EARLY, lastWords());
    }
    Matcher word = WORD_BEFORE.matcher(text.substring(0, place));
    if (word.find()) {
      return told(JsonProblem.BARE_WORD, word.group(1));
    }
    char found = rest.charAt(0);
    if (found == '/' || found == '#') {
      return told(JsonProblem.COMMENT, rest.lines().findFirst().orElse(""));
    } else if (found == '\'' || CURLY.indexOf(found) >= 0) {
      return told(JsonProblem.QUOTATION_MARKS, Character.toString(found));
    } else if (found == '"' || found == '{' || found == '[') {
      return told(JsonProblem.COMMA_MISSING, rest.lines().findFirst().orElse(""));
    } else if (found == ',' || ((found == '}' || found == ']') && before() == ',')) {
      return told(JsonProblem.COMMA_TOO_MANY, lastWords() + found);
    }
    return word();
  }

  /** A word that stands without quotation marks, or else the sign that does not belong here. */
  private Problem word() {
    Matcher word = WORD.matcher(text).region(place, text.length());
    return word.lookingAt()
        ? told(JsonProblem.BARE_WORD, word.group())
        : told(JsonProblem.SYNTAX, text.substring(place, text.offsetByCodePoints(place, 1)));
  }

  private char before() {
    String until = text.substring(0, place).stripTrailing();
    return until.isEmpty() ? ' ' : until.charAt(until.length() - 1);
  }

  private String lastWords() {
    String until = text.substring(0, place).stripTrailing();
    String last = until.substring(until.lastIndexOf('\n') + 1);
    return last.strip();
  }

  private Problem told(JsonProblem code, String found) {
    return placed(Problem.of(code, Bilingual.of(RecordShape.shown(found))), line, column);
  }

  private static Problem placed(Problem problem, int line, int column) {
    return problem.with("line", Integer.toString(line)).with("column", Integer.toString(column));
  }
}
