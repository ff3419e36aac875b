// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.meltwright.safety.hazard.SheetToken.Kind;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Takes a copied text apart; looks at each character a bounded number of times. */
final class SheetLexer {

  /** No number of a register is longer. */
  private static final int LONGEST_NUMBER = 28;

  /** No code, and no name of letters and digits, is longer. */
  private static final int LONGEST_CODE = 24;

  /** A number of a register whose hyphens came out longer. */
  private static final String LONG_DASHES = "(?<!\\d)(\\d{2,7})[–—-](\\d{2,3})[–—-](\\d)(?!\\d)";

  /** "1.8006-64-2": the number of a place in front of one of a register. */
  private static final String NUMBERED = "(?<![\\d.,-])([1-9])\\.(?=\\d{2,7}-\\d{2,3}-\\d)";

  private static final Pattern SPACED_RANK = Pattern.compile("1 [ABC]([;,:/)|\t\n]?| [H(–-])");

  private static final Pattern REGISTRATION =
      Pattern.compile("\\d\\d-\\d{10}-\\d\\d(-(\\d{4}|[Xx]{4}))?");
  private static final Pattern INDEX = Pattern.compile("\\d{3}-\\d{3}-\\d\\d-[\\dXx]");
  private static final Pattern EC = Pattern.compile("\\d{3}-\\d{3}-\\d");
  private static final Pattern CAS = Pattern.compile("\\d{2,7}-\\d\\d-\\d");

  private static final Pattern HAZARD =
      Pattern.compile("([Hh]\\d{3})(FD|Fd|Df|fd|D|d|F|f|i|I|[A-Za-z]{0,2})");
  private static final Pattern SUPPLEMENT = Pattern.compile("(?i:EUH)\\d{3}A?");
  private static final Pattern PRECAUTION = Pattern.compile("[Pp]\\d{3}");
  private static final Pattern OLD = Pattern.compile("R\\d{1,2}");
  private static final Pattern PICTOGRAM = Pattern.compile("(?i:GHS)0?\\d");
  private static final Pattern ESTIMATE = Pattern.compile("(?i:L[CD])50");
  private static final Set<String> CODE_WORDS = Set.of("h", "euh", "p");

  private final String text;
  private final List<SheetToken> tokens = new ArrayList<>();
  private int at;
  private int line = 1;
  private int lineStart;

  private SheetLexer(String text) {
    this.text = text;
  }

  /** Joins letters with their marks, and makes all spaces and hyphens the plain ones. */
  static String plain(String copied) {
    requireShort(copied);
    return Normalizer.normalize(copied, Normalizer.Form.NFC)
        .replace("\r\n", "\n")
        .replace('\r', '\n')
        .replace('\u00a0', ' ')
        .replace('\u202f', ' ')
        .replace('\u2009', ' ')
        .replace('\u2010', '-')
        .replace('\u2011', '-')
        .replace('\u2212', '-')
        .replace("\u00ad", "")
        .replace("\ufb01", "fi")
        .replace("\ufb02", "fl")
        .replaceAll(NUMBERED, "$1 ")
        .replaceAll(LONG_DASHES, "$1-$2-$3");
  }

  private static void requireShort(String copied) {
    if (copied.length() > CopiedSheet.LONGEST) {
      throw new ProblemException(
          Problem.of(SheetProblem.TOO_LONG, String.valueOf(copied.length()))
              .with("longest", String.valueOf(CopiedSheet.LONGEST))
              .with("line", "1")
              .with("column", "1"));
    }
  }

  /** Returns the tokens of a plain text. */
  static List<SheetToken> tokens(String plain) {
    SheetLexer lexer = new SheetLexer(plain);
    while (lexer.at < plain.length()) {
      lexer.next();
    }
    return List.copyOf(lexer.tokens);
  }

  private void next() {
    char c = text.charAt(at);
    if (c == '\n') {
      add(Kind.NEWLINE, at + 1);
      line++;
      lineStart = at;
    } else if (isDigit(c)) {
      number();
    } else if (Character.isLetter(c) && isStrange(lettersAndDigits())) {
      add(Kind.OTHER, lettersAndDigits());
    } else if (Character.isLetter(c)) {
      word();
    } else if (isSpace(c)) {
      at++;
    } else {
      mark(c);
    }
  }

