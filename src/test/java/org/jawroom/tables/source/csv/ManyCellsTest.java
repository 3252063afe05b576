package org.jawroom.tables.source.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jawroom.launch.ToolRun;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.Source;
import org.jawroom.tables.source.grid.Cell;
import org.jawroom.tables.source.grid.CellBudget;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.FaultList;
import org.jawroom.tables.source.grid.Grid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables of more than a million cells: read as far as memory goes, and a line beyond that. */
class ManyCellsTest {
  private static final int WIDTH = 40;
  private static final int ROWS = 30_000;
  private static final long PLENTY = 2_000_000_000;

  @TempDir private Path folder;

  /** A cell of eight letters takes 416 bytes: the least budget is a million of them. */
  @Test
  void take_belowAtAndAboveTheBudget() {
    Cell cell = Cell.text("12345678");
    CellBudget least = new CellBudget(CellBudget.UNKNOWN_HEAP);
    for (int i = 1; i <= 1_000_000; i++) {
      assertTrue(least.take(cell), "cell " + i);
    }
    assertFalse(least.take(cell));
    assertFalse(least.take(Cell.text("")), "once exhausted, always exhausted");
  }

  /** Three quarters of this memory are a million cells and a half. */
  @Test
  void take_ofMoreMemory_takesMoreCells() {
    CellBudget room = new CellBudget(832_000_000);
    int taken = 0;
    while (room.take(Cell.text("12345678"))) {
      taken++;
    }
    assertEquals(1_500_000, taken);
    assertEquals(
        "does not fit into memory: 1500000 cells are held, which take about 624 MB when read; Java"
            + " has 832 MB; give it more, as java -Xmx2g -jar jawroom.jar, or cut the tables into"
            + " parts, each with some of the machines",
        room.full());
  }

  @Test
  void table_ofMoreThanAMillionCells_isReadWithEnoughMemory() throws Exception {
    write();
    FaultList faults = new FaultList();
    Source source = Source.read(folder, faults, new CellBudget(PLENTY));
    assertEquals(List.of(), faults.sorted());
    Grid grid = source.grid(TableSpec.MACHINES).orElseThrow();
    assertEquals(ROWS, grid.rows().size());
    assertEquals(1_200_000, grid.rows().stream().mapToInt(row -> row.cells().size()).sum());
  }

  /** The header and 25 812 rows of 40 cells, 402 or 403 bytes each with their texts. */
  @Test
  void table_ofMoreThanAMillionCells_stopsAtARowWithLessMemory() throws Exception {
    write();
    FaultList faults = new FaultList();
    Source source = Source.read(folder, faults, new CellBudget(300_000_000));
    assertTrue(source.broken().contains(TableSpec.MACHINES));
    List<Fault> all = faults.sorted();
    assertEquals(1, all.size(), all.toString());
    assertEquals(Optional.empty(), all.get(0).column());
    int read = source.grid(TableSpec.MACHINES).orElseThrow().rows().size();
    assertEquals(read + 2, all.get(0).row().orElseThrow());
    assertTrue(
        all.get(0)
            .toString()
            .matches(
                "machines\\.csv row 25[0-9]{3}: does not fit into memory: 10[0-9]{5} cells are held,"
                    + " which take about 416 MB when read; Java has 300 MB; give it more, as java"
                    + " -Xmx2g -jar jawroom\\.jar, or cut the tables into parts, each with some of"
                    + " the machines"),
        all.toString());
  }

  /** Less memory than a million cells take ends in the same words, not in a stack trace. */
  @Test
  void run_thatIsOutOfMemoryWhileReading_saysWhatWasHeld() throws Exception {
    write();
    ToolRun run = ToolRun.of(64, "check", folder.toString());
    assertEquals(3, run.status(), run.toString());
    assertEquals("", run.out());
    assertTrue(
        run.err()
            .strip()
            .matches(
                "\\Q"
                    + folder
                    + "\\E does not fit into memory: [1-9][0-9]+ cells are held, which take about"
                    + " [0-9]+ MB when read; Java has [0-9]+ MB; give it more, as java -Xmx2g -jar"
                    + " jawroom\\.jar, or cut the tables into parts, each with some of the machines"),
        run.toString());
  }

  private void write() throws IOException {
    StringBuilder text = new StringBuilder("machine");
    for (int i = 1; i < WIDTH; i++) {
      text.append(",c").append(i);
    }
    text.append('\n');
    text.append(("m" + ",7".repeat(WIDTH - 1) + '\n').repeat(ROWS));
    Files.writeString(folder.resolve("machines.csv"), text);
  }
}
