package org.jawroom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.placement.Pairing;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;

/** Solves every pairing of a shop on several threads; what comes of it does not depend on how many. */
final class Solving {
  private Solving() {}

  /** Each outcome and what to do about it, machines then vises in input order. */
  static List<Advice> all(Shop shop, int threads, Progress progress) {
    ExecutorService workers =
        Executors.newFixedThreadPool(
            threads,
            work -> {
              Thread thread = new Thread(work, "solver");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Future<Advice>> pending = new ArrayList<>();
      for (Machine machine : shop.machines()) {
        for (Vise vise : shop.vises()) {
          pending.add(workers.submit(() -> solve(shop.settings(), machine, vise)));
        }
      }
      List<Advice> advice = new ArrayList<>(pending.size());
      for (Future<Advice> next : pending) {
        advice.add(next.get());
        progress.show(advice.size(), pending.size());
      }
      return advice;
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

  private static Advice solve(Settings settings, Machine machine, Vise vise) {
    return Advisor.advise(settings, Pairing.solve(settings, machine, vise));
  }
}
