package org.jawroom.app.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class InTimeTest {
  private final CountDownLatch handedOn = new CountDownLatch(1);
  private final CountDownLatch interrupted = new CountDownLatch(1);

  @Test
  void run_noLimit_isTheResultOnTheSameThread() {
    Deadline never = Deadline.in(Optional.empty());
    assertEquals(
        Optional.of(Thread.currentThread()),
        InTime.<Thread>run(never, found -> Thread.currentThread()));
  }

  @Test
  void run_doneWithinTheLimit_isTheResult() {
    assertEquals(
        Optional.of("whole"),
        InTime.<String>run(
            Deadline.in(Optional.of(600L)),
            found -> {
              found.accept("part");
              return "whole";
            }));
  }

  @Test
  void run_timeRunsOut_isTheLastThingHandedOnAndStopsTheWork() throws Exception {
    assertEquals(
        Optional.of("second"),
        InTime.<String>run(
            overOnceHandedOn(),
            found -> {
              found.accept("first");
              found.accept("second");
              handedOn.countDown();
              return waitForever();
            }));
    interrupted.await();
  }

  @Test
  void run_timeRunsOutBeforeAnything_isEmpty() throws Exception {
    assertEquals(
        Optional.empty(),
        InTime.<String>run(
            overOnceHandedOn(),
            found -> {
              handedOn.countDown();
              return waitForever();
            }));
    interrupted.await();
  }

  @Test
  void run_workFails_failsTheSameWay() {
    OutOfMemoryError tooMuch = new OutOfMemoryError();
    assertSame(
        tooMuch,
        assertThrows(
            OutOfMemoryError.class,
            () ->
                InTime.run(
                    Deadline.in(Optional.of(600L)),
                    found -> {
                      throw tooMuch;
                    })));
  }

  /** There is a limit; when it is asked how much is left, the work has begun and it is over. */
  private Deadline overOnceHandedOn() {
    AtomicInteger asked = new AtomicInteger();
    return new Deadline(
        () -> {
          if (asked.getAndIncrement() == 0) {
            return 1;
          }
          try {
            handedOn.await();
          } catch (InterruptedException unexpected) {
            throw new IllegalStateException(unexpected);
          }
          return 0;
        },
        0);
  }

  private String waitForever() {
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException stopped) {
      interrupted.countDown();
    }
    return "never taken";
  }
}
