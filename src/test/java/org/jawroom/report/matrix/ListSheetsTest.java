package org.jawroom.report.matrix;

import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.Opened;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/** The sheets Pairings, No place, By machine and By vise, each of them read back whole. */
class ListSheetsTest {
  private final Machine a = machine("A");
  private final Machine b = machine("B");
  private final Vise v = vise("v");
  private final Vise w = vise("w");
  private final Vise x = vise("x");
  private final Shop shop = new Shop(Settings.DEFAULTS, List.of(a, b), List.of(v, w, x), List.of());
  private final List<Advice> advice =
      List.of(
          new Advised(
                  limits(new Made(a, v, Verdict.FITS).best("9.99"), "7.77")
                      .at(Orientation.REAR, "12.34", "-0.06")
                      .usable("0.01", "150.07")
                      .shortfall("0.01")
                      .overhang("2")
                      .play("1.19", "2", "3", "4")
                      .nose("99.91")
                      .room("-0.01")
                      .load("12.39")
                      .done())
              .together(
                  "-400.06", "-133.3", "133.3", "400.04", "500", "600", "700", "800", "900", "1000")
              .done(),
          new Advised(
                  limits(new Made(a, w, Verdict.LIMITED).best("-5"), "1")
                      .usable("10", "50")
                      .hand("61.59")
                      .done())
              .together("0.05")
              .done(),
          new Advised(new Made(a, x, Verdict.NO_MOUNT).load("-1").done()).together().done(),
          new Advised(
                  limits(new Made(b, v, Verdict.NO_PLACE).best("-3.31"), "-3.31")
                      .at(Orientation.LEFT, "0", "0")
                      .done())
              .together()
              .done(),
          new Advised(new Made(b, w, Verdict.NO_PLACE).done()).done(),
          new Advised(
                  new Made(b, x, Verdict.UNKNOWN).missing(Column.REAR_GAP, Column.HOLE_U).done())
              .done());

  private static Made limits(Made made, String margin) {
    return made.limit(margin, "door", "screw front", Axis.Y, Situation.LOADING, JawEnd.OPEN);
  }

  private List<String> rows(String name) throws IOException {
    try (XSSFWorkbook book = Opened.open(shop, advice, PeopleUnit.MM)) {
      return Opened.rows(book.getSheet(name));
    }
  }

  @Test
  void pairings_haveEveryFactAsNumbersAndWords() throws IOException {
    assertEquals(
        List.of(
            "A|v|● fits|7.7|9.9|door|screw front|y|loading|open|6.0|1.0|rear|"
                + "12.3|-0.1|base bolts|M12|1, 3|yes|0.1|150.0||0.1|2.0|1.1|2.0|3.0|4.0|100.0|-0.1|12.3|"
                + "10.0|-400.1; -133.3; 133.3; 400; 500; 600; 700; 800; 900; 1000|"
                + "no room over the jaws; spindle misses 0.1 of the work; all 10 too heavy together|",
            "A|w|↔ limited|1.0|-5.0|door|screw front|y|loading|open|6.0|1.0|"
                + "front|0.0|0.0|base bolts|M12|1, 3||10.0|50.0|61.5|0.0|0.0||||||||1.0|0.1|handle has 61.5 of room|",
            "A|x|≠ no mount||||||||||||||||||||||||||||-1.0|0.0||too heavy|",
            "B|v|× no place|-3.4|-3.4|door|screw front|y|loading|open|"
                + "6.0|1.0|left|0.0|0.0|base bolts|M12|1, 3|||||0.0|0.0||||||||0.0|||",
            "B|w|× no place||||||||||||||||||||||||||||||||",
            "B|x|? unknown||||||||||||||||||||||||||||||||rear_gap, hole_u"),
        rows("Pairings"));
  }

  @Test
  void pairings_canBeFilteredAndKeepTheirHeadingsInSight() throws IOException {
    try (XSSFWorkbook book = Opened.open(shop, advice, PeopleUnit.MM)) {
      XSSFSheet sheet = book.getSheet("Pairings");
      assertEquals("A3:AI9", sheet.getCTWorksheet().getAutoFilter().getRef());
      assertEquals(3, sheet.getPaneInformation().getHorizontalSplitPosition());
      assertEquals(2, sheet.getPaneInformation().getVerticalSplitPosition());
      assertEquals("3:3", sheet.getRepeatingRows().formatAsString());
    }
  }

  @Test
  void noPlace_listsByHowMuchAndOnWhat() throws IOException {
    assertEquals(
        List.of(
            "A|x|≠ no mount: neither bolts nor clamps hold it|||||too heavy",
            "B|v|× no place|3.4|door · screw front, open, loading|y|" + "left|",
            "B|w|× no place: even with every blank at its best|||||"),
        rows("No place"));
  }

  @Test
  void byMachine_countsAndNamesTheBest() throws IOException {
    String facts = "table 900 × 350, travel 600 × 400";
    String mind = "not looked for: tool changer, nozzle, sill, column, cover";
    assertEquals(
        List.of(
            "A|"
                + facts
                + "|3.0|1.0|0.0|0.0|0.0|1.0|0.0|1.0|0.0|w (limited)|1.0|1.0|"
                + "10 × v (too heavy together)|1.0|7.7|"
                + mind,
            "B|" + facts + "|3.0|0.0|0.0|0.0|0.0|0.0|2.0|0.0|1.0|none|||none|-3.4|-3.4|" + mind),
        rows("By machine"));
  }

  @Test
  void byVise_countsAndNamesTheBest() throws IOException {
    String facts = "jaw 150, opens 0 to 150";
    assertEquals(
        List.of(
            "v|" + facts + "|2.0|1.0|0.0|0.0|0.0|0.0|1.0|0.0|0.0|none||-3.4|7.7|",
            "w|" + facts + "|2.0|0.0|0.0|0.0|0.0|1.0|1.0|0.0|0.0|A (limited)|1.0|1.0|1.0|",
            "x|" + facts + "|2.0|0.0|0.0|0.0|0.0|0.0|0.0|1.0|1.0|none||||"),
        rows("By vise"));
  }
}
