package org.jawroom.report.matrix;

import static org.jawroom.fixture.outcome.Invented.CALIPER;
import static org.jawroom.fixture.outcome.Invented.known;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.mm;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.advice.remedy.Direction;
import org.jawroom.advice.remedy.RemedyKind;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.Opened;
import org.jawroom.report.SampleShop;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemediesSheetTest {
  private final Vise v = vise("v");

  private static List<String> rows(Shop shop, PeopleUnit unit, Advice... advice)
      throws IOException {
    try (XSSFWorkbook book = Opened.open(shop, List.of(advice), unit)) {
      return Opened.rows(book.getSheet("Remedies"));
    }
  }

  private static Shop shop(List<Machine> machines, List<Vise> vises) {
    return new Shop(Settings.DEFAULTS, machines, vises, List.of());
  }

  /** The words of each remedy, and what to mind, for one pairing. */
  private List<String> lines(PeopleUnit unit, Advised advised) throws IOException {
    Advice advice = advised.done();
    Shop shop = shop(List.of(advice.outcome().machine()), List.of(advice.outcome().vise()));
    return rows(shop, unit, advice).stream()
        .map(row -> row.split("\\|"))
        .map(cells -> cells[3] + "|" + (cells.length > 7 ? cells[7] : ""))
        .toList();
  }

  private Outcome noPlace(Machine machine) {
    return noPlace(machine, v);
  }

  private Outcome noPlace(Machine machine, Vise vise) {
    return new Made(machine, vise, Verdict.NO_PLACE).room("80.05").done();
  }

  private static Outcome fits(Machine machine, Vise vise, String margin) {
    return new Made(machine, vise, Verdict.FITS)
        .best(margin)
        .limit(margin, "door", "base", Axis.Y, Situation.CUTTING, JawEnd.ANY)
        .done();
  }

  private static Machine with(
      Machine m,
      boolean candidate,
      Axes tableMoves,
      long loadY,
      EnumSet<Orientation> turns,
      List<Guard> guards) {
    return m.toBuilder()
        .candidate(candidate)
        .tableMoves(tableMoves)
        .load(OptionalLong.of(m.loadX()), OptionalLong.of(loadY))
        .turns(turns)
        .guardRows(guards)
        .build();
  }

  private static Machine with(Machine m, Axes tableMoves) {
    return with(m, false, tableMoves, 0, EnumSet.allOf(Orientation.class), List.of());
  }

  private static Vise with(Vise v, int quantity) {
    return v.toBuilder().quantity(quantity).build();
  }

  @Test
  void rows_areOneARemedyWithWhatFitsBesideThem() throws IOException {
    Machine a = machine("A");
    Machine b = machine("B");
    Vise w = vise("w");
    Advice limited =
        new Advised(
                new Made(a, v, Verdict.LIMITED)
                    .best("-5")
                    .usable("76.21", "150.07")
                    .limit(
                        "0.49",
                        "rear cover",
                        "screw rear",
                        Axis.Y,
                        Situation.CUTTING,
                        JawEnd.CLOSED)
                    .done())
            .remedy(RemedyKind.UPPER_SWING, "", "0.29", "door")
            .remedy(RemedyKind.CLEARANCE, "1.2", "0", "door")
            .done();
    Advice measure =
        new Advised(
                new Made(b, v, Verdict.MEASURE)
                    .best("-0.2")
                    .usable("20", "150.07")
                    .limit("-0.2", "door", "base", Axis.Y, Situation.CUTTING, JawEnd.ANY)
                    .done())
            .needs("0.3", "0.12")
            .done();
    Advice none = new Advised(new Made(b, w, Verdict.NO_MOUNT).done()).done();
    assertEquals(
        List.of(
            "A|v|↔ limited|keep the jaws open 76.3 or more: a spacer|limited|0.4|"
                + "rear cover · screw rear, closed|no change: it counts only while the jaws stay there|"
                + "w (7.7)|none",
            "A|v|↔ limited|swing the handle back and forth above the screw only|fits|0.2|"
                + "door · screw rear, closed|||",
            "A|v|↔ limited|! ask for 1.2 mm less clearance everywhere|fits|0.0|"
                + "door · screw rear, closed|"
                + "less clearance than you asked for: only if you can answer for it||",
            "B|v|≈ measure|keep the jaws open 20 or more: a spacer|limited|||"
                + "no change: it counts only while the jaws stay there|none|none",
            "B|v|≈ measure|measure more closely: the machine to ±0.3, or the vise to ±0.12||||"
                + "see To measure||",
            "B|v|≈ measure|no single change does it||||||",
            "B|w|≠ no mount|no single change does it|||||none|A (7.7)"),
        rows(
            shop(List.of(a, b), List.of(v, w)),
            PeopleUnit.MM,
            limited,
            new Advised(fits(a, w, "7.77")).done(),
            measure,
            none));
  }

  @Test
  void rows_lessClearanceAlone_isNoSingleChange() throws IOException {
    assertEquals(
        List.of(
            "no single change does it|",
            "! ask for 0.5 mm less clearance everywhere|"
                + "less clearance than you asked for: only if you can answer for it"),
        lines(
            PeopleUnit.MM,
            new Advised(noPlace(machine("A"))).remedy(RemedyKind.CLEARANCE, "0.5", "0", "door")));
  }

  @Test
  void rows_fittingAndUnknown_areLeftOut() throws IOException {
    Machine a = machine("A");
    assertEquals(
        List.of(),
        rows(
            shop(List.of(a), List.of(v, vise("w"))),
            PeopleUnit.MM,
            new Advised(fits(a, v, "1")).done(),
            new Advised(new Made(a, vise("w"), Verdict.UNKNOWN).done()).done()));
  }

  @Test
  void change_travel_speaksOfTheTableWhereItGoes() throws IOException {
    Machine m = machine("A");
    assertEquals(
        List.of(
            "set a soft limit or stop 1 mm in from the end of x where the table stands toward the left|"
                + "the spindle then reaches 1 mm less of the table's right side",
            "set a soft limit or stop 1 mm in from the end of x where the table stands toward the right|"
                + "the spindle then reaches 1 mm less of the table's left side",
            "set a soft limit or stop 12 mm in from the end of y where the table stands toward the front|"
                + "the spindle then reaches 12 mm less of the table's back",
            "set a soft limit or stop 12.01 mm in from the end of y where the table stands toward the back|"
                + "the spindle then reaches 12.01 mm less of the table's front"),
        lines(PeopleUnit.MM, stops(m)));
  }

  @Test
  void change_travel_speaksOfTheSpindleWhereTheTableStandsStill() throws IOException {
    Machine m = with(machine("A"), Axes.NONE);
    assertEquals(
        List.of(
            "set a soft limit or stop 1 mm in from the end of x where the spindle stands toward the right|"
                + "the spindle then reaches 1 mm less of the table's right side",
            "set a soft limit or stop 1 mm in from the end of x where the spindle stands toward the left|"
                + "the spindle then reaches 1 mm less of the table's left side",
            "set a soft limit or stop 12 mm in from the end of y where the spindle stands toward the back|"
                + "the spindle then reaches 12 mm less of the table's back",
            "set a soft limit or stop 12.01 mm in from the end of y where the spindle stands toward the "
                + "front|the spindle then reaches 12.01 mm less of the table's front"),
        lines(PeopleUnit.MM, stops(m)));
  }

  private Advised stops(Machine machine) {
    return new Advised(noPlace(machine))
        .remedy(RemedyKind.TRAVEL_FRONT, "12", "0", "door")
        .remedy(RemedyKind.TRAVEL_BACK, "12.01", "0", "door")
        .remedy(RemedyKind.TRAVEL_LEFT, "1", "0", "door")
        .remedy(RemedyKind.TRAVEL_RIGHT, "1", "0", "door");
  }

  /** Travel is 400, so the spindle stands at most at 200; at 190 it stands 10 from that end. */
  @ParameterizedTest
  @CsvSource({
    "TRAVEL_FRONT, 190, 10, false", "TRAVEL_FRONT, 190, 10.01, true",
        "TRAVEL_BACK, 190, 10.01, false",
    "TRAVEL_BACK, -190, 10.01, true", "TRAVEL_BACK, -190, 10, false", "TRAVEL_LEFT, 190, 200, false"
  })
  void mind_travel_warnsWhereItIsLoadedBeyondTheStop(
      RemedyKind kind, String loadY, String amount, boolean warned) throws IOException {
    Machine m =
        with(
            machine("A"),
            false,
            new Axes(true, true, false),
            mm(loadY),
            EnumSet.allOf(Orientation.class),
            List.of());
    String row =
        lines(PeopleUnit.MM, new Advised(noPlace(m)).remedy(kind, amount, "0", "door")).get(0);
    assertEquals(
        warned, row.endsWith("; the load position lies past that stop: look at loading too"), row);
  }

  @Test
  void change_others_areInWords() throws IOException {
    Guard bar = box("hose arm");
    Guard sill = Guards.beside("sill", Side.FRONT, known("30"));
    Machine m =
        with(
            machine("A"),
            false,
            new Axes(true, true, false),
            0,
            EnumSet.of(Orientation.FRONT, Orientation.RIGHT),
            List.of(bar, sill));
    assertEquals(
        List.of(
            "take the handle off before cutting|",
            "bolt it with the handle to the left|not allowed by turns (machine): can the handle be worked there?",
            "bolt it with the handle to the right|not allowed by turns (vise): can the handle be worked there?",
            "stand the vise on a riser plate of 69.85 mm|"
                + "a taller one may not do; room over the jaws then 10.2",
            "set the sill 1 mm farther out|then measure it again",
            "set the hose arm 2 mm farther left|then measure it again",
            "set the hose arm 2.5 mm farther to the rear|then measure it again",
            "set the hose arm 3 mm higher|then measure it again",
            "set the door 38.1 mm farther out|then measure it again"),
        lines(
            PeopleUnit.MM,
            new Advised(noPlace(m))
                .remedy(RemedyKind.HANDLE_OFF, "", "0", "door")
                .turn(Orientation.LEFT, "0", "door")
                .turn(Orientation.RIGHT, "0", "door")
                .remedy(RemedyKind.RAISE, "69.85", "0", "table")
                .move("door", Direction.FRONT, "38.1", "0")
                .move(sill, Direction.FRONT, "1", "0")
                .move(bar, Direction.LEFT, "2", "0")
                .move(bar, Direction.REAR, "2.5", "0")
                .move(bar, Direction.UP, "3", "0")));
  }

  @Test
  void change_inInches_hasTheExactMillimetresBesideThem() throws IOException {
    assertEquals(
        List.of(
            "stand the vise on a riser plate of 0.473 in (12.01 mm)|"
                + "a taller one may not do; room over the jaws then 2.67"),
        lines(
            PeopleUnit.INCH,
            new Advised(noPlace(machine("A"))).remedy(RemedyKind.RAISE, "12.01", "0", "table")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 | 50.09 | keep the jaws open no more than 50: a stop",
        "10.01 | 50.09 | keep the jaws open 10.1 to 50: a spacer and a stop",
        "10 | 150.07 | keep the jaws open 10 or more: a spacer"
      })
  void keepOpen_saysWhichEndMatters(String from, String to, String words) throws IOException {
    Outcome outcome =
        new Made(machine("A"), v, Verdict.LIMITED)
            .best("-1")
            .usable(from, to)
            .limit("1", "door", "base", Axis.Y, Situation.CUTTING, JawEnd.ANY)
            .done();
    assertEquals(
        words + "|no change: it counts only while the jaws stay there",
        lines(PeopleUnit.MM, new Advised(outcome)).get(0));
  }

  @Test
  void elsewhere_namesTheThreeRoomiestThatAreInTheHouse() throws IOException {
    List<Vise> vises =
        List.of(v, vise("p"), vise("q"), with(vise("sold"), 0), vise("r"), vise("s"));
    Machine a = machine("A");
    Machine b = with(machine("B"), true, Axes.NONE, 0, EnumSet.allOf(Orientation.class), List.of());
    Outcome heavy = new Made(a, vises.get(5), Verdict.FITS).best("99").load("-1").done();
    List<String> rows =
        rows(
            shop(List.of(a, b), vises), PeopleUnit.MM,
            new Advised(noPlace(a)).done(), new Advised(fits(a, vises.get(1), "3")).done(),
            new Advised(fits(a, vises.get(2), "9.99")).done(),
                new Advised(fits(a, vises.get(3), "50")).done(),
            new Advised(fits(a, vises.get(4), "4")).done(), new Advised(heavy).done(),
            new Advised(fits(b, v, "8")).done(), new Advised(noPlace(b, vises.get(1))).done(),
            new Advised(fits(b, vises.get(2), "2")).done(),
                new Advised(fits(b, vises.get(3), "2")).done(),
            new Advised(fits(b, vises.get(4), "2.5")).done(),
                new Advised(fits(b, vises.get(5), "2")).done());
    assertEquals(
        "A|v|× no place|no single change does it|||||q (9.9), r (4), p (3)|none", rows.get(0));
    assertEquals(
        "B|p|× no place|no single change does it|||||v (8), r (2.5), q (2)|A (3)", rows.get(1));
  }

  @Test
  void sheet_linksEachRowToItsPairingAndSetsLessClearanceApart() throws IOException {
    SampleShop sample = new SampleShop();
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      XSSFSheet sheet = book.getSheet("Remedies");
      Sheet pairings = book.getSheet("Pairings");
      int last = sheet.getLastRowNum();
      assertEquals("A3:J" + (last + 1), sheet.getCTWorksheet().getAutoFilter().getRef());
      int apart = 0;
      for (int entry = 0; entry <= last - ListSheet.FIRST_ENTRY; entry++) {
        Cell link = Opened.entry(sheet, entry, "As it is");
        String[] address = link.getHyperlink().getAddress().split("!A");
        assertEquals("Pairings", address[0]);
        int row = Integer.parseInt(address[1]) - 1;
        for (int column : new int[] {0, 1}) {
          assertEquals(
              pairings.getRow(row).getCell(column).getStringCellValue(),
              link.getRow().getCell(column).getStringCellValue());
        }
        Cell words = Opened.entry(sheet, entry, "What alone would make it fit");
        boolean less = words.getStringCellValue().startsWith("! ");
        apart += less ? 1 : 0;
        assertEquals(
            less ? "FFFFF0A8" : null,
            words.getCellStyle().getFillForegroundColorColor() == null
                ? null
                : ((org.apache.poi.xssf.usermodel.XSSFColor)
                        words.getCellStyle().getFillForegroundColorColor())
                    .getARGBHex());
      }
      assertTrue(apart > 5, "there are some");
      assertNotEquals(apart, last, "and others");
    }
  }

  @Test
  void sheet_moreThanItHolds_carriesWhatFitsAndSaysSo() throws IOException {
    SampleShop sample = new SampleShop();
    SheetLimits small = new SheetLimits(13, 5, 3);
    try (XSSFWorkbook book =
        Opened.open(sample.shop, sample.advice, Invented.facts(PeopleUnit.MM), small)) {
      XSSFSheet sheet = book.getSheet("Remedies");
      assertEquals(12, sheet.getLastRowNum());
      assertEquals(3, sheet.getHyperlinkList().size());
      assertTrue(
          sheet.getRow(1).getCell(2).getStringCellValue().startsWith("ONLY THE FIRST 10 OF "));
    }
  }

  private static Guard box(String name) {
    return new Guard(
        name,
        "",
        Axes.NONE,
        When.ALWAYS,
        Optional.empty(),
        Dimension.NONE,
        new Box(Interval.of(0, mm("10")), Interval.ALL, Interval.ALL),
        OptionalLong.empty(),
        OptionalLong.of(CALIPER.tolerance()));
  }
}
