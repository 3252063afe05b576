package org.jawroom.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Copies a zip file so that nothing in it tells when or where it was made. */
final class StableZip {

  /** Local, as zip entries are; after 1980, so that no time zone comes in. */
  private static final LocalDateTime EVERY_ENTRY = LocalDateTime.of(2000, 1, 1, 0, 0);

  private StableZip() {}

  /** Copies the entries in their order; leaves {@code out} open. */
  static void copy(Path zip, OutputStream out) throws IOException {
    try (ZipFile source = new ZipFile(zip.toFile())) {
      ZipOutputStream target = new ZipOutputStream(out);
      for (ZipEntry entry : Collections.list(source.entries())) {
        ZipEntry plain = new ZipEntry(entry.getName());
        plain.setTimeLocal(EVERY_ENTRY);
        target.putNextEntry(plain);
        try (InputStream content = source.getInputStream(entry)) {
          content.transferTo(target);
        }
        target.closeEntry();
      }
      target.finish();
    }
  }
}
