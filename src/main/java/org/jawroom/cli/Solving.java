package org.jawroom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Pairing;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;

/** Solves every pairing of a shop on several threads; the outcomes do not depend on how many. */
final class Solving {
  private Solving() {}

  /** The outcomes, machines then vises in input order. */
  static List<Outcome> all(Shop shop, int threads, Progress progress) {
    ExecutorService workers =
        Executors.newFixedThreadPool(
            threads,
            work -> {
              Thread thread = new Thread(work, "solver");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Future<Outcome>> pending = new ArrayList<>();
      for (Machine machine : shop.machines()) {
        for (Vise vise : shop.vises()) {
          pending.add(workers.submit(() -> Pairing.solve(shop.settings(), machine, vise)));
        }
      }
      List<Outcome> outcomes = new ArrayList<>(pending.size());
      for (Future<Outcome> next : pending) {
        outcomes.add(next.get());
        progress.show(outcomes.size(), pending.size());
      }
      return outcomes;
    } catch (ExecutionException failure) {
      throw new IllegalStateException("a pairing could not be solved", failure.getCause());
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", stop);
    } finally {
      workers.shutdownNow();
      progress.clear();
    }
  }
}
