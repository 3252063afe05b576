package org.jawroom.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.Map;
import org.jawroom.plausibility.Warnings;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.UnreadableInput;

/** What must hold of a reading, whatever was read. */
final class ReadAnything {
  private ReadAnything() {}

  static void read(Path input) {
    Reading reading;
    try {
      reading = ShopReader.read(input, Map.of());
    } catch (UnreadableInput refused) {
      assertIsLine(refused.getMessage());
      return;
    }
    assertEquals(reading.faults().isEmpty(), reading.shop().isPresent());
    reading.faults().stream().map(Fault::toString).forEach(ReadAnything::assertIsLine);
    reading.notes().forEach(note -> assertIsLine(note.toString()));
    reading.shop().ifPresent(ReadAnything::check);
  }

  private static void check(Shop shop) {
    Warnings.of(shop).forEach(warning -> assertIsLine(warning.line()));
    Warnings.ofBlanks(shop).forEach(warning -> assertIsLine(warning.line()));
  }

  /** Something is said, and on one line. */
  static void assertIsLine(String line) {
    assertFalse(line.isBlank());
    assertEquals(1, line.lines().count(), line);
    assertFalse(line.chars().anyMatch(Character::isISOControl), line);
  }
}
