package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.LENGTH;
import static org.jawroom.tables.schema.CellKind.NAME;
import static org.jawroom.tables.schema.CellKind.SIZE;
import static org.jawroom.tables.schema.CellKind.TEXT;
import static org.jawroom.tables.schema.CellKind.UNIT;
import static org.jawroom.tables.schema.CellKind.WORD;

import java.util.List;

/** The columns of {@code checks}. */
final class CheckColumns {
  private CheckColumns() {}

  static final List<ColumnSpec> ALL =
      List.of(
          ColumnSpec.required("machine", NAME, "The mill, as named in machines."),
          ColumnSpec.required("vise", NAME, "The vise bolted there, as named in vises."),
          ColumnSpec.required("handle_to", WORD, "Where its handle points.")
              .outOf(List.of("front", "right", "rear", "left")),
          ColumnSpec.required(
              "from_left",
              LENGTH,
              "The table's left edge to where the setup card measures the vise from: the base's"
                  + " left side or the fixed-jaw face, as it stands now."),
          ColumnSpec.required(
              "from_front", LENGTH, "The table's front edge to the same, as it stands now."),
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
          ColumnSpec.optional("source", WORD, "not stated", SourceWord.HELP)
              .outOf(SourceWord.WORDS),
          ColumnSpec.optional("measured", TEXT, "empty", "Who measured, and when."),
          ColumnSpec.optional(
                  "unit", UNIT, "the setting unit", "The unit of this row's bare numbers.")
              .forEveryone());
}
