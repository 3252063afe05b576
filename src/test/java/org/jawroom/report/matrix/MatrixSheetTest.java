package org.jawroom.report.matrix;

import static org.jawroom.fixture.outcome.Invented.UNRECORDED;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.Opened;
import org.jawroom.report.SampleShop;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

class MatrixSheetTest {
  private static final int MARGINS = MatrixSheet.FIRST_MARGIN;
  private static final int REASONS = MARGINS + 1;

  private final Machine machine = machine("mill A");
  private final Vise vise = vise("plain");

  private Sheet matrix(PeopleUnit unit, Outcome outcome) throws IOException {
    Shop shop =
        new Shop(Settings.DEFAULTS, List.of(outcome.machine()), List.of(outcome.vise()), List.of());
    try (XSSFWorkbook book = Opened.open(shop, Advised.bare(List.of(outcome)), unit)) {
      return book.getSheet(MatrixSheet.NAME);
    }
  }

  private void assertPairing(Outcome outcome, double margin, String reason) throws IOException {
    Sheet sheet = matrix(PeopleUnit.MM, outcome);
    Cell number = sheet.getRow(MARGINS).getCell(1);
    assertEquals(CellType.NUMERIC, number.getCellType());
    assertEquals(margin, number.getNumericCellValue());
    assertEquals(reason, sheet.getRow(REASONS).getCell(1).getStringCellValue());
  }

  private void assertSign(Outcome outcome, String sign, String reason) throws IOException {
    Sheet sheet = matrix(PeopleUnit.MM, outcome);
    assertEquals(sign, sheet.getRow(MARGINS).getCell(1).getStringCellValue());
    assertEquals(reason, sheet.getRow(REASONS).getCell(1).getStringCellValue());
  }

  private Made made(Verdict verdict, String margin) {
    return new Made(machine, vise, verdict)
        .best(margin)
        .limit(margin, "rear cover", "screw rear", Axis.Y, Situation.CUTTING, JawEnd.CLOSED);
  }

  @Test
  void fits_isTheFlooredMarginAndWhatLimits() throws IOException {
    assertPairing(
        made(Verdict.FITS, "12.3999995").done(),
        12.3,
        "rear cover · screw rear, closed\n► best for this machine");
  }

  @Test
  void fits_placedForReach_showsTheMarginThereAndTheRoomiestBesideIt() throws IOException {
    assertPairing(
        made(Verdict.FITS, "6.99").best("33.075").shortfall("4.01").done(),
        6.9,
        "rear cover · screw rear, closed\nroomiest place 33.0\n! spindle misses 4.1 of the work\n► best for this machine");
  }

  @Test
  void fits_inInches_isHundredthsRoundedDown() throws IOException {
    Sheet sheet = matrix(PeopleUnit.INCH, made(Verdict.FITS, "25.3999995").done());
    assertEquals(0.99, sheet.getRow(MARGINS).getCell(1).getNumericCellValue());
  }

  @Test
  void fits_againstNothingListed_isHatchedAndSaysSo() throws IOException {
    Outcome outcome =
        new Made(machine, vise, Verdict.FITS)
            .at(Orientation.FRONT, "0", "0")
            .but(Caveat.NOTHING_LISTED)
            .done();
    assertSign(outcome, "○ fits", "but nothing listed to hit");
    Cell cell = matrix(PeopleUnit.MM, outcome).getRow(REASONS).getCell(1);
    assertEquals(FillPatternType.THIN_FORWARD_DIAG, cell.getCellStyle().getFillPattern());
  }

  @Test
  void limited_isTheMarginOverTheUsableOpening() throws IOException {
    assertPairing(
        made(Verdict.LIMITED, "0.05").best("-11.475").usable("76.2", "152.4").done(),
        0.0,
        "keep open 76.2 to 152.4\nrear cover · screw rear, closed\n► best for this machine");
  }

  @Test
  void limited_opening_isDrawnInForPeople() throws IOException {
    assertPairing(
        made(Verdict.LIMITED, "1").best("-11").usable("45.31", "150.07").done(),
        1.0,
        "keep open 45.4 to 150\nrear cover · screw rear, closed\n► best for this machine");
  }

