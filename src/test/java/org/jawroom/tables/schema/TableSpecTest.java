package org.jawroom.tables.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.shop.value.Column;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TableSpecTest {

  @ParameterizedTest
  @EnumSource(Column.class)
  void column_thatMakesAPairingUnknown_mayBeBlank(Column column) {
    ColumnSpec spec =
        TableSpec.named(column.table()).orElseThrow().column(column.column()).orElseThrow();
    assertEquals(Need.UNKNOWN_IF_BLANK, spec.need());
  }

  @ParameterizedTest
  @EnumSource(TableSpec.class)
  void columns_ofOneTable_haveNamesOfTheirOwn(TableSpec table) {
    List<String> names = table.columns().stream().map(ColumnSpec::name).toList();
    assertEquals(names.size(), Set.copyOf(names).size());
  }

  @Test
  void none_standsOnlyInGapsProjectionsHandleRadiusAndBoltSpacing() {
    Set<String> allowed =
        Stream.of(TableSpec.values())
            .flatMap(table -> table.columns().stream())
            .filter(ColumnSpec::noneAllowed)
            .map(ColumnSpec::name)
            .collect(Collectors.toSet());
    assertEquals(
        Set.of(
            "front_gap",
            "rear_gap",
            "left_gap",
            "right_gap",
            "gap",
            "rear_projection_closed",
            "rear_projection_open",
            "front_projection_closed",
            "front_projection_open",
            "handle_radius",
            "bolt_spacing"),
        allowed);
  }

  @ParameterizedTest
  @CsvSource({"Front Gap", "FRONT-GAP", "front_gap", "' front  gap '", "front\u00a0gap"})
  void column_whateverCaseAndJoint_isFound(String header) {
    assertEquals("front_gap", TableSpec.MACHINES.column(header).orElseThrow().name());
  }

  @Test
  void worked_prefixInAnyCase_isSeen() {
    assertTrue(TableSpec.isWorked(" E.g. a mill"));
    assertFalse(TableSpec.isWorked("e.g.mill"));
  }
}
