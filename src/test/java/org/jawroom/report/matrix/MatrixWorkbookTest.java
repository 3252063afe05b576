package org.jawroom.report.matrix;

import static org.jawroom.fixture.outcome.Invented.CALIPER;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.util.DefaultTempFileCreationStrategy;
import org.apache.poi.util.TempFile;
import org.apache.poi.util.TempFileCreationStrategy;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.Opened;
import org.jawroom.report.SampleShop;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.report.xlsx.RunFacts.FileRead;
import org.jawroom.report.xlsx.RunFacts.Setting;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MatrixWorkbookTest {
  private final SampleShop sample = new SampleShop();

  private static List<String> sheets(XSSFWorkbook book) {
    return IntStream.range(0, book.getNumberOfSheets()).mapToObj(book::getSheetName).toList();
  }

  @Test
  void sheets_areInTheirOrder() throws IOException {
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      assertEquals(
          List.of(
              "Matrix",
              "Pairings",
              "No place",
              "Remedies",
              "To measure",
              "By machine",
              "By vise",
              "What limits",
              "Cautions",
              "Inputs"),
          sheets(book));
    }
  }

  @Test
  void sheets_areAllFittedWide_andAllButTextLandscape() throws IOException {
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      for (Sheet sheet : book) {
        assertEquals(
            !"Inputs".equals(sheet.getSheetName()),
            sheet.getPrintSetup().getLandscape(),
            sheet.getSheetName());
        assertTrue(sheet.getFitToPage(), sheet.getSheetName());
        assertEquals(0, sheet.getPrintSetup().getFitHeight(), sheet.getSheetName());
      }
    }
  }

  @Test
  void write_twiceInOtherZonesAndLocales_givesTheSameBytes() throws IOException {
    byte[] first =
        Opened.bytes(sample.shop, sample.advice, Invented.facts(PeopleUnit.INCH), SheetLimits.XLSX);
    TimeZone zone = TimeZone.getDefault();
    Locale locale = Locale.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      byte[] second =
          Opened.bytes(
              new SampleShop().shop,
              new SampleShop().advice,
              Invented.facts(PeopleUnit.INCH),
              SheetLimits.XLSX);
      assertArrayEquals(first, second);
    } finally {
      TimeZone.setDefault(zone);
      Locale.setDefault(locale);
    }
  }

  @Test
  void write_entries_bearNoTimeOfTheirOwn() throws IOException {
    byte[] bytes =
        Opened.bytes(sample.shop, sample.advice, Invented.facts(PeopleUnit.MM), SheetLimits.XLSX);
    Set<String> times = new HashSet<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        times.add(entry.getTimeLocal().toString());
      }
    }
    assertEquals(Set.of("2000-01-01T00:00"), times);
  }

  /** Starts named by OWASP, "CSV Injection", and what a cell or its file might trip over. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+2",
        "+1+2",
        "-1+2",
        "@SUM(1,2)",
        "\t=1",
        "\r=1",
        "\n=1",
        "＝1",
        "=HYPERLINK(\"http://x\",\"y\")",
        "=cmd|'/C calc'!A0",
        "<b>&amp;",
        "_x003D_1",
        "tab\tand\u0001control",
        "&8&A"
      })
  void write_textFromUsers_isNeverAFormula(String text) throws IOException {
    Shop shop =
        new Shop(
            Settings.DEFAULTS,
            List.of(machine(text, text, "900", "600", List.of(text), CALIPER, List.of())),
            List.of(vise(text)),
            List.of());
    Outcome outcome =
        new Made(shop.machines().get(0), shop.vises().get(0), Verdict.FITS)
            .best("1")
            .limit("1", text, text, Axis.X, Situation.CUTTING, JawEnd.ANY)
            .mount(text)
            .done();
    RunFacts facts =
        new RunFacts(
            List.of(new FileRead(text, text)),
            List.of(new Setting(text, text)),
            List.of(text),
            List.of(text),
            List.of(text),
            PeopleUnit.MM,
            text);
    try (XSSFWorkbook book =
        Opened.open(shop, Advised.bare(List.of(outcome)), facts, SheetLimits.XLSX)) {
      List<String> formulas = new ArrayList<>();
      List<String> texts = new ArrayList<>();
      for (Sheet sheet : book) {
        Opened.eachCell(
            sheet,
            cell -> {
              if (cell.getCellType() == CellType.FORMULA) {
                formulas.add(cell.getCellFormula());
              } else if (cell.getCellType() == CellType.STRING && isFormulaStart(cell)) {
                texts.add(cell.getStringCellValue());
                assertTrue(cell.getCellStyle().getQuotePrefixed(), "stays text when edited");
              }
            });
      }
      assertEquals(List.of("COUNTIF(B8:B9,\">=\"&$B$2)"), formulas);
      if ("=+-@".indexOf(text.charAt(0)) >= 0) {
        assertTrue(texts.contains(text));
      }
    }
  }

  private static boolean isFormulaStart(Cell cell) {
    String text = cell.getStringCellValue();
    return !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0;
  }

  @Test
  void write_moreThanASheetHolds_carriesWhatFitsAndSaysSo() throws IOException {
    SheetLimits small = new SheetLimits(13, 5, 3);
    try (XSSFWorkbook book =
        Opened.open(sample.shop, sample.advice, Invented.facts(PeopleUnit.MM), small)) {
      Sheet matrix = book.getSheet("Matrix");
      assertEquals(
          "Which vise goes on which machine; ONLY THE FIRST 3 OF 8 MACHINES FIT HERE, pairings.csv HAS ALL"
              + "; ONLY THE FIRST 4 OF 14 VISES FIT HERE, pairings.csv HAS ALL",
          matrix.getRow(0).getCell(0).getStringCellValue());
      assertEquals(12, matrix.getLastRowNum());
      assertEquals(5, matrix.getRow(MatrixSheet.FIRST_MARGIN).getLastCellNum());
      assertEquals(3, matrix.getHyperlinkList().size());
      // The second machine's first pairing is the 15th: beyond the rows of Pairings, so without a
      // link.
      assertNull(matrix.getRow(MatrixSheet.FIRST_MARGIN + 2).getCell(1).getHyperlink());
      Sheet pairings = book.getSheet("Pairings");
      assertEquals(12, pairings.getLastRowNum());
      assertTrue(
          pairings
              .getRow(1)
              .getCell(2)
              .getStringCellValue()
              .startsWith(
                  "ONLY THE FIRST 10 OF 112 FIT ON THIS SHEET; pairings.csv HAS THEM ALL. "));
    }
  }

  @Test
  void write_diskThatFailsBeneathTheLibrary_isAnIoException() {
    TempFileCreationStrategy full =
        new DefaultTempFileCreationStrategy() {
          @Override
          public File createTempFile(String prefix, String suffix) throws IOException {
            throw new IOException("no space left");
          }
        };
    IOException failure =
        TempFile.withStrategy(
            full,
            () ->
                assertThrows(
                    IOException.class,
                    () -> Opened.open(sample.shop, sample.advice, PeopleUnit.MM)));
    assertEquals(System.getProperty("java.io.tmpdir") + ": no space left", failure.getMessage());
  }

  @Test
  void write_otherThanOneOutcomePerPairing_isABug() {
    List<Advice> few = sample.advice.subList(1, sample.advice.size());
    assertThrows(
        IllegalArgumentException.class, () -> Opened.open(sample.shop, few, PeopleUnit.MM));
  }

  @Test
  void write_emptyShop_stillHasEverySheet() throws IOException {
    Shop nothing = new Shop(Settings.DEFAULTS, List.of(), List.of(), List.of());
    try (XSSFWorkbook book = Opened.open(nothing, List.of(), PeopleUnit.MM)) {
      assertEquals(10, sheets(book).size());
    }
  }

  @Test
  void inputs_listWhatTheRunWasMadeOf() throws IOException {
    try (XSSFWorkbook book = Opened.open(sample.shop, sample.advice, PeopleUnit.MM)) {
      List<String> lines =
          StreamSupport.stream(book.getSheet("Inputs").spliterator(), false)
              .map(
                  row ->
                      row.getCell(0).getStringCellValue()
                          + (row.getCell(1) == null
                              ? ""
                              : " | " + row.getCell(1).getStringCellValue()))
              .toList();
      RunFacts facts = Invented.facts(PeopleUnit.MM);
      List<String> expected = new ArrayList<>(List.of("Inputs", "Made by | jawroom 0.2.0"));
      expected.add("Settings in force");
      facts.settings().forEach(setting -> expected.add(setting.label() + " | " + setting.value()));
      expected.add("Files read, each with its fingerprint");
      facts.files().forEach(file -> expected.add(file.name() + " | " + file.fingerprint()));
      expected.add("Blanks: not known, and not taken as zero");
      expected.addAll(facts.blanks());
      expected.add("Defaults taken");
      expected.addAll(facts.defaults());
      expected.add("Warnings");
      expected.addAll(facts.warnings());
      assertEquals(expected, lines);
    }
  }

  @Test
  void reports_write_putsAllFilesInPlace(@TempDir Path directory) throws IOException {
    List<Path> written =
        Opened.reports(directory.resolve("out"), sample.shop, sample.advice, List.of());
    assertEquals(
        Stream.of("pairings.csv", "remedies.csv", "unknowns.csv", "matrix.xlsx")
            .map(name -> directory.resolve("out").resolve(name))
            .toList(),
        written);
    assertEquals(113, Files.readAllLines(written.get(0)).size());
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(written.get(3)))) {
      assertEquals(10, sheets(book).size());
    }
  }
}
