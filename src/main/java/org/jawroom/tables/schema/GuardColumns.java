package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.CARRIER;
import static org.jawroom.tables.schema.CellKind.LENGTH;
import static org.jawroom.tables.schema.CellKind.NAME;
import static org.jawroom.tables.schema.CellKind.SIZE;
import static org.jawroom.tables.schema.CellKind.UNIT;
import static org.jawroom.tables.schema.CellKind.WORD;

import java.util.List;

/** The columns of {@code guards}. */
final class GuardColumns {
  private GuardColumns() {}

  private static final String LIMIT =
      " limit of the box, from the middle of the table top with every axis at the middle of its travel.";

  private static final String HEIGHT =
      " limit, up positive: from the table top; from the spindle nose if it moves against the table"
          + " along z, as a head does.";

  static final List<ColumnSpec> ALL =
      List.of(
          ColumnSpec.required("machine", NAME, "The mill it belongs to, as named in machines."),
          ColumnSpec.required("guard", NAME, "What to call it. No two alike on one mill."),
          ColumnSpec.optional(
                  "kind", WORD, "empty", "What sort of thing it is; never changes a number.")
              .outOf(
                  List.of(
                      "door",
                      "sill",
                      "cover",
                      "guard",
                      "column",
                      "head",
                      "tool changer",
                      "nozzle",
                      "other"))
              .forEveryone(),
          ColumnSpec.standard(
              "carried_by",
              CARRIER,
              "frame",
              "What it rides on: frame (stands still), saddle (moves along y), head (along z), table, or"
                  + " the letters of the axes that carry it."),
          ColumnSpec.when(
              "Whether it counts only while cutting (a closed door), only while loading, or always."),
          ColumnSpec.optional(
                  "side",
                  WORD,
                  "a box, given by its limits",
                  "If it is taped as the mill's gaps are: the side of the table on which it stands.")
              .outOf(List.of("front", "rear", "left", "right"))
              .forEveryone(),
          ColumnSpec.unknown(
                  "gap",
                  LENGTH,
                  "With side: table fully toward it, from the table's edge to its nearest face; below 0 if"
                      + " the table runs under it. none: it is not there.")
              .orNone(),
          ColumnSpec.optional("x_min", LENGTH, "no end that way", "Left" + LIMIT),
          ColumnSpec.optional("x_max", LENGTH, "no end that way", "Right" + LIMIT),
          ColumnSpec.optional("y_min", LENGTH, "no end that way", "Front" + LIMIT),
          ColumnSpec.optional("y_max", LENGTH, "no end that way", "Rear" + LIMIT),
          ColumnSpec.optional("z_min", LENGTH, "no end that way", "Lower" + HEIGHT),
          ColumnSpec.optional("z_max", LENGTH, "no end that way", "Upper" + HEIGHT),
          ColumnSpec.optional(
              "clearance",
              SIZE,
              "the setting clearance",
              "How far everything must stay off this one."),
          ColumnSpec.optional(
              "tolerance",
              SIZE,
              "the mill's",
              "How far its face may be off as measured from the slots."),
          ColumnSpec.optional(
                  "unit",
                  UNIT,
                  "the setting unit",
                  "The unit of this row's bare numbers; the mill's own unit is not taken over.")
              .forEveryone());
}
