package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.launch.Main;
import org.jawroom.report.ChartCells;
import org.jawroom.report.Opened;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SurveyCommandTest {
  private static final String HEADER =
      "machine,vise,verdict,margin_mm,best_margin_mm,limited_by,limiting_part,limiting_situation,"
          + "limiting_opening,usable_from_mm,usable_to_mm,missing,in_doubt\n";

  /** Two machines want different vises, one is in doubt, one has nothing. */
  private static final String OLD =
      HEADER
          + "mill,small,fits,3.000,3.000,door,handle,loading,any,0.000,80.000,,\n"
          + "mill,large,no place,-4.500,-4.500,door,screw front,cutting,open,,,,\n"
          + "lathe mill,small,no mount,,,,,,,,,,\n"
          + "lathe mill,large,limited,12.040,-1.000,sill,base,cutting,any,10.000,90.000,,\n"
          + "bench,small,fits,9.000,9.000,sill,base,cutting,any,0.000,80.000,,guards.gap\n"
          + "bench,large,awkward,2.999,2.999,door,handle,loading,any,0.000,150.000,,\n"
          + "offer,small,unknown,,,,,,,,,machines.rear_gap,\n";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void survey_ofASmallReport_isWorkedOutByHand() throws IOException {
    Path report = report("old", OLD);
    assertEquals(0, survey(report.getParent(), "--by", "limited_by", "--top", "2"));
    assertEquals(
        List.of(
            "Report: " + report + ": 7 pairings of 4 machines and 2 vises",
            "Margins: least -4.5, 10 % -4.5, median 3.0, 90 % 12.0, greatest 12.0 mm; 2 without a"
                + " margin",
            "Comfortable: 2 pairings: a vise of use with a margin of 3 mm or more and no reading in"
                + " doubt",
            "Fewest vises: 2 kinds of vise serve every machine that has a comfortable vise (2); no"
                + " fewer do.",
            "Not served: 2 of 4 machines are without a comfortable vise, 1 of them without any vise"
                + " of use.",
            "",
            "By limited_by",
            "  limited_by  Pairings     %  Comfortable  Least  10 %  Median  90 %  Greatest  No"
                + " margin",
            "  door               3  42.9            1   -4.5  -4.5     2.9   3.0       3.0 "
                + "         0",
            "  (blank)            2  28.6            0      -     -       -     -         - "
                + "         2",
            "  ... and 1 more",
            "",
            "What limits",
            "  What limits, by which part  Pairings     %  Least  Median",
            "  door · handle                      2  40.0    2.9     2.9",
            "  sill · base                        2  40.0    9.0     9.0",
            "  ... and 1 more",
            "",
            "Guard by part",
            "  Guard  handle  base  screw front  All",
            "  door        2     0            1    3",
            "  sill        0     2            0    2",
            "",
            "Fewest vises",
            "  Vise   Machines  Only it",
            "  small         1        1",
            "  large         1        1",
            "",
            "Machines without a comfortable vise",
            "  Machine  Vises of use  Best margin",
            "  bench               2          9.0",
            "  offer               0            -"),
        out.toString().lines().toList());
    assertEquals("", err.toString());
  }

  @Test
  void survey_withConditions_countsWhatTheyChoose() throws IOException {
    Path report = report("old", OLD);
    assertEquals(
        0, survey(report, "--where", "margin_mm >= 3mm", "--where", "limited_by=sill", "--all"));
    List<String> lines = out.toString().lines().toList();
    assertEquals("Chosen: 2 pairings with margin_mm>=3mm and limited_by=sill", lines.get(1));
    assertTrue(
        lines.contains("Margins: least 9.0, 10 % 9.0, median 9.0, 90 % 12.0, greatest 12.0 mm"));

    assertTrue(
        lines.contains(
            "Not served: 1 of 2 machines that have a pairing chosen is without a comfortable vise, 0"
                + " of them without any vise of use."),
        out.toString());

    out.getBuffer().setLength(0);
    assertEquals(0, survey(report, "--where", "limited_by=dor"));
    assertTrue(out.toString().contains("Chosen: 0 pairings with limited_by=dor"), out.toString());
    assertTrue(out.toString().contains("Margins: none"), out.toString());
    assertEquals(
        "Note: " + report + " has no limited_by \"dor\"; did you mean \"door\"?",
        err.toString().strip());
  }

  /** The comfort is reached at the margin itself, not below it. */
  @ParameterizedTest
  @CsvSource({"3mm,2", "3.0005mm,1", "2.999 mm,3", "0.118in,3", "0,3", "12.04,1", "12.0401,0"})
  void survey_withAComfort_countsMarginsOfAtLeastIt(String comfort, int comfortable)
      throws IOException {
    Path report = report("old", OLD);
    assertEquals(0, survey(report, "--comfort", comfort));
    assertTrue(
        out.toString().contains("\nComfortable: " + comfortable + " pairing"), out.toString());
  }

  /**
   * A spreadsheet may have written the number in a way of its own: it decides whether it serves.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.000  | 0",
        "12     | 0",
        "''     | 0",
        "-0.001 | 0",
        "(0.5)  | 3",
        "\u22120.5 | 3",
        "12 kg  | 3",
      })
  void survey_ofALoad_readsItAsANumber(String load, int status) throws IOException {
    String row = "mill,small,fits,3.000,3.000,,,,,0.000,80.000,,,";
    Path report =
        report("old", HEADER.replace("in_doubt", "in_doubt,load_left_kg") + row + load + "\n");
    assertEquals(status, survey(report));
    if (status == 0) {
      int comfortable = load.startsWith("-") ? 0 : 1;
      assertTrue(
          out.toString().contains("\nComfortable: " + comfortable + " pairing"), out.toString());
    } else {
      assertEquals(
          report
              + " is no report of jawroom's: row 2, column load_left_kg: \""
              + load
              + "\" is no number of kilograms",
          err.toString().strip());
    }
  }

  @Test
  void survey_ofTwoReports_showsWhatMoved() throws IOException {
    Path old = report("old", OLD);
    Path now =
        report(
            "now",
            OLD.replace("fits,3.000,3.000", "fits,2.000,2.000")
                .replace("no place,-4.500", "fits,4.500")
                .replace("limited,12.040", "limited,13.040")
                .replace("offer,small", "new,small"));
    assertEquals(0, survey(old, now.toString(), "--show", "in"));
    String text = out.toString();
    assertTrue(
        text.contains(
            "Moved: Since "
                + old
                + ": 6 pairings in both, 1 only there, 1 only here. 1 changed the verdict; of 4"
                + " margins under the same verdict 1 shrank and 1 grew: least -0.04, 10 % -0.04,"
                + " median 0.00, 90 % 0.03, greatest 0.03 in."),
        text);
    List<String> lines = text.lines().toList();
    assertTrue(lines.contains("  no place      fits         1"), text);
    assertTrue(lines.contains("  mill     small  fits     0.11  0.07   -0.04"), text);
    assertTrue(lines.contains("  lathe mill  large  limited  0.47  0.51    0.03"), text);
  }

  @Test
  void survey_asCsv_hasEveryGroupExactly() throws IOException {
    Path report = report("old", OLD);
    Path file = folder.resolve("counts.csv");
    assertEquals(
        0, survey(report, "--by", "machine,margin_mm", "--top", "1", "-o", file.toString()));
    assertEquals(
        List.of(
            "machine,margin_mm,pairings,share_percent,comfortable,margins,least_mm,q10_mm,median_mm,"
                + "q90_mm,greatest_mm",
            "mill,3.000,1,14.286,1,1,3.000,3.000,3.000,3.000,3.000",
            "mill,-4.500,1,14.286,0,1,-4.500,-4.500,-4.500,-4.500,-4.500",
            "lathe mill,,1,14.286,0,0,,,,,",
            "lathe mill,12.040,1,14.286,1,1,12.040,12.040,12.040,12.040,12.040",
            "bench,9.000,1,14.286,0,1,9.000,9.000,9.000,9.000,9.000",
            "bench,2.999,1,14.286,0,1,2.999,2.999,2.999,2.999,2.999",
            "offer,,1,14.286,0,0,,,,,"),
        Files.readAllLines(file));
    assertTrue(out.toString().endsWith("\nWritten: " + file + "\n"), out.toString());
    // An older one of its kind is replaced, other columns or not.
    assertEquals(0, survey(report, "-o", file.toString()));
    assertTrue(Files.readString(file).startsWith("verdict,pairings,"));
  }

  @Test
  void survey_asAWorkbook_hasTheListsAndChartsOfTheirCells() throws IOException {
    Path old = report("old", OLD);
    Path now = report("now", OLD.replace("fits,3.000,3.000", "fits,2.000,2.000"));
    Path file = folder.resolve("s.xlsx");
    assertEquals(0, survey(old, now.toString(), "-o", file.toString()));
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      assertEquals(
          List.of(
              "Survey",
              "Counts",
              "Margins",
              "What limits",
              "Guard by part",
              "Fewest vises",
              "Verdicts changed",
              "Margins shrunk",
              "Margins grown",
              "Cautions"),
          Stream.iterate(0, i -> i < book.getNumberOfSheets(), i -> i + 1)
              .map(book::getSheetName)
              .toList());
      XSSFSheet margins = book.getSheet("Margins");
      assertEquals(18, ChartCells.assertShown(book, margins));
      List<String> bars = Opened.rows(margins);
      assertEquals("-5 to -4|1.0|20.0", bars.get(0));
      assertTrue(bars.contains("2 to 3|2.0|40.0"), bars.toString());
      assertTrue(bars.contains("9 to 10|1.0|20.0"), bars.toString());
      assertEquals(3, ChartCells.assertShown(book, book.getSheet("What limits")));
      assertEquals(
          List.of("mill|small|fits|3.0|2.0|-1.0"), Opened.rows(book.getSheet("Margins shrunk")));
    }
  }

  @Test
  void survey_ofNamesThatStartAFormula_writesTexts() throws IOException {
    Path report = report("old", OLD.replace("mill,", "=1+1,").replace("sill,", "@x,"));
    Path csv = folder.resolve("s.csv");
    Path book = folder.resolve("s.xlsx");
    assertEquals(0, survey(report, "--by", "machine,limited_by", "-o", csv.toString()));
    assertEquals(0, survey(report, "--by", "machine,limited_by", "-o", book.toString()));
    assertTrue(Files.readString(csv).contains("\n'=1+1,door,"), Files.readString(csv));
    assertTrue(Files.readString(csv).contains(",'@x,"), Files.readString(csv));
    int[] found = {0};
    try (XSSFWorkbook read = new XSSFWorkbook(Files.newInputStream(book))) {
      read.forEach(
          sheet ->
              Opened.eachCell(
                  sheet,
                  cell -> {
                    assertFalse(cell.getCellType() == CellType.FORMULA, sheet.getSheetName());
                    boolean starts =
                        cell.getCellType() == CellType.STRING
                            && cell.getStringCellValue().startsWith("=1+1");
                    found[0] += starts ? 1 : 0;
                  }));
    }
    assertTrue(found[0] > 0, "the name stands in " + found[0] + " cells");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--by machin                  | has no column \"machin\"; did you mean \"machine\"?",
        "--by ,verdict                | has no column \"\"",
        "--where limited=door         | has no column \"limited\"; did you mean \"limited_by\"?",
        "--where machine==mill        | --where \"machine==mill\" has the sign ==; write machine=mill",
        "--where machine!==mill       | --where \"machine!==mill\" has the sign !==; write machine!=mill",
        "--where machine==            | --where \"machine==\" has the sign ==; write machine=",
        "--where margin_mm=<5         | --where \"margin_mm=<5\" has the sign =<; write margin_mm<=5",
        "--where margin_mm=>5         | --where \"margin_mm=>5\" has the sign =>; write margin_mm>=5",
        "--where machine<>mill        | has the sign <>, which is none of = != < <= > >=",
        "--where verdict              | --where \"verdict\" is no condition; write a column,",
        "--where =fits                | --where \"=fits\" is no condition; write a column,",
        "--where verdict<fits         | asks for an order, which only lengths have",
        "--where margin_mm<           | compares with nothing; write a length after <",
        "--where margin_mm<wide       | --where \"margin_mm<wide\" is not a",
        "--where margin_mm>1,5        | --where \"margin_mm>1,5\" ",
        "--top 0                      | --top 0 would print nothing; write 1 or more",
        "--top -3                     | --top -3 would print nothing; write 1 or more",
        "--top many                   | \"many\" is not a whole number",
        "--comfort -1mm               | --comfort \"-1mm\" is below 0",
        "--comfort wide               | --comfort \"wide\" is not a",
        "--show cm                    | option --show: \"cm\" is not possible here; write mm or in",
        "FOLDER/old FOLDER/old        | a survey is of one report or of two, not of 3",
        "-o FOLDER/survey.pdf         | survey.pdf should end in .xlsx or .csv.",
        "-o -                         | - should end in .xlsx or .csv.",
        "-o FOLDER/old/pairings.csv   | is read by this run and would be overwritten",
      })
  void survey_wronglyUsed_isOneLineAndWritesNothing(String options, String message)
      throws IOException {
    Path report = report("old", OLD);
    String[] args = options.replace("FOLDER", folder.toString()).split(" ");
    assertEquals(2, survey(report, args));
    List<String> lines = err.toString().lines().toList();
    assertTrue(lines.get(0).contains(message), err.toString());
    assertEquals(List.of("See 'jawroom survey --help'."), lines.subList(1, lines.size()));
    assertEquals("", out.toString());
    assertEquals(List.of("old", "old/pairings.csv"), files());
    assertEquals(OLD, Files.readString(report));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''                                 | is no report of jawroom's: it is empty",
        "machine,vise                       | is no report of jawroom's: it has no columns verdict,",
        "H mill,small,fits,3.0x,,,,,,,,,    | row 2, column margin_mm: \"3.0x\" is no number of",
        "H mill,small,fit,3,,,,,,,,,        | row 2, column verdict: \"fit\" is none of fits,",
        "H mill,,fits,3,,,,,,,,,            | row 2, column vise: is blank",
        "H mill,small,fits,,,door,x,,,,,,   | row 2, column margin_mm: is blank, but limited_by is",
        "H mill,small,fits,3,,door,,,,,,,   | row 2, column limiting_part: is blank",
        "H mill,small,fits,3                | row 2 has 4 cells, but the header has 13",
        "H ,,,3,,,,,,,,,                    | row 2, column verdict: is none of fits,",
        "sep=                               | row 1 names no character that can stand between cells;",
        "sep=x                              | row 1 names no character that can stand between cells;",
      })
  void survey_ofAFileThatIsNoReport_isOneLine(String content, String message) throws IOException {
    Path report = report("old", content.replace("H ", HEADER));
    assertEquals(3, survey(report, "-o", folder.resolve("s.csv").toString()));
    assertEquals(1, err.toString().lines().count(), err.toString());
    assertTrue(err.toString().startsWith(report + " is no report of jawroom's: "), err.toString());
    assertTrue(err.toString().contains(message), err.toString());
    assertEquals(List.of("old", "old/pairings.csv"), files());
  }

  @Test
  void survey_ofAPairingTwice_isRefused() throws IOException {
    Path report = report("old", OLD + OLD.substring(HEADER.length()).lines().findFirst().get());
    assertEquals(3, survey(report));
    assertEquals(
        report + " is no report of jawroom's: it has the pairing mill x small twice",
        err.toString().strip());
  }

  @Test
  void survey_ofWhatCannotBeRead_saysWhat() throws IOException {
    Path folderWithout = Files.createDirectory(folder.resolve("empty"));
    assertEquals(3, survey(folderWithout));
    assertTrue(
        err.toString().startsWith(folderWithout.resolve("pairings.csv") + " could not be read: "),
        err.toString());
    err.getBuffer().setLength(0);
    assertEquals(3, survey(Path.of("reports/matrix.xlsx")));
    assertEquals(
        "reports/matrix.xlsx is a workbook, whose figures are rounded for people; name the"
            + " pairings.csv that was written beside it, or its folder",
        err.toString().strip());
  }

  @Test
  void survey_ontoAnotherFile_isRefusedAndLeavesIt() throws IOException {
    Path report = report("old", OLD);
    for (String name : List.of("mine.csv", "mine.xlsx")) {
      Path mine = Files.writeString(folder.resolve(name), "a,b,c,d,e,f\n1,2,3,4,5,6\n");
      assertEquals(3, survey(report, "-o", mine.toString()));
      assertTrue(err.toString().contains("that is no such report of jawroom"), err.toString());
      assertEquals("a,b,c,d,e,f\n1,2,3,4,5,6\n", Files.readString(mine));
    }
  }

  /** As spreadsheets save "Unicode text". */
  @ParameterizedTest
  @ValueSource(strings = {"UTF-16LE", "UTF-16BE"})
  void survey_ofAReportInUtf16WithItsMark_countsTheSame(String charset) throws IOException {
    Path report = report("old", OLD);
    assertEquals(0, survey(report, "--by", "verdict"));
    String plain = out.toString();
    String saved = "\ufeff" + OLD.replace(',', '\t').replace("\n", "\r\n");
    Files.write(report, saved.getBytes(charset));
    out.getBuffer().setLength(0);
    assertEquals(0, survey(report, "--by", "verdict"), err::toString);
    assertEquals(plain, out.toString());
    Files.write(report, saved.substring(1).getBytes(charset));
    assertEquals(3, survey(report, "--by", "verdict"), err::toString);
  }

  /** As spreadsheets save it, and with columns of one's own. */
  @ParameterizedTest
  @ValueSource(strings = {"", "sep=;\r\n", "sep=;\n", "\"sep=;\"\r", "SEP=;;;;;;;;;;;;;;;;\r\n"})
  void survey_ofASavedReport_countsTheSame(String firstLine) throws IOException {
    Path report = report("old", OLD);
    assertEquals(0, survey(report, "--by", "verdict"));
    String plain = out.toString();
    StringBuilder saved = new StringBuilder("\ufeff" + firstLine);
    OLD.lines()
        .forEach(
            line ->
                saved
                    .append(line.replace(',', ';').replaceAll("(?<=[0-9])[.](?=[0-9])", ","))
                    .append(line.startsWith("machine") ? ";hall;;" : ";north;;")
                    .append("\r\n"));
    saved.append(";;;;;;;;;;;;;;;\r\n; ;;\r\n\r\n;;;;;;;;;;;;;;;;;;;\r\n");
    Files.writeString(report, saved);
    out.getBuffer().setLength(0);
    assertEquals(0, survey(report, "--by", "verdict"), err::toString);
    assertEquals(plain, out.toString());
    out.getBuffer().setLength(0);
    assertEquals(0, survey(report, "--by", "hall", "--where", "hall=north"), err::toString);
    assertTrue(out.toString().contains("\n  north         7  100.0 "), out.toString());
  }

  /** The line that declares the delimiter is a row of the file, and so is a blank one. */
  @Test
  void survey_ofADeclaredDelimiter_countsRowsOfTheFile() throws IOException {
    String rows = HEADER + ",,,,,,,,,,,,\nmill,small,fits,3.0x,,,,,,,,,\n";
    Path report = report("old", "sep=|\n" + rows.replace(',', '|'));
    assertEquals(3, survey(report));
    assertEquals(
        report
            + " is no report of jawroom's: row 4, column margin_mm: \"3.0x\" is no number of"
            + " millimetres",
        err.toString().strip());
  }

  /** The space makes it part of the value. */
  @Test
  void survey_whereAValueBeginsWithASign_takesItAfterASpace() throws IOException {
    Path report = report("old", OLD.replace("sill", "<sill>"));
    assertEquals(0, survey(report, "--where", "limited_by= <sill>"));
    assertTrue(out.toString().contains("Chosen: 2 pairings with limited_by=<sill>"), out::toString);
  }

  private Path report(String name, String content) throws IOException {
    Path file = Files.createDirectories(folder.resolve(name)).resolve("pairings.csv");
    return Files.writeString(file, content);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.skip(1).map(file -> folder.relativize(file).toString()).sorted().toList();
    }
  }

  private int survey(Path report, String... options) {
    String[] args =
        Stream.concat(Stream.of("survey", report.toString()), Stream.of(options))
            .toArray(String[]::new);
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