  /** The digits of other scripts are no numbers here. */
  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Capitals of the Greek script, and one small letter, that cannot be told from Latin ones. */
  private static final String LOOKALIKES = "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧο";

  /** Whether a word holds letters or digits that look like those of a code and are none. */
  private boolean isStrange(int end) {
    return text.substring(at, end).chars().anyMatch(SheetLexer::isOfOtherScript);
  }

  private static boolean isOfOtherScript(int c) {
    if (Character.isDigit(c)) {
      return c > '9';
    }
    Character.UnicodeScript script = Character.UnicodeScript.of(c);
    boolean read =
        script == Character.UnicodeScript.LATIN
            || script == Character.UnicodeScript.GREEK
            || script == Character.UnicodeScript.COMMON;
    boolean fullWidth = c >= '\uff00' && c <= '\uffef';
    return Character.isLetter(c) && (!read || fullWidth || LOOKALIKES.indexOf(c) >= 0);
  }

  /** A tab parts the cells of a table; every other blank only parts words. */
  private static boolean isSpace(char c) {
    return c != '\t'
        && (Character.isWhitespace(c)
            || Character.isISOControl(c)
            || "\u200b¹²³†‡".indexOf(c) >= 0);
  }

  private void add(Kind kind, int end) {
    add(kind, text.substring(at, end), end);
  }

  private void add(Kind kind, String says, int end) {
    tokens.add(new SheetToken(kind, says, at, end, line, at - lineStart + 1));
    at = end;
  }

  // Numbers

  private void number() {
    if (!register()) {
      int end = decimal();
      int letters = letters(end);
      if (isSpacedRank(end)) {
        add(Kind.RANK, "1" + text.charAt(end + 1), end + 2);
      } else if (letters == end + 1 && end == at + 1 && isRank(text.charAt(end))) {
        add(Kind.RANK, text.substring(at, letters).toUpperCase(Locale.ROOT), letters);
      } else {
        add(Kind.NUMBER, end);
      }
    }
  }

  /** "Skin Corr. 1 B", but not "2 C ≥ 10 %". */
  private boolean isSpacedRank(int end) {
    int limit = Math.min(text.length(), end + 3);
    return end == at + 1 && SPACED_RANK.matcher(text.substring(at, limit)).matches();
  }

  private static boolean isRank(char letter) {
    return "ABCDEabcde".indexOf(letter) >= 0;
  }

  private boolean register() {
    int limit = Math.min(text.length(), at + LONGEST_NUMBER);
    int end = at;
    while (end < limit && isRegister(text.charAt(end))) {
      end++;
    }
    boolean cut = end < text.length() && Character.isLetterOrDigit(text.charAt(end));
    String run = text.substring(at, end);
    Kind kind = cut ? null : registerKind(run);
    if (kind != null) {
      add(kind, end);
    }
    return kind != null;
  }

  private static boolean isRegister(char c) {
    return isDigit(c) || c == '-' || c == 'X' || c == 'x';
  }

  private static @org.jspecify.annotations.Nullable Kind registerKind(String run) {
    if (CAS.matcher(run).matches()) {
      return Kind.CAS;
    }
    if (EC.matcher(run).matches()) {
      return Kind.EC;
    }
    if (INDEX.matcher(run).matches()) {
      return Kind.INDEX;
    }
    return REGISTRATION.matcher(run).matches() ? Kind.REGISTRATION : null;
  }

  /** Digits with points or commas between them: more than one is no number, and stays one token. */
  private int decimal() {
    int end = at;
    while (end < text.length() && isDigitOrInner(end)) {
      end++;
    }
    return end;
  }

  private boolean isDigitOrInner(int i) {
    char c = text.charAt(i);
    boolean inner = c == '.' || c == ',';
    return isDigit(c) || (inner && i + 1 < text.length() && isDigit(text.charAt(i + 1)));
  }

  // Words and codes

  private int letters(int from) {
    int end = from;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return end;
  }

  /** Up to where a code can reach. */
  private int lettersAndDigits() {
    int end = at;
    int limit = Math.min(text.length(), at + LONGEST_CODE);
    while (end < limit && Character.isLetterOrDigit(text.charAt(end))) {
      end++;
    }
    return end;
  }

