package org.jawroom.report.survey;

import java.util.OptionalLong;

/** A cell of a list, before it has a unit and a form. */
sealed interface SurveyCell {

  /** A text; empty for a blank cell of the report. */
  record Text(String words) implements SurveyCell {

    /** For people, who may take an empty cell for one that was forgotten. */
    String shown() {
      return words.isEmpty() ? "(blank)" : words;
    }
  }

  record Count(long number) implements SurveyCell {}

  /** What {@code part} is of {@code whole}, in percent. */
  record Share(long part, long whole) implements SurveyCell {
    double percent() {
      return whole == 0 ? 0 : 100.0 * part / whole;
    }
  }

  /** A length in half-nanometres, rounded down; empty if there is none. */
  record Margin(OptionalLong length) implements SurveyCell {
    static Margin of(long length) {
      return new Margin(OptionalLong.of(length));
    }
  }
}