  @Test
  void measure_isNegativeAndNeverBest() throws IOException {
    assertPairing(
        made(Verdict.MEASURE, "-0.0000005").done(),
        -0.1,
        "measure again\nrear cover · screw rear, closed");
  }

  @Test
  void measure_withAUsableOpening_showsIt() throws IOException {
    assertPairing(
        made(Verdict.MEASURE, "-0.5").usable("45.31", "150.07").done(),
        -0.5,
        "measure again, or keep open 45.4 to 150\nrear cover · screw rear, closed");
  }

  @Test
  void awkward_showsTheRoomRoundTheHandleAndEveryCaveat() throws IOException {
    assertPairing(
        made(Verdict.AWKWARD, "4").hand("11.09").but(Caveat.NOT_SETTABLE).done(),
        4.0,
        "handle has 11 of room\nrear cover · screw rear, closed\n! no room to tap it square\n"
            + "► best for this machine");
  }

  @Test
  void key_explainsEveryVerdictOnceByItsOwnSignAndColour() throws IOException {
    Sheet sheet = matrix(PeopleUnit.MM, made(Verdict.FITS, "1").done());
    List<Cell> key = new ArrayList<>();
    for (int row = 3; row < 5; row++) {
      for (int column = 1; column <= MatrixKey.COLUMNS; column++) {
        Cell cell = sheet.getRow(row).getCell(column);
        if (cell != null) {
          key.add(cell);
        }
      }
    }
    Set<String> looks = new HashSet<>();
    for (Verdict verdict : Verdict.values()) {
      List<Cell> its =
          key.stream()
              .filter(cell -> cell.getStringCellValue().matches(". " + verdict.code() + ": .*"))
              .toList();
      assertEquals(1, its.size(), verdict.code());
      looks.add(its.get(0).getStringCellValue().substring(0, 1));
      looks.add(((XSSFColor) its.get(0).getCellStyle().getFillForegroundColorColor()).getARGBHex());
    }
    assertEquals(2 * Verdict.values().length, looks.size());
  }

  @Test
  void noPlace_isTheNegativeMargin() throws IOException {
    assertPairing(
        made(Verdict.NO_PLACE, "-20.875").done(), -20.9, "rear cover · screw rear, closed");
  }

  @Test
  void noPlaceWhateverTheBlanks_hasNoNumber() throws IOException {
    assertSign(
        new Made(machine, vise, Verdict.NO_PLACE).done(),
        "× no place",
        "even with every blank at its best");
  }

  @Test
  void noMount_saysThatNothingHoldsIt() throws IOException {
    assertSign(
        new Made(machine, vise, Verdict.NO_MOUNT).load("-0.5").done(),
        "≠ no mount",
        "neither bolts nor clamps hold it\n! too heavy");
  }

  @Test
  void unknown_namesTheBlanks() throws IOException {
    assertSign(
        new Made(machine, vise, Verdict.UNKNOWN).missing(Column.REAR_GAP, Column.GUARD_GAP).done(),
        "? unknown",
        "not measured: rear_gap, gap of a guard");
  }

  @Test
  void marks_areAllExplained() throws IOException {
    Outcome outcome =
        new Made(machine, vise, Verdict.FITS)
            .best("5")
            .limit("5", "door", "handle", Axis.Y, Situation.LOADING, JawEnd.ANY)
            .overhang("60.01")
            .nose("181.41")
            .but(Caveat.HEADS_LEFT_OUT, Caveat.OVERHANG, Caveat.NOT_SETTABLE)
            .room("0")
            .load("-0.0001")
            .shortestToolTooShort()
            .done();
    assertPairing(
        outcome,
        5.0,
        "but heads left out: nose not below 181.5\n"
            + "but base overhangs the table by 60.1, more than a quarter of it\n"
            + "but no room to tap it square\n"
            + "door · handle, loading\n! too heavy\n! no room over the jaws\n"
            + "! shortest tool does not clear the bed");
  }

