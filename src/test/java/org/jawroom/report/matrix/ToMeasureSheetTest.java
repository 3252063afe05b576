package org.jawroom.report.matrix;

import static org.jawroom.fixture.outcome.Invented.CALIPER;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.advice.ToTape;
import org.jawroom.advice.blank.Relation;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.Opened;
import org.jawroom.report.SampleShop;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

class ToMeasureSheetTest {
  private static final List<String> SECOND =
      List.of(
          "",
          "Measure again",
          "No pairing has the verdict measure.",
          "Machine|Vise|Misses by|Machine within ±|Vise within ±|It fits|"
              + "Every reading that counts, each with its share");

  private final Machine a = machine("A");
  private final Machine b = machine("B");

  private static List<Vise> vises(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(number -> vise("v" + number)).toList();
  }

  private static Advised unknown(Machine machine, Vise vise, Column... missing) {
    return new Advised(new Made(machine, vise, Verdict.UNKNOWN).missing(missing).done());
  }

  private static Advised rear(Machine machine, Vise vise, Relation relation, String limit) {
    return unknown(machine, vise, Column.REAR_GAP).blank(Column.REAR_GAP, "", relation, limit);
  }

  private static List<String> rows(
      List<Machine> machines, List<Vise> vises, PeopleUnit unit, Advised... advised)
      throws IOException {
    Shop shop = new Shop(Settings.DEFAULTS, machines, vises, List.of());
    List<Advice> advice = List.of(advised).stream().map(Advised::done).toList();
    try (XSSFWorkbook book = Opened.open(shop, advice, unit)) {
      return Opened.rows(book.getSheet("To measure"));
    }
  }

  private List<String> first(List<Vise> vises, PeopleUnit unit, Advised... advised)
      throws IOException {
    List<String> rows = rows(List.of(a), vises, unit, advised);
    assertEquals(SECOND, rows.subList(rows.size() - 4, rows.size()));
    return rows.subList(0, rows.size() - 4);
  }

  @Test
  void blanks_areSortedByWhatTheySettleAlone() throws IOException {
    List<Vise> v = vises(3);
    List<String> rows =
        rows(
            List.of(a, b),
            v,
            PeopleUnit.MM,
            unknown(a, v.get(0), Column.REAR_GAP, Column.BASE_WIDTH)
                .blank(Column.REAR_GAP, "", Relation.AT_LEAST, "12.5")
                .blank(Column.BASE_WIDTH, "", Relation.AT_MOST, "170"),
            unknown(a, v.get(1), Column.REAR_GAP, Column.SCREW_HEIGHT)
                .blank(Column.REAR_GAP, "", Relation.AT_LEAST, "41.28"),
            unknown(a, v.get(2), Column.REAR_GAP, Column.HOLE_U),
            rear(b, v.get(0), Relation.AT_LEAST, "30"),
            rear(b, v.get(1), Relation.AT_LEAST, "20"),
            unknown(b, v.get(2), Column.HOLE_U));
    List<String> expected =
        new ArrayList<>(
            List.of(
                "rear_gap|B|2.0|2.0|machines|fits all 2 if ≥ 30; none below 20|v1, v2",
                "rear_gap|A|0.0|2.0|machines|can fit all 2 if ≥ 41.28; none below 12.5; "
                    + "if the other open readings let it|",
                "base_width|v1|0.0|1.0|vises|can fit if ≤ 170; if the other open readings let it|"));
    expected.addAll(SECOND);
    assertEquals(expected, rows);
  }

  /** What is enough is rounded to the safe side, what is too little to the other. */
  @Test
  void decides_inInches_roundsBothEndsOutward() throws IOException {
    List<Vise> v = vises(2);
    assertEquals(
        List.of("rear_gap|A|2.0|2.0|machines|fits all 2 if ≥ 0.395; none below 0.393|v1, v2"),
        first(
            v,
            PeopleUnit.INCH,
            rear(a, v.get(0), Relation.AT_LEAST, "10"),
            rear(a, v.get(1), Relation.AT_LEAST, "10.01")));
    List<Machine> machines = List.of(a, b);
    List<String> rows =
        rows(
            machines,
            List.of(v.get(0)),
            PeopleUnit.INCH,
            unknown(a, v.get(0), Column.BASE_WIDTH)
                .blank(Column.BASE_WIDTH, "", Relation.AT_MOST, "10"),
            unknown(b, v.get(0), Column.BASE_WIDTH)
                .blank(Column.BASE_WIDTH, "", Relation.AT_MOST, "10.01"));
    assertEquals(
        "base_width|v1|2.0|2.0|vises|fits all 2 if ≤ 0.393; none above 0.395|A, B", rows.get(0));
  }

