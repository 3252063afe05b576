package org.jawroom.tables.row;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.fixture.TestShop;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.tables.Reading;
import org.jawroom.tables.cell.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which unit people read: their wish, the machine's row, or most rows; never what a cell means. */
class NotationTest {
  @TempDir private Path folder;

  private static boolean wholeShop(Unit... rows) {
    Map<String, Unit> machines = new java.util.HashMap<>();
    for (Unit unit : rows) {
      machines.put("mill " + machines.size(), unit);
    }
    return new Notation(Unit.MM, false, Optional.empty(), machines).inches();
  }

  @Test
  void inches_ofWholeShop_asMostMachinesAndMillimetresIfTied() {
    assertEquals(false, wholeShop());
    assertEquals(true, wholeShop(Unit.IN));
    assertEquals(false, wholeShop(Unit.IN, Unit.MM));
    assertEquals(false, wholeShop(Unit.IN, Unit.IN, Unit.CM, Unit.M));
    assertEquals(true, wholeShop(Unit.IN, Unit.IN, Unit.IN, Unit.CM, Unit.MM));
  }

  @Test
  void show_otherThanMillimetresAndInches_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Notation(Unit.MM, false, Optional.of(Unit.CM), Map.of()));
  }

  @Test
  void inches_ofOneMachine_asItsRowElseTheSetting() throws Exception {
    Reading reading =
        TestShop.in(folder)
            .machine("metric", "unit", "cm")
            .machine("inch", "unit", "inch")
            .machine("bare", "unit", "")
            .vise("vise")
            .setting("unit", "in")
            .read();
    List<Boolean> inches =
        reading.shop().orElseThrow().machines().stream()
            .map(machine -> reading.notation().inches(machine))
            .toList();
    assertEquals(List.of(false, true, true), inches);
    assertEquals(true, reading.notation().inches());
  }

  @Test
  void show_setOrAsked_holdsForEveryMachineAndChangesNoLength() throws Exception {
    Shop plain = mixed("").read().shop().orElseThrow();
    for (String show : List.of("mm", "in", "Inches", "\"")) {
      Reading set = mixed(show).read();
      Reading asked = mixed("").option("show", show).read();
      for (Reading reading : List.of(set, asked)) {
        boolean inches = !show.equals("mm");
        for (Machine machine : reading.shop().orElseThrow().machines()) {
          assertEquals(inches, reading.notation().inches(machine));
        }
        assertEquals(inches, reading.notation().inches());
        assertEquals(plain, reading.shop().orElseThrow());
      }
    }
    assertEquals(5 * Length.INCH, mixed("mm").read().shop().orElseThrow().settings().clearance());
  }

  @Test
  void show_cmOrOther_isRefused() throws Exception {
    assertEquals(
        List.of(
            "option --show: \"furlong\" is not possible here; write mm or in",
            "settings.csv row 3, column value: \"cm\" is not possible here; write mm or in"),
        mixed("cm").option("show", "furlong").faults());
  }

  @Test
  void unit_asAnOption_isAnErrorOfTheCaller() {
    assertThrows(IllegalArgumentException.class, () -> mixed("").option("unit", "in").read());
  }

  private TestShop mixed(String show) {
    return TestShop.in(folder)
        .machine("metric", "unit", "mm")
        .machine("inch", "unit", "in", "table_width", "20", "slot_pitch", "5")
        .machine("bare", "table_width", "200 mm", "slot_pitch", "70 mm")
        .vise("vise", "unit", "mm")
        .setting("unit", "in")
        .setting("show", show)
        .setting("clearance", "5");
  }
}
