package org.jawroom.shop.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class MeasurandTest {
  @Test
  void reading_ofARow_isTheColumn() {
    assertEquals("rear_gap", Measurand.of(Column.REAR_GAP, "knee mill").reading());
  }

  @Test
  void reading_ofAGuard_namesIt() {
    assertEquals("gap (sill)", Measurand.of(Column.GUARD_GAP, "knee mill", "sill").reading());
  }

  @Test
  void constructor_withoutARow_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Measurand.of(Column.REAR_GAP, ""));
  }
}
