package org.jawroom.tables.row.size;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.TestShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths that no machine or vise has, from a wrong unit. */
class KnownSizesTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "table_length, 100, 40000",
    "table_width, 100, 40000",
    "travel_x, 0, 40000",
    "travel_y, 0, 40000",
    "slot_width, 0, 80"
  })
  void machine_atTheLimits_isAcceptedAndJustBeyondNot(String column, long least, long most)
      throws Exception {
    for (String mm : List.of(least + "", least + ".000001", most - 1 + ".999999", most + "")) {
      assertEquals(List.of(), faults(machine(column, mm)), mm);
    }
    assertEquals(1, faults(machine(column, most + ".000001")).size());
    if (least > 0) {
      assertEquals(1, faults(machine(column, least - 1 + ".999999")).size());
    }
  }

  @ParameterizedTest
  @CsvSource({"jaw_width, 10, 2000", "opening_max, 0, 3000", "bed_height, 0, 1000"})
  void vise_atTheLimits_isAcceptedAndJustBeyondNot(String column, long least, long most)
      throws Exception {
    for (String mm : List.of(least + "", least + ".000001", most - 1 + ".999999", most + "")) {
      assertEquals(List.of(), faults(vise(column, mm)), mm);
    }
    assertEquals(1, faults(vise(column, most + ".000001")).size());
    if (least > 0) {
      assertEquals(1, faults(vise(column, least - 1 + ".999999")).size());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "jaw_width | 127 in | 127 in (3225.8 mm) is no vise's: is it 127 mm?",
        "jaw_width | 6 | 6 mm is no vise's: is it 6 in?",
        "jaw_width | 0 | 0 mm is no vise's; check the number and its unit",
        "jaw_width | 0.15 | 0.15 mm is no vise's: is it 0.15 m?",
        "jaw_width | 79 1/2 in | 79 1/2 in (2019.3 mm) is no vise's; check the number and its unit",
        "opening_max | 165 in | 165 in (4191 mm) is no vise's: is it 165 mm?",
        "opening_max | 16 m | 16 m (16000 mm) is no vise's: is it 16 mm?",
        "bed_height | 75\" | 75 in (1905 mm) is no vise's: is it 75 mm?",
        "bed_height | 1001 | 1001 mm is no vise's; check the number and its unit",
      })
  void vise_beyondTheLimits_isRefusedWithAGuess(String column, String text, String message)
      throws Exception {
    assertEquals(
        List.of(
            "vises.csv row 2, column "
                + column
                + ": \""
                + text
                + "\" as "
                + column
                + " "
                + message),
        vise(column, text).faults());
  }

  @Test
  void machine_inTheOtherUnit_isRefusedWithAGuessForEachSize() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 2, column table_length: \"1600\" as table_length 1600 in (40640 mm)"
                + " is no machine's: is it 1600 mm?",
            "machines.csv row 2, column travel_x: \"1580\" as travel_x 1580 in (40132 mm) is no"
                + " machine's: is it 1580 mm?",
            "machines.csv row 2, column slot_width: \"14\" as slot_width 14 in (355.6 mm) is no"
                + " machine's: is it 14 mm?"),
        TestShop.in(folder)
            .machine(
                "mill",
                "unit",
                "in",
                "table_length",
                "1600",
                "travel_x",
                "1580",
                "slot_width",
                "14")
            .vise("vise")
            .faults());
    assertEquals(
        List.of(
            "machines.csv row 2, column table_length: \"30\" as table_length 30 mm is no machine's:"
                + " is it 30 in?",
            "machines.csv row 2, column table_width: \"10.25\" as table_width 10.25 mm is no"
                + " machine's: is it 10.25 in?"),
        TestShop.in(folder)
            .machine("mill", "table_length", "30", "table_width", "10.25", "slot_count", "0")
            .vise("vise")
            .faults());
  }

  private TestShop machine(String column, String mm) {
    return TestShop.in(folder).machine("mill", "slot_count", "0", column, mm).vise("vise");
  }

  private TestShop vise(String column, String mm) {
    return TestShop.in(folder).machine("mill").vise("vise", column, mm);
  }

  private static List<String> faults(TestShop shop) throws Exception {
    return shop.faults();
  }
}
