package org.jawroom.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.csv.RemediesCsv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parquet holds the values of the CSV of one machine, read by another library (Commons CSV). */
class ParquetCopyTest {
  private static final Path DEMO = Path.of("inputs/demo");

  @TempDir private Path folder;

  @Test
  void demo_readBack_hasTheValuesOfTheCsv() throws IOException {
    compared(DEMO);
  }

  /** Quotes, commas, a backslash and blanks at an end must survive. */
  @Test
  void namesThatCsvQuotes_areReadBack() throws IOException {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    try (var files = Files.list(DEMO)) {
      for (Path file : files.toList()) {
        String text =
            Files.readString(file)
                .replaceAll(
                    "(?m)(^|,)plain 160(?=,|$)",
                    "$1" + Matcher.quoteReplacement("\"6\"\" \\, \"\"wide\"\" \\\""));
        Files.writeString(tables.resolve(file.getFileName()), text);
      }
    }
    compared(tables);
  }

  private void compared(Path tables) throws IOException {
    Path one = SparkRun.oneMachine(tables, folder.resolve("one"));
    Path out = folder.resolve("out");
    SparkRun run = SparkRun.local(tables, out, "--parquet");
    assertEquals(0, run.status(), run.err());
    SparkRun.assertSame(one, out, PairingsCsv.FILE);
    try (SparkSession session = SparkSession.builder().master("local[2]").getOrCreate()) {
      for (String report : List.of(PairingsCsv.FILE, RemediesCsv.FILE)) {
        Dataset<Row> rows =
            session.read().parquet(out.resolve(report.replace(".csv", ".parquet")).toString());
        List<List<String>> csv = csv(one.resolve(report));
        assertEquals(csv.get(0), List.of(rows.columns()));
        List<String> expected =
            csv.subList(1, csv.size()).stream().map(Object::toString).sorted().toList();
        assertTrue(expected.size() > 10, report);
        assertEquals(
            expected,
            rows.collectAsList().stream()
                .map(ParquetCopyTest::cells)
                .map(Object::toString)
                .sorted()
                .toList());
      }
      assertEquals(
          "decimal(18,3)",
          session
              .read()
              .parquet(out.resolve("pairings.parquet").toString())
              .schema()
              .apply("margin_mm")
              .dataType()
              .sql()
              .toLowerCase(java.util.Locale.ROOT));
    }
  }

  private static List<List<String>> csv(Path file) throws IOException {
    try (CSVParser parser = CSVParser.parse(Files.readString(file), CSVFormat.RFC4180)) {
      return parser.getRecords().stream()
          .map(row -> row.stream().collect(Collectors.toList()))
          .toList();
    }
  }

  private static List<String> cells(Row row) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      Object cell = row.get(i);
      if (cell == null) {
        cells.add("");
      } else {
        cells.add(cell instanceof BigDecimal number ? number.toPlainString() : cell.toString());
      }
    }
    return cells;
  }
}
