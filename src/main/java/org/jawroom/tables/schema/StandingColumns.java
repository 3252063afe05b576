package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.LENGTH;
import static org.jawroom.tables.schema.CellKind.NAME;
import static org.jawroom.tables.schema.CellKind.SIZE;
import static org.jawroom.tables.schema.CellKind.TEXT;
import static org.jawroom.tables.schema.CellKind.UNIT;
import static org.jawroom.tables.schema.CellKind.WORD;

import java.util.List;

/** The columns of {@code standing}, and the place of a vise, which {@code checks} have too. */
final class StandingColumns {
  private StandingColumns() {}

  static final ColumnSpec MACHINE =
      ColumnSpec.required("machine", NAME, "The mill, as named in machines.");
  static final ColumnSpec VISE =
      ColumnSpec.required("vise", NAME, "The vise bolted there, as named in vises.");
  static final ColumnSpec HANDLE_TO =
      ColumnSpec.required("handle_to", WORD, "Where its handle points.")
          .outOf(List.of("front", "right", "rear", "left"));
  static final ColumnSpec FROM_LEFT =
      ColumnSpec.required(
          "from_left",
          LENGTH,
          "The table's left edge to where the setup card measures the vise from: the base's"
              + " left side or the fixed-jaw face, as it stands now.");
  static final ColumnSpec FROM_FRONT =
      ColumnSpec.required(
          "from_front", LENGTH, "The table's front edge to the same, as it stands now.");
  static final ColumnSpec SOURCE =
      ColumnSpec.optional("source", WORD, "not stated", SourceWord.HELP).outOf(SourceWord.WORDS);
  static final ColumnSpec MEASURED =
      ColumnSpec.optional("measured", TEXT, "empty", "Who measured, and when.");
  static final ColumnSpec ROW_UNIT =
      ColumnSpec.optional("unit", UNIT, "the setting unit", "The unit of this row's bare numbers.")
          .forEveryone();

  static final List<ColumnSpec> ALL =
      List.of(
          MACHINE,
          VISE,
          HANDLE_TO,
          FROM_LEFT,
          FROM_FRONT,
          ColumnSpec.standard(
              "mount",
              NAME,
              "base bolts",
              "The mount that holds it: base bolts, clamps, or a name in mounts."),
          ColumnSpec.optional(
              "tolerance",
              SIZE,
              "from source, else 0",
              "How far each of the two measures may be off."),
          SOURCE,
          MEASURED,
          ROW_UNIT);
}
