package org.jawroom.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.golden.PaperCell.Box;
import org.jawroom.golden.PaperCell.Spot;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The plan of a whole cell, six machines and nine vises, laid out from what is printed: every place
 * of {@code plan.csv} is drawn as boxes by {@link PaperCell} and measured anew.
 */
class PaperCellTest {
  private static final Path GOLDEN = Path.of("src/test/resources/org/jawroom/golden/paper-cell");

  /** Half of the last figure printed, in nm. */
  private static final long HALF = 500;

  @TempDir private static Path folder;
  private static PaperCell paper;
  private static final Map<Integer, String> SAID = new HashMap<>();

  private int kinds;
  private String text;
  private List<CSVRecord> plan;

  /** Of two kinds on a table the places are thirds and sixths of a millimetre, so rounded. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void plan_laidOutOnPaper_isAsPrinted(int kinds) throws Exception {
    take(kinds);
    assertEquals(Files.readString(GOLDEN.resolve("expected-plan-" + kinds + ".csv")), csv());

    int alone = 0;
    int together = 0;
    for (Map.Entry<String, List<CSVRecord>> table : tables().entrySet()) {
      List<CSVRecord> rows = table.getValue();
      List<List<Box>> parts = new ArrayList<>();
      for (CSVRecord row : rows) {
        Spot spot = spot(row);
        long[] opening = paper.opening(spot.vise());
        assertEquals(opening[0], PaperCell.nm(row.get("opening_from_mm")), row.toString());
        assertEquals(opening[1], PaperCell.nm(row.get("opening_to_mm")), row.toString());
        assertEquals("1", row.get("count"));
        parts.add(paper.parts(spot, opening[0], opening[1]));
        assertTrue(paper.isBolted(spot), row.toString());
        margin(row, spot, parts.get(parts.size() - 1), rows.size() == 1);
      }
      for (int left = 0; left + 1 < rows.size(); left++) {
        long gap =
            PaperCell.between(
                parts.get(left), parts.get(left + 1), paper.slotsAlong(table.getKey()));
        assertTrue(gap >= paper.setting("spacing") - 2 * HALF, table.getKey() + ": " + gap);
        together++;
      }
      alone += rows.size() == 1 ? 1 : 0;
    }
    assertEquals(kinds == 1 ? 6 : 3, alone);
    assertEquals(kinds == 1 ? 0 : 3, together);
    assertEquals(6, tables().size());
    stock();
  }

  private void margin(CSVRecord row, Spot spot, List<Box> parts, boolean isAlone) {
    long printed = PaperCell.nm(row.get("margin_mm"));
    long withHand = paper.margin(spot.machine(), parts, true);
    long laid = isAlone && withHand >= 0 ? withHand : paper.margin(spot.machine(), parts, false);
    assertTrue(
        printed - laid <= HALF && laid - printed < 1000 + HALF, row + ": laid out " + laid + " nm");
    if (isAlone) {
      assertEquals(printed, Math.floorDiv(laid, 1000) * 1000, row.toString());
    }
  }

  private void stock() {
    Map<String, Integer> used = new HashMap<>();
    plan.forEach(row -> used.merge(row.get("vise"), 1, Integer::sum));
    used.forEach(
        (vise, count) ->
            assertTrue(count <= Integer.parseInt(paper.row("vises", vise).get("quantity")), vise));
  }

  /**
   * A job is held where it says so, and nowhere else: alone a vise may be moved for it, which a
   * comb of places tries; beside another it stands where it stands.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void jobs_laidOutOnPaper_areHeldWhereItSaysSo(int kinds) throws Exception {
    take(kinds);

    Set<String> held = new TreeSet<>();
    long pieces = 0;
    int others = 0;
    for (List<CSVRecord> rows : tables().values()) {
      for (int at = 0; at < rows.size(); at++) {
        CSVRecord row = rows.get(at);
        Set<String> printed = names(row.get("jobs"));
        for (CSVRecord job : paper.rows("jobs")) {
          boolean found = rows.size() == 1 ? isHeldAlone(job, row) : isHeldBeside(job, rows, at);
          assertEquals(printed.contains(job.get("job")), found, row + " " + job.get("job"));
          others += found ? 0 : 1;
        }
        held.addAll(printed);
      }
    }
    for (String job : held) {
      pieces += Long.parseLong(paper.row("jobs", job).get("quantity"));
    }
    assertTrue(others > 10);
    assertTrue(
        text.contains("Held: " + held.size() + " of 7 jobs, " + pieces + " of 43 pieces"), text);
    // What no vise holds on any machine, no plan holds: so no plan holds more.
    CSVRecord post = paper.row("jobs", "tall post");
    assertEquals(41, pieces);
    for (CSVRecord machine : paper.rows("machines")) {
      for (CSVRecord vise : paper.rows("vises")) {
        assertTrue(
            !paper.isOpenTo(
                post, machine.get("machine"), List.of(vise.get("vise")), vise.get("vise")));
      }
    }
  }

  private boolean isHeldBeside(CSVRecord job, List<CSVRecord> rows, int at) {
    List<String> vises = rows.stream().map(row -> row.get("vise")).toList();
    List<List<Box>> parts = new ArrayList<>();
    for (CSVRecord row : rows) {
      long[] opening = paper.opening(row.get("vise"));
      parts.add(paper.parts(spot(row), opening[0], opening[1]));
    }
    return paper.isOpenTo(job, rows.get(at).get("machine"), vises, vises.get(at))
        && paper.holds(
            job, spot(rows.get(at)), parts.subList(0, at), parts.subList(at + 1, parts.size()));
  }

  private boolean isHeldAlone(CSVRecord job, CSVRecord row) {
    String machine = row.get("machine");
    String vise = row.get("vise");
    if (!paper.isOpenTo(job, machine, List.of(vise), vise)) {
      return false;
    }
    if (paper.holds(job, spot(row), List.of(), List.of())) {
      return true;
    }
    for (String mount : paper.mounts(vise)) {
      for (String turn : List.of("front", "right", "rear", "left")) {
        for (long x = -300; x <= 300; x += 10) {
          for (long y = -200; y <= 200; y++) {
            Spot spot = new Spot(machine, vise, turn, mount, x * 1_000_000, y * 1_000_000);
            if (paper.isBolted(spot) && paper.holds(job, spot, List.of(), List.of())) {
              return true;
            }
          }
        }
      }
    }
    return false;
  }

  private static Set<String> names(String jobs) {
    return jobs.isEmpty() ? Set.of() : new HashSet<>(List.of(jobs.split(";")));
  }

  /** What stands there now stays, in its very place; all others are set down anew. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void standing_bothVises_areLeftStanding(int kinds) throws Exception {
    take(kinds);

    int left = 0;
    for (Map.Entry<String, List<CSVRecord>> table : tables().entrySet()) {
      String machine = table.getKey();
      int from = text.indexOf(" " + machine + ": ");
      String line = text.substring(from, text.indexOf("; ", from) + 1);
      List<CSVRecord> standing =
          paper.rows("standing").stream().filter(row -> row.get(0).equals(machine)).toList();
      if (standing.isEmpty()) {
        assertTrue(table.getValue().stream().noneMatch(row -> text.contains(line + " as it is")));
      } else {
        CSVRecord row = table.getValue().get(0);
        assertEquals(standing.get(0).get("vise"), row.get("vise"));
        assertEquals(standing.get(0).get("handle_to"), row.get("handle_to"));
        assertEquals(taped(standing.get(0)), List.of(tape(spot(row))[0], tape(spot(row))[1]));
        assertTrue(text.contains(line + " as it is"), text);
        left++;
      }
    }
    assertEquals(2, left);
    assertEquals(4, text.split("changed, was without any of these vises", -1).length - 1);
  }

  /** Turned round in its place, or 10 to the left of it: the plan is the same, and says so. */
  @Test
  void standing_elsewhere_isNotLeftAsItIs(@TempDir Path other) throws Exception {
    Path tables = GoldenTables.of("paper-cell");
    Path standing = tables.resolve("standing.csv");
    Files.writeString(
        standing,
        Files.readString(standing)
            .replace("six b,front,", "six b,rear,")
            .replace("right,160,", "right,150,"));

    String said = plan(tables, other, 1);

    // Never plain: its card says "fits, with a caveat".
    assertTrue(said.contains("knee: six low, 8.5 mm to spare; base overhangs the table by "), said);

    assertEquals(Files.readString(GOLDEN.resolve("expected-plan-1.csv")), written(other));
    assertTrue(
        said.contains("north: six b, 26.5 mm to spare; same kind, but not as it stands now"), said);
    assertTrue(
        said.contains("cross: eight, 12.5 mm to spare; same kind, but not as it stands now"), said);
  }

