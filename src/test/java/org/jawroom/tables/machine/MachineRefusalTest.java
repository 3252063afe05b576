package org.jawroom.tables.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.TestShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every refusal of machines and guards, with its whole line. */
class MachineRefusalTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "rear_gap | 1,250 | could be 1.25 or 1250; write 1250 or 1.25",
        "rear_gap | 4-Jan | is a date, as spreadsheets make of fractions; for 1/4 in type 0.25 in",
        "slot_width | none | is not allowed here; leave the cell blank if it is not known",
        "table_moves | yy | is not what moves a table; write letters out of x, y, z, as xy, or none",
        "table_moves | x y | is not what moves a table; write letters out of x, y, z, as xy, or none",
        "table_length | 0 | is 0, but table_length must be above 0",
        "table_width | -300 | is below 0, which table_width cannot be",
        "travel_x | -1 | is below 0, which travel_x cannot be",
        "slot_direction | z | is not one of x, y",
        "slot_count | 2.5 | is not a whole number",
        "slot_count | -1 | is below 0",
        "slot_count | 1001 | is more slots than any table has",
        "slot_width | -14 | is below 0, which slot_width cannot be",
        "slot_pitch | 0 | is 0, but slot_pitch must be above 0",
        "slot_length | -1 | is below 0, which slot_length cannot be",
        "front_ledge | -1 | is below 0, which front_ledge cannot be",
        "front_ledge | none | is not allowed here; leave the cell blank if it is not known",
        "max_load | 1.250 | could be 1.25 or 1250; write 1250 or 1.25",
        "max_load | 0.5 kg | as max_load 0.5 kg is no machine's: is it 500 kg?",
        "max_load | 600000 kg | as max_load 600000 kg is no machine's: is it 600 kg?",
        "tolerance | 1.5 m | as tolerance 1.5 m (1500 mm) is no machine's: is it 1.5 mm?",
        "max_load | 300 t | has a unit that is not known; write kg or lb",
        "load_x | 200.1 | is outside the spindle's reach, which goes from -200 mm to 200 mm",
        "load_y | -151 | is outside the spindle's reach, which goes from -150 mm to 150 mm",
        "turns | front back | has back, which is not one of front, right, rear, left",
        "looked_for | none | is not allowed here; leave the cell blank",
        "tolerance | -1 | is below 0, which tolerance cannot be",
        "source | guess | is not one of drawing, caliper, rule, tape, brochure",
        "status | sold | is not one of owned, candidate",
        "price | 0 | is no price; leave the cell blank where nothing is for sale",
        "price | 5 pounds | is not a number; write digits alone, as 25 or 12.5",
        "unit | feet | is not a unit of length; write mm, cm, m or in",
      })
  void cell_ofMachine_isRefused(String column, String text, String message) throws Exception {
    TestShop shop = TestShop.in(folder).machine("mill", column, text).vise("vise");
    assertEquals(
        List.of("machines.csv row 2, column " + column + ": \"" + text + "\" " + message),
        shop.faults());
  }

  @Test
  void requiredCell_blank_isRefused() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 2, column table_moves: is blank; what belongs here is letters out of x, y, z,"
                + " or none",
            "machines.csv row 2, column slot_count: is blank; what belongs here is a whole number, 0 or"
                + " more"),
        TestShop.in(folder)
            .machine("mill", "table_moves", "", "slot_count", " ")
            .vise("vise")
            .faults());
  }

  @Test
  void noseMin_aboveNoseMax_isRefused() throws Exception {
    assertEquals(
        List.of("machines.csv row 2, column nose_min: \"501\" is above nose_max, 500"),
        TestShop.in(folder)
            .machine("mill", "nose_min", "501", "nose_max", "500")
            .vise("vise")
            .faults());
  }

  @Test
  void slotPositions_besideCountPitchAndFirst_areRefused() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 2, column slot_count: \"3\" must stay blank where slot_positions is filled",
            "machines.csv row 2, column slot_pitch: \"100\" must stay blank where slot_positions is filled",
            "machines.csv row 2, column slot_positions: \"45; 125; 125\" does not rise from each slot to the"
                + " next"),
        TestShop.in(folder)
            .machine("mill", "slot_positions", "45; 125; 125")
            .vise("vise")
            .faults());
  }

  @Test
  void slotCount_missingBesideBlankPositions_isRefused() throws Exception {
    TestShop.write(
        folder.resolve("machines.csv"),
        "machine,table_moves,table_length,table_width,travel_x,travel_y,slot_positions\n"
            + "mill,xy,600,300,400,300,\n");
    assertEquals(
        List.of(
            "machines.csv row 2, column slot_count: is blank; what belongs here is a whole number, 0 or"
                + " more"),
        TestShop.in(folder).vise("vise").faults());
  }

  @Test
  void row_withoutAGoodName_isStillReadToItsEnd() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 3, column machine: is blank; what belongs here is a name",
            "machines.csv row 3, column rear_gap: \"x\" is no number; leave the cell blank if it is not"
                + " known"),
        TestShop.sound(folder).machine("", "rear_gap", "x").faults());
  }

  @Test
  void names_alikeButForCase_areRefused() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 3, column machine: \"MILL\" is already the name of row 2 (case does not"
                + " count)"),
        TestShop.sound(folder).machine("MILL").faults());
  }

  @Test
  void name_thatSpreadsheetsRun_isRefused() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 3, column machine: \"=1\" begins with =, which spreadsheets take for a formula",
            "machines.csv row 4, column machine: \"a\\u000Ab\" holds a line break, a tab or another character"
                + " that nobody sees (U+000A); retype it"),
        TestShop.sound(folder).machine("=1").machine("a\nb").faults());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "carried_by | xx | is not what can carry a guard; write frame, saddle, head, table, or letters out of"
            + " x, y, z",
        "carried_by | none | is not what can carry a guard; write frame, saddle, head, table, or letters out"
            + " of x, y, z",
        "kind | robot | is not one of door, sill, cover, guard, column, head, tool changer, nozzle, other",
        "when | never | is not one of cutting, loading, always",
        "side | back | is not one of front, rear, left, right",
        "x_max | -1 | NO FAULT",
        "x_min | 11 | is above x_max, 10",
        "gap | 40 | is a gap without side; write front, rear, left or right into side",
        "gap | none | is a gap without side; write front, rear, left or right into side",
        "clearance | -1 | is below 0, which clearance cannot be",
        "tolerance | -1 | is below 0, which tolerance cannot be",
        "guard | Rear-Cover | is a name of the model's own; give it another",
        "guard | TABLE | is a name of the model's own; give it another",
        "machine | mil | is no machine of this shop; did you mean \"mill\"?",
        "machine | elsewhere | is no machine of this shop",
      })
  void cell_ofGuard_isRefused(String column, String text, String message) throws Exception {
    String[] cells =
        column.equals("x_max")
            ? new String[] {column, text}
            : new String[] {"x_max", "10", column, text};
    List<String> expected =
        message.equals("NO FAULT")
            ? List.of()
            : List.of("guards.csv row 2, column " + column + ": \"" + text + "\" " + message);
    assertEquals(expected, TestShop.sound(folder).guard("mill", "arm", cells).faults());
  }

  @Test
  void guard_withNeitherSideNorLimits_isRefused() throws Exception {
    assertEquals(
        List.of("guards.csv row 2: has neither side nor limits, so it would fill the whole room"),
        TestShop.sound(folder).guard("mill", "arm").faults());
  }

  @Test
  void guard_limitsAlongItsSide_areRefusedEvenWithGapNone() throws Exception {
    assertEquals(
        List.of(
            "guards.csv row 2, column y_min: \"0\" must stay blank where side is front;"
                + " the gap gives that limit",
            "guards.csv row 3, column x_max: \"9\" must stay blank where side is left;"
                + " the gap gives that limit"),
        TestShop.sound(folder)
            .guard("mill", "sill", "side", "front", "gap", "40", "y_min", "0", "x_max", "")
            .guard("mill", "arm", "side", "left", "gap", "none", "x_max", "9")
            .faults());
  }

  @Test
  void guard_nameTwiceOnOneMachine_isRefused() throws Exception {
    assertEquals(
        List.of(
            "guards.csv row 4, column guard: \"ARM\" is already the name of row 2 (case does not count)"),
        TestShop.sound(folder)
            .machine("other")
            .guard("mill", "arm", "x_min", "0")
            .guard("other", "arm", "x_min", "0")
            .guard("mill", "ARM", "x_min", "0")
            .faults());
  }

  @Test
  void guard_headWhereTheTableMovesAlongZ_isRefused() throws Exception {
    assertEquals(
        List.of(
            "guards.csv row 2, column carried_by: \"head\" is not possible where the"
                + " table itself moves along z,"
                + " since the head stands still there; write frame"),
        TestShop.in(folder)
            .machine("mill", "table_moves", "zyx")
            .vise("vise")
            .guard("mill", "arm", "carried_by", "head", "z_min", "0")
            .faults());
  }
}
