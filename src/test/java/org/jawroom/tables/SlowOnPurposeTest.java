package org.jawroom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import org.jawroom.fixture.TestShop;
import org.jawroom.plausibility.Warnings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Tables that take long only if something is done once for each pair of letters, rows or slots. The
 * time limit shows what hangs, and nothing else.
 */
class SlowOnPurposeTest {
  private static final Duration HANGS = Duration.ofSeconds(120);
  private static final String SPACES = "a" + " ".repeat(32_000) + "b";

  @TempDir private Path folder;

  private static <T> T bounded(Callable<T> work) {
    return assertTimeoutPreemptively(HANGS, work::call);
  }

  @Test
  void names_ofNothingButSpacesWithin_areTooLong() {
    TestShop shop = TestShop.sound(folder);
    for (int i = 0; i < 150; i++) {
      shop.machine(SPACES).vise(SPACES).guard("mill", SPACES).part("vise", SPACES);
      shop.mount("vise", SPACES).job(SPACES).setting(SPACES, "1");
    }
    List<String> faults = bounded(shop::faults);
    assertTrue(faults.get(0).endsWith("\u2026\" is longer than 100 characters"), faults.get(0));
    assertEquals(1001, faults.size());
  }

  @Test
  void cells_ofEveryKindFullOfSpaces_areFaultsOrText() {
    TestShop shop = TestShop.sound(folder);
    for (int i = 0; i < 150; i++) {
      shop.machine(
          "mill " + i,
          "rear_gap",
          "1" + SPACES,
          "max_load",
          "1" + SPACES,
          "slot_count",
          "1" + SPACES,
          "turns",
          SPACES,
          "table_moves",
          SPACES,
          "status",
          SPACES,
          "source",
          SPACES,
          "measured",
          SPACES,
          "unit",
          SPACES);
    }
    List<String> faults = bounded(shop::faults);
    assertEquals("all tables: 350 more faults are not listed", faults.get(1000));
  }

  /** Against thousands of names, suggestions are made for the first faults only. */
  @Test
  void names_misspeltByTheThousand_getTenSuggestions() {
    TestShop shop = TestShop.sound(folder);
    String longName = "a long name of a mill ".repeat(4);
    for (int i = 0; i < 3_000; i++) {
      shop.machine(longName + i);
    }
    for (int i = 0; i < 3_000; i++) {
      shop.guard(longName + "x" + i, "arm", "side", "front", "gap", "5");
    }
    List<String> faults = bounded(shop::faults);
    assertEquals(1001, faults.size());
    assertEquals(10, faults.stream().filter(fault -> fault.contains("did you mean")).count());
    assertEquals("all tables: 2000 more faults are not listed", faults.get(1000));
  }

  @Test
  void list_ofThousandsOfWrongWords_isReadOnce() {
    TestShop shop = TestShop.sound(folder);
    for (int i = 0; i < 20; i++) {
      StringBuilder turns = new StringBuilder();
      StringBuilder machines = new StringBuilder();
      for (int word = 0; word < 5_000; word++) {
        turns.append('w').append(word).append(' ');
        machines.append('m').append(word).append(';');
      }
      shop.vise("vise " + i, "turns", turns.toString())
          .job("job " + i, "machines", machines.toString());
    }
    List<String> faults = bounded(shop::faults);
    assertEquals("all tables: 199000 more faults are not listed", faults.get(1000));
  }

  /** Every bolt reaches every slot, so that each could be paired with each. */
  @Test
  void warnings_ofManySlotsAndBolts_areFound() {
    TestShop shop = TestShop.in(folder);
    shop.machine("mill", "slot_count", "1000", "slot_pitch", "0.2", "slot_width", "0.1");
    shop.vise("vise", "bolt_spacing", "none", "rear_reach", "200", "front_reach", "100");
    for (int i = 0; i < 1_000; i++) {
      shop.mount("vise", "wide", "u", "0", "v", "0", "hole_u", "300", "hole_v", "300");
    }
    Reading reading = bounded(shop::read);
    assertEquals(Collections.emptyList(), reading.faults());
    assertTrue(bounded(() -> Warnings.of(reading.shop().orElseThrow())).size() > 1);
  }
}
