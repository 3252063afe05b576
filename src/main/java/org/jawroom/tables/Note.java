package org.jawroom.tables;

import java.util.OptionalInt;
import org.jawroom.tables.source.Fault;

/**
 * Something people should know about how the inputs were read, that is no fault.
 *
 * @param origin the file, sheet or option
 * @param row as people see it in the file; empty if no row in particular
 */
public record Note(Kind kind, String origin, OptionalInt row, String text) {

  /** What a note is about. */
  public enum Kind {
    /** A sheet or file that is none of ours. */
    LEFT_ALONE,
    /** A row that is a worked example, or refers to one. */
    WORKED_ROW,
    /** A default that bears on the results. */
    DEFAULT,
    /** Bare numbers in a row, in another unit than those of the machine or vise it belongs to. */
    BARE_NUMBER
  }

  /** One line. */
  @Override
  public String toString() {
    String place = row.isPresent() ? origin + " row " + row.getAsInt() : origin;
    return Fault.visible(place + ": " + text);
  }
}
