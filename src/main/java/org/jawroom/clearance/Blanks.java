package org.jawroom.clearance;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;

/** Collects the blank columns that a pairing turns out to need. */
public final class Blanks {
  private final Set<Column> columns = EnumSet.noneOf(Column.class);

  /** Whether {@code dimension} is not blank; if it is, notes its column. */
  public boolean given(Dimension dimension, Column column) {
    if (dimension.isBlank()) {
      columns.add(column);
    }
    return !dimension.isBlank();
  }

  /** Notes what another noted. */
  public void add(Blanks other) {
    columns.addAll(other.columns);
  }

  /** The columns noted, once each, in the order of the tables. */
  public List<Column> columns() {
    return columns.isEmpty() ? List.of() : List.copyOf(columns);
  }
}
