package org.jawroom.tables.source;

/**
 * A file or sheet that is there and was not read.
 *
 * @param name as people call it, with {@code sheet} or {@code folder} before it where it is one
 * @param why what it is not
 */
public record LeftAlone(String name, String why) {
  private static final String NO_TABLE = "none of the tables";
  private static final String LATER = "a table that this version does not read";

  static LeftAlone noTable(String name) {
    return new LeftAlone(name, NO_TABLE);
  }

  static LeftAlone later(String name) {
    return new LeftAlone(name, LATER);
  }
}
