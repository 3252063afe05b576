package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.ANGLES;
import static org.jawroom.tables.schema.CellKind.COUNT;
import static org.jawroom.tables.schema.CellKind.LENGTH;
import static org.jawroom.tables.schema.CellKind.MASS;
import static org.jawroom.tables.schema.CellKind.NAME;
import static org.jawroom.tables.schema.CellKind.NUMBER;
import static org.jawroom.tables.schema.CellKind.PRICE;
import static org.jawroom.tables.schema.CellKind.SIZE;
import static org.jawroom.tables.schema.CellKind.TEXT;
import static org.jawroom.tables.schema.CellKind.TURNS;
import static org.jawroom.tables.schema.CellKind.UNIT;
import static org.jawroom.tables.schema.CellKind.WORD;

import java.util.List;

/** The columns of {@code vises}. */
final class ViseColumns {
  private ViseColumns() {}

  private static final String PROJECTION =
      " of the casting; whatever turns or slides out there: screw, nut or bearing, the handle not"
          + " included. none: nothing.";

  static final List<ColumnSpec> ALL =
      List.of(
          ColumnSpec.required(
              "vise", NAME, "The shop's name for this kind of vise. No two kinds have the same."),
          ColumnSpec.optional("description", TEXT, "empty", "Free text for people."),
          ColumnSpec.optional(
                  "unit", UNIT, "the setting unit", "The unit of this row's bare numbers.")
              .forEveryone(),
          ColumnSpec.standard("quantity", COUNT, "1", "The number that the shop has."),
          ColumnSpec.word(
                  "jaws",
                  List.of("one", "both"),
                  "one: a moving jaw against a fixed one. both: self-centring, the two move together.")
              .forEveryone(),
          ColumnSpec.required(
              "jaw_width", SIZE, "Along the jaw, side to side; not how far it opens."),
          ColumnSpec.required(
              "jaw_height",
              SIZE,
              "From the bed on which work rests up to the jaws' top; not from the table."),
          ColumnSpec.optional(
              "plates_width",
              SIZE,
              "as jaw_width",
              "The widest jaw plates used on it, side to side."),
          ColumnSpec.optional(
              "plates_height",
              SIZE,
              "as jaw_height",
              "The tallest jaw plates used on it: their top above the bed."),
          ColumnSpec.required(
              "bed_height",
              SIZE,
              "From the table to the bed on which work rests between the jaws, swivel plate"
                  + " included."),
          ColumnSpec.standard(
              "opening_min", SIZE, "0", "The least distance between the jaw faces."),
          ColumnSpec.required(
              "opening_max",
              SIZE,
              "The greatest distance between the jaw faces, plates on; not the jaw's travel beyond it."),
          ColumnSpec.unknown(
              "base_width",
              SIZE,
              "Across the base at its widest: flange, ears or swivel plate included; not the jaw's width."),
          ColumnSpec.unknown(
              "rear_reach",
              SIZE,
              "Fixed-jaw face (jaws = both: the middle) to the rear end of the casting, screw not"
                  + " included; not the jaw's thickness."),
          ColumnSpec.unknown(
              "front_reach",
              SIZE,
              "Fixed-jaw face (jaws = both: the middle) to the front end of the casting, screw and handle"
                  + " not included."),
          ColumnSpec.optional(
              "base_length",
              SIZE,
              "the sum of the two reaches",
              "The casting overall, screw not included; with it, one of the two reaches may stay blank."),
          ColumnSpec.unknown(
              "fixed_jaw_thickness",
              SIZE,
              "Face to back along the opening, plates on; not the jaw's width. Not needed"
                  + " with jaws = both."),
          ColumnSpec.unknown(
              "moving_jaw_thickness",
              SIZE,
              "Face to back along the opening, plates on; not the jaw's width."),
          ColumnSpec.unknown(
                  "rear_projection_closed",
                  SIZE,
                  "Jaws CLOSED (at opening_min): how far anything sticks out behind the rear end"
                      + PROJECTION)
              .orNone(),
          ColumnSpec.unknown(
                  "rear_projection_open",
                  SIZE,
                  "Jaws fully OPEN: how far anything sticks out behind the rear end" + PROJECTION)
              .orNone(),
          ColumnSpec.unknown(
                  "front_projection_closed",
                  SIZE,
                  "Jaws CLOSED (at opening_min): how far anything sticks out in front of the"
                      + " front end"
                      + PROJECTION)
              .orNone(),
          ColumnSpec.unknown(
                  "front_projection_open",
                  SIZE,
                  "Jaws fully OPEN: how far anything sticks out in front of the front end"
                      + PROJECTION)
              .orNone(),
          ColumnSpec.unknown(
              "screw_height", SIZE, "The screw's axis above the table; not above the bed."),
          ColumnSpec.unknown(
              "screw_diameter",
              SIZE,
              "The thickest of what sticks out at either end: nut, bearing or hex, not the bare thread."),
          ColumnSpec.unknown(
                  "handle_radius",
                  SIZE,
                  "From the screw's axis to the far end of the handle, knob included; not the whole length"
                      + " of a crank bar. none: no handle.")
              .orNone(),
          ColumnSpec.unknown(
              "handle_depth",
              SIZE,
              "Along the screw's axis, from where the handle starts to the end of the knob; not the"
                  + " handle's length."),
          ColumnSpec.word(
              "handle",
              List.of("off", "on"),
              "off: always taken off before cutting. on: it may stay on."),
          ColumnSpec.word(
              "handle_swing",
              List.of("upper", "full"),
              "upper: can be worked back and forth over the top. full: must go all the way round."),
          ColumnSpec.optional(
              "turns",
              TURNS,
              "all",
              "Toward which sides of the table its handle may point: front right rear left."),
          ColumnSpec.unknown(
                  "bolt_spacing",
                  SIZE,
                  "Between the centres of its two hold-down holes, across the vise (along the jaws). none:"
                      + " it has no such pair; its bolts are rows of mounts.")
              .orNone(),
          ColumnSpec.unknown(
              "bolt_u",
              LENGTH,
              "Fixed-jaw face (jaws = both: the middle) to the centre of those holes, toward the handle;"
                  + " below 0 if they lie behind the face."),
          ColumnSpec.unknown(
              "bolt_hole_u",
              SIZE,
              "The hole or notch over all, along the opening; a notch open at its end: to that end."),
          ColumnSpec.unknown(
              "bolt_hole_v",
              SIZE,
              "The hole or notch over all, across the vise (round: as bolt_hole_u)."),
          ColumnSpec.optional(
              "bolt_grip",
              SIZE,
              "bolts stand bed_height high",
              "Thickness of the flange under the bolt's nut, washer included."),
          ColumnSpec.word(
              "strap_flange",
              List.of("no", "yes"),
              "Whether strap clamps can hold it by a flange along its sides."),
          ColumnSpec.optional(
              "swivel_angles",
              ANGLES,
              "0",
              "Of a vise on a swivel base: the angles at which it is used, in degrees from the jaws'"
                  + " square position, as 30; 45. Each counts both ways; with a sign one way: + turns it"
                  + " counterclockwise seen from above."),
          ColumnSpec.optional(
              "swivel_u",
              LENGTH,
              "needed only with swivel_angles",
              "Fixed-jaw face (jaws = both: the middle) to the pivot of the swivel base, toward the"
                  + " handle; below 0 if it lies behind the face."),
          ColumnSpec.optional(
              "swivel_radius",
              SIZE,
              "within base_width and the reaches",
              "Of the round flange of the swivel base, for drawings; base_width and the two reaches"
                  + " take in the flange."),
          ColumnSpec.unknown("mass", MASS, "Mass as it stands on the table, swivel plate included.")
              .notForEveryone(),
          ColumnSpec.optional(
              "clamp_force", NUMBER, "not stated", "Clamping force in kN, at the torque used."),
          ColumnSpec.optional(
              "price",
              PRICE,
              "no more can be had",
              "The price of one more; a number without currency, at most two decimals. With"
                  + " quantity 0: one that might"
                  + " be bought."),
          ColumnSpec.optional(
              "tolerance",
              SIZE,
              "from source, else 0",
              "How far any end of it may be off as measured from its bolts."),
          ColumnSpec.optional("source", WORD, "not stated", SourceWord.HELP)
              .outOf(SourceWord.WORDS)
              .forEveryone(),
          ColumnSpec.optional("measured", TEXT, "empty", "Who measured, and when."),
          ColumnSpec.word(
              "shape",
              List.of("simple", "parts"),
              "simple: the columns of this row make up its body. parts: the rows of vise_parts do."));
}
