package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.app.input.Input;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.Facts;
import org.jawroom.app.search.Deadline;
import org.jawroom.app.search.PlanSearch;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.ShopCell;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.plan.model.Wishes;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.plan.PlanReports;
import org.jawroom.report.plan.PlanText;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command on the golden shop <i>plan</i>, whose README works it by hand. */
class PlanCommandTest extends GoldenPlanRun {
  private static final String BETTER = "o better plan exists";

  PlanCommandTest() {
    super("plan", List.of("machines.csv", "vises.csv", "jobs.csv", "settings.csv"));
  }

  @Test
  void plan_withJobs_isAsWorkedByHand() throws Exception {
    assertEquals(0, plan());

    assertEquals(Files.readString(golden("expected-plan.csv")), written());
    assertEquals(
        List.of(
            "A vise for 2 of 2 machines:",
            "  roomier: long screw, 0.07 in to spare; keep open 3.63 to 6, or stand it where",
            "      its job says",
            "  tight: plain, 0.12 in to spare",
            "Held: 2 of 3 jobs, 7 of 10 pieces",
            "Not held:",
            "  narrow, roomier: would be held with 1 x plain bought for 100; nothing cheaper",
            "      does it",
            "No better plan exists in this order: the most pieces held, then the most",
            "machines equipped, then the most of them comfortable and settable, then the",
            "widest openings in all, then the widest jaws in all, then the most vises set",
            "out.",
            "Written: " + reports.resolve("plan.csv"),
            "Written: " + reports.resolve("plan.xlsx")),
        out.toString().lines().toList());
    assertEquals("", err.toString());
  }

  /** Held all the same, and marked: nothing else changes. */
  @Test
  void plan_jobThatRestsOnSomethingUnchecked_countsItAndNamesIt() throws Exception {
    Path jobs = tables.resolve("jobs.csv");
    Files.writeString(
        jobs, Files.readString(jobs).replace("wide,4,5 1/2,2,,10 lb,8", "wide,4,5 1/2,2,,10 lb,"));

    assertEquals(0, plan());

    assertEquals(Files.readString(golden("expected-plan.csv")), written());
    List<String> lines = out.toString().lines().toList();
    int at = lines.indexOf("Held: 2 of 3 jobs, 7 of 10 pieces");
    assertEquals(
        List.of(
            "Held as far as the tables say:",
            "  wide: tool height not checked: tool_length is blank",
            "Not held:"),
        lines.subList(at + 1, at + 4));
    XSSFSheet sheet = workbook().getSheet("Jobs");
    assertEquals("○ roomier", sheet.getRow(5).getCell(2).getStringCellValue());
    assertEquals(
        "tool height not checked: tool_length is blank",
        sheet.getRow(5).getCell(7).getStringCellValue());
  }

  @Test
  void plan_thatMayBuy_isAsWorkedByHand() throws Exception {
    assertEquals(0, plan("--buy"));

    assertEquals(Files.readString(golden("expected-plan-buy.csv")), written());
    assertTrue(out.toString().contains("To buy, 100 together:"), out.toString());
    assertTrue(out.toString().contains("Held: 3 of 3 jobs, 10 of 10 pieces"), out.toString());
  }

  @Test
  void plan_withoutJobs_isAsWorkedByHand() throws Exception {
    Files.delete(tables.resolve("jobs.csv"));

    assertEquals(0, plan());

    assertEquals(Files.readString(golden("expected-plan-without-jobs.csv")), written());
    assertTrue(out.toString().contains("keep open 3.63 to 6"), out.toString());
    assertFalse(out.toString().contains("Held"), out.toString());
  }

  @ParameterizedTest
  @CsvSource({"99.99, 0", "100, 1", "0, 0"})
  void budget_decidesWhetherItIsBought(String budget, int bought) throws Exception {
    assertEquals(0, plan("--buy", "--budget", budget));

    assertEquals(bought, written().lines().filter(line -> line.endsWith(",vise,100")).count());
    assertTrue(out.toString().contains("N" + BETTER), out.toString());
  }

  @Test
  void keep_itsOwnPlan_changesNothing() throws Exception {
    assertEquals(0, plan());
    String before = written();
    Path kept = Files.move(reports.resolve("plan.csv"), folder.resolve("kept.csv"));

    assertEquals(0, plan("--keep", kept.toString()));

    assertEquals(before, written());
    assertEquals(2, out.toString().lines().filter(line -> line.contains("as it is")).count());
    assertFalse(out.toString().contains("changed"), out.toString());
  }

