package org.jawroom.app.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class MeanwhileTest {

  /** The work ends only after {@code start} has returned. */
  @Test
  void start_severalThreads_callerGoesOn() {
    CountDownLatch started = new CountDownLatch(1);
    Meanwhile<Thread> work =
        Meanwhile.start(
            2,
            () -> {
              await(started);
              return Thread.currentThread();
            });
    started.countDown();
    assertNotSame(Thread.currentThread(), work.get());
    assertSame(work.get(), work.get());
  }

  @Test
  void start_oneThread_callerDoesIt() {
    assertSame(Thread.currentThread(), Meanwhile.start(1, Thread::currentThread).get());
  }

  @Test
  void get_tooLittleMemory_isThrownAsItIs() {
    OutOfMemoryError tooMuch = new OutOfMemoryError();
    for (int threads = 1; threads <= 2; threads++) {
      Meanwhile<Object> work =
          Meanwhile.start(
              threads,
              () -> {
                throw tooMuch;
              });
      assertSame(tooMuch, assertThrows(OutOfMemoryError.class, work::get));
    }
  }

  @Test
  void get_bug_isTheCause() {
    Meanwhile<Integer> work = Meanwhile.start(2, () -> Integer.parseInt("none"));
    IllegalStateException thrown = assertThrows(IllegalStateException.class, work::get);
    assertEquals(NumberFormatException.class, thrown.getCause().getClass());
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException stop) {
      throw new IllegalStateException(stop);
    }
  }
}