  private void word() {
    int end = spacedCode(lettersAndDigits());
    String says = text.substring(at, end).replaceAll("[ :-]", "");
    Matcher hazard = HAZARD.matcher(says);
    if (hazard.matches()) {
      add(Kind.HAZARD_CODE, "H" + says.substring(1), end);
    } else if (hazard.lookingAt() && says.length() > 6) {
      add(Kind.HAZARD_CODE, "H" + says.substring(1, 4), at + 4);
    } else if (SUPPLEMENT.matcher(says).matches()) {
      add(Kind.SUPPLEMENT_CODE, says.toUpperCase(Locale.ROOT), end);
    } else if (PRECAUTION.matcher(says).matches()) {
      add(Kind.PRECAUTION_CODE, says.toUpperCase(Locale.ROOT), end);
    } else if (OLD.matcher(says).matches()) {
      add(Kind.OLD_PHRASE, end);
    } else if (PICTOGRAM.matcher(says).matches()) {
      add(Kind.PICTOGRAM, end);
    } else {
      add(Kind.WORD, plainWord(end));
    }
  }

  /** "H 317" and "H-317" are a code as well. */
  private int spacedCode(int end) {
    if (!CODE_WORDS.contains(text.substring(at, end).toLowerCase(Locale.ROOT))) {
      return end;
    }
    int digits = end;
    if (digits < text.length() && " -:".indexOf(text.charAt(digits)) >= 0) {
      digits++;
    }
    int last = digits;
    while (last < text.length() && last < digits + 4 && isDigit(text.charAt(last))) {
      last++;
    }
    return last - digits == 3 ? letters(last) : end;
  }

  /** A word ends before its digits, as in "Cat1", but for names such as C10 and LD50. */
  private int plainWord(int end) {
    int letters = letters(at);
    boolean whole = letters - at < 2 || ESTIMATE.matcher(text.substring(at, end)).matches();
    return whole ? Math.max(end, letters) : letters;
  }

  // Marks

  private void mark(char c) {
    switch (c) {
      case '<', '>', '≤', '≥', '⩽', '⩾', '≦', '≧' -> comparison();
      case '=' -> equals();
      case '*' -> run(Kind.STARS);
      case '-', '–', '—' -> dashes();
      case '%' -> add(Kind.PERCENT, at + 1);
      case ',' -> add(Kind.COMMA, at + 1);
      case ':' -> add(Kind.COLON, at + 1);
      case '.', '…' -> run(Kind.DOT);
      case '/' -> add(Kind.SLASH, at + 1);
      case '+' -> add(Kind.PLUS, at + 1);
      case '(', '[', '{' -> add(Kind.OPEN, at + 1);
      case ')', ']', '}' -> add(Kind.CLOSE, at + 1);
      case ';', '|', '\t', '•', '·', '●', '▪', '■', '\uf0b7' -> add(Kind.SEPARATOR, at + 1);
      default -> add(Kind.OTHER, text.offsetByCodePoints(at, 1));
    }
  }

  private void run(Kind kind) {
    char c = text.charAt(at);
    int end = at + 1;
    while (end < text.length() && text.charAt(end) == c) {
      end++;
    }
    add(kind, end);
  }

  private void dashes() {
    int end = at + 1;
    while (end < text.length() && "-–—".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    add(Kind.DASH, end);
  }

  /**
   * Less or greater, with the equals sign that may stand behind it, before it or after a stroke.
   */
  private void comparison() {
    boolean below = "<≤⩽≦".indexOf(text.charAt(at)) >= 0;
    int end = at + 1;
    int sign = end < text.length() && text.charAt(end) == '/' ? end + 1 : end;
    if (sign < text.length() && text.charAt(sign) == ' ') {
      sign++;
    }
    if (sign < text.length() && text.charAt(sign) == '=') {
      end = sign + 1;
    }
    add(below ? Kind.BELOW : Kind.ABOVE, end);
  }

  private void equals() {
    char after = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
    if (after == '<' || after == '>') {
      add(after == '<' ? Kind.BELOW : Kind.ABOVE, at + 2);
    } else {
      add(Kind.EQUALS, at + 1);
    }
  }
}
