package org.jawroom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Texts that a spreadsheet would run, put wherever tables hold text, and then looked for in all
 * that comes out. The starts are those of OWASP, "CSV Injection"
 * (owasp.org/www-community/attacks/CSV_Injection), also after what it names besides: quotes,
 * separators, white space.
 */
class FormulaInjectionTest {

  /** Stands in every payload, so that it is found wherever it comes out. */
  private static final String MARK = "zqx";

  private static final List<String> STARTS =
      List.of("=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20");

  /** One or several, as the places of vises side by side are listed. */
  private static final Pattern NUMBERS =
      Pattern.compile("-?[0-9]+(\\.[0-9]+)?(;-?[0-9]+(\\.[0-9]+)?)*");

  private static final Pattern RUNS =
      Pattern.compile("^[\\t\\r\\n]|(?:^|;)[\\s\\p{Z}\"']*(?<!')[=+\\-@\uff1d\uff0b\uff0d\uff20]");

  @TempDir private Path folder;
  private Path out;

  /** What may not start a name, at its start and after whatever is skipped before it. */
  private static List<String> payloads() {
    List<String> payloads = new ArrayList<>();
    for (String start : STARTS) {
      String formula = start + "cmd|' /C " + MARK + "'!A0";
      for (String before : List.of("", "\"", "'", "a;", "a; \"")) {
        payloads.add(before + formula);
      }
    }
    payloads.add("=HYPERLINK(\"http://" + MARK + ".invalid\",\"x\")");
    payloads.add("=DDE(\"cmd\";\"/C " + MARK + "\";\"x\")");
    return payloads;
  }

  /** The same after white space, which names may not hold at all. */
  private static List<String> spaced() {
    List<String> spaced = new ArrayList<>();
    for (String start : STARTS) {
      for (String before : List.of("\t", "\r", "\n", "a\t", "a\r\n")) {
        spaced.add(before + start + MARK);
      }
    }
    return spaced;
  }

  @Test
  void names_thatStartAFormula_areRefusedInEveryTable() throws Exception {
    List<String> all = new ArrayList<>(payloads());
    all.addAll(spaced());
    for (String payload : all) {
      Path tables = new Tables().named(payload).described("plain").write("refused");
      String err = run(1, "check", tables.toString());
      for (String column :
          List.of(
              "machines.csv row 2, column machine",
              "guards.csv row 2, column guard",
              "vises.csv row 2, column vise",
              "vise_parts.csv row 2, column part",
              "mounts.csv row 2, column mount",
              "jobs.csv row 2, column job")) {
        assertTrue(err.contains(column), payload + "\n" + err);
      }
    }
  }

  /** Free text may start as it likes; names may hold formulas further on, markup and links. */
  @Test
  void texts_thatWouldRun_areTextInEveryOutput() throws Exception {
    List<String> texts = new ArrayList<>(payloads());
    texts.addAll(spaced());
    texts.add("<script>" + MARK + "</script>");
    Path tables =
        new Tables()
            .named("a =cmd|' /C " + MARK + "'!A0 <b onclick=1> http://x.invalid/")
            .described(String.join(" ", texts), texts.toArray(String[]::new))
            .write("tables");
    runAll(tables);
    int csv = 0;
    int books = 0;
    for (Path file : written()) {
      String name = file.getFileName().toString();
      if (name.endsWith(".csv")) {
        csv += assertTexts(Files.readString(file), name);
      } else if (name.endsWith(".xlsx")) {
        assertTexts(file);
        books++;
      } else if (name.endsWith(".pdf")) {
        assertNothingActs(file);
      } else if (name.endsWith(".svg")) {
        assertPlainDrawing(file);
      } else if (name.endsWith(".html")) {
        assertPlainPage(Files.readString(file));
      }
    }
    assertTrue(csv > 5, "the texts came out in " + csv + " cells");
    assertEquals(3, books);
  }

