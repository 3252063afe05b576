package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.AXES;
import static org.jawroom.tables.schema.CellKind.COUNT;
import static org.jawroom.tables.schema.CellKind.LENGTH;
import static org.jawroom.tables.schema.CellKind.LENGTHS;
import static org.jawroom.tables.schema.CellKind.LIST;
import static org.jawroom.tables.schema.CellKind.MASS;
import static org.jawroom.tables.schema.CellKind.NAME;
import static org.jawroom.tables.schema.CellKind.POSITIVE_SIZE;
import static org.jawroom.tables.schema.CellKind.PRICE;
import static org.jawroom.tables.schema.CellKind.SIZE;
import static org.jawroom.tables.schema.CellKind.TEXT;
import static org.jawroom.tables.schema.CellKind.TURNS;
import static org.jawroom.tables.schema.CellKind.UNIT;

import java.util.List;

/** The columns of {@code machines}. */
final class MachineColumns {
  private MachineColumns() {}

  private static final String GAP =
      " Tape it from the table's edge to the nearest thing at any height between the lowest point of a"
          + " handle and the top of the tallest work, overrun when homing included. Below 0 if the table"
          + " runs under it; none if nothing is on that side.";

  private static final String LEDGE =
      " of the table sticks out below the top: rails, scales, feed boxes. Measure outward from the edge"
          + " of the flat top.";

  static final List<ColumnSpec> ALL =
      List.of(
          ColumnSpec.required(
              "machine", NAME, "The shop's name for this mill. No two mills have the same."),
          ColumnSpec.optional("description", TEXT, "empty", "Free text for people."),
          ColumnSpec.word(
              "status",
              List.of("owned", "candidate"),
              "A candidate is a mill that might be bought."),
          ColumnSpec.optional(
                  "unit", UNIT, "the setting unit", "The unit of this row's bare numbers.")
              .forEveryone(),
          ColumnSpec.required(
              "table_moves",
              AXES,
              "The axes along which the table itself moves, not the tool: xy on a C-frame mill, xyz"
                  + " on a knee mill, none where only the spindle moves."),
          ColumnSpec.required(
              "table_length",
              POSITIVE_SIZE,
              "The flat top along x, left to right, without trough or rails; not the travel."),
          ColumnSpec.required(
              "table_width",
              POSITIVE_SIZE,
              "The flat top along y, front to rear, without trough or rails; not the travel."),
          ColumnSpec.required(
              "travel_x",
              SIZE,
              "Between the ends the table really reaches along x, soft limits set; not the brochure's."),
          ColumnSpec.required(
              "travel_y",
              SIZE,
              "Between the ends the table really reaches along y, soft limits set; not the brochure's."),
          ColumnSpec.standard(
              "spindle_x",
              LENGTH,
              "0",
              "With x at the middle of its travel, how far right of the table's middle the spindle"
                  + " stands (left: below 0)."),
          ColumnSpec.standard(
              "spindle_y",
              LENGTH,
              "0",
              "With y at the middle of its travel, how far behind the table's middle the spindle stands"
                  + " (in front: below 0)."),
          ColumnSpec.word(
              "slot_direction", List.of("x", "y"), "The axis along which the T-slots run."),
          ColumnSpec.required(
              "slot_count",
              COUNT,
              "The number of T-slots; 0 for a plain table. Blank if slot_positions is filled."),
          ColumnSpec.unknown(
              "slot_width",
              SIZE,
              "The throat at the top of the slot, by caliper; not the wider room below for the nut."),
          ColumnSpec.unknown(
              "slot_pitch",
              POSITIVE_SIZE,
              "Centre line to centre line of neighbouring slots: left edge to left edge gives the same."
                  + " May stay blank for one slot."),
          ColumnSpec.optional(
              "slot_positions",
              LENGTHS,
              "count, pitch and first are used",
              "For unevenly spaced slots, instead of count, pitch and first: from the table's front edge"
                  + " (y slots: left edge) to each centre line, rising: 45; 125; 205."),
          ColumnSpec.optional(
              "slot_first",
              SIZE,
              "slots centred on the table",
              "From the table's front edge (y slots: left edge) to the first slot's centre line, not to"
                  + " its side."),
          ColumnSpec.optional(
              "slot_length",
              SIZE,
              "the whole table",
              "Over which length the slots can hold a bolt, if they end before the table does."),
          ColumnSpec.standard("front_ledge", SIZE, "0", "How far the front" + LEDGE),
          ColumnSpec.standard("rear_ledge", SIZE, "0", "How far the rear" + LEDGE),
          ColumnSpec.standard("left_ledge", SIZE, "0", "How far the left end" + LEDGE),
          ColumnSpec.standard("right_ledge", SIZE, "0", "How far the right end" + LEDGE),
          ColumnSpec.unknown(
                  "front_gap",
                  LENGTH,
                  "Table fully FORWARD, door shut: from the table's front edge to the door's inside."
                      + GAP)
              .orNone(),
          ColumnSpec.unknown(
                  "rear_gap",
                  LENGTH,
                  "Table fully BACK: from the table's rear edge to the cover or column behind."
                      + GAP)
              .orNone(),
          ColumnSpec.unknown(
                  "left_gap",
                  LENGTH,
                  "Table fully LEFT: from the table's left edge to the nearest thing." + GAP)
              .orNone(),
          ColumnSpec.unknown(
                  "right_gap",
                  LENGTH,
                  "Table fully RIGHT: from the table's right edge to the nearest thing." + GAP)
              .orNone(),
          ColumnSpec.unknown(
                  "nose_min",
                  LENGTH,
                  "Spindle nose to table top with the spindle as LOW as it goes; not to the tool's tip.")
              .notForEveryone(),
          ColumnSpec.unknown(
                  "nose_max",
                  LENGTH,
                  "Spindle nose to table top with the spindle as HIGH as it goes; not the z travel.")
              .notForEveryone(),
          ColumnSpec.unknown(
                  "max_load", MASS, "The most that the table may carry, vise and work together.")
              .notForEveryone(),
          ColumnSpec.optional(
              "load_x",
              LENGTH,
              "spindle_x",
              "Where the spindle stands over the table while loading, right of the table's middle."),
          ColumnSpec.optional(
              "load_y",
              LENGTH,
              "the table nearest the operator: spindle_y + travel_y/2",
              "Where the spindle stands over the table while loading, behind the table's middle."),
          ColumnSpec.optional(
              "turns",
              TURNS,
              "all",
              "Toward which sides of this mill a vise's handle can be worked: front right rear left."),
          ColumnSpec.optional(
              "looked_for",
              LIST,
              "none were looked for",
              "Which kinds of guard someone looked for here, whether found or not: head; tool changer;"
                  + " nozzle; sill; column; cover."),
          ColumnSpec.optional(
              "tolerance",
              SIZE,
              "from source, else 0",
              "How far the face of a guard may be off as measured from the slots, all readings on the way"
                  + " added."),
          ColumnSpec.optional("source", CellKind.WORD, "not stated", SourceWord.HELP)
              .outOf(SourceWord.WORDS)
              .forEveryone(),
          ColumnSpec.optional("measured", TEXT, "empty", "Who measured, and when."),
          ColumnSpec.optional(
              "price",
              PRICE,
              "not for sale",
              "The price of a candidate, set up and running; a number without currency, at"
                  + " most two decimals."));
}
