package org.jawroom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.cell.CellPairing;
import org.jawroom.placement.JobOutcome;
import org.jawroom.placement.JobPairing;
import org.jawroom.placement.Pairing;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;

/**
 * Solves every pairing of a shop on several threads; what comes of it does not depend on how many.
 */
final class Solving {
  private Solving() {}

  /** What is to be found out of one pairing. */
  private interface Question<T> {
    T of(Machine machine, Vise vise);
  }

  /** Each outcome and what to do about it, machines then vises in input order. */
  static List<Advice> all(Shop shop, int threads, Progress progress) {
    return ofPairings(
        shop, threads, progress, (machine, vise) -> advice(shop.settings(), machine, vise));
  }

  /** Every job on every pairing: jobs, then machines, then vises in input order. */
  static List<JobOutcome> jobs(Shop shop, int threads, Progress progress) {
    if (shop.jobs().isEmpty()) {
      return List.of();
    }
    return JobPairing.jobsFirst(
        ofPairings(
            shop,
            threads,
            progress,
            (machine, vise) -> JobPairing.solve(shop.settings(), machine, vise, shop.jobs())),
        shop.jobs().size());
  }

  /** What a plan must know of each pairing, machines then vises in input order. */
  static List<CellPairing> cell(Shop shop, int threads, Progress progress) {
    return ofPairings(
        shop,
        threads,
        progress,
        (machine, vise) -> CellPairing.solve(shop.settings(), machine, vise, shop.jobs()));
  }

  private static <T> List<T> ofPairings(
      Shop shop, int threads, Progress progress, Question<T> question) {
    ExecutorService workers =
        Executors.newFixedThreadPool(
            threads,
            work -> {
              Thread thread = new Thread(work, "solver");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Future<T>> pending = new ArrayList<>();
      for (Machine machine : shop.machines()) {
        for (Vise vise : shop.vises()) {
          pending.add(workers.submit(() -> question.of(machine, vise)));
        }
      }
      List<T> answers = new ArrayList<>(pending.size());
      for (Future<T> next : pending) {
        answers.add(next.get());
        progress.show(answers.size(), pending.size());
      }
      return answers;
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

  private static Advice advice(Settings settings, Machine machine, Vise vise) {
    return Advisor.advise(settings, Pairing.solve(settings, machine, vise));
  }
}
