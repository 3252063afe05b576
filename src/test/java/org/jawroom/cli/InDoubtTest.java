package org.jawroom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.launch.Main;
import org.jawroom.report.wording.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What reports say of a pairing that needs a suspect reading, and of one that was checked: the shop
 * worked by hand in {@code checks/hand}.
 */
class InDoubtTest {
  private static final Path HAND = Path.of("src/test/resources/org/jawroom/checks/hand");

  private static final String SUSPECTS = "table_width of hand mill or rear_gap of hand mill";

  /** By hand, as its README does: 210 − (−150 + 110 + 50) to the cover's face, at its own place. */
  private static final String AT_ITS_PLACE =
      """
      machine,vise,handle_to,from_left,from_front,part,guard,found,tolerance,measured
      hand mill,hand vise,rear,LEFT,FRONT,base,rear cover,FOUND,0.5,"A. B., Monday"
      """;

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();

  @Test
  void matrix_suspects_standAtTheEndOfTheRow() throws Exception {
    assertEquals("machines.table_width;machines.rear_gap,", lastCells(tables(), 2));
    assertTrue(out.toString().contains("fits, with a caveat"), out.toString());
    assertFalse(out.toString().contains("fits: "), out.toString());
  }

  @Test
  void plan_suspects_standBesideTheVise() throws Exception {
    run("plan", tables().toString(), "-o", folder.resolve("plan").toString());
    assertTrue(
        out.toString().replaceAll("\\s+", " ").contains("hand vise, 93.0 mm to spare; in doubt"),
        out.toString());
  }

  @Test
  void page_suspects_areNamed() throws Exception {
    Path file = folder.resolve("page.html");
    run("page", tables().toString(), "-o", file.toString());
    assertTrue(Files.readString(file).contains("in doubt: checks on the machine say that "));
  }

  @Test
  void explain_suspects_areTheFirstCaution() throws Exception {
    run("explain", tables().toString(), "hand mill", "hand vise");
    String text = out.toString().replaceAll("\\s+", " ");
    assertTrue(text.contains("hand vise fits, with cautions: "), text);
    assertTrue(text.contains("! in doubt: gaps found on the machine say that " + SUSPECTS), text);
  }

  @Test
  void card_suspects_areNoGo() throws Exception {
    String text = card(tables());
    assertTrue(text.contains("NOT A GO: gaps found on the machine say that " + SUSPECTS), text);
    assertTrue(text.contains("fits, in doubt"), text);
  }

  /** The card of a job has its own caveats beside the doubt, and no check of another place. */
  @Test
  void card_job_isNoGoAndKeepsItsCaveats() throws Exception {
    Path tables = tables();
    job(tables);
    String text = jobCard(tables);
    assertTrue(text.contains("held, in doubt"), text);
    assertTrue(text.contains("NOT A GO: gaps found on the machine say that " + SUSPECTS), text);
    assertTrue(text.contains("Mind: heads left out"), text);
    assertFalse(text.contains("Mind: in doubt"), text);
    Path checked = checked("200", "110", "100");
    job(checked);
    assertFalse(jobCard(checked).contains("checked on the machine"));
  }

  /** A job that is held rests on the same readings: no report shows it plain. */
  @Test
  void explainJob_suspects_areMarked() throws Exception {
    Path tables = tables();
    job(tables);
    run("explain", tables.toString(), "hand mill", "hand vise", "--job", "plate");
    String text = out.toString().replaceAll("\\s+", " ");
    assertTrue(text.contains("Held as far as the tables say"), text);
    assertTrue(text.contains("! in doubt: checks on the machine say that " + SUSPECTS), text);
    run("explain", tables.toString(), "hand mill", "hand vise", "--job", "plate", "--json");
    assertTrue(
        out.toString()
            .replaceAll("\\s+", "")
            .contains("\"in_doubt\":[\"machines.table_width\",\"machines.rear_gap\"]"),
        out.toString());
    Path checked = checked("200", "110", "100");
    job(checked);
    run("explain", checked.toString(), "hand mill", "hand vise", "--job", "plate");
    assertFalse(out.toString().contains("in doubt"), out.toString());
  }

  @Test
  void jobsSheet_suspects_takeThePlainSignAway() throws Exception {
    Path tables = tables();
    checkable(tables);
    Path target = folder.resolve("jobs");
    run("matrix", tables.toString(), "-o", target.toString());
    String cells = cells(target.resolve("matrix.xlsx"), "Jobs");
    assertTrue(cells.contains(Finding.FITS_BUT.sign() + " 1 of 1 vises"), cells);
    assertTrue(cells.contains("! in doubt: checks on the machine say that " + SUSPECTS), cells);
    assertTrue(out.toString().contains("1  held, but in doubt"), out.toString());
    Path checked = checked("200", "110", "100");
    checkable(checked);
    run("matrix", checked.toString(), "-o", target.toString());
    cells = cells(target.resolve("matrix.xlsx"), "Jobs");
    assertTrue(cells.contains(Finding.FITS.sign() + " 1 of 1 vises"), cells);
    assertFalse(cells.contains("in doubt"), cells);
  }

