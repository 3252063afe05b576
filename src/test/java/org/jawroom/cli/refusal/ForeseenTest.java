package org.jawroom.cli.refusal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jawroom.advice.Advisor;
import org.jawroom.app.run.Solving;
import org.jawroom.launch.Main;
import org.jawroom.reference.random.BigShop;
import org.jawroom.report.page.PageFile;
import org.jawroom.report.page.PagePairing;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The limits are given, never reached by allocating. */
class ForeseenTest {
  private static final String FEWER = "take fewer machines with --machines";

  @TempDir private Path folder;

  @Test
  void refusal_belowAtAndAboveTheMemoryThereIs() {
    Foreseen page = new Foreseen("The page", 40_000, 47_000_000, 570_000_000);
    assertEquals(Optional.empty(), page.refusal(new Heap(30_000_000, 600_000_001), FEWER));
    assertEquals(Optional.empty(), page.refusal(new Heap(30_000_000, 600_000_000), FEWER));
    assertEquals(
        Optional.of(
            "The page of 40000 pairings takes about 570 MB of memory; Java has 570 MB left."
                + " Nothing was written; take fewer machines with --machines, or give Java more:"
                + " java -Xmx1g -jar jawroom.jar …"),
        page.refusal(new Heap(30_000_000, 599_999_999), FEWER));
  }

  @Test
  void refusal_aboveWhatOneFileHolds_isNotAMatterOfMemory() {
    Heap plenty = new Heap(0, Long.MAX_VALUE);
    Foreseen most = new Foreseen("The page", 1_000_000, Foreseen.LONGEST_PAGE, 1);
    assertEquals(Optional.empty(), most.refusal(plenty, FEWER));
    Foreseen more = new Foreseen("The page", 1_000_000, Foreseen.LONGEST_PAGE + 1, 1);
    assertEquals(
        Optional.of(
            "The page becomes about 1074 MB, more than the 1074 MB that one file can have. Nothing"
                + " was written; take fewer machines with --machines."),
        more.refusal(plenty, FEWER));
  }

  @Test
  void announce_onlyWhatIsLarge() {
    assertEquals("", announced(new Foreseen("The page", 9_999, 4_999_999, 80_000_000)));
    assertEquals(
        "The page: up to about 5 MB, 9999 pairings, about 80 MB of memory.",
        announced(new Foreseen("The page", 9_999, 5_000_000, 80_000_000)));
    assertEquals("", announced(new Foreseen("The plan", 9_999, 0, 80_000_000)));
    assertEquals(
        "The plan: 10000 pairings, about 80 MB of memory.",
        announced(new Foreseen("The plan", 10_000, 0, 80_000_000)));
  }

  @Test
  void memory_growsWithWhatIsAskedFor() {
    Shop shop = BigShop.shop(3, 4, 1);
    assertEquals(12, Foreseen.plan(shop, 0).pairings());
    assertEquals(
        10 * (4_000 + 1_000 * shop.jobs().size()),
        Foreseen.plan(shop, 10).heap() - Foreseen.plan(shop, 0).heap());
    assertEquals(12 * 100_000, Foreseen.drawings(shop, 60).bytes());
    assertEquals(5 * 100_000, Foreseen.drawings(shop, 5).bytes());
    assertTrue(Foreseen.page(shop, 1_000_000).heap() > 12_000_000);
  }

  /** Rather too large, but not by half. */
  @Test
  void page_estimatedFromASample_isAtLeastWhatItBecomes() throws Exception {
    Path tables = folder.resolve("tables");
    Shop shop = BigShop.shop(36, 30, 7);
    BigShop.write(shop, tables);
    Path page = folder.resolve("page.html");
    StringWriter err = new StringWriter();
    int status =
        Main.run(
            new String[] {"page", tables.toString(), "-o", page.toString()},
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true));
    assertEquals(0, status, err.toString());

    long estimate =
        PageFile.estimate(
            shop,
            Solving.sample(
                shop,
                240,
                solved -> PagePairing.of(Advisor.advise(shop.settings(), solved), solved)));
    long real = Files.size(page);
    assertTrue(estimate >= real && estimate <= real * 3 / 2, estimate + " for " + real);
  }

  private static String announced(Foreseen result) {
    StringWriter lines = new StringWriter();
    result.announce(new PrintWriter(lines, true));
    return lines.toString().strip();
  }
}
