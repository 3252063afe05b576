package org.jawroom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jawroom.fixture.TestShop;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Check;
import org.jawroom.shop.machine.Guard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of {@code checks}: every refusal with its whole line, and what blanks come to. */
class CheckRefusalTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "machine | mil | is no machine of this shop; did you mean \"mill\"?",
        "vise | vice | is no vise of this shop; did you mean \"vise\"?",
        "handle_to | back | is not one of front, right, rear, left",
        "from_left | -1,5 | has a decimal comma; write -1.5, or set the setting decimal to comma",
        "from_left | 1200.1 | is far off the table, which measures 600 mm that way; measure again from the table's edge",
        "from_front | -300.1 | is far off the table, which measures 300 mm that way; measure again from the table's edge",
        "part | screw reer | is no part of vise; did you mean \"screw rear\"?",
        "guard | dor | is no guard of mill; did you mean \"door\"?",
        "guard | left guard | is no guard of mill",
        "opening | shut | is not closed, open or a length",
        "opening | 150.1 | is outside what vise opens; write closed, open, or a length from opening_min to opening_max",
        "opening | 10..20 | is a range, but opening takes one length",
        "situation | setup | is not one of cutting, loading",
        "axis | w | is not one of x, y, z",
        "found | 50-60 | has a hyphen between two numbers; write one length",
        "tolerance | -1 | is below 0, which tolerance cannot be",
        "tolerance | 10.1 | as tolerance 10.1 mm is no check's; check the number and its unit",
        "tolerance | 500 mm | as tolerance 500 mm is no check's; check the number and its unit",
        "source | guess | is not one of drawing, caliper, rule, tape, brochure",
      })
  void cell_isRefused(String column, String text, String message) throws Exception {
    assertEquals(
        List.of("checks.csv row 2, column " + column + ": \"" + text + "\" " + message),
        TestShop.sound(folder).check(column, text).faults());
  }

  @Test
  void place_upToATableAwayFromTheTable_isRead() throws Exception {
    assertEquals(
        List.of(),
        TestShop.sound(folder).check("from_left", "1200", "from_front", "-300").faults());
  }

  @Test
  void rows_withSeveralFaults_nameThemAll() throws Exception {
    assertEquals(
        List.of(
            "checks.csv row 2, column found: is blank; what belongs here is a length, 0 or more",
            "checks.csv row 3, column axis: \"q\" is not one of x, y, z",
            "checks.csv row 3, column handle_to: is blank; what belongs here is one of the words"
                + " given"),
        TestShop.sound(folder)
            .check("found", "")
            .check("handle_to", "", "axis", "q")
            .faults()
            .stream()
            .sorted()
            .toList());
  }

  @Test
  void report_ofChecks_isNotTheirTable() throws Exception {
    assertEquals(
        List.of("checks.csv: is the report of checks, not the table of them; take it away"),
        TestShop.sound(folder).check("says", "agrees").faults());
  }

  @Test
  void blanks_haveTheDefaultsOfThePage() throws Exception {
    Check check = TestShop.sound(folder).check().read().shop().orElseThrow().checks().get(0);
    assertEquals(Check.Opening.CLOSED, check.opening());
    assertEquals(true, check.whileCutting());
    assertEquals(Optional.empty(), check.axis());
    assertEquals(0, check.provenance().tolerance());
    assertEquals(Optional.of("door"), check.guard().map(Guard::name));
  }

  @Test
  void cells_areRead() throws Exception {
    Check check =
        TestShop.sound(folder)
            .check(
                "handle_to",
                "left",
                "guard",
                "Table",
                "opening",
                "1/2 in",
                "situation",
                "loading",
                "axis",
                "z",
                "found",
                "4 cm",
                "source",
                "rule")
            .read()
            .shop()
            .orElseThrow()
            .checks()
            .get(0);
    assertEquals(Orientation.LEFT, check.handleTo());
    assertEquals(Optional.empty(), check.guard());
    assertEquals(Length.INCH / 2, check.opening().on(check.vise()));
    assertEquals(false, check.whileCutting());
    assertEquals(Optional.of(Axis.Z), check.axis());
    assertEquals(40 * Length.MM, check.found());
    assertEquals(Length.MM, check.provenance().tolerance());
  }
}
