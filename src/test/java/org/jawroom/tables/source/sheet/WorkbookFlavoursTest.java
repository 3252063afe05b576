package org.jawroom.tables.source.sheet;

import static org.jawroom.tables.source.sheet.HandMadeWorkbook.BOOK;
import static org.jawroom.tables.source.sheet.HandMadeWorkbook.MACHINES;
import static org.jawroom.tables.source.sheet.HandMadeWorkbook.MAIN;
import static org.jawroom.tables.source.sheet.HandMadeWorkbook.OFFICE;
import static org.jawroom.tables.source.sheet.HandMadeWorkbook.RELATIONS;
import static org.jawroom.tables.source.sheet.HandMadeWorkbook.VISES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.source.WorkbookEdit;
import org.jawroom.tables.source.grid.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sound workbooks as different programs write them are read; see ECMA-376 and ISO/IEC 29500. */
class WorkbookFlavoursTest {
  private static final String AGAIN = "; type it again";
  private static final String GAP = "<c><v>12.5</v></c>";

  @TempDir private Path folder;
  private final HandMadeWorkbook workbook = new HandMadeWorkbook();

  /** Neither styles nor shared texts, types or places of cells: none of them must be there. */
  @Test
  void workbook_ofNoMoreThanItMust_isRead() throws Exception {
    assertRead();
    workbook.without("[Content_Types].xml");
    assertRead();
  }

  /** ISO/IEC 29500-1, annex A: the strict form has names of its own for everything. */
  @Test
  void workbook_ofTheStrictForm_isRead() throws Exception {
    makeStrict();
    assertRead();
  }

  /** The library that writes the copies of {@code fill} does not know the strict form. */
  @Test
  void workbook_ofTheStrictForm_isNotFilledButRefused() throws Exception {
    makeStrict();
    byte[] bytes = workbook.bytes();
    IOException refused = assertThrows(IOException.class, () -> WorkbookEdit.of(bytes).close());
    assertEquals(
        "it is written in an unusual way; save it as XLSX once more", refused.getMessage());
  }

  private void makeStrict() {
    String strict = "http://purl.oclc.org/ooxml/";
    for (String part : List.of(BOOK, MACHINES, VISES)) {
      workbook.replace(part, MAIN, strict + "spreadsheetml/main");
    }
    workbook.replace(BOOK, OFFICE, strict + "officeDocument/relationships");
    workbook.replace(RELATIONS, OFFICE, strict + "officeDocument/relationships");
    workbook.replace("_rels/.rels", OFFICE, strict + "officeDocument/relationships");
  }