  /** The two measures of each setup card are those of its place. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void cards_measures_leadToTheSamePlace(int kinds) throws Exception {
    take(kinds);
    String cards;
    try (PDDocument pdf = Loader.loadPDF(folder.resolve(kinds + "/cards.pdf").toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      cards = stripper.getText(pdf).replaceAll("\\s+", " ");
    }
    for (Map.Entry<String, List<CSVRecord>> table : tables().entrySet()) {
      if (table.getValue().size() == 2) {
        List<List<Box>> parts = new ArrayList<>();
        for (CSVRecord row : table.getValue()) {
          long[] opening = paper.opening(row.get("vise"));
          parts.add(paper.parts(spot(row), opening[0], opening[1]));
        }
        long gap = PaperCell.between(parts.get(0), parts.get(1), 0);
        String set =
            String.join(" + ", table.getValue().stream().map(row -> row.get("vise")).toList());
        String page = cards.substring(cards.indexOf("Set " + set + " on " + table.getKey()));
        String row = page.substring(0, page.indexOf("Setting it up"));
        assertTrue(row.contains(" " + tenth(gap - 50_000) + " "), gap + "\n" + row);
      }
    }
    for (CSVRecord row : plan) {
      long[] tape = tape(spot(row));
      String title = row.get("vise") + " on " + row.get("machine") + " ";
      int from = cards.indexOf("unit stands beside them. " + title);
      assertTrue(from >= 0, title);
      String card = cards.substring(from, cards.indexOf("Hold-down", from));
      for (int slot : paper.slotsOf(spot(row))) {
        assertTrue(
            card.contains(" in slot " + slot + " ") || card.contains(" in slot " + slot + ","),
            card);
      }
      for (long measure : tape) {
        String figure = tenth(measure);
        assertTrue(card.contains(" " + figure + " "), title + figure + "\n" + card);
      }
    }
  }

  private static String tenth(long nm) {
    String text = String.valueOf(Math.floorDiv(nm + 50_000, 100_000) / 10.0);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static List<Long> taped(CSVRecord standing) {
    return List.of(
        PaperCell.nm(standing.get("from_left")), PaperCell.nm(standing.get("from_front")));
  }

  /** From the table's left and front edges: to the jaw's face, crosswise to the base's side. */
  private long[] tape(Spot spot) {
    CSVRecord machine = paper.row("machines", spot.machine());
    long half = PaperCell.nm(paper.row("vises", spot.vise()).get("base_width")) / 2;
    boolean crosswiseX = spot.turn().equals("front") || spot.turn().equals("rear");
    return new long[] {
      PaperCell.nm(machine.get("table_length")) / 2 + spot.x() - (crosswiseX ? half : 0),
      PaperCell.nm(machine.get("table_width")) / 2 + spot.y() - (crosswiseX ? 0 : half)
    };
  }

