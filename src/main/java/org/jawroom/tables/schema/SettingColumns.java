package org.jawroom.tables.schema;

import static org.jawroom.tables.schema.CellKind.NAME;
import static org.jawroom.tables.schema.CellKind.POSITIVE_SIZE;
import static org.jawroom.tables.schema.CellKind.SIZE;
import static org.jawroom.tables.schema.CellKind.TEXT;
import static org.jawroom.tables.schema.CellKind.UNIT;

import java.util.List;
import java.util.Optional;

/** The two columns of {@code settings}, and the settings allowed in its rows. */
public final class SettingColumns {
  private SettingColumns() {}

  static final List<ColumnSpec> COLUMNS =
      List.of(
          ColumnSpec.required("setting", NAME, "Which setting."),
          ColumnSpec.optional("value", TEXT, "the setting's own default", "Its value."));

  /** The settings, in the order of the specification. */
  public static final List<ColumnSpec> SETTINGS =
      List.of(
          ColumnSpec.standard(
              "unit", UNIT, "mm", "The unit of a bare number where its row names none."),
          ColumnSpec.optional(
                  "show",
                  UNIT,
                  "that of the machine's row; for a whole shop that of most machines",
                  "The unit in which people read: mm or in. It changes no number in the tables.")
              .outOf(List.of("mm", "in")),
          ColumnSpec.word(
              "decimal",
              List.of("point", "comma"),
              "Whether 1,25 (comma) or 1.25 (point) is one and a quarter."),
          ColumnSpec.standard(
              "clearance",
              SIZE,
              "6 mm",
              "How far everything must stay off a guard that names no clearance of its own."),
          ColumnSpec.standard(
              "hand_room",
              SIZE,
              "25 mm",
              "The least clearance around a handle while loading: room for a finger (ISO 13854)."),
          ColumnSpec.optional(
              "spacing", SIZE, "as clearance", "The least between two vises on one table."),
          ColumnSpec.standard(
              "clamp_room",
              SIZE,
              "60 mm",
              "How much a strap clamp takes on either side of a base."),
          ColumnSpec.standard(
              "tap_room",
              SIZE,
              "2 mm",
              "How far a vise must be movable every way so that it can be tapped square; 0 asks"
                  + " nothing."),
          ColumnSpec.word(
              "smaller_threads",
              List.of("yes", "no"),
              "Whether bolts may have a smaller thread than the slot's own where a hole asks for"
                  + " one."),
          ColumnSpec.optional(
              "shortest_tool",
              SIZE,
              "heads are told as a number, not in the verdict",
              "The shortest tool in use, spindle nose to tip, holder included."),
          ColumnSpec.standard(
              "jaw_play",
              SIZE,
              "10 mm",
              "How much further than a job's part the jaws go to let it in."),
          ColumnSpec.standard(
              "load_room",
              SIZE,
              "2 mm",
              "How much further than a job's part the jaws must be able to open."),
          ColumnSpec.standard(
              "comfort",
              SIZE,
              "3 mm",
              "A margin of this much is comfortable; more is worth nothing by itself."),
          ColumnSpec.standard(
              "least_opening",
              POSITIVE_SIZE,
              "25 mm",
              "The least part of the opening that is still of use; at least 0.01 mm."),
          ColumnSpec.optional(
              "max_overhang", SIZE, "no limit", "How far a base may hang over a table edge."));

  /** Finds a setting; case and word separators do not count. */
  public static Optional<ColumnSpec> setting(String name) {
    String wanted = ColumnSpec.normal(name);
    return SETTINGS.stream().filter(setting -> setting.name().equals(wanted)).findFirst();
  }
}
