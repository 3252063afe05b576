package org.jawroom.report.xlsx.book;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.streaming.SheetDataWriter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook whose file contains no time of creation. */
final class StableBook extends SXSSFWorkbook {

  /** Local time, as zip entries have; after 1980, so that no time zone enters. */
  private static final LocalDateTime EVERY_ENTRY = LocalDateTime.of(2000, 1, 1, 0, 0);

  private final List<SheetRows> rows = new ArrayList<>();

  /** Keeps {@code rows} of each sheet as objects. */
  StableBook(int rows) {
    super(new XSSFWorkbook(), rows);
  }

  @Override
  protected SheetDataWriter createSheetDataWriter() throws IOException {
    SheetRows ofSheet = SheetRows.empty();
    rows.add(ofSheet);
    return ofSheet;
  }

  @Override
  public void close() throws IOException {
    try {
      super.close();
    } finally {
      for (SheetRows ofSheet : rows) {
        ofSheet.remove();
      }
    }
  }

  @Override
  protected ZipArchiveOutputStream createArchiveOutputStream(OutputStream out) {
    ZipArchiveOutputStream zip =
        new ZipArchiveOutputStream(out) {
          @Override
          public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
            entry.setTime(EVERY_ENTRY.atZone(ZoneId.systemDefault()).toInstant().toEpochMilli());
            super.putArchiveEntry(entry);
          }
        };
    // A sheet has too few cells to fill 4 GB.
    zip.setUseZip64(Zip64Mode.Never);
    return zip;
  }
}