  private static Spot spot(CSVRecord row) {
    return new Spot(
        row.get("machine"),
        row.get("vise"),
        row.get("handle_to"),
        row.get("mount"),
        PaperCell.nm(row.get("x_mm")),
        PaperCell.nm(row.get("y_mm")));
  }

  private Map<String, List<CSVRecord>> tables() {
    Map<String, List<CSVRecord>> tables = new LinkedHashMap<>();
    plan.forEach(
        row -> tables.computeIfAbsent(row.get("machine"), none -> new ArrayList<>()).add(row));
    return tables;
  }

  @BeforeAll
  static void print() throws IOException {
    Path tables = GoldenTables.of("paper-cell");
    paper = new PaperCell(tables);
    for (int kinds = 1; kinds <= 2; kinds++) {
      SAID.put(kinds, plan(tables, folder.resolve(String.valueOf(kinds)), kinds));
    }
  }

  /** What the command says, on one line. */
  private static String plan(Path tables, Path to, int kinds) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] args = {
      "plan", tables.toString(), "-o", to.toString(), "--cards", "--kinds", String.valueOf(kinds)
    };
    int status = Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    assertEquals(0, status, err.toString());
    return out.toString().replaceAll("\\s+", " ");
  }

  private static String written(Path reports) throws IOException {
    return Files.readString(reports.resolve("plan.csv"));
  }

  private String csv() throws IOException {
    return written(folder.resolve(String.valueOf(kinds)));
  }

  private void take(int kinds) throws IOException {
    this.kinds = kinds;
    text = SAID.get(kinds);
    plan = PaperCell.TABLE.parse(new StringReader(csv())).getRecords();
  }
}
