package org.jawroom.tables.source.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A merged cell seems to hold for all its rows, but the file holds it for the first alone. */
class MergedCellsTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {"A2:A3", "A2:H2", "A1:B1", "H2:Z9", "A1:XFD1048576", "$H$2:$H$3", "h2:h3"})
  void merge_withinATable_isAFaultThatNamesTheRange(String range) throws Exception {
    int row = range.contains("1:") ? 1 : 2;
    assertEquals(
        List.of(
            "sheet machines row "
                + row
                + ": has merged cells "
                + range
                + ", of which only the first holds a value; unmerge them and fill in each"),
        faults("<mergeCells count='1'><mergeCell ref='" + range + "'/></mergeCells>"));
  }

  /** There is nothing of the table in them, and one cell alone is not merged with any. */
  @ParameterizedTest
  @ValueSource(strings = {"A10:H11", "J1:J2", "A2:A2", "A2", "", "A0:B2", "nonsense:A2"})
  void merge_besideTheTable_isLeftAlone(String range) throws Exception {
    assertEquals(
        List.of(), faults("<mergeCells><mergeCell ref='" + range + "'/><mergeCell/></mergeCells>"));
  }

  @Test
  void merges_ofAnyNumber_areRefused() throws Exception {
    assertEquals(
        List.of("sheet machines: has thousands of merged cells; unmerge them"),
        faults("<mergeCells>" + "<mergeCell ref='J1:J2'/>".repeat(100_000) + "</mergeCells>"));
  }

  private List<String> faults(String merges) throws Exception {
    Path file =
        new HandMadeWorkbook()
            .replace(HandMadeWorkbook.MACHINES, "</sheetData>", "</sheetData>" + merges)
            .in(folder);
    return ShopReader.read(file, Map.of()).faults().stream().map(Fault::toString).toList();
  }
}