  /** A wrong reading may be why it is not held. */
  @Test
  void jobsSheet_notHeld_marksTheDoubtOfTheNearest() throws Exception {
    Path tables = tables();
    Files.writeString(
        tables.resolve("jobs.csv"), "job,part_length,part_width,part_height\nplate,60,150,30\n");
    Path target = folder.resolve("jobs");
    run("matrix", tables.toString(), "-o", target.toString());
    String cells = cells(target.resolve("matrix.xlsx"), "Jobs");
    // Opens 100, and asks for 2 beyond the part to let it in.
    assertTrue(
        cells.contains(
            "nearest: hand vise: 52 too wide for the jaws\n"
                + "! in doubt: checks on the machine say that "
                + SUSPECTS
                + " may be wrong\n"),
        cells);
    assertFalse(cells.contains("not checked:"), cells);
  }

  @Test
  void planWorkbook_suspects_standBesideViseAndJob() throws Exception {
    Path tables = tables();
    job(tables);
    Path target = folder.resolve("plan");
    run("plan", tables.toString(), "-o", target.toString());
    assertTrue(
        out.toString()
            .replaceAll("\\s+", " ")
            .contains("Held, but in doubt: plate: " + SUSPECTS + " may be wrong"),
        out.toString());
    String plan = cells(target.resolve("plan.xlsx"), "Plan");
    assertTrue(plan.contains(Finding.FITS_BUT.sign() + " hand vise"), plan);
    assertTrue(plan.contains("in doubt: checks on the machine say that " + SUSPECTS), plan);
    assertTrue(plan.contains("1 of them are held in doubt"), plan);
    String jobs = cells(target.resolve("plan.xlsx"), "Jobs");
    assertTrue(jobs.contains(Finding.FITS_BUT.sign() + " hand mill"), jobs);
    assertTrue(jobs.contains("in doubt: checks on the machine say that " + SUSPECTS), jobs);
  }

  @Test
  void assess_suspects_takeThePlainFitAway() throws Exception {
    Path tables = tables();
    checkable(tables);
    Path target = folder.resolve("assess");
    run("assess", tables.toString(), "hand mill", "-o", target.toString());
    String text = out.toString().replaceAll("\\s+", " ");
    assertTrue(text.contains("1 job held that no owned machine holds (1 in doubt)"), text);
    assertTrue(text.contains("1 of 1 kinds of vise fit (1 in doubt)"), text);
    String cells = cells(target.resolve("assess.xlsx"), "Candidates");
    assertTrue(cells.contains("fits\n1, 1 in doubt: hand vise (in doubt)"), cells);
    assertTrue(cells.contains("held\n1, 1 in doubt: plate (in doubt)"), cells);
    assertTrue(cells.contains(SUSPECTS + " may be wrong"), cells);
    assertTrue(cells.contains("to spare, in doubt"), cells);
    String csv = Files.readString(target.resolve("assess.csv"));
    assertTrue(csv.contains("hand mill,vises,in doubt,1,,hand vise"), csv);
    assertTrue(csv.contains("hand mill,jobs,in doubt,1,,plate"), csv);
    Path checked = checked("200", "110", "100");
    checkable(checked);
    run("assess", checked.toString(), "hand mill", "-o", target.toString());
    assertFalse(cells(target.resolve("assess.xlsx"), "Candidates").contains("in doubt"));
    assertFalse(out.toString().contains("in doubt"), out.toString());
  }

  /** A job of which nothing stays unchecked: only the doubt keeps it from being plain. */
  private static void checkable(Path tables) throws Exception {
    Files.writeString(
        tables.resolve("jobs.csv"),
        "job,part_length,part_width,part_height,tool_length,mass\nplate,60,50,30,100,1\n");
    append(tables.resolve("machines.csv"), ",max_load", ",200");
    append(tables.resolve("vises.csv"), ",mass", ",10");
  }

  private static void append(Path table, String header, String row) throws Exception {
    List<String> lines = Files.readAllLines(table);
    assertEquals(2, lines.size());
    Files.write(table, List.of(lines.get(0) + header, lines.get(1) + row));
  }

