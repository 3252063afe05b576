package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo with some of its readings opened. */
class TapeCommandTest {
  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path tables;

  @BeforeEach
  void openReadings() throws IOException {
    tables = Files.createDirectory(folder.resolve("tables"));
    for (String table :
        List.of("machines", "guards", "vises", "mounts", "vise_parts", "settings")) {
      Files.copy(Path.of("inputs/demo", table + ".csv"), tables.resolve(table + ".csv"));
    }
    put("machines", "small closed mill", "rear_gap", "");
    put("machines", "small closed mill", "front_gap", "60..130");
    put("vises", "plain 160", "bolt_hole_u", "");
  }

  private void put(String table, String name, String column, String value) throws IOException {
    Path file = tables.resolve(table + ".csv");
    List<List<String>> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(Files.readString(file), CSVFormat.RFC4180)) {
      for (CSVRecord row : parser) {
        rows.add(new ArrayList<>(row.toList()));
      }
    }
    int place = rows.get(0).indexOf(column);
    rows.stream().filter(row -> row.get(0).equals(name)).forEach(row -> row.set(place, value));
    StringWriter text = new StringWriter();
    try (var printer = CSVFormat.RFC4180.print(text)) {
      printer.printRecords(rows);
    }
    Files.writeString(file, text.toString());
  }

  private int tape(String... more) {
    List<String> args = new ArrayList<>(List.of("tape", tables.toString(), "-o", pdf().toString()));
    args.addAll(List.of(more));
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    return Main.run(
        args.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private Path pdf() {
    return folder.resolve("out/tape.pdf");
  }

  private Path csv() {
    return folder.resolve("out/tape.csv");
  }

  @Test
  void tape_openReadings_areOnTheFormAndInTheCsvInOneOrder() throws Exception {
    assertEquals(0, tape(), err.toString());
    List<String> names = new ArrayList<>();
    try (CSVParser rows =
        CSVParser.parse(Files.readString(csv()), CSVFormat.RFC4180.builder().setHeader().get())) {
      for (CSVRecord row : rows) {
        names.add(row.get("reading") + " of " + row.get("name"));
        assertEquals("", row.get("value"));
        assertEquals(row.get("which").split(";").length, Integer.parseInt(row.get("pairings")));
      }
    }
    assertTrue(names.contains("rear_gap of small closed mill"), names.toString());
    assertTrue(names.contains("bolt_hole_u of plain 160"), names.toString());
    List<String> printed = out.toString().lines().toList();
    assertEquals("Tape first:", printed.get(0));
    for (int i = 0; i < Math.min(5, names.size()); i++) {
      assertTrue(printed.get(i + 1).startsWith("  " + names.get(i) + ": "), printed.get(i + 1));
    }
    try (PDDocument document = Loader.loadPDF(pdf().toFile())) {
      PDFTextStripper text = new PDFTextStripper();
      String first = names.get(0).replaceFirst(".* of ", "");
      text.setEndPage(1);
      assertTrue(text.getText(document).contains("Tape first: " + first), first);
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        text.setStartPage(page);
        text.setEndPage(page);
        assertTrue(text.getText(document).contains("Lock out before reaching in"), "page " + page);
      }
      text.setStartPage(1);
      String all = text.getText(document).replaceAll("\\s+", " ");
      assertTrue(all.contains("Now 60 to 130 mm."), all);
      assertTrue(all.contains("Read it within ± 1 mm."), all);
    }
  }

  @Test
  void tape_machinesAndVises_areThoseNamed() throws Exception {
    assertEquals(0, tape("--machines", "small closed mill", "--vises", "plain 125…plain 160"));
    String text = Files.readString(csv());
    assertTrue(text.contains("small closed mill"), text);
    assertFalse(text.contains("offered mill"), text);
    assertFalse(text.contains("six inch"), text);

    assertEquals(2, tape("--vises", "plain 160…plain 125"));
    assertEquals(
        "\"plain 125\" stands before \"plain 160\" in these tables; name it first.",
        err.toString().strip());
  }

  @Test
  void tape_nothingOpen_saysSoAndWritesNothing() {
    assertEquals(0, tape("--machines", "bench mill", "--vises", "toolroom 80"));
    assertEquals("Nothing to tape: no pairing is unknown.", out.toString().strip());
    assertFalse(Files.exists(pdf()));
  }

  @Test
  void tape_csvFilledIn_isNotReplaced() throws Exception {
    assertEquals(0, tape());
    byte[] form = Files.readAllBytes(pdf());
    assertEquals(0, tape());
    assertArrayEquals(form, Files.readAllBytes(pdf()));
    String filled = Files.readString(csv()).replaceFirst("\r\n$", "41.3\r\n");
    Files.writeString(csv(), filled);

    assertEquals(3, tape());

    assertEquals(filled, Files.readString(csv()));
  }
}
