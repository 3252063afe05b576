package org.jawroom.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.placement.standing.StandingPairing;
import org.jawroom.report.Opened;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.standing.StandingCsv;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every folder beside this class's resources is a small shop with what its pairings must come to in
 * {@code expected.csv}: any columns of {@code pairings.csv}, compared to the letter; an empty cell
 * is not checked, {@code -} must be empty. Where there are jobs or standing vises, {@code
 * expected-jobs.csv} and {@code expected-standing.csv} say the same of them. Each says in its
 * README where its numbers come from.
 */
class GoldenShopsTest {
  private static final String EXPECTED_JOBS = "expected-jobs.csv";
  private static final String EXPECTED_STANDING = "expected-standing.csv";
  private static final CSVFormat TABLE =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  static Stream<Path> shops() throws IOException, URISyntaxException {
    Path folder = Path.of(GoldenShopsTest.class.getResource("example").toURI()).getParent();
    return Files.list(folder).filter(Files::isDirectory).sorted();
  }

  @ParameterizedTest
  @MethodSource("shops")
  void pairings_ofEachShop_areAsExpected(Path folder) throws Exception {
    List<String> key = List.of("machine", "vise");

    assertEquals(
        List.of(), differences(folder.resolve("expected.csv"), pairings(shop(folder)), key));
  }

  static Stream<Path> shopsWithJobs() throws IOException, URISyntaxException {
    return shops().filter(folder -> Files.exists(folder.resolve(EXPECTED_JOBS)));
  }

  @ParameterizedTest
  @MethodSource("shopsWithJobs")
  void jobs_ofEachShopThatHasThem_areAsExpected(Path folder) throws Exception {
    List<String> key = List.of("job", "machine", "vise");

    assertEquals(List.of(), differences(folder.resolve(EXPECTED_JOBS), jobs(shop(folder)), key));
  }

  static Stream<Path> shopsWithStanding() throws IOException, URISyntaxException {
    return shops().filter(folder -> Files.exists(folder.resolve(EXPECTED_STANDING)));
  }

  @ParameterizedTest
  @MethodSource("shopsWithStanding")
  void standing_ofEachShopThatHasSome_areAsExpected(Path folder) throws Exception {
    List<String> key = List.of("machine", "vise", "x_mm", "y_mm");

    assertEquals(
        List.of(), differences(folder.resolve(EXPECTED_STANDING), standing(shop(folder)), key));
  }

  private static Shop shop(Path folder) throws Exception {
    Reading reading = ShopReader.read(folder, Map.of());
    assertEquals(List.of(), reading.faults());
    return reading.shop().orElseThrow();
  }

  /**
   * @param key the columns that identify a row
   */
  private static List<String> differences(Path file, String text, List<String> key)
      throws IOException {
    Map<String, CSVRecord> found = new HashMap<>();
    records(text).forEach(row -> found.put(key(row, key), row));
    List<String> differences = new ArrayList<>();
    List<CSVRecord> expected = records(Files.readString(file));
    assertFalse(expected.isEmpty());
    for (CSVRecord row : expected) {
      CSVRecord its = found.get(key(row, key));
      for (Map.Entry<String, String> cell : row.toMap().entrySet()) {
        String wanted = cell.getValue().equals("-") ? "" : cell.getValue();
        if (!cell.getValue().isEmpty() && !wanted.equals(its.get(cell.getKey()))) {
          differences.add(
              key(row, key)
                  + " "
                  + cell.getKey()
                  + ": expected "
                  + wanted
                  + ", found "
                  + its.get(cell.getKey()));
        }
      }
    }
    return differences;
  }

  private static String pairings(Shop shop) throws IOException {
    List<Advice> advice = new ArrayList<>();
    shop.machines()
        .forEach(
            machine ->
                shop.vises()
                    .forEach(vise -> advice.add(Advisor.advise(shop.settings(), machine, vise))));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PairingsCsv.write(advice, out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String jobs(Shop shop) throws IOException {
    return Opened.jobsCsv(shop);
  }

  private static String standing(Shop shop) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StandingCsv.write(
        shop.standing().stream()
            .map(standing -> StandingPairing.solve(shop.settings(), standing))
            .toList(),
        out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String key(CSVRecord row, List<String> columns) {
    return String.join(" × ", columns.stream().map(row::get).toList());
  }

  private static List<CSVRecord> records(String text) {
    try {
      return TABLE.parse(new StringReader(text)).getRecords();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
