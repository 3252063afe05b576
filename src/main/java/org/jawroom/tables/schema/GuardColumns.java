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
          ColumnSpec.required("guard", NAME, "Its name. No two guards of one mill have the same."),
          ColumnSpec.optional(
                  "kind", WORD, "empty", "What kind of thing it is. It changes no number.")
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
                  "What carries it: frame (stands still), saddle (moves along y), head (along"
                      + " z), table, or"
                      + " the letters of the axes that carry it.")
              .forEveryone(),
          ColumnSpec.when(
                  "Whether it counts only while cutting (a closed door), only while loading, or always.")
              .forEveryone(),
          ColumnSpec.optional(
                  "side",
                  WORD,
                  "a box, given by its limits",
                  "The side of the table on which it stands, if it is measured like the mill's"
                      + " gaps.")
              .outOf(List.of("front", "rear", "left", "right"))
              .forEveryone(),
          ColumnSpec.unknown(
                  "gap",
                  LENGTH,
                  "With side: table fully toward it, from the table's edge to its nearest face; below 0 if"
                      + " the table runs under it. none: it is not there.")
              .orNone(),
          ColumnSpec.optional("x_min", LENGTH, "no end that way", "Left" + LIMIT).forEveryone(),
          ColumnSpec.optional("x_max", LENGTH, "no end that way", "Right" + LIMIT).forEveryone(),
          ColumnSpec.optional("y_min", LENGTH, "no end that way", "Front" + LIMIT).forEveryone(),
          ColumnSpec.optional("y_max", LENGTH, "no end that way", "Rear" + LIMIT).forEveryone(),
          ColumnSpec.optional("z_min", LENGTH, "no end that way", "Lower" + HEIGHT).forEveryone(),
          ColumnSpec.optional("z_max", LENGTH, "no end that way", "Upper" + HEIGHT).forEveryone(),
          ColumnSpec.optional(
              "clearance",
              SIZE,
              "the setting clearance",
              "The clearance required from this guard."),
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
