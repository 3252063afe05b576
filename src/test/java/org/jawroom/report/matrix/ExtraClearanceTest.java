package org.jawroom.report.matrix;

import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.apache.poi.ss.formula.ConditionalFormattingEvaluator;
import org.apache.poi.ss.formula.EvaluationConditionalFormatRule;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.Opened;
import org.jawroom.report.SampleShop;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/** The conditional formats, worked out as a spreadsheet would. */
class ExtraClearanceTest {
  private final Machine machine = machine("mill");
  private final Vise vise = vise("plain");
  private Settings settings = Settings.DEFAULTS;

  /** The signs in front of the margins, after {@code extra} was written into its cell. */
  private String signs(PeopleUnit unit, double extra, Outcome... outcomes) throws IOException {
    List<Vise> vises = List.of(outcomes).stream().map(Outcome::vise).toList();
    Shop shop = new Shop(settings, List.of(machine), vises, List.of());
    try (XSSFWorkbook book = Opened.open(shop, Advised.bare(List.of(outcomes)), unit)) {
      Sheet sheet = book.getSheet(MatrixSheet.NAME);
      sheet.getRow(MatrixSheet.EXTRA_ROW).getCell(MatrixSheet.EXTRA_COLUMN).setCellValue(extra);
      StringBuilder signs = new StringBuilder();
      for (int column = 1; column <= outcomes.length; column++) {
        Cell number = sheet.getRow(MatrixSheet.FIRST_MARGIN).getCell(column);
        Cell reason = sheet.getRow(MatrixSheet.FIRST_MARGIN + 1).getCell(column);
        String format = format(book, number);
        assertEquals(fill(book, number), fill(book, reason), "both cells of a pairing look alike");
        signs.append(format.charAt(1)).append(format.contains("close") ? "c" : "");
      }
      return signs.toString();
    }
  }

  private static EvaluationConditionalFormatRule rule(XSSFWorkbook book, Cell cell) {
    XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(book);
    List<EvaluationConditionalFormatRule> rules =
        new ConditionalFormattingEvaluator(book, evaluator).getConditionalFormattingForCell(cell);
    return rules.isEmpty() ? null : rules.get(0);
  }

  private static String format(XSSFWorkbook book, Cell cell) {
    EvaluationConditionalFormatRule rule = rule(book, cell);
    return rule == null
        ? cell.getCellStyle().getDataFormatString()
        : rule.getRule().getNumberFormat().getFormat();
  }

  private static String fill(XSSFWorkbook book, Cell cell) {
    EvaluationConditionalFormatRule rule = rule(book, cell);
    return rule == null
        ? ((XSSFColor) cell.getCellStyle().getFillForegroundColorColor()).getARGBHex()
        : ((XSSFColor) rule.getRule().getPatternFormatting().getFillBackgroundColorColor())
            .getARGBHex();
  }

  private Outcome margin(Verdict verdict, String margin) {
    Made made =
        new Made(machine, vise, verdict)
            .best(margin)
            .limit(margin, "door", "base", Axis.Y, Situation.CUTTING, JawEnd.ANY);
    return verdict == Verdict.LIMITED ? made.best("-9").usable("10", "20").done() : made.done();
  }

  private Outcome fits(String margin) {
    return margin(Verdict.FITS, margin);
  }

  @Test
  void extra_atNothing_marksLessThanComfortAsClose() throws IOException {
    assertEquals(
        "▲c▲c●●", signs(PeopleUnit.MM, 0, fits("0"), fits("2.9999995"), fits("3"), fits("3.1")));
  }

  @Test
  void extra_anotherComfort_decidesWhatIsClose() throws IOException {
    settings = settings.toBuilder().comfort(5 * Length.MM).build();
    assertEquals("▲c●", signs(PeopleUnit.MM, 0, fits("4.9"), fits("5")));
    settings = settings.toBuilder().comfort(0).build();
    assertEquals("●", signs(PeopleUnit.MM, 0, fits("0")));
  }

  @Test
  void extra_atNothing_keepsTheSignsOfWhatIsNoPlainFit() throws IOException {
    Outcome caveat =
        new Made(machine, vise, Verdict.FITS)
            .best("1")
            .limit("1", "door", "base", Axis.Y, Situation.CUTTING, JawEnd.ANY)
            .but(Caveat.NOT_SETTABLE)
            .done();
    Outcome awkward =
        new Made(machine, vise, Verdict.AWKWARD)
            .best("1")
            .limit("1", "door", "handle", Axis.Y, Situation.LOADING, JawEnd.ANY)
            .hand("8")
            .done();
    assertEquals("○c◐c", signs(PeopleUnit.MM, 0, caveat, awkward));
    assertEquals("▼▼", signs(PeopleUnit.MM, 2, caveat, awkward));
  }

  @Test
  void extra_raised_dropsWhatHasLess() throws IOException {
    assertEquals(
        "▼▲c▲c●●",
        signs(
            PeopleUnit.MM,
            2.3,
            fits("2.2999995"),
            fits("2.3"),
            fits("2.4"),
            fits("5.3"),
            fits("5.4")));
  }

  @Test
  void extra_inInches_keepsThreeMillimetresClose() throws IOException {
    assertEquals(
        "▼▲c▲c●",
        signs(
            PeopleUnit.INCH, 0.5, fits("12.6999995"), fits("12.7"), fits("15.7"), fits("15.748")));
  }

  @Test
  void extra_raised_keepsTheSignOfALimitedOpeningThatIsClose() throws IOException {
    assertEquals(
        "▼↔c↔",
        signs(
            PeopleUnit.MM,
            2,
            margin(Verdict.LIMITED, "1.9"),
            margin(Verdict.LIMITED, "2"),
            margin(Verdict.LIMITED, "5.1")));
  }

  @Test
  void extra_raised_leavesWhatDoesNotStayAnywayAlone() throws IOException {
    assertEquals(
        "≈×",
        signs(PeopleUnit.MM, 2, margin(Verdict.MEASURE, "-1"), margin(Verdict.NO_PLACE, "-3")));
  }

  @Test
  void count_followsTheExtraClearance() throws IOException {
    SampleShop sample = new SampleShop();
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      Sheet sheet = book.getSheet(MatrixSheet.NAME);
      Cell extra = sheet.getRow(MatrixSheet.EXTRA_ROW).getCell(MatrixSheet.EXTRA_COLUMN);
      Cell count = sheet.getRow(MatrixSheet.EXTRA_ROW + 1).getCell(MatrixSheet.EXTRA_COLUMN);
      assertEquals(count.getNumericCellValue(), counted(book, count), "what was stored is right");
      assertEquals(atLeast(sample, 0), counted(book, count));
      extra.setCellValue(10);
      assertEquals(atLeast(sample, 10 * Length.MM), counted(book, count));
    }
  }

  private static double counted(XSSFWorkbook book, Cell cell) {
    return new XSSFFormulaEvaluator(book).evaluate(cell).getNumberValue();
  }

  private static long atLeast(SampleShop sample, long length) {
    return sample.outcomes.stream()
        .filter(outcome -> outcome.margin().orElse(Long.MIN_VALUE) >= length)
        .count();
  }
}