  @Test
  void headings_giveSizesAndWhatWasNotLookedFor() throws IOException {
    Machine bare =
        machine("mill B", "", "900", "600", List.of("Head", "tool_changer"), UNRECORDED, List.of());
    Vise wide = vise("wide", "160", "4.01", "152.46", Dimension.NONE, UNRECORDED);
    Sheet sheet = matrix(PeopleUnit.MM, new Made(bare, wide, Verdict.NO_MOUNT).done());
    assertEquals("mill B", sheet.getRow(MARGINS).getCell(0).getStringCellValue());
    assertEquals(
        "table 900 × 350, travel 600 × 400\nnot looked for: nozzle, sill, column, cover\n"
            + "tolerance taken as 0",
        sheet.getRow(REASONS).getCell(0).getStringCellValue());
    assertEquals("wide", sheet.getRow(MARGINS - 2).getCell(1).getStringCellValue());
    assertEquals(
        "jaw 160\nopens 4.1 to 152.4\ntolerance taken as 0",
        sheet.getRow(MARGINS - 1).getCell(1).getStringCellValue());
  }

  @Test
  void best_standsOutOncePerMachine() throws IOException {
    SampleShop sample = new SampleShop();
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      Sheet sheet = book.getSheet(MatrixSheet.NAME);
      for (int m = 0; m < sample.shop.machines().size(); m++) {
        int framed = 0;
        int best = 0;
        for (int v = 1; v <= sample.shop.vises().size(); v++) {
          Cell number = sheet.getRow(MARGINS + 2 * m).getCell(v);
          String reason = sheet.getRow(REASONS + 2 * m).getCell(v).getStringCellValue();
          framed += number.getCellStyle().getBorderTop() == BorderStyle.THICK ? 1 : 0;
          best += reason.endsWith("► best for this machine") ? 1 : 0;
        }
        assertEquals(1, framed);
        assertEquals(1, best);
      }
    }
  }

  @Test
  void links_leadToTheRowOfTheirPairing() throws IOException {
    SampleShop sample = new SampleShop();
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      Sheet sheet = book.getSheet(MatrixSheet.NAME);
      int across = sample.shop.vises().size();
      for (int pairing = 0; pairing < sample.outcomes.size(); pairing++) {
        Cell cell = sheet.getRow(MARGINS + 2 * (pairing / across)).getCell(1 + pairing % across);
        CellReference target = new CellReference(cell.getHyperlink().getAddress());
        Sheet pairings = book.getSheet(target.getSheetName());
        String machineName = pairings.getRow(target.getRow()).getCell(0).getStringCellValue();
        String viseName = pairings.getRow(target.getRow()).getCell(1).getStringCellValue();
        assertEquals(sample.outcomes.get(pairing).machine().name(), machineName);
        assertEquals(sample.outcomes.get(pairing).vise().name(), viseName);
      }
    }
  }

  @Test
  void pages_breakBetweenMachinesOnly() throws IOException {
    SampleShop sample = new SampleShop();
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      int[] breaks = book.getSheet(MatrixSheet.NAME).getRowBreaks();
      assertTrue(breaks.length > 0);
      for (int last : breaks) {
        assertEquals(0, (last - REASONS) % 2, "the page ends with a machine's reasons");
      }
    }
  }

  @Test
  void paper_isLandscapeWithHeadingsRepeated() throws IOException {
    Sheet mm = matrix(PeopleUnit.MM, made(Verdict.FITS, "1").done());
    assertTrue(mm.getPrintSetup().getLandscape());
    assertTrue(mm.getFitToPage());
    assertEquals(1, mm.getPrintSetup().getFitWidth());
    assertEquals(0, mm.getPrintSetup().getFitHeight());
    assertEquals(PrintSetup.A4_PAPERSIZE, mm.getPrintSetup().getPaperSize());
    assertEquals("6:7", mm.getRepeatingRows().formatAsString());
    assertEquals("A:A", mm.getRepeatingColumns().formatAsString());
    assertEquals(MARGINS, mm.getPaneInformation().getHorizontalSplitPosition());
    assertEquals(1, mm.getPaneInformation().getVerticalSplitPosition());
    Sheet inch = matrix(PeopleUnit.INCH, made(Verdict.FITS, "1").done());
    assertEquals(PrintSetup.LETTER_PAPERSIZE, inch.getPrintSetup().getPaperSize());
  }
}
