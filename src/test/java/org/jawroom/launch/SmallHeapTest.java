package org.jawroom.launch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.jawroom.reference.random.BigShop;
import org.jawroom.reference.random.RandomJobs;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Memory does not grow with pairings, nor with the jobs on them. */
class SmallHeapTest {
  private static final int MACHINES = 300;
  private static final int VISES = 150;
  private static final int MEGABYTES = 64;

  @TempDir private Path folder;

  /** Held all at once, the outcomes of 45 000 pairings alone do not fit into it. */
  @Test
  void matrix_ofManyPairingsWithJobs_fitsIntoASmallHeap() throws Exception {
    Shop shop = BigShop.shop(MACHINES, VISES, 1).withJobs(RandomJobs.shop(Profile.PLAIN, 1).jobs());
    Path tables = folder.resolve("tables");
    BigShop.write(shop, tables);
    Path out = folder.resolve("out");

    ToolRun run = ToolRun.of(MEGABYTES, "matrix", tables.toString(), "-o", out.toString());

    assertEquals(0, run.status(), run.err());
    assertEquals(1 + MACHINES * VISES, lines(out.resolve("pairings.csv")));
    assertEquals(1 + 3 * MACHINES * VISES, lines(out.resolve("jobs.csv")));
  }

  private static long lines(Path file) throws Exception {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.count();
    }
  }
}
