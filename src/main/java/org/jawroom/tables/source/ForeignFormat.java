package org.jawroom.tables.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Identifies the format of a file that is not an XLSX workbook, and says what to do. */
final class ForeignFormat {
  private ForeignFormat() {}

  private static final int START = 4096;

  private static final String SAVE = "; open it in a spreadsheet and save it as .xlsx";

  private static final String CSV =
      "; put the tables into a folder as machines.csv, vises.csv and so on, and name the folder";

  /** Whether a file may be a workbook. */
  static boolean isZip(byte[] bytes) {
    return FileMagic.valueOf(bytes) == FileMagic.OOXML;
  }

  /** For a file that is not a zip file. */
  static String what(byte[] bytes) {
    if (bytes.length == 0) {
      return "it is empty";
    }
    return switch (FileMagic.valueOf(bytes)) {
      case OLE2 ->
          isEncrypted(bytes)
              ? "it is protected by a password; save it without one"
              : "it is a workbook of the old binary kind (XLS)" + SAVE;
      case BIFF2, BIFF3, BIFF4 -> "it is a workbook of the old binary kind (XLS)" + SAVE;
      default -> whatText(bytes);
    };
  }

  private static String whatText(byte[] bytes) {
    // One character per byte: enough to recognise markup, even in UTF-16.
    String start =
        new String(bytes, 0, Math.min(START, bytes.length), StandardCharsets.ISO_8859_1)
            .replace("\0", "")
            .toLowerCase(Locale.ROOT);
    boolean xml = start.contains("<?xml");
    if (start.contains("<html")
        || start.contains("<!doctype html")
        || !xml && start.contains("<table")) {
      return "it is a web page (HTML), whatever its name says" + SAVE;
    }
    if (xml) {
      return "it is XML, not XLSX" + SAVE;
    }
    return isText(start)
        ? "it is text, as CSV is, and no XLSX workbook" + CSV
        : "it is no XLSX workbook";
  }

  private static boolean isText(String start) {
    return start.chars().noneMatch(letter -> letter < ' ' && "\t\n\r\f".indexOf(letter) < 0);
  }

  private static boolean isEncrypted(byte[] bytes) {
    try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
      return files.getRoot().hasEntryCaseInsensitive("EncryptedPackage");
    } catch (IOException | RuntimeException e) {
      return false; // Too damaged to recognise: the general message applies.
    }
  }
}
