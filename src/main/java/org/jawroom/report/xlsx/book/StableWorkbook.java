package org.jawroom.report.xlsx.book;

import java.io.Closeable;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.publish.NamedOutput;

/** Writes workbooks so that equal sheets give equal bytes. */
public final class StableWorkbook implements Closeable {

  /** The creation time of every workbook, so that equal reports are equal files. */
  private static final Instant EVERY_BOOK = Instant.parse("2000-01-01T00:00:00Z");

  static {
    ScratchForWorkbooks.use();
    // No column is fitted to its text: the library need not find the computer's fonts, and the
    // runnable JAR leaves out the class with which it would.
    System.setProperty("org.apache.poi.ss.ignoreMissingFontSystem", "true");
  }

  private final StableBook book;

  /**
   * Starts an empty workbook.
   *
   * @param rows of each sheet kept in memory; earlier rows are on disk
   */
  public StableWorkbook(String title, int rows) {
    book = new StableBook(rows);
    describe(book.getXSSFWorkbook().getProperties(), title);
  }

  /** Fills a workbook with its sheets. */
  public interface Sheets {
    void addTo(SXSSFWorkbook book) throws IOException;
  }

  /** Fills and writes a workbook in one step; does not close {@code out}. */
  public static void write(String title, Sheets sheets, OutputStream out) throws IOException {
    try (StableWorkbook workbook = new StableWorkbook(title, SXSSFWorkbook.DEFAULT_WINDOW_SIZE)) {
      workbook.fill(sheets);
      workbook.writeTo(out);
    }
  }

  /** Passes the workbook to {@code sheets}. */
  public void fill(Sheets sheets) throws IOException {
    try {
      sheets.addTo(book);
    } catch (RuntimeException wrapped) {
      throw cause(wrapped);
    } catch (IOException failure) {
      throw ofTemporary(failure);
    }
  }

  /** Writes the workbook; may be called once; does not close {@code out}. */
  public void writeTo(OutputStream out) throws IOException {
    try {
      book.write(out);
    } catch (RuntimeException wrapped) {
      throw cause(wrapped);
    } catch (IOException failure) {
      throw ofTemporary(failure);
    }
  }

  /** Deletes the temporary files. */
  @Override
  public void close() throws IOException {
    book.close();
  }

  /**
   * Unwraps an I/O failure: rows go to disk while a sheet is filled, and the library wraps failures
   * there.
   *
   * @throws RuntimeException the same exception if its cause is no I/O failure
   */
  private static IOException cause(RuntimeException wrapped) {
    if (wrapped.getCause() instanceof IOException cause) {
      return ofTemporary(cause);
    }
    throw wrapped;
  }

  /**
   * A failure without a file name, such as a full disk, is attributed to the folder of temporary
   * rows.
   */
  private static IOException ofTemporary(IOException failure) {
    return failure instanceof FileNotFoundException
        ? failure
        : NamedOutput.named(Path.of(System.getProperty("java.io.tmpdir")), failure);
  }

  private static void describe(POIXMLProperties properties, String title) {
    properties.getCoreProperties().setTitle(title);
    properties.getCoreProperties().setCreator("jawroom");
    properties.getCoreProperties().setCreated(Optional.of(Date.from(EVERY_BOOK)));
    properties.getCoreProperties().setModified(Optional.of(Date.from(EVERY_BOOK)));
  }
}
