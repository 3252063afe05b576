package org.jawroom.tables.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.util.RecordFormatException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.tables.schema.TableSpec;

/** An XLSX workbook, one sheet a table. */
final class Workbooks {
  private Workbooks() {}

  static Source read(Path file, FaultList faults) throws UnreadableInput {
    byte[] bytes = FileRead.bytes(file);
    refuseOtherFormats(file, bytes);
    Source.Gathering gathering = new Source.Gathering(faults);
    List<String> leftAlone = new ArrayList<>();
    try (XSSFWorkbook workbook = open(file, bytes)) {
      for (Sheet sheet : workbook) {
        Optional<TableSpec> table = TableSpec.named(sheet.getSheetName());
        if (table.isEmpty()) {
          leftAlone.add(sheet.getSheetName());
        } else if (gathering.isFirst(table.get(), "sheet " + sheet.getSheetName())) {
          Optional<Grid> grid = SheetTable.read(table.get(), sheet, faults);
          gathering.add(table.get(), grid, grid.isPresent());
        }
      }
    } catch (IOException
        | POIXMLException
        | RecordFormatException
        | IllegalStateException
        | IllegalArgumentException e) {
      // What the library throws where a cell holds what its type does not allow.
      throw damaged(file, e);
    }
    List<FileRead> files = List.of(FileRead.of(file.getFileName().toString(), bytes));
    return new Source(gathering.grids, gathering.broken, files, leftAlone, true);
  }

  private static XSSFWorkbook open(Path file, byte[] bytes) throws UnreadableInput {
    try {
      return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    } catch (IOException | RuntimeException e) {
      // At damaged or booby-trapped files the library throws anything, null pointers among it.
      throw damaged(file, e);
    }
  }

  private static UnreadableInput damaged(Path file, Exception e) {
    return new UnreadableInput(
        file + " could not be read: it is damaged, or no XLSX workbook", e);
  }

  private static void refuseOtherFormats(Path file, byte[] bytes) throws UnreadableInput {
    FileMagic magic = FileMagic.valueOf(bytes);
    if (magic == FileMagic.OLE2) {
      throw new UnreadableInput(
          file
              + (isEncrypted(bytes)
                  ? " could not be read: it is protected by a password; save it without one"
                  : " could not be read: it is a workbook of the old binary kind; save it as .xlsx"));
    }
    if (magic != FileMagic.OOXML) {
      boolean csv = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".csv");
      throw new UnreadableInput(
          file
              + (csv
                  ? " is a single CSV file; name the folder that holds the tables"
                  : " could not be read: it is no XLSX workbook"));
    }
  }

  private static boolean isEncrypted(byte[] bytes) {
    try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
      return files.getRoot().hasEntryCaseInsensitive("EncryptedPackage");
    } catch (IOException | RuntimeException e) {
      return false; // Too damaged to tell: then the other line is said.
    }
  }
}
