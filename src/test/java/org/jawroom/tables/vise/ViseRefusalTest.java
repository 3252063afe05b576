package org.jawroom.tables.vise;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.TestShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every refusal of vises, their parts and mounts, jobs and settings, with its whole line. */
class ViseRefusalTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "jaw_width",
        "jaw_height",
        "plates_width",
        "plates_height",
        "bed_height",
        "opening_min",
        "opening_max",
        "base_width",
        "rear_reach",
        "front_reach",
        "base_length",
        "fixed_jaw_thickness",
        "moving_jaw_thickness",
        "rear_projection_closed",
        "rear_projection_open",
        "front_projection_closed",
        "front_projection_open",
        "screw_height",
        "screw_diameter",
        "handle_radius",
        "handle_depth",
        "bolt_spacing",
        "bolt_hole_u",
        "bolt_hole_v",
        "bolt_grip",
        "tolerance"
      })
  void size_belowZero_isRefused(String column) throws Exception {
    assertEquals(
        List.of(
            "vises.csv row 2, column "
                + column
                + ": \"-1\" is below 0, which "
                + column
                + " cannot be"),
        TestShop.in(folder).machine("mill").vise("vise", column, "-1").faults());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "jaws | two | is not one of one, both",
        "quantity | -1 | is below 0",
        "opening_min | 151 | is above opening_max, 150 mm",
        "rear_reach | none | is not allowed here; leave the cell blank if it is not known",
        "bolt_u | none | is not allowed here; leave the cell blank if it is not known",
        "handle | maybe | is not one of off, on",
        "handle_swing | half | is not one of upper, full",
        "turns | none | is not one of front, right, rear, left",
        "strap_flange | TRUE | is not one of no, yes",
        "mass | 5 stone | has a unit that is not known; write kg or lb",
        "clamp_force | -1 | is below 0",
        "price | -1 | is below 0",
        "price | 0.00 | is no price; leave the cell blank where nothing is for sale",
        "price | 12.345 | could be 12.345 or 12345; write 12345 or 12.35",
        "price | 1.250 | could be 1.25 or 1250; write 1250 or 1.25",
        "price | 12.3456 | has more than two decimals; write 12.35",
        "quantity | 1.000 | could be 1 or 1000; write 1000 or 1",
        "mass | 39.000 | could be 39 or 39000; write 39000 or 39",
        "mass | 39.125 kg | could be 39.125 or 39125; write 39125 kg or 39.1250 kg",
        "mass | 1.250 lb | could be 1.25 or 1250; write 1250 lb or 1.25 lb",
        "clamp_force | 25.000 | could be 25 or 25000; write 25000 or 25",
        "mass | 39000 | as mass 39000 kg is no vise's: is it 39 kg?",
        "mass | 86000 lb | as mass 39008.94382 kg is no vise's: is it 39 kg?",
        "mass | 0.039 | as mass 0.039 kg is no vise's: is it 39 kg?",
        "mass | 0 | as mass 0 kg is no vise's; check the number and its unit",
        "clamp_force | 25000 | as clamp_force 25000 kN is no vise's: is it 25 kN?",
        "tolerance | 100 m | as tolerance 100 m (100000 mm) is no vise's: is it 100 mm?",
        "price | 10000000000.01 | is too large; the highest price is 10000000000",
        "price | 450 EUR | is not a number; write digits alone, as 25 or 12.5",
        "shape | blob | is not one of simple, parts",
        "shape | parts | asks for rows of vise_parts, but this vise has none there",
      })
  void cell_ofVise_isRefused(String column, String text, String message) throws Exception {
    assertEquals(
        List.of("vises.csv row 2, column " + column + ": \"" + text + "\" " + message),
        TestShop.in(folder).machine("mill").vise("vise", column, text).faults());
  }

  @Test
  void reaches_thatDoNotAddUp_areRefused() throws Exception {
    assertEquals(
        List.of(
            "vises.csv row 2, column base_length: \"261\" is not rear_reach and front_reach together, 260 mm",
            "vises.csv row 3, column base_length: \"50\" is less than front_reach, 200"),
        TestShop.in(folder)
            .machine("mill")
            .vise("a", "rear_reach", "60", "front_reach", "200", "base_length", "261")
            .vise("b", "front_reach", "200", "base_length", "50")
            .faults());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "part | Fixed_Jaw | is a name of the model's own; give it another",
        "part | bolts | is a name of the model's own; give it another",
        "vise | vize | is no vise of this shop; did you mean \"vise\"?",
        "when | seldom | is not one of cutting, loading, always",
        "u_min_closed | 11 | is above u_max_closed, 10",
        "u_min_open | 11 | is above u_max_open, which is as closed",
        "u_max_open | -1 | is below u_min_open, which is as closed",
        "v_min | 6 | is above v_max, 5",
        "w_min | 21 | is above w_max, 20",
        "tolerance | -1 | is below 0, which tolerance cannot be",
        "w_max | none | is not allowed here; leave the cell blank if it is not known",
      })
  void cell_ofPart_isRefused(String column, String text, String message) throws Exception {
    assertEquals(
        List.of("vise_parts.csv row 2, column " + column + ": \"" + text + "\" " + message),
        TestShop.sound(folder).part("vise", "box", column, text).faults());
  }

  @Test
  void part_nameTwiceOnOneVise_isRefused() throws Exception {
    assertEquals(
        List.of(
            "vise_parts.csv row 3, column part: \"Handle\" is already the name of row 2 (case does not"
                + " count)"),
        TestShop.sound(folder).part("vise", "handle").part("vise", "Handle").faults());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mount | Base Bolts | \"Base Bolts\" is a name of the model's own; give it another",
        "u | '' | is blank; what belongs here is a length",
        "v | none | \"none\" is not allowed here; leave the cell blank if it is not known",
        "hole_u | -1 | \"-1\" is below 0, which hole_u cannot be",
      })
  void cell_ofMount_isRefused(String column, String text, String message) throws Exception {
    assertEquals(
        List.of("mounts.csv row 2, column " + column + ": " + message),
        TestShop.sound(folder).mount("vise", "wide", column, text).faults());
  }

  @Test
  void mount_spelledTwoWays_isRefused() throws Exception {
    assertEquals(
        List.of(
            "mounts.csv row 3, column mount: \"Wide\" is spelled \"wide\" before; spell one mount one"
                + " way"),
        TestShop.sound(folder).mount("vise", "wide").mount("vise", "Wide").faults());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "part_width | -1 | is below 0, which part_width cannot be",
        "grip | none | is not allowed here; leave the cell blank if it is not known",
        "jaws_along | z | is not one of any, x, y",
        "machines | mill; mil | has mil, which is no machine of this shop; did you mean \"mill\"?",
        "machines | ; | names no machine; leave it blank for all",
        "quantity | few | is not a whole number; write digits alone, as 3",
        "tool_length | -1 | is below 0, which tool_length cannot be",
      })
  void cell_ofJob_isRefused(String column, String text, String message) throws Exception {
    assertEquals(
        List.of("jobs.csv row 2, column " + column + ": \"" + text + "\" " + message),
        TestShop.sound(folder).job("job", column, text).faults());
  }

  @Test
  void settings_wrong_areRefused() throws Exception {
    assertEquals(
        List.of(
            "option --hand-room: \" \" is blank; an option needs a value",
            "option --clearence: is not a setting; did you mean \"clearance\"?",
            "option --spacing: \"wide\" is not a length; write a number, with a unit if you like, as 165, 165"
                + " mm, 6.5in or 6 1/2\"",
            "settings.csv row 2, column setting: \"handroom\" is not a setting; did you mean \"hand_room\"?",
            "settings.csv row 3, column value: \"-1\" is below 0, which clearance cannot be",
            "settings.csv row 4, column setting: \"Clearance\" is already set in settings.csv row 3",
            "settings.csv row 5, column value: \"0.009\" is less than 0.01 mm",
            "settings.csv row 6, column value: \"feet\" is not possible here; write mm, cm, m or in",
            "settings.csv row 7, column value: \"dot\" is not possible here; write point or comma",
            "settings.csv row 8, column value: \"none\" is not allowed here; leave the cell blank if it is"
                + " not known"),
        TestShop.sound(folder)
            .setting("handroom", "5")
            .setting("clearance", "-1")
            .setting("Clearance", "5")
            .setting("least-opening", "0.009")
            .setting("unit", "feet")
            .setting("decimal", "dot")
            .setting("max_overhang", "none")
            .option("hand_room", " ")
            .option("spacing", "wide")
            .option("clearence", "5")
            .faults());
  }
}
