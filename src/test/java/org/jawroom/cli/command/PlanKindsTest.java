package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The option {@code --kinds} on the golden shop <i>two-kinds</i>, whose README works it by hand.
 */
class PlanKindsTest extends GoldenPlanRun {
  private static final String NOT_COVERED =
      "Not covered: of several kinds on a table one vise each was tried, in one row, the one with"
          + " the most to spare; in another row they might hold more jobs.";

  PlanKindsTest() {
    super("two-kinds", List.of("machines.csv", "vises.csv", "jobs.csv"));
  }

  @Test
  void plan_ofTwoKinds_isAsWorkedByHand() throws Exception {
    assertEquals(0, plan("--kinds", "2"));

    assertEquals(Files.readString(golden("expected-plan.csv")), written());
    List<String> lines = out.toString().lines().toList();
    assertEquals(
        List.of(
            "A vise for 2 of 2 machines:",
            "  long: wide + narrow side by side, 54.0 mm or more to spare",
            "  short: narrow, 99.0 mm to spare",
            "Held: 3 of 4 jobs, 6 of 7 pieces",
            "Not held:",
            "  longer bar: would be held with 1 x wide bought for 100; nothing cheaper does",
            "      it"),
        lines.subList(0, 7));
    assertTrue(unwrapped().contains("set out. " + NOT_COVERED + " Written: "), unwrapped());
    assertEquals("", err.toString());
  }

  @Test
  void plan_ofTwoKindsThatMayBuy_isAsWorkedByHand() throws Exception {
    assertEquals(0, plan("--kinds", "2", "--buy"));

    assertEquals(Files.readString(golden("expected-plan-buy.csv")), written());
  }

  /** As the golden README has it, 5 pieces; no column and no sentence more than without. */
  @Test
  void plan_ofOneKind_isAsWithoutTheOption() throws Exception {
    assertEquals(0, plan());
    String without = written();
    byte[] book = Files.readAllBytes(reports.resolve("plan.xlsx"));
    String said = out.toString();

    assertEquals(0, plan("--kinds", "1"));

    assertEquals(without, written());
    assertArrayEquals(book, Files.readAllBytes(reports.resolve("plan.xlsx")));
    assertEquals(said, out.toString());
    assertTrue(said.contains("Held: 3 of 4 jobs, 5 of 7 pieces"), said);
    assertFalse(said.contains("Not covered"), said);
    assertFalse(without.contains("place"), without);
  }

  /** 330 takes no two; 338 takes three gaps of 6 exactly, 337.998 does not. */
  @ParameterizedTest
  @CsvSource({"337.998, 1", "338, 2", "338.002, 2"})
  void table_belowAtAndAboveWhatTwoNeed_carriesOneThenTwo(String length, long rows)
      throws Exception {
    Path machines = tables.resolve("machines.csv");
    Files.writeString(
        machines, Files.readString(machines).replace("short,xy,330", "short,xy," + length));

    // The jobs, of which each vise holds one that the other does not, are for this machine.
    Path jobs = tables.resolve("jobs.csv");
    Files.writeString(
        jobs, Files.readString(jobs).replace(",long,2", ",short,4").replace(",long,", ",short,"));

    assertEquals(0, plan("--kinds", "2", "--machines", "short"));

    assertEquals(rows, written().lines().skip(1).count(), written());
  }

  /** 20 and 10 kg: a table that bears 30 takes both, and then no part of 5 kg. */
  @ParameterizedTest
  @CsvSource({"29.99, 1, ''", "30, 2, ''", "34.99, 2, ''", "35, 2, 'plate;bar'"})
  void load_belowAtAndAboveWhatTwoWeigh(String load, long rows, String jobs) throws Exception {
    Path machines = tables.resolve("machines.csv");
    Files.writeString(
        machines, Files.readString(machines).replace("100,400,100", "100,400," + load));
    if (jobs.isEmpty()) {
      // Without jobs the widest openings count.
      Files.delete(tables.resolve("jobs.csv"));
    }

    assertEquals(0, plan("--kinds", "2", "--machines", "long"));

    List<String> written = written().lines().skip(1).toList();
    assertEquals(rows, written.size(), written());
    assertTrue(written.get(0).contains(",base bolts," + jobs + ","), written());
  }

