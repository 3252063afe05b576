package org.jawroom.report.assess;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.advice.assess.AssessShop;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.advice.assess.Question;
import org.jawroom.advice.blank.Relation;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.geometry.Length;
import org.jawroom.report.Opened;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssessReportsTest {
  private static final String HOSTILE = "=HYPERLINK(\"http://x\") \u202E";

  @TempDir private Path folder;

  @Test
  void csv_everyRow_hasSixCellsAndTheCandidate() throws Exception {
    write(AssessShop.assess(AssessShop.read()), PeopleUnit.MM);
    List<CSVRecord> rows = csv();
    assertEquals(
        List.of("candidate", "subject", "item", "value", "unit", "note"), rows.get(0).toList());
    for (CSVRecord row : rows.subList(1, rows.size())) {
      assertEquals(6, row.size(), row::toString);
      assertTrue(List.of("blank offer", "known offer").contains(row.get(0)), row::toString);
    }
  }

  @Test
  void csv_facts_areTheAssessments() throws Exception {
    write(AssessShop.assess(AssessShop.read()), PeopleUnit.INCH);
    List<List<String>> rows = csv().stream().map(CSVRecord::toList).toList();
    assertTrue(
        rows.contains(List.of("known offer", "better", "buy", "yes", "", "jobs")), rows::toString);
    assertTrue(
        rows.contains(
            List.of("known offer", "jobs", "only here", "2", "", "tall block;wide plate")));
    assertTrue(rows.contains(List.of("known offer", "nuts", "14.000", "fits", "", "small mill")));
    assertTrue(
        rows.contains(List.of("known offer", "bolt", "hole", "13.500", "mm", "ISO 273 medium")));
    // Whatever people see, programs see mm: 450 + 210 + 80 − 2 × 6 − 2 × 1.
    assertTrue(
        rows.stream()
            .anyMatch(
                row ->
                    row.get(1).equals("room")
                        && row.get(2).startsWith("front; ")
                        && row.get(2).endsWith("wide, longest")
                        && row.get(3).equals("726.000")
                        && row.get(0).equals("known offer")),
        rows::toString);
  }

  @Test
  void pdf_twoCandidates_areOnOnePageInEmbeddedLetters() throws Exception {
    write(AssessShop.assess(AssessShop.read()), PeopleUnit.MM);
    try (PDDocument document = pdf()) {
      assertEquals(1, document.getNumberOfPages());
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("Better buy: known offer"), text);
      assertTrue(text.contains("Ask the seller of blank offer"), text);
      assertTrue(text.contains("Lock out before reaching in"), text);
      assertFalse(text.contains("There is more"), text);
      assertEmbedded(document);
    }
  }

  @Test
  void pdf_fourMachines_takeTwoPages() throws Exception {
    Shop shop = AssessShop.read();
    write(
        AssessShop.assess(shop, "small mill", "narrow mill", "blank offer", "known offer"),
        PeopleUnit.INCH);
    try (PDDocument document = pdf()) {
      assertEquals(2, document.getNumberOfPages());
    }
  }

  @Test
  void workbook_sheets_listCandidatesFirstThenOwned() throws Exception {
    write(AssessShop.assess(AssessShop.read()), PeopleUnit.MM);
    try (XSSFWorkbook book = book()) {
      List<String> names = new ArrayList<>();
      book.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));
      assertEquals(List.of("Candidates", "Ask the seller", "Inputs", "Cautions"), names);
      List<List<String>> rows = new ArrayList<>();
      book.getSheet("Candidates")
          .forEach(
              row -> {
                List<String> cells = new ArrayList<>();
                row.forEach(cell -> cells.add(cell.getStringCellValue()));
                rows.add(cells);
              });
      assertTrue(
          rows.contains(
              List.of(
                  "Fact ▼   Machine ►",
                  "blank offer",
                  "known offer – the better buy",
                  "small mill",
                  "narrow mill")),
          rows::toString);
      assertTrue(
          rows.contains(
              List.of(
                  "held that no other owned machine holds",
                  "0",
                  "2: tall block, wide plate",
                  "2",
                  "0")),
          rows::toString);
    }
  }

  /** A fit that rests on open readings is marked with them; one that does not is not. */
  @Test
  void workbook_fitThatRestsOnARange_saysForWhichValuesItHolds() throws Exception {
    String mark = "holds for every value of a reading known within bounds";
    Shop read = AssessShop.read();
    write(AssessShop.assess(read), PeopleUnit.MM);
    assertFalse(candidates().containsKey(mark), candidates()::toString);
    Dimension range = Dimension.within(70 * Length.MM, 90 * Length.MM);
    Shop shop =
        new Shop(
            read.settings(),
            read.machines().stream()
                .map(it -> it.name().equals("known offer") ? it.withGap(Side.REAR, range) : it)
                .toList(),
            read.vises(),
            read.jobs());
    write(AssessShop.assess(shop, "known offer"), PeopleUnit.MM);
    Map<String, List<String>> rows = candidates();
    String cell = rows.get(mark).get(1);
    assertTrue(cell.endsWith(": whatever rear_gap is, from 70 to 90 mm"), cell);
    assertTrue(rows.get("fits").get(1).contains(cell.split("[,:]")[0]), rows::toString);
  }

  private Map<String, List<String>> candidates() throws IOException {
    Map<String, List<String>> rows = new TreeMap<>();
    try (XSSFWorkbook book = book()) {
      book.getSheet("Candidates")
          .forEach(
              row -> {
                List<String> cells = new ArrayList<>();
                row.forEach(cell -> cells.add(cell.getStringCellValue()));
                rows.put(cells.get(0), cells);
              });
    }
    return rows;
  }

  @Test
  void seller_limitWithOthersOpen_standsBesideTheValueThatIsSure() {
    SellerWords words = new SellerWords(PeopleUnit.MM);
    assertEquals(
        "can be made to fit if ≥ 41.28 mm, once the other blanks are known too; fits for certain if ≥ 44.5"
            + " mm, whatever the others are",
        words.change(change(false, "41.28", "44.5")));
    assertEquals(
        "can be made to fit if ≥ 41.28 mm, once the other blanks are known too",
        words.change(change(false, "41.28", "")));
    assertEquals("fits if ≥ 41.28 mm", words.change(change(true, "41.28", "41.28")));
  }

  private static Question.Change change(boolean alone, String limit, String sure) {
    return new Question.Change(
        "plain", false, alone, Relation.AT_LEAST, length(limit), length(sure), Optional.empty());
  }

  private static OptionalLong length(String mm) {
    return mm.isEmpty()
        ? OptionalLong.empty()
        : OptionalLong.of(
            new BigDecimal(mm).multiply(BigDecimal.valueOf(Length.MM)).longValueExact());
  }

  @Test
  void reports_madeTwice_areTheSameBytes() throws Exception {
    Assessment assessment = AssessShop.assess(AssessShop.read());
    write(assessment, PeopleUnit.MM);
    Map<String, byte[]> first = bytes();
    write(assessment, PeopleUnit.MM);
    bytes().forEach((name, again) -> assertArrayEquals(first.get(name), again, name));
  }

  @Test
  void names_thatLookLikeFormulas_stayInert() throws Exception {
    // The reader refuses such names; here they get past it.
    Shop read = AssessShop.read();
    Shop shop =
        new Shop(
            read.settings(),
            read.machines().stream().map(AssessReportsTest::renamed).toList(),
            read.vises().stream().map(AssessReportsTest::renamed).toList(),
            read.jobs());
    write(AssessShop.assess(shop), PeopleUnit.MM);
    for (CSVRecord row : csv()) {
      for (int column : new int[] {0, 1, 2, 5}) {
        assertFalse(row.get(column).matches("(?s)[=+@\\-\t\r].*"), row::toString);
      }
    }
    try (XSSFWorkbook book = book();
        PDDocument document = pdf()) {
      book.sheetIterator()
          .forEachRemaining(
              sheet ->
                  Opened.eachCell(
                      sheet, cell -> assertFalse(cell.getCellType() == CellType.FORMULA)));
      assertFalse(new PDFTextStripper().getText(document).contains("\u202E"));
      assertEquals(0, document.getPage(0).getAnnotations().size());
    }
    List<String> said = AssessReports.summary(AssessShop.assess(shop), PeopleUnit.MM, List.of());
    assertFalse(String.join("", said).contains("\u202E"));
  }

  private static Machine renamed(Machine it) {
    return it.toBuilder().name(HOSTILE + it.name()).build();
  }

  private static Vise renamed(Vise it) {
    return it.toBuilder().name(HOSTILE + it.name()).build();
  }

  private void write(Assessment assessment, PeopleUnit unit) throws IOException {
    AssessReports.write(folder, assessment, Invented.facts(unit));
  }

  private List<CSVRecord> csv() throws IOException {
    try (CSVParser parser =
        CSVParser.parse(folder.resolve("assess.csv"), StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
      return parser.getRecords();
    }
  }

  private PDDocument pdf() throws IOException {
    return Loader.loadPDF(folder.resolve("assess.pdf").toFile());
  }

  private XSSFWorkbook book() throws IOException {
    return new XSSFWorkbook(Files.newInputStream(folder.resolve("assess.xlsx")));
  }

  private Map<String, byte[]> bytes() throws IOException {
    Map<String, byte[]> bytes = new TreeMap<>();
    for (String name : List.of("assess.csv", "assess.xlsx", "assess.pdf")) {
      bytes.put(name, Files.readAllBytes(folder.resolve(name)));
    }
    return bytes;
  }

  private static void assertEmbedded(PDDocument document) throws IOException {
    int fonts = 0;
    for (PDPage page : document.getPages()) {
      PDResources resources = page.getResources();
      for (COSName name : resources.getFontNames()) {
        fonts++;
        assertTrue(resources.getFont(name).isEmbedded(), name::getName);
      }
    }
    assertTrue(fonts > 0, "no fonts at all");
  }
}
