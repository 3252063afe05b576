package org.jawroom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The reports of the demo shop that the project keeps, made again. */
class DemoReportsTest {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
  private static final Path KEPT = Path.of("reports");

  @TempDir private Path folder;

  @Test
  void reports_madeAgain_areTheOnesKept() throws IOException {
    matrix(Path.of("inputs", "demo"));

    assertTablesAreKept();
    // Entry by entry: how well it is packed may differ between machines, what is in it may not.
    assertEquals(entries(KEPT.resolve("matrix.xlsx")), entries(folder.resolve("matrix.xlsx")));
  }

  @Test
  void reports_fromTheWorkbook_areTheSameButForWhatWasRead() throws IOException {
    matrix(Path.of("inputs", "demo.xlsx"));

    assertTablesAreKept();
    Map<String, String> kept = entries(KEPT.resolve("matrix.xlsx"));
    Map<String, String> made = entries(folder.resolve("matrix.xlsx"));
    Set<String> different =
        kept.keySet().stream()
            .filter(name -> !kept.get(name).equals(made.get(name)))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(kept.keySet(), made.keySet());
    different.remove("xl/sharedStrings.xml");
    assertEquals(1, different.size(), () -> "only the sheet Inputs may differ, but: " + different);
  }

  @Test
  void readmesPicture_madeAgain_isTheOneKept() throws IOException {
    Path picture = folder.resolve("drawing.svg");
    StringWriter said = new StringWriter();
    PrintWriter writer = new PrintWriter(said, true);
    String[] args = {
      "draw", "inputs/demo", "small closed mill", "plain 160", "-o", picture.toString()
    };
    assertEquals(0, Main.run(args, writer, writer), said::toString);
    // How wide letters run differs by a hair between Java versions, so places are compared to half
    // a point.
    String kept = read(Path.of("src/docs/drawing.svg"));
    String made = read(picture);
    assertEquals(NUMBER.matcher(kept).replaceAll("#"), NUMBER.matcher(made).replaceAll("#"));
    List<Double> places = numbers(kept);
    List<Double> again = numbers(made);
    for (int i = 0; i < places.size(); i++) {
      assertEquals(places.get(i), again.get(i), 0.5, "number " + i);
    }
  }

  private static List<Double> numbers(String svg) {
    return NUMBER.matcher(svg).results().map(found -> Double.parseDouble(found.group())).toList();
  }

  @Test
  void demo_hasEveryVerdict() throws IOException {
    Set<String> verdicts =
        Files.readAllLines(KEPT.resolve("pairings.csv")).stream()
            .skip(1)
            .map(line -> line.split(",")[2])
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(
        "[awkward, fits, limited, measure, no mount, no place, unknown]", verdicts.toString());
  }

  private void assertTablesAreKept() throws IOException {
    for (String name : List.of("pairings.csv", "remedies.csv", "unknowns.csv", "jobs.csv")) {
      assertEquals(read(KEPT.resolve(name)), read(folder.resolve(name)), name);
    }
  }

  private void matrix(Path input) {
    StringWriter said = new StringWriter();
    PrintWriter writer = new PrintWriter(said, true);
    String[] args = {"matrix", input.toString(), "-o", folder.toString()};
    assertEquals(0, Main.run(args, writer, writer), said::toString);
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file);
  }

  private static Map<String, String> entries(Path workbook) throws IOException {
    Map<String, String> entries = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(workbook))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        entries.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return entries;
  }
}
