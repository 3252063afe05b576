package org.jawroom.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.advice.Advice;
import org.jawroom.placement.JobOutcome;
import org.jawroom.shop.Shop;

/** The one entry for writing reports. */
public final class Reports {
  private Reports() {}

  /**
   * Writes {@link PairingsCsv}, {@link RemediesCsv}, {@link UnknownsCsv} and {@link MatrixWorkbook}
   * into {@code directory}, which is made if need be; where there are jobs, {@link JobsCsv} too.
   * They appear under their names only when all are complete; if anything fails, what stood there
   * before is left whole.
   *
   * @param advice one for each pairing, machines then vises in the order of {@code shop}
   * @param jobs one for each job on each pairing: jobs, then machines, then vises
   * @param drawings how many pairings the workbook draws at most; 0 for none
   * @return the files written
   * @throws IOException if a file could not be written
   */
  public static List<Path> write(
      Path directory,
      Shop shop,
      List<Advice> advice,
      List<JobOutcome> jobs,
      RunFacts facts,
      int drawings)
      throws IOException {
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    files.put(PairingsCsv.FILE, out -> PairingsCsv.write(advice, out));
    files.put(RemediesCsv.FILE, out -> RemediesCsv.write(advice, out));
    files.put(UnknownsCsv.FILE, out -> UnknownsCsv.write(advice, out));
    if (!jobs.isEmpty()) {
      files.put(JobsCsv.FILE, out -> JobsCsv.write(jobs, out));
    }
    files.put(
        MatrixWorkbook.FILE, out -> MatrixWorkbook.write(shop, advice, jobs, facts, drawings, out));
    return AtomicFiles.publish(directory, files);
  }
}
