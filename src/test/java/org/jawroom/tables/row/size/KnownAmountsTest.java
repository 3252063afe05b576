package org.jawroom.tables.row.size;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.TestShop;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Masses, forces, tolerances and settings at and beyond what a shop may have. */
class KnownAmountsTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "machines, max_load, 1, 0.9999",
    "machines, max_load, 500000, 500000.0001",
    "machines, tolerance, 100, 100.000001",
    "vises, mass, 0.1, 0.0999",
    "vises, mass, 2000, 2000.0001",
    "vises, clamp_force, 1000, 1000.0001",
    "vises, tolerance, 100, 100.000001",
    "guards, clearance, 500, 500.000001",
    "guards, tolerance, 100, 100.000001",
    "vise_parts, tolerance, 100, 100.000001",
    "jobs, mass, 20000, 20000.0001",
    "jobs, tool_length, 2000, 2000.000001",
    "settings, clearance, 500, 500.000001",
    "settings, hand_room, 500, 500.000001",
    "settings, spacing, 1000, 1000.000001",
    "settings, clamp_room, 500, 500.000001",
    "settings, shortest_tool, 1000, 1000.000001",
    "settings, tap_room, 1000, 1000.000001",
    "settings, jaw_play, 1000, 1000.000001",
    "settings, load_room, 1000, 1000.000001",
    "settings, comfort, 1000, 1000.000001",
    "settings, least_opening, 3000, 3000.000001",
    "settings, max_overhang, 2000, 2000.000001",
  })
  void cell_atTheLimit_isAcceptedAndJustBeyondNot(
      String table, String column, String at, String beyond) throws Exception {
    assertEquals(List.of(), shop(table, column, at).faults());
    List<String> faults = shop(table, column, beyond).faults();
    assertEquals(1, faults.size(), faults::toString);
    assertEquals(true, faults.get(0).contains("as " + column + " "), faults::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "clearance, 6 m, as clearance 6 m (6000 mm) is no shop's: is it 6 mm?",
    "hand_room, 25 in, as hand_room 25 in (635 mm) is no shop's: is it 25 mm?",
    "jaw_play, 1500, as jaw_play 1500 mm is no shop's; check the number and its unit",
    "shortest_tool, 60 in, as shortest_tool 60 in (1524 mm) is no shop's: is it 60 mm?"
  })
  void setting_absurd_isRefusedInTheTableAndAsAnOption(String name, String text, String message)
      throws Exception {
    assertEquals(
        List.of("settings.csv row 2, column value: \"" + text + "\" " + message),
        TestShop.sound(folder).setting(name, text).faults());
    assertEquals(
        List.of("option --" + name.replace('_', '-') + ": \"" + text + "\" " + message),
        TestShop.sound(folder).setting(name, "").option(name, text).faults());
  }

  private TestShop shop(String table, String column, String text) {
    return switch (table) {
      case "machines" -> TestShop.in(folder).machine("mill", column, text).vise("vise");
      case "vises" -> TestShop.in(folder).machine("mill").vise("vise", column, text);
      case "guards" -> TestShop.sound(folder).guard("mill", "box", "x_min", "0", column, text);
      case "vise_parts" -> TestShop.sound(folder).part("vise", "box", column, text);
      case "jobs" -> TestShop.sound(folder).job("job", column, text);
      case "settings" -> TestShop.sound(folder).setting(column, text);
      default -> throw new IllegalArgumentException(table);
    };
  }
}
