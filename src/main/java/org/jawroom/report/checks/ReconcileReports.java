package org.jawroom.report.checks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.checks.Reconciliation;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.ReportMarks;

/** Writes what checks say; the entry point of the package. */
public final class ReconcileReports {

  /** The name of the page of text. */
  public static final String TEXT = "reconciliation.txt";

  private ReconcileReports() {}

  /** Returns the files that {@link #write} writes into {@code directory}. */
  public static Destination destination(Path directory) {
    Map<String, ReportKind> files = new LinkedHashMap<>();
    files.put(ChecksCsv.FILE, ChecksCsv.KIND);
    files.put(SuspectsCsv.FILE, SuspectsCsv.KIND);
    files.put(NarrowedCsv.FILE, NarrowedCsv.KIND);
    files.put(TEXT, ReportMarks.text(ReconcileText.TITLE, ReconcileText.TITLE));
    return new Destination(directory, files);
  }

  /**
   * Writes all files into {@code directory}, which is created if missing, or none.
   *
   * @param text the lines of the page
   * @return the files written
   */
  public static List<Path> write(Path directory, Reconciliation reconciliation, List<String> text)
      throws IOException {
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    files.put(ChecksCsv.FILE, out -> ChecksCsv.write(reconciliation, out));
    files.put(SuspectsCsv.FILE, out -> SuspectsCsv.write(reconciliation, out));
    files.put(NarrowedCsv.FILE, out -> NarrowedCsv.write(reconciliation, out));
    byte[] page = (String.join("\n", text) + "\n").getBytes(StandardCharsets.UTF_8);
    files.put(TEXT, out -> out.write(page));
    return AtomicFiles.publish(destination(directory), files);
  }
}