  @Test
  void keep_itsOwnPlanAsSpreadsheetsSaveIt_changesNothing() throws Exception {
    assertEquals(0, plan());
    String before = written();
    Path kept = folder.resolve("kept.csv");
    Files.writeString(kept, "sep=,\r\n" + before + ",,,,,,,,\r\n,\r\n");

    assertEquals(0, plan("--keep", kept.toString()), err::toString);

    assertEquals(before, written());
    assertEquals(2, out.toString().lines().filter(line -> line.contains("as it is")).count());
  }

  /** Two kinds stand on one machine: that of which more stand is the one there is. */
  @Test
  void standing_isWhatIsThereNow() throws Exception {
    assertEquals(0, plan());
    assertFalse(out.toString().contains("as it is"), out.toString());
    String without = written();
    Files.writeString(
        tables.resolve("standing.csv"),
        "machine,vise,handle_to,from_left,from_front\n"
            + "tight,long screw,front,10,5\ntight,plain,front,4,5\ntight,plain,front,16,5\n"
            + "roomier,plain,front,10,5\n");

    assertEquals(0, plan());

    assertEquals(without, written());
    assertEquals(
        List.of(
            "      its job says; changed, was plain",
            "  tight: plain, 0.12 in to spare; same kind, but not as it stands now"),
        out.toString()
            .lines()
            .filter(line -> line.contains("as it ") || line.contains("changed"))
            .toList());

    Path kept = Files.writeString(folder.resolve("kept.csv"), "machine,vise\ntight,long screw\n");
    assertEquals(0, plan("--keep", kept.toString()));
    assertTrue(out.toString().contains("changed, was long screw"), out.toString());
  }

  /**
   * The plan has it 11 1/4 from the left and 6 7/8 from the front; printed to 0.01 in, so that
   * 0.005 more than the tolerance shows.
   */
  @ParameterizedTest
  @CsvSource({
    "'front,11 1/4,6 7/8,', as it is",
    "'front,11.3,6 7/8,0.046', as it is",
    "'front,11.3,6 7/8,0.045', 'same kind, but not as it stands now'",
    "'front,11 1/4,6.825,0.046', as it is",
    "'front,11 1/4,6.825,0.044', 'same kind, but not as it stands now'"
  })
  void standing_ofTheSameKind_staysOnlyWhereThePlanHasIt(String place, String words)
      throws Exception {
    Files.writeString(
        tables.resolve("standing.csv"),
        "machine,vise,handle_to,from_left,from_front,tolerance\ntight,plain," + place + "\n");

    assertEquals(0, plan());

    assertTrue(out.toString().contains("plain, 0.12 in to spare; " + words), out.toString());
    String mind = workbook().getSheet("Plan").getRow(4).getCell(9).getStringCellValue();
    assertEquals(!words.equals("as it is"), mind.contains(words), mind);
  }

  @Test
  void keep_aPlanOfOtherTables_notesWhatIsGone() throws Exception {
    Path kept =
        Files.writeString(
            folder.resolve("kept.csv"), "vise,note,machine\nsold,x,ROOMIER\n,,scrapped\n,,tight\n");

    assertEquals(0, plan("--keep", kept.toString()));

    assertEquals(
        List.of(
            "Note: \"sold\" of "
                + kept
                + " is no vise of these tables any more, so \"roomier\" changes in any"
                + " case.",
            "Note: \"scrapped\" of " + kept + " is not in this cell; left out."),
        err.toString().lines().toList());
    assertEquals(2, out.toString().lines().filter(line -> line.contains("changed, was")).count());
  }

  @Test
  void keep_faultyPlan_isRefusedWithEveryFault() throws Exception {
    Path kept =
        Files.writeString(
            folder.resolve("kept.csv"), "machine,vise\ntight,plain\ntight,\n,plain\nroomier\n");

    assertEquals(1, plan("--keep", kept.toString()));

    assertEquals(
        List.of(
            kept + ": row 3, column machine: \"tight\" stands in row 2 already",
            kept + ": row 4, column machine: is blank; what belongs here is a name",
            kept + ": row 5 has 1 cells, but the header has 2",
            "Nothing was written; put the plan to keep right and run again."),
        err.toString().lines().toList());
    assertFalse(Files.exists(reports));
  }

