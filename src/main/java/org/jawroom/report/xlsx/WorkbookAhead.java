package org.jawroom.report.xlsx;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;

/**
 * Loads what writing a workbook takes while the tables are still being read and solved: half the
 * time of a small shop goes into loading it. It makes a workbook that goes nowhere, on a thread
 * that keeps nobody waiting; what it makes is told to nobody, nor what goes wrong.
 */
public final class WorkbookAhead {
  private WorkbookAhead() {}

  /** Begins, and returns at once. */
  public static void load() {
    Thread thread = new Thread(WorkbookAhead::make, "workbook ahead");
    thread.setDaemon(true);
    thread.start();
  }

  private static void make() {
    try {
      StableWorkbook.write(
          "",
          book -> {
            Styles styles = new Styles(book.getXSSFWorkbook(), PeopleUnit.MM);
            ListSheet list =
                new ListSheet(book, styles, "1", List.of(new ListSheet.Heading("", 9)), 1);
            list.head("a", "b");
            list.entry();
            list.length(OptionalLong.of(1), Rounding.DOWN);
            list.entry();
            list.text("a");
            list.finish();
            CautionsSheet.add(book, styles);
          },
          OutputStream.nullOutputStream());
    } catch (IOException | RuntimeException told) {
      // The workbook that counts will meet it too, and say so.
    }
  }
}
