package org.jawroom.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeAll;

/**
 * Workbooks that hold anything: an input is either the file itself (it begins with {@code PK}), or
 * parts put into, or in place of those of, a small sound workbook.
 */
class WorkbookFuzzTest {
  private static FuzzedFolder folder;
  private static Map<String, byte[]> sound;

  @BeforeAll
  static void readSoundWorkbook() throws IOException {
    folder = FuzzedFolder.make();
    try (InputStream parts = WorkbookFuzzTest.class.getResourceAsStream("workbook-parts.txt")) {
      sound = Sections.of(parts.readAllBytes());
    }
  }

  @FuzzTest
  void read_anyWorkbook_givesAShopOrFaults(byte[] input) throws IOException {
    boolean file = new String(input, StandardCharsets.ISO_8859_1).startsWith("PK");
    ReadAnything.read(folder.file("shop.xlsx", file ? input : workbook(input)));
  }

  private static byte[] workbook(byte[] input) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>(sound);
    parts.putAll(Sections.of(input));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        try {
          zip.putNextEntry(new ZipEntry(part.getKey()));
        } catch (ZipException | IllegalArgumentException noName) {
          continue; // A name that no zip file can hold.
        }
        zip.write(part.getValue());
      }
    }
    return bytes.toByteArray();
  }
}
