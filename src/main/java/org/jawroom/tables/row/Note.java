package org.jawroom.tables.row;

import java.util.OptionalInt;
import org.jawroom.tables.source.grid.Fault;

/**
 * Something people should know about the reading of the inputs that is not a fault.
 *
 * @param origin the file, sheet or option
 * @param row the row number as shown in the file; empty if no particular row
 */
public record Note(Kind kind, String origin, OptionalInt row, String text) {

  /** The subject of a note. */
  public enum Kind {
    /** A sheet or file that is not a table. */
    LEFT_ALONE,
    /** A row that is a worked example, or refers to one. */
    WORKED_ROW,
    /** A default that affects the results. */
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
