package org.jawroom.report.xlsx;

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

/** A workbook that is written so that equal sheets are equal bytes. */
public final class StableWorkbook implements Closeable {

  /** When every workbook says it was made, so that equal reports are equal files. */
  private static final Instant EVERY_BOOK = Instant.parse("2000-01-01T00:00:00Z");

  static {
    ScratchForWorkbooks.use();
  }

  private final StableBook book;

  /**
   * An empty one.
   *
   * @param rows of each sheet that are still in reach; those before them are on disk
   */
  public StableWorkbook(String title, int rows) {
    book = new StableBook(rows);
    describe(book.getXSSFWorkbook().getProperties(), title);
  }

  /** Fills a workbook with its sheets. */
  public interface Sheets {
    void addTo(SXSSFWorkbook book) throws IOException;
  }

  /** Writes one that is made in one go; leaves {@code out} open. */
  public static void write(String title, Sheets sheets, OutputStream out) throws IOException {
    try (StableWorkbook workbook = new StableWorkbook(title, SXSSFWorkbook.DEFAULT_WINDOW_SIZE)) {
      workbook.fill(sheets);
      workbook.writeTo(out);
    }
  }

  /** Lets {@code sheets} have the book. */
  public void fill(Sheets sheets) throws IOException {
    try {
      sheets.addTo(book);
    } catch (RuntimeException wrapped) {
      throw cause(wrapped);
    } catch (IOException failure) {
      throw ofTemporary(failure);
    }
  }

  /** Writes it, once; leaves {@code out} open. */
  public void writeTo(OutputStream out) throws IOException {
    try {
      book.write(out);
    } catch (RuntimeException wrapped) {
      throw cause(wrapped);
    } catch (IOException failure) {
      throw ofTemporary(failure);
    }
  }

  /** Takes away what lies on disk. */
  @Override
  public void close() throws IOException {
    book.close();
  }

  /**
   * Rows go to disk while a sheet is filled, and the library wraps what goes wrong there.
   *
   * @throws RuntimeException as it is, if it wraps nothing of the kind
   */
  private static IOException cause(RuntimeException wrapped) {
    if (wrapped.getCause() instanceof IOException cause) {
      return ofTemporary(cause);
    }
    throw wrapped;
  }

  /** What names no file, as a full disk does not, is of those that hold the rows meanwhile. */
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
