package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.LENGTH;
import static org.jawroom.tables.schema.CellKind.NAME;
import static org.jawroom.tables.schema.CellKind.SIZE;
import static org.jawroom.tables.schema.CellKind.UNIT;

import java.util.List;

/** The columns of {@code vise_parts} and {@code mounts}. */
final class PartColumns {
  private PartColumns() {}

  private static final String U =
      " end, from the fixed-jaw face (jaws = both: the middle), toward the handle positive, jaws ";

  private static final ColumnSpec OWNER =
      ColumnSpec.required("vise", NAME, "The vise it belongs to, as named in vises.");

  private static final ColumnSpec ROW_UNIT =
      ColumnSpec.optional(
              "unit",
              UNIT,
              "the setting unit",
              "The unit of this row's bare numbers; the vise's own unit is not taken over.")
          .forEveryone();

  static final List<ColumnSpec> PARTS =
      List.of(
          OWNER,
          ColumnSpec.required(
              "part",
              NAME,
              "Its name. No two parts of one vise have the same. A part named handle counts"
                  + " as the handle."),
          ColumnSpec.when("Whether it is there only while cutting, only while loading, or always."),
          ColumnSpec.required("u_min_closed", LENGTH, "Rear" + U + "closed (at opening_min)."),
          ColumnSpec.required("u_max_closed", LENGTH, "Front" + U + "closed (at opening_min)."),
          ColumnSpec.optional("u_min_open", LENGTH, "as u_min_closed", "Rear" + U + "fully open."),
          ColumnSpec.optional("u_max_open", LENGTH, "as u_max_closed", "Front" + U + "fully open."),
          ColumnSpec.required(
              "v_min",
              LENGTH,
              "From the middle of the jaw width, crosswise: to the right positive when you look along the"
                  + " vise from the handle's end."),
          ColumnSpec.required("v_max", LENGTH, "The other limit crosswise; see v_min."),
          ColumnSpec.required("w_min", LENGTH, "Its lowest point above the vise's underside."),
          ColumnSpec.required("w_max", LENGTH, "Its highest point above the vise's underside."),
          ColumnSpec.optional(
              "tolerance",
              SIZE,
              "the vise's",
              "How far any end of it may be off as measured from the bolts."),
          ROW_UNIT);

  static final List<ColumnSpec> MOUNTS =
      List.of(
          OWNER,
          ColumnSpec.required(
              "mount",
              NAME,
              "Bolts of one name are used together, all of them; one row for each bolt."),
          ColumnSpec.required(
              "u",
              LENGTH,
              "Fixed-jaw face (jaws = both: the middle) to the hole's centre, toward the handle positive."),
          ColumnSpec.required(
              "v",
              LENGTH,
              "Middle of the jaw width to the hole's centre, to the right positive when you look along the"
                  + " vise from the handle's end."),
          ColumnSpec.unknown("hole_u", SIZE, "The hole over all, along the opening."),
          ColumnSpec.unknown(
              "hole_v", SIZE, "The hole over all, across the vise (round: as hole_u)."),
          ROW_UNIT);
}
