package org.jawroom.tables.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.TestShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slots on a table of 600 x 300 mm, on the top and beside it, apart and into each other. */
class SlotPlacesTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "7.000001; 150; 292.999999, x, 14",
    "0.000001; 150; 299.999999, x, ",
    "7.000001; 150; 592.999999, y, 14",
    "100; 114.000001, x, 14",
    "100; 100.000001, x, ",
  })
  void positions_onTheTopAndApart_areAccepted(String positions, String direction, String width)
      throws Exception {
    assertEquals(List.of(), placed(positions, direction, width).faults());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "7; 150 | x | 14 | puts slot 1 off the table: its throat goes from 0 mm to 14 mm, the top from"
            + " 0 mm to 300 mm; measure from the table's edge to centre lines",
        "6; 150 | x | 14 | puts slot 1 off the table: its throat goes from -1 mm to 13 mm, the top from"
            + " 0 mm to 300 mm; measure from the table's edge to centre lines",
        "150; 293 | x | 14 | puts slot 2 off the table: its throat goes from 286 mm to 300 mm, the top"
            + " from 0 mm to 300 mm; measure from the table's edge to centre lines",
        "50; 593 | y | 14 | puts slot 2 off the table: its throat goes from 586 mm to 600 mm, the top"
            + " from 0 mm to 600 mm; measure from the table's edge to centre lines",
        "0; 150 | x | | puts slot 1 off the table: its centre line is at 0 mm, the top from 0 mm to"
            + " 300 mm; measure from the table's edge to centre lines",
        "150; 300 | x | | puts slot 2 off the table: its centre line is at 300 mm, the top from 0 mm to"
            + " 300 mm; measure from the table's edge to centre lines",
        "100; 200; 214 | x | 14 | puts slots 2 and 3 into each other: 14 mm from centre line to centre"
            + " line, each 14 mm wide",
        "100; 113; 200 | x | 14 | puts slots 1 and 2 into each other: 13 mm from centre line to centre"
            + " line, each 14 mm wide",
      })
  void positions_offTheTopOrTooNear_areRefused(
      String positions, String direction, String width, String message) throws Exception {
    assertEquals(
        List.of("machines.csv row 2, column slot_positions: \"" + positions + "\" " + message),
        placed(positions, direction, width).faults());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "45 125 205 | needs ; between the slots, as 45; 125; 205",
        "45, 125, 205 | needs ; between the slots, as 45; 125; 205",
        "45,125,205 | needs ; between the slots, as 45; 125; 205",
        "45 mm 125 mm | needs ; between the slots, as 45; 125; 205",
        "45 mm, 125 mm | needs ; between the slots, as 45; 125; 205",
        "45 125; 205 | needs ; between the slots, as 45; 125; 205",
        "45; 125 mm 205 | needs ; between the slots, as 45; 125; 205",
        "45.5 125.5 | needs ; between the slots, as 45; 125; 205",
        "45,125 | could be 45.125 or 45125; write 45125 or 45.125; or write ; between the slots, as 45;"
            + " 125; 205",
        "45,5 | has a decimal comma; write 45.5, or set the setting decimal to comma; or write ; between"
            + " the slots, as 45; 125; 205",
        "1 7/8; 125 | is a fraction, which only inches have; write 1 7/8 in, or 1.875 mm",
        "45; x | is no number; leave the cell blank if it is not known",
      })
  void positions_notPartedBySemicolons_areRefusedWithAdvice(String positions, String message)
      throws Exception {
    assertEquals(
        List.of("machines.csv row 2, column slot_positions: \"" + positions + "\" " + message),
        placed(positions, "x", "14").faults());
  }

  @ParameterizedTest
  @CsvSource({
    "1, , , 14, true",
    "3, 100, , 14, true",
    "3, 142.999999, , 14, true",
    "3, 143, , 14, false",
    "3, 149.999999, , , true",
    "3, 150, , , false",
    "3, 14.000001, , 14, true",
    "3, 14, , 14, false",
    "3, 14, 100, 14, false",
    "3, 100, 7, 14, false",
    "3, 100, 7.000001, 14, true",
    "3, 100, 92.999999, 14, true",
    "3, 100, 93, 14, false",
    "1, , 293, 14, false",
    "3, , 293, 14, true",
    "0, , 293, 14, true",
  })
  void evenSlots_onTheTopAndApart_areAccepted(
      String count, String pitch, String first, String width, boolean accepted) throws Exception {
    List<String> faults = even(count, pitch, first, width).faults();
    assertEquals(accepted, faults.isEmpty(), faults::toString);
  }

  @Test
  void evenSlots_offTheTop_areAFaultOfTheCellThatPutsThemThere() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 2, column slot_first: \"110\" puts slot 3 off the table: its throat goes"
                + " from 303 mm to 317 mm, the top from 0 mm to 300 mm; measure from the table's edge to"
                + " centre lines"),
        even("3", "100", "110", "14").faults());
    assertEquals(
        List.of(
            "machines.csv row 2, column slot_pitch: \"150\" puts slot 1 off the table: its throat goes"
                + " from -7 mm to 7 mm, the top from 0 mm to 300 mm; check slot_pitch and slot_count, or"
                + " give slot_first"),
        even("3", "150", "", "14").faults());
    assertEquals(
        List.of(
            "machines.csv row 2, column slot_pitch: \"10\" puts slots 1 and 2 into each other: 10 mm from"
                + " centre line to centre line, each 14 mm wide"),
        even("3", "10", "50", "14").faults());
  }

  private TestShop placed(String positions, String direction, String width) {
    return TestShop.in(folder)
        .machine(
            "mill",
            "slot_direction",
            direction,
            "slot_count",
            "",
            "slot_pitch",
            "",
            "slot_positions",
            positions,
            "slot_width",
            width == null ? "" : width)
        .vise("vise");
  }

  private TestShop even(String count, String pitch, String first, String width) {
    return TestShop.in(folder)
        .machine(
            "mill",
            "slot_count",
            count,
            "slot_pitch",
            pitch == null ? "" : pitch,
            "slot_first",
            first == null ? "" : first,
            "slot_width",
            width == null ? "" : width)
        .vise("vise");
  }
}
