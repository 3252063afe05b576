package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.COUNT;
import static org.jawroom.tables.schema.CellKind.LIST;
import static org.jawroom.tables.schema.CellKind.MASS;
import static org.jawroom.tables.schema.CellKind.NAME;
import static org.jawroom.tables.schema.CellKind.SIZE;
import static org.jawroom.tables.schema.CellKind.UNIT;

import java.util.List;

/** The columns of {@code jobs}. */
final class JobColumns {
  private JobColumns() {}

  static final List<ColumnSpec> ALL =
      List.of(
          ColumnSpec.required("job", NAME, "The name of the job. No two jobs have the same."),
          ColumnSpec.required("part_length", SIZE, "The part along the jaws, side to side."),
          ColumnSpec.required("part_width", SIZE, "The part between the jaws: what is gripped."),
          ColumnSpec.required("part_height", SIZE, "The part's height, top to bottom."),
          ColumnSpec.optional(
              "grip", SIZE, "it rests on the bed", "How deep the part sits below the jaws' tops."),
          ColumnSpec.unknown("mass", MASS, "Mass of the part before it is machined.")
              .notForEveryone(),
          ColumnSpec.unknown(
                  "tool_length",
                  SIZE,
                  "The longest tool it needs, spindle nose to tip, holder included.")
              .notForEveryone(),
          ColumnSpec.word(
              "jaws_along",
              List.of("any", "x", "y"),
              "The table axis along which the program needs the jaws."),
          ColumnSpec.optional(
              "machines", LIST, "all", "The mills that may run it, with ; between."),
          ColumnSpec.standard("quantity", COUNT, "1", "The number of pieces."),
          ColumnSpec.optional(
                  "unit", UNIT, "the setting unit", "The unit of this row's bare numbers.")
              .forEveryone());
}
