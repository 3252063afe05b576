package org.jawroom.app.search;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;

/** Runs work under a time limit and abandons it at the limit, whatever it is doing. */
final class InTime {
  private InTime() {}

  /**
   * Returns the result of {@code work} or, if time runs out first, the last intermediate result
   * that it passed on.
   *
   * @param work receives a consumer for intermediate results; interrupted when time runs out, and
   *     then no longer waited for
   * @return empty if time ran out before any result
   */
  static <T> Optional<T> run(Deadline deadline, Function<Consumer<T>, T> work) {
    if (!deadline.isLimit()) {
      return Optional.of(work.apply(soFar -> {}));
    }
    AtomicReference<T> last = new AtomicReference<>();
    FutureTask<T> task = new FutureTask<>(() -> work.apply(last::set));
    Thread worker = new Thread(task, "in time");
    worker.setDaemon(true);
    worker.start();
    try {
      long left = Math.max(0, deadline.left().getAsLong());
      return Optional.of(task.get(left, TimeUnit.MILLISECONDS));
    } catch (TimeoutException over) {
      task.cancel(true);
      return Optional.ofNullable(last.get());
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException("the work threw an exception", failure.getCause());
    } catch (InterruptedException stop) {
      task.cancel(true);
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", stop);
    }
  }
}
