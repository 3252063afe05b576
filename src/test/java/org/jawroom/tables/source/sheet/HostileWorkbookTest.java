package org.jawroom.tables.source.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import org.jawroom.launch.ToolRun;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Workbooks made to hurt: each is read with little memory and ends in few words. One JVM of 256 MB
 * reads the bombs one after the other. A part of 600 MB exceeds this memory and the 512 MiB that a
 * part may have.
 */
class HostileWorkbookTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";
  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?><worksheet"
          + " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>";
  private static final String TAIL = "</sheetData></worksheet>";

  /** Writes the content of a part, of any size. */
  private interface Part {
    void writeTo(OutputStream out) throws IOException;
  }

  @TempDir private static Path bombs;
  @TempDir private Path folder;

  private record Bomb(String name, String part, Part content) {}

  static Stream<Bomb> bombs() {
    return Stream.of(
        new Bomb(
            "a cell of 100 MB",
            SHEET,
            out -> {
              text(out, HEAD + "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>");
              filled(out, 100_000_000);
              text(out, "</t></is></c></row>" + TAIL);
            }),
        new Bomb(
            "a million columns",
            SHEET,
            out -> {
              text(out, HEAD + "<row r=\"1\">");
              repeated(out, "<c t=\"inlineStr\"><is><t>x</t></is></c>", 1_000_000);
              text(out, "</row>" + TAIL);
            }),
        new Bomb(
            "more rows than a sheet has",
            SHEET,
            out -> {
              text(out, HEAD);
              repeated(out, "<row><c><v>1</v></c></row>", (1 << 20) + 50_000);
              text(out, TAIL);
            }),
        new Bomb(
            "elements without end",
            SHEET,
            out -> {
              text(out, HEAD + "<row r=\"1\">");
              repeated(out, "<c>", 5_000_000);
            }),
        new Bomb(
            "shared texts of 600 MB",
            "xl/sharedStrings.xml",
            out -> {
              text(
                  out, "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
              for (int i = 0; i < 6; i++) {
                text(out, "<si><t>");
                filled(out, 100_000_000);
                text(out, "</t></si>");
              }
              text(out, "</sst>");
            }),
        new Bomb(
            "many shared texts",
            "xl/sharedStrings.xml",
            out -> {
              text(
                  out, "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
              repeated(out, "<si><t>abc</t></si>", 20_000_000);
              text(out, "</sst>");
            }),
        new Bomb(
            "shared texts nested without end",
            "xl/sharedStrings.xml",
            out -> {
              text(
                  out,
                  "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><si>");
              repeated(out, "<r>", 5_000_000);
            }),
        new Bomb(
            "many columns in many rows",
            SHEET,
            out -> {
              text(out, HEAD);
              repeated(out, "<row>" + "<c t=\"b\"><v>1</v></c>".repeat(1_000) + "</row>", 5_000);
              text(out, TAIL);
            }),
        new Bomb("styles of 600 MB", "xl/styles.xml", out -> filled(out, 600_000_000)),
        new Bomb("types of 600 MB", "[Content_Types].xml", out -> filled(out, 600_000_000)),
        new Bomb(
            "entities that swell",
            SHEET,
            out -> {
              text(out, "<?xml version=\"1.0\"?><!DOCTYPE w [<!ENTITY a \"aaaaaaaaaa\">");
              for (char c = 'b'; c < 'l'; c++) {
                char before = (char) (c - 1);
                text(out, "<!ENTITY " + c + " \"" + ("&" + before + ";").repeat(10) + "\">");
              }
              text(out, "]><w>&k;</w>");
            }));
  }

  @BeforeAll
  static void checkAll() throws Exception {
    List<String> files = new ArrayList<>();
    for (Bomb bomb : bombs().toList()) {
      with(file(bomb), bomb.part, bomb.content);
      files.add(file(bomb).toString());
    }
    ToolRun run = ToolRun.of(ToolRun.command(256, CheckEach.class, files.toArray(String[]::new)));
    assertEquals(new ToolRun(0, "", ""), run);
  }

  @ParameterizedTest
  @MethodSource("bombs")
  void workbook_ofABomb_isRefusedWithinLittleMemory(Bomb bomb) throws IOException {
    assertTrue(Files.size(file(bomb)) < 64 << 20, "a small file");
    List<String> kept = Files.readAllLines(CheckEach.kept(file(bomb)));
    assertTrue(List.of("1", "3").contains(kept.get(0)), kept.toString());
    List<String> err = kept.subList(1, kept.size());
    assertTrue(
        err.stream().noneMatch(line -> line.contains("Exception") || line.contains("\tat ")),
        err.toString());
    assertTrue(!err.isEmpty() && err.size() <= 12, err.toString());
  }

  private static Path file(Bomb bomb) {
    return bombs.resolve(bomb.name + ".xlsx");
  }

  /** What an entity points at must not come out anywhere. */
  @Test
  void workbook_withAnExternalEntity_isRefusedUnread() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "hush-hush");
    Path file = folder.resolve("entity.xlsx");
    with(
        file,
        SHEET,
        out ->
            text(
                out,
                "<?xml version=\"1.0\"?><!DOCTYPE worksheet [<!ENTITY e SYSTEM \""
                    + secret.toUri()
                    + "\">]>"
                    + HEAD.substring(HEAD.indexOf("?>") + 2)
                    + "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>&e;</t></is></c></row>"
                    + TAIL));

    ToolRun run = ToolRun.of(256, "check", file.toString());

    assertEquals(3, run.status(), run.toString());
    assertEquals(
        List.of(
            file
                + " could not be read: its part xl/worksheets/sheet1.xml is no sound XML in line 1"),
        run.err().lines().toList());
    assertFalse((run.out() + run.err()).contains("hush"), run.toString());
  }

  /** Macros are no part of a table: they stay where they are, and one line says so. */
  @Test
  void workbook_withMacros_isReadAsDataAndSaysSo() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook(XSSFWorkbookType.XLSM)) {
      workbook.createSheet("machines").createRow(0).createCell(0).setCellValue("machine");
      workbook.setVBAProject(new ByteArrayInputStream(new byte[100]));
      workbook.write(bytes);
    }
    for (String name : List.of("shop.xlsm", "shop.xlsx")) {
      Path file = Files.write(folder.resolve(name), bytes.toByteArray());
      Reading reading = ShopReader.read(file, Map.of());
      assertEquals(
          List.of("macros: left alone: none of the tables"),
          reading.notes(Note.Kind.LEFT_ALONE).stream().map(Note::toString).toList());
      assertTrue(
          reading.faults().toString().contains("sheet machines row 1"),
          reading.faults().toString());
    }
  }

  @Test
  void link_toAWorkbook_isFollowedAndADanglingOneIsUnreadable() throws Exception {
    Path file = folder.resolve("shop.xlsx");
    with(file, SHEET, out -> text(out, HEAD + TAIL));
    Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), file);
    assertEquals(
        ShopReader.read(file, Map.of()).faults(), ShopReader.read(link, Map.of()).faults());
    Files.delete(file);
    assertEquals(
        link + " could not be read: there is no such file or folder",
        assertThrows(UnreadableInput.class, () -> ShopReader.read(link, Map.of())).getMessage());
  }

  /** A sheet's name may hold what it likes; a terminal must not take it for orders. */
  @Test
  void sheet_namedToSteerATerminal_isShownHarmless() throws Exception {
    Path file = folder.resolve("shop.xlsx");
    with(
        file,
        "xl/workbook.xml",
        out ->
            text(
                out,
                "<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\""
                    + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">"
                    + "<sheets><sheet name=\"vi&#x202E;ses &#x9b;31m\" sheetId=\"1\" r:id=\"rId3\"/>"
                    + "</sheets></workbook>"));
    ToolRun run = ToolRun.of(256, "check", file.toString());
    assertTrue(
        (run.out() + run.err())
            .chars()
            .noneMatch(
                one ->
                    Character.isISOControl(one) && one != '\n'
                        || Character.getType(one) == Character.FORMAT),
        run.toString());
  }

  /** A sound workbook but for one part. */
  private static void with(Path file, String part, Part content) throws IOException {
    ByteArrayOutputStream sound = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      workbook.createSheet("machines").createRow(0).createCell(0).setCellValue("machine");
      workbook.write(sound);
    }
    boolean replaced = false;
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(sound.toByteArray()));
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
      out.setLevel(1);
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        out.putNextEntry(new ZipEntry(entry.getName()));
        if (entry.getName().equals(part)) {
          replaced = true;
          content.writeTo(out);
        } else {
          in.transferTo(out);
        }
        out.closeEntry();
      }
    }
    assertTrue(replaced, part);
  }

  private static void text(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private static void filled(OutputStream out, int bytes) throws IOException {
    repeated(out, "a", bytes);
  }

  private static void repeated(OutputStream out, String text, int times) throws IOException {
    int together = Math.min(times, 100_000);
    byte[] some = text.repeat(together).getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < times; i += together) {
      out.write(some);
    }
  }
}
