package org.jawroom.report.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.report.compare.PairingRows;
import org.jawroom.report.compare.UnreadablePairings;
import org.jawroom.report.format.PlainText;

/**
 * The assignments in a {@code plan.csv}, read back. Columns are found by name; all but {@code
 * machine} and {@code vise} may be missing, and there may be others.
 *
 * @param rows in the order of the file
 * @param faults one line for each fault; if there is any, the rows must not be used
 */
public record PlanRows(List<Row> rows, List<String> faults) {

  /**
   * One machine.
   *
   * @param vise empty if the machine has none
   */
  public record Row(String machine, String vise) {}

  public PlanRows {
    rows = List.copyOf(rows);
    faults = List.copyOf(faults);
  }

  /** Reads a whole file: UTF-8 with or without byte order mark, commas, RFC 4180. */
  public static PlanRows read(byte[] file) {
    try {
      return of(PairingRows.records(file));
    } catch (UnreadablePairings wrong) {
      return new PlanRows(List.of(), List.of(wrong.getMessage()));
    }
  }

  private static PlanRows of(List<CSVRecord> records) {
    if (records.isEmpty()) {
      return new PlanRows(List.of(), List.of("it is empty"));
    }
    List<String> faults = new ArrayList<>();
    CSVRecord header = records.get(0);
    int machine = column(header, PlanCsv.MACHINE, faults);
    int vise = column(header, PlanCsv.VISE, faults);
    List<Row> rows = new ArrayList<>();
    Map<String, Long> seen = new HashMap<>();
    for (CSVRecord cells :
        faults.isEmpty() ? records.subList(1, records.size()) : List.<CSVRecord>of()) {
      if (cells.size() == 1 && cells.get(0).isEmpty()) {
        continue;
      }
      String where = "row " + cells.getRecordNumber();
      if (cells.size() != header.size()) {
        faults.add(where + " has " + cells.size() + " cells, but the header has " + header.size());
        continue;
      }
      Row row = new Row(cells.get(machine).strip(), cells.get(vise).strip());
      Long before = seen.putIfAbsent(row.machine(), cells.getRecordNumber());
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
                + "\" stands in row "
                + before
                + " already");
      }
      rows.add(row);
    }
    return new PlanRows(rows, faults);
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
