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
          ColumnSpec.required("job", NAME, "What to call it. No two alike."),
          ColumnSpec.required("part_length", SIZE, "The part along the jaws, side to side."),
          ColumnSpec.required("part_width", SIZE, "The part between the jaws: what is gripped."),
          ColumnSpec.required("part_height", SIZE, "The part's height, top to bottom."),
          ColumnSpec.optional(
              "grip", SIZE, "it rests on the bed", "How deep the part sits below the jaws' tops."),
          ColumnSpec.unknown("mass", MASS, "Of the part before it is machined.").notForEveryone(),
          ColumnSpec.unknown(
                  "tool_length",
                  SIZE,
                  "The longest tool it needs, spindle nose to tip, holder included.")
              .notForEveryone(),
          ColumnSpec.word(
              "jaws_along",
              List.of("any", "x", "y"),
              "Which way the program wants the jaws to run."),
          ColumnSpec.optional("machines", LIST, "all", "The mills that may run it, ; between."),
          ColumnSpec.standard("quantity", COUNT, "1", "How many pieces."),
          ColumnSpec.optional(
                  "unit", UNIT, "the setting unit", "The unit of this row's bare numbers.")
              .forEveryone());
}
