package org.jawroom.report.form;

/**
 * One reading that a form asks for.
 *
 * @param column the column of the table that takes it
 * @param question what to measure, and what not
 * @param noneAllowed whether the thing may be absent, which is written {@code none}
 * @param mustBeFilled whether its row cannot be read without it
 */
public record FormReading(
    String column, String question, boolean noneAllowed, boolean mustBeFilled) {

  /** The tick beside every reading that was left out on purpose; its cell stays blank. */
  static final String NOT_MEASURED = "not measured";

  /** Instead of that tick. */
  static final String MUST_BE_FILLED = "must be filled";
}
