package org.jawroom.reference.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.geometry.Length;
import org.jawroom.reference.solve.ReferenceOutcome;
import org.jawroom.reference.solve.ReferenceOutcome.Place;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Compares the reference with shops worked out by hand; the README beside each says how. Margins
 * agree to 0.002 mm, openings to 0.01 mm.
 */
class ReferenceExamplesTest {
  /** Their readings are known within bounds only, which the reference does not solve. */
  private static final Set<String> WITHIN_BOUNDS = Set.of("from a brochure", "wide jaw range");

  private static final CSVFormat TABLE =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  @ParameterizedTest
  @ValueSource(strings = {"example", "example-2"})
  void solve_shopWorkedByHand_asExpected(String name) throws Exception {
    Path folder = Path.of(getClass().getResource("/org/jawroom/golden/" + name).toURI());
    Reading reading = ShopReader.read(folder, Map.of());
    assertEquals(List.of(), reading.faults());
    Shop shop = reading.shop().orElseThrow();
    List<CSVRecord> rows =
        TABLE
            .parse(new StringReader(Files.readString(folder.resolve("expected.csv"))))
            .getRecords();
    assertFalse(rows.isEmpty());

    List<String> differences = new ArrayList<>();
    rows.stream()
        .filter(row -> !WITHIN_BOUNDS.contains(row.get("machine")))
        .filter(row -> !WITHIN_BOUNDS.contains(row.get("vise")))
        .forEach(row -> compare(shop, row, differences));

    assertEquals(List.of(), differences);
  }

  private static void compare(Shop shop, CSVRecord row, List<String> differences) {
    Machine machine =
        shop.machines().stream().filter(m -> m.name().equals(row.get("machine"))).findFirst().get();
    Vise vise =
        shop.vises().stream().filter(v -> v.name().equals(row.get("vise"))).findFirst().get();
    Map<String, String> found = cells(ReferencePairing.solve(shop.settings(), machine, vise));
    row.toMap()
        .forEach(
            (column, wanted) -> {
              boolean given = !List.of("machine", "vise").contains(column) && !wanted.isEmpty();
              if (given && !agree(column, wanted, found.get(column))) {
                String where = machine.name() + " × " + vise.name() + " " + column;
                differences.add(where + ": expected " + wanted + ", found " + found.get(column));
              }
            });
  }

  /** The cells of a row of {@code pairings.csv} that the examples give. */
  private static Map<String, String> cells(ReferenceOutcome outcome) {
    Map<String, String> cells = new HashMap<>();
    cells.put("verdict", outcome.verdict().code());
    outcome.bestMargin().ifPresent(best -> cells.put("best_margin_mm", mm(best)));
    outcome.usable().ifPresent(usable -> cells.put("usable_from_mm", mm(usable.printed().lo())));
    outcome.usable().ifPresent(usable -> cells.put("usable_to_mm", mm(usable.printed().hi())));
    if (outcome.recommended().isPresent()) {
      Place place = outcome.recommended().get();
      place.margin().ifPresent(margin -> cells.put("margin_mm", mm(margin)));
      cells.put("reach_shortfall_mm", mm(place.reachShortfall()));
      cells.put("settable", place.settable() ? "yes" : "no");
      cells.put("mount", place.mount());
      place.thread().ifPresent(d -> cells.put("bolt_thread", "M" + d / Length.MM));
    }
    return cells;
  }

  private static String mm(long length) {
    return BigDecimal.valueOf(length).divide(BigDecimal.valueOf(Length.MM)).toPlainString();
  }

  private static boolean agree(String column, String wanted, String found) {
    if (!column.endsWith("_mm") || found == null) {
      return wanted.equals(found);
    }
    BigDecimal off = new BigDecimal(wanted).subtract(new BigDecimal(found)).abs();
    return off.compareTo(new BigDecimal(column.startsWith("usable") ? "0.01" : "0.002")) <= 0;
  }
}