  @Test
  void keep_itsOwnPlan_changesNothing() throws Exception {
    assertEquals(0, plan("--kinds", "2"));
    String before = written();
    Path kept = Files.move(reports.resolve("plan.csv"), folder.resolve("kept.csv"));

    assertEquals(0, plan("--kinds", "2", "--keep", kept.toString()));

    assertEquals(before, written());
    assertEquals(2, out.toString().lines().filter(line -> line.endsWith("as it is")).count());
  }

  /** A kind put on is one change, whatever the other; both orders of the rows are the same. */
  @Test
  void standing_ofSeveralKinds_countsWithAllOfThem() throws Exception {
    Path standing = tables.resolve("standing.csv");
    String head = "machine,vise,handle_to,from_left,from_front\n";
    Files.writeString(
        standing,
        head + "long,narrow,front,320,190\nlong,wide,front,60,190\nshort,wide,front,65,200\n");
    assertEquals(0, plan("--kinds", "2"));
    assertTrue(out.toString().contains("54.0 mm or more to spare; as it is"), out.toString());
    assertTrue(out.toString().contains("99.0 mm to spare; changed, was wide"), out.toString());
    Files.writeString(standing, head + "long,wide,front,60,190\nlong,narrow,front,319,190\n");
    assertEquals(0, plan("--kinds", "2"));
    assertTrue(unwrapped().contains("same kind, but not as it stands now"), unwrapped());
    Files.writeString(standing, head + "long,narrow,front,320,200\n");

    assertEquals(0, plan("--kinds", "2"));

    assertTrue(unwrapped().contains("54.0 mm or more to spare; changed, was narrow"), unwrapped());
    Files.writeString(standing, head + "short,narrow,front,105,200\nshort,wide,front,65,200\n");
    assertEquals(0, plan("--kinds", "2"));
    assertTrue(unwrapped().contains("99.0 mm to spare; changed, was wide + narrow"), unwrapped());
  }

  @Test
  void keep_rowsThatContradict_areRefusedWithEveryFault() throws Exception {
    Path kept =
        Files.writeString(
            folder.resolve("kept.csv"),
            "machine,vise\nlong,wide\nlong,narrow\nlong,wide\nshort,\nshort,wide\nlong,\n");

    assertEquals(1, plan("--kinds", "2", "--keep", kept.toString()));

    assertEquals(
        List.of(
            kept + ": row 4, column machine: \"long\" with \"wide\" stands in row 2 already",
            kept + ": row 6, column machine: \"short\" with \"wide\" stands in row 5 already",
            kept + ": row 7, column machine: \"long\" stands in row 2 already",
            "Nothing was written; put the plan to keep right and run again."),
        err.toString().lines().toList());
    assertFalse(Files.exists(reports));
  }

  /** Neither vise nor the machine is in the house: 1000 + 100 + 50. */
  @Test
  void buy_aMachineWithTwoKinds_listsEachInTheRowItIsFor() throws Exception {
    Path vises = tables.resolve("vises.csv");
    Files.writeString(
        vises,
        Files.readString(vises).replace(",20,1,100", ",20,0,100").replace(",10,2,", ",10,0,50"));
    Path machines = tables.resolve("machines.csv");
    List<String> rows = Files.readAllLines(machines);
    Files.write(
        machines,
        List.of(
            rows.get(0) + ",status,price",
            rows.get(1) + ",candidate,1000",
            rows.get(2) + ",owned,"));

    assertEquals(0, plan("--kinds", "2", "--buy", "--machines", "long"));

    assertTrue(written().contains("base bolts,plate;bar,machine;vise,1100,1\r\n"), written());
    assertTrue(written().contains("base bolts,pin,vise,50,2\r\n"), written());
    assertTrue(unwrapped().contains("; buy the machine and 2 vises"), unwrapped());
    assertTrue(unwrapped().contains("To buy, 1150 together:"), unwrapped());
    XSSFSheet sheet = workbook().getSheet("Plan");
    assertEquals("the machine and a vise", sheet.getRow(3).getCell(7).getStringCellValue());
    assertEquals("a vise", sheet.getRow(4).getCell(7).getStringCellValue());
    assertEquals(50, sheet.getRow(4).getCell(8).getNumericCellValue());
  }

