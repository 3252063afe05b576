package org.jawroom.report.survey.count;

import java.util.Arrays;
import java.util.OptionalLong;

/**
 * What a cell must be for its row to be chosen.
 *
 * @param text what the cell is compared with; empty for a blank cell
 * @param length the same in half-nanometres, for a column of lengths; empty for a blank cell
 */
public record Condition(String column, Relation relation, String text, OptionalLong length) {

  /** How a cell relates to the value of the condition. */
  public enum Relation {
    EQUAL("="),
    /** Whatever {@link #EQUAL} does not choose, blank cells among it. */
    OTHER("!="),
    LESS("<"),
    AT_MOST("<="),
    MORE(">"),
    AT_LEAST(">=");

    private final String sign;

    Relation(String sign) {
      this.sign = sign;
    }

    public String sign() {
      return sign;
    }

    /** Whether it needs an order, which blank cells and texts have not. */
    public boolean isOrder() {
      return this != EQUAL && this != OTHER;
    }
  }

  public Condition {
    if (relation.isOrder() && length.isEmpty()) {
      throw new IllegalArgumentException(relation + " compares lengths");
    }
  }

  /** Whether a cell of that length is chosen; equal lengths are at most and at least each other. */
  boolean chooses(long cell) {
    if (length.isEmpty()) {
      return relation == Relation.OTHER;
    }
    int order = Long.compare(cell, length.getAsLong());
    return switch (relation) {
      case EQUAL -> order == 0;
      case OTHER -> order != 0;
      case LESS -> order < 0;
      case AT_MOST -> order <= 0;
      case MORE -> order > 0;
      case AT_LEAST -> order >= 0;
    };
  }

  /** Whether a blank cell of a column of lengths is chosen. */
  boolean choosesBlank() {
    return relation == (length.isEmpty() ? Relation.EQUAL : Relation.OTHER);
  }

  /** As it is written on the command line. */
  public String words() {
    return column + relation.sign + text;
  }

  /** The signs of all relations, for a message. */
  public static String signs() {
    return String.join(" ", Arrays.stream(Relation.values()).map(Relation::sign).toList());
  }
}