  /** All texts of a sheet, a line each. */
  private static String cells(Path workbook, String sheet) throws Exception {
    StringBuilder text = new StringBuilder();
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
      book.getSheet(sheet)
          .forEach(row -> row.forEach(cell -> text.append(cell.toString()).append('\n')));
    }
    return text.toString();
  }

  private static void job(Path tables) throws Exception {
    Files.writeString(
        tables.resolve("jobs.csv"), "job,part_length,part_width,part_height\nplate,60,50,30\n");
    Files.writeString(
        tables.resolve("guards.csv"),
        "machine,guard,carried_by,x_min,x_max,y_min,y_max,z_min,z_max\n"
            + "hand mill,hood,head,400,500,400,500,0,50\n");
  }

  private String jobCard(Path tables) throws Exception {
    Path file = folder.resolve("job.pdf");
    run(
        "card",
        tables.toString(),
        "hand mill",
        "hand vise",
        "--job",
        "plate",
        "-o",
        file.toString());
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  /** No font has a letter of the private use area: the drawing prints the row beside the name. */
  @Test
  void draw_nameThatDoesNotPrint_staysInDoubt() throws Exception {
    Path tables = tables();
    for (String table : List.of("machines.csv", "checks.csv")) {
      Path file = tables.resolve(table);
      Files.writeString(file, Files.readString(file).replace("hand mill", "mill \ue000"));
    }
    Path file = folder.resolve("drawing.svg");
    run("draw", tables.toString(), "mill \ue000", "hand vise", "-o", file.toString());
    assertTrue(Files.readString(file).contains("in doubt"));
  }

  /**
   * The place recommended is 200 from the left and 110 from the front, the base 100 from the face.
   */
  @Test
  void matrix_checkedAtItsPlace_saysByWhom() throws Exception {
    assertEquals(",\"A. B., Monday\"", lastCells(checked("200", "110", "100"), 2));
    // The measures of a check are off by up to its tolerance, here 0.5; so is the gap, and each
    // end.
    assertEquals(",\"A. B., Monday\"", lastCells(checked("199.5", "110.5", "100"), 2));
    assertEquals(",", lastCells(checked("199.499", "110", "100"), 2));
    assertEquals(",", lastCells(checked("200", "110.501", "100"), 2));
  }

  @Test
  void matrix_checkThatDisagrees_isNotChecked() throws Exception {
    // Within 0.5 of the face, of the end, of the place and of the gap: 98 to 102.
    assertEquals(",\"A. B., Monday\"", lastCells(checked("200", "110", "98"), 2));
    String doubt = lastCells(checked("200", "110", "97.999"), 2);
    assertTrue(doubt.contains("machines.rear_gap") && doubt.endsWith(","), doubt);
  }

  /** A gap of 100 with 1 of tolerance, a check within 10: from 79 on it agrees, but 90 is asked. */
  @Test
  void matrix_foundBelowTheClearance_isNotChecked() throws Exception {
    for (String found : List.of("90", "89.999")) {
      Path tables = checked("200", "110", found);
      Path checks = tables.resolve("checks.csv");
      Files.writeString(checks, Files.readString(checks).replace(",0.5,", ",10,"));
      Files.writeString(tables.resolve("settings.csv"), "setting,value\nclearance,90\n");
      assertEquals(found.equals("90") ? ",\"A. B., Monday\"" : ",", lastCells(tables, 2));
    }
  }

  @Test
  void explainAndCard_checked_sayByWhom() throws Exception {
    Path tables = checked("200", "110", "100");
    run("explain", tables.toString(), "hand mill", "hand vise");
    assertTrue(out.toString().contains("checked on the machine: A. B., Monday"), out.toString());
    String text = card(tables);
    assertTrue(text.contains("checked on the machine: A. B., Monday"), text);
    assertFalse(text.contains("NOT A GO"), text);
  }

  private Path checked(String left, String front, String found) throws Exception {
    Path tables = tables();
    Files.writeString(
        tables.resolve("checks.csv"),
        AT_ITS_PLACE.replace("LEFT", left).replace("FRONT", front).replace("FOUND", found));
    return tables;
  }

  private String card(Path tables) throws Exception {
    Path file = folder.resolve("card.pdf");
    run("card", tables.toString(), "hand mill", "hand vise", "-o", file.toString());
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  /** The last cells of the only pairing, as written. */
  private String lastCells(Path tables, int cells) throws Exception {
    run("matrix", tables.toString(), "-o", folder.resolve("out").toString(), "--no-workbook");
    List<String> lines = Files.readAllLines(folder.resolve("out/pairings.csv"));
    String[] all = lines.get(1).split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
    return String.join(",", Stream.of(all).skip(all.length - cells).toList());
  }

  private Path tables() throws Exception {
    Path tables = Files.createTempDirectory(folder, "tables");
    try (Stream<Path> all = Files.list(HAND)) {
      for (Path table : all.toList()) {
        Files.copy(table, tables.resolve(table.getFileName()));
      }
    }
    return tables;
  }

  private void run(String... args) {
    StringWriter err = new StringWriter();
    out.getBuffer().setLength(0);
    assertEquals(
        0, Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true)), err.toString());
  }
}
