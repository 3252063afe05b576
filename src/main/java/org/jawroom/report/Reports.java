package org.jawroom.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.placement.Outcome;
import org.jawroom.shop.Shop;

/** The one entry for writing reports. */
public final class Reports {
  private Reports() {}

  /**
   * Writes {@link PairingsCsv} and {@link MatrixWorkbook} into {@code directory}, which is made if need
   * be. Both appear under their names only when both are complete; if anything fails, what stood there
   * before is left whole.
   *
   * @param outcomes one for each pairing, machines then vises in the order of {@code shop}
   * @return the files written
   * @throws IOException if a file could not be written
   */
  public static List<Path> write(Path directory, Shop shop, List<Outcome> outcomes, RunFacts facts)
      throws IOException {
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    files.put(PairingsCsv.FILE, out -> PairingsCsv.write(outcomes, out));
    files.put(MatrixWorkbook.FILE, out -> MatrixWorkbook.write(shop, outcomes, facts, out));
    return AtomicFiles.publish(directory, files);
  }
}
