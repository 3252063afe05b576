package org.jawroom.report.compare;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SortedRecordsTest {

  /** From one file to files of files of files. */
  @Test
  void sorted_ofAnyNumber_isAsSortedInMemory() throws IOException {
    Random random = new Random(5);
    for (int number : new int[] {0, 1, 2, 3, 31, 33, 100, 3_000}) {
      SortedRecords records = new SortedRecords(60);
      List<byte[]> expected = new ArrayList<>();
      for (int i = 0; i < number; i++) {
        byte[] one = new byte[random.nextInt(20)];
        random.nextBytes(one);
        expected.add(one);
        records.add(one);
      }
      expected.sort(Arrays::compareUnsigned);
      SortedRecords.Cursor sorted = records.sorted();
      for (byte[] one : expected) {
        assertArrayEquals(one, sorted.next().orElseThrow());
      }
      assertEquals(Optional.empty(), sorted.next());
    }
  }
}
