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
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Pairing;
import org.jawroom.report.PairingsCsv;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every folder beside this class's resources is a small shop with what its pairings must come to in {@code
 * expected.csv}: any columns of {@code pairings.csv}, compared to the letter; an empty cell is not checked,
 * {@code -} must be empty. Each says in its README where its numbers come from.
 */
class GoldenShopsTest {
  private static final CSVFormat TABLE =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  static Stream<Path> shops() throws IOException, URISyntaxException {
    Path folder = Path.of(GoldenShopsTest.class.getResource("example").toURI()).getParent();
    return Files.list(folder).filter(Files::isDirectory).sorted();
  }

  @ParameterizedTest
  @MethodSource("shops")
  void pairings_ofEachShop_areAsExpected(Path folder) throws Exception {
    Reading reading = ShopReader.read(folder, Map.of());
    assertEquals(List.of(), reading.faults());
    Map<String, CSVRecord> found = new HashMap<>();
    records(pairings(reading.shop().orElseThrow())).forEach(row -> found.put(key(row), row));

    List<String> differences = new ArrayList<>();
    List<CSVRecord> expected = records(Files.readString(folder.resolve("expected.csv")));
    assertFalse(expected.isEmpty());
    for (CSVRecord row : expected) {
      CSVRecord pairing = found.get(key(row));
      for (Map.Entry<String, String> cell : row.toMap().entrySet()) {
        String wanted = cell.getValue().equals("-") ? "" : cell.getValue();
        if (!cell.getValue().isEmpty() && !wanted.equals(pairing.get(cell.getKey()))) {
          differences.add(
              key(row) + " " + cell.getKey() + ": expected " + wanted + ", found "
                  + pairing.get(cell.getKey()));
        }
      }
    }
    assertEquals(List.of(), differences);
  }

  private static String pairings(Shop shop) throws IOException {
    List<Advice> advice = new ArrayList<>();
    shop.machines()
        .forEach(
            machine ->
                shop.vises()
                    .forEach(
                        vise -> advice.add(Advisor.advise(shop.settings(), Pairing.solve(shop.settings(), machine, vise)))));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PairingsCsv.write(advice, out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String key(CSVRecord row) {
    return row.get("machine") + " × " + row.get("vise");
  }

  private static List<CSVRecord> records(String text) {
    try {
      return TABLE.parse(new StringReader(text)).getRecords();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
