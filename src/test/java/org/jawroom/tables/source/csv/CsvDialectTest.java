package org.jawroom.tables.source.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jawroom.fixture.TestShop;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The dialects of CSV, and what becomes of damaged files. */
class CsvDialectTest {
  private static final String HEADER =
      "machine,description,table_moves,table_length,table_width,travel_x,travel_y,slot_count,rear_gap\n";
  private static final String MILL = "mill,,xy,600,300,400,300,3,12.5\n";
  private static final String VISES =
      "vise,jaw_width,jaw_height,bed_height,opening_max\nvise,150,40,60,150\n";

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t", "|"})
  void delimiter_isFoundInTheHeader(String delimiter) throws Exception {
    assertMill((HEADER + MILL).replace(",", delimiter));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void lineEnd_ofAnyKind_isTaken(String lineEnd) throws Exception {
    assertMill((HEADER + MILL).replace("\n", lineEnd));
  }

  /** Spreadsheets read such a line, and write one where they are asked to. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "sep=;\n",
        "SEP=;\r\n",
        "sep=;\r",
        "\"sep=;\"\n",
        "sep=;,,,,\n",
        "sep=;;;;;;;;;\n",
        "\ufeffsep=;\n"
      })
  void delimiter_ofTheFirstLine_isTaken(String line) throws Exception {
    String rows = (HEADER + MILL).replace(",", ";");
    assertMill(line + rows);
    assertEquals(
        List.of(
            "machines.csv row 3, column rear_gap: \"x\" is no number; leave the cell blank if it is not"
                + " known"),
        faults(line + rows.replace("12.5", "x")));
  }

  @ParameterizedTest
  @ValueSource(strings = {",", "\t", "|", "^", ":"})
  void delimiter_ofTheFirstLine_mayBeAnySign(String delimiter) throws Exception {
    assertMill("sep=" + delimiter + "\n" + (HEADER + MILL).replace(",", delimiter));
  }

  @ParameterizedTest
  @ValueSource(strings = {"sep=", "sep=a", "sep=;x", "sep=5", "sep=\u20ac"})
  void delimiter_ofTheFirstLine_thatIsNone_isAFault(String line) throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 1: names no character that can stand between cells; write sep=; or sep=, or"
                + " delete it"),
        faults(line + "\n" + HEADER + MILL));
  }

  @Test
  void header_ofOneCell_isAFaultThatNamesTheDelimiters() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 1: has one cell alone, no column of machines; put a comma, semicolon, tab or |"
                + " between the cells"),
        faults((HEADER + MILL).replace(",", "^")));
  }

  /** As spreadsheets export it under the name of Unicode text. */
  @ParameterizedTest
  @ValueSource(strings = {"UTF-16LE", "UTF-16BE"})
  void text_ofUtf16WithItsMark_isRead(String charset) throws Exception {
    write("vises", VISES);
    String text =
        "\ufeff" + (HEADER + MILL).replace(",", "\t").replace("mill", "fr\u00e4se \ud83d\udd27");
    Files.write(folder.resolve("machines.csv"), text.getBytes(Charset.forName(charset)));
    assertEquals(List.of(), read().faults());
    assertEquals("fr\u00e4se \ud83d\udd27", read().shop().orElseThrow().machines().get(0).name());
  }

  @Test
  void byteOrderMark_isSkipped() throws Exception {
    assertMill("\ufeff" + HEADER + MILL);
  }

  @Test
  void blankLines_areSkippedButCounted() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 7, column rear_gap: \"x\" is no number; leave the cell blank if it is not"
                + " known"),
        faults(
            "\n , \n"
                + HEADER
                + "\n,,,,,,,,\n"
                + MILL
                + MILL.replace("12.5", "x").replace("mill", "b")));
  }

  @Test
  void row_ofQuotedLines_isTheLineItStartsOn() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 6, column rear_gap: \"1,250\" could be 1.25 or 1250; write 1250 or 1.25"),
        faults(
            HEADER
                + "mill,\"two\nlines, and a \"\"quote\"\"\nand three\",xy,600,300,400,300,3,\n\n"
                + "b,,xy,600,300,400,300,3,\"1,250\"\n"));
  }

  @Test
  void inchSign_inPlainAndQuotedCells_isTaken() throws Exception {
    assertEquals(
        Dimension.of(13 * Length.INCH / 2),
        mill(HEADER + MILL.replace("12.5", "6 1/2\"")).gap(Side.REAR));
    assertEquals(
        Dimension.of(13 * Length.INCH / 2),
        mill(HEADER + MILL.replace("12.5", "\"6 1/2\"\"\"")).gap(Side.REAR));
  }

  @Test
  void cells_moreThanTheHeader_areRefused() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 2: has 10 cells, but the header has 9; a cell that holds a , must stand in"
                + " quotes"),
        faults(HEADER + MILL.replace("12.5", "12,5") + "b,,xy,600,300,400,300,3\n"));
  }

  @Test
  void row_shorterThanTheHeader_isBlankBeyond() throws Exception {
    assertEquals(Dimension.BLANK, mill(HEADER + "mill,,xy,600,300,400,300,3\n").gap(Side.REAR));
  }

  @Test
  void quote_neverClosed_isAFaultNamingItsRow() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 2, column rear_gap: \"?\" is no number; leave the cell blank if it is not"
                + " known",
            "machines.csv row 3: has quotes that do not pair up, so nothing from here on was read; a cell"
                + " that begins with \" must end with one, and a \" inside it is written twice"),
        faults(HEADER + MILL.replace("12.5", "?") + "b,\"open,xy,600\n"));
  }

  @Test
  void bytes_notUtf8_areAFaultNamingTheLine() throws Exception {
    write("vises", VISES);
    Files.write(
        folder.resolve("machines.csv"),
        (HEADER + MILL + "fr\u00e4se\n").getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(
        List.of("machines.csv row 3: is not UTF-8 from here on; save the file as CSV in UTF-8"),
        read().faults().stream().map(Fault::toString).toList());
  }

  @Test
  void header_unknownTwiceAndMissing_isRefusedOnItsRow() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 2: \"Rear  Gapp\" is not a column of machines; did you mean \"rear_gap\"?",
            "machines.csv row 2: \"TRAVEL-X\" is there twice; keep one of the two columns",
            "machines.csv row 2, column table_width: is missing from the header",
            "machines.csv row 2, column slot_count: is missing from the header"),
        faults(
            "\nmachine,Table Moves,table-length,travel_x,travel_y,Rear  Gapp,TRAVEL-X\n"
                + "mill,xy,600,400,300,5,400\n"));
  }

  @Test
  void cell_underNoHeader_isRefused() throws Exception {
    assertEquals(
        List.of("machines.csv row 2: \"stray\" stands under no header"),
        faults(HEADER.replace("\n", ",\n") + MILL.replace("\n", ",stray\n")));
  }

  @Test
  void fileName_ofAnyCaseAndJoint_isKnown_andOthersAreNamed() throws Exception {
    write("Machines", HEADER + MILL);
    write("VISES", VISES);
    write("Vise Parts", "vise,part,u_min_closed,u_max_closed,v_min,v_max,w_min,w_max\n");
    write("notes", "whatever");
    Reading reading = read();
    assertTrue(reading.shop().isPresent());
    assertEquals(
        List.of("notes.csv: left alone: none of the tables"),
        reading.notes(Note.Kind.LEFT_ALONE).stream().map(Note::toString).toList());
  }

  @Test
  void table_thereTwice_isRefused() throws Exception {
    write("vise-parts", "vise,part,u_min_closed,u_max_closed,v_min,v_max,w_min,w_max\n");
    write("vise_parts", "vise,part,u_min_closed,u_max_closed,v_min,v_max,w_min,w_max\n");
    assertEquals(
        List.of("vise_parts.csv: is the same table as vise-parts.csv; keep one of the two"),
        faults(HEADER + MILL));
  }

  @Test
  void tables_missingOrEmpty_areRefused() throws Exception {
    write("guards", "");
    write("machines", HEADER);
    assertEquals(
        List.of(
            "machines.csv: holds no rows; a shop needs at least one",
            "guards.csv: is empty; give it a header row, or take it away",
            "vises.csv: is missing; a shop needs machines and vises"),
        read().faults().stream().map(Fault::toString).toList());
  }

  @Test
  void settings_withoutValueColumn_areRefused() throws Exception {
    write("settings", "setting\nclearance\n");
    assertEquals(
        List.of("settings.csv row 1, column value: is missing from the header"),
        faults(HEADER + MILL));
  }

  @Test
  void hostileSizes_areFaults() throws Exception {
    assertEquals(
        List.of("machines.csv row 2: has a cell of more than 32767 characters"),
        faults(HEADER + "x".repeat(32_768) + "\n" + MILL));
    assertEquals(
        List.of("machines.csv row 1: has more than 16384 cells"),
        faults(",".repeat(16_384) + "\n" + MILL));
  }

  @Test
  void rows_moreThanAnyShopNeeds_areAFault() throws Exception {
    write("jobs", "job,part_length,part_width,part_height\n" + "e.g. job,1,1,1\n".repeat(100_002));
    assertEquals(
        List.of(
            "jobs.csv row 100002: is beyond the 100000 rows that a table may have; split it off"),
        faults(HEADER + MILL));
  }

  @Test
  void semicolons_leaveTheDecimalAPoint() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 2, column rear_gap: \"12,5\" has a decimal comma; write 12.5, or set the"
                + " setting decimal to comma"),
        faults((HEADER + MILL).replace(",", ";").replace("12.5", "12,5")));
  }

  @Test
  void fingerprint_isSha256OfTheFile() throws Exception {
    // The digest of "abc" from FIPS 180-2, appendix B.1.
    write("guards", "abc");
    faults(HEADER + MILL);
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        read().files().get(0).sha256());
  }

  @Test
  void input_thatIsNotThere_isUnreadable() {
    Path nowhere = folder.resolve("nowhere");
    UnreadableInput e =
        assertThrows(UnreadableInput.class, () -> ShopReader.read(nowhere, Map.of()));
    assertEquals(nowhere + " could not be read: there is no such file or folder", e.getMessage());
  }

  private void assertMill(String machines) throws Exception {
    assertEquals(Dimension.of(25 * Length.MM / 2), mill(machines).gap(Side.REAR));
  }

  private Machine mill(String machines) throws Exception {
    assertEquals(List.of(), faults(machines));
    return read().shop().orElseThrow().machines().get(0);
  }

  private List<String> faults(String machines) throws Exception {
    write("machines", machines);
    write("vises", VISES);
    return read().faults().stream().map(Fault::toString).toList();
  }

  private Reading read() throws UnreadableInput {
    return ShopReader.read(folder, Map.of());
  }

  private void write(String table, String text) {
    TestShop.write(folder.resolve(table + ".csv"), text);
  }
}
