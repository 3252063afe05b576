package org.jawroom.tables.template;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Sets the same dates in every workbook, so that the same tables give the same bytes. */
final class FixedDates {
  private static final LocalDateTime DATE = LocalDateTime.of(2026, 1, 1, 0, 0);

  private FixedDates() {}

  /** Sets the workbook's properties. */
  static void set(XSSFWorkbook workbook) {
    POIXMLProperties.CoreProperties properties = workbook.getProperties().getCoreProperties();
    properties.setCreator("jawroom");
    properties.setTitle("Mills and vises to fill in");
    properties.setCreated(Optional.of(Date.from(DATE.toInstant(ZoneOffset.UTC))));
  }

  /** Returns the same archive with a fixed date for every entry. */
  static byte[] inZip(byte[] archive) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        ZipEntry dated = new ZipEntry(entry.getName());
        dated.setTimeLocal(DATE);
        out.putNextEntry(dated);
        in.transferTo(out);
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
