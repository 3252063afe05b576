package org.jawroom.tables.row.size;

import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.ColumnSpec;

/** Which lengths may be 0 or less. */
public final class SizeCheck {
  private SizeCheck() {}

  /** Returns {@code length} if a cell of this column may hold it. */
  public static long checked(ColumnSpec spec, long length) throws BadCell {
    if (length < 0 && spec.kind() != CellKind.LENGTH) {
      throw new BadCell("is below 0, which " + spec.name() + " cannot be");
    }
    if (length == 0 && spec.kind() == CellKind.POSITIVE_SIZE) {
      throw new BadCell("is 0, but " + spec.name() + " must be above 0");
    }
    return length;
  }
}
