package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.NAME;
import static org.jawroom.tables.schema.CellKind.SIZE;
import static org.jawroom.tables.schema.CellKind.WORD;

import java.util.List;

/** The columns of {@code checks}. */
final class CheckColumns {
  private CheckColumns() {}

  static final List<ColumnSpec> ALL =
      List.of(
          StandingColumns.MACHINE,
          StandingColumns.VISE,
          StandingColumns.HANDLE_TO,
          StandingColumns.FROM_LEFT,
          StandingColumns.FROM_FRONT,
          ColumnSpec.required(
              "part", NAME, "The part of the vise, as the reports name it: screw rear, handle ..."),
          ColumnSpec.required(
              "guard",
              NAME,
              "What it was measured to, as the reports name it: door, rear cover ..."),
          ColumnSpec.optional(
              "opening", SIZE, "closed", "How far the jaws stood open: closed, open, or a length."),
          ColumnSpec.word(
              "situation",
              List.of("cutting", "loading"),
              "Whether the axes stood where cutting brings the two nearest, or at the load"
                  + " position."),
          ColumnSpec.optional(
                  "axis", WORD, "the limiting one", "The axis along which the gap was measured.")
              .outOf(List.of("x", "y", "z")),
          ColumnSpec.required("found", SIZE, "The gap found; 0 if the two touch."),
          ColumnSpec.optional(
              "tolerance",
              SIZE,
              "from source, else 0",
              "How far each of the three measures may be off."),
          StandingColumns.SOURCE,
          StandingColumns.MEASURED,
          StandingColumns.ROW_UNIT);
}
