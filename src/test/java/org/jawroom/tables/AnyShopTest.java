package org.jawroom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jawroom.fixture.TestShop;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.SettingColumns;
import org.jawroom.tables.schema.TableSpec;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever stands in the cells, a reading holds a shop or faults: no record's constructor ever has
 * to refuse anything.
 */
class AnyShopTest {
  private static final int SHOPS = 150;

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "0",
          "1",
          "3",
          "-1",
          "2.5",
          "40",
          "151",
          "1000",
          "none",
          "?",
          "1,250",
          "1/4",
          "6 1/2 in",
          "100 m",
          "-100 m",
          "101 m",
          "x",
          "xyz",
          "head",
          "table",
          "saddle",
          "frame",
          "front",
          "rear left",
          "both",
          "parts",
          "on",
          "full",
          "yes",
          "tape",
          "mill",
          "vise",
          "other",
          "handle",
          "door",
          "e.g. a",
          "=1",
          "45; 125",
          "45; 45",
          ";",
          "mill; other",
          "cutting",
          "4-Jan",
          "in",
          "mm",
          "75 lb",
          "\u2028");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void cells_ofAnyText_makeAShopOrFaults(long seed) throws Exception {
    Random random = new Random(seed);
    int shops = 0;
    for (int i = 0; i < SHOPS; i++) {
      int changes = random.nextInt(4);
      TestShop shop =
          TestShop.in(folder)
              .machine("mill", cells(TableSpec.MACHINES, changes, random))
              .machine("other")
              .vise("vise", cells(TableSpec.VISES, changes, random))
              .guard("mill", "arm", cells(TableSpec.GUARDS, changes, random, "x_max", "10"))
              .guard("mill", "sill", "side", "front", "gap", "5")
              .part("vise", "box", cells(TableSpec.VISE_PARTS, changes, random))
              .mount("vise", "wide", cells(TableSpec.MOUNTS, changes, random))
              .job("job", cells(TableSpec.JOBS, changes, random))
              .standing(cells(TableSpec.STANDING, changes / 2, random))
              .set(cells(TableSpec.SETS, changes / 2, random))
              .setting(any(SettingColumns.SETTINGS, random).name(), any(TEXTS, random));
      Reading reading = shop.read();
      assertEquals(reading.faults().isEmpty(), reading.shop().isPresent());
      shops += reading.shop().isPresent() ? 1 : 0;
    }
    assertTrue(shops > SHOPS / 50, "only " + shops + " of " + SHOPS + " were sound");
  }

  private static String[] cells(TableSpec table, int changes, Random random, String... first) {
    List<String> cells = new ArrayList<>(List.of(first));
    for (int i = 0; i < changes; i++) {
      ColumnSpec column = any(table.columns(), random);
      cells.add(column.name());
      cells.add(any(TEXTS, random));
    }
    return cells.toArray(String[]::new);
  }

  private static <T> T any(List<T> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }
}
