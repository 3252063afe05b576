package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.COUNT;
import static org.jawroom.tables.schema.CellKind.LIST;
import static org.jawroom.tables.schema.CellKind.NAME;

import java.util.List;

/** The columns of {@code sets}. */
final class SetColumns {
  private SetColumns() {}

  static final List<ColumnSpec> ALL =
      List.of(
          ColumnSpec.required("set", NAME, "The name of the set. All its rows have the same."),
          ColumnSpec.required("vise", NAME, "A vise of the set, as named in vises."),
          ColumnSpec.standard(
              "count", COUNT, "1", "How many of it; a set has at most eight vises in all."),
          ColumnSpec.optional(
              "machines",
              LIST,
              "all",
              "The mills on which the set is to stand, with ; between; one row of the set may say"
                  + " so for all."));
}