  /** A report may come from anywhere, and its names were never looked at. */
  @Test
  void names_ofAnotherReport_areTextInWhatIsPrinted() throws Exception {
    Path tables = new Tables().named("mill").described("plain").write("tables");
    run(0, "matrix", tables.toString(), "-o", out("r").toString());
    Path report = out("r").resolve("pairings.csv");
    String sound = Files.readString(report);
    String other = Files.createDirectory(out("s")).toString();
    Files.copy(report, out("s").resolve("pairings.csv"));
    List<String> all = new ArrayList<>(payloads());
    all.addAll(spaced());
    all.add("\u202e" + MARK + "\u001b[31m");
    int cells = 0;
    for (String payload : all) {
      String quoted = '"' + payload.replace("\"", "\"\"") + '"';
      Files.writeString(report, sound.replace("\nmill,", "\n" + quoted + ","));
      cells += assertTexts(printed("compare", out("r").toString(), other, "--csv"), "csv");
      String survey = out("survey.csv").toString();
      String[] surveyed = {"survey", other, report.toString(), "--by", "machine", "-o", survey};
      for (String people :
          List.of(printed("compare", out("r").toString(), other), printed(surveyed))) {
        assertTrue(people.contains(MARK), people);
        assertNoOrders(people);
      }
      cells += assertTexts(Files.readString(out("survey.csv")), "survey.csv");
    }
    String[] book = {
      "survey", report.toString(), "--by", "machine", "-o", out("survey.xlsx").toString()
    };
    assertNoOrders(printed(book));
    assertTexts(out("survey.xlsx"));
    assertTrue(cells >= 2 * all.size(), "the names came out in " + cells + " cells");
  }

  /** Files are named by whoever runs the tool, never by a table, so that no name can lead away. */
  @Test
  void names_thatArePaths_nameNoFile() throws Exception {
    for (String name : List.of("../../../escaped", "/escaped", "C:\\escaped", "CON", "escaped.")) {
      Path tables = new Tables().named(name).described("plain").write("paths");
      Path reports = folder.resolve("paths-out");
      String[] pair = {tables.toString(), Tables.name(1), Tables.name(3)};
      run(0, "plan", pair[0], "-o", reports.toString(), "--cards");
      run(0, "card", pair[0], pair[1], pair[2], "-o", reports.resolve("card.pdf").toString());
      run(0, "draw", pair[0], pair[1], pair[2], "-o", reports.resolve("d.svg").toString());
      assertEquals(
          List.of("card.pdf", "cards.pdf", "d.svg", "plan.csv", "plan.xlsx"), names(reports));
      assertEquals(List.of("paths", "paths-out"), names(folder));
    }
  }

  /** As long as a file system lets a name be, and longer. */
  @Test
  void draw_intoAFileOfALongName_isWrittenOrOneLine() throws Exception {
    Path tables = new Tables().named("mill").described("plain").write("tables");
    Path longest = folder.resolve("n".repeat(251) + ".svg");
    run(0, "draw", tables.toString(), Tables.name(1), Tables.name(3), "-o", longest.toString());
    assertTrue(Files.isRegularFile(longest));
    String longer = folder.resolve("n".repeat(252) + ".svg").toString();
    String line = run(3, "draw", tables.toString(), Tables.name(1), Tables.name(3), "-o", longer);
    assertEquals(longer + " could not be written: File name too long\n", line);
    assertEquals(2, names(folder).size());
  }

