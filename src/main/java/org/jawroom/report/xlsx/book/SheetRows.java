package org.jawroom.report.xlsx.book;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import org.apache.poi.xssf.streaming.SheetDataWriter;

/** The rows of a sheet that are no longer kept as objects. */
final class SheetRows extends SheetDataWriter {

  /** Bytes in memory; a workbook has about a dozen sheets. */
  private static final int HELD = 1 << 18;

  private final WaitingBytes bytes;

  private SheetRows(WaitingBytes bytes) throws IOException {
    super(new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8)));
    this.bytes = bytes;
  }

  static SheetRows empty() throws IOException {
    return new SheetRows(new WaitingBytes(HELD));
  }

  @Override
  public InputStream getWorksheetXMLInputStream() throws IOException {
    return bytes.read();
  }

  /** Removes the temporary file, if there is one. */
  void remove() throws IOException {
    bytes.remove();
  }
}
