package org.jawroom.tables.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoShopTest {
  @TempDir Path folder;

  private static Shop read(Path input) throws Exception {
    Reading reading = ShopReader.read(input, Map.of());
    assertEquals(List.of(), reading.faults());
    return reading.shop().orElseThrow();
  }

  @Test
  void workbook_andTables_readAlike() throws Exception {
    assertEquals(read(DemoWorkbook.TABLES), read(DemoWorkbook.WORKBOOK));
  }

  @Test
  void workbook_madeAnew_readsAsTheOneKept() throws Exception {
    Path made = folder.resolve("made.xlsx");
    Files.write(made, DemoWorkbook.of(DemoWorkbook.TABLES));
    assertEquals(read(DemoWorkbook.WORKBOOK), read(made));
  }

  @Test
  void shop_hasEveryVerdict() throws Exception {
    Shop shop = read(DemoWorkbook.TABLES);
    Set<Verdict> met =
        shop.machines().stream()
            .flatMap(
                machine ->
                    shop.vises().stream()
                        .map(vise -> Pairing.solve(shop.settings(), machine, vise).verdict()))
            .collect(Collectors.toSet());
    assertEquals(EnumSet.allOf(Verdict.class), met);
  }

  /**
   * Most fits are plain ones, so that a caveat stands out; some readings are known within bounds.
   */
  @Test
  void shop_hasPlainFitsAndReadingsWithinBounds() throws Exception {
    Shop shop = read(DemoWorkbook.TABLES);
    List<Outcome> fits =
        shop.machines().stream()
            .flatMap(
                machine ->
                    shop.vises().stream()
                        .map(vise -> Pairing.solve(shop.settings(), machine, vise)))
            .filter(outcome -> outcome.verdict() == Verdict.FITS)
            .toList();
    long plain = fits.stream().filter(outcome -> outcome.caveats().isEmpty()).count();
    assertTrue(2 * plain > fits.size(), plain + " of " + fits.size());
    assertTrue(plain < fits.size(), "no caveat to show");
    assertTrue(Files.readString(DemoWorkbook.TABLES.resolve("machines.csv")).contains("80..90"));
    assertTrue(Files.readString(DemoWorkbook.TABLES.resolve("vises.csv")).contains("at most 30"));
  }

  @Test
  void shop_isLargeAndVaried() throws Exception {
    Shop shop = read(DemoWorkbook.TABLES);
    assertTrue(shop.machines().size() >= 8);
    assertTrue(shop.vises().size() >= 14);
    assertTrue(shop.vises().stream().anyMatch(vise -> !vise.simple()));
    assertTrue(shop.vises().stream().anyMatch(vise -> vise.jaws().both()));
    assertTrue(shop.machines().stream().anyMatch(machine -> machine.tableMoves().z()));
  }
}