  private static List<String> names(Path directory) throws IOException {
    try (Stream<Path> all = Files.list(directory)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  private void runAll(Path tables) throws Exception {
    String machine = Tables.name(1);
    String vise = Tables.name(3);
    String t = tables.toString();
    out = Files.createDirectory(folder.resolve("out"));
    for (String[] command :
        new String[][] {
          {"check", t},
          {"matrix", t, "-o", out("m").toString(), "--drawings"},
          {"assess", t, "-o", out("a").toString()},
          {"plan", t, "-o", out("p").toString(), "--cards"},
          {"explain", t, machine, vise},
          {"explain", t, machine, vise, "--json"},
          {"explain", t, machine, vise, "--job", Tables.name(6)},
          {"draw", t, machine, vise, "-o", out("d.svg").toString()},
          {"draw", t, machine, vise, "-o", out("d.pdf").toString()},
          {"card", t, machine, vise, "-o", out("c.pdf").toString()},
          {"page", t, "-o", out("page.html").toString()},
          {"compare", out("m").toString(), t, "--clearance", "9mm"}
        }) {
      assertNoOrders(printed(command));
    }
    Files.writeString(
        out("compared.csv"),
        printed("compare", out("m").toString(), t, "--csv", "--clearance", "9mm"));
  }

  private Path out(String name) {
    return folder.resolve("out").resolve(name);
  }

  private List<Path> written() throws IOException {
    try (Stream<Path> all = Files.walk(folder.resolve("out"))) {
      return all.filter(Files::isRegularFile).toList();
    }
  }

  /** How many of its cells hold one of the payloads. */
  private static int assertTexts(String csv, String name) throws IOException {
    int found = 0;
    try (CSVParser parser = CSVParser.parse(new StringReader(csv), CSVFormat.RFC4180)) {
      for (CSVRecord record : parser) {
        for (String cell : record) {
          assertTrue(
              NUMBERS.matcher(cell).matches() || !RUNS.matcher(cell).find(), name + ": " + cell);
          found += cell.contains(MARK) ? 1 : 0;
        }
      }
    }
    return found;
  }

  private static void assertTexts(Path workbook) throws Exception {
    try (OPCPackage parts = OPCPackage.open(workbook.toFile(), PackageAccess.READ)) {
      for (PackagePart part : parts.getParts()) {
        String type = part.getContentType();
        assertFalse(type.matches("(?i).*(external|vba|ole|activex).*"), type);
        if (!part.isRelationshipPart()) {
          for (PackageRelationship one : part.getRelationships()) {
            assertEquals(TargetMode.INTERNAL, one.getTargetMode(), one.getTargetURI().toString());
          }
        }
        if (type.endsWith("xml") && !type.contains("core-properties")) {
          String xml = new String(part.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
          assertFalse(
              Pattern.compile("<(f|formula[12]?|definedName)[ >][^<]*" + MARK).matcher(xml).find(),
              part.toString());
          assertFalse(xml.contains("<ddeLink") || xml.contains("<oleObject"), part.toString());
        }
      }
    }
    int found = 0;
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.STRING) {
              found += cell.getStringCellValue().contains(MARK) ? 1 : 0;
            }
          }
        }
      }
    }
    assertTrue(found > 0, workbook + " holds none of the texts");
  }

  private static void assertNothingActs(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertNull(document.getDocumentCatalog().getOpenAction());
      assertNull(document.getDocumentCatalog().getNames());
      assertNull(document.getDocumentCatalog().getAcroForm());
      for (PDPage page : document.getPages()) {
        assertEquals(List.of(), page.getAnnotations());
      }
    }
  }

  private static void assertPlainDrawing(Path svg) throws Exception {
    NodeList all =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(svg.toFile())
            .getElementsByTagName("*");
    Set<String> elements = new LinkedHashSet<>();
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      elements.add(element.getTagName());
      for (int j = 0; j < element.getAttributes().getLength(); j++) {
        String attribute = element.getAttributes().item(j).getNodeName();
        assertFalse(attribute.matches("on.*|(xlink:)?href"), attribute);
      }
    }
    elements.retainAll(
        List.of("script", "a", "image", "use", "foreignObject", "animate", "set", "style"));
    assertEquals(Set.of(), elements);
  }

  /** The texts stand in the data alone, and nothing in there can end it. */
  private static void assertPlainPage(String page) {
    int start = page.indexOf(">", page.indexOf("application/json")) + 1;
    int end = page.indexOf("</script>", start);
    String data = page.substring(start, end);
    assertTrue(data.contains(MARK));
    assertFalse(data.contains("<") || data.contains(">"), "markup in the data");
    assertFalse((page.substring(0, start) + page.substring(end)).contains(MARK));
  }

  /** Nothing in it steers a terminal, or turns round what it shows. */
  private static void assertNoOrders(String text) {
    assertTrue(
        text.chars()
            .noneMatch(
                one ->
                    Character.isISOControl(one) && "\r\n\t".indexOf(one) < 0
                        || Character.getType(one) == Character.FORMAT),
        text);
  }

  private String printed(String... args) {
    StringWriter said = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Main.run(args, new PrintWriter(said, true), new PrintWriter(err, true));
    assertEquals(0, status, String.join(" ", args) + "\n" + err);
    return said.toString();
  }

  private static String run(int status, String... args) {
    StringWriter err = new StringWriter();
    int found = Main.run(args, new PrintWriter(new StringWriter()), new PrintWriter(err, true));
    assertEquals(status, found, String.join(" ", args) + "\n" + err);
    return err.toString();
  }

  /**
   * A shop with one text for all names, distinguished by a number behind it, and one for the rest.
   */
  private final class Tables {
    private static String name = "";
    private String free = "";
    private List<String> lookedFor = List.of();

    Tables named(String text) {
      name = text;
      return this;
    }

    Tables described(String text, String... looked) {
      free = text;
      lookedFor = List.of(looked);
      return this;
    }

    static String name(int number) {
      return number == 1 ? name : name + number;
    }

    Path write(String directory) throws IOException {
      Path tables = folder.resolve(directory);
      Files.createDirectories(tables);
      String machine =
          ",xy,900,400,600,400,3,14,100,120,80,90,90,100,500,rule,"
              + quoted(String.join(",", lookedFor))
              + ","
              + quoted(free)
              + "\n";
      table(
          tables,
          "machines",
          "machine,status,description,table_moves,table_length,table_width,travel_x,travel_y,slot_count,"
              + "slot_width,slot_pitch,front_gap,rear_gap,left_gap,right_gap,nose_min,nose_max,source,"
              + "looked_for,measured\n"
              + quoted(name(1))
              + ",owned,"
              + quoted(free)
              + machine
              + quoted(name(2))
              + ",candidate,"
              + quoted(free)
              + machine.replace("120,80", "120,"));
      table(
          tables,
          "guards",
          "machine,guard,side,gap\n"
              + quoted(name(1))
              + ","
              + quoted(name(1))
              + ",rear,60\n"
              + quoted(name(2))
              + ","
              + quoted(name(2))
              + ",rear,\n");
      String vise =
          ",125,40,55,125,165,55,285,24,48,32,none,30,30,38,22,none,,140,85,42,17,caliper,"
              + quoted(free)
              + "\n";
      table(
          tables,
          "vises",
          "vise,description,jaw_width,jaw_height,bed_height,opening_max,base_width,rear_reach,front_reach,"
              + "fixed_jaw_thickness,moving_jaw_thickness,rear_projection_closed,rear_projection_open,"
              + "front_projection_closed,front_projection_open,screw_height,screw_diameter,handle_radius,"
              + "handle_depth,bolt_spacing,bolt_u,bolt_hole_u,bolt_hole_v,source,measured\n"
              + quoted(name(3))
              + ","
              + quoted(free)
              + vise
              + quoted(name(4))
              + ","
              + quoted(free)
              + vise);
      table(
          tables,
          "vise_parts",
          "vise,part,u_min_closed,u_max_closed,v_min,v_max,w_min,w_max\n"
              + quoted(name(3))
              + ","
              + quoted(name(1))
              + ",10,20,80,100,10,50\n");
      table(
          tables,
          "mounts",
          "vise,mount,u,v,hole_u,hole_v\n"
              + quoted(name(4))
              + ","
              + quoted(name(1))
              + ",60,0,40,18\n");
      table(
          tables,
          "jobs",
          "job,part_length,part_width,part_height\n" + quoted(name(6)) + ",80,60,30\n");
      return tables;
    }

    private static void table(Path tables, String name, String text) throws IOException {
      Files.writeString(tables.resolve(name + ".csv"), text);
    }

    private static String quoted(String text) {
      return '"' + text.replace("\"", "\"\"") + '"';
    }
  }
}
