package org.jawroom.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jawroom.advice.Advice;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.report.csv.Batch;
import org.jawroom.report.csv.SolvedBlock;
import org.jawroom.report.tally.ShopBlock;
import org.jawroom.report.tally.Totals;
import org.jawroom.shop.Shop;

/**
 * Solved pairings of a shop as blocks.
 *
 * @param advice machines, then vises
 * @param jobs jobs, then machines, then vises
 */
public record SolvedBlocks(Shop shop, List<Advice> advice, List<JobOutcome> jobs) {

  /** All pairings as one block. */
  public SolvedBlock all() {
    return of(ShopBlock.of(shop));
  }

  /** Blocks of at most so many machines and vises, in the order in which they are solved. */
  public List<SolvedBlock> split(int machines, int vises) {
    List<SolvedBlock> blocks = new ArrayList<>();
    int allVises = shop.vises().size();
    for (int i = 0; i < shop.machines().size(); i += machines) {
      for (int j = 0; j < allVises; j += vises) {
        int end = Math.min(shop.machines().size(), i + machines);
        blocks.add(of(new ShopBlock(i, end, j, Math.min(allVises, j + vises))));
      }
    }
    return blocks;
  }

  private SolvedBlock of(ShopBlock block) {
    Totals totals = new Totals(shop, true, block);
    List<Batch> batches = new ArrayList<>();
    for (int machine = block.machine(); machine < block.endOfMachines(); machine++) {
      int first = machine * shop.vises().size();
      List<Advice> its = advice.subList(first + block.vise(), first + block.endOfVises());
      List<List<JobOutcome>> ofJobs =
          IntStream.range(first + block.vise(), first + block.endOfVises())
              .mapToObj(this::ofJobs)
              .toList();
      for (int i = 0; i < its.size(); i++) {
        totals.add(its.get(i), ofJobs.get(i));
      }
      batches.add(new Batch(its, ofJobs, true));
    }
    return new SolvedBlock(block, batches, totals);
  }

  private List<JobOutcome> ofJobs(int pairing) {
    return IntStream.range(0, jobs.size() / advice.size())
        .mapToObj(job -> jobs.get(job * advice.size() + pairing))
        .toList();
  }
}
