package org.jawroom.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a workbook so that equal sheets are equal bytes. */
final class StableWorkbook {

  /** When every workbook says it was made, so that equal reports are equal files. */
  private static final Instant EVERY_BOOK = Instant.parse("2000-01-01T00:00:00Z");

  private StableWorkbook() {}

  /** Fills a workbook with its sheets. */
  interface Sheets {
    void addTo(SXSSFWorkbook book) throws IOException;
  }

  /** Leaves {@code out} open. */
  static void write(String title, Sheets sheets, OutputStream out) throws IOException {
    Path rough = Files.createTempFile("jawroom", ".xlsx");
    try {
      try (SXSSFWorkbook book = new SXSSFWorkbook(new XSSFWorkbook());
          OutputStream first = Files.newOutputStream(rough)) {
        describe(book.getXSSFWorkbook().getProperties(), title);
        sheets.addTo(book);
        book.write(first);
      }
      StableZip.copy(rough, out);
    } catch (RuntimeException wrapped) {
      // Rows go to disk while a sheet is filled, and the library wraps what goes wrong there.
      if (wrapped.getCause() instanceof IOException cause) {
        throw cause;
      }
      throw wrapped;
    } finally {
      Files.deleteIfExists(rough);
    }
  }

  private static void describe(POIXMLProperties properties, String title) {
    properties.getCoreProperties().setTitle(title);
    properties.getCoreProperties().setCreator("jawroom");
    properties.getCoreProperties().setCreated(Optional.of(Date.from(EVERY_BOOK)));
    properties.getCoreProperties().setModified(Optional.of(Date.from(EVERY_BOOK)));
  }
}
