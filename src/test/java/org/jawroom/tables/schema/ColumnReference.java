package org.jawroom.tables.schema;

import java.util.List;

/** The reference of all tables, columns and settings as Markdown, made from the descriptors. */
final class ColumnReference {
  private ColumnReference() {}

  private static final String INTRODUCTION =
      """
      # The columns of the tables

      This page is generated from the descriptors in `org.jawroom.tables.schema`. Do not edit it by hand.

      The tables are the sheets of one XLSX workbook, or CSV files of the same names in one folder, as in
      [demo](demo). The order of the columns is free. Start with the columns in **bold**; the others are for
      special cases. `jawroom template shop.xlsx` writes an empty workbook with the same explanations as comments.

      - *must be filled*: without it the tables are refused.
      - *unknown*: a blank is a dimension that nobody has measured. It is never zero. What hangs on it gets the
        verdict `unknown`.
      - A *range* is a length known within bounds: `50..60`, `50 to 60`, `at most 60`, `at least 50`, `60 ± 2`. A unit
        after the last number holds for both.
      - Any other entry under *If blank* is what a blank stands for.
      - `none` says that the thing is not there. It may stand only where *Holds* names it.
      - A length may have a unit: `165 mm`, `16.5 cm`, `6 1/2 in`. A bare number is in the `unit` of its own row,
        else in the setting `unit`, else in mm.
      """;

  /** One section a table, then one for the settings; lines end with a line feed. */
  static String text() {
    StringBuilder text = new StringBuilder(INTRODUCTION);
    for (TableSpec table : TableSpec.values()) {
      text.append("\n## ").append(table.tableName()).append("\n\n");
      text.append(table.help());
      text.append(table.isRequired() ? " This table is required.\n\n" : " Optional.\n\n");
      appendTable(text, "Column", table.columns());
    }
    text.append("\n## Names and values in settings\n\n");
    text.append("A row of `settings` has one of these names under `setting`.\n\n");
    appendTable(text, "Setting", SettingColumns.SETTINGS);
    return text.toString();
  }

  private static void appendTable(StringBuilder text, String heading, List<ColumnSpec> columns) {
    text.append("| ").append(heading).append(" | Holds | If blank | What it is |\n");
    text.append("| --- | --- | --- | --- |\n");
    for (ColumnSpec column : columns) {
      String name = "`" + column.name() + "`";
      text.append("| ").append(column.everyone() ? "**" + name + "**" : name);
      text.append(" | ").append(cell(holds(column)));
      text.append(" | ").append(cell(ifBlank(column)));
      text.append(" | ").append(cell(column.help())).append(" |\n");
    }
  }

  private static String holds(ColumnSpec column) {
    String kind =
        column.words().isEmpty() ? column.kind().words() : String.join(", ", column.words());
    String lengths = column.takesRanges() ? kind + ", or a range" : kind;
    return column.noneAllowed() ? lengths + ", or none" : lengths;
  }

  private static String ifBlank(ColumnSpec column) {
    return switch (column.need()) {
      case REQUIRED -> "*must be filled*";
      case UNKNOWN_IF_BLANK -> "*unknown*";
      case OPTIONAL -> column.blankMeans();
    };
  }

  /** Text as it may stand between the bars of a Markdown table. */
  static String cell(String text) {
    return text.replace("|", "\\|").replace("<", "&lt;").replace("\n", " ");
  }
}
