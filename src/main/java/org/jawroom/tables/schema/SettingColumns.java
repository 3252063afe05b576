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
          ColumnSpec.required("setting", NAME, "The name of the setting."),
          ColumnSpec.optional("value", TEXT, "the default of the setting", "Its value."));

  /** The settings, in the order of the specification. */
  public static final List<ColumnSpec> SETTINGS =
      List.of(
          ColumnSpec.standard(
              "unit",
              UNIT,
              "mm",
              "The unit of a bare number in a row whose own column unit is blank."),
          ColumnSpec.optional(
                  "show",
                  UNIT,
                  "that of the machine's row; for a whole shop that of most machines",
                  "The unit in which lengths are printed for people. It changes no number in the"
                      + " tables, and none in the CSV files.")
              .outOf(List.of("mm", "in")),
          ColumnSpec.word(
              "decimal",
              List.of("point", "comma"),
              "The decimal sign of numbers in text: with point, 1.5 is one and a half; with comma,"
                  + " 1,5 is."),
          ColumnSpec.standard(
              "clearance",
              SIZE,
              "6 mm",
              "The clearance required from every guard that has no clearance of its own."),
          ColumnSpec.standard(
              "hand_room",
              SIZE,
              "25 mm",
              "The clearance required around a handle while loading, so that no finger is crushed"
                  + " (ISO 13854)."),
          ColumnSpec.optional(
              "spacing",
              SIZE,
              "as clearance",
              "The least distance between two vises on one table."),
          ColumnSpec.standard(
              "clamp_room",
              SIZE,
              "60 mm",
              "The width that a strap clamp takes up beside the base, on either side."),
          ColumnSpec.standard(
              "tap_room",
              SIZE,
              "2 mm",
              "How far a vise must be movable in every direction, so that it can be tapped square."
                  + " 0: not at all."),
          ColumnSpec.word(
              "smaller_threads",
              List.of("yes", "no"),
              "Whether a bolt may have a smaller thread than the usual one of its slot, where the"
                  + " hole in the vise needs it."),
          ColumnSpec.optional(
              "shortest_tool",
              SIZE,
              "heads do not count while cutting; the least nose height is reported",
              "The length of the shortest tool in use, from the spindle nose to its tip, with its"
                  + " holder."),
          ColumnSpec.standard(
              "jaw_play",
              SIZE,
              "10 mm",
              "How much wider than a job's part the jaws are opened to let the part in."),
          ColumnSpec.standard(
              "load_room",
              SIZE,
              "2 mm",
              "How much wider than a job's part the jaws must at least be able to open."),
          ColumnSpec.standard(
              "comfort",
              SIZE,
              "3 mm",
              "A margin of this size is enough: between two places, a larger one does not count."),
          ColumnSpec.standard(
              "least_opening",
              POSITIVE_SIZE,
              "25 mm",
              "The least width of an opening range that is still of use; at least 0.01 mm."),
          ColumnSpec.optional(
              "max_overhang",
              SIZE,
              "no limit",
              "How far a vise's base may hang over the table's edge."));

  /**
   * The settings that an option of the same name overrides: all but {@code unit}, since no option
   * may change what a number in the tables means.
   */
  public static final List<ColumnSpec> OPTIONS =
      SETTINGS.stream().filter(setting -> !setting.name().equals("unit")).toList();

  /** Finds a setting; case and word separators do not count. */
  public static Optional<ColumnSpec> setting(String name) {
    String wanted = ColumnSpec.normal(name);
    return SETTINGS.stream().filter(setting -> setting.name().equals(wanted)).findFirst();
  }
}
