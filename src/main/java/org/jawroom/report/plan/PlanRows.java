package org.jawroom.report.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.rows.PairingRows;
import org.jawroom.report.rows.UnreadablePairings;

/**
 * The assignments in a {@code plan.csv}, read back. Columns are found by name; all but {@code
 * machine} and {@code vise} may be missing, and there may be others.
 *
 * @param rows in the order of the file
 * @param faults one line for each fault; if there is any, the rows must not be used
 */
public record PlanRows(List<Row> rows, List<String> faults) {

  /**
   * A machine with a kind of vise.
   *
   * @param vise empty if the machine has none
   */
  public record Row(String machine, String vise) {}

  public PlanRows {
    rows = List.copyOf(rows);
    faults = List.copyOf(faults);
  }

  /**
   * Reads a whole file: UTF-8 with or without byte order mark, RFC 4180; semicolons or tabs serve
   * as commas do, and so does what the first line declares; rows of blank cells are skipped.
   *
   * @param declaration knows such first lines
   * @param several whether a machine may have several rows, each with another vise
   */
  public static PlanRows read(byte[] file, PairingRows.Declaration declaration, boolean several) {
    try {
      return of(PairingRows.records(file, declaration), several);
    } catch (UnreadablePairings wrong) {
      return new PlanRows(List.of(), List.of(wrong.getMessage()));
    }
  }

  private static PlanRows of(List<CSVRecord> records, boolean several) {
    if (records.isEmpty()) {
      return new PlanRows(List.of(), List.of("it is empty"));
    }
    List<String> faults = new ArrayList<>();
    CSVRecord header = records.get(0);
    int machine = column(header, PlanCsv.MACHINE, faults);
    int vise = column(header, PlanCsv.VISE, faults);
    List<Row> rows = new ArrayList<>();
    Map<String, Map<String, Long>> seen = new HashMap<>();
    for (CSVRecord cells :
        faults.isEmpty() ? records.subList(1, records.size()) : List.<CSVRecord>of()) {
      String where = "row " + cells.getRecordNumber();
      if (cells.size() != header.size()) {
        faults.add(where + " has " + cells.size() + " cells, but the header has " + header.size());
        continue;
      }
      Row row = new Row(cells.get(machine).strip(), cells.get(vise).strip());
      Map<String, Long> there = seen.computeIfAbsent(row.machine(), none -> new LinkedHashMap<>());
      Long before = before(there, row.vise(), several);
      there.putIfAbsent(row.vise(), cells.getRecordNumber());
      if (row.machine().isEmpty()) {
        faults.add(
            where + ", column " + PlanCsv.MACHINE + ": is blank; what belongs here is a name");
      } else if (before != null) {
        faults.add(
            where
                + ", column "
                + PlanCsv.MACHINE
                + ": \""
                + PlainText.forTerminal(row.machine())
                + (several && !row.vise().isEmpty()
                    ? "\" with \"" + PlainText.forTerminal(row.vise())
                    : "")
                + "\" stands in row "
                + before
                + " already"
                + (several || row.vise().isEmpty() || there.containsKey("")
                    ? ""
                    : "; with --kinds above 1 a machine may have several vises"));
      }
      rows.add(row);
    }
    return new PlanRows(rows, faults);
  }

  /**
   * The row that a row with that vise would contradict or repeat; null if there is none.
   *
   * @param there the vises of the rows of the same machine so far, first row first
   */
  private static Long before(Map<String, Long> there, String vise, boolean several) {
    boolean isAlone = !several || vise.isEmpty() || there.containsKey("");
    return isAlone ? there.values().stream().findFirst().orElse(null) : there.get(vise);
  }

  private static int column(CSVRecord header, String name, List<String> faults) {
    int place = header.toList().indexOf(name);
    if (place < 0) {
      faults.add("it has no column " + name);
    } else if (header.toList().lastIndexOf(name) != place) {
      faults.add("it has the column " + name + " twice");
    }
    return place;
  }
}
