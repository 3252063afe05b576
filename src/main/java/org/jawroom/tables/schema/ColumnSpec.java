package org.jawroom.tables.schema;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jawroom.tables.cell.CellText;

/**
 * One column of a table, or one setting.
 *
 * @param name as the header is written, words joined by {@code _}
 * @param noneAllowed whether {@code none} is allowed: the thing is absent
 * @param words the words allowed, for {@link CellKind#WORD}; else empty
 * @param standard the literal text that a blank stands for, if any
 * @param blankMeans for people: what a blank stands for; empty for a required column
 * @param everyone whether it is one of the few columns that everyone needs
 * @param help for people: what to measure, how, and what it is mistaken for
 */
public record ColumnSpec(
    String name,
    CellKind kind,
    Need need,
    boolean noneAllowed,
    List<String> words,
    Optional<String> standard,
    String blankMeans,
    boolean everyone,
    String help) {

  /** How a length known within bounds is written, one example of each form. */
  public static final List<String> RANGES =
      List.of("50..60", "at most 60", "at least 50", "60 ± 2");

  private static final Pattern JOINT = Pattern.compile("[\\s\\p{Zs}_-]+");

  public ColumnSpec {
    words = List.copyOf(words);
    if (help.isBlank()) {
      throw new IllegalArgumentException("column " + name + " has no help");
    }
  }

  static ColumnSpec required(String name, CellKind kind, String help) {
    return new ColumnSpec(
        name, kind, Need.REQUIRED, false, List.of(), Optional.empty(), "", true, help);
  }

  static ColumnSpec unknown(String name, CellKind kind, String help) {
    return new ColumnSpec(
        name,
        kind,
        Need.UNKNOWN_IF_BLANK,
        false,
        List.of(),
        Optional.empty(),
        "unknown",
        true,
        help);
  }

  /** A blank stands for {@code standard}, literally. */
  static ColumnSpec standard(String name, CellKind kind, String standard, String help) {
    return new ColumnSpec(
        name, kind, Need.OPTIONAL, false, List.of(), Optional.of(standard), standard, false, help);
  }

  /** A blank has a meaning that no text in the cell could express. */
  static ColumnSpec optional(String name, CellKind kind, String blankMeans, String help) {
    return new ColumnSpec(
        name, kind, Need.OPTIONAL, false, List.of(), Optional.empty(), blankMeans, false, help);
  }

  /** One of {@code words}, the first by default. */
  static ColumnSpec word(String name, List<String> words, String help) {
    return standard(name, CellKind.WORD, words.get(0), help).outOf(words);
  }

  /** A {@code when} column: {@code always} by default. */
  static ColumnSpec when(String help) {
    return standard("when", CellKind.WORD, "always", help)
        .outOf(List.of("cutting", "loading", "always"));
  }

  /**
   * Whether its length may be known within bounds only. The bolts go by the slot's width, and a
   * base that is known over all leaves its ends open by itself.
   */
  public boolean takesRanges() {
    return need == Need.UNKNOWN_IF_BLANK
        && kind.isLength()
        && !name.equals("slot_width")
        && !name.equals("base_length");
  }

  ColumnSpec outOf(List<String> allowed) {
    return new ColumnSpec(
        name, kind, need, noneAllowed, allowed, standard, blankMeans, everyone, help);
  }

  ColumnSpec orNone() {
    return new ColumnSpec(name, kind, need, true, words, standard, blankMeans, everyone, help);
  }

  ColumnSpec forEveryone() {
    return new ColumnSpec(name, kind, need, noneAllowed, words, standard, blankMeans, true, help);
  }

  ColumnSpec notForEveryone() {
    return new ColumnSpec(name, kind, need, noneAllowed, words, standard, blankMeans, false, help);
  }

  public boolean isRequired() {
    return need == Need.REQUIRED;
  }

  /**
   * The normal form in which headers and table names are compared: case and word separators do not
   * count.
   */
  public static String normal(String header) {
    return JOINT.matcher(CellText.trimmed(header).toLowerCase(Locale.ROOT)).replaceAll("_");
  }
}
