package org.jawroom.tables.template;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.Need;
import org.jawroom.tables.schema.TableSpec;
import org.junit.jupiter.api.Test;

class FormContentsTest {

  /** Filled in at the desk, or the sum of readings that the form asks for. */
  private static final Set<String> NOT_READ_OFF = Set.of("machine", "vise", "table_moves");

  @Test
  void columns_everyReadingThatMayBeUnknownOrMustBeThere_isAskedOnce() {
    for (TableSpec table : List.of(TableSpec.MACHINES, TableSpec.VISES)) {
      List<String> asked =
          Stream.of(FormContents.values())
              .filter(page -> page.table() == table)
              .flatMap(page -> page.columns().stream())
              .map(ColumnSpec::name)
              .toList();
      assertEquals(asked.size(), Set.copyOf(asked).size(), asked::toString);
      Set<String> left = new TreeSet<>();
      for (ColumnSpec column : table.columns()) {
        if ((column.need() == Need.UNKNOWN_IF_BLANK || column.isRequired())
            && !asked.contains(column.name())
            && !NOT_READ_OFF.contains(column.name())) {
          left.add(column.name());
        }
      }
      assertEquals(Set.of(), left);
    }
  }
}
