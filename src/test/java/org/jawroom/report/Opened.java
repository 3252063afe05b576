package org.jawroom.report;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.placement.Outcome;
import org.jawroom.shop.Shop;

/** A workbook written and opened again. */
final class Opened {
  private Opened() {}

  static byte[] bytes(Shop shop, List<Outcome> outcomes, RunFacts facts, SheetLimits limits)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MatrixWorkbook.write(shop, outcomes, facts, limits, out);
    return out.toByteArray();
  }

  static XSSFWorkbook open(Shop shop, List<Outcome> outcomes, PeopleUnit unit) throws IOException {
    return open(shop, outcomes, Invented.facts(unit), SheetLimits.XLSX);
  }

  static XSSFWorkbook open(Shop shop, List<Outcome> outcomes, RunFacts facts, SheetLimits limits)
      throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes(shop, outcomes, facts, limits)));
  }

  static void eachCell(Sheet sheet, Consumer<Cell> seen) {
    for (Row row : sheet) {
      row.forEach(seen);
    }
  }

  /** The column of a list sheet with that heading. */
  static int column(Sheet sheet, String heading) {
    for (Cell cell : sheet.getRow(ListSheet.FIRST_ENTRY - 1)) {
      if (cell.getStringCellValue().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no column " + heading);
  }

  /** A cell of the list sheet's entry of that number. */
  static Cell entry(Sheet sheet, int entry, String heading) {
    return sheet.getRow(ListSheet.FIRST_ENTRY + entry).getCell(column(sheet, heading));
  }
}
