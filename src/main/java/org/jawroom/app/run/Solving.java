package org.jawroom.app.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.app.output.Progress;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellSet;
import org.jawroom.cell.CellSets;
import org.jawroom.placement.ShopPairings;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.placement.standing.StandingTable;
import org.jawroom.report.csv.Batch;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.shop.Shop;

/**
 * Solves every pairing of a shop on several threads; the result does not depend on their number.
 */
public final class Solving {

  /**
   * The number of vises in a run if each takes microseconds. A pairing takes about 10 kB on the
   * way, so that those of a run are still in the processor's cache when their rows are written.
   */
  private static final int QUICK = 24;

  /** The same if each takes long. */
  private static final int SLOW = 4;

  private Solving() {}

  /**
   * Computes something for one pairing, given by the indices of machine and vise in input order.
   */
  private interface Question<A> {
    A of(int machine, int vise);
  }

  /** A pairing with the outcome of each job. */
  private record Answer(Advice advice, List<JobOutcome> jobs) {}

  /** The result of a run of pairings. */
  private record Solved<T>(int pairings, T what) {}

  /** Each outcome with its remedies, machines then vises in input order. */
  public static List<Advice> all(Shop shop, int threads, Progress progress) {
    return all(shop, threads, progress, solved -> Advisor.advise(shop.settings(), solved));
  }

  /**
   * What {@code kept} keeps of each pairing, in the same order; it runs on the solving threads, and
   * nothing else of a pairing is held.
   */
  public static <T> List<T> all(
      Shop shop, int threads, Progress progress, Function<SolvedPairing, T> kept) {
    ShopPairings pairings = ShopPairings.of(shop);
    return collected(
        shop, threads, progress, (machine, vise) -> kept.apply(pairings.solved(machine, vise)));
  }

  /** As {@link #all}, for at most {@code most} pairings spread over the shop. */
  public static <T> List<T> sample(Shop shop, int most, Function<SolvedPairing, T> kept) {
    ShopPairings pairings = ShopPairings.of(shop);
    int machines = shop.machines().size();
    int vises = shop.vises().size();
    long all = (long) machines * vises;
    long count = Math.min(most, all);
    List<T> sample = new ArrayList<>();
    for (long i = 0; i < count; i++) {
      // Machines and vises are spread evenly; the shift by i gives each machine another vise.
      int machine = (int) (i * machines / count);
      int vise = (int) ((i * vises / count + i) % vises);
      sample.add(kept.apply(pairings.solved(machine, vise)));
    }
    return sample;
  }

  /** Solves all pairings without remedies and jobs and passes runs of them on in input order. */
  static void stream(Shop shop, int threads, Progress progress, Pipeline.Taker<List<Outcome>> taker)
      throws IOException {
    ShopPairings pairings = ShopPairings.of(shop);
    stream(
        new PairingRuns(shop, QUICK),
        threads,
        progress,
        pairings::solve,
        Function.identity(),
        taker);
  }

  /**
   * Solves all pairings with their jobs and passes batches of them on in input order.
   *
   * @param remedies whether to compute remedies; without, each advice has none
   */
  static void batches(
      Shop shop, boolean remedies, int threads, Progress progress, Pipeline.Taker<Batch> taker)
      throws IOException {
    ShopPairings pairings = ShopPairings.of(shop);
    // Short runs of many jobs: what is under way stays in memory.
    int length = remedies ? SLOW : Math.max(SLOW, QUICK / (1 + shop.jobs().size()));
    stream(
        new PairingRuns(shop, length),
        threads,
        progress,
        (machine, vise) -> {
          SolvedPairing solved = pairings.solved(machine, vise);
          return new Answer(
              remedies ? Advisor.advise(shop.settings(), solved) : Advice.bare(solved.outcome()),
              pairings.jobs(machine, vise, solved.model(), shop.jobs()));
        },
        answers ->
            new Batch(
                answers.stream().map(Answer::advice).toList(),
                answers.stream().map(Answer::jobs).toList()),
        taker);
  }

  /**
   * Where things stand at the recommended place of one pairing, which is solved when it is asked
   * for: few of a shop's pairings are drawn, and all of them together are too large to keep.
   */
  public static IntFunction<Layout> layouts(Shop shop) {
    int vises = shop.vises().size();
    return index ->
        Pairing.solved(
                shop.settings(),
                shop.machines().get(index / vises),
                shop.vises().get(index % vises))
            .layout()
            .orElseThrow();
  }

  /** Every job on every pairing, all held at once: jobs, then machines, then vises. */
  public static List<JobOutcome> jobs(Shop shop, int threads, Progress progress) {
    if (shop.jobs().isEmpty()) {
      return List.of();
    }
    ShopPairings pairings = ShopPairings.of(shop);
    return JobPairing.jobsFirst(
        collected(
            shop,
            threads,
            progress,
            (machine, vise) ->
                pairings.jobs(machine, vise, pairings.model(machine, vise), shop.jobs())),
        shop.jobs().size());
  }

  /** What is worked out beside the pairings: vises that stand there, and sets. */
  public static ShopOutcomes beside(Shop shop) {
    List<SetOutcome> sets =
        shop.sets().stream()
            .flatMap(
                set ->
                    shop.machines().stream()
                        .filter(set::isFor)
                        .map(machine -> SetPairing.solve(shop.settings(), machine, set)))
            .toList();
    return new ShopOutcomes(StandingTable.solve(shop.settings(), shop.standing()), sets);
  }

  /** The planner's data of each pairing, machines then vises in input order. */
  public static List<CellPairing> cell(Shop shop, int threads, Progress progress) {
    return collected(
        shop,
        threads,
        progress,
        (machine, vise) ->
            CellPairing.solve(
                shop.settings(),
                shop.machines().get(machine),
                shop.vises().get(vise),
                shop.jobs()));
  }

  /**
   * The sets of several kinds that stand side by side, machines in input order.
   *
   * @param pairings of {@link #cell}
   * @param kinds the most kinds on a machine
   */
  public static List<CellSet> sets(Shop shop, List<CellPairing> pairings, int kinds, int threads) {
    int vises = shop.vises().size();
    List<CellSet> sets = new ArrayList<>();
    try {
      Pipeline.run(
          kinds == 1 ? 0 : shop.machines().size(),
          threads,
          machine ->
              CellSets.of(
                  shop, machine, pairings.subList(machine * vises, (machine + 1) * vises), kinds),
          sets::addAll);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return sets;
  }

  private static <A> List<A> collected(
      Shop shop, int threads, Progress progress, Question<A> question) {
    List<A> answers = new ArrayList<>();
    try {
      stream(
          new PairingRuns(shop, SLOW),
          threads,
          progress,
          question,
          Function.identity(),
          answers::addAll);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return answers;
  }

  private static <A, T> void stream(
      PairingRuns runs,
      int threads,
      Progress progress,
      Question<A> question,
      Function<List<A>, T> prepared,
      Pipeline.Taker<T> taker)
      throws IOException {
    long all = runs.pairings();
    long[] done = {0};
    try {
      Pipeline.run(
          runs.count(),
          threads,
          run -> {
            List<A> answers = new ArrayList<>();
            for (int vise = runs.firstVise(run); vise < runs.endOfVises(run); vise++) {
              answers.add(question.of(runs.machine(run), vise));
            }
            return new Solved<>(answers.size(), prepared.apply(answers));
          },
          run -> {
            taker.take(run.what());
            done[0] += run.pairings();
            progress.show(done[0], all);
          });
    } finally {
      progress.clear();
    }
  }
}
