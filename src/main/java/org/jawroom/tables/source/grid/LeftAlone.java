package org.jawroom.tables.source.grid;

/**
 * A file or sheet that exists but was not read.
 *
 * @param name as people know it, preceded by {@code sheet} or {@code folder} if it is one
 * @param why why it is not a table
 */
public record LeftAlone(String name, String why) {
  private static final String NO_TABLE = "none of the tables";

  public static LeftAlone noTable(String name) {
    return new LeftAlone(name, NO_TABLE);
  }
}
