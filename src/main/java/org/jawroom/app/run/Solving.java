package org.jawroom.app.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
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
import org.jawroom.report.csv.ShopOrder;
import org.jawroom.report.csv.SolvedBlock;
import org.jawroom.report.tally.ShopBlock;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.shop.Shop;

/**
 * Solves every pairing of a shop on several threads; the result does not depend on their number.
 */
public final class Solving {

  private Solving() {}

  /**
   * Computes something for one pairing, given by the indices of machine and vise in input order.
   */
  private interface Question<A> {
    A of(int machine, int vise);
  }

  /** The result of a block of pairings. */
  private record Solved<T>(long pairings, T what) {}

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

  /** Solves all pairings without remedies and jobs and passes lists of them on in input order. */
  static void stream(Shop shop, int threads, Progress progress, Pipeline.Taker<List<Outcome>> taker)
      throws IOException {
    ShopPairings pairings = ShopPairings.of(shop);
    stream(new ShopBlocks(shop, 1, BlockSolver.QUICK), threads, progress, pairings::solve, taker);
  }

  /**
   * Solves all pairings with their jobs and passes blocks of them on in the order of {@link
   * ShopOrder}. Of a shop small enough for a workbook in full, and with remedies, the outcomes are
   * kept.
   *
   * @param remedies whether to compute remedies; without, each advice has none
   */
  static void blocks(
      Shop shop,
      boolean remedies,
      int threads,
      Progress progress,
      Pipeline.Taker<SolvedBlock> taker)
      throws IOException {
    BlockSolver solver = BlockSolver.of(shop, remedies);
    run(solver.blocks(), threads, progress, solver::solve, taker);
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
          new ShopBlocks(shop, 1, BlockSolver.SLOW), threads, progress, question, answers::addAll);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return answers;
  }

  /** Passes on the answers in input order; blocks must be of one machine. */
  private static <A> void stream(
      ShopBlocks blocks,
      int threads,
      Progress progress,
      Question<A> question,
      Pipeline.Taker<List<A>> taker)
      throws IOException {
    run(
        blocks,
        threads,
        progress,
        block ->
            IntStream.range(block.vise(), block.endOfVises())
                .mapToObj(vise -> question.of(block.machine(), vise))
                .toList(),
        taker);
  }

  private static <T> void run(
      ShopBlocks blocks,
      int threads,
      Progress progress,
      Function<ShopBlock, T> solve,
      Pipeline.Taker<T> taker)
      throws IOException {
    long all = blocks.pairings();
    long[] done = {0};
    try {
      Pipeline.run(
          blocks.count(),
          threads,
          number -> {
            ShopBlock block = blocks.block(number);
            return new Solved<>(block.pairings(), solve.apply(block));
          },
          solved -> {
            taker.take(solved.what());
            done[0] += solved.pairings();
            progress.show(done[0], all);
          });
    } finally {
      progress.clear();
    }
  }
}
