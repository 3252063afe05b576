package org.jawroom.tables.template;

import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.SettingColumns;
import org.jawroom.tables.schema.TableSpec;

/** Drop-down lists below the headings of columns with words. */
final class TemplateChoices {
  private TemplateChoices() {}

  static void add(XSSFSheet sheet, TableSpec table, ColumnSpec column, int at) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    switch (column.kind()) {
      case WORD -> add(sheet, at, explicit(helper, column.words()), true);
      case UNIT -> add(sheet, at, explicit(helper, List.of("mm", "cm", "m", "in")), true);
      case AXES -> add(sheet, at, explicit(helper, List.of("xy", "xyz", "x", "y", "none")), false);
      case CARRIER ->
          add(sheet, at, explicit(helper, List.of("frame", "saddle", "head", "table")), false);
      case TURNS ->
          add(
              sheet,
              at,
              explicit(helper, List.of("front", "front rear", "left right", "front left right")),
              false);
      case NAME -> owner(table, column, at, sheet, helper);
      default -> {}
    }
  }

  /** A reference to a name in another table, or the name of a setting. */
  private static void owner(
      TableSpec table, ColumnSpec column, int at, XSSFSheet sheet, DataValidationHelper helper) {
    if (table == TableSpec.SETTINGS) {
      List<String> names = SettingColumns.SETTINGS.stream().map(ColumnSpec::name).toList();
      add(sheet, at, explicit(helper, names), true);
      return;
    }
    for (TableSpec other : List.of(TableSpec.MACHINES, TableSpec.VISES)) {
      boolean names = other.columns().get(0).name().equals(column.name());
      if (names && other != table) {
        String cells = other.tableName() + "!$A$2:$A$" + (TemplateSheet.ROWS + 1);
        add(sheet, at, helper.createFormulaListConstraint(cells), false);
      }
    }
  }

  private static DataValidationConstraint explicit(
      DataValidationHelper helper, List<String> words) {
    return helper.createExplicitListConstraint(words.toArray(String[]::new));
  }

  /**
   * @param only whether other entries are refused; else the words are suggestions
   */
  private static void add(
      XSSFSheet sheet, int at, DataValidationConstraint constraint, boolean only) {
    DataValidation validation =
        sheet
            .getDataValidationHelper()
            .createValidation(constraint, new CellRangeAddressList(1, TemplateSheet.ROWS, at, at));
    validation.setEmptyCellAllowed(true);
    // For this file format the flag means "show it", whatever its name says.
    validation.setSuppressDropDownArrow(true);
    validation.setShowErrorBox(only);
    validation.setErrorStyle(DataValidation.ErrorStyle.STOP);
    validation.createErrorBox(
        "Not one of the words", "Pick one of the list, or leave the cell blank.");
    sheet.addValidationData(validation);
  }
}
