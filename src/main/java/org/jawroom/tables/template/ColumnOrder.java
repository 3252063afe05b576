package org.jawroom.tables.template;

import java.util.List;
import java.util.stream.Stream;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;

/**
 * The columns of a template's table: first those that everyone needs, then the rest. Everyone needs
 * both columns of the settings.
 */
record ColumnOrder(List<ColumnSpec> everyone, List<ColumnSpec> rest) {

  static ColumnOrder of(TableSpec table) {
    if (table == TableSpec.SETTINGS) {
      return new ColumnOrder(table.columns(), List.of());
    }
    return new ColumnOrder(
        table.columns().stream().filter(ColumnSpec::everyone).toList(),
        table.columns().stream().filter(column -> !column.everyone()).toList());
  }

  List<ColumnSpec> all() {
    return Stream.concat(everyone.stream(), rest.stream()).toList();
  }
}
