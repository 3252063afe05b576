package org.jawroom.tables.source.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file that is no XLSX workbook is refused in one line that says what it is and what to do. */
class ForeignFormatTest {
  private static final String SAVE = "; open it in a spreadsheet and save it as .xlsx";

  @TempDir private Path folder;

  @Test
  void workbook_withPassword_isUnreadable() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("secret");
      try (OutputStream out = encryptor.getDataStream(files)) {
        out.write(new HandMadeWorkbook().bytes());
      }
      files.writeFilesystem(bytes);
    }
    assertWhy("it is protected by a password; save it without one", bytes.toByteArray());
  }

  @Test
  void workbook_ofTheOldKind_isUnreadable() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      files.createDocument(new ByteArrayInputStream(new byte[5000]), "Workbook");
      files.writeFilesystem(bytes);
    }
    assertWhy("it is a workbook of the old binary kind (XLS)" + SAVE, bytes.toByteArray());
    // The record that begins a workbook of version 4.
    assertWhy(
        "it is a workbook of the old binary kind (XLS)" + SAVE,
        new byte[] {0x09, 0x04, 0x06, 0x00, 0x00, 0x00, 0x10, 0x00, 0x00, 0x00});
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "<!DOCTYPE html><html><table><tr><td>machine   | it is a web page (HTML), whatever its name says",
        "<html xmlns:x='urn:x'><head>                  | it is a web page (HTML), whatever its name says",
        "<table><tr><td>machine</td></tr></table>      | it is a web page (HTML), whatever its name says",
        "<?xml version='1.0'?><Workbook><Table/>              | it is XML, not XLSX"
      })
  void markup_namedAsAWorkbook_isUnreadable(String text, String why) throws Exception {
    assertWhy(why + SAVE, text.getBytes(StandardCharsets.UTF_8));
    assertWhy(why + SAVE, text.getBytes(StandardCharsets.UTF_16));
    assertWhy(why + SAVE, ("\ufeff" + text).getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void text_namedAsAWorkbook_isUnreadable() throws Exception {
    assertWhy(
        "it is text, as CSV is, and no XLSX workbook; put the tables into a folder as machines.csv,"
            + " vises.csv and so on, and name the folder",
        "machine,table_moves\nfr\u00e4se,xy\n".getBytes(StandardCharsets.UTF_8));
    Path csv = Files.writeString(folder.resolve("machines.csv"), "machine");
    assertEquals(
        csv + " is a single CSV file; name the folder that holds the tables", unreadable(csv));
  }

  @Test
  void bytes_ofNoKnownKind_areUnreadable() throws Exception {
    assertWhy("it is empty", new byte[0]);
    assertWhy("it is no XLSX workbook", new byte[] {1, 2, 3, 0, -1});
    assertWhy("it is no XLSX workbook", "%PDF-1.7\n%\0\1".getBytes(StandardCharsets.US_ASCII));
  }

  @Test
  void openDocument_isUnreadable() throws Exception {
    String type = "application/vnd.oasis.opendocument.spreadsheet";
    assertWhy(
        "it is an OpenDocument workbook (ODS); save it as .xlsx", zipped(Map.of("mimetype", type)));
    assertWhy(
        "it is a zip file without a workbook in it",
        zipped(Map.of("mimetype", "application/vnd.oasis.opendocument.text")));
  }

  @Test
  void binaryWorkbook_isUnreadable() throws Exception {
    assertWhy(
        "it is a binary workbook (XLSB); save it as .xlsx",
        new HandMadeWorkbook().replace("_rels/.rels", "workbook.xml", "workbook.bin").bytes());
  }

  @Test
  void document_inTheSameKindOfFile_isUnreadable() throws Exception {
    assertWhy(
        "it is no workbook, but something else in the same kind of file",
        new HandMadeWorkbook().part(HandMadeWorkbook.BOOK, "<document/>").bytes());
    assertWhy("it is a zip file without a workbook in it", zipped(Map.of("hello.txt", "hello")));
  }

  @Test
  void zip_cutOff_isUnreadable() throws Exception {
    byte[] whole = new HandMadeWorkbook().bytes();
    assertWhy(
        "its zip directory is cut off or damaged; copy it again",
        Arrays.copyOf(whole, whole.length / 2));
  }

  @Test
  void part_damaged_isNamedWithItsCause() throws Exception {
    assertWhy(
        "its part xl/worksheets/sheet2.xml is no sound XML in line 2",
        new HandMadeWorkbook()
            .part(HandMadeWorkbook.VISES, "<worksheet>\n<sheetData><row></sheetData></worksheet>")
            .bytes());
    assertWhy(
        "its part xl/_rels/workbook.xml.rels is no sound XML in line 1",
        new HandMadeWorkbook().part(HandMadeWorkbook.RELATIONS, "gone").bytes());
    byte[] broken = new HandMadeWorkbook().bytes();
    // The packed bytes of the last part stand right before the directory.
    int directory = new String(broken, StandardCharsets.ISO_8859_1).indexOf("PK\1\2");
    for (int i = directory - 60; i < directory - 20; i++) {
      broken[i] = (byte) ~broken[i];
    }
    String why = unreadable(Files.write(folder.resolve("broken.xlsx"), broken));
    assertTrue(why.contains("its part xl/worksheets/sheet2.xml is "), why);
  }

  private void assertWhy(String why, byte[] bytes) throws Exception {
    Path file = Files.write(folder.resolve("shop.xlsx"), bytes);
    assertEquals(file + " could not be read: " + why, unreadable(file));
  }

  private static String unreadable(Path file) {
    return assertThrows(UnreadableInput.class, () -> ShopReader.read(file, Map.of())).getMessage();
  }

  private static byte[] zipped(Map<String, String> parts) throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    return bytes.toByteArray();
  }
}
