package org.jawroom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the commands print of readings known within bounds: the two millimetre machines of the
 * golden shop, with other rear gaps. At worst a cover stands where its least gap puts it, so that a
 * range must give what its lower end gives.
 */
class BoundsReportsTest {
  private static final String RANGE = "10..40";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();

  @Test
  void check_listsOpenReadingsByMachineThenVise() throws Exception {
    Path tables = tables(RANGE, true);
    edit(
        tables,
        "vises.csv",
        "plain,mm,one,150,40,60,150,170,",
        "plain,mm,one,150,40,60,150,160..170,");
    String text = run("check", tables.toString());
    assertTrue(
        text.contains(
            "Blank or a range, and what that leaves unknown:"
                + " machine roomy: rear_gap from 10 to 40 mm; no pairing unknown"
                + " machine not-measured: rear_gap; 5 of 6 pairings unknown: plain, six inch, six"
                + " inch handle and 2 more"
                + " vise plain: base_width from 160 to 170 mm; 1 of 2 pairings unknown: not-measured"
                + " 2 machines, 6 vises"),
        text);
    // No warning says that a reading leaves pairings unknown where the list says that none is.
    assertFalse(text.contains("stays unknown until"), text);
    assertFalse(run("check", tables("40", false).toString()).contains("Blank or a range"));
  }

  /** What check lists as a blank or a range is no warning of it, nor one of matrix. */
  @Test
  void matrix_openReadings_countsTheWarningsThatCheckLists() throws Exception {
    Path tables = tables(RANGE, true);
    String target = Files.createTempDirectory(folder, "out").toString();
    String listed = run("check", tables.toString()).replaceAll(".*no faults, |\\.$| $", "");
    String counted = run("matrix", tables.toString(), "-o", target);
    assertTrue(listed.matches("[1-9]\\d* warnings?\\.?"), listed);
    assertTrue(counted.contains(" " + listed.replace(".", "") + " on the inputs"), counted);
  }

  @Test
  void card_heldByARange_saysForWhichValuesItHolds() throws Exception {
    String line = "This card holds whatever rear_gap is, from 10 to 40 mm.";
    assertTrue(card(tables(RANGE, false)).contains(line));
    assertFalse(card(tables("10", false)).contains("This card holds"));
  }

  @Test
  void matrix_heldByARange_isMarkedUnderTheMarginOfItsWorstEnd() throws Exception {
    String mark = "! holds whatever rear_gap is, from 10 to 40 mm";
    Map<CellAddress, String> range = cells(tables(RANGE, false));
    Map<CellAddress, String> worst = cells(tables("10", false));
    assertTrue(worst.values().stream().noneMatch(cell -> cell.contains("! holds whatever")));
    List<CellAddress> marked =
        range.keySet().stream().filter(at -> range.get(at).contains(mark)).toList();
    assertEquals(4, marked.size(), range::toString);
    for (CellAddress at : marked) {
      assertEquals(worst.get(at), range.get(at).replace("\n" + mark, ""));
      // The margin stands above its reason.
      CellAddress margin = new CellAddress(at.getRow() - 1, at.getColumn());
      assertTrue(worst.get(margin).matches("\\d+\\.\\d"), worst.get(margin));
      assertEquals(worst.get(margin), range.get(margin));
    }
  }

  /** The margins are those of {@code ExplainBoundsTest}, −104.35 and 34.65, rounded down. */
  @Test
  void matrix_unknown_showsBothMargins() throws Exception {
    String both = "? −104.4 to 34.6";
    Map<CellAddress, String> cells = cells(tables("-200..40", false));
    assertTrue(cells.containsValue(both), cells::toString);
    // A blank has no end on the one side: no margins.
    Map<CellAddress, String> blank = cells(tables("", false));
    CellAddress at =
        cells.keySet().stream()
            .filter(one -> cells.get(one).equals(both))
            .findFirst()
            .orElseThrow();
    assertEquals("? unknown", blank.get(at));
  }

  @Test
  void compare_fitsThatRestOnARange_changeAsToItsWorstEnd() throws Exception {
    Path range = tables(RANGE, false);
    Path worst = tables("10", false);
    Path best = tables("40", false);
    String same = run("compare", worst.toString(), range.toString());
    assertTrue(same.contains(" 0 got worse 0 got better"), same);
    List<String> toRange = changed(best, range);
    assertFalse(toRange.isEmpty());
    assertEquals(changed(best, worst), toRange);
    assertTrue(toRange.stream().allMatch(line -> line.contains(",worse,fits,fits,")));
  }

  @Test
  void compare_unknownWithinBounds_isNowKnownOnceMeasured() throws Exception {
    Path range = tables("-200..40", false);
    Path known = tables("40", false);
    String text = run("compare", range.toString(), known.toString());
    assertTrue(text.contains("4 now known"), text);
    assertTrue(text.contains("roomy x plain: unknown → fits"), text);
    String back = run("compare", known.toString(), range.toString());
    assertTrue(back.contains("roomy x plain: fits → unknown"), back);
    assertTrue(back.contains("left open by machines.rear_gap"), back);
  }

  /** The rows of pairings that fit before and after, as a program reads them. */
  private List<String> changed(Path old, Path now) {
    run("compare", old.toString(), now.toString(), "--csv");
    return out.toString().lines().filter(line -> line.contains(",fits,fits,")).toList();
  }

  private Path tables(String rearGap, boolean both) throws Exception {
    Path tables = Files.createTempDirectory(folder, "tables");
    Path golden = GoldenTables.of("example");
    for (String name : List.of("vises.csv", "guards.csv", "settings.csv")) {
      Files.copy(golden.resolve(name), tables.resolve(name));
    }
    List<String> lines =
        Files.readAllLines(golden.resolve("machines.csv")).stream()
            .filter(
                line ->
                    line.startsWith("machine,")
                        || line.startsWith("roomy,")
                        || both && line.startsWith("not-measured,"))
            .toList();
    Files.write(tables.resolve("machines.csv"), lines);
    edit(tables, "machines.csv", ",80,50,none,", ",80," + rearGap + ",none,");
    return tables;
  }

  private static void edit(Path tables, String name, String old, String now) throws Exception {
    Path table = tables.resolve(name);
    String text = Files.readString(table);
    assertTrue(text.contains(old), text);
    Files.writeString(table, text.replace(old, now));
  }

  private String card(Path tables) throws Exception {
    Path file = folder.resolve("card.pdf");
    run("card", tables.toString(), "roomy", "plain", "-o", file.toString());
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  /** The cells of the matrix. */
  private Map<CellAddress, String> cells(Path tables) throws Exception {
    Path target = Files.createTempDirectory(folder, "out");
    run("matrix", tables.toString(), "-o", target.toString());
    Map<CellAddress, String> cells = new TreeMap<>();
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(target.resolve("matrix.xlsx")))) {
      book.getSheet("Matrix")
          .forEach(row -> row.forEach(cell -> cells.put(cell.getAddress(), cell.toString())));
    }
    return cells;
  }

  private String run(String... args) {
    StringWriter err = new StringWriter();
    out.getBuffer().setLength(0);
    assertEquals(
        0, Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true)), err.toString());
    return out.toString().replaceAll("\\s+", " ");
  }
}
