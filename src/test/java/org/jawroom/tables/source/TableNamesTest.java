package org.jawroom.tables.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.fixture.TestShop;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A table is left out because of its name never in silence: it is refused, or at least named. */
class TableNamesTest {
  private static final String HOW = "; if not, move it away or give it a name unlike a table's";

  @TempDir private Path folder;

  private void soundTables() {
    TestShop.write(
        folder.resolve("machines.csv"),
        "machine,table_moves,table_length,table_width,travel_x,travel_y,slot_count\n"
            + "mill,xy,600,300,400,300,3\n");
    TestShop.write(
        folder.resolve("vises.csv"),
        "vise,jaw_width,jaw_height,bed_height,opening_max\nvise,150,40,60,150\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "guard.csv",
        "Guard.CSV",
        "guards (1).csv",
        "guards-2024.csv",
        "guards.tsv",
        "guards.txt",
        "guards",
        "guards.csv.csv",
        "guards.cvs.csv",
        "gaurds.csv",
        "guars.csv",
        "guardss.csv",
        "guarsd.csv",
        "gu\u0430rds.csv",
        "Copy of guards.csv",
        "guards copy.csv",
        "guards_old.csv",
        "oldguards.csv",
        "guards2.csv",
        "_guards.csv",
        "guard list.csv",
        "guards & doors.csv",
        "gaurds and doors.csv",
        "2024.guards.csv",
        "\uff47\uff55\uff41\uff52\uff44\uff53.csv"
      })
  void file_namedNearlyAsATable_isRefusedWithWhatToDo(String name) throws Exception {
    soundTables();
    TestShop.write(folder.resolve(name), "machine,guard,side,gap\nmill,door,front,1\n");
    String shown = Fault.visible(name);
    assertEquals(
        List.of(shown + ": is it guards? It was not read; if so, rename it to guards.csv" + HOW),
        faults());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"guards.ods", "Guards.xlsx", "guards.numbers", "guards.csv.gz", "guards.cvs"})
  void file_ofATablesNameInAnotherForm_isRefused(String name) throws Exception {
    soundTables();
    TestShop.write(folder.resolve(name), "whatever");
    assertEquals(
        List.of(name + ": is it guards? It was not read; if so, save it as guards.csv" + HOW),
        faults());
  }

  @ParameterizedTest
  @CsvSource({
    "vices.csv, vises",
    "vises_old.csv, vises",
    "machine.csv, machines",
    "vise-part.csv, vise_parts",
    "viseparts.csv, vise_parts",
    "vice parts.csv, vise_parts",
    "mount.csv, mounts",
    "jobs 2.csv, jobs",
    "seting.csv, settings",
    "settings (2).csv, settings",
    "standings.csv, standing",
    "standing now.csv, standing"
  })
  void file_nearlyAnotherTable_isThatOne(String name, String table) throws Exception {
    soundTables();
    TestShop.write(folder.resolve(name), "whatever");
    assertEquals(1, faults().size(), faults().toString());
    assertTrue(
        faults().get(0).startsWith(name + ": is it " + table + "? It was not read; "),
        faults().toString());
  }

  @Test
  void table_besideANearlyNamedOne_isKeptOnlyByChoice() throws Exception {
    soundTables();
    TestShop.write(folder.resolve("vises (1).csv"), "vise\n");
    assertEquals(
        List.of("vises (1).csv: is it vises? It was not read; keep either it or vises.csv" + HOW),
        faults());
  }

  /** A required table under another name is one fault, not also a missing table. */
  @Test
  void table_requiredAndNearlyNamed_isOneFault() throws Exception {
    soundTables();
    Files.move(folder.resolve("machines.csv"), folder.resolve("machine.csv"));
    assertEquals(
        List.of(
            "machine.csv: is it machines? It was not read; if so, rename it to machines.csv" + HOW),
        faults());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "README.txt",
        "notes.csv",
        "prices.csv",
        "counts.csv",
        "amounts.csv",
        "devices.csv",
        "boards.csv",
        "cards.pdf",
        "doors.csv",
        "sheet.csv",
        "vise notes.txt",
        "machine photos.txt",
        "offsets.csv",
        "outstanding.csv",
        "guards.jpg",
        "machines.pdf",
        "page.html",
        "matrix.xlsx",
        "pairings.csv",
        "remedies.csv",
        "unknowns.csv",
        "assess.csv",
        "plan.csv",
        "suspects.csv",
        "narrowed.csv"
      })
  void file_ofAnyOtherName_isLeftAloneAndNamed(String name) throws Exception {
    soundTables();
    TestShop.write(folder.resolve(name), "whatever");
    assertEquals(List.of(), faults());
    assertEquals(List.of(name + ": left alone: none of the tables"), leftAlone(folder));
  }

  /** Programs leave them beside a table; without the table they may be all there is of it. */
  @ParameterizedTest
  @ValueSource(
      strings = {"guards.csv.bak", "guards.csv~", "~$guards.csv", "guards.old", "door guards.csv"})
  void spare_isLeftAloneBesideItsTableOnly(String name) throws Exception {
    soundTables();
    TestShop.write(folder.resolve(name), "whatever");
    assertEquals(1, faults().size());
    assertTrue(faults().get(0).startsWith(name + ": is it guards? "), faults().toString());
    TestShop.write(folder.resolve("guards.csv"), "machine,guard\n");
    assertEquals(List.of(), faults());
    assertEquals(List.of(name + ": left alone: none of the tables"), leftAlone(folder));
  }

  @Test
  void hiddenFiles_areNotNamed() throws Exception {
    soundTables();
    for (String name : List.of(".DS_Store", "._vises.csv", ".~lock.vises.csv#")) {
      TestShop.write(folder.resolve(name), "whatever");
    }
    assertEquals(List.of(), faults());
    assertEquals(List.of(), leftAlone(folder));
  }

  @Test
  void folder_ofATablesName_isRefusedIfItMayHoldTheTable() throws Exception {
    soundTables();
    Path guards = Files.createDirectory(folder.resolve("guards"));
    Files.createDirectory(folder.resolve("photos"));
    assertEquals(List.of(), faults());
    TestShop.write(guards.resolve("guards.csv"), "machine,guard\n");
    assertEquals(
        List.of(
            "folder guards: is it guards? It was not read; if so, move the table out of it" + HOW),
        faults());
    Files.move(guards.resolve("guards.csv"), folder.resolve("guards.csv"));
    assertEquals(List.of(), faults());
    assertEquals(List.of(), leftAlone(folder));
  }

  @Test
  void report_ofJobs_isNoTableOfJobs() throws Exception {
    soundTables();
    TestShop.write(
        folder.resolve("jobs.csv"), "job,machine,vise,verdict,shortfall_reason\na,b,c,held,\n");
    assertEquals(
        List.of("jobs.csv: is the report of jobs, not the table of them; take it away"), faults());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Guards & doors",
        "guard",
        "Guards (2)",
        "guards.csv",
        "gaurds",
        "Copy of Copy of Copy of guards "
      })
  void sheet_namedNearlyAsATable_isRefused(String name) throws Exception {
    Path file = workbook(name);
    assertEquals(
        List.of(
            "sheet " + name + ": is it guards? It was not read; if so, rename it to guards" + HOW),
        faults(file));
  }

  @Test
  void sheet_ofAnotherName_isLeftAloneAndNamed() throws Exception {
    Path file = workbook("legend", "Sheet1", "Vise notes");
    assertEquals(List.of(), faults(file));
    assertEquals(
        List.of(
            "sheet legend: left alone: none of the tables",
            "sheet Sheet1: left alone: none of the tables",
            "sheet Vise notes: left alone: none of the tables"),
        leftAlone(file));
  }

  @Test
  void sheet_withBlanksAroundATablesName_isThatTable() throws Exception {
    Path file = workbook(" Guards ");
    assertEquals(
        List.of("sheet  Guards : is empty; give it a header row, or take it away"), faults(file));
  }

  private Path workbook(String... others) throws IOException {
    Path file = folder.resolve("shop.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      fill(
          workbook.createSheet("machines"),
          "machine table_moves table_length table_width travel_x travel_y slot_count",
          "mill xy 600 300 400 300 3");
      fill(
          workbook.createSheet("vises"),
          "vise jaw_width jaw_height bed_height opening_max",
          "vise 150 40 60 150");
      for (String other : others) {
        workbook.createSheet(other);
      }
      workbook.write(out);
    }
    return file;
  }

  private static void fill(Sheet sheet, String... rows) {
    for (int i = 0; i < rows.length; i++) {
      Row row = sheet.createRow(i);
      String[] cells = rows[i].split(" ");
      for (int j = 0; j < cells.length; j++) {
        row.createCell(j).setCellValue(cells[j]);
      }
    }
  }

  private List<String> faults() throws UnreadableInput {
    return faults(folder);
  }

  private static List<String> faults(Path input) throws UnreadableInput {
    return ShopReader.read(input, Map.of()).faults().stream().map(Fault::toString).toList();
  }

  private static List<String> leftAlone(Path input) throws UnreadableInput {
    return ShopReader.read(input, Map.of()).notes(Note.Kind.LEFT_ALONE).stream()
        .map(Note::toString)
        .toList();
  }
}