  /**
   * One piece of iron stands once, square or turned; two may stand side by side, one of them
   * turned.
   */
  @ParameterizedTest
  @CsvSource({"1, 1", "2, 2"})
  void vises_onASwivelBase_standTogetherAsFarAsTheStockGoes(String quantity, long rows)
      throws Exception {
    Files.delete(tables.resolve("jobs.csv"));
    Files.writeString(
        tables.resolve("machines.csv"),
        "machine,table_moves,table_length,table_width,travel_x,travel_y,slot_count,slot_width,"
            + "slot_pitch,front_gap,rear_gap,left_gap,right_gap,nose_min,nose_max\n"
            + "one,xy,1500,400,600,400,3,14,80,500,500,none,none,100,600\n");
    Files.writeString(
        tables.resolve("vises.csv"),
        "vise,quantity,jaw_width,jaw_height,bed_height,opening_max,base_width,rear_reach,"
            + "front_reach,fixed_jaw_thickness,moving_jaw_thickness,rear_projection_closed,"
            + "rear_projection_open,front_projection_closed,front_projection_open,screw_height,"
            + "screw_diameter,handle_radius,bolt_spacing,bolt_u,bolt_hole_u,bolt_hole_v,"
            + "swivel_angles,swivel_u,swivel_radius\nswivel,"
            + quantity
            + ",160,50,80,150,200,60,240,30,40,none,none,30,30,40,20,none,160,90,30,16,30,90,\n");

    assertEquals(0, plan("--kinds", "2", "--cards"));

    assertEquals(rows, written().lines().skip(1).count(), written());
    assertEquals(rows == 2, written().contains("swivel @30"), written());
  }

  /** Slots along y: the row goes from front to back. */
  @Test
  void slots_alongY_theRowGoesFromFrontToBack() throws Exception {
    Path machines = tables.resolve("machines.csv");
    Files.writeString(
        machines,
        "machine,table_moves,table_length,table_width,travel_x,travel_y,slot_direction,slot_count,"
            + "slot_width,front_gap,rear_gap,left_gap,right_gap,nose_min,nose_max,max_load\n"
            + "long,xy,300,500,400,600,y,1,14,0,0,none,none,100,400,100\n");
    Path vises = tables.resolve("vises.csv");
    Files.writeString(vises, Files.readString(vises).replace(",front,", ",right,"));

    assertEquals(0, plan("--kinds", "2"));

    List<String> lines = written().lines().toList();
    assertTrue(lines.get(1).startsWith("long,wide,1,54.000,30.000,100.000,right,-40.000,-90.000,"));
    assertTrue(lines.get(1).endsWith(",plate;bar,,,1"), lines.get(1));
    assertTrue(lines.get(2).endsWith(",pin,,,2"), lines.get(2));
    String where = workbook().getSheet("Plan").getRow(3).getCell(5).getStringCellValue();
    assertTrue(where.startsWith("no. 1 of 2 from the front"), where);
  }

  @Test
  void keep_ofSeveralKindsWhereOneIsPlanned_saysWhichOptionTakesThem() throws Exception {
    assertEquals(0, plan("--kinds", "2"));
    Path kept = Files.move(reports.resolve("plan.csv"), folder.resolve("kept.csv"));

    assertEquals(1, plan("--keep", kept.toString()));

    assertEquals(
        kept
            + ": row 3, column machine: \"long\" stands in row 2 already; with --kinds above 1 a"
            + " machine may have several vises",
        err.toString().lines().findFirst().orElseThrow());
  }

