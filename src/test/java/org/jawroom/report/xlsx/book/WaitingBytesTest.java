package org.jawroom.report.xlsx.book;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WaitingBytesTest {
  private static final int HELD = 1_000;

  @Test
  void read_fewAndMany_areThoseWritten() throws IOException {
    for (int length : new int[] {0, 1, HELD - 1, HELD, HELD + 1, 5 * HELD}) {
      byte[] expected = bytes(length);
      WaitingBytes waiting = written(expected);
      for (int time = 0; time < 2; time++) {
        assertArrayEquals(expected, waiting.read().readAllBytes(), length + " bytes");
      }
      waiting.remove();
    }
  }

  @Test
  void remove_moreThanHeld_removesTheFile() throws IOException {
    WaitingBytes waiting = written(bytes(HELD + 1));
    waiting.remove();
    assertThrows(NoSuchFileException.class, waiting::read);
    waiting.remove();
  }

  /** One by one, then in pieces of random lengths. */
  private static WaitingBytes written(byte[] bytes) throws IOException {
    WaitingBytes waiting = new WaitingBytes(HELD);
    Random random = new Random(bytes.length);
    int at = 0;
    while (at < Math.min(bytes.length, 10)) {
      waiting.write(bytes[at++]);
    }
    while (at < bytes.length) {
      int length = Math.min(bytes.length - at, random.nextInt(HELD / 3));
      waiting.write(bytes, at, length);
      at += length;
    }
    waiting.close();
    return waiting;
  }

  private static byte[] bytes(int length) {
    byte[] bytes = new byte[length];
    new Random(7).nextBytes(bytes);
    return bytes;
  }
}
