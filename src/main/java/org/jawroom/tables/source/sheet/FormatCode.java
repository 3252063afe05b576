package org.jawroom.tables.source.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jawroom.tables.source.grid.NumberLook;

/**
 * The code of a number format, scanned once from left to right; see ECMA-376 part 1, 18.8.31.
 *
 * <p>Its sections apply to numbers above, below and at 0, and to text. If sections have conditions
 * of their own, all sections count, so that the conditions need not be evaluated.
 */
final class FormatCode {

  /** The longest code that spreadsheets allow. */
  static final int LONGEST = 255;

  private static final Set<String> COLOURS =
      Set.of("black", "blue", "cyan", "green", "magenta", "red", "white", "yellow");

  private static final String GENERAL = "general";

  /** What one section displays. */
  private static final class Section {
    final StringBuilder letters = new StringBuilder();
    boolean digits;
    boolean zeros;
    boolean text;
    boolean fraction;
    boolean conditional;
    boolean scaled;
    boolean percent;
    boolean date;
    int commas;
  }

  private final String code;
  private final List<Section> sections = new ArrayList<>();
  private Section section = new Section();
  private int at;

  FormatCode(String code) {
    this.code = code;
    if (code.length() > LONGEST) {
      return;
    }
    while (at < code.length()) {
      step(code.charAt(at++));
    }
    endSection();
  }

  /** The display of {@code value}. */
  NumberLook of(double value) {
    if (code.length() > LONGEST) {
      return tooLong();
    }
    if (sections.stream().anyMatch(one -> one.conditional)) {
      return ofAny(value);
    }
    int numeric = (int) sections.stream().limit(3).filter(one -> !isTextOnly(one)).count();
    if (value < 0 && numeric > 1) {
      return look(withoutMinus(sections.get(1)), value, sections.get(1));
    }
    Section used = value == 0 && numeric > 2 ? sections.get(2) : sections.get(0);
    return look(used.letters.toString(), value, used);
  }

  /** The display of a text. */
  NumberLook ofText() {
    if (code.length() > LONGEST) {
      return tooLong();
    }
    return sections.stream()
        .filter(one -> one.text)
        .findFirst()
        .map(one -> new NumberLook(one.letters.toString(), false, ""))
        .orElse(NumberLook.PLAIN);
  }

  private static NumberLook tooLong() {
    return NumberLook.changed("what a code of more than " + LONGEST + " characters says");
  }

  private NumberLook ofAny(double value) {
    if (value < 0 && sections.size() > 1) {
      return NumberLook.changed("it with or without its minus, by conditions,");
    }
    NumberLook last = NumberLook.PLAIN;
    for (Section one : sections) {
      NumberLook look = isTextOnly(one) ? last : look(one.letters.toString(), value, one);
      if (!look.change().isEmpty() || !isNothingOrMillimetres(look)) {
        return look;
      }
      last = look.letters().isEmpty() && !look.fraction() ? last : look;
    }
    return last;
  }

  private static boolean isNothingOrMillimetres(NumberLook look) {
    return look.letters().isEmpty() || look.letters().equalsIgnoreCase("mm");
  }

  private static boolean isTextOnly(Section one) {
    return one.text && !one.digits;
  }

  /** The section below 0 writes the minus itself; without one, the displayed number is positive. */
  private static String withoutMinus(Section below) {
    String letters = below.letters.toString();
    boolean minus = letters.startsWith("-") || letters.startsWith("\u2212");
    return minus ? letters.substring(1) : letters.isEmpty() ? "no minus" : letters;
  }

  private static NumberLook look(String letters, double value, Section one) {
    if (one.date) {
      return NumberLook.changed("a date mixed with a number");
    }
    if (one.percent) {
      return NumberLook.changed("a percentage");
    }
    if (one.scaled) {
      return NumberLook.changed("it divided by 1000");
    }
    if (!one.digits && !one.text) {
      return NumberLook.changed(one.letters.isEmpty() ? "nothing" : "text instead of the number");
    }
    if (value == 0 && !one.zeros && !one.text && !one.fraction) {
      return NumberLook.changed("nothing for 0");
    }
    return new NumberLook(letters, one.fraction, "");
  }

  private void step(char letter) {
    switch (letter) {
      case ';' -> endSection();
      case '"' -> quoted();
      case '\\' -> literal(next());
      case '_' -> next();
      case '*' -> literal(next());
      case '[' -> bracket();
      case '0', '#', '?' -> digit(letter);
      case ',' -> comma();
      case '.' -> scale();
      case '/' -> slash();
      case '%' -> section.percent = true;
      case '@' -> section.text = true;
      default -> other(letter);
    }
  }

  private void endSection() {
    scale();
    sections.add(section);
    section = new Section();
  }

  private char next() {
    return at < code.length() ? code.charAt(at++) : ' ';
  }

  private void literal(char letter) {
    if (!Character.isWhitespace(letter) && !Character.isSpaceChar(letter)) {
      section.letters.append(letter);
    }
  }

  private void quoted() {
    while (at < code.length() && code.charAt(at) != '"') {
      literal(code.charAt(at++));
    }
    at++;
  }

  /** A colour, a condition, a currency with its language; other content is displayed literally. */
  private void bracket() {
    int close = code.indexOf(']', at);
    String inside = code.substring(at, close < 0 ? code.length() : close);
    at += inside.length() + 1;
    String word = inside.toLowerCase(Locale.ROOT);
    if (inside.startsWith("$")) {
      int language = inside.indexOf('-');
      String sign = inside.substring(1, language < 0 ? inside.length() : language);
      sign.chars().forEach(letter -> literal((char) letter));
    } else if (!inside.isEmpty() && "<>=".indexOf(inside.charAt(0)) >= 0) {
      section.conditional = true;
    } else if (!COLOURS.contains(word) && !word.startsWith("color")) {
      section.letters.append('[').append(inside).append(']');
    }
  }

  private void digit(char letter) {
    section.digits = true;
    section.zeros |= letter == '0';
    // A comma between digits separates thousands.
    section.commas = 0;
  }

  private void comma() {
    if (section.digits) {
      section.commas++;
    } else {
      literal(',');
    }
  }

  /** Each comma after the last digit divides by 1000. */
  private void scale() {
    section.scaled |= section.commas > 0;
    section.commas = 0;
  }

  /** A fraction if digits follow; the denominator may be literal. */
  private void slash() {
    boolean digits = at < code.length() && "0123456789#?".indexOf(code.charAt(at)) >= 0;
    if (!section.digits || !digits) {
      literal('/');
      return;
    }
    section.fraction = true;
    while (at < code.length() && "0123456789#?".indexOf(code.charAt(at)) >= 0) {
      at++;
    }
  }

  private void other(char letter) {
    if ((letter == 'G' || letter == 'g')
        && code.regionMatches(true, at - 1, GENERAL, 0, GENERAL.length())) {
      section.digits = true;
      section.zeros = true;
      at += GENERAL.length() - 1;
    } else if ((letter == 'E' || letter == 'e')
        && section.digits
        && at < code.length()
        && "+-".indexOf(code.charAt(at)) >= 0) {
      at++;
    } else {
      section.date |= "ymdhsYMDHS".indexOf(letter) >= 0;
      literal(letter);
    }
  }
}
