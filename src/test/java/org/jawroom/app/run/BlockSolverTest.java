package org.jawroom.app.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jawroom.advice.Advice;
import org.jawroom.geometry.Length;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.reference.random.CrossedShops;
import org.jawroom.reference.random.RandomJobs;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.report.csv.Batch;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.csv.ShopOrder;
import org.jawroom.report.csv.SolvedBlock;
import org.jawroom.report.tally.JobTally;
import org.jawroom.report.tally.Tally;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Shown;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;

/**
 * Blocks of a shop too large to be listed in full, against its pairings solved one by one. Machines
 * and vises repeat, so that many pairings are equally good.
 */
class BlockSolverTest {
  private static final int KINDS = 12;
  private static final int MACHINES = 155;
  private static final int VISES = 131;

  private final Shop large = repeated(CrossedShops.shop(5, KINDS, KINDS, 1));

  @Test
  void blocks_ofALargeShop_giveWhatItsPairingsGiveOneByOne() {
    List<Advice> advice = oneByOne(large);

    Totals totals = assertSolved(large, advice);

    assertSame(Totals.of(large, advice, List.of()), totals);
  }

  @Test
  void blocks_withJobs_countThemAsOneByOne() {
    Shop shop = large.withJobs(RandomJobs.shop(Profile.values()[0], 4).jobs());
    List<Advice> advice = oneByOne(shop);

    Totals totals = assertSolved(shop, advice);

    Totals expected = Totals.of(shop, advice, JobPairing.all(shop));
    assertSame(expected, totals);
    for (int job = 0; job < shop.jobs().size(); job++) {
      assertEquals(counts(expected.jobs().of(job)), counts(totals.jobs().of(job)));
      for (int machine = 0; machine < MACHINES; machine++) {
        assertEquals(
            counts(expected.jobs().on(machine, job)), counts(totals.jobs().on(machine, job)));
      }
    }
  }

  /** Solves the shop in blocks, and checks the rows and cells that come. */
  private static Totals assertSolved(Shop shop, List<Advice> advice) {
    BlockSolver solver = BlockSolver.of(shop, false);
    ShopBlocks blocks = solver.blocks();
    assertTrue(blocks.machines() > 1 && blocks.count() > 100, blocks::toString);
    ShopOrder order = new ShopOrder(shop);
    Totals totals = new Totals(shop, false);
    ByteArrayOutputStream rows = new ByteArrayOutputStream();
    List<Shown> shown = new ArrayList<>();
    for (int number = 0; number < blocks.count(); number++) {
      SolvedBlock solved = solver.solve(blocks.block(number));
      totals.add(solved.totals());
      for (Batch batch : order.next(solved)) {
        rows.writeBytes(batch.pairings());
        shown.addAll(batch.shown());
      }
    }
    assertArrayEquals(PairingsCsv.rows(advice), rows.toByteArray());
    assertEquals(advice.stream().map(one -> Shown.of(one.outcome())).toList(), shown);
    return totals;
  }

  private static void assertSame(Totals expected, Totals totals) {
    assertEquals(expected.pairings(), totals.pairings());
    assertEquals(facts(expected.all()), facts(totals.all()));
    for (int machine = 0; machine < MACHINES; machine++) {
      assertEquals(facts(expected.machine(machine)), facts(totals.machine(machine)));
    }
    for (int vise = 0; vise < VISES; vise++) {
      assertEquals(facts(expected.vise(vise)), facts(totals.vise(vise)));
    }
    assertEquals(expected.worst().missed(), totals.worst().missed());
    assertEquals(expected.worst().kept(), totals.worst().kept());
    assertEquals(expected.shortTools().lines(), totals.shortTools().lines());
    assertEquals(expected.chosen(), totals.chosen());
    assertTrue(totals.worst().missed() > 0 && !totals.shortTools().lines().isEmpty());
  }

  private static List<Object> facts(Tally tally) {
    List<Object> facts =
        new ArrayList<>(
            List.of(
                tally.total(),
                tally.leastMargin(),
                tally.greatestMargin(),
                tally.best(),
                tally.bestIndex()));
    for (Finding finding : Finding.values()) {
      facts.add(tally.count(finding));
    }
    return facts;
  }

  private static List<Object> counts(JobTally tally) {
    return List.of(
        tally.total(),
        tally.held(),
        tally.unknown(),
        tally.finding(),
        tally.isBarred(),
        tally.isHeldInDoubt(),
        tally.isHeldUnchecked());
  }

  private static List<Advice> oneByOne(Shop shop) {
    List<Advice> advice = new ArrayList<>();
    shop.machines()
        .forEach(
            machine ->
                shop.vises()
                    .forEach(
                        vise ->
                            advice.add(
                                Advice.bare(Pairing.solve(shop.settings(), machine, vise)))));
    return advice;
  }

  /** The shortest tool of 500 mm does not clear many a bed, which is reported. */
  private static Shop repeated(Shop kinds) {
    return new Shop(
        kinds.settings().toBuilder().shortestTool(OptionalLong.of(500 * Length.MM)).build(),
        repeated(kinds.machines(), MACHINES),
        repeated(kinds.vises(), VISES),
        List.of());
  }

  private static <T> List<T> repeated(List<T> kinds, int times) {
    return Stream.iterate(0, at -> (at + 1) % kinds.size()).limit(times).map(kinds::get).toList();
  }
}
