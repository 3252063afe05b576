package org.jawroom.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.shop.Shop;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.TableSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop in inches and fractions, and the same in bare millimetres, come to the same outcomes. */
class TwoUnitsTest {
  @TempDir private Path folder;

  @Test
  void outcomes_inchesAndMillimetres_areTheSame() throws Exception {
    Path inches = inches();
    for (String table : List.of("machines", "vises")) {
      Path file = inches.resolve(table + ".csv");
      String converted = converted(TableSpec.named(table).orElseThrow(), Files.readString(file));
      assertNotEquals(Files.readString(file), converted);
      Files.writeString(folder.resolve(table + ".csv"), converted);
    }
    Files.writeString(folder.resolve("settings.csv"), "setting,value\nunit,mm\nclearance,6.35\n");

    assertEquals(outcomes(inches), outcomes(folder));
  }

  private static List<String> outcomes(Path input) throws Exception {
    Shop shop = ShopReader.read(input, Map.of()).shop().orElseThrow();
    List<String> outcomes = new ArrayList<>();
    shop.machines()
        .forEach(
            machine ->
                shop.vises()
                    .forEach(
                        vise -> {
                          Outcome outcome = Pairing.solve(shop.settings(), machine, vise);
                          outcomes.add(
                              outcome.verdict()
                                  + " "
                                  + outcome.bestMargin()
                                  + " "
                                  + outcome.recommended()
                                  + " "
                                  + outcome.usableOpening());
                        }));
    return outcomes;
  }

  /** Every length in bare millimetres. */
  private static String converted(TableSpec table, String text) throws IOException, BadCell {
    List<CSVRecord> rows = CSVFormat.RFC4180.parse(new StringReader(text)).getRecords();
    StringWriter converted = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(new PrintWriter(converted), CSVFormat.RFC4180)) {
      printer.printRecord(rows.get(0));
      for (CSVRecord row : rows.subList(1, rows.size())) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
          CellKind kind = table.column(rows.get(0).get(i)).orElseThrow().kind();
          cells.add(isLength(kind, row.get(i)) ? millimetres(row.get(i)) : row.get(i));
        }
        printer.printRecord(cells);
      }
    }
    return converted.toString();
  }

  private static boolean isLength(CellKind kind, String text) {
    boolean length =
        kind == CellKind.LENGTH || kind == CellKind.SIZE || kind == CellKind.POSITIVE_SIZE;
    return length && !text.isEmpty() && !text.equals("none");
  }

  private static String millimetres(String text) throws BadCell {
    long value = Lengths.parse(text, Unit.IN, false).value();
    return BigDecimal.valueOf(value).divide(BigDecimal.valueOf(Length.MM)).toPlainString();
  }

  private static Path inches() throws URISyntaxException {
    return Path.of(TwoUnitsTest.class.getResource("/org/jawroom/golden/closed-screw").toURI());
  }
}
