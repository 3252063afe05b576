package org.jawroom.app.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PipelineTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7})
  void pieces_ofUnequalWork_comeInOrder(int threads) throws IOException {
    List<Integer> taken = new ArrayList<>();

    Pipeline.run(
        300,
        threads,
        piece -> {
          LockSupport.parkNanos(piece % 5 == 0 ? 300_000 : 0);
          return piece;
        },
        taken::add);

    assertEquals(IntStream.range(0, 300).boxed().toList(), taken);
  }

  @Test
  void pieces_takenSlowly_areNotDoneFarAhead() throws IOException {
    AtomicInteger begun = new AtomicInteger();
    List<Integer> ahead = new ArrayList<>();

    Pipeline.run(
        200,
        2,
        piece -> {
          begun.incrementAndGet();
          return piece;
        },
        piece -> {
          LockSupport.parkNanos(100_000);
          ahead.add(begun.get() - piece);
        });

    assertTrue(ahead.stream().allMatch(many -> many <= 8), ahead::toString);
  }

  @Test
  void work_thatFails_isTheCause() {
    IllegalArgumentException wrong = new IllegalArgumentException("wrong");

    IllegalStateException failure =
        assertThrows(
            IllegalStateException.class,
            () ->
                Pipeline.run(
                    5,
                    2,
                    piece -> {
                      throw wrong;
                    },
                    piece -> {}));

    assertSame(wrong, failure.getCause());
  }

  @Test
  void work_thatRunsOutOfMemory_endsAsThat() {
    OutOfMemoryError tooMuch = new OutOfMemoryError("heap");

    OutOfMemoryError failure =
        assertThrows(
            OutOfMemoryError.class,
            () ->
                Pipeline.run(
                    5,
                    2,
                    piece -> {
                      throw tooMuch;
                    },
                    piece -> {}));

    assertSame(tooMuch, failure);
  }

  @Test
  void taker_thatCannotWrite_endsIt() {
    AtomicInteger begun = new AtomicInteger();
    IOException full = new IOException("full");

    IOException failure =
        assertThrows(
            IOException.class,
            () ->
                Pipeline.run(
                    1_000_000,
                    2,
                    piece -> begun.incrementAndGet(),
                    piece -> {
                      throw full;
                    }));

    assertSame(full, failure);
    assertTrue(begun.get() < 100, () -> begun.get() + " begun");
  }

  @Test
  void nothing_toDo_isNothingTaken() throws IOException {
    Pipeline.run(
        0,
        2,
        piece -> piece,
        piece -> {
          throw new AssertionError(piece);
        });
  }
}
