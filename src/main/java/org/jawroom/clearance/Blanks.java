package org.jawroom.clearance;

import java.util.EnumSet;
import java.util.List;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;

/** Collects the blank columns that a pairing turns out to need. */
public final class Blanks {
  /** Made for the first of them: most pairings have none. */
  private EnumSet<Column> columns;

  /** Whether {@code dimension} is not blank; if it is, notes its column. */
  public boolean given(Dimension dimension, Column column) {
    if (dimension.isBlank()) {
      set().add(column);
    }
    return !dimension.isBlank();
  }

  /** Notes what another noted. */
  public void add(Blanks other) {
    if (other.columns != null) {
      set().addAll(other.columns);
    }
  }

  /** The columns noted, once each, in the order of the tables. */
  public List<Column> columns() {
    return columns == null ? List.of() : List.copyOf(columns);
  }

  private EnumSet<Column> set() {
    if (columns == null) {
      columns = EnumSet.noneOf(Column.class);
    }
    return columns;
  }
}