  @Test
  void blanks_guards_areOneEach() throws IOException {
    Machine guarded =
        machine("A", "", "900", "600", List.of(), CALIPER, List.of(guard("sill"), guard("arm")));
    Vise v = vise("v");
    assertEquals(
        List.of(
            "gap (sill)|A|0.0|1.0|guards|can fit if ≥ 5; if the other open readings let it|",
            "gap (arm)|A|0.0|1.0|guards|can fit if ≥ 7; if the other open readings let it|"),
        rows(
                List.of(guarded),
                List.of(v),
                PeopleUnit.MM,
                unknown(guarded, v, Column.GUARD_GAP, Column.SCREW_HEIGHT)
                    .blank(Column.GUARD_GAP, "sill", Relation.AT_LEAST, "5")
                    .blank(Column.GUARD_GAP, "arm", Relation.AT_LEAST, "7"))
            .subList(0, 2));
  }

  @Test
  void settles_many_namesTheFirstFew() throws IOException {
    List<Vise> v = vises(6);
    Advised[] all =
        v.stream().map(one -> rear(a, one, Relation.AT_LEAST, "5")).toArray(Advised[]::new);
    assertEquals(
        List.of(
            "rear_gap|A|6.0|6.0|machines|fits all 6 if ≥ 5; none below 5|v1, v2, v3, v4 and 2 more"),
        first(v, PeopleUnit.MM, all));
  }

  @Test
  void measure_listsHowCloselyAndEveryReading() throws IOException {
    List<Vise> v = vises(3);
    List<String> rows =
        rows(
            List.of(a),
            v,
            PeopleUnit.MM,
            close(v.get(0)).needs("0.27", "0.12"),
            close(v.get(1)).needs("", "0"),
            close(v.get(2)).needs("", ""));
    String now =
        "; now the machine to ±0.5, the vise to ±0.5|"
            + "machine: front_gap, half of table_width, slot_pitch\n"
            + "vise: bolt_u, bolt_hole_u, front_reach, front_projection_open";
    assertEquals(
        List.of(
            "",
            "Measure again",
            "In millimetres. A tolerance stands for all the readings named, each off the wrong way: together"
                + " they may be off by no more.",
            SECOND.get(3),
            "A|v1|0.5|0.27|0.12|if you know the machine to ±0.27, or the vise to ±0.12" + now,
            "A|v2|0.5||0.0|only if both are known better, neither alone is enough" + now,
            "A|v3|0.5|||only if both are known better, neither alone is enough" + now),
        rows);
  }

  private Advised close(Vise vise) {
    return new Advised(
        new Made(a, vise, Verdict.MEASURE)
            .best("-0.41")
            .at(Orientation.FRONT, "0", "0")
            .limit("-0.41", "door", "screw front", Axis.Y, Situation.CUTTING, JawEnd.OPEN)
            .done());
  }

  @Test
  void sheet_filtersTheFirstTableAndRepeatsNoHeadings() throws IOException {
    SampleShop sample = new SampleShop();
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      XSSFSheet sheet = book.getSheet("To measure");
      int blanks = ToTape.of(sample.shop, sample.advice).size();
      assertTrue(blanks > 5, "there are some");
      assertEquals(
          "A3:G" + (ListSheet.FIRST_ENTRY + blanks),
          sheet.getCTWorksheet().getAutoFilter().getRef());
      assertNull(sheet.getRepeatingRows());
      assertFalse(sheet.getPaneInformation().getHorizontalSplitPosition() > 0);
    }
  }

  @Test
  void sheet_moreThanItHolds_carriesWhatFitsAndSaysSo() throws IOException {
    SampleShop sample = new SampleShop();
    try (XSSFWorkbook book =
        Opened.open(
            sample.shop, sample.advice, Invented.facts(PeopleUnit.MM), new SheetLimits(13, 5, 3))) {
      XSSFSheet sheet = book.getSheet("To measure");
      assertEquals(12, sheet.getLastRowNum());
      assertTrue(
          sheet.getRow(1).getCell(1).getStringCellValue().startsWith("ONLY THE FIRST 6 OF "));
      assertTrue(
          sheet.getRow(11).getCell(1).getStringCellValue().startsWith("ONLY THE FIRST 0 OF "));
    }
  }

  private static Guard guard(String name) {
    return Guards.beside(name, Side.FRONT, Dimension.BLANK);
  }
}
