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

/**
 * A shop told in inches and fractions, and the same in bare millimetres, come to the same outcomes.
 */
class TwoTellingsTest {
  @TempDir private Path folder;

  @Test
  void outcomes_inchesAndMillimetres_areTheSame() throws Exception {
    Path inches = inches();
    for (String table : List.of("machines", "vises")) {
      Path file = inches.resolve(table + ".csv");
      String retold = retold(TableSpec.named(table).orElseThrow(), Files.readString(file));
      assertNotEquals(Files.readString(file), retold);
      Files.writeString(folder.resolve(table + ".csv"), retold);
    }
    Files.writeString(folder.resolve("settings.csv"), "setting,value\nunit,mm\nclearance,6.35\n");

    assertEquals(told(inches), told(folder));
  }

  private static List<String> told(Path input) throws Exception {
    Shop shop = ShopReader.read(input, Map.of()).shop().orElseThrow();
    List<String> told = new ArrayList<>();
    shop.machines()
        .forEach(
            machine ->
                shop.vises()
                    .forEach(
                        vise -> {
                          Outcome outcome = Pairing.solve(shop.settings(), machine, vise);
                          told.add(
                              outcome.verdict()
                                  + " "
                                  + outcome.bestMargin()
                                  + " "
                                  + outcome.recommended()
                                  + " "
                                  + outcome.usableOpening());
                        }));
    return told;
  }

  /** Every length in bare millimetres. */
  private static String retold(TableSpec table, String text) throws IOException, BadCell {
    List<CSVRecord> rows = CSVFormat.RFC4180.parse(new StringReader(text)).getRecords();
    StringWriter retold = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(new PrintWriter(retold), CSVFormat.RFC4180)) {
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
    return retold.toString();
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
    return Path.of(TwoTellingsTest.class.getResource("/org/jawroom/golden/closed-screw").toURI());
  }
}
