package org.jawroom.app;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/**
 * Pieces of work done on several threads and handed on in order, one at a time, on the thread that
 * asked. Only a few pieces are under way or waiting at any time, so that memory does not grow with
 * their number; whoever takes them slowly slows the work.
 */
final class Pipeline {

  /** For each thread: one in work, the others so that a slow piece at the head stops nobody. */
  private static final int AHEAD = 4;

  private Pipeline() {}

  /** Takes a piece that is done. */
  interface Taker<T> {
    void take(T piece) throws IOException;
  }

  /**
   * Hands on {@code work} of 0 up to {@code pieces}, in that order.
   *
   * @throws IOException if the taker throws it; no more is handed on then
   * @throws OutOfMemoryError if a piece of work meets it
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
      throw new IllegalStateException("a pairing could not be solved", failure.getCause());
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
