package org.jawroom.clearance;

import java.util.EnumSet;
import java.util.List;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;

/**
 * Collects the columns that the evaluation of a pairing requires and whose readings are open:
 * blank, or known within bounds only.
 */
public final class Blanks {
  /** Allocated on the first blank, since most pairings have none. */
  private EnumSet<Column> columns;

  /** Whether {@code dimension} is not blank; records its column if it is open. */
  public boolean given(Dimension dimension, Column column) {
    if (dimension.isOpen()) {
      set().add(column);
    }
    return !dimension.isBlank();
  }

  /** Adds all columns recorded in another collection. */
  public void add(Blanks other) {
    if (other.columns != null) {
      set().addAll(other.columns);
    }
  }

  /** Whether a column is recorded. */
  public boolean isEmpty() {
    return columns == null;
  }

  /** The recorded columns without duplicates, in table order. */
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