  @Test
  void elements_withAPrefix_areRead() throws Exception {
    for (String part : List.of(BOOK, MACHINES, VISES)) {
      String text = workbook.text(part);
      workbook.part(
          part, text.replace("<", "<x:").replace("<x:/", "</x:").replace("xmlns='", "xmlns:x='"));
    }
    assertRead();
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "ISO-8859-1"})
  void parts_inOtherEncodings_areRead(String charset) throws Exception {
    for (String part : List.of(BOOK, RELATIONS, MACHINES, VISES)) {
      String head = "<?xml version='1.0' encoding='" + charset + "'?>";
      workbook.part(part, head + workbook.text(part), Charset.forName(charset));
    }
    assertRead();
  }

  @ParameterizedTest
  @ValueSource(strings = {"/xl/", "./", "../xl/", "../xl/./../xl/", "..\\xl\\", "/XL/"})
  void targets_fromTheRootOrTheFolder_areFound(String before) throws Exception {
    workbook.replace(RELATIONS, "Target='", "Target='" + before);
    assertRead();
  }

  @Test
  void parts_underOtherNames_areFound() throws Exception {
    HandMadeWorkbook moved = new HandMadeWorkbook();
    moved.part("book/main.xml", workbook.text(BOOK)).without(BOOK);
    moved.part("book/_rels/main.xml.rels", workbook.text(RELATIONS)).without(RELATIONS);
    moved.part("book/Worksheets/Sheet1.XML", workbook.text(MACHINES)).without(MACHINES);
    moved.part("book\\worksheets\\sheet2.xml", workbook.text(VISES)).without(VISES);
    moved.replace("_rels/.rels", BOOK, "/book/main.xml");
    assertRead(moved);
  }

  @Test
  void sharedTexts_underAnotherName_areRead() throws Exception {
    workbook.relation("sharedStrings", "texts/all.xml");
    workbook.part(
        "xl/texts/all.xml",
        "<sst xmlns='" + MAIN + "'><si><r><t>12</t></r><r><t>.5 mm</t></r></si></sst>");
    workbook.replace(MACHINES, GAP, "<c t='s'><v>0</v></c>");
    assertRead();
  }

  /** The rest of the file is sound, so only that cell is at fault. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "s|1|points to a text that the workbook does not hold",
        "s|-1|points to a text that the workbook does not hold",
        "s|x|points to a text that the workbook does not hold",
        "n|x|\"x\" is no number, as its type says",
        "n|NaN|\"NaN\" is no number, as its type says",
        "n|INF|\"INF\" is no number, as its type says",
        "n|1e999|\"1e999\" is no number, as its type says",
        "n|0x1p3|\"0x1p3\" is no number, as its type says",
        "n|1d|\"1d\" is no number, as its type says",
        "b|2|\"2\" is neither true nor false, as its type says",
        "q|1|\"1\" is of a type that no workbook has"
      })
  void cell_thatCannotBe_isOneFault(String type, String value, String why) throws Exception {
    workbook.replace(MACHINES, GAP, "<c t='" + type + "'><v>" + value + "</v></c>");
    assertEquals(List.of("sheet machines row 2, column rear_gap: " + why + AGAIN), faults());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<c s='99'><v>12.5</v></c>",
        "<c s='x'><v>12.5</v></c>",
        "<c t='n'><v> 12.5 </v></c>",
        "<c r='H2'><v>1.25E1</v></c>",
        "<c r='$H$2'><v>+12.5</v></c>",
        "<c t='str'><f>1&amp;2</f><v>12.5</v></c>",
        "<c><f>25/2</f><v>12.5</v></c>",
        "<c t='inlineStr'><is><r><t>12</t></r><r><t>.5</t></r><rPh sb='0' eb='1'><t>9</t></rPh></is></c>",
        "<c t='inlineStr'><is><t>12.5</t></is></c>"
      })
  void cell_writtenInAnyWay_isRead(String cell) throws Exception {
    workbook.replace(MACHINES, GAP, cell);
    assertRead();
  }

  /** A formula that nothing has computed yet: programs leave that to the spreadsheet. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<c><f>25/2</f></c>",
        "<c><f>25/2</f><v></v></c>",
        "<c><f>25/2</f><v/></c>",
        "<c t='str'><f>25/2</f></c>",
        "<c t='s'><f>25/2</f></c>"
      })
  void formula_neverComputed_isRefused(String cell) throws Exception {
    workbook.replace(MACHINES, GAP, cell);
    assertEquals(
        List.of(
            "sheet machines row 2, column rear_gap: is a formula whose value was never computed; open the"
                + " workbook and save it, or type the value"),
        faults());
  }

  @Test
  void truthValues_asWords_areTakenToo() throws Exception {
    workbook.replace(
        VISES,
        "<t>opening_max</t></is></c>",
        "<t>opening_max</t></is></c>" + HandMadeWorkbook.texts("strap_flange"));
    String sound = workbook.text(VISES);
    for (String value : List.of("0", "false")) {
      workbook.part(
          VISES,
          sound.replace(
              "<v>150.0</v></c></row>", "<v>150.0</v></c><c t='b'><v>" + value + "</v></c></row>"));
      assertEquals(false, read(workbook).shop().orElseThrow().vises().get(0).strapFlange(), value);
    }
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "<c r='H3'><v>1</v></c>|has a cell that says it stands at H3",
        "<c r='XFE2'><v>1</v></c>|has a cell that says it stands at XFE2",
        "<c r='nowhere'><v>1</v></c>|has a cell that says it stands at nowhere",
        "<c r='G2'><v>1</v></c>|has two cells in one place, one of them \"1\""
      })
  void cell_inNoPlaceOfItsOwn_isAFaultOfItsRow(String cell, String why) throws Exception {
    workbook.replace(MACHINES, GAP, cell);
    assertEquals(List.of("sheet machines row 2: " + why), faults());
  }

  @Test
  void rows_thereTwiceOrNowhere_areFaults() throws Exception {
    String row = "<row r='2'>" + HandMadeWorkbook.texts("other") + "</row>";
    workbook.replace(MACHINES, "</sheetData>", row + "</sheetData>");
    assertEquals(List.of("sheet machines row 2: is there twice"), faults());
    workbook.replace(MACHINES, row, "<row r='0'/>");
    assertEquals(
        List.of("sheet machines row 3: follows one whose number is none of a sheet: 0"), faults());
  }

  /** A row without a number stands where its cells say. */
  @Test
  void row_placedByItsCells_isRead() throws Exception {
    String text = workbook.text(MACHINES);
    workbook.part(
        MACHINES, text.replaceFirst("<row><c>?", "<row><c r='A5'").replace(GAP, "<c><v>x</v></c>"));
    workbook.replace(
        MACHINES,
        "<row><c t='inlineStr'><is><t>mill<",
        "<row><c r='A9' t='inlineStr'><is><t>mill<");
    assertEquals(
        List.of(
            "sheet machines row 9, column rear_gap: \"x\" is no number, as its type says" + AGAIN),
        faults());
  }

  @Test
  void elements_outsideTheRows_areNoCells() throws Exception {
    workbook.replace(
        MACHINES,
        "</sheetData>",
        "</sheetData><extLst><ext><row r='3'><c r='A3'><v>7</v></c></row></ext></extLst>");
    assertRead();
  }

  @Test
  void styles_ofManyMegabytes_areRead() throws Exception {
    workbook.relation("styles", "styles.xml");
    String xf = "<xf numFmtId='0' fontId='0' fillId='0' borderId='0' xfId='0'><alignment/></xf>";
    workbook.part(
        "xl/styles.xml",
        "<styleSheet xmlns='"
            + MAIN
            + "'><cellXfs>"
            + xf.repeat(200_000)
            + "</cellXfs></styleSheet>");
    assertRead();
  }

  /** The number format of a style counts, not that of a conditional format of the same number. */
  @Test
  void styles_baseAndConditional_areDistinguished() throws Exception {
    workbook.relation("styles", "styles.xml");
    String inches = "<numFmt numFmtId='170' formatCode='0.0&quot; in&quot;'/>";
    String dxf = "<dxfs><dxf><numFmt numFmtId='171' formatCode='0%'/></dxf></dxfs>";
    workbook.part(
        "xl/styles.xml",
        "<styleSheet xmlns='"
            + MAIN
            + "'><numFmts>"
            + inches
            + "<numFmt numFmtId='171' formatCode='0.0'/></numFmts>"
            + "<cellStyleXfs><xf numFmtId='0'/><xf numFmtId='170'/></cellStyleXfs>"
            + "<cellXfs><xf/><xf xfId='1'/><xf numFmtId='171' xfId='1'/></cellXfs>"
            + dxf
            + "</styleSheet>");
    workbook.replace(MACHINES, GAP, "<c s='2'><v>12.5</v></c>");
    assertRead();
    workbook.replace(MACHINES, "<c s='2'>", "<c s='1'>");
    assertEquals(1, faults().size());
    assertEquals(true, faults().get(0).contains("\"12.5\" shows in by its number format"));
  }

  @ParameterizedTest
  @CsvSource({"0, 2008-02-08", "1, 2012-02-09", "true, 2012-02-09"})
  void dates_countFrom1900Or1904(String from1904, String date) throws Exception {
    // 39486 is 8 February 2008 counted from 1900; see ECMA-376 part 1, 18.17.4.1.
    workbook.relation("styles", "styles.xml");
    workbook.replace(BOOK, "<sheets>", "<workbookPr date1904='" + from1904 + "'/><sheets>");
    workbook.part(
        "xl/styles.xml",
        "<styleSheet xmlns='"
            + MAIN
            + "'><cellXfs><xf/><xf numFmtId='14'/></cellXfs></styleSheet>");
    workbook.replace(MACHINES, GAP, "<c s='1'><v>39486</v></c>");
    assertEquals(1, faults().size());
    assertEquals(true, faults().get(0).contains('"' + date + "\" is a date"), faults().get(0));
  }

  @Test
  void sheet_thatPointsNowhere_isAFaultIfItIsATable() throws Exception {
    workbook.sheet("guards", "worksheets/sheet9.xml").sheet("notes", "worksheets/sheet8.xml");
    assertEquals(
        List.of("sheet guards: is named in the workbook, but not in the file; save it again"),
        faults());
    assertEquals(List.of("sheet notes: left alone: none of the tables"), leftAlone());
  }

  @ParameterizedTest
  @ValueSource(strings = {"chartsheet", "dialogsheet", "xlMacrosheet"})
  void sheet_ofAnotherType_isNoTable(String type) throws Exception {
    workbook.sheet("Guards of all mills", "", type, "other/sheet1.xml");
    workbook.part("xl/other/sheet1.xml", "<chartsheet/>");
    assertEquals(List.of(), faults());
    assertEquals(List.of("sheet Guards of all mills: left alone: none of the tables"), leftAlone());
    workbook.sheet("guards", "", type, "other/sheet1.xml");
    assertEquals(
        List.of("sheet guards: is a chart or the like, no table; give it another name"), faults());
  }

  /** Nobody sees them, so nobody finds them by their name alone. */
  @ParameterizedTest
  @ValueSource(strings = {"hidden", "veryHidden"})
  void sheet_hidden_isReadOrNamedAsHidden(String state) throws Exception {
    String hidden = "state='" + state + "'";
    workbook.sheet("guards", hidden, "worksheet", "worksheets/sheet3.xml");
    workbook.sheet("Guards (2)", hidden, "worksheet", "worksheets/sheet3.xml");
    workbook.sheet("notes", hidden, "worksheet", "worksheets/sheet3.xml");
    workbook.part("xl/worksheets/sheet3.xml", HandMadeWorkbook.sheetOf(""));
    assertEquals(
        List.of(
            "hidden sheet guards: is empty; give it a header row, or take it away",
            "hidden sheet Guards (2): is it guards? It was not read; keep either it or hidden sheet"
                + " guards; if not, move it away or give it a name unlike a table's"),
        faults());
    assertEquals(List.of("hidden sheet notes: left alone: none of the tables"), leftAlone());
  }

  private void assertRead() throws Exception {
    assertRead(workbook);
  }

  private void assertRead(HandMadeWorkbook made) throws Exception {
    Reading reading = read(made);
    assertEquals(List.of(), reading.faults());
    assertEquals(
        Dimension.of(Length.MM * 25 / 2),
        reading.shop().orElseThrow().machines().get(0).gap(Side.REAR));
    assertEquals("vise", reading.shop().orElseThrow().vises().get(0).name());
  }

  private Reading read(HandMadeWorkbook made) throws Exception {
    return ShopReader.read(made.in(folder), Map.of());
  }

  private List<String> faults() throws Exception {
    return read(workbook).faults().stream().map(Fault::toString).toList();
  }

  private List<String> leftAlone() throws Exception {
    return read(workbook).notes(Note.Kind.LEFT_ALONE).stream().map(Note::toString).toList();
  }
}
