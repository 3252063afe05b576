package org.jawroom.report.xlsx;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.xlsx.book.StableWorkbook;

/**
 * Preloads the workbook library's classes while the tables are still being read and solved; loading
 * them takes half the time of a small run. It creates a workbook and discards it, on a daemon
 * thread; result and failures are ignored.
 */
public final class WorkbookAhead {
  private WorkbookAhead() {}

  /** Starts loading and returns at once. */
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
    } catch (IOException | RuntimeException ignored) {
      // The real workbook meets the same failure and reports it.
    }
  }
}
