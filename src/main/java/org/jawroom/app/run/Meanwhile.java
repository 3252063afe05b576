package org.jawroom.app.run;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** One piece of work on a thread of its own, while the calling thread goes on. */
final class Meanwhile<T> {
  private final FutureTask<T> work;

  private Meanwhile(FutureTask<T> work) {
    this.work = work;
  }

  /**
   * Starts {@code work}.
   *
   * @param threads if 1, the calling thread does the work before this method returns
   */
  static <T> Meanwhile<T> start(int threads, Supplier<T> work) {
    FutureTask<T> task = new FutureTask<>(work::get);
    if (threads == 1) {
      task.run();
    } else {
      Thread thread = new Thread(task, "meanwhile");
      thread.setDaemon(true);
      thread.start();
    }
    return new Meanwhile<>(task);
  }

  /**
   * The result, as soon as it is there.
   *
   * @throws OutOfMemoryError if the work throws it
   * @throws IllegalStateException if the work throws anything else
   */
  T get() {
    try {
      return work.get();
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof OutOfMemoryError tooMuch) {
        throw tooMuch;
      }
      throw new IllegalStateException("the work threw an exception", failure.getCause());
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", stop);
    }
  }
}