  @Test
  void keep_fileThatIsNotThere_isUnreadable() {
    assertEquals(3, plan("--keep", folder.resolve("no.csv").toString()));
    assertTrue(err.toString().contains("there is no such file"), err.toString());
  }

  @Test
  void timeLimit_ofNothing_isStatus2AndWritesNothing() {
    assertEquals(2, plan("--time-limit", "0"));

    assertEquals("", out.toString());
    assertEquals(
        List.of(
            "No plan was found within --time-limit 0. Nothing was written; give it more time, or"
                + " fewer --machines."),
        err.toString().lines().toList());
    assertFalse(Files.exists(reports));
  }

  /** The solver gets no time at all, the rest as much as it needs. */
  @Test
  void timeLimit_overBeforeTheSolver_givesWhatIsThereAndClaimsNothing() throws Exception {
    Reading reading = Input.read(tables, Map.of());
    Shop read = reading.shop().orElseThrow();
    Shop shop = ShopCell.planned(read, read.machines());
    Deadline deadline = new Deadline(() -> 600_000, 600_000);
    CellPlan plan =
        new PlanSearch(Wishes.none(), 1, Optional.empty(), 2, deadline)
            .of(shop, Progress.on(new PrintWriter(err)))
            .orElseThrow();
    List<Outcome> outcomes = plan.of().pairings().stream().map(CellPairing::outcome).toList();
    PlanReports.write(reports, plan, Facts.of(reading, shop, outcomes), Optional.empty());

    assertFalse(plan.plan().machines().isEmpty());
    String text = String.join("\n", PlanText.lines(plan, PeopleUnit.MM, List.of()));
    assertFalse(text.contains(BETTER), text);
    assertTrue(text.contains("A better plan may exist; not proven: the most pieces held"), text);
    assertTrue(text.contains("--time-limit"), text);
    XSSFSheet sheet = workbook().getSheet("Plan");
    assertEquals("Plan: a better plan may exist", sheet.getRow(0).getCell(0).getStringCellValue());
  }

