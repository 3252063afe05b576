package org.jawroom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.TestShop;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of {@code standing}: every refusal with its whole line, and what a sound one comes to. */
class StandingRefusalTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "machine | mil | is no machine of this shop; did you mean \"mill\"?",
        "vise | vice | is no vise of this shop; did you mean \"vise\"?",
        "handle_to | up | is not one of front, right, rear, left",
        "from_left | 1200.1 | is far off the table, which measures 600 mm that way; measure again from the table's edge",
        "from_front | -300.1 | is far off the table, which measures 300 mm that way; measure again from the table's edge",
        "from_left | 1,250 | could be 1.25 or 1250; write 1250 or 1.25",
        "mount | clamp | is no mount of vise; did you mean \"clamps\"?",
        "mount | odd | is no mount of vise",
      })
  void cell_isRefused(String column, String text, String message) throws Exception {
    List<String> faults =
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "strap_flange", "yes")
            .standing(column, text)
            .faults();
    assertEquals(1, faults.size(), faults.toString());
    String start = "standing.csv row 2, column " + column + ": \"" + text + "\" " + message;
    assertEquals(
        start, faults.get(0).substring(0, Math.min(start.length(), faults.get(0).length())));
  }

  @Test
  void measures_atTheEndsOfWhatIsNearTheTable_areRead() throws Exception {
    assertEquals(
        List.of(),
        TestShop.sound(folder).standing("from_left", "1200", "from_front", "-300").faults());
  }

  @Test
  void blankCells_areRefusedTogether() throws Exception {
    assertEquals(
        List.of(
            "standing.csv row 2, column handle_to: is blank; what belongs here is one of the words given",
            "standing.csv row 2, column from_left: is blank; what belongs here is a length"),
        TestShop.sound(folder).standing("handle_to", "", "from_left", "").faults());
  }

  @Test
  void turn_thatMachineAndViseDoNotAllow_isRefusedForBoth() throws Exception {
    assertEquals(
        List.of(
            "standing.csv row 2, column handle_to: \"rear\" is none of the turns of mill: front"
                + " left; correct it, or turns of mill",
            "standing.csv row 2, column handle_to: \"rear\" is none of the turns of vise: front;"
                + " correct it, or turns of vise"),
        TestShop.in(folder)
            .machine("mill", "turns", "front left")
            .vise("vise", "turns", "front")
            .standing("handle_to", "rear")
            .faults());
  }

  @Test
  void mount_blankWithoutBaseBolts_isRefusedWithThoseThereAre() throws Exception {
    assertEquals(
        List.of(
            "standing.csv row 2, column mount: is blank, but vise has no base bolts; write one of"
                + " ears, clamps"),
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "bolt_spacing", "none", "strap_flange", "yes")
            .mount("vise", "ears")
            .standing()
            .faults());
  }

  @Test
  void report_ofWhatStands_isNotItsTable() throws Exception {
    assertEquals(
        List.of("standing.csv: is the report of standing, not the table of them; take it away"),
        TestShop.sound(folder).standing("says", "fits").faults());
  }

  @Test
  void row_sound_isReadWithItsOwnUnit() throws Exception {
    List<Standing> read =
        TestShop.sound(folder)
            .standing(
                "machine",
                "MILL",
                "from_left",
                "10",
                "unit",
                "in",
                "from_front",
                "150 mm",
                "source",
                "tape",
                "measured",
                "A. B.")
            .standing("mount", "Base Bolts", "tolerance", "0.5")
            .read()
            .shop()
            .orElseThrow()
            .standing();
    assertEquals(2, read.size());
    assertEquals("mill", read.get(0).machine().name());
    assertEquals(
        new TapedPlace(Orientation.FRONT, 254 * Length.MM, 150 * Length.MM), read.get(0).place());
    assertEquals(3 * Length.MM / 2, read.get(0).tolerance());
    assertEquals("A. B.", read.get(0).provenance().measured());
    assertEquals("base bolts", read.get(1).mount());
    assertEquals(Length.MM / 2, read.get(1).tolerance());
  }
}
