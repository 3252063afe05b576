package org.jawroom.app.run;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.placement.ShopPairings;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.report.csv.Batch;
import org.jawroom.report.csv.ShopOrder;
import org.jawroom.report.csv.SolvedBlock;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.report.tally.ShopBlock;
import org.jawroom.report.tally.Totals;
import org.jawroom.shop.Shop;

/**
 * Solves blocks of a shop's pairings with their jobs, on any number of threads.
 *
 * @param remedies whether to compute remedies; without, each advice has none
 */
record BlockSolver(Shop shop, ShopPairings pairings, boolean remedies) {

  /**
   * The largest number of vises in a block if each takes microseconds. A pairing takes about 10 kB
   * on the way, so that those of a machine are still in the processor's cache when their rows are
   * written; so are the vises for the next machine.
   */
  static final int QUICK = 24;

  /** The same if each takes long. */
  static final int SLOW = 4;

  /** The largest number of machines in a block. */
  private static final int MACHINES = 8;

  /** About how many rows of the machines of a band wait at most, see {@link ShopOrder}. */
  private static final long WAITING = 40_000;

  static BlockSolver of(Shop shop, boolean remedies) {
    return new BlockSolver(shop, ShopPairings.of(shop), remedies);
  }

  /** What to solve at a time. */
  ShopBlocks blocks() {
    long rows = 1L + shop.jobs().size();
    // Few vises with many jobs: what is under way stays in memory.
    int vises = remedies ? SLOW : (int) Math.max(SLOW, QUICK / rows);
    long fitting = WAITING / (rows * Math.max(1, shop.vises().size()));
    int machines = isKept() ? 1 : (int) Math.max(1, Math.min(MACHINES, fitting));
    return new ShopBlocks(shop, machines, vises);
  }

  /** Whether a workbook lists each pairing in full. */
  private boolean isDetailed() {
    return ShopBlock.of(shop).pairings() <= ReportOptions.DETAILED;
  }

  /** Whether the reports need the outcomes after the rows are written. */
  private boolean isKept() {
    return remedies || isDetailed();
  }

  SolvedBlock solve(ShopBlock block) {
    Totals totals = new Totals(shop, isDetailed(), block);
    List<Batch> batches = new ArrayList<>();
    for (int machine = block.machine(); machine < block.endOfMachines(); machine++) {
      List<Advice> advice = new ArrayList<>();
      List<List<JobOutcome>> jobs = new ArrayList<>();
      for (int vise = block.vise(); vise < block.endOfVises(); vise++) {
        SolvedPairing solved = pairings.solved(machine, vise);
        Advice its =
            remedies ? Advisor.advise(shop.settings(), solved) : Advice.bare(solved.outcome());
        List<JobOutcome> ofJobs = pairings.jobs(machine, vise, solved.model(), shop.jobs());
        totals.add(its, ofJobs);
        advice.add(its);
        jobs.add(ofJobs);
      }
      batches.add(new Batch(advice, jobs, isKept()));
    }
    return new SolvedBlock(block, batches, totals);
  }
}
