package org.jawroom.app.run;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/**
 * Executes pieces of work on several threads and passes the results on in order, one at a time, on
 * the calling thread. Only a few pieces are in progress or waiting at any time, so that memory does
 * not grow with their number; a slow consumer slows the work down.
 */
final class Pipeline {

  /**
   * Pieces per thread: one in progress, the others so that a slow piece at the head does not stall
   * the threads.
   */
  private static final int AHEAD = 4;

  private Pipeline() {}

  /** Receives a finished piece. */
  interface Taker<T> {
    void take(T piece) throws IOException;
  }

  /**
   * Passes on {@code work} of 0 up to {@code pieces} (excluded), in that order.
   *
   * @throws IOException if the taker throws it; nothing is passed on afterwards
   * @throws OutOfMemoryError if a piece of work throws it
   * @throws IllegalStateException if a piece of work throws anything else
   */
  static <T> void run(int pieces, int threads, IntFunction<T> work, Taker<T> taker)
      throws IOException {
    ExecutorService workers = Executors.newFixedThreadPool(threads, Pipeline::worker);
    Deque<Future<T>> underWay = new ArrayDeque<>();
    try {
      for (int next = 0; next < pieces || !underWay.isEmpty(); ) {
        if (next < pieces && underWay.size() < AHEAD * threads) {
          int piece = next++;
          underWay.add(workers.submit(() -> work.apply(piece)));
        } else {
          taker.take(underWay.remove().get());
        }
      }
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof OutOfMemoryError tooMuch) {
        throw tooMuch;
      }
      throw new IllegalStateException("a piece of work threw an exception", failure.getCause());
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", stop);
    } finally {
      workers.shutdownNow();
    }
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "solver");
    thread.setDaemon(true);
    return thread;
  }
}