  @Test
  void workbook_hasARowForEachVise() throws Exception {
    assertEquals(0, plan("--kinds", "2"));

    XSSFWorkbook book = workbook();
    XSSFSheet sheet = book.getSheet("Plan");
    assertEquals(
        "Plan: no better plan exists of what was tried",
        sheet.getRow(0).getCell(0).getStringCellValue());
    assertTrue(text(sheet).contains(NOT_COVERED), text(sheet));
    assertEquals("long", sheet.getRow(3).getCell(0).getStringCellValue());
    assertEquals("● wide", sheet.getRow(3).getCell(1).getStringCellValue());
    assertEquals("plate; bar", sheet.getRow(3).getCell(6).getStringCellValue());
    assertEquals(
        List.of(
            "no. 1 of 2 from the left",
            "handle to the front, base bolts, M12",
            "both bolts in slot 1 (of 1, counted from the front)",
            "base's left side 60.0 from the table's left edge",
            "fixed-jaw face 190.0 from the table's front edge",
            "60 to the next"),
        sheet.getRow(3).getCell(5).getStringCellValue().lines().toList());
    assertEquals("● narrow", sheet.getRow(4).getCell(1).getStringCellValue());
    assertEquals(54, sheet.getRow(4).getCell(3).getNumericCellValue());
    assertEquals("● narrow", sheet.getRow(5).getCell(1).getStringCellValue());
    String cautions = text(book.getSheet("Cautions"));
    assertTrue(cautions.contains("parts in two vises at once"), cautions);
  }

  private static String text(XSSFSheet sheet) {
    StringBuilder all = new StringBuilder();
    sheet.forEach(row -> row.forEach(all::append));
    return all.toString();
  }

  /** A page of the whole table, then two pages for each vise of the row and of the other table. */
  @Test
  void cards_ofARow_beginWithThePageOfTheTable() throws Exception {
    assertEquals(0, plan("--kinds", "2", "--cards"));

    try (PDDocument cards = Loader.loadPDF(Files.readAllBytes(reports.resolve("cards.pdf")))) {
      assertEquals(1 + 2 * 2 + 2, cards.getNumberOfPages());
      String text = new PDFTextStripper().getText(cards);
      assertTrue(text.contains("Set wide + narrow on long"), text);
    }
    assertEquals("", err.toString());
  }

  @Test
  void plan_whateverTheThreads_givesTheSameBytes() throws Exception {
    assertEquals(0, plan("--kinds", "2", "--threads", "1"));
    byte[] csv = Files.readAllBytes(reports.resolve("plan.csv"));
    byte[] book = Files.readAllBytes(reports.resolve("plan.xlsx"));

    assertEquals(0, plan("--kinds", "2", "--threads", "5"));

    assertArrayEquals(csv, Files.readAllBytes(reports.resolve("plan.csv")));
    assertArrayEquals(book, Files.readAllBytes(reports.resolve("plan.xlsx")));
  }

  @ParameterizedTest
  @CsvSource({"0", "5", "-1"})
  void kinds_ofNoSuchNumber_areStatus2AndOneLineSaysWhy(String kinds) {
    assertEquals(2, plan("--kinds=" + kinds));
    assertEquals(
        "--kinds takes a whole number from 1 to 4.",
        err.toString().lines().findFirst().orElseThrow());
    assertFalse(Files.exists(reports));
  }

  /**
   * Of 40 vises there are 780 pairs, 9 880 triples and 91 390 sets of four: on two machines twice.
   */
  @ParameterizedTest
  @CsvSource({"3, 21320", "4, 204100"})
  void kinds_ofTooManySets_areStatus2AndOneLineSaysWhy(String kinds, long sets) throws Exception {
    Path vises = tables.resolve("vises.csv");
    List<String> rows = new ArrayList<>(Files.readAllLines(vises));
    String last = rows.get(rows.size() - 1);
    for (int more = 3; more <= 40; more++) {
      rows.add(last.replace("narrow", "narrow " + more));
    }
    Files.write(vises, rows);

    assertEquals(2, plan("--kinds", kinds));

    assertEquals(
        "--kinds "
            + kinds
            + " would try up to "
            + sets
            + " sets of vises, more than 20000. Nothing was written; take fewer kinds, or fewer"
            + " machines with --machines.",
        err.toString().lines().findFirst().orElseThrow());
    assertFalse(Files.exists(reports));
  }
}