  @Test
  void workbook_saysWhatIsPlannedAndWhatWouldHoldTheRest() throws Exception {
    assertEquals(0, plan());

    XSSFWorkbook book = workbook();
    List<String> names = new ArrayList<>();
    book.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));
    assertEquals(List.of("Plan", "Jobs", "Inputs", "Cautions"), names);
    XSSFSheet sheet = book.getSheet("Plan");
    assertEquals("Plan: no better plan exists", sheet.getRow(0).getCell(0).getStringCellValue());
    assertEquals("↔ long screw", sheet.getRow(3).getCell(1).getStringCellValue());
    assertEquals(0.07, sheet.getRow(3).getCell(3).getNumericCellValue());
    assertEquals("wide", sheet.getRow(3).getCell(6).getStringCellValue());
    XSSFSheet jobs = book.getSheet("Jobs");
    assertEquals("narrow, roomier", jobs.getRow(3).getCell(0).getStringCellValue());
    assertEquals(
        "would be held with 1 × plain bought for 100; nothing cheaper does it",
        jobs.getRow(3).getCell(7).getStringCellValue());
  }

  @Test
  void cards_areOneForEachMachineOfThePlan() throws Exception {
    assertEquals(0, plan("--cards"));

    try (PDDocument cards = Loader.loadPDF(Files.readAllBytes(reports.resolve("cards.pdf")))) {
      assertEquals(2 * 2, cards.getNumberOfPages(), "two pages a card");
      String text = new PDFTextStripper().getText(cards);
      assertTrue(text.contains("long screw") && text.contains("tight"), text);
    }
  }

  /** Both machines can carry it, square or turned; there is one of it, and two with one bought. */
  @Test
  void plan_viseOnASwivelBase_isOneVise() throws Exception {
    Files.delete(tables.resolve("jobs.csv"));
    Files.writeString(tables.resolve("settings.csv"), "setting,value\n");
    Files.writeString(
        tables.resolve("machines.csv"),
        "machine,table_moves,table_length,table_width,travel_x,travel_y,slot_count,slot_width,"
            + "slot_pitch,front_gap,rear_gap,left_gap,right_gap,nose_min,nose_max\n"
            + "one,xy,1000,400,600,400,3,14,80,500,500,none,none,100,600\n"
            + "two,xy,1000,400,600,400,3,14,80,500,500,none,none,100,600\n");
    Files.writeString(
        tables.resolve("vises.csv"),
        "vise,quantity,price,jaw_width,jaw_height,bed_height,opening_max,base_width,rear_reach,"
            + "front_reach,fixed_jaw_thickness,moving_jaw_thickness,rear_projection_closed,"
            + "rear_projection_open,front_projection_closed,front_projection_open,screw_height,"
            + "screw_diameter,handle_radius,bolt_spacing,bolt_u,bolt_hole_u,bolt_hole_v,"
            + "swivel_angles,swivel_u,swivel_radius\n"
            + "swivel,1,300,160,50,80,150,200,60,240,30,40,none,none,30,30,40,20,none,160,90,30,"
            + "16,30,90,\n");

    assertEquals(0, plan());
    assertEquals(
        List.of("one,swivel,1", "two,,"),
        written().lines().skip(1).map(PlanCommandTest::firstThree).toList());

    Path kept = Files.writeString(folder.resolve("kept.csv"), "machine,vise\ntwo,swivel @30\n");
    assertEquals(0, plan("--keep", kept.toString(), "--cards"));
    assertEquals(
        List.of("one,,", "two,swivel @30,1"),
        written().lines().skip(1).map(PlanCommandTest::firstThree).toList());
    assertEquals("", err.toString());
    assertTrue(Files.exists(reports.resolve("cards.pdf")));
  }

  private static String firstThree(String line) {
    return String.join(",", List.of(line.split(",", -1)).subList(0, 3));
  }

  @Test
  void plan_whateverTheThreads_givesTheSameBytes() throws Exception {
    assertEquals(0, plan("--threads", "1"));
    byte[] csv = Files.readAllBytes(reports.resolve("plan.csv"));
    byte[] book = Files.readAllBytes(reports.resolve("plan.xlsx"));

    assertEquals(0, plan("--threads", "5"));

    assertArrayEquals(csv, Files.readAllBytes(reports.resolve("plan.csv")));
    assertArrayEquals(book, Files.readAllBytes(reports.resolve("plan.xlsx")));
  }

  @Test
  void machines_named_aloneAreOfTheCell() throws Exception {
    assertEquals(0, plan("--machines", " ROOMIER ;"));

    assertEquals(2, written().lines().count());
    assertTrue(written().contains("\r\nroomier,plain,1,9.525,"), written());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--machines=rommier | There is no machine \"rommier\" in these tables; did you mean \"roomier\"?",
        "--machines=; | --machines names none; leave it out for all.",
        "--budget=5 | --budget goes with --buy: without it nothing is bought.",
        "--buy --budget=much | option --budget: \"much\" is not a number; write digits alone, as 25 or 12.5",
        "--buy --budget=-1 | option --budget: \"-1\" is below 0",
        "--buy --budget=1.005 | option --budget: \"1.005\" could be 1.005 or 1005; write 1005 or"
            + " 1.01",
        "--buy --budget=1.0055 | option --budget: \"1.0055\" has more than two decimals",
        "--time-limit=-1 | --time-limit takes whole seconds from 0 up.",
        "--threads=0 | --threads takes a whole number from 1 up.",
      })
  void wrongUse_isStatus2AndOneLineSaysWhy(String options, String line) {
    assertEquals(2, plan(options.split(" ")));
    assertEquals(line, err.toString().lines().findFirst().orElseThrow());
    assertFalse(Files.exists(reports));
  }

  @Test
  void candidate_isOfTheCellOnlyWhereItMayBeBought() throws Exception {
    Path machines = tables.resolve("machines.csv");
    List<String> rows = Files.readAllLines(machines);
    Files.write(
        machines,
        List.of(
            rows.get(0) + ",status,price",
            rows.get(1) + ",candidate,",
            rows.get(2) + ",candidate,9000"));

    assertEquals(2, plan("--machines=tight"));
    assertEquals("\"tight\" is a candidate: with --buy it can be bought.", err.toString().strip());
    err.getBuffer().setLength(0);
    assertEquals(2, plan("--machines=roomier", "--buy"));
    assertEquals(
        "\"roomier\" is a candidate: give it a price, so that it can be bought.",
        err.toString().strip());
    err.getBuffer().setLength(0);
    assertEquals(0, plan("--buy"));
    assertEquals(
        "Note: the candidate \"roomier\" has no price, so it cannot be bought.",
        err.toString().strip());
    assertTrue(written().contains("\r\ntight,plain,1,3.175,"), written());
    assertTrue(written().contains(",machine,9000\r\n"), written());
  }

  /** 75 lb each; on 30 in of table three stand side by side, which 150 lb would not carry. */
  @ParameterizedTest
  @CsvSource({"300 lb, 3", "150 lb, 2", "74 lb, 0"})
  void count_isNoMoreThanTheTableCarries(String load, int count) throws Exception {
    Files.delete(tables.resolve("jobs.csv"));
    Path machines = tables.resolve("machines.csv");
    Files.writeString(machines, Files.readString(machines).replace("300 lb", load));
    Path vises = tables.resolve("vises.csv");
    Files.writeString(vises, Files.readString(vises).replace(",1,100\n", ",5,100\n"));

    assertEquals(0, plan("--machines=roomier"));

    String row = written().lines().skip(1).findFirst().orElseThrow();
    assertTrue(row.startsWith(count == 0 ? "roomier,,," : "roomier,plain," + count + ","), row);
  }

  /**
   * One alone has all its work within the spindle's reach, 12 either way; so has each of several:
   * jaws 6 wide reach no farther than that with their middle at 9. Bases of 7 1/2 then stand from
   * 15 − 9 − 3 3/4 = 2 1/4 (57.15), 11 1/4 (285.75) and 20 1/4 (514.35) on.
   */
  @Test
  void several_onOneTable_areListedWithAPlaceEach() throws Exception {
    Files.delete(tables.resolve("jobs.csv"));
    Path vises = tables.resolve("vises.csv");
    Files.writeString(vises, Files.readString(vises).replace(",1,100\n", ",3,100\n"));

    assertEquals(0, plan("--machines=roomier", "--cards", "--show=mm"));

    List<String> where =
        workbook().getSheet("Plan").getRow(3).getCell(5).getStringCellValue().lines().toList();
    assertEquals("each handle to the front, base bolts", where.get(0));
    assertEquals(
        List.of(
            "1: base's left side 57.2 from the table's left edge",
            "2: base's left side 285.8 from the table's left edge",
            "3: base's left side 514.4 from the table's left edge"),
        where.stream().skip(1).map(line -> line.substring(0, line.indexOf(','))).toList());
    try (PDDocument cards = Loader.loadPDF(Files.readAllBytes(reports.resolve("cards.pdf")))) {
      assertEquals(2, cards.getNumberOfPages(), "two pages a card");
      String text = new PDFTextStripper().getText(cards).replaceAll("\\s+", " ");
      assertTrue(text.contains("3 side by side: 1: base's"), text);
    }
  }

  /**
   * With covers 2 inside either end of the table, two stand where three did: as far apart as the
   * covers allow, so that no tap room is left.
   */
  @Test
  void several_tooCloseToBeTappedSquare_areSaidToBe() throws Exception {
    Files.delete(tables.resolve("jobs.csv"));
    Path vises = tables.resolve("vises.csv");
    Files.writeString(vises, Files.readString(vises).replace(",1,100\n", ",3,100\n"));
    String said = "side by side: no room to tap each square";
    assertEquals(0, plan("--machines=roomier"));
    assertFalse(unwrapped().contains(said), out.toString());
    assertFalse(row().contains(said), row());
    Path machines = tables.resolve("machines.csv");
    Files.writeString(machines, Files.readString(machines).replaceFirst("none,none", "-2,-2"));

    assertEquals(0, plan("--machines=roomier"));

    assertTrue(written().contains("roomier,plain,2,"), written());
    assertTrue(unwrapped().contains(said), out.toString());
    assertTrue(row().contains(said), row());
  }

  /** Jaws 6 wide in the middle of 4 of travel stick out of it by 1 on either side. */
  @Test
  void spindle_thatMissesSomeOfTheWork_isSaidTo() throws Exception {
    Files.delete(tables.resolve("jobs.csv"));
    assertEquals(0, plan());
    assertFalse(unwrapped().contains("spindle"), out.toString());
    Path machines = tables.resolve("machines.csv");
    Files.writeString(machines, Files.readString(machines).replace(",24,12,", ",4,12,"));

    assertEquals(0, plan());

    assertTrue(
        unwrapped().contains("tight: plain, 0.12 in to spare; spindle misses 1 of the work"),
        out.toString());
    assertTrue(row().contains("spindle misses 1 of the work"), row());
  }

  /** The first machine's row of the sheet. */
  private String row() throws Exception {
    StringBuilder cells = new StringBuilder();
    workbook().getSheet("Plan").getRow(3).forEach(cell -> cells.append(cell).append('|'));
    return cells.toString();
  }
}
