package org.jawroom.tables.schema;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jawroom.tables.cell.name.Names;

/** The tables, in the order in which their faults are listed. */
public enum TableSpec {
  MACHINES(true, MachineColumns.ALL, "One row for each mill."),
  GUARDS(
      false,
      GuardColumns.ALL,
      "Anything else on a mill that could be hit: sills, covers, arms, heads."),
  VISES(true, ViseColumns.ALL, "One row for each kind of vise."),
  VISE_PARTS(
      false, PartColumns.PARTS, "Boxes that stand out of a vise, or make up its whole body."),
  MOUNTS(false, PartColumns.MOUNTS, "Bolt holes beyond a vise's own pair, one row for each hole."),
  JOBS(false, JobColumns.ALL, "The work to be held."),
  CHECKS(
      false,
      CheckColumns.ALL,
      "Gaps measured on the machine, with a vise bolted there, one row for each gap."),
  STANDING(
      false,
      StandingColumns.ALL,
      "What stands on the machines now, one row for each vise bolted to a table."),
  SETS(
      false,
      SetColumns.ALL,
      "Vises that are to stand on one table together, one row for each kind in a set."),
  SETTINGS(
      false, SettingColumns.COLUMNS, "What holds for the whole shop, one row for each setting.");

  /**
   * The prefix, in any case, of the name of a worked example row. The reader skips such a row and
   * every row that refers to such a name.
   */
  public static final String WORKED = "e.g. ";

  private final boolean required;
  private final List<ColumnSpec> columns;
  private final Map<String, ColumnSpec> byName = new HashMap<>();
  private final String help;

  TableSpec(boolean required, List<ColumnSpec> columns, String help) {
    this.required = required;
    this.columns = columns;
    columns.forEach(column -> byName.put(column.name(), column));
    this.help = help;
  }

  /** The name of its sheet, and of its file without {@code .csv}. */
  public String tableName() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether every shop needs it. */
  public boolean isRequired() {
    return required;
  }

  public List<ColumnSpec> columns() {
    return columns;
  }

  /** For people: what its rows describe. */
  public String help() {
    return help;
  }

  /** Finds a column by its header; case and word separators do not count. */
  public Optional<ColumnSpec> column(String header) {
    // Fast path: the spelling is nearly always exact, and normalising is slow.
    ColumnSpec asSpelled = byName.get(header);
    return Optional.ofNullable(
        asSpelled != null ? asSpelled : byName.get(ColumnSpec.normal(header)));
  }

  /** Finds a table; case and word separators do not count. */
  public static Optional<TableSpec> named(String name) {
    String wanted = ColumnSpec.normal(name);
    return Arrays.stream(values()).filter(table -> table.tableName().equals(wanted)).findFirst();
  }

  /** Whether {@code name} marks a worked example row. */
  public static boolean isWorked(String name) {
    return Names.key(name).startsWith(WORKED);
  }
}
